#include "scene/not_seen.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "scene/naming.hpp"

namespace tinworm::scene {
namespace {

constexpr Style not_seen_heading{8, Font::bold, black, Says::not_seen, 1.3};
constexpr Style not_drawn_heading{8, Font::bold, black, Says::words, 1.3};

std::string line_text(const NotSeenLine& line) {
  return line.why.empty() ? number_list(line.zones)
                          : fmt::format("{}: {}", number_list(line.zones), line.why);
}

struct Section {
  std::string heading;
  Style heading_style;
  std::vector<std::string> lines;
  Style style;
};

Section not_seen_section(const weighing::Result& result) {
  Section section{"Not seen, so not known", not_seen_heading, {}, not_seen_style};
  for (const NotSeenLine& line : not_seen_lines(result)) section.lines.push_back(line_text(line));
  if (result.not_seen.empty()) {
    section.lines.push_back("No zone was left out altogether.");
  }
  std::vector<int> inside;
  for (const weighing::Zone& zone : result.zones) {
    const bool asked = zone.number != 0 && zone.role == body::Role::main && zone.seen_share > 0;
    if (asked && zone.inside == "not-seen") inside.push_back(zone.number);
  }
  if (!inside.empty()) {
    section.lines.push_back(fmt::format("Inside not seen: {}.", number_list(inside)));
  }
  return section;
}

Section not_drawn_section(const weighing::Result& result) {
  return {"Not on the drawing", not_drawn_heading, not_drawn_lines(result), list_style};
}

Section rules_section(const weighing::Result& result) {
  std::string from = result.rules == "default" ? "" : " (" + result.rules + ")";
  if (!result.rules_name.empty()) from += ": " + result.rules_name;
  return {"Rules changed" + from, not_drawn_heading, result.rules_changed, list_style};
}

std::vector<Section> sections_of(const weighing::Result& result) {
  std::vector<Section> sections{not_seen_section(result)};
  if (Section own = not_drawn_section(result); !own.lines.empty()) sections.push_back(own);
  return sections;
}

std::vector<Section> sections_in_full(const weighing::Result& result) {
  std::vector<Section> sections = sections_of(result);
  if (!result.rules_changed.empty()) sections.insert(sections.begin(), rules_section(result));
  return sections;
}

void write_section(Writer& writer, const Section& section) {
  writer.rule();
  writer.block(section.heading, section.heading_style);
  for (const std::string& line : section.lines) writer.block(line, section.style);
  writer.y += apart_mm * 0.4;
}

}  // namespace

std::vector<NotSeenLine> not_seen_lines(const weighing::Result& result) {
  std::vector<NotSeenLine> lines;
  for (const weighing::NotSeen& each : result.not_seen) {
    if (each.zone == 0) continue;  // told by not_drawn_lines
    const auto same = std::find_if(lines.begin(), lines.end(),
                                   [&](const NotSeenLine& line) { return line.why == each.why; });
    if (same == lines.end()) {
      lines.push_back({{each.zone}, each.why});
    } else {
      same->zones.push_back(each.zone);
    }
  }
  return lines;
}

std::string not_seen_words(const weighing::Result& result) {
  if (result.not_seen.empty()) return "no whole zone";
  std::vector<int> zones;
  for (const weighing::NotSeen& each : result.not_seen)
    if (each.zone != 0) zones.push_back(each.zone);
  const std::string drawn = zones.empty() ? "" : "zones " + number_list(zones);
  if (zones.size() == result.not_seen.size()) return drawn;
  return drawn + (drawn.empty() ? "" : " and ") + "what is not on the drawing";
}

std::string not_drawn_line(const weighing::Zone& zone) {
  std::string_view how = evidence_words(zone.evidence);
  if (zone.step == weighing::Step::not_seen) how = zone.seen.reason;
  const bool found_unseen = zone.step != weighing::Step::not_seen && zone.seen_share <= 0;
  return fmt::format("{}: {}{}{}{}", zone_name(zone), step_name(zone.step), how.empty() ? "" : ", ",
                     how, found_unseen ? "; the rest not seen" : "");
}

std::vector<std::string> not_drawn_lines(const weighing::Result& result) {
  std::vector<std::string> lines;
  for (const weighing::Zone& zone : result.zones) {
    if (zone.number == 0) lines.push_back(not_drawn_line(zone));
  }
  return lines;
}

double limits_height(const Writer& writer, const weighing::Result& result) {
  double height = 0;
  for (const Section& section : sections_of(result)) {
    height += apart_mm * 1.1 + writer.height(section.heading, section.heading_style);
    for (const std::string& line : section.lines) height += writer.height(line, section.style);
  }
  return height;
}

bool write_limits(Writer& writer, const weighing::Result& result,
                  const std::string& overflow_page) {
  if (limits_height(writer, result) <= writer.room()) {
    for (const Section& section : sections_of(result)) write_section(writer, section);
    return false;
  }
  const bool more = !not_drawn_section(result).lines.empty();
  writer.rule();
  writer.block("Not seen, so not known", not_seen_heading);
  writer.block(fmt::format("{}. Reasons{} on page {}.", capitalised(not_seen_words(result)),
                           more ? ", and what was found but is not drawn," : "", overflow_page),
               not_seen_style);
  return true;
}

std::vector<Paragraph> limit_paragraphs(const weighing::Result& result) {
  std::vector<Paragraph> paragraphs;
  for (const Section& section : sections_in_full(result)) {
    paragraphs.push_back({section.heading, "", true});
    std::string text;
    for (std::string line : section.lines) {
      if (line.ends_with('.')) line.pop_back();
      text += (text.empty() ? "" : "; ") + line;
    }
    paragraphs.push_back({text + "."});
  }
  return paragraphs;
}

std::vector<Page> not_seen_pages(const weighing::Result& result, const DiagramOptions& options,
                                 const Measure& measure) {
  std::vector<Page> pages;
  const PaperSize size = size_of(options.paper);
  const Area frame = frame_of(options.paper);
  const Area inner{frame.x_mm + 6, frame.y_mm + 5, frame.width_mm - 12, frame.height_mm - 24};
  double y = inner.bottom() + 1;  // a page is started by the first line
  double end = inner.bottom();
  const auto start = [&] {
    Page page;
    page.width_mm = size.width_mm;
    page.height_mm = size.height_mm;
    page.frame = frame;
    page.title = result.rules_changed.empty() ? "Not seen" : "Rules, and not seen";
    pages.push_back(std::move(page));
    Writer foot{pages.back().layer("column"), inner, inner.y_mm, measure};
    end = inner.bottom() - foot.height(result.caution, caution_style) - apart_mm;
    foot.y = end + apart_mm;
    foot.block(result.caution, caution_style);
    y = inner.y_mm;
  };
  for (const Section& section : sections_in_full(result)) {
    const auto write = [&](const std::string& text, Style style) {
      Layer none;
      const double height = Writer{none, inner, y, measure}.height(text, style);
      if (y + height > end) start();
      Writer writer{pages.back().layer("column"), inner, y, measure};
      writer.block(text, style);
      y = writer.y;
    };
    Style heading = section.heading_style;
    heading.size_pt = 12;
    write(section.heading, heading);
    for (const std::string& line : section.lines) write(line, section.style);
    y += 2 * apart_mm;
  }
  return pages;
}

}  // namespace tinworm::scene
