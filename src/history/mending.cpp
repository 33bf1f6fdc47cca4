#include "history/mending.hpp"

#include <algorithm>

namespace tinworm::history {
namespace {

using survey::Repair;

bool dates_agree(const std::optional<survey::PartialDate>& a,
                 const std::optional<survey::PartialDate>& b) {
  return !a || !b || (a->first() <= b->last() && b->first() <= a->last());
}

// Takes out of `known` what `repair` may be; false if there is none.
bool take(std::vector<const Repair*>& known, const Repair& repair) {
  const auto same = std::ranges::find_if(known, [&](const Repair* each) {
    return each->kind == repair.kind && dates_agree(each->date, repair.date);
  });
  if (same == known.end()) return false;
  known.erase(same);
  return true;
}

Mended place(const Repair& repair, const std::vector<ZoneYear>& zone, std::size_t recorded) {
  Mended mended{&repair, recorded, recorded, false};
  if (!repair.date) return mended;
  for (std::size_t k = recorded; k-- > 0;) {
    if (repair.date->last() >= zone[k].year->date().first()) break;
    mended.starts = k;
    mended.missed_before = mended.missed_before || zone[k].seen();
  }
  return mended;
}

}  // namespace

std::vector<Mended> mark_mended(std::vector<ZoneYear>& zone) {
  std::vector<Mended> all;
  std::vector<const Repair*> known;
  for (std::size_t i = 0; i < zone.size(); ++i) {
    if (!zone[i].facts || !zone[i].facts->entry) continue;
    std::vector<const Repair*> unmatched = known;
    for (const Repair& repair : zone[i].facts->entry->repairs) {
      if (take(unmatched, repair)) continue;
      known.push_back(&repair);
      const bool first_look = std::none_of(zone.begin(), zone.begin() + static_cast<long>(i),
                                           [](const ZoneYear& z) { return z.facts; });
      if (first_look || repair.kind == survey::RepairKind::treated) continue;
      all.push_back(place(repair, zone, i));
      if (all.back().starts > 0) zone[all.back().starts].repaired = true;
    }
  }
  return all;
}

std::size_t history_start(const std::vector<ZoneYear>& zone, std::size_t survey) {
  while (survey > 0 && !zone[survey].repaired) --survey;
  return survey;
}

}  // namespace tinworm::history
