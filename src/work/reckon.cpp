#include "work/reckon.hpp"

#include <algorithm>
#include <cmath>

#include "work/cuts.hpp"
#include "work/job.hpp"

namespace tinworm::work {
namespace {

using weighing::Spot;
using weighing::ZoneFacts;

constexpr double mm_per_m = 1000;

double original_mm(const weighing::Zone& zone, const ZoneFacts& facts) {
  double sheet_mm = facts.plan ? facts.plan->sheet_mm : 0;
  if (facts.entry && facts.entry->sheet_mm) sheet_mm = *facts.entry->sheet_mm;
  constexpr double usual_tolerance = 1.10;  // common practice: nominal sheet varies by 10 %
  for (const Spot& spot : zone.spots) {
    const bool measured = spot.metal.baseline_from == weighing::BaselineFrom::reference ||
                          spot.metal.baseline_from == weighing::BaselineFrom::pair_reference;
    if (measured && spot.metal.baseline_mm && *spot.metal.baseline_mm > usual_tolerance * sheet_mm)
      sheet_mm = *spot.metal.baseline_mm;
  }
  return sheet_mm;
}

// One cut's hours, before what the job takes as a whole.
Range cut_hours(const Cut& cut, bool folded, const rates::Rates& rates) {
  const Range& first = folded ? rates.folded_cut : rates.flat_cut;
  const Range weld_m = weld_mm(cut) * (1 / mm_per_m);
  Range hours = {first.low + weld_m.low / rates.weld_speed.high,
                 first.likely + weld_m.likely / rates.weld_speed.likely,
                 first.high + weld_m.high / rates.weld_speed.low};
  if (cut.way == Way::weld_up) {
    const Range& own = rates.pinhole;
    hours = {own.low, own.likely, std::max(own.high, hours.high)};
  }
  // Where it may be that nothing is cut, at least it is cleaned and treated.
  if (!cut.certain) hours.low = std::min(hours.low, rates.treat.low);
  return hours;
}

bool is_folded(const ZoneFacts& facts) {
  return facts.plan && (facts.plan->build != body::Build::single || is_folded_skin(facts));
}

Range at_most(const Range& range, double most) {
  return {std::min(range.low, most), std::min(range.likely, most), std::min(range.high, most)};
}

}  // namespace

void reckon_cuts(Task& task, const weighing::Zone& zone, const ZoneFacts& facts,
                 const rates::Rates& rates) {
  Range hours, area_mm2s;
  for (const Cut& cut : task.cuts) {
    hours = hours + cut_hours(cut, is_folded(facts), rates);
    Range weld_m = weld_mm(cut) * (1 / mm_per_m), area = sheet_mm2(cut);
    if (!cut.certain) weld_m.low = area.low = 0;
    task.weld_m = task.weld_m + weld_m;
    area_mm2s = area_mm2s + area;
  }
  const Range& whole = rates.of(task.job);
  task.at_most = hours.likely > whole.likely;
  task.hours = {std::min(hours.low, whole.low), std::min(hours.likely, whole.likely),
                std::min(hours.high, whole.high)};
  task.weld_m.high *= task.hidden;
  const double original = original_mm(zone, facts);
  if (original <= 0 || area_mm2s.high <= 0) return;
  Sheet sheet{stock_mm(original), original};
  Range area_m2 = area_mm2s * (1 / (mm_per_m * mm_per_m));
  area_m2.high *= task.hidden;
  if (facts.plan) area_m2 = at_most(area_m2, facts.plan->area_m2);  // cuts may lie on each other
  sheet.area_m2 = area_m2 * (1 + rates.cutting_allowance);
  sheet.mass_kg = sheet.area_m2 * (sheet.thickness_mm / mm_per_m * rates.steel_kg_per_m3);
  task.sheet = sheet;
}

Range cost(const Range& hours, const Range& mass_kg, const rates::Rates& rates) {
  const Range& more = rates.consumables;
  return hours * Range{1 + more.low, 1 + more.likely, 1 + more.high} * rates.hour +
         mass_kg * rates.sheet_per_kg;
}

double stock_mm(double sheet_mm) {
  constexpr double spare = 1e-9;
  for (const double each : {.8, .9, 1.0, 1.2, 1.5, 1.6, 2.0, 2.5, 3.0})
    if (each + spare >= sheet_mm) return each;
  return std::ceil(2 * sheet_mm - spare) / 2;
}

}  // namespace tinworm::work
