#include "body/walk_round.hpp"

#include <algorithm>
#include <tuple>

namespace tinworm::body {
namespace {

constexpr double sill_top_share = 0.3;  // of the height
constexpr double end_share = 0.25;      // of the length: what counts as the car's front and rear

bool on_skin(const Zone& zone) {
  return std::any_of(zone.drawn.begin(), zone.drawn.end(),
                     [](const Drawing& drawing) { return drawing.layer == Layer::skin; });
}

enum LegNumber { front, left_side, rear, right_side, top, inside, below };

LegNumber leg_of(const Zone& zone, const Plan& plan) {
  if (!on_skin(zone)) {
    const bool high = zone.extent.z.low > sill_top_share * plan.size.height_mm;
    return high ? inside : below;
  }
  if (zone.side() == Side::left) return left_side;
  if (zone.side() == Side::right) return right_side;
  const double along = (zone.extent.x.middle() - plan.x.low) / plan.size.length_mm;
  if (along < end_share) return front;
  return along > 1 - end_share ? rear : top;
}

// Front to rear, left before right; up the right-hand side of the car one walks back to the front.
bool comes_before(LegNumber leg, const Zone& a, const Zone& b) {
  const double direction = leg == right_side ? -1 : 1;
  return std::tuple(direction * a.extent.x.middle(), a.number) <
         std::tuple(direction * b.extent.x.middle(), b.number);
}

}  // namespace

std::vector<Leg> walk_round(const Plan& plan) {
  const std::vector<std::string> titles = {"Outside, front",
                                           "Outside, left side: front to rear",
                                           "Outside, rear",
                                           "Outside, right side: rear to front",
                                           "Outside, top: front to rear",
                                           "Inside and under the lids: front to rear",
                                           "Underneath, on the lift: front to rear"};
  std::vector<Leg> legs;
  for (std::size_t i = 0; i < titles.size(); ++i) {
    const LegNumber number = static_cast<LegNumber>(i);
    std::vector<const Zone*> zones;
    for (const Zone& zone : plan.zones)
      if (leg_of(zone, plan) == number) zones.push_back(&zone);
    if (zones.empty()) continue;
    std::sort(zones.begin(), zones.end(),
              [&](const Zone* a, const Zone* b) { return comes_before(number, *a, *b); });
    Leg leg{titles[i], {}};
    for (const Zone* zone : zones) leg.zones.push_back(zone->number);
    legs.push_back(std::move(leg));
  }
  return legs;
}

}  // namespace tinworm::body
