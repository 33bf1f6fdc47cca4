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
  Span beside{1, 1, 1};  // of the place without its hole and stuffing
  Evidence evidence = Evidence::looked;
  // A reading used, a pit, a hole, a crack, stuffing, or metal that gave way.
  bool by_measure_or_hand = false;
  bool beside_by_measure_or_hand = false;  // the same of the metal beside
  bool too_thick = false;                  // readings over one sheet
  bool contradict = false;                 // readings that contradict each other, or the film
  bool bound_not_sound = false;            // readings that are only an upper bound, and not sound
  bool sheet_assumed = false;              // readings against the plan's sheet alone
};

// `area_mm2`: of the rusted place, for the greatest pit over it; none where it has no size.
// `pinhole`: its hole is one.
Judgement metal_at(const survey::Spot& spot, const ZoneBaseline& baseline, const Coating& coating,
                   const Gauging& gauging, const rules::Rules& rules,
                   std::optional<double> area_mm2, bool pinhole = false);

// Whether its hole is a pinhole: a small one in metal that is firm, rings, stops the probe, or
// reads past the limit beside it, and gives nowhere. More of them together are a hole: see
// weigh_zone.
bool is_pinhole(const survey::Spot& spot, const ZoneBaseline& baseline, const Coating& coating,
                const rules::Rules& rules);
int holes_in(const survey::Spot& spot);

// The envelope of a repair: one that can't be relied on, one whose joint isn't known.
MetalLeft bad_repair(const rules::Rules& rules);
MetalLeft unknown_repair(const rules::Rules& rules);

MetalLeft from_envelope(const rules::Envelope& envelope);

// Whether the spot records rust or damage, whatever its metal.
bool has_sign_of_rust(const survey::Spot& spot);

}  // namespace tinworm::weighing
