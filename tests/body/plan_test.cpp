#include "body/plan.hpp"

#include <gtest/gtest.h>

#include "body/words.hpp"

namespace tinworm::body {
namespace {

TEST(ZoneNumbers, TellSideAndPair) {
  struct {
    int number;
    Side side;
    std::optional<int> pair;
  } const cases[] = {
      {10, Side::centre, {}}, {39, Side::centre, {}}, {41, Side::left, 42},
      {42, Side::right, 41},  {97, Side::left, 98},   {98, Side::right, 97},
  };
  for (const auto& [number, side, pair] : cases) {
    EXPECT_EQ(side_of(number), side) << number;
    EXPECT_EQ(pair_of(number), pair) << number;
    Zone zone;
    zone.number = number;
    EXPECT_EQ(zone.side(), side) << number;
    EXPECT_EQ(zone.pair(), pair) << number;
  }
}

// UK MOT inspection manual, cars, Appendix A, section 2: brakes, steering, suspension, belts,
// towing.
TEST(NearRule, HoldsForWhatCarriesPeople) {
  struct {
    Carries carries;
    bool under;
  } const cases[] = {
      {Carries::brakes, true}, {Carries::steering, true}, {Carries::suspension, true},
      {Carries::belts, true},  {Carries::towing, true},   {Carries::seat, false},
      {Carries::jack, false},  {Carries::tank, false},    {Carries::engine, false},
      {Carries::body, false},  {Carries::door, false},
  };
  for (const auto& [carries, under] : cases) EXPECT_EQ(under_near_rule(carries), under);
}

template <typename Value>
void expect_round_trip(std::span<const Word<Value>> words) {
  for (const auto& entry : words) {
    EXPECT_EQ(word(entry.value), entry.word);
    EXPECT_EQ(value_of(entry.word, words), entry.value);
  }
  EXPECT_FALSE(value_of(std::string_view("nothing of the kind"), words));
}

TEST(Words, StandForOneValueEach) {
  expect_round_trip(construction_words());
  expect_round_trip(role_words());
  expect_round_trip(joined_words());
  expect_round_trip(build_words());
  expect_round_trip(carries_words());
  expect_round_trip(job_words());
  expect_round_trip(side_words());
  expect_round_trip(weight_words());
  expect_round_trip(view_words());
  expect_round_trip(layer_words());
  expect_round_trip(axis_words());
  EXPECT_EQ(word(Construction::separate_chassis), "separate-chassis");
  EXPECT_EQ(view_of("underneath"), View::underneath);
  EXPECT_FALSE(view_of("Underneath"));
}

}  // namespace
}  // namespace tinworm::body
