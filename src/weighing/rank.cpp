#include "weighing/rank.hpp"

#include <algorithm>
#include <string_view>
#include <tuple>
#include <utility>
#include <vector>

#include "weighing/faces.hpp"
#include "weighing/verdict.hpp"

namespace tinworm::weighing {
namespace {

int order_of(body::Carries carries) {
  switch (carries) {
    case body::Carries::steering:
      return 0;
    case body::Carries::brakes:
      return 1;
    case body::Carries::suspension:
      return 2;
    case body::Carries::belts:
      return 3;
    case body::Carries::towing:
      return 4;
    case body::Carries::tank:
      return 5;
    default:
      return 6;
  }
}

int order_of(Near near) {
  switch (near) {
    case Near::on_mount:
      return 0;
    case Near::into_mount:
      return 1;
    case Near::within_radius:
      return 2;
    case Near::maybe:
    case Near::no:
      return 3;
  }
  return 3;
}

// Rounded, so that figures that differ by nothing but the way they were reckoned are the same.
long long thousandths(double value) {
  return static_cast<long long>(value * 1e6 + (value < 0 ? -.5 : .5));
}

using Worth = std::tuple<int, int, int, long long>;  // less is worse

// By which a place ranks where no other is beside it: less is worse; number and names only break a
// full tie.
using Alone = std::tuple<Worth, long long, long long, int, std::string_view, std::string_view>;

struct Placed {
  Spot* spot = nullptr;
  const Zone* zone = nullptr;
  int box = -1;      // of the plan; -1: in none
  double layer = 0;  // width times sheet of its wall
  geometry::Interval along;
  Worth worth;
  double area_mm2 = 0;
};

Alone alone(const Placed& place) {
  const int number = place.zone->own.empty() ? place.zone->number : 1000;
  return {place.worth,
          -thousandths(place.area_mm2),
          thousandths(place.spot->metal.weighed.value),
          number,
          place.zone->own,
          place.spot->name};
}

double section_left(const Result& result, const Spot& spot, int box) {
  if (box < 0 || !spot.section_gone) return 1;
  const auto& section = result.boxes[box].section;
  return section ? section->left.value : 1;
}

// The greatest weight of the places of its zone that are no worse than this one.
double taken(const Spot& spot, const Zone& zone) {
  double most = spot.weight.value;
  for (const Spot& other : zone.spots)
    if (other.found && other.metal.weighed.value >= spot.metal.weighed.value - 1e-9)
      most = std::max(most, other.weight.value);
  return most;
}

Worth worth_of(const Placed& place, const Result& result, const rules::Rules& rules) {
  const Spot& spot = *place.spot;
  const Verdict verdict = level(spot, *place.zone, rules).verdict;
  const bool strict = verdict >= Verdict::mend;
  const bool fuel = spot.tank_mm && *spot.tank_mm <= rules.tank_mm + 1e-9;
  const bool bears = spot.bearing.near != Near::no;
  const int near = !strict ? 0 : bears ? order_of(spot.bearing.near) : fuel ? 0 : 3;
  const int carries = !strict ? 0
                      : bears ? order_of(spot.bearing.carries)
                              : order_of(fuel ? body::Carries::tank : body::Carries::body);
  const double takes =
      spot.counts * std::max(taken(spot, *place.zone), 1 - section_left(result, spot, place.box));
  return {-static_cast<int>(verdict), near, carries, -thousandths(takes)};
}

void put_in_box(Placed& place, const Result& result, const rules::Rules& rules) {
  const body::Zone* plan = result.body->zone(place.zone->number);
  if (plan == nullptr || !place.zone->own.empty()) return;
  for (std::size_t b = 0; b < result.body->boxes.size(); ++b) {
    const body::Box& box = result.body->boxes[b];
    const std::vector<Face> all = faces(box);
    double width_mm = 0;
    for (const Face& face : all)
      if (face.zone == plan->number) width_mm += face.length_mm;
    if (width_mm <= 0 || !lies_in(*place.spot, *plan, box, all, rules)) continue;
    place.box = static_cast<int>(b);
    place.layer = width_mm * plan->sheet_mm;
    place.along = along(place.spot->at, extents(place.spot->size, *plan, box, rules).along_mm, box);
    return;
  }
}

bool together(const Placed& a, const Placed& b, const rules::Rules& rules) {
  const double reach = rules.section_along_mm + 1e-9;
  return a.box >= 0 && a.box == b.box && a.along.low <= b.along.high + reach &&
         b.along.low <= a.along.high + reach;
}

// What stands on another part of the list comes after that part, where both ask for the same and no
// mount tells them apart.
void after_what_they_join(std::vector<Placed>& found, const body::Plan& plan) {
  const auto stands_on = [&](const Placed& part, const Placed& other) {
    const body::Zone* zone = plan.zone(part.zone->number);
    if (!zone || !part.zone->own.empty() || !other.zone->own.empty()) return false;
    const bool same = std::get<0>(part.worth) == std::get<0>(other.worth) &&
                      std::get<1>(part.worth) == std::get<1>(other.worth) &&
                      std::get<2>(part.worth) == std::get<2>(other.worth);
    return same && std::get<0>(part.worth) <= -static_cast<int>(Verdict::mend) &&
           std::ranges::find(zone->joins, other.zone->number) != zone->joins.end();
  };
  for (std::size_t i = 0; i < found.size(); ++i)
    for (std::size_t k = found.size() - 1; k > i; --k) {
      const bool mutual = stands_on(found[k], found[i]);
      if (!stands_on(found[i], found[k]) || mutual) continue;
      std::rotate(found.begin() + static_cast<std::ptrdiff_t>(i),
                  found.begin() + static_cast<std::ptrdiff_t>(i) + 1,
                  found.begin() + static_cast<std::ptrdiff_t>(k) + 1);
      break;
    }
}

}  // namespace

void rank(Result& result, const rules::Rules& rules) {
  std::vector<Placed> found;
  for (Zone& zone : result.zones)
    for (Spot& spot : zone.spots) {
      if (!spot.found) continue;
      Placed place;
      place.spot = &spot;
      place.zone = &zone;
      put_in_box(place, result, rules);
      place.worth = worth_of(place, result, rules);
      if (spot.size) place.area_mm2 = spot.size->along_mm * spot.size->across_mm;
      found.push_back(place);
    }
  // Places of one box near one another rank as the worst of them, the thickest layer first.
  std::vector<std::tuple<Alone, long long, Alone, std::size_t>> order;
  for (std::size_t i = 0; i < found.size(); ++i) {
    const Alone own = alone(found[i]);
    Alone worst = own;
    for (const Placed& other : found)
      if (std::get<0>(other.worth) == std::get<0>(found[i].worth) &&
          together(found[i], other, rules))
        worst = std::min(worst, alone(other));
    order.emplace_back(worst, -thousandths(found[i].layer), own, i);
  }
  std::ranges::sort(order);
  std::vector<Placed> ranked;
  for (const auto& each : order) ranked.push_back(found[std::get<3>(each)]);
  found = std::move(ranked);
  after_what_they_join(found, *result.body);
  int rank = 0;
  for (const Placed& each : found) each.spot->rank = ++rank;
}

}  // namespace tinworm::weighing
