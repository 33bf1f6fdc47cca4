#include "scene/part_names.hpp"

#include <algorithm>
#include <tuple>

#include <fmt/format.h>

namespace tinworm::scene {

std::vector<PartName> part_names(const body::Plan& plan, const std::set<int>& zones) {
  std::vector<PartName> names;
  for (const body::Zone& zone : plan.zones) {
    const auto pair = zone.pair();
    if (!zones.contains(zone.number)) continue;
    const bool both = pair && zones.contains(*pair);
    if (both && zone.side() == body::Side::right) continue;
    names.push_back(
        {both ? fmt::format("{:02} {:02}", zone.number, *pair) : fmt::format("{:02}", zone.number),
         zone.name, zone.also.empty() ? zone.name : fmt::format("{} ({})", zone.name, zone.also)});
  }
  return names;
}

std::string numbers_and_names(const weighing::Result& result, const std::vector<int>& zones) {
  const std::set<int> asked(zones.begin(), zones.end());
  std::set<int> told;
  std::string list;
  for (const int number : zones) {
    const body::Zone* plan = result.body->zone(number);
    const weighing::Zone* zone = result.zone(number);
    if (plan == nullptr || zone == nullptr || !told.insert(number).second) continue;
    std::set<int> together{number};
    if (const auto pair = plan->pair(); pair && asked.contains(*pair)) together.insert(*pair);
    told.insert(together.begin(), together.end());
    list += list.empty() ? "" : ", ";
    for (const int each : together) list += fmt::format("{:02} ", each);
    list += zone->name;
  }
  return list;
}

std::vector<int> by_consequence(const weighing::Result& result, std::vector<int> zones) {
  const auto order = [&](int number) {
    const auto open = std::ranges::find(result.open_up, number, &weighing::OpenUp::zone);
    const weighing::Zone* zone = result.zone(number);
    const body::Role role = zone == nullptr ? body::Role::skin : zone->role;
    const int place = role == body::Role::main ? 0 : role == body::Role::local ? 1 : 2;
    return std::tuple(open - result.open_up.begin(), place, number);
  };
  std::ranges::stable_sort(zones, {}, order);
  return zones;
}

}  // namespace tinworm::scene
