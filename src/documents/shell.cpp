#include "documents/shell.hpp"

#include <cmath>

#include <fmt/format.h>

#include "output/figures.hpp"

namespace tinworm::documents {
namespace {

using output::burden_word;

std::string weighs(const weighing::Burden& burden) {
  const std::string low = burden_word(burden.low), high = burden_word(burden.high);
  const std::string range = low == high ? "" : fmt::format("from {} to {}", low, high);
  if (!burden.value)
    return fmt::format("not known, {}: {}", range.empty() ? low : range, burden.why);
  return burden_word(*burden.value) + (range.empty() ? "" : ", " + range);
}

void write_burdens(Flow& flow, const weighing::Result& result) {
  flow.table({{"part of the car", 1}, {"how much the rust weighs", 4}},
             {{{"structure", weighs(result.structure)}, "", "", false},
              {{"skin", weighs(result.skin)}, "", "", false},
              {{"shell, both together", weighs(result.shell)}, "", "", false}});
  flow.paragraph(
      fmt::format("On this body one main part rusted away would be {} for the structure. Weights "
                  "compare surveys; the verdict doesn't rest on them.",
                  burden_word(result.one_zone_gone)),
      note_style);
}

void write_boxes(Flow& flow, const weighing::Result& result) {
  if (result.boxes.empty()) return;
  std::vector<Row> rows;
  for (const weighing::BoxResult& box : result.boxes)
    rows.push_back(
        {{box.name, box.twist_kept ? output::percent_span(*box.twist_kept) : "no figure",
          box.bending_kept ? output::percent_span(*box.bending_kept) : "no figure", box.withheld},
         "",
         "",
         false});
  flow.heading("Stiffness that the boxes keep: low, likely, high");
  flow.table({{"box", 1.4},
              {"in twist", 1, scene::Align::right},
              {"in bending", 1, scene::Align::right},
              {"why there is no figure", 2.6}},
             rows);
  flow.paragraph(
      "Indicative: by thin-wall formulas for sections that keep their shape, beside what "
      "they had when new. It says nothing of strength.",
      note_style);
}

// To half a millimetre: gaps are read with feeler gauges.
std::string gap_text(double mm, quantity::Units units) {
  constexpr double mm_per_inch = 25.4;
  return units == quantity::Units::mm ? fmt::format("{:.1f} mm", mm)
                                      : fmt::format("{:.2f} in", mm / mm_per_inch);
}

std::string where_text(const survey::Gap& gap) {
  const std::string side = gap.side ? fmt::format(", {}", body::word(*gap.side)) : "";
  const bool is_gap = gap.kind == survey::GapKind::gap;
  return fmt::format("{}{}{}", gap.where, side, is_gap ? "" : fmt::format(" ({})", word(gap.kind)));
}

void write_gaps(Flow& flow, const weighing::Result& result, quantity::Units units) {
  if (result.survey.gaps.empty()) return;
  std::vector<Row> rows;
  const auto gap = [&](const std::optional<double>& mm) {
    return mm ? gap_text(*mm, units) : "not taken";
  };
  for (const survey::Gap& each : result.survey.gaps) {
    std::string moves = "not known";
    if (each.wheels_mm && each.lift_mm)
      moves = gap_text(std::abs(*each.lift_mm - *each.wheels_mm), units);
    rows.push_back(
        {{where_text(each), gap(each.wheels_mm), gap(each.lift_mm), moves}, "", "", false});
  }
  flow.heading("Panel gaps");
  flow.table({{"where", 2.4},
              {"on its wheels", 1, scene::Align::right},
              {"on the lift", 1, scene::Align::right},
              {"moves by", 1, scene::Align::right}},
             rows);
  flow.paragraph(
      "A door gap that closes on the lift tells of a shell that bends; by how much is "
      "for judgement (common practice).",
      note_style);
}

}  // namespace

void write_shell(Flow& flow, const weighing::Result& result, quantity::Units units) {
  flow.section("The shell as a whole", "shell");
  write_burdens(flow, result);
  write_boxes(flow, result);
  write_gaps(flow, result, units);
}

}  // namespace tinworm::documents
