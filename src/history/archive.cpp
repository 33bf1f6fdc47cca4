#include "history/archive.hpp"

#include <algorithm>
#include <numeric>
#include <tuple>

#include "quantity/ascii.hpp"

namespace tinworm::history {
namespace {

std::string letters(std::string_view text) {
  std::string plain;
  for (const char c : text) {
    if (c == ' ' || c == '-' || c == '.') continue;
    plain += quantity::lower_case(c);
  }
  return plain;
}

struct Known {  // what a car can be told by
  std::string chassis, registration, name, body;
  std::optional<int> built;
};

Known known(const Filed& filed) {
  return {letters(filed.car.chassis_number), letters(filed.car.registration),
          letters(filed.car.name), filed.body, filed.car.built};
}

bool same_car(const Known& a, const Known& b) {
  if (!a.chassis.empty() && !b.chassis.empty()) return a.chassis == b.chassis;
  if (!a.registration.empty() && !b.registration.empty()) return a.registration == b.registration;
  const bool may_be = !a.built || !b.built || a.built == b.built;
  return !a.name.empty() && a.name == b.name && a.body == b.body && may_be;
}

std::vector<std::size_t> in_order_of_date(const std::vector<Filed>& all) {
  std::vector<std::size_t> order(all.size());
  std::iota(order.begin(), order.end(), 0);
  std::ranges::stable_sort(order, {}, [&](std::size_t i) {
    return std::tuple(all[i].date.middle_year(), all[i].date.text());
  });
  return order;
}

}  // namespace

std::vector<std::vector<std::size_t>> by_car(const std::vector<Filed>& all) {
  std::vector<Known> facts;
  for (const Filed& each : all) facts.push_back(known(each));
  std::vector<std::vector<std::size_t>> cars;
  for (const std::size_t i : in_order_of_date(all)) {
    const auto car = std::ranges::find_if(cars, [&](const std::vector<std::size_t>& members) {
      return std::ranges::any_of(members,
                                 [&](std::size_t k) { return same_car(facts[i], facts[k]); });
    });
    if (car == cars.end()) {
      cars.push_back({i});
    } else if (std::ranges::none_of(
                   *car, [&](std::size_t k) { return all[i].sha256 == all[k].sha256; })) {
      car->push_back(i);
    }
  }
  return cars;
}

}  // namespace tinworm::history
