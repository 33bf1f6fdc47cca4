#include "scene/not_seen.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "scene/naming.hpp"
#include "scene/part_names.hpp"

namespace tinworm::scene {
namespace {

constexpr Style not_seen_heading{8, Font::bold, black, Says::not_seen, 1.3};
constexpr Style not_drawn_heading{8, Font::bold, black, Says::words, 1.3};

// Numbers alone where a list beside has the names.
enum class By { number, name };

std::string listed(const weighing::Result& result, const std::vector<int>& zones, By by) {
  return by == By::name ? numbers_and_names(result, zones) : number_list(zones);
}

std::string line_text(const weighing::Result& result, const NotSeenLine& line, By by) {
  const std::string names = listed(result, line.zones, by);
  return line.why.empty() ? names : fmt::format("{}: {}", names, line.why);
}

struct Section {
  std::string heading;
  Style heading_style;
  std::vector<std::string> lines;
  Style style;
};

using weighing::NotSeen;
using Kind = std::optional<SheetKind>;

bool on_sheet(const weighing::Result& result, Kind kind, int number) {
  const body::Zone* plan = result.body->zone(number);
  if (!kind || plan == nullptr) return plan != nullptr;
  return std::ranges::any_of(plan->drawn, [&](const body::Drawing& drawing) {
    return drawing_on(*kind, *plan, drawing.view) != nullptr;
  });
}

// A part that is named twice on a sheet is still one part.
std::string elsewhere_text(const weighing::Result& result, Kind kind) {
  const auto parts = std::ranges::count_if(result.not_seen, [&](const weighing::NotSeen& each) {
    return each.zone != 0 && !on_sheet(result, kind, each.zone);
  });
  if (parts == 0) return "";
  return fmt::format("{} more not seen, on other sheets.", parts);
}

std::vector<int> insides(const weighing::Result& result, Kind kind) {
  std::vector<int> zones;
  for (const weighing::Zone& zone : result.zones) {
    const bool asked = zone.number != 0 && zone.role == body::Role::main && zone.seen_share > 0;
    if (asked && zone.inside == "not-seen" && on_sheet(result, kind, zone.number))
      zones.push_back(zone.number);
  }
  return by_consequence(result, zones);
}

Section not_seen_section(const weighing::Result& result, Kind kind, By by) {
  Section section{"Not seen, so not known", not_seen_heading, {}, not_seen_style};
  for (NotSeenLine& line : not_seen_lines(result)) {
    std::erase_if(line.zones, [&](int zone) { return !on_sheet(result, kind, zone); });
    if (!line.zones.empty()) section.lines.push_back(line_text(result, line, by));
  }
  if (result.not_seen.empty()) section.lines.push_back("No zone was left out altogether.");
  if (const auto inside = insides(result, kind); !inside.empty())
    section.lines.push_back(fmt::format("Inside not seen: {}.", listed(result, inside, by)));
  if (std::string elsewhere = elsewhere_text(result, kind); !elsewhere.empty())
    section.lines.push_back(std::move(elsewhere));
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

// On a sheet of a kind by name.
By told_by(Kind kind) {
  return kind ? By::name : By::number;
}

std::vector<Section> sections_of(const weighing::Result& result, Kind kind, By by) {
  std::vector<Section> sections{not_seen_section(result, kind, by)};
  if (Section own = not_drawn_section(result); !own.lines.empty()) sections.push_back(own);
  return sections;
}

std::vector<Section> sections_in_full(const weighing::Result& result, By by) {
  std::vector<Section> sections = sections_of(result, {}, by);
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
  std::vector<int> zones;
  for (const weighing::NotSeen& each : result.not_seen)
    if (each.zone != 0) zones.push_back(each.zone);  // own ones are told by not_drawn_lines
  std::vector<NotSeenLine> lines;
  for (const int zone : by_consequence(result, zones)) {
    const std::string& why = std::ranges::find(result.not_seen, zone, &NotSeen::zone)->why;
    const auto same = std::ranges::find(lines, why, &NotSeenLine::why);
    if (same == lines.end()) {
      lines.push_back({{zone}, why});
    } else {
      same->zones.push_back(zone);
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

double limits_height(const Writer& writer, const weighing::Result& result, Kind kind) {
  double height = 0;
  for (const Section& section : sections_of(result, kind, told_by(kind))) {
    height += apart_mm * 1.1 + writer.height(section.heading, section.heading_style);
    for (const std::string& line : section.lines) height += writer.height(line, section.style);
  }
  return height;
}

bool write_limits(Writer& writer, const weighing::Result& result, const std::string& overflow_page,
                  Kind kind) {
  if (limits_height(writer, result, kind) <= writer.room()) {
    for (const Section& section : sections_of(result, kind, told_by(kind)))
      write_section(writer, section);
    return false;
  }
  const Section section = not_seen_section(result, kind, told_by(kind));
  const bool more = !not_drawn_section(result).lines.empty();
  const std::string rest =
      fmt::format("{}{} on page {}.", section.lines.empty() ? "All" : "The rest",
                  more ? ", and what was found but is not drawn," : "", overflow_page);
  const double end = writer.area.bottom() - writer.height(rest, section.style);
  writer.rule();
  writer.block(section.heading, section.heading_style);
  std::size_t written = 0;
  for (const std::string& line : section.lines) {
    if (writer.y + writer.height(line, section.style) > end) break;
    writer.block(line, section.style);
    ++written;
  }
  // One reason may hide more parts than there is room to name.
  if (written == 0) writer.block(capitalised(not_seen_words(result)) + ".", section.style);
  writer.block(rest, section.style);
  return true;
}

std::vector<Paragraph> limit_paragraphs(const weighing::Result& result) {
  std::vector<Paragraph> paragraphs;
  for (const Section& section : sections_in_full(result, By::number)) {
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

std::vector<Paragraph> limit_lines(const weighing::Result& result) {
  std::vector<Paragraph> paragraphs;
  for (const Section& section : sections_in_full(result, By::name)) {
    paragraphs.push_back({section.heading, "", true});
    for (const std::string& line : section.lines) paragraphs.push_back({line});
  }
  return paragraphs;
}

}  // namespace tinworm::scene
