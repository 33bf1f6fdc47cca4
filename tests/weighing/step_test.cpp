// The least a place can be by its signs, whatever its metal.
#include "weighing/step.hpp"

#include <gtest/gtest.h>

#include "weighing/fixture.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::weighing {
namespace {

using survey::Hand;
using survey::Probe;
using survey::Rust;
using survey::Tap;

TEST(Step, TheLeastASignAllows) {
  const struct {
    const char* what;
    std::optional<Hand> hand;
    std::optional<Tap> tap;
    std::optional<Probe> probe;
    Step least;
  } cases[] = {
      {"nothing felt", {}, {}, {}, Step::sound},
      {"firm, rings, stops", Hand::firm, Tap::rings, Probe::stops, Step::sound},
      {"dull and dents are questions", {}, Tap::dull, Probe::dents, Step::sound},
      {"gives", Hand::gives, {}, {}, Step::weak},
      {"crunches", {}, Tap::crunches, {}, Step::weak},
      {"crunches though firm", Hand::firm, Tap::crunches, {}, Step::weak},
      {"breaks", Hand::breaks, {}, {}, Step::holed},
      {"goes in", {}, {}, Probe::goes_in, Step::holed},
      {"goes in where it crunches", {}, Tap::crunches, Probe::goes_in, Step::holed},
  };
  for (const auto& [what, hand, tap, probe, least] : cases) {
    survey::Spot spot = fixture::spot("a", Rust::surface);
    spot.hand = hand;
    spot.tap = tap;
    spot.probe = probe;
    EXPECT_EQ(least_step(spot, {}, false, {}), least) << what;
  }
}

// The same metal, once under the thumb and once under a tap: the same in all that is said of it.
TEST(Step, CrunchesCountsAsGivesAtEitherEnd) {
  for (const double measured_mm : {0.0, 1.0}) {
    std::vector<Spot> spots;
    for (const bool by_tap : {false, true}) {
      survey::Survey survey = fixture::sound_survey();
      survey::Spot found = fixture::spot("a", Rust::surface);
      if (by_tap)
        found.tap = Tap::crunches;
      else
        found.hand = Hand::gives;
      if (measured_mm > 0) found.metal_mm = {measured_mm, measured_mm, measured_mm};
      survey.zones[11].reference_mm = {1, 1, 1};
      survey.zones[11].found = {found};
      const Result result = weigh(survey, {});
      spots.push_back(result.zone(11)->spots.front());
    }
    EXPECT_EQ(spots[0].step, spots[1].step) << measured_mm;
    EXPECT_EQ(spots[0].step_low, spots[1].step_low) << measured_mm;
    EXPECT_EQ(spots[0].step_high, spots[1].step_high) << measured_mm;
    EXPECT_EQ(spots[1].step_high, Step::weak) << measured_mm;
  }
}

}  // namespace
}  // namespace tinworm::weighing
