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

const Envelope& word_envelope(const survey::Spot& spot, const rules::Rules& rules) {
  return rules.of(spot.rust.value_or(Rust::none));
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
  return span;
}

Span clamped(const Span& s) {
  const auto c = [](double x) { return std::clamp(x, 0.0, 1.0); };
  return {c(s.low), c(s.value), c(s.high)};
}

// What the readings say for weighing, once hand and word had their say.
Span measured_span(const survey::Spot& spot, const ZoneBaseline& baseline,
                   const rules::Rules& rules, Judgement& judgement) {
  Span span = clamped(judgement.metal.shown);
  const Envelope& word = word_envelope(spot, rules);
  // An assumed sheet is no measure of loss: where the interval holds what the word says, that
  // stands.
  if (baseline.from == BaselineFrom::plan_sheet && judgement.metal.shown.low <= word.likely &&
      word.likely <= judgement.metal.shown.high)
    span.value = word.likely;
  if (hides_its_metal(spot.rust)) {
    span.low = std::min(span.low, word.least);
    judgement.metal.remarks.push_back("readings beside a seam or edge speak for the open sheet");
  }
  if (judgement.too_thick) span.low = std::min(span.low, rules.too_thick_least);
  const double before = span.value;
  cut_by_hand(spot, rules, span);
  if (span.value < before)
    judgement.metal.remarks.push_back("the hand says worse than the gauge; the hand counts");
  return span;
}

// Splits readings into those of one sheet and the rest.
std::vector<double> of_one_sheet(const std::vector<double>& readings_mm, double subtract_mm,
                                 double sheet_mm, double too_thick) {
  std::vector<double> kept;
  for (const double t : readings_mm)
    if (t - subtract_mm <= too_thick * sheet_mm + 1e-9) kept.push_back(t);
  return kept;
}

// The interval of the readings; false where they can't be used.
bool read_gauge(const survey::Spot& spot, const ZoneBaseline& baseline, const Coating& coating,
                const Gauging& gauging, const rules::Rules& rules, Judgement& judgement) {
  MetalLeft& metal = judgement.metal;
  if (spot.metal_mm.empty()) return false;
  metal.mean_mm = std::max(0.0, metal::mean(spot.metal_mm) - coating.subtract_mm);
  metal.least_mm = std::max(0.0, metal::least(spot.metal_mm) - coating.subtract_mm);
  metal.readings = static_cast<int>(spot.metal_mm.size());
  if (baseline.from == BaselineFrom::none) return false;
  metal.baseline_mm = baseline.metal.sheet_mm;
  const std::vector<double> kept =
      of_one_sheet(spot.metal_mm, coating.subtract_mm, baseline.metal.sheet_mm, rules.too_thick);
  judgement.too_thick = kept.size() < spot.metal_mm.size();
  if (kept.empty() || coating.upper_bound) return false;
  const metal::MetalInterval interval = metal::metal_left(
      measured(kept, coating, gauging), baseline.metal, gauging.gauge_standard_mm);
  metal.kind = SpanKind::interval;
  metal.shown = {interval.low, interval.value, interval.high};
  metal.budget = interval.budget;
  metal.degrees_of_freedom = interval.uncertainty.degrees_of_freedom;
  metal.mean_mm = std::max(0.0, metal::mean(kept) - coating.subtract_mm);
  metal.least_mm = std::max(0.0, metal::least(kept) - coating.subtract_mm);
  metal.readings = static_cast<int>(kept.size());
  return true;
}

// Readings under coating that nothing corrects: the sheet is no thicker than they say.
void cut_by_upper_bound(const survey::Spot& spot, const ZoneBaseline& baseline, Span& span,
                        Judgement& judgement) {
  if (spot.metal_mm.empty() || baseline.from == BaselineFrom::none) return;
  cut(span, std::min(1.0, metal::mean(spot.metal_mm) / baseline.metal.sheet_mm));
  judgement.metal.remarks.push_back("read through a coating of unknown thickness: an upper bound");
}

void weigh_pits(const survey::Spot& spot, const ZoneBaseline& baseline, const rules::Rules& rules,
                std::optional<double> area_mm2, Judgement& judgement) {
  const auto most = pits_at(spot, baseline, rules, area_mm2, judgement.metal);
  if (!most) return;
  cut(judgement.metal.weighed, *most);
  judgement.by_measure_or_hand = true;
}

Evidence evidence_of(const survey::Spot& spot, const Judgement& judgement) {
  if (judgement.metal.kind == SpanKind::interval || judgement.metal.pit_left)
    return Evidence::measured;
  return spot.hand || spot.tap || spot.probe || spot.stuffed ? Evidence::felt : Evidence::looked;
}

}  // namespace

bool has_sign_of_rust(const survey::Spot& spot) {
  const bool rust = spot.rust && spot.rust != Rust::none;
  return rust || holed(spot) || gives(spot) || breaks(spot) || spot.probe == Probe::dents ||
         spot.tap == Tap::dull || spot.crack_mm || !spot.pit_mm.empty() || spot.pits ||
         spot.stuffed;
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

Judgement metal_at(const survey::Spot& spot, const ZoneBaseline& baseline, const Coating& coating,
                   const Gauging& gauging, const rules::Rules& rules,
                   std::optional<double> area_mm2) {
  Judgement judgement;
  MetalLeft& metal = judgement.metal;
  const bool used = read_gauge(spot, baseline, coating, gauging, rules, judgement);
  if (used) {
    metal.weighed = measured_span(spot, baseline, rules, judgement);
  } else {
    metal.weighed = judged(spot, rules);
    if (judgement.too_thick) metal.weighed.low = std::min(metal.weighed.low, rules.too_thick_least);
    if (coating.upper_bound) cut_by_upper_bound(spot, baseline, metal.weighed, judgement);
  }
  metal.baseline_from =
      metal.baseline_mm || !spot.pit_mm.empty() || spot.pits ? baseline.from : BaselineFrom::none;
  judgement.by_measure_or_hand =
      used || holed(spot) || gives(spot) || breaks(spot) || spot.crack_mm || spot.stuffed;
  weigh_pits(spot, baseline, rules, area_mm2, judgement);
  if (holed(spot)) metal.weighed = {0, 0, 0};
  if (spot.stuffed) {
    judgement.by_stuffing = metal.weighed.value > rules.stuffed.likely;
    cut(metal.weighed, rules.stuffed);
  }
  if (!used) metal.shown = metal.weighed;
  judgement.evidence = evidence_of(spot, judgement);
  return judgement;
}

}  // namespace tinworm::weighing
