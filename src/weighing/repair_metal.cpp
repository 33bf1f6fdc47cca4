#include "weighing/repair_metal.hpp"

#include <fmt/format.h>

namespace tinworm::weighing {

std::optional<Judgement> repair_metal(const survey::Repair& repair, const Coating& coating,
                                      const Gauging& gauging, const rules::Rules& rules) {
  const bool of_metal = repair.kind != survey::RepairKind::treated;
  if (!of_metal || repair.metal_mm.empty() || !repair.sheet_mm) return std::nullopt;
  survey::Spot readings;
  readings.metal_mm = repair.metal_mm;
  const ZoneBaseline own_sheet{
      BaselineFrom::survey_sheet,
      metal::stated_sheet(*repair.sheet_mm, rules.survey_sheet_half_share)};
  return metal_at(readings, own_sheet, coating, gauging, rules, std::nullopt);
}

bool is_past_limit(const Judgement& metal, const rules::Rules& rules) {
  return metal.metal.weighed.value < rules.repair_limit - 1e-9;
}

std::string wasted_text(const survey::Repair& repair, const Judgement& metal) {
  const MetalLeft& left = metal.metal;
  if (!left.mean_mm) return "its own metal is past the limit";
  return fmt::format("its own metal is down to {:.0f} % of its sheet ({:.2f} of {:.2f} mm)",
                     100 * left.weighed.value, *left.mean_mm, *repair.sheet_mm);
}

}  // namespace tinworm::weighing
