#include "scene/naming.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "weighing/words.hpp"

namespace tinworm::scene {

using weighing::Evidence;
using weighing::Step;

std::string_view step_name(Step step) {
  return step == Step::not_seen ? "not seen" : weighing::word(step);
}

std::string_view step_meaning(Step step) {
  switch (step) {
    case Step::not_seen:
      return "never taken for sound";
    case Step::sound:
      return "clean where it was looked at";
    case Step::bloom:
      return "rust, metal still whole";
    case Step::pitted:
      return "metal lost, within the limit";
    case Step::thin:
      return "past the limit for structure";
    case Step::weak:
      return "half gone or more, or gives";
    case Step::holed:
      return "through, or breaks by hand";
  }
  return "";
}

std::string_view side_name(body::Side side) {
  switch (side) {
    case body::Side::left:
      return "left";
    case body::Side::right:
      return "right";
    case body::Side::centre:
      return "";
  }
  return "";
}

std::string zone_name(const weighing::Zone& zone) {
  const std::string_view side = side_name(zone.side);
  return side.empty() ? zone.name : fmt::format("{}, {}", zone.name, side);
}

std::string step_words(const weighing::Spot& spot) {
  if (spot.evidence == Evidence::looked && spot.step_high < spot.step_low) {
    return fmt::format("{} to {}", step_name(spot.step_high), step_name(spot.step_low));
  }
  return std::string(step_name(spot.step));
}

std::string metal_words(const weighing::Spot& spot) {
  if (spot.step == Step::holed) return std::string(evidence_words(spot.evidence));
  const auto percent = [](double share) { return static_cast<int>(std::lround(100 * share)); };
  const weighing::Span& metal = spot.metal.weighed;
  if (spot.metal.kind == weighing::SpanKind::interval) {
    const bool assumed = spot.metal.baseline_from == weighing::BaselineFrom::plan_sheet;
    if (weighing::judged_below_readings(spot.metal))
      return fmt::format("{} to {} % of the metal left by hand and pits; measured {} %",
                         percent(metal.low), percent(metal.high), percent(spot.metal.shown.value));
    return fmt::format("{} % of the metal left ({} to {}), measured{}", percent(metal.value),
                       percent(metal.low), percent(metal.high),
                       assumed ? ", the sheet assumed" : "");
  }
  return fmt::format("{} to {} % of the metal left, {}", percent(metal.low), percent(metal.high),
                     evidence_words(spot.evidence));
}

std::string near_words(const weighing::Spot& spot) {
  switch (spot.near) {
    case weighing::Near::no:
      return "";
    case weighing::Near::maybe:
      return "may be near the " + spot.near_what;
    case weighing::Near::within_radius:
      return "near the " + spot.near_what;
    case weighing::Near::into_mount:
      return "takes the load of the " + spot.near_what;
    case weighing::Near::on_mount:
      return "carries the " + spot.near_what;
  }
  return "";
}

std::string_view evidence_words(Evidence evidence) {
  switch (evidence) {
    case Evidence::not_seen:
      return "not seen";
    case Evidence::looked:
      return "judged by eye";
    case Evidence::felt:
      return "judged by hand";
    case Evidence::measured:
      return "measured";
  }
  return "";
}

std::string number_list(std::vector<int> numbers) {
  std::sort(numbers.begin(), numbers.end());
  numbers.erase(std::unique(numbers.begin(), numbers.end()), numbers.end());
  std::string list;
  for (std::size_t i = 0; i < numbers.size();) {
    std::size_t j = i;
    while (j + 1 < numbers.size() && numbers[j + 1] == numbers[j] + 1) ++j;
    if (!list.empty()) list += ", ";
    if (j - i >= 2) {
      list += fmt::format("{}\u2013{}", numbers[i], numbers[j]);
      i = j + 1;
    } else {
      list += fmt::format("{}", numbers[i]);
      ++i;
    }
  }
  return list;
}

std::string capitalised(std::string_view text) {
  std::string word(text);
  if (!word.empty() && word[0] >= 'a' && word[0] <= 'z') word[0] = static_cast<char>(word[0] - 32);
  return word;
}

std::string left_open(const weighing::Result& result) {
  const bool worse = result.could_be != result.verdict;
  if (!result.open_up_first) return worse ? "could be worse" : "";
  return worse ? "could be worse; open up first" : "open up first";
}

}  // namespace tinworm::scene
