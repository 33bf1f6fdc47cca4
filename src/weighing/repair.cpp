#include "weighing/repair.hpp"

#include <fmt/format.h>

#include <string>

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

Answer by_joint(const survey::Repair& repair) {
  const bool plate = repair.kind == RepairKind::plated_over;
  if (plate && repair.beneath != Beneath::cut_out)
    return {false, repair.beneath == Beneath::over_rust
                       ? "a plate over rust"
                       : "a plate, and whether the rust was cut out isn't known"};
  if (repair.beneath == Beneath::over_rust) return {false, "set over rust"};
  if (!repair.joint && plate) return {false, "a plate whose weld isn't recorded"};
  if (!repair.joint) return {std::nullopt, "how it is joined isn't recorded"};
  if (repair.joint == Joint::seam_weld) return {true, "seam-welded"};
  const bool as_factory = repair.kind == RepairKind::new_panel &&
                          (repair.joint == Joint::plug_weld || repair.joint == Joint::spot_weld);
  if (as_factory) return {true, "a new panel, welded as the original was"};
  return {false, fmt::format("joined by {} where a seam weld is needed", word(*repair.joint))};
}

Answer answer(const survey::Repair& repair) {
  if (repair.kind == RepairKind::treated) return {std::nullopt, "a treatment, no repair of metal"};
  if (repair.now != Now::sound) return {false, fmt::format("now {}", word(repair.now))};
  if (!may_be_welded_well(repair.kind))
    return {false, fmt::format("{}: not strong enough for load-bearing metal", word(repair.kind))};
  return by_joint(repair);
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
  std::string text(word(repair.kind));
  if (repair.joint) text += fmt::format(", {}", word(*repair.joint));
  if (repair.size) text += ", " + size_text(*repair.size, units);
  if (repair.date) text += ", " + repair.date->text();
  if (repair.beneath) text += fmt::format(", beneath {}", word(*repair.beneath));
  text += repair.now_assumed ? ", taken to be sound" : fmt::format(", now {}", word(repair.now));
  return text;
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
  if (role == body::Role::skin && repair.kind != RepairKind::treated)
    result.why += "; on skin it changes nothing";
  return result;
}

}  // namespace tinworm::weighing
