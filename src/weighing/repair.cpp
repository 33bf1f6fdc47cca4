#include "weighing/repair.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string>
#include <vector>

#include "survey/written.hpp"

namespace tinworm::weighing {
namespace {

using survey::Beneath;
using survey::Joint;
using survey::Now;
using survey::RepairKind;

struct Answer {
  std::optional<bool> reliable;
  std::string why;
};

bool may_be_welded_well(RepairKind kind) {
  return kind == RepairKind::let_in || kind == RepairKind::lapped ||
         kind == RepairKind::new_panel || kind == RepairKind::plated_over;
}

// Joined in several ways, it is as good as the worst of them.
Answer by_joint(RepairKind kind, const std::vector<Joint>& joints) {
  const auto is_as_factory = [&](Joint joint) {
    return kind == RepairKind::new_panel &&
           (joint == Joint::plug_weld || joint == Joint::spot_weld);
  };
  const auto bad = std::ranges::find_if(
      joints, [&](Joint joint) { return joint != Joint::seam_weld && !is_as_factory(joint); });
  if (bad != joints.end())
    return {false, fmt::format("joined by {} where a seam weld is needed", word(*bad))};
  if (std::ranges::any_of(joints, is_as_factory))
    return {true, "a new panel, welded as the original was"};
  return {true, "seam-welded"};
}

Answer by_make(const survey::Repair& repair) {
  const bool plate = repair.kind == RepairKind::plated_over;
  if (plate && repair.beneath != Beneath::cut_out)
    return {false, repair.beneath == Beneath::over_rust
                       ? "a plate over rust"
                       : "a plate, and whether the rust was cut out isn't known"};
  if (repair.beneath == Beneath::over_rust) return {false, "set over rust"};
  if (repair.sides == survey::Sides::open_side) return {false, "a side of it isn't welded"};
  if (repair.layers) return {false, fmt::format("{} sheets on one another", *repair.layers)};
  if (!repair.joint && plate) return {false, "a plate whose weld isn't recorded"};
  if (!repair.joint) return {std::nullopt, "how it is joined isn't recorded"};
  return by_joint(repair.kind, repair.joints());
}

Answer answer(const survey::Repair& repair) {
  if (repair.kind == RepairKind::treated) return {std::nullopt, "a treatment, no repair of metal"};
  if (repair.now != Now::sound) return {false, fmt::format("now {}", word(repair.now))};
  if (!may_be_welded_well(repair.kind))
    return {false, fmt::format("{}: not strong enough for load-bearing metal", word(repair.kind))};
  return by_make(repair);
}

std::string size_text(const survey::Size& size, quantity::Units units) {
  const bool inch = units == quantity::Units::inch;
  const auto figure = [&](double mm) {
    return inch ? fmt::format("{:.1f}", mm / 25.4) : fmt::format("{:.0f}", mm);
  };
  const std::string unit = inch ? "in" : "mm";
  if (!size.across_known)
    return fmt::format("{} {} long, width not known", figure(size.along_mm), unit);
  return fmt::format("{} x {} {}", figure(size.along_mm), figure(size.across_mm), unit);
}

}  // namespace

std::string text_of(const survey::Repair& repair, quantity::Units units) {
  std::string text = repair.name.empty() ? "" : repair.name + ": ";
  text += word(repair.kind);
  for (const Joint joint : repair.joints()) text += fmt::format(", {}", word(joint));
  if (repair.sides) text += fmt::format(", {}", word(*repair.sides));
  if (repair.layers) text += fmt::format(", {} layers", *repair.layers);
  if (repair.size) text += ", " + size_text(*repair.size, units);
  if (repair.sheet_mm) text += fmt::format(", sheet {:g} mm", *repair.sheet_mm);
  if (!repair.metal_mm.empty())
    text += fmt::format(", metal {} mm", survey::readings(repair.metal_mm));
  if (repair.date) text += ", " + repair.date->text();
  if (repair.beneath) text += fmt::format(", beneath {}", word(*repair.beneath));
  text += repair.now_assumed ? ", taken to be sound" : fmt::format(", now {}", word(repair.now));
  return text;
}

bool renews(const survey::Repair& repair) {
  return repair.kind == RepairKind::let_in || repair.kind == RepairKind::lapped ||
         repair.kind == RepairKind::new_panel;
}

bool failed_treatment(const survey::Repair& repair) {
  return repair.kind == RepairKind::treated &&
         (repair.now == Now::rusting || repair.now == Now::lifting || repair.now == Now::cracked);
}

Repair judge(const survey::Repair& repair, body::Role role) {
  const Answer found = answer(repair);
  Repair result;
  result.text = text_of(repair);
  result.reliable = found.reliable;
  result.why = found.why;
  result.now_assumed = repair.now_assumed;
  result.treatment = repair.kind == survey::RepairKind::treated;
  if (role == body::Role::skin && repair.kind != RepairKind::treated)
    result.why += "; on skin it changes nothing";
  return result;
}

}  // namespace tinworm::weighing
