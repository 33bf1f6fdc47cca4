#include "scene/further_pages.hpp"

#include <fmt/format.h>

#include "scene/listing_words.hpp"
#include "scene/not_seen.hpp"
#include "scene/paper_table.hpp"
#include "scene/part_names.hpp"
#include "scene/worst_list.hpp"

namespace tinworm::scene {
namespace {

std::string title_of(const weighing::Result& result, const Further& further) {
  std::string title = further.parts ? "Parts" : "";
  if (!result.rules_changed.empty()) title += title.empty() ? "Rules" : ", rules";
  return title.empty() ? "Not seen" : title + ", and not seen";
}

void add_lines(std::vector<Paragraph>& paragraphs, const std::string& heading,
               const std::vector<std::string>& lines) {
  if (lines.empty()) return;
  paragraphs.push_back({heading, "", true});
  for (const std::string& line : lines) paragraphs.push_back({line});
}

}  // namespace

void Further::add(const Further& other) {
  needed |= other.needed;
  parts |= other.parts;
  numbers.insert(other.numbers.begin(), other.numbers.end());
  worst.insert(worst.end(), other.worst.begin(), other.worst.end());
}

std::vector<Page> further_pages(const weighing::Result& result, const Further& further,
                                const DiagramOptions& options, const Measure& measure) {
  if (!further.needed) return {};
  std::vector<Paragraph> paragraphs;
  std::vector<std::string> worst, names;
  for (const weighing::Spot* spot : further.worst) worst.push_back(worst_line(result, *spot));
  add_lines(paragraphs, "Worst first, continued", worst);
  if (options.for_sale) {
    add_lines(paragraphs, "How it was looked at", looked_lines(result));
    add_lines(paragraphs, "Rules changed", result.rules_changed);
    add_lines(paragraphs, "Not seen, so not known", unseen_lines(result));
    add_lines(paragraphs, "Not on the drawing", not_drawn_words(result));
    add_lines(paragraphs, "Repairs found", repair_lines(result));
  } else {
    for (Paragraph& each : limit_lines(result)) paragraphs.push_back(std::move(each));
  }
  if (further.parts) {
    for (const PartName& part : part_names(*result.body, further.numbers))
      names.push_back(fmt::format("{}  {}", part.numbers, part.whole));
  }
  add_lines(paragraphs, "Parts by number: odd left, even right", names);
  PaperPages pages(options.paper, title_of(result, further), result.caution, measure);
  pages.columns(paragraphs);
  return std::move(pages).pages();
}

}  // namespace tinworm::scene
