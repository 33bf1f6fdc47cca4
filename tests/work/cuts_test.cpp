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
  const survey::Survey survey = fixture::sound_survey();
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
  EXPECT_EQ(weld_mm(cut), (Range{400, 480, 600}));
  EXPECT_EQ(sheet_mm2(cut), (Range{9900, 14300, 22400}));
  EXPECT_EQ(cut.along_at, (geometry::Interval{835, 965}));
}

// Nobody cuts a sill from end to end for a pinhole: it is welded up, at worst with a piece of 104 x
// 104. Two within 100 mm are one cut round both; 100 apart each is welded up.
TEST(Cuts, WeldUpAPinhole) {
  const auto pinhole = [](double x) {
    Place made = place({x, 0, 4, 4});
    made.pinhole_mm = 4;
    return made;
  };
  const auto alone = cuts_of(11, {pinhole(600)});
  ASSERT_EQ(alone.size(), 1u);
  EXPECT_EQ(alone[0].way, Way::weld_up);
  EXPECT_EQ(text(alone), "600: 4x4 4x4 104x104");
  EXPECT_NEAR(weld_mm(alone[0]).likely, 12.566371, 1e-6) << "pi x 4, once round";
  EXPECT_EQ(weld_mm(alone[0]).high, 416);
  EXPECT_EQ(sheet_mm2(alone[0]), (Range{0, 0, 10816}));
  const auto two = cuts_of(11, {pinhole(600), pinhole(703)});
  ASSERT_EQ(two.size(), 1u) << "99 apart";
  EXPECT_EQ(two[0].way, Way::let_in);
  EXPECT_EQ(cuts_of(11, {pinhole(600), pinhole(704)}).size(), 2u) << "100 apart";
  Place at_the_end = place({430, -690, 4, 4});
  at_the_end.pinhole_mm = 4;
  EXPECT_FALSE(cuts_of(51, {at_the_end})[0].whole);
}

// 35 mm: plate (35 + 70) x 70 with 35 mm all round; weld .35 m round it and .035 m. On skin no
// plate.
TEST(Cuts, PlateACrackOnWhatCarries) {
  Place crack = place({900, 0, 35, 0});
  crack.crack_mm = 35;
  const Cut made = cuts_of(11, {crack})[0];
  EXPECT_EQ(made.way, Way::crack);
  EXPECT_TRUE(made.plated);
  EXPECT_EQ(text({made}), "900: 85x50 105x70 135x100");
  EXPECT_EQ(weld_mm(made), (Range{305, 385, 505}));
  EXPECT_EQ(sheet_mm2(made), (Range{4250, 7350, 13500}));
  Place on_skin = place({-100, 600, 35, 0});
  on_skin.at = {-100, -740, 600};
  on_skin.crack_mm = 35;
  const Cut skin = cuts_of(41, {on_skin})[0];
  EXPECT_FALSE(skin.plated);
  EXPECT_EQ(weld_mm(skin), (Range{35, 35, 35}));
  EXPECT_EQ(sheet_mm2(skin), Range{});
  const auto beside = cuts_of(11, {crack, place({980, 0, 60, 40})});
  ASSERT_EQ(beside.size(), 1u);
  EXPECT_EQ(beside[0].way, Way::let_in) << "rust within 100 mm: the crack goes with it";
}

// A lip of 800 mm: past the limit over 401 mm of it, a new lip; over 400 a piece; judged alone,
// none.
TEST(Cuts, RenewALipThatIsGoneAlongMostOfIt) {
  const auto lip = [](const std::vector<Place>& places) {
    body::Plan plan = fixture::body_plan();
    body::Zone zone = fixture::car::zone(97, "lip", body::Role::skin, body::Build::layered,
                                         {{2000, 2800}, {-780, -760}, {300, 600}}, .9, .1);
    zone.job = body::Job::outer_arch;
    plan.zones.push_back(zone);
    const survey::Survey survey = fixture::car::sound_survey(plan);
    for (const auto& each : weighing::zone_facts(survey))
      if (each.number == 97) return cuts(places, each, {});
    return std::vector<Cut>{};
  };
  const auto at = [](double x, double along) {
    Place made = place({x, 0, along, 20});
    made.at = {x, -770, 450};
    return made;
  };
  EXPECT_TRUE(lip({at(2250, 201), at(2600, 200)})[0].whole);
  EXPECT_EQ(lip({at(2250, 200), at(2600, 200)}).size(), 2u);
  Place judged = at(2400, 700);
  judged.certain = false;
  EXPECT_FALSE(lip({judged})[0].whole);
}

}  // namespace
}  // namespace tinworm::work
