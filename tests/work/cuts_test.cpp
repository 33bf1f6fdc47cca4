// What is cut out of a tunnel of 1000 x 300 mm: x 400 to 1400 along, y -150 to 150 across.
#include "work/cuts.hpp"

#include <gtest/gtest.h>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "work/fixture.hpp"

namespace tinworm::work {
namespace {

struct Spot {
  double x, y, along, across;
};

Place place(const Spot& spot) {
  Place made;
  made.name = fmt::format("{:.0f}", spot.x);
  made.at = {spot.x, spot.y, 200};
  made.size = survey::Size{spot.along, spot.across};
  return made;
}

std::vector<Cut> cuts_of(int number, const std::vector<Place>& places,
                         const rates::Rates& rates = {}) {
  const survey::Survey survey = fixture::car::sound_survey();
  for (const auto& zone : weighing::zone_facts(survey))
    if (zone.number == number) return cuts(places, zone, rates);
  return {};
}

std::string text(const std::vector<Cut>& cuts) {
  std::string all;
  for (const Cut& cut : cuts)
    all += fmt::format("{}{}: {:g}x{:g} {:g}x{:g} {:g}x{:g}{}{}", all.empty() ? "" : "; ",
                       fmt::join(cut.places, "+"), cut.along_mm.low, cut.across_mm.low,
                       cut.along_mm.likely, cut.across_mm.likely, cut.along_mm.high,
                       cut.across_mm.high, cut.to_edge.empty() ? "" : " to ",
                       fmt::join(cut.to_edge, ","));
  return all;
}

TEST(Cuts, AreRectanglesWithAMargin) {
  const struct {
    const char* what;
    std::vector<Spot> spots;
    const char* cuts;
  } cases[] = {
      {"alone: 60 + 2 x 25, 35, 50 and 40 + the same",
       {{900, 0, 60, 40}},
       "900: 110x90 130x110 160x140"},
      {"100 apart (630 to 730): two",
       {{600, 0, 60, 40}, {760, 0, 60, 40}},
       "600: 110x90 130x110 160x140; 760: 110x90 130x110 160x140"},
      {"99 apart: one, 570 to 789",
       {{600, 0, 60, 40}, {759, 0, 60, 40}},
       "600+759: 269x90 289x110 319x140"},
      {"60 along and 80 across is 100, corner to corner: two; with 50 mm 20 from an edge, to it",
       {{600, -60, 60, 40}, {720, 60, 60, 40}},
       "600: 110x90 130x110 160x160; 720: 110x90 130x110 160x160"},
      {"a third that only the joined rectangle comes near: one, 570 to 830",
       {{600, -40, 60, 40}, {800, -40, 60, 40}, {700, 40, 60, 40}},
       "600+700+800: 310x170 330x190 360x220"},
      {"a side at 435 - 25 = 410, 400 and 385: to the front edge, 400",
       {{465, 0, 60, 40}},
       "465: 120x90 130x110 145x140 to front"},
      {"435 + 30: 31 from the edge with 25 mm, at it with 35 and 50",
       {{486, 0, 60, 40}},
       "486: 110x90 151x110 166x140 to front"},
      {"measured at the very end: moved onto the part, 1340 to 1400",
       {{1400, 0, 60, 40}},
       "1400: 85x90 95x110 110x140 to rear"},
      {"as wide as the part: both edges",
       {{900, 0, 60, 400}},
       "900: 110x300 130x300 160x300 to left,right"},
  };
  for (const auto& each : cases) {
    std::vector<Place> places;
    for (const Spot& spot : each.spots) places.push_back(place(spot));
    auto made = cuts_of(11, places);
    for (Cut& cut : made) std::ranges::sort(cut.places);
    EXPECT_EQ(text(made), each.cuts) << each.what;
  }
}

TEST(Cuts, OfPlacesThatWereNotMeasuredOrPlaced) {
  Place unsized = place({900, 0, 60, 40});
  unsized.size.reset();
  auto made = cuts_of(11, {unsized});
  // 50, 100, 200 square: with the margin 100, 170 and 300.
  EXPECT_EQ(text(made), "900: 100x100 170x170 300x300");
  EXPECT_TRUE(made[0].size_assumed);

  Place nowhere = place({900, 0, 60, 40});
  nowhere.at = {};
  made = cuts_of(11, {nowhere, nowhere});
  EXPECT_EQ(text(made), "900: 110x90 130x110 160x140; 900: 110x90 130x110 160x140");
  EXPECT_FALSE(made[0].placed);

  nowhere.size = survey::Size{2000, 40};  // no longer than the part
  EXPECT_EQ(text(cuts_of(11, {nowhere})), "900: 1000x90 1000x110 1000x140");
}

// The sill runs from 400 to 1400, 130 to 300: the ends are a quarter of it, 400 to 650 and 1150 on.
TEST(Cuts, TakeASillHoledNearAnEndWhole) {
  const struct {
    double x;
    bool holed, whole;
  } cases[] = {{450, true, true},  {650, true, true},  {651, true, false}, {900, true, false},
               {1150, true, true}, {1390, true, true}, {450, false, false}};
  for (const auto& each : cases) {
    Place made = place({each.x, -690, 60, 40});
    made.holed = each.holed;
    const auto cuts = cuts_of(51, {made});
    EXPECT_EQ(cuts[0].whole, each.whole) << each.x;
    if (each.whole) {
      EXPECT_EQ(text(cuts).substr(text(cuts).find(": ")), ": 1000x170 1000x170 1000x170");
    }
  }
  Place tunnel = place({450, 0, 60, 40});
  tunnel.holed = true;
  EXPECT_FALSE(cuts_of(11, {tunnel})[0].whole) << "no sill";
}

TEST(Cuts, KnowWeldAndSheet) {
  const Cut cut = cuts_of(11, {place({900, 0, 60, 40})})[0];
  EXPECT_EQ(perimeter_mm(cut), (Range{400, 480, 600}));
  EXPECT_EQ(area_mm2(cut), (Range{9900, 14300, 22400}));
}

}  // namespace
}  // namespace tinworm::work
