#include "scene/listing_words.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "scene/naming.hpp"
#include "scene/not_seen.hpp"
#include "scene/part_names.hpp"
#include "survey/told.hpp"

namespace tinworm::scene {
namespace {

constexpr double rounding = 1e-9;
constexpr Style unseen_heading{8, Font::bold, black, Says::not_seen, 1.3};
constexpr Style repairs_heading{8, Font::bold, black, Says::words, 1.3};

std::string counted(std::size_t how_many, const char* one, const char* several) {
  return fmt::format("{} {}", how_many, how_many == 1 ? one : several);
}

struct Shares {
  int measured = 0, looked = 0, unseen = 0;  // percent
};

// Rounded so that what was seen and measured is never more than it was.
Shares shares_of(const weighing::Coverage& main) {
  const auto whole = [](double share) {
    return static_cast<int>(std::floor(100 * share + rounding));
  };
  const int seen = whole(main.area_share);
  const int measured = std::min(whole(main.measured_share), seen);
  return {measured, seen - measured, 100 - seen};
}

std::string shares_line(const weighing::Coverage& main) {
  if (!main.any) return "";
  const Shares shares = shares_of(main);
  return fmt::format("Main structure: {} % measured, {} % looked at or felt, {} % not seen.",
                     shares.measured, shares.looked, shares.unseen);
}

std::string ways_line(const weighing::Result& result) {
  using survey::SeenWord;
  std::map<SeenWord, std::size_t> zones;
  for (const weighing::Zone& zone : result.zones) {
    if (zone.seen.word) ++zones[*zone.seen.word];
  }
  std::string line;
  for (const auto& [word, how] : {std::pair(SeenWord::bare, "bare"),
                                  {SeenWord::coated, "under paint or coating"},
                                  {SeenWord::part, "in part"},
                                  {SeenWord::scope, "through a scope"}}) {
    if (zones[word] == 0) continue;
    line += line.empty() ? counted(zones[word], "zone seen ", "zones seen ") + how
                         : fmt::format(", {} {}", zones[word], how);
  }
  return line.empty() ? "No zone was seen." : line + ".";
}

struct Tools {
  std::size_t readings = 0, films = 0, felt = 0;

