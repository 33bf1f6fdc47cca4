#include "documents/report.hpp"

#include <algorithm>
#include <iterator>
#include <set>

#include <fmt/format.h>

#include "documents/findings.hpp"
#include "documents/flow.hpp"
#include "documents/mendings.hpp"
#include "documents/method.hpp"
#include "documents/opening.hpp"
#include "documents/remarks.hpp"
#include "documents/shell.hpp"
#include "documents/since.hpp"
#include "documents/unseen.hpp"
#include "documents/visit.hpp"
#include "documents/work_part.hpp"
#include "documents/zone_table.hpp"
#include "output/zone_text.hpp"
#include "scene/diagram.hpp"
#include "weighing/words.hpp"

namespace tinworm::documents {
namespace {

using scene::Page;
using weighing::Result;

std::vector<Page> sheets(const Result& result, const ReportOptions& options, int before, int after,
                         const scene::Measure& measure) {
  scene::DiagramOptions drawing;
  drawing.paper = options.paper;
  drawing.signed_name = true;
  drawing.units = options.units;
  drawing.pages_before = before;
  drawing.pages_after = after;
  std::vector<Page> pages = scene::diagram(result, drawing, measure);
  for (Page& page : pages)
    for (const scene::Label& label : page.labels)
      page.links.push_back({label.plate, row_place(label.zone)});
  return pages;
}

Foot foot_of(const Result& result) {
  return {
      fmt::format("{}, survey of {}, fingerprint {} (SHA-256, first 12)", result.survey.car.name,
                  result.survey.visit.date.text(), result.sha256.substr(0, 12)),
      result.caution};
}

// "Sheets 2 to 3. What was found, by urgency 4. Repairs found 7."
std::string contents(const std::vector<Page>& text, std::size_t sheets) {
  std::string line =
      sheets == 1 ? "Sheet: page 2." : fmt::format("Sheets: pages 2 to {}.", sheets + 1);
  for (std::size_t i = 0; i < text.size(); ++i)
    for (const scene::Outlined& part : text[i].outline)
      line += fmt::format(" {}: {}.", part.text, i + sheets + 2);
  return line;
}

std::vector<Page> text_pages(const Result& result, const work::Plan& plan,
                             const photos::Album& album, const ReportOptions& options,
                             const Paper& paper, const scene::Measure& measure) {
  Flow flow(paper, measure);
  write_findings(flow, result, album, options.units);
  if (options.before) write_since(flow, *options.before, options.units);
  write_unseen(flow, result);
  write_mendings(flow, result, album, options.units);
  write_shell(flow, result, options.units);
  write_remarks(flow, result.survey);
  write_visit(flow, result);
  write_work(flow, result, plan, options.units);
  write_questions(flow, result);
  write_signatures(flow, result);
  write_zone_table(flow, result);
  write_other_photos(flow, result, album);
  write_method(flow, result, plan, options.units);
  return std::move(flow).pages();
}

// Links to parts that stand on no sheet lead nowhere.
void drop_dead_links(std::vector<Page>& pages) {
  std::set<std::string> places;
  for (const Page& page : pages)
    for (const scene::Place& place : page.places) places.insert(place.name);
  for (Page& page : pages)
    std::erase_if(page.links, [&](const scene::Link& link) { return !places.contains(link.to); });
}

}  // namespace

std::vector<Page> report(const Result& result, const work::Plan& plan, const photos::Album& album,
                         const ReportOptions& options, const scene::Measure& measure) {
  const Paper paper = upright(options.paper);
  std::vector<Page> text = text_pages(result, plan, album, options, paper, measure);
  const int after = static_cast<int>(text.size());
  std::vector<Page> pages, drawn = sheets(result, options, 1, after, measure);
  pages.push_back(
      opening(result, plan, options.before, paper, contents(text, drawn.size()), measure));
  std::ranges::move(drawn, std::back_inserter(pages));
  const std::size_t first_text = pages.size();
  std::ranges::move(text, std::back_inserter(pages));
  const Foot foot = foot_of(result);
  for (std::size_t i = 0; i < pages.size(); ++i)
    if (i == 0 || i >= first_text) write_foot(pages[i], paper, foot, i + 1, pages.size(), measure);
  drop_dead_links(pages);
  return pages;
}

std::vector<Page> work_paper(const Result& result, const work::Plan& plan,
                             const ReportOptions& options, const scene::Measure& measure) {
  const Paper paper = upright(options.paper);
  Flow flow(paper, measure);
  flow.block(scene::line_height_mm(title_style), [&](Page& page, const scene::Area& area) {
    const survey::Car& car = result.survey.car;
    const std::string title =
        car.built ? fmt::format("{}, built {}", car.name, *car.built) : car.name;
    scene::set_block(page.layer("text"), title, title_style, {area.x_mm, area.y_mm}, area.width_mm,
                     measure, 1);
  });
  std::string verdict = fmt::format("Survey of {}. Verdict: {}.", result.survey.visit.date.text(),
                                    sentence(result.verdict));
  if (result.could_be != result.verdict)
    verdict += fmt::format(" Could be: {}.", sentence(result.could_be));
  if (result.open_up_first) verdict += " Open up first: what is found may change this plan.";
  if (const std::string now = at_once_words(result.survey); !now.empty()) flow.paragraph(now);
  flow.paragraph(verdict);
  if (const std::string rules = weighing::rules_text(result); !rules.empty()) flow.paragraph(rules);
  write_work(flow, result, plan, options.units);
  write_assumptions(flow, plan);
  std::vector<Page> pages = std::move(flow).pages();
  const Foot foot = foot_of(result);
  for (std::size_t i = 0; i < pages.size(); ++i)
    write_foot(pages[i], paper, foot, i + 1, pages.size(), measure);
  return pages;
}

}  // namespace tinworm::documents
