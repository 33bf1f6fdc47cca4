#include "weighing/looks.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace tinworm::weighing {
namespace {

double moves(const OpenUp& open, const Burden& structure) {
  return std::max(0.0, structure.high - open.structure_high_if_no_worse) +
         std::max(0.0, open.structure_low_if_gone - structure.low);
}

Look& look_for(const OpenUp& open, std::vector<Look>& all) {
  const auto same = std::ranges::find_if(
      all, [&](const Look& look) { return !open.opening.empty() && look.opening == open.opening; });
  if (same != all.end()) return *same;
  all.push_back({.opening = open.opening});
  return all.back();
}

}  // namespace

std::vector<Look> looks(const Result& result) {
  std::vector<Look> all;
  for (const OpenUp& open : result.open_up) {
    Look& look = look_for(open, all);
    look.shows.push_back(&open);
    look.minutes = std::max(look.minutes, open.minutes);
    look.could_become = std::max(look.could_become, open.could_become);
    look.carries = look.carries || open.carries;
    look.moves += moves(open, result.structure);
  }
  std::ranges::stable_sort(all, {}, [](const Look& look) {
    return std::tuple(-static_cast<int>(look.could_become), !look.carries,
                      -std::llround(look.moves * 1e6), look.minutes);
  });
  return all;
}

}  // namespace tinworm::weighing
