#include "documents/method.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "documents/work_part.hpp"
#include "scene/listing_words.hpp"
#include "scene/palette.hpp"
#include "weighing/words.hpp"
#include "yaml/characters.hpp"

namespace tinworm::documents {
namespace {

using weighing::Result;

constexpr const char* what_is_signed =
    "This paper says what was found on that day, where and by which means it was looked at. It is "
    "no promise about what wasn't seen, and none about the time after.";

// Three figures: a gauge's error is far below what sheet metal is told to.
std::string error_text(double mm, quantity::Units units) {
  constexpr double mm_per_thou = 0.0254;
  return units == quantity::Units::mm ? fmt::format("{:.3g} mm", mm)
                                      : fmt::format("{:.3g} thou", mm / mm_per_thou);
}

std::string gauge_line(const survey::MetalGauge& gauge, quantity::Units units) {
  std::string line = "Metal gauge";
  if (!gauge.name.empty()) line += " " + gauge.name;
  line += gauge.uncertainty_mm
              ? fmt::format(": standard uncertainty {} as the survey states",
                            error_text(*gauge.uncertainty_mm, units))
              : std::string(": uncertainty not stated, the rule's figure was taken");
  switch (gauge.coating) {
    case survey::Coating::removed:
      line += "; coating taken off under it";
      break;
    case survey::Coating::left_on:
      line += "; coating left on under it";
      break;
    case survey::Coating::compensated:
      line += "; coating compensated by the gauge";
      break;
  }
  return line + (gauge.coating_assumed ? " (assumed)." : ".");
}

// Each rule named in the reasons, once, and where it comes from.
void write_rules_named(Flow& flow, const Result& result) {
  std::vector<Row> rows;
  const auto add = [&](const std::vector<weighing::Reason>& reasons) {
    for (const weighing::Reason& each : reasons)
      if (std::ranges::none_of(rows, [&](const Row& row) { return row.cells[0] == each.rule; }))
        rows.push_back({{each.rule, each.source}, "", "", false});
  };
  add(result.reasons);
  add(result.also_to_mend);
  add(result.open_reasons);
  flow.heading("Rules that the verdict rests on");
  flow.table({{"rule", 1}, {"where it comes from", 4}}, rows);
}

// "rust.pitting" of "rust.pitting.least": three constants that are one range. Empty: stands alone.
std::string range_of(const std::string& key) {
  for (const std::string_view end : {".least", ".likely", ".most"})
    if (key.ends_with(end)) return key.substr(0, key.size() - end.size());
  return "";
}

std::string value_words(const Result& result, const rules::Constant& constant) {
  const rules::Rules standard;
  const double now = value(result.constants, constant), then = value(standard, constant);
  std::string text = value_text(constant, now);
  if (now != then) text += fmt::format(" (default {})", value_text(constant, then));
  return text;
}

// "70 % of the sheet" and "85 % of the sheet" are "70–85 % of the sheet".
void join(std::string& range, const std::string& next) {
  constexpr std::string_view unit = " % of the sheet";
  const bool alike = range.ends_with(unit) && next.ends_with(unit);
  if (alike) range.erase(range.size() - unit.size());
  range += (alike ? "–" : ", ") + next;
}

std::string source_words(const rules::Constant& constant) {
  return constant.source.empty() ? std::string(rules::word(constant.standing)) : constant.source;
}

bool is_changed(const Result& result, const rules::Constant& constant) {
  return value(result.constants, constant) != value(rules::Rules{}, constant);
}

// The three of a range in one row: least, likely, most.
void write_constants(Flow& flow, const Result& result) {
  std::vector<Row> rows;
  std::string range;
  for (const rules::Constant& each : rules::constants()) {
    const std::string of = range_of(each.key);
    if (!of.empty() && of == range) {
      join(rows.back().cells[1], value_words(result, each));
      rows.back().strong |= is_changed(result, each);
      continue;
    }
    range = of;
    rows.push_back(
        {{of.empty() ? each.key : of, value_words(result, each), each.what, source_words(each)},
         "",
         "",
         is_changed(result, each)});
  }
  flow.heading("The method's constants",
               "Ranges are least, likely, most. A rules file may change any of them; changed ones "
               "stand in bold.");
  flow.table({{"constant", 1.3}, {"value", 1.6}, {"what", 2.5}, {"source", 2.3}}, rows);
}

// "Reason of the visit: purchase. With leave for: carpets, underseal, probe."
std::string visit_line(const survey::Visit& visit) {
  std::string line;
  if (visit.reason) line = fmt::format("Reason of the visit: {}.", survey::word(*visit.reason));
  const std::string leave =
      visit.leave.empty() ? std::string("What might be lifted, scraped or probed isn't recorded.")
                          : fmt::format("With leave for: {}.", fmt::join(visit.leave, ", "));
  return line + (line.empty() ? "" : " ") + leave;
}

// "How it is kept: all-weather, air C4 (ISO 9223), waxed 2023-09."; empty where nothing is told.
std::string kept_line(const survey::Kept& kept) {
  std::vector<std::string> words;
  if (kept.use) words.emplace_back(survey::word(*kept.use));
  if (kept.air) words.push_back(fmt::format("air {} (ISO 9223)", survey::word(*kept.air)));
  if (kept.waxed) words.push_back("waxed " + kept.waxed->text());
  return words.empty() ? "" : fmt::format("How it is kept: {}.", fmt::join(words, ", "));
}

}  // namespace

void write_method(Flow& flow, const Result& result, const work::Plan& plan, quantity::Units units) {
  flow.section("How it was judged", "method");
  flow.item(visit_line(result.survey.visit));
  if (const std::string kept = kept_line(result.survey.kept); !kept.empty()) flow.item(kept);
  for (const std::string& line : scene::looked_lines(result)) flow.item(line);
  flow.item(gauge_line(result.survey.gauge, units));
  flow.item(
      "A figure that was measured has a 95 % interval (JCGM 100); what was felt or looked at "
      "has a range of common practice. Looked at is never called measured, and what nobody "
      "saw is never called sound.");
  if (const std::string rules = weighing::rules_text(result); !rules.empty()) flow.item(rules);
  flow.item(fmt::format("Survey file {}, SHA-256 {}; body plan {} {}; tinworm {}.",
                        yaml::shown(result.file), result.sha256, result.body->name,
                        result.body->version, TINWORM_VERSION));
  write_rules_named(flow, result);
  write_constants(flow, result);
  write_assumptions(flow, plan);
}

void write_signatures(Flow& flow, const Result& result) {
  constexpr double least_mm = 42, line_mm = 29, names_mm = line_mm + 4.5, below_mm = 2;
  const survey::Visit& visit = result.survey.visit;
  const std::string& owner = result.survey.car.owner;
  std::string surveyor = visit.by.empty() ? "name:" : visit.by;
  if (!visit.interest.empty()) surveyor += "; interest in a sale of this car: " + visit.interest;
  const double width = flow.width_mm() / 2 - 5;
  const auto lines = scene::wrap(surveyor, small_style, width, flow.measure()).size();
  const double names_height = scene::line_height_mm(small_style) * static_cast<double>(lines);
  flow.section("Signed", "signed");
  flow.block(std::max(least_mm, names_mm + names_height + below_mm), [&](scene::Page& page,
                                                                         const scene::Area& area) {
    scene::Layer& layer = page.layer("text");
    scene::set_block(layer, what_is_signed, text_style, {area.x_mm, area.y_mm}, area.width_mm,
                     flow.measure());
    const auto line = [&](double x, const std::string& who, const std::string& name) {
      layer.items.push_back(
          scene::Shape{{scene::segment({x, area.y_mm + line_mm}, {x + width, area.y_mm + line_mm})},
                       {},
                       scene::Stroke{scene::ink, 0.5, {}}});
      scene::set_block(layer, who, small_heading_style, {x, area.y_mm + line_mm + 1}, width,
                       flow.measure());
      scene::set_block(layer, name, small_style, {x, area.y_mm + names_mm}, width, flow.measure());
    };
    line(area.x_mm, "looked at the car, date", surveyor);
    line(area.right() - width, "received this paper, date", owner.empty() ? "name:" : owner);
  });
}

}  // namespace tinworm::documents
