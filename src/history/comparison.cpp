#include "history/comparison.hpp"

#include <algorithm>
#include <array>
#include <stdexcept>
#include <tuple>

namespace tinworm::history {

std::string_view word(Change change) {
  switch (change) {
    case Change::worse:
      return "worse";
    case Change::same:
      return "same";
    case Change::repaired:
      return "repaired";
    case Change::newly_seen:
      return "newly-seen";
    case Change::no_longer_visible:
      return "no-longer-visible";
    case Change::not_comparable:
      break;
  }
  return "not-comparable";
}

std::string_view word(RateFrom from) {
  switch (from) {
    case RateFrom::difference:
      return "difference";
    case RateFrom::line:
      return "line";
    case RateFrom::last_two:
      return "last-two";
    case RateFrom::planning:
      break;
  }
  return "planning";
}

int weight(Change change) {
  constexpr std::array order{Change::worse,    Change::no_longer_visible, Change::newly_seen,
                             Change::repaired, Change::not_comparable,    Change::same};
  return static_cast<int>(std::ranges::find(order, change) - order.begin());
}

std::vector<const Place*> Comparison::by_change() const {
  std::vector<const Place*> all;
  for (const Zone& zone : zones)
    for (const Place& place : zone.places) all.push_back(&place);
  // Of what is worse: a hole or metal that gives before any loss that a gauge tells, and what an
  // eye tells last.
  const auto key = [&](const Place* place) {
    const body::Role role = zone_of(*place).role;
    const bool by_sign = place->change == Change::worse && !place->why.empty() &&
                         !place->zone_mean && !place->by_look;
    const double lost = by_sign ? 0 : place->lost_share.value_or(0);
    return std::tuple(weight(place->change), !by_sign, place->by_look,
                      by_sign ? static_cast<int>(role) : 0, -lost, static_cast<int>(role));
  };
  std::ranges::stable_sort(all, {}, key);
  return all;
}

const Zone& Comparison::zone_of(const Place& place) const {
  for (const Zone& zone : zones)
    if (zone.number == place.zone && zone.own == place.own) return zone;
  throw std::logic_error("a place without its zone");
}

}  // namespace tinworm::history