  void add(const survey::Zone& zone) {
    films += zone.film_um.size();
    for (const survey::Spot& spot : zone.found) {
      readings += spot.metal_mm.size();
      felt += spot.hand || spot.tap || spot.probe;
    }
  }
};

std::string tools_line(const survey::Survey& survey) {
  Tools tools;
  for (const auto& [number, zone] : survey.zones) tools.add(zone);
  for (const survey::OwnZone& own : survey.own) tools.add(own.zone);
  std::string line =
      tools.readings > 0
          ? "By gauge: " + counted(tools.readings, "reading", "readings") + " of metal"
          : "No metal was gauged";
  if (tools.films > 0) line += fmt::format(", {} of paint", tools.films);
  line += tools.felt > 0 ? "; by hand, tap or probe: " + counted(tools.felt, "place", "places")
                         : "; nothing was felt by hand";
  return line + ".";
}

std::string found_line(const weighing::Result& result) {
  std::size_t seen = 0, rusted = 0, felt = 0;
  for (const weighing::Zone& zone : result.zones) {
    if (!zone.fitted) continue;
    const bool found = std::ranges::any_of(zone.spots, &weighing::Spot::found);
    const bool is_seen = zone.seen_share > 0;
    seen += is_seen;
    rusted += is_seen && found;
    felt += !is_seen && found;
  }
  const std::string by_tap = counted(felt, "zone", "zones") + " known by tap alone";
  if (seen == 0) return felt == 0 ? "" : "Rust or damage found in " + by_tap + ".";
  if (rusted + felt == 0) return "Rust: none found where looked.";
  return fmt::format("Rust or damage found in {} of {}{}.", rusted,
                     counted(seen, "zone seen", "zones seen"),
                     felt == 0 ? "" : ", and in " + by_tap);
}

// A coat that may be filler: what a magnet would find first.
std::string coat_line(const weighing::Result& result) {
  std::vector<int> zones;
  for (const weighing::Zone& zone : result.zones)
    if (zone.number != 0 && zone.film && zone.film->reading == "filler-likely")
      zones.push_back(zone.number);
  return zones.empty() ? "" : fmt::format("Thick coat, may be filler: {}.", number_list(zones));
}

std::string weather_line(const survey::Survey& survey) {
  if (!survey.visit.weather) return "";
  return *survey.visit.weather == survey::Weather::wet ? "The car was wet." : "The car was dry.";
}

// What else was noted, by the words of the format: what was said of it is the owner's.
std::string also_line(const survey::Survey& survey) {
  std::vector<std::string> items;
  for (const survey::Also& item : survey.also) {
    const std::string when = survey::when_text(item);
    items.push_back(fmt::format("{}{}", word(item.matter), when.empty() ? "" : " (" + when + ")"));
  }
  if (items.empty()) return "";
  return fmt::format("Noted beside rust: {}.", fmt::join(items, ", "));
}

std::string signed_line(const survey::Visit& visit) {
  if (visit.by.empty()) return "";
  return fmt::format("Surveyed by {}; interest in the sale: {}.", visit.by,
                     visit.interest.empty() ? "not said" : visit.interest);
}

enum class Trust { not_relied, not_known, relied };

Trust trust(const weighing::Repair& repair) {
  if (!repair.reliable) return Trust::not_known;
  return *repair.reliable ? Trust::relied : Trust::not_relied;
}

std::string spaced(std::string_view word) {
  std::string text(word);
  std::ranges::replace(text, '-', ' ');
  return text;
}

std::string repair_line(const weighing::Zone& zone, const weighing::Repair& judged,
                        const survey::Repair& repair) {
  std::string line = zone.number > 0 ? fmt::format("{} ", zone.number) : "";
  line += fmt::format("{}: {}", zone_name(zone), spaced(word(repair.kind)));
  if (repair.joint) line += ", " + spaced(word(*repair.joint));
  for (const survey::Joint joint : repair.other_joints) line += ", " + spaced(word(joint));
  if (repair.sides) line += ", " + spaced(word(*repair.sides));
  if (repair.layers) line += fmt::format(", {} layers", *repair.layers);
  line += ", " + (repair.date ? repair.date->text() : std::string("no date"));
  const bool skin = zone.role == body::Role::skin;
  switch (trust(judged)) {
    case Trust::relied:
      return line + "; can be relied on";
    case Trust::not_known:
      return line + "; not known if reliable" + (skin ? "" : ": " + judged.why);
    case Trust::not_relied:
      return line + "; can\u2019t be relied on" + (skin ? "" : ": " + judged.why);
  }
  return line;
}

const survey::Zone* recorded_in(const survey::Survey& survey, const weighing::Zone& zone) {
  if (zone.own.empty()) {
    const auto found = survey.zones.find(zone.number);
    return found == survey.zones.end() ? nullptr : &found->second;
  }
  const auto own = std::ranges::find(survey.own, zone.own, &survey::OwnZone::key);
  return own == survey.own.end() ? nullptr : &own->zone;
}

// "15 battery tray, 23 24 sill and 7 more zones"
std::string named(const weighing::Result& result, std::vector<int> zones, std::size_t most) {
  const std::size_t all = zones.size();
  if (all <= most) return numbers_and_names(result, zones);
  if (most == 0) return counted(all, "zone", "zones");
  zones.resize(most);
  return numbers_and_names(result, zones) + " and " +
         counted(all - most, "more zone", "more zones");
}

struct Unseen {
  std::vector<int> part, inside, open;  // open: most urgent first
};

Unseen unseen_of(const weighing::Result& result) {
  Unseen unseen;
  for (const weighing::Zone& zone : result.zones) {
    if (zone.number == 0) continue;
    if (zone.seen.word == survey::SeenWord::part) unseen.part.push_back(zone.number);
    const bool asked = zone.role == body::Role::main && zone.seen_share > 0;
    if (asked && zone.inside == "not-seen") unseen.inside.push_back(zone.number);
  }
  for (const weighing::OpenUp& each : result.open_up) {
    if (each.zone > 0) unseen.open.push_back(each.zone);
  }
  unseen.part = by_consequence(result, unseen.part);
  unseen.inside = by_consequence(result, unseen.inside);
  return unseen;
}

void write_list(Writer& writer, const std::string& heading, const Style& heading_style,
                const std::vector<std::string>& lines, const Style& style) {
  if (lines.empty()) return;
  writer.rule();
  writer.block(heading, heading_style);
  for (const std::string& line : lines) writer.block(line, style);
  writer.y += apart_mm * 0.4;
}

}  // namespace

std::vector<std::string> looked_lines(const weighing::Result& result) {
  std::vector<std::string> lines{
      signed_line(result.survey.visit), shares_line(result.main), ways_line(result),
      tools_line(result.survey),        found_line(result),       coat_line(result),
      weather_line(result.survey),      also_line(result.survey)};
  std::erase(lines, "");
  return lines;
}

std::vector<std::string> unseen_lines(const weighing::Result& result, std::size_t most) {
  constexpr std::size_t first = 8;
  std::vector<std::string> lines;
  const auto add = [&](const std::string& what, const std::vector<int>& zones, std::size_t told) {
    if (!zones.empty()) lines.push_back(fmt::format("{}: {}.", what, named(result, zones, told)));
  };
  for (const NotSeenLine& line : not_seen_lines(result))
    add(capitalised(line.why), line.zones, most);
  if (lines.empty()) lines.push_back("No zone was left out altogether.");
  const Unseen unseen = unseen_of(result);
  add("In part, the rest not", unseen.part, most);
  add("Not inside", unseen.inside, most);
  add("To open up first", unseen.open, std::min(first, most));
  return lines;
}

std::string elsewhere_line(const weighing::Result& result, SheetKind kind, std::size_t most) {
  std::vector<int> zones;
  for (const weighing::Zone& zone : result.zones) {
    const body::Zone* plan = zone.number == 0 ? nullptr : result.body->zone(zone.number);
    if (plan == nullptr || std::ranges::none_of(zone.spots, &weighing::Spot::found)) continue;
    const bool here = std::ranges::any_of(plan->drawn, [&](const body::Drawing& drawing) {
      return drawing_on(kind, *plan, drawing.view) != nullptr;
    });
    if (!here) zones.push_back(zone.number);
  }
  if (zones.empty()) return "";
  return fmt::format("Rust was found too on parts that this sheet doesn't show: {}.",
                     named(result, zones, most));
}

std::vector<std::string> not_drawn_words(const weighing::Result& result, std::size_t most) {
  std::vector<std::pair<weighing::Step, std::string>> parts;
  for (const weighing::Zone& zone : result.zones)
    if (zone.number == 0) parts.emplace_back(zone.step, not_drawn_line(zone));
  std::ranges::sort(parts, std::greater());
  std::vector<std::string> lines;
  for (auto part = parts.begin(); part != parts.end();) {
    const auto end =
        std::find_if(part, parts.end(), [&](const auto& each) { return each != *part; });
    const auto alike = static_cast<std::size_t>(end - part);
    if (lines.size() == most) {
      const auto more = static_cast<std::size_t>(parts.end() - part);
      lines.push_back("and " + counted(more, "more part", "more parts"));
      break;
    }
    lines.push_back(part->second + (alike > 1 ? fmt::format("; {} such parts", alike) : ""));
    part = end;
  }
  return lines;
}

std::string unseen_share(const weighing::Result& result) {
  if (!result.main.any) return "";
  return fmt::format("{} % of the main structure was not seen.", shares_of(result.main).unseen);
}

std::vector<std::string> repair_lines(const weighing::Result& result) {
  std::vector<std::pair<std::pair<body::Role, Trust>, std::string>> found;
  for (const weighing::Zone& zone : result.zones) {
    const survey::Zone* recorded = recorded_in(result.survey, zone);
    if (recorded == nullptr) continue;
    for (std::size_t i = 0; i < zone.repairs.size(); ++i) {
      const weighing::Repair& judged = zone.repairs[i];
      found.push_back(
          {{zone.role, trust(judged)}, repair_line(zone, judged, recorded->repairs.at(i))});
    }
  }
  std::ranges::stable_sort(found, {}, [](const auto& each) { return each.first; });
  std::vector<std::string> lines;
  for (auto& [order, line] : found) lines.push_back(std::move(line));
  return lines;
}

void write_looked(Writer& writer, const weighing::Result& result, Setting setting) {
  std::vector<std::string> lines = looked_lines(result);
  if (setting == Setting::flowing) lines = {fmt::format("{}", fmt::join(lines, " "))};
  write_list(writer, "How it was looked at", repairs_heading, lines, list_style);
}

void write_unseen(Writer& writer, const weighing::Result& result, std::size_t most) {
  write_list(writer, "Not seen, so not known", unseen_heading, unseen_lines(result, most),
             not_seen_style);
  constexpr std::size_t zones_as_long = 4;  // as one part not drawn, in words
  write_list(writer, "Not on the drawing", repairs_heading,
             not_drawn_words(result, most == no_limit ? most : most / zones_as_long), list_style);
}

void write_repairs(Writer& writer, const weighing::Result& result, double most_mm) {
  std::vector<std::string> lines = repair_lines(result);
  if (lines.empty()) lines.push_back("No repair was noted. Good repairs don't show.");
  const double end = writer.y + most_mm - line_height_mm(list_style);
  writer.rule();
  writer.block("Repairs found", repairs_heading);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const bool last = i + 1 == lines.size();
    const double most = last ? end + line_height_mm(list_style) : end;
    if (i > 0 && writer.y + writer.height(lines[i], list_style) > most) {
      writer.block("and " + counted(lines.size() - i, "more repair", "more repairs"), list_style);
      break;
    }
    writer.block(lines[i], list_style);
  }
  writer.y += apart_mm * 0.4;
}

}  // namespace tinworm::scene
