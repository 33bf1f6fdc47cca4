#include "weighing/reach.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "weighing/burden.hpp"

namespace tinworm::weighing {
namespace {

// The burdens if one zone were other than it is known to be.
class Supposed {
 public:
  Supposed(const Result& result, const std::vector<ZoneFacts>& facts, const rules::Rules& rules)
      : result_(result), zones_(result.zones), facts_(facts), rules_(rules) {}

  // Opened, and found no worse than it is taken to be.
  double high_if_no_worse(std::size_t i) {
    const Zone zone = zones_[i];
    const ZoneFacts facts = see(i);
    for (Spot& spot : zones_[i].spots) spot.weight.high = spot.weight.value;
    zones_[i].weight.high = zones_[i].weight.value;
    return restored(i, zone, facts).high;
  }

  // Opened, and found rusted away from end to end.
  double low_if_gone(std::size_t i) {
    const Zone zone = zones_[i];
    const ZoneFacts facts = see(i);
    Spot gone;
    gone.found = true;
    gone.weight = {1, 1, 1};
    const bool near = !zone.near.empty();
    gone.counts = near || zone.role == body::Role::main ? 1 : rules_.local_weight;
    zones_[i].spots = {gone};
    zones_[i].weight = gone.weight;
    return restored(i, zone, facts).low;
  }

 private:
  ZoneFacts see(std::size_t i) {
    const ZoneFacts before = facts_[i];
    opened_ = before.entry ? *before.entry : survey::Zone{};
    opened_.inside = survey::Inside::scoped;
    for (survey::Spot& spot : opened_.found) spot.stuffed.reset();
    opened_.film_um.clear();  // whatever covered it is off
    opened_.film_off_scale = false;
    facts_[i].entry = &opened_;
    facts_[i].seen = {survey::SeenWord::bare, 1, "", {}};
    return before;
  }

  Burden restored(std::size_t i, const Zone& zone, const ZoneFacts& facts) {
    const Burden structure = burdens(zones_, facts_, rules_).structure;
    zones_[i] = zone;
    facts_[i] = facts;
    return structure;
  }

  const Result& result_;
  std::vector<Zone> zones_;
  std::vector<ZoneFacts> facts_;
  const rules::Rules& rules_;
  survey::Zone opened_;
};

std::size_t index_of(const Result& result, const OpenUp& open) {
  const auto zone = std::ranges::find_if(result.zones, [&](const Zone& each) {
    return each.own == open.own && each.number == open.zone;
  });
  return static_cast<std::size_t>(zone - result.zones.begin());
}

}  // namespace

void reach(Result& result, const std::vector<ZoneFacts>& facts, const rules::Rules& rules) {
  Supposed supposed(result, facts, rules);
  for (OpenUp& open : result.open_up) {
    const std::size_t zone = index_of(result, open);
    open.structure_high_if_no_worse =
        std::min(result.structure.high, supposed.high_if_no_worse(zone));
    open.structure_low_if_gone = std::max(result.structure.low, supposed.low_if_gone(zone));
  }
  std::ranges::stable_sort(result.open_up, {}, [](const OpenUp& open) {
    const double moved = open.structure_high_if_no_worse - open.structure_low_if_gone;
    return std::tuple(-static_cast<int>(open.could_become), !open.carries,
                      std::llround(moved * 1e6), open.minutes, open.own.empty() ? open.zone : 1000);
  });
}

}  // namespace tinworm::weighing
