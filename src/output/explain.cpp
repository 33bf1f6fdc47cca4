#include "output/explain.hpp"

#include <cmath>

#include <fmt/format.h>

#include "output/display_width.hpp"
#include "output/figures.hpp"
#include "output/table.hpp"
#include "output/zone_text.hpp"
#include "weighing/words.hpp"

namespace tinworm::output {
namespace {

using weighing::MetalLeft;

std::string line(const std::string& text, const TextStyle& style) {
  return indented(text, style.width, "  ", "    ");
}

std::string span_text(const weighing::Span& span) {
  return fmt::format("{:.3f} (low {:.3f}, high {:.3f})", span.value, span.low, span.high);
}

const char* baseline_text(weighing::BaselineFrom from) {
  switch (from) {
    case weighing::BaselineFrom::reference:
      return "reference readings in the zone";
    case weighing::BaselineFrom::pair_reference:
      return "reference readings in its pair";
    case weighing::BaselineFrom::survey_sheet:
      return "sheet given in the survey";
    case weighing::BaselineFrom::plan_sheet:
      return "sheet of the body plan, assumed";
    case weighing::BaselineFrom::none:
      break;
  }
  return "no baseline";
}

std::string freedom_text(std::optional<double> degrees) {
  return degrees ? fmt::format("{:.1f}", *degrees) : "infinite";
}

// Unit of u: mm or a fraction of the sheet, as the sensitivity makes of it.
std::string budget(const MetalLeft& metal, const TextStyle& style) {
  if (metal.budget.empty()) return "";
  std::vector<Row> rows;
  for (const metal::Component& part : metal.budget) {
    rows.push_back({part.what, fmt::format("{:.4f}", part.standard),
                    fmt::format("{:.4f}", part.sensitivity),
                    fmt::format("{:.4f}", std::abs(part.standard * part.sensitivity)),
                    freedom_text(part.degrees_of_freedom)});
  }
  rows.push_back({"together", "", "", fmt::format("{:.4f}", metal::combined_standard(metal.budget)),
                  freedom_text(metal.degrees_of_freedom)});
  return table({{"uncertainty of the metal left"},
                {"u", Align::right},
                {"sensitivity", Align::right},
                {"comes to", Align::right},
                {"degrees of freedom", Align::right}},
               rows, style.width, "    ") +
         line(
             "degrees of freedom together by Welch–Satterthwaite; a scatter that spot and "
             "reference "
             "share counts once",
             style);
}

std::string metal_text(const MetalLeft& metal, const TextStyle& style) {
  std::string text;
  if (metal.mean_mm) {
    text += line(fmt::format("readings: {}, mean {}, least {}", metal.readings,
                             sheet_text(*metal.mean_mm, style.units),
                             sheet_text(metal.least_mm.value_or(*metal.mean_mm), style.units)),
                 style);
  }
  if (metal.baseline_mm) {
    text += line(fmt::format("baseline: {}, {}", sheet_text(*metal.baseline_mm, style.units),
                             baseline_text(metal.baseline_from)),
                 style);
  }
  text += line(fmt::format("metal left: {}, {}", span_text(metal.shown),
                           metal.kind == weighing::SpanKind::interval
                               ? "95 % interval"
                               : "an envelope by common practice, not an interval"),
               style);
  text += budget(metal, style);
  if (metal.pit_left) {
    std::string left = fmt::format("left under the deepest pit: {:.3f}", *metal.pit_left);
    if (metal.pit_left_low < metal.pit_left)
      left += fmt::format(", at worst {:.3f}", *metal.pit_left_low);
    text += line(left, style);
  }
  text += line("as weighed: " + span_text(metal.weighed), style);
  for (const std::string& remark : metal.remarks) text += line("note: " + remark, style);
  return text;
}

std::string near_text(const weighing::Spot& spot, const TextStyle& style) {
  switch (spot.near) {
    case weighing::Near::no:
      return "";
    case weighing::Near::maybe:
      return line("may be near: " + spot.near_what + "; its place was not recorded", style);
    case weighing::Near::within_radius:
      return line(fmt::format("near: {}, {} away", spot.near_what,
                              distance_text(spot.near_mm, style.units)),
                  style);
    case weighing::Near::into_mount:
      return line(fmt::format("in a part that takes the load of: {}, {} away", spot.near_what,
                              distance_text(spot.near_mm, style.units)),
                  style);
    case weighing::Near::on_mount:
      break;
  }
  return line(fmt::format("on a part that carries: {}, {} away", spot.near_what,
                          distance_text(spot.near_mm, style.units)),
              style);
}

std::string spot_text(const weighing::Spot& spot, const TextStyle& style) {
  std::string title = spot.is_repair ? "Repair: " : "";
  title += spot.name;
  const bool contradicts = spot.found && spot.rust == survey::word(survey::Rust::none);
  if (!spot.rust.empty() && !contradicts) title += ", " + spot.rust;
  if (const std::string signs = weighing::signs_text(spot); !signs.empty()) title += ", " + signs;
  if (spot.rank > 0) title += fmt::format(", rank {}", spot.rank);
  return "\n" + heading(title, style) + "\n" + metal_text(spot.metal, style) +
         near_text(spot, style) +
         line(fmt::format("step: {}, {}", step_text(spot.step, spot.step_high, spot.step_low),
                          evidence_text(spot.evidence)),
              style) +
         line(
             fmt::format("damage {:.3f}; it covers {} of the zone's length; weight {}, counting {}",
                         spot.damage, percent_text(spot.share_of_length), span_text(spot.weight),
                         spot.counts),
             style);
}

std::string zone_facts(const weighing::Zone& zone, const TextStyle& style) {
  std::string seen = zone.seen.word ? std::string(word(*zone.seen.word)) : "not named, so not seen";
  if (!zone.seen.reason.empty()) seen += ": " + zone.seen.reason;
  std::string text =
      line(fmt::format("role: {}", body::word(zone.role)), style) + line("seen: " + seen, style);
  if (!zone.inside.empty()) text += line("inside: " + zone.inside, style);
  if (zone.metal) text += line("metal left in the zone: " + span_text(zone.metal->shown), style);
  text += line(fmt::format("step: {}, {}", step_text(zone.step, zone.step_high, zone.step_low),
                           evidence_text(zone.evidence)),
               style);
  if (zone.rusted_share) {
    std::string rusted = fmt::format("rusted: {:.2f} % of its area", 100 * *zone.rusted_share);
    if (zone.iso4628_3) rusted += fmt::format(", ISO 4628-3 Ri {}", *zone.iso4628_3);
    if (zone.astm_d610) rusted += fmt::format(", ASTM D610 grade {}", *zone.astm_d610);
    text += line(rusted, style);
  }
  if (zone.film) {
    text +=
        line(fmt::format("film: median {:.0f} µm, {:.0f} to {}{:.0f} µm{}: {}",
                         zone.film->median_um, zone.film->least_um,
                         zone.film->off_scale ? "over " : "", zone.film->greatest_um,
                         zone.film->off_scale ? ", off the gauge's scale" : "", zone.film->reading),
             style);
  }
  return text + line(fmt::format("weight {}; share of the shell burden {}", span_text(zone.weight),
                                 percent_text(zone.share)),
                     style);
}

const body::Box* box_named(const weighing::Result& result, const std::string& name) {
  const auto found = std::ranges::find(result.body->boxes, name, &body::Box::name);
  return found == result.body->boxes.end() ? nullptr : &*found;
}

// Of the coordinate along the box.
char axis_letter(const weighing::Result& result, const std::string& box_name) {
  const body::Box* box = box_named(result, box_name);
  return "xyz"[box ? static_cast<std::size_t>(box->axis) : 0];
}

std::string wall_text(const weighing::WallLeft& wall, const weighing::Result& result) {
  const weighing::Zone* zone = result.zone(wall.zone);
  const std::string name = zone ? zone_title(*zone) : "";
  const std::string whole = fmt::format("{:.0f} mm round x {:g} mm sheet = {:.0f} mm2",
                                        wall.width_mm, wall.sheet_mm, wall.area_mm2());
  if (wall.gone_mm <= 0) return fmt::format("{}: {}, all of it left", name, whole);
  const double left_there = 1 - wall.width_mm * (1 - wall.left) / wall.gone_mm;
  return fmt::format(
      "{}: {}; weak or holed over {:.0f} of the {:.0f} mm, with {} of its sheet left there: so "
      "{:.0f} mm2 left",
      name, whole, wall.gone_mm, wall.width_mm, percent_text(left_there),
      wall.area_mm2() * wall.left);
}

std::string section_verdict(const weighing::SectionLeft& section) {
  if (section.gone) return "so its section is gone there: it no longer carries";
  if (section.may_go)
    return "so it stands by what was found; what was only judged or not seen may still take it";
  return "so its section stands";
}

// What is left of each box that the zone is a wall of, as a sum that can be worked by hand.
std::string section_text(const weighing::BoxResult& box, const weighing::Result& result,
                         const TextStyle& style) {
  const weighing::SectionLeft& section = *box.section;
  std::string text = line(
      fmt::format("{}, cut through where least of it is left, between {} {:.0f} and {:.0f} mm:",
                  box.name, axis_letter(result, box.name), section.from_mm, section.to_mm),
      style);
  for (const weighing::WallLeft& wall : section.walls) text += line(wall_text(wall, result), style);
  // To a tenth: what is just under the limit would else read as on it.
  text += line(
      fmt::format("together {:.0f} of {:.0f} mm2: {:.1f} % of the wall metal (at worst {:.1f} %); "
                  "under {} a section counts as gone",
                  section.left_area_mm2(), section.area_mm2(), 100 * section.left.value,
                  100 * section.left.low, percent_text(section.limit)),
      style);
  if (section.all_layers)
    text += line("every layer is weak or holed at one place: none is left to carry for the others",
                 style);
  return text + line(section_verdict(section), style);
}

std::string sections_text(const weighing::Result& result, const weighing::Zone& zone,
                          const TextStyle& style) {
  std::string text;
  for (const weighing::BoxResult& box : result.boxes) {
    const body::Box* plan = box_named(result, box.name);
    if (!plan || !box.section || !zone.own.empty()) continue;
    if (std::ranges::find(plan->walls, zone.number, &body::BoxWall::zone) != plan->walls.end())
      text += section_text(box, result, style);
  }
  return text.empty() ? "" : "\n" + heading("Section left", style) + "\n" + text;
}

std::string burden_text(const char* name, const weighing::Burden& burden, const TextStyle& style) {
  const std::string value = burden.value ? fmt::format("{:.3f}", *burden.value) : "not known";
  const std::string why = burden.value ? "" : ": " + burden.why;
  return line(
      fmt::format("{} {} (low {:.3f}, high {:.3f}){}", name, value, burden.low, burden.high, why),
      style);
}

}  // namespace

std::string explain_zone(const weighing::Result& result, const weighing::Zone& zone,
                         const TextStyle& style) {
  std::string text = heading(zone_title(zone), style) + "\n" + rules_block(result, style) +
                     zone_facts(zone, style);
  for (const weighing::Spot& spot : zone.spots) text += spot_text(spot, style);
  text += sections_text(result, zone, style);
  const auto reasons = [&](const std::vector<weighing::Reason>& all, const char* title) {
    std::string lines;
    for (const weighing::Reason& reason : all) {
      if (reason.zone != zone.number || reason.own != zone.own) continue;
      lines += line(fmt::format("{} [{}: {}]", reason.text, reason.rule, reason.source), style);
    }
    if (!lines.empty()) text += "\n" + heading(title, style) + "\n" + lines;
  };
  reasons(result.reasons, "In the verdict");
  reasons(result.open_reasons, "To be opened");
  return text + "\n" + heading("Burdens of the whole car (0 none, 1 all)", style) + "\n" +
         burden_text("structure", result.structure, style) +
         burden_text("skin", result.skin, style) + burden_text("shell", result.shell, style) +
         "\n" + indented(result.caution, style.width, "", "");
}

}  // namespace tinworm::output
