#include "body/plan.hpp"

#include <algorithm>
#include <sstream>

namespace tinworm::body {
namespace {

constexpr int first_of_pairs = 41;

}  // namespace

bool under_near_rule(Carries carries) {
  switch (carries) {
    case Carries::brakes:
    case Carries::steering:
    case Carries::suspension:
    case Carries::belts:
    case Carries::towing:
      return true;
    case Carries::seat:
    case Carries::jack:
    case Carries::tank:
    case Carries::engine:
    case Carries::body:
    case Carries::door:
      return false;
  }
  return false;
}

Side side_of(int number) {
  if (number < first_of_pairs) return Side::centre;
  return number % 2 == 1 ? Side::left : Side::right;
}

std::optional<int> pair_of(int number) {
  if (number < first_of_pairs) return {};
  return number % 2 == 1 ? number + 1 : number - 1;
}

Side Zone::side() const {
  return side_of(number);
}

std::optional<int> Zone::pair() const {
  return pair_of(number);
}

const Drawing* Zone::drawing(Layer layer, View view) const {
  const auto found = std::find_if(drawn.begin(), drawn.end(), [&](const Drawing& drawing) {
    return drawing.layer == layer && drawing.view == view;
  });
  return found == drawn.end() ? nullptr : &*found;
}

const Zone* Plan::zone(int number) const {
  const auto found = std::find_if(zones.begin(), zones.end(),
                                  [&](const Zone& zone) { return zone.number == number; });
  return found == zones.end() ? nullptr : &*found;
}

const Option* Plan::option(std::string_view wanted) const {
  const auto found = std::ranges::find(options, wanted, &Option::name);
  return found == options.end() ? nullptr : &*found;
}

std::vector<std::string> points_on(const std::string& path) {
  std::istringstream words(path);
  std::vector<std::string> names;
  for (std::string name; words >> name;) names.push_back(name);
  return names;
}

const Opening* Plan::opening(std::string_view wanted) const {
  const auto found = std::ranges::find(openings, wanted, &Opening::name);
  return found == openings.end() ? nullptr : &*found;
}

}  // namespace tinworm::body
