#include "weighing/metal_at.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "metal/repeatability.hpp"
#include "survey/signs.hpp"
#include "weighing/pits_at.hpp"

namespace tinworm::weighing {
namespace {

using rules::Envelope;
using survey::Hand;
using survey::Probe;
using survey::Rust;
using survey::Tap;

// The open sheet beside such rust says little of the metal in it.
bool hides_its_metal(std::optional<Rust> rust) {
  return rust == Rust::seam || rust == Rust::edge || rust == Rust::bleed;
}

void cut(Span& span, const Envelope& to) {
  span.low = std::min(span.low, to.least);
  span.value = std::min(span.value, to.likely);
  span.high = std::min(span.high, to.most);
}

void cut(Span& span, double most) {
  cut(span, {most, most, most});
}

Span span_of(const Envelope& e) {
  return {e.least, e.likely, e.most};
}

// A hole leaves nothing over its own size only; the metal beside it has no word then.
const Envelope& word_envelope(const survey::Spot& spot, const rules::Rules& rules) {
  const Rust word = spot.rust.value_or(Rust::none);
  return rules.of(word == Rust::hole ? Rust::none : word);
}

bool holds_badly(const survey::Spot& spot) {
  return spot.magnet == survey::Magnet::weak || spot.magnet == survey::Magnet::none;
}

void cut_by_hand(const survey::Spot& spot, const rules::Rules& rules, Span& span) {
  if (gives(spot)) cut(span, rules.gives);
  if (breaks(spot)) cut(span, rules.breaks);
}

// What words and hands say where no reading is used.
Span judged(const survey::Spot& spot, const rules::Rules& rules) {
  const Envelope& word = word_envelope(spot, rules);
  Span span = span_of(word);
  if (spot.hand == Hand::firm) {
    const double floor = std::max(rules.firm_least, word.least);
    span = {std::max(span.low, floor), std::max(span.value, floor), std::max(span.high, floor)};
  }
  cut_by_hand(spot, rules, span);
  if (spot.tap == Tap::dull) cut(span, rules.dull);
  if (holds_badly(spot)) span.low = std::min(span.low, rules.thick_coat_least);
  return span;
}

Span clamped(const Span& s) {
  const auto c = [](double x) { return std::clamp(x, 0.0, 1.0); };
  return {c(s.low), c(s.value), c(s.high)};
}

// Readings against an assumed sheet are no measure of loss: word and hand stand, but for a mean
// that is too little for the thinnest sheet assumed.
Span against_assumed_sheet(const survey::Spot& spot, const ZoneBaseline& baseline,
                           const rules::Rules& rules, Judgement& judgement) {
  Span span = judged(spot, rules);
  span.low = std::min(span.low, clamped(judgement.metal.shown).low);
  const double thinnest_mm = (1 - rules.plan_sheet_half_share) * baseline.metal.sheet_mm;
  const double at_most = *judgement.metal.mean_mm / thinnest_mm;
  if (at_most < word_envelope(spot, rules).likely) span.value = std::min(span.value, at_most);
  judgement.sheet_assumed = true;
  judgement.by_measure_or_hand = span.value + 1e-9 < rules.repair_limit && at_most <= span.value;
  span.low = std::min(span.low, span.value);
  return span;
}

// What the readings say for weighing, once hand and word had their say.
Span measured_span(const survey::Spot& spot, const ZoneBaseline& baseline,
                   const rules::Rules& rules, Judgement& judgement) {
  if (baseline.from == BaselineFrom::plan_sheet)
    return against_assumed_sheet(spot, baseline, rules, judgement);
  Span span = clamped(judgement.metal.shown);
  const Envelope& word = word_envelope(spot, rules);
  if (hides_its_metal(spot.rust)) {
    span.low = std::min(span.low, word.least);
    judgement.metal.remarks.push_back("readings beside a seam or edge speak for the open sheet");
  }
  judgement.by_measure_or_hand = true;
  const double before = span.value;
  cut_by_hand(spot, rules, span);
  if (span.value < before)
    judgement.metal.remarks.push_back("the hand says worse than the gauge; the hand counts");
  return span;
}

bool over_one_sheet(double t_mm, const ZoneBaseline& baseline, const rules::Rules& rules) {
  return t_mm > rules.too_thick * baseline.metal.sheet_mm + 1e-9;
}

// Readings over one sheet: as a whole set they are out, and a reason to open up; one high reading
// in a set that scatters says nothing either. Where another reading is past the limit, the set
// contradicts itself.
bool speak_of_one_sheet(const survey::Spot& spot, const ZoneBaseline& baseline,
                        const Coating& coating, const Gauging& gauging, const rules::Rules& rules,
                        Judgement& judgement) {
  const double mean_mm = metal::mean(spot.metal_mm) - coating.subtract_mm;
  const double most_mm = metal::greatest(spot.metal_mm) - coating.subtract_mm;
  const double least_mm = metal::least(spot.metal_mm) - coating.subtract_mm;
  judgement.too_thick = over_one_sheet(mean_mm, baseline, rules);
  const bool one_is_high =
      over_one_sheet(most_mm, baseline, rules) && metal::too_wide(spot.metal_mm, gauging.prior);
  if (!judgement.too_thick && !one_is_high) return true;
  judgement.contradict = least_mm < rules.repair_limit * baseline.metal.sheet_mm - 1e-9;
  return false;
}

// The interval of the readings; false where they can't be used.
bool read_gauge(const survey::Spot& spot, const ZoneBaseline& baseline, const Coating& coating,
                const Gauging& gauging, const rules::Rules& rules, Judgement& judgement) {
  MetalLeft& metal = judgement.metal;
  if (spot.metal_mm.empty()) return false;
  const double mean_mm = metal::mean(spot.metal_mm) - coating.subtract_mm;
  metal.mean_mm = std::max(0.0, mean_mm);
  metal.least_mm = std::max(0.0, metal::least(spot.metal_mm) - coating.subtract_mm);
  metal.readings = static_cast<int>(spot.metal_mm.size());
  if (baseline.from == BaselineFrom::none) return false;
  metal.baseline_mm = baseline.metal.sheet_mm;
  if (coating.upper_bound ||
      !speak_of_one_sheet(spot, baseline, coating, gauging, rules, judgement))
    return false;
  if (mean_mm < 0) {
    judgement.contradict = true;
    metal.remarks.push_back("the film takes more off than the gauge read: no figure");
    return false;
  }
  const metal::MetalInterval interval = metal::metal_left(
      measured(spot.metal_mm, coating, gauging), baseline.metal, gauging.gauge_standard_mm);
  metal.kind = SpanKind::interval;
  metal.shown = {interval.low, interval.value, interval.high};
  metal.budget = interval.budget;
  metal.degrees_of_freedom = interval.uncertainty.degrees_of_freedom;
  return true;
}

// What is known of the low end where readings could not be used.
void cut_low_by_unused(const survey::Spot& spot, const ZoneBaseline& baseline,
                       const Coating& coating, const rules::Rules& rules, Span& span,
                       const Judgement& judgement) {
  if (judgement.too_thick) span.low = std::min(span.low, rules.too_thick_least);
  if (!judgement.contradict) return;
  const double least_mm = metal::least(spot.metal_mm) - coating.subtract_mm;
  span.low = std::min(span.low, std::max(0.0, least_mm / baseline.metal.sheet_mm));
}

// Readings under coating that nothing corrects: the sheet is no thicker than they say.
void cut_by_upper_bound(const survey::Spot& spot, const ZoneBaseline& baseline,
                        const rules::Rules& rules, Span& span, Judgement& judgement) {
  if (spot.metal_mm.empty() || baseline.from == BaselineFrom::none) return;
  const double bound = std::min(1.0, metal::mean(spot.metal_mm) / baseline.metal.sheet_mm);
  cut(span, bound);
  judgement.bound_not_sound = bound + 1e-9 < rules.sound_limit;
  judgement.metal.remarks.push_back("read through a coating of unknown thickness: an upper bound");
}

void weigh_pits(const survey::Spot& spot, const ZoneBaseline& baseline, const rules::Rules& rules,
                std::optional<double> area_mm2, Judgement& judgement) {
  const auto most = pits_at(spot, baseline, rules, area_mm2, judgement.metal);
  if (!most) return;
  cut(judgement.metal.weighed, *most);
  if (baseline.from != BaselineFrom::plan_sheet) judgement.by_measure_or_hand = true;
}

Evidence evidence_of(const survey::Spot& spot, const ZoneBaseline& baseline,
                     const Judgement& judgement) {
  const bool against_known = baseline.from != BaselineFrom::plan_sheet;
  const bool of_readings = judgement.metal.kind == SpanKind::interval || judgement.metal.pit_left;
  if (of_readings && (against_known || (judgement.sheet_assumed && judgement.by_measure_or_hand)))
    return Evidence::measured;
  return spot.hand || spot.tap || spot.probe || spot.stuffed ? Evidence::felt : Evidence::looked;
}

void weigh_signs(const survey::Spot& spot, bool pinhole, const rules::Rules& rules, Span& span) {
  if (spot.stuffed) cut(span, rules.stuffed);
  if (!holed(spot)) return;
  if (pinhole)
    cut(span, rules.pinhole_most);
  else
    span = {0, 0, 0};
}

}  // namespace

bool has_sign_of_rust(const survey::Spot& spot) {
  const bool rust = spot.rust && spot.rust != Rust::none;
  return rust || holed(spot) || gives(spot) || breaks(spot) || spot.probe == Probe::dents ||
         spot.tap == Tap::dull || spot.crack_mm || spot.stuffed || holds_badly(spot) ||
         !spot.pit_mm.empty() || spot.pits;
}

MetalLeft from_envelope(const Envelope& envelope) {
  MetalLeft metal;
  metal.shown = metal.weighed = span_of(envelope);
  return metal;
}

MetalLeft bad_repair(const rules::Rules& rules) {
  return from_envelope(rules.bad_repair);
}

MetalLeft unknown_repair(const rules::Rules& rules) {
  return from_envelope({rules.unknown_repair_least, 1, 1});
}

int holes_in(const survey::Spot& spot) {
  return spot.hole ? 1 + static_cast<int>(spot.other_holes.size()) : spot.rust == Rust::hole;
}

bool is_pinhole(const survey::Spot& spot, const ZoneBaseline& baseline, const Coating& coating,
                const rules::Rules& rules) {
  if (!spot.hole || gives(spot) || breaks(spot)) return false;
  if (std::max(spot.hole->along_mm, spot.hole->across_mm) > rules.pinhole_mm + 1e-9) return false;
  if (holes_in(spot) > rules.pinholes) return false;
  if (spot.hand == Hand::firm || spot.tap == Tap::rings || spot.probe == Probe::stops) return true;
  if (spot.metal_mm.empty() || coating.upper_bound || baseline.from == BaselineFrom::none)
    return false;
  const double mean_mm = metal::mean(spot.metal_mm) - coating.subtract_mm;
  return mean_mm >= rules.repair_limit * baseline.metal.sheet_mm - 1e-9;
}

Judgement metal_at(const survey::Spot& spot, const ZoneBaseline& baseline, const Coating& coating,
                   const Gauging& gauging, const rules::Rules& rules,
                   std::optional<double> area_mm2, bool pinhole) {
  Judgement judgement;
  MetalLeft& metal = judgement.metal;
  const bool used = read_gauge(spot, baseline, coating, gauging, rules, judgement);
  if (used) {
    metal.weighed = measured_span(spot, baseline, rules, judgement);
  } else {
    metal.weighed = judged(spot, rules);
    cut_low_by_unused(spot, baseline, coating, rules, metal.weighed, judgement);
    if (coating.upper_bound) cut_by_upper_bound(spot, baseline, rules, metal.weighed, judgement);
  }
  metal.baseline_from =
      metal.baseline_mm || !spot.pit_mm.empty() || spot.pits ? baseline.from : BaselineFrom::none;
  if (gives(spot) || breaks(spot)) judgement.by_measure_or_hand = true;
  weigh_pits(spot, baseline, rules, area_mm2, judgement);
  judgement.beside = metal.weighed;
  judgement.beside_by_measure_or_hand = judgement.by_measure_or_hand;
  if (holed(spot) || spot.crack_mm || spot.stuffed) judgement.by_measure_or_hand = true;
  weigh_signs(spot, pinhole, rules, metal.weighed);
  if (!used) metal.shown = metal.weighed;
  judgement.evidence = evidence_of(spot, baseline, judgement);
  return judgement;
}

}  // namespace tinworm::weighing
