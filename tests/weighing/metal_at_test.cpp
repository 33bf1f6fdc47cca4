#include "weighing/metal_at.hpp"

#include <gtest/gtest.h>

#include <functional>

#include "weighing/fixture.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::weighing {
namespace {

using fixture::spot;
using survey::Hand;
using survey::Magnet;
using survey::Probe;
using survey::Rust;
using survey::Tap;

Spot weighed(const survey::Spot& found, int zone = 11,
             const std::function<void(survey::Survey&)>& change = {}) {
  survey::Survey survey = fixture::sound_survey();
  survey.zones[zone].found = {found};
  if (change) change(survey);
  return weigh(survey, {}).zone(zone)->spots.front();
}

void expect_span(const Span& got, const Span& want, double within = 1e-12) {
  EXPECT_NEAR(got.low, want.low, within);
  EXPECT_NEAR(got.value, want.value, within);
  EXPECT_NEAR(got.high, want.high, within);
}

// Words to metal: memory, this method's own table.
TEST(MetalAt, EachWordHasItsEnvelope) {
  const struct {
    Rust rust;
    Span metal;
    Step step;
  } cases[] = {
      {Rust::none, {.95, 1, 1}, Step::sound},
      {Rust::surface, {.95, .98, 1}, Step::bloom},
      {Rust::contact, {.85, .93, .99}, Step::pitted},
      {Rust::pitting, {.70, .85, .95}, Step::pitted},
      {Rust::scale, {.50, .70, .90}, Step::thin},
      {Rust::seam, {.50, .75, .92}, Step::thin},
      {Rust::poultice, {.40, .65, .90}, Step::thin},
      {Rust::edge, {.40, .75, .95}, Step::thin},
      {Rust::bleed, {.40, .75, .97}, Step::thin},
      {Rust::acid, {.30, .60, .90}, Step::thin},
      {Rust::blister, {.30, .70, .95}, Step::thin},
      {Rust::hole, {0, 0, 0}, Step::holed},
  };
  for (const auto& c : cases) {
    SCOPED_TRACE(word(c.rust));
    const Spot got = weighed(spot("a", c.rust));
    expect_span(got.metal.weighed, c.metal);
    EXPECT_EQ(got.step, c.step);
    EXPECT_EQ(got.metal.kind, SpanKind::envelope);
    EXPECT_EQ(got.evidence, Evidence::looked);
    EXPECT_EQ(got.found, c.rust != Rust::none);
  }
}

TEST(MetalAt, HandsAndToolsCutInTheirOrder) {
  struct Case {
    const char* what;
    Rust rust;
    std::optional<Hand> hand;
    std::optional<Tap> tap;
    std::optional<Probe> probe;
    Span metal;
    Step step;
    bool by_hand;
  };
  const Case cases[] = {
      {"firm raises to .50", Rust::blister, Hand::firm, {}, {}, {.50, .70, .95}, Step::thin, false},
      {"firm, word's least higher",
       Rust::pitting,
       Hand::firm,
       {},
       {},
       {.70, .85, .95},
       Step::pitted,
       false},
      {"gives", Rust::pitting, Hand::gives, {}, {}, {.15, .35, .50}, Step::weak, true},
      {"crunches", Rust::pitting, {}, Tap::crunches, {}, {.15, .35, .50}, Step::weak, true},
      {"breaks", Rust::surface, Hand::breaks, {}, {}, {0, .10, .30}, Step::holed, true},
      {"goes in", Rust::surface, {}, {}, Probe::goes_in, {0, .10, .30}, Step::holed, true},
      {"dull", Rust::surface, {}, Tap::dull, {}, {.50, .70, .85}, Step::thin, false},
      {"firm then dull",
       Rust::blister,
       Hand::firm,
       Tap::dull,
       {},
       {.50, .70, .85},
       Step::thin,
       false},
      {"firm then crunches",
       Rust::blister,
       Hand::firm,
       Tap::crunches,
       {},
       {.15, .35, .50},
       Step::weak,
       true},
      {"rings changes nothing",
       Rust::scale,
       {},
       Tap::rings,
       {},
       {.50, .70, .90},
       Step::thin,
       false},
      {"dents changes nothing",
       Rust::scale,
       {},
       {},
       Probe::dents,
       {.50, .70, .90},
       Step::thin,
       false},
      {"gives cuts each to its own",
       Rust::acid,
       Hand::gives,
       {},
       {},
       {.15, .35, .50},
       Step::weak,
       true},
  };
  for (const Case& c : cases) {
    SCOPED_TRACE(c.what);
    survey::Spot found = spot("a", c.rust);
    found.hand = c.hand;
    found.tap = c.tap;
    found.probe = c.probe;
    const Spot got = weighed(found);
    expect_span(got.metal.weighed, c.metal);
    EXPECT_EQ(got.step, c.step);
    EXPECT_EQ(got.by_measure_or_hand, c.by_hand);
    EXPECT_EQ(got.evidence, Evidence::felt);
  }
}

// Foam, paper, board, mesh or cement: the metal behind isn't there until somebody shows it.
TEST(MetalAt, StuffingSaysThatTheMetalIsGone) {
  survey::Spot found = spot("a", Rust::none);
  found.stuffed = survey::Stuffed::mesh;
  found.hand = Hand::firm;
  const Spot got = weighed(found);
  expect_span(got.metal.weighed, {0, .15, .50});
  EXPECT_EQ(got.step, Step::weak);
  EXPECT_EQ(got.evidence, Evidence::felt);
  EXPECT_TRUE(got.found && got.by_measure_or_hand && got.stuffed);
  found.hole = survey::Size{40, 25};
  const Spot holed = weighed(found);
  expect_span(holed.metal.weighed, {0, 0, 0});
  EXPECT_EQ(holed.step, Step::holed);
}

// Worked by hand. One set of four readings .81 .78 .84 .80 and a reference 1.02 1.00 1.01 in the
// survey. Sums of squares about the means: .001875 (3 df) and .0002 (2 df); pool with the prior
// 5 x .04^2 = .008: s^2 = .010075/10 = .0010075, s = .031741, 10 df.
// t = .8075, t0 = 1.01, lambda = .799505. u: repeatability of the mean s/sqrt4/t0 = .0157134;
// of the reference lambda s/sqrt3/t0 = .0145065; gauge .05 (1 - lambda)/t0 = .00992550.
// u_c = .0235798. The first two rest on one estimate of the scatter and count as one, .0213859 with
// 10 df; the third has infinite: nu = (.0235798/.0213859)^4 x 10 = 14.78; t(.975, 14.78) = 2.1343
// (between NIST's 2.145 at 14 and 2.131 at 15): half-width .05033.
TEST(MetalAt, ReadingsGiveAnIntervalByTheGum) {
  survey::Spot found = spot("rear end", Rust::pitting);
  found.metal_mm = {.81, .78, .84, .80};
  const Spot got = weighed(found, 11, [](survey::Survey& s) {
    s.zones[11].reference_mm = {1.02, 1.00, 1.01};
  });
  EXPECT_EQ(got.metal.kind, SpanKind::interval);
  EXPECT_EQ(got.evidence, Evidence::measured);
  EXPECT_EQ(got.step, Step::thin);
  EXPECT_EQ(got.metal.baseline_from, BaselineFrom::reference);
  EXPECT_NEAR(*got.metal.mean_mm, .8075, 1e-12);
  EXPECT_NEAR(*got.metal.least_mm, .78, 1e-12);
  EXPECT_NEAR(*got.metal.baseline_mm, 1.01, 1e-12);
  expect_span(got.metal.shown, {.799505 - .05033, .799505, .799505 + .05033}, 2e-4);
  ASSERT_TRUE(got.metal.degrees_of_freedom);
  EXPECT_NEAR(*got.metal.degrees_of_freedom, 14.78, .02);
}

TEST(MetalAt, TakesTheFirstBaselineThatExists) {
  survey::Spot found = spot("a", Rust::pitting);
  found.metal_mm = {.70, .70};
  const struct {
    const char* what;
    std::function<void(survey::Survey&)> change;
    BaselineFrom from;
    double baseline_mm;
  } cases[] = {
      {"own reference",
       [](auto& s) {
         s.zones[51].reference_mm = {.98};
         s.zones[52].reference_mm = {1.02};
         s.zones[51].sheet_mm = 1.1;
         s.zones[52].sheet_mm = 1.1;
       },
       BaselineFrom::reference, .98},
      {"pair's reference", [](auto& s) { s.zones[52].reference_mm = {1.02}; },
       BaselineFrom::pair_reference, 1.02},
      {"pair of another sheet",
       [](auto& s) {
         s.zones[52].reference_mm = {1.22};
         s.zones[52].sheet_mm = 1.2;
       },
       BaselineFrom::plan_sheet, 1.0},
      {"survey's sheet", [](auto& s) { s.zones[51].sheet_mm = 1.1; }, BaselineFrom::survey_sheet,
       1.1},
      {"plan's sheet", [](auto&) {}, BaselineFrom::plan_sheet, 1.0},
  };
  for (const auto& c : cases) {
    SCOPED_TRACE(c.what);
    const Spot got = weighed(found, 51, c.change);
    EXPECT_EQ(got.metal.baseline_from, c.from);
    EXPECT_NEAR(*got.metal.baseline_mm, c.baseline_mm, 1e-12);
  }
}

TEST(MetalAt, AgainstAnAssumedSheetTheWordStandsWhereTheIntervalHoldsIt) {
  survey::Spot found = spot("a", Rust::pitting);
  found.metal_mm = {.95, .95, .95};  // .95 of an assumed 1.0, interval some 10 % either way
  EXPECT_NEAR(weighed(found).metal.weighed.value, .85, 1e-12);
  EXPECT_NEAR(weighed(found).metal.shown.value, .95, 1e-12);
  found.rust = Rust::none;
  EXPECT_EQ(weighed(found).metal.weighed.value, 1);
  EXPECT_FALSE(weighed(found).found);
  found.metal_mm = {.60, .60, .60};  // too little for the thinnest sheet assumed, .8 of 1.0
  EXPECT_NEAR(weighed(found).metal.weighed.value, .75, 1e-12);
  EXPECT_TRUE(weighed(found).by_measure_or_hand);
  EXPECT_TRUE(weighed(found).found);
}

TEST(MetalAt, LossWithoutRustIsRustOnTheSideNotSeen) {
  const auto reference = [](survey::Survey& s) { s.zones[11].reference_mm = {1.0, 1.0}; };
  survey::Spot found = spot("a", Rust::none);
  found.metal_mm = {.95, .95};
  EXPECT_FALSE(weighed(found, 11, reference).found);
  found.metal_mm = {.94, .94};
  EXPECT_TRUE(weighed(found, 11, reference).found);
  EXPECT_EQ(weighed(found, 11, reference).step, Step::pitted);
}

TEST(MetalAt, ReadingsBesideASeamSpeakForTheOpenSheetOnly) {
  const auto reference = [](survey::Survey& s) { s.zones[11].reference_mm = {1.0, 1.0}; };
  const struct {
    Rust rust;
    double low;
  } cases[] = {{Rust::seam, .50}, {Rust::edge, .40}, {Rust::bleed, .40}};
  for (const auto& c : cases) {
    survey::Spot found = spot("a", c.rust);
    found.metal_mm = {.97, .97};
    const Spot got = weighed(found, 11, reference);
    EXPECT_NEAR(got.metal.weighed.low, c.low, 1e-12);
    EXPECT_NEAR(got.metal.weighed.value, .97, 1e-12);
  }
}

TEST(MetalAt, TheWorseOfHandAndGaugeCounts) {
  const auto reference = [](survey::Survey& s) { s.zones[11].reference_mm = {1.0, 1.0}; };
  survey::Spot found = spot("a", Rust::surface);
  found.metal_mm = {.90, .90};
  found.hand = Hand::gives;
  const Spot got = weighed(found, 11, reference);
  EXPECT_NEAR(got.metal.weighed.value, .35, 1e-12);
  EXPECT_NEAR(got.metal.shown.value, .90, 1e-12);
  EXPECT_EQ(got.metal.remarks,
            std::vector<std::string>{"the hand says worse than the gauge; the hand counts"});
}

TEST(MetalAt, OverOneSheetIsNotOneSheet) {
  const auto reference = [](survey::Survey& s) { s.zones[11].reference_mm = {1.0, 1.0}; };
  survey::Spot found = spot("a", Rust::none);
  found.metal_mm = {1.25, 1.25};
  EXPECT_EQ(weighed(found, 11, reference).metal.kind, SpanKind::interval);
  EXPECT_FALSE(weighed(found, 11, reference).too_thick);
  found.metal_mm = {1.26, 1.30};
  const Spot plate = weighed(found, 11, reference);
  EXPECT_EQ(plate.metal.kind, SpanKind::envelope);
  EXPECT_TRUE(plate.too_thick);
  expect_span(plate.metal.weighed, {.50, 1, 1});
  found.metal_mm = {1.30, .80};  // contradicts itself: judged, its low end by the least
  const Spot both = weighed(found, 11, reference);
  expect_span(both.metal.weighed, {.80, 1, 1});
  EXPECT_TRUE(both.contradict);
  EXPECT_FALSE(both.too_thick) << "its mean is one sheet";
  found.metal_mm = {1.80, .80};
  EXPECT_TRUE(weighed(found, 11, reference).too_thick);
  EXPECT_TRUE(weighed(found, 11, reference).contradict);
}

TEST(MetalAt, ReadingsThroughCoatingAreCorrectedOrAnUpperBound) {
  const auto left_on = [](std::vector<double> film_um) {
    return [film_um](survey::Survey& s) {
      s.gauge.coating = survey::Coating::left_on;
      s.zones[11].film_um = film_um;
      s.zones[11].sheet_mm = 1.0;
    };
  };
  survey::Spot found = spot("a", Rust::pitting);
  found.metal_mm = {1.03, 1.03};
  // 2.3 x .1 mm off each reading: .80 of a stated 1.0 mm
  EXPECT_NEAR(weighed(found, 11, left_on({100, 100, 100})).metal.shown.value, .80, 1e-12);
  found.metal_mm = {.80, .80};
  for (const auto& film : {std::vector<double>{}, std::vector<double>{600, 600}}) {
    const Spot got = weighed(found, 11, left_on(film));
    EXPECT_EQ(got.metal.kind, SpanKind::envelope);
    expect_span(got.metal.weighed, {.70, .80, .80});
    EXPECT_EQ(
        got.metal.remarks,
        std::vector<std::string>{"read through a coating of unknown thickness: an upper bound"});
  }
}

// Where one set was read bare and the other through paint, each is corrected by what it says. By
// hand: 1.03 - 2.3 x .100 = .80 mm of 1.00 mm.
TEST(MetalAt, CoatingMayBeToldForOneSet) {
  using survey::Coating;
  struct {
    Coating gauge;
    std::optional<Coating> spot, reference;
    double reads_mm, reference_mm, left;
  } const cases[] = {
      {Coating::left_on, std::nullopt, std::nullopt, 1.03, 1.23, .80},
      {Coating::left_on, Coating::removed, std::nullopt, .80, 1.23, .80},
      {Coating::left_on, std::nullopt, Coating::removed, 1.03, 1.00, .80},
      {Coating::left_on, Coating::removed, Coating::removed, .80, 1.00, .80},
      {Coating::left_on, Coating::compensated, Coating::removed, .80, 1.00, .80},
      {Coating::removed, Coating::left_on, std::nullopt, 1.03, 1.00, .80},
      {Coating::removed, std::nullopt, Coating::left_on, .80, 1.23, .80},
  };
  for (const auto& each : cases) {
    survey::Spot found = spot("a", Rust::pitting);
    found.metal_mm = {each.reads_mm, each.reads_mm};
    found.coating = each.spot;
    const Spot got = weighed(found, 11, [&](survey::Survey& s) {
      s.gauge.coating = each.gauge;
      s.zones[11].film_um = {100, 100, 100};
      s.zones[11].reference_mm = {each.reference_mm, each.reference_mm};
      s.zones[11].reference_coating = each.reference;
    });
    EXPECT_NEAR(got.metal.shown.value, each.left, 1e-12);
    EXPECT_EQ(got.metal.kind, SpanKind::interval);
  }
}

// Without a film, what was read through paint is a bound; what was read bare isn't.
TEST(MetalAt, ASetReadBareNeedsNoFilm) {
  survey::Spot found = spot("a", Rust::pitting);
  found.metal_mm = {.80, .80};
  const auto through_paint = [](survey::Survey& s) {
    s.gauge.coating = survey::Coating::left_on;
    s.zones[11].sheet_mm = 1.0;
  };
  EXPECT_EQ(weighed(found, 11, through_paint).metal.kind, SpanKind::envelope);
  found.coating = survey::Coating::removed;
  EXPECT_EQ(weighed(found, 11, through_paint).metal.kind, SpanKind::interval);
}

TEST(MetalAt, ACrackIsPastTheLimitAndWeakNearAMount) {
  survey::Spot found = spot("a", std::nullopt);
  found.crack_mm = 30;
  EXPECT_EQ(weighed(found, 11).step, Step::thin);
  EXPECT_EQ(weighed(found, 61).step, Step::weak);
}

TEST(MetalAt, AHoleIsAsLargeAsItsSizeItsHoleOrTwentyFive) {
  survey::Spot found = spot("a", Rust::hole);
  EXPECT_EQ(weighed(found).size, (survey::Size{25, 25}));
  EXPECT_TRUE(weighed(found).size_assumed);
  found.hole = survey::Size{14, 9};
  EXPECT_EQ(weighed(found).size, (survey::Size{14, 9}));
  found.size = survey::Size{60, 40};
  EXPECT_EQ(weighed(found).size, (survey::Size{60, 40}));
}

TEST(MetalAt, AWideSetKeepsItsOwnScatter) {
  survey::Survey survey = fixture::sound_survey();
  survey.zones[11].reference_mm = {1.0, 1.0, 1.0};
  survey::Spot wide = spot("wide", Rust::pitting), narrow = spot("narrow", Rust::pitting);
  wide.metal_mm = {.50, .90};
  narrow.metal_mm = {.80, .80};
  survey.zones[11].found = {wide, narrow};
  const Result result = weigh(survey, {});
  const auto& spots = result.zone(11)->spots;
  EXPECT_GT(spots[0].metal.shown.high - spots[0].metal.shown.low,
            2 * (spots[1].metal.shown.high - spots[1].metal.shown.low));
}

}  // namespace
}  // namespace tinworm::weighing
