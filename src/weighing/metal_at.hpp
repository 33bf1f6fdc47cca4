// Metal left at a spot: from readings with their interval, or from words and hands as an envelope.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "rules/rules.hpp"
#include "survey/survey.hpp"
#include "weighing/gauging.hpp"
#include "weighing/result.hpp"

namespace tinworm::weighing {

struct Judgement {
  MetalLeft metal;
  Evidence evidence = Evidence::looked;
  bool by_measure_or_hand =
      false;  // a reading used, a pit, a hole, a crack, stuffing, or metal that gave way
  bool too_thick = false;    // readings over one sheet
  bool by_stuffing = false;  // no other sign is as bad as what the place is stuffed with
};

// `area_mm2`: of the rusted place, for the greatest pit over it; none where it has no size.
Judgement metal_at(const survey::Spot& spot, const ZoneBaseline& baseline, const Coating& coating,
                   const Gauging& gauging, const rules::Rules& rules,
                   std::optional<double> area_mm2);

// The envelope of a repair: one that can't be relied on, one whose joint isn't known.
MetalLeft bad_repair(const rules::Rules& rules);
MetalLeft unknown_repair(const rules::Rules& rules);

MetalLeft from_envelope(const rules::Envelope& envelope);

// Whether the spot records rust or damage, whatever its metal.
bool has_sign_of_rust(const survey::Spot& spot);

}  // namespace tinworm::weighing
