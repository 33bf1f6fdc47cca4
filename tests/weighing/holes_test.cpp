// Several holes of one place: together they weigh more than the largest alone.
#include "weighing/holes.hpp"

#include <gtest/gtest.h>

#include <memory>

#include "weighing/fixture.hpp"
#include "weighing/weigh.hpp"
#include "weighing/words.hpp"

namespace tinworm::weighing {
namespace {

using fixture::spot;
using survey::Size;

TEST(Holes, StandInARowAlongTheZone) {
  const std::vector<Size> holes = {{20, 20}, {15, 25}, {8, 8}};
  EXPECT_EQ(in_a_row(holes), (Size{43, 25}));
  EXPECT_EQ(area_mm2(holes), 400 + 375 + 64);
  EXPECT_EQ(largest_mm(holes), 25);
  EXPECT_EQ(in_a_row({{20, 15}}), (Size{20, 15}));
}

// The rear end of a sill of 1000 mm and 0.30 m², far from any mounting.
Result holed(std::vector<Size> holes, std::optional<Size> size = {}, bool placed = true) {
  survey::Survey survey = fixture::sound_survey();
  survey::Spot found = spot("row", survey::Rust::scale);
  if (placed) found.at = {700, -700, 200};
  found.size = size;
  found.hole = holes.front();
  found.other_holes.assign(holes.begin() + 1, holes.end());
  survey.zones[51].found = {found};
  return weigh(survey, {});
}

const Spot& place_in(const Result& result) {
  return result.zone(51)->spots.at(0);
}

// By hand. The place, scale, has no size of its own: a quarter of the zone's length, 250 of 1000
// mm, beside the row of its holes, 60 and 60 + 40 + 20 mm: (250 + 60)/1000 = .31, (250 + 120)/1000
// = .37. Its area is 1 % of 0.30 m², 3000 mm², unless its holes are more: 2400 are not, 2400 + 1200
// + 400 = 4000 are.
TEST(Holes, AllCountInLengthAndArea) {
  for (const bool placed : {true, false}) {
    const Result one = holed({{60, 40}}, {}, placed);
    const Result three = holed({{60, 40}, {40, 30}, {20, 20}}, {}, placed);
    EXPECT_NEAR(place_in(one).share_of_length, .31, 1e-12);
    EXPECT_NEAR(place_in(three).share_of_length, .37, 1e-12);
    EXPECT_NEAR(*one.zone(51)->rusted_share, .01, 1e-12);
    EXPECT_NEAR(*three.zone(51)->rusted_share, 4000 / 3e5, 1e-12);
    EXPECT_GT(three.structure.value, one.structure.value);
    EXPECT_EQ(place_in(three).holes.size(), 3u);
  }
}

// A size is that of all the rust, its holes included.
TEST(Holes, LieInTheSizeThatWasRecorded) {
  const Result result = holed({{60, 40}, {40, 30}}, Size{180, 60});
  EXPECT_NEAR(place_in(result).share_of_length, .180, 1e-12);
  EXPECT_NEAR(*result.zone(51)->rusted_share, 180 * 60 / 3e5, 1e-12);
  EXPECT_FALSE(place_in(result).size_of_holes);
}

TEST(Holes, AreNamedWithTheirNumberAndTheLargest) {
  EXPECT_EQ(signs_text(place_in(holed({{60, 40}, {40, 30}, {20, 20}}))),
            "3 holes, the largest 60 x 40 mm");
  EXPECT_EQ(signs_text(place_in(holed({{60, 40}}))), "");
  EXPECT_EQ(holed({{60, 40}, {40, 30}}).reasons.at(0).text,
            "outer sill, left (51), row: holed, 2 holes, the largest 60 x 40 mm, no metal left");
}

}  // namespace
}  // namespace tinworm::weighing
