// The pieces of a comparison: which gauge, which history, which versions, what rate and how long.
#include <gtest/gtest.h>

#include "history/difference.hpp"
#include "history/fixture.hpp"
#include "history/order.hpp"
#include "history/outlook.hpp"
#include "history/words.hpp"

namespace tinworm::history {
namespace {

using fixture::compared;
using fixture::found;
using fixture::in_sill;
using fixture::repairs;
using fixture::Told;
using survey::Coating;
using survey::MetalGauge;

TEST(Gauge, IsTheSameByNameElseByWhatIsSaidOfIt) {
  const MetalGauge a{"a", .05, Coating::removed}, b{"b", .05, Coating::removed},
      a_coarse{"a", .08, Coating::left_on}, none{"", .05, Coating::removed},
      none_coarse{"", .08, Coating::removed}, through{"a", .05, Coating::compensated};
  const struct {
    const MetalGauge &one, &other;
    bool same;
  } cases[] = {{a, a, true},        {a, b, false},           {a, a_coarse, true},
               {a, none, true},     {none, none, true},      {none, none_coarse, false},
               {a, through, false}, {through, through, true}};
  for (const auto& each : cases) {
    EXPECT_EQ(same_gauge(each.one, each.other), each.same) << each.one.name << each.other.name;
    EXPECT_EQ(same_gauge(each.other, each.one), each.same) << each.other.name << each.one.name;
  }
}

Place end_of(const std::vector<Told>& told) {
  return fixture::place(compared(told), "end");
}

const std::string thick = in_sill(found({"end: none, metal 1.00 1.00 1.00"}));
const std::string thin = in_sill(found({"end: none, metal .90 .90 .90"}));

std::string of_1_mm(const std::string& readings) {
  return in_sill(found({"end: none, metal " + readings}) + "sheet: 1.00");
}

// By hand: pooled over one set of three equal readings beside the prior, s^2 = 5 x .04^2/7, so each
// mean has s/sqrt 3 = .019518 and the difference .027603. Degrees of freedom 7 + 7 - 5 = 9, t
// 2.262157 (NIST/SEMATECH e-Handbook gives 2.262). With gauges of .05 mm each: sqrt(.027603^2 +
// 2 x .05^2) = .075906; by Welch-Satterthwaite 9 x (.075906/.027603)^4 = 514.7, t 1.9646.
TEST(Difference, OneGaugeCancelsAndTwoDoNot) {
  const Place one = end_of({{"2017-04-08", thick}, {"2025-04-12", thin}});
  EXPECT_NEAR(one.lost_mm->value, .10, 1e-12);
  EXPECT_NEAR(*one.smallest_visible_mm, 2.262157 * .027603, 2e-6);
  EXPECT_EQ(one.change, Change::worse);
  const Place two = end_of({{"2017-04-08", thick},
                            {"2025-04-12", thin, "name: Wherry", "name: b, uncertainty: 0.05 mm"}});
  EXPECT_NEAR(*two.smallest_visible_mm, 1.9646 * .075906, 2e-4);
  EXPECT_EQ(two.change, Change::same);
}

// The baseline cancels: another reference moves the share lost, never the loss.
TEST(Difference, BaselineCancels) {
  const auto with = [](const std::string& reference) {
    return in_sill(found({"end: none, metal .90 .90 .90"}) + "reference: " + reference);
  };
  const Place a = end_of({{"2017-04-08", thick}, {"2025-04-12", with("1.10")}});
  const Place b = end_of({{"2017-04-08", thick}, {"2025-04-12", with("0.95")}});
  EXPECT_EQ(a.lost_mm->value, b.lost_mm->value);
  EXPECT_NEAR(*a.lost_share, .10 / 1.10, 1e-12);
  EXPECT_NEAR(*b.lost_share, .10 / .95, 1e-12);
}

// 2017 and 2025 alone: middles eight years apart, each +/- half a year: sqrt 2 x .5/sqrt 3 = .40825
// years. The rate's half-width grows from h to sqrt(h^2 + (1.959964 x rate x .40825/8)^2).
TEST(Rate, PartialDatesWidenIt) {
  const metal::RateRange whole =
      end_of({{"2017-07-02", thick}, {"2025-07-02", thin}}).rate->per_year;
  const metal::RateRange years = end_of({{"2017", thick}, {"2025", thin}}).rate->per_year;
  EXPECT_NEAR(years.value, .10 / 8, 1e-5);
  const double half = whole.high - whole.value;
  EXPECT_NEAR(years.high - years.value, std::hypot(half, 1.959964 * years.value * .40825 / 8),
              1e-5);
  EXPECT_GT(years.high - years.low, whole.high - whole.low);
}

// A repair between the first and second surveys: the rate is of the new metal alone.
TEST(History, StartsAnewAfterARepair) {
  const std::string mended = repairs({"let-in, seam-weld, 2019-05"});
  const Comparison comparison =
      compared({{"2017-04-08", in_sill(found({"end: scale, metal .60 .61 .62"}))},
                {"2021-04-08", in_sill(found({"end: none, metal 1.00 1.00 1.00"}) + mended)},
                {"2025-04-08", in_sill(found({"end: none, metal .90 .90 .90"}) + mended)}});
  const Place& place = fixture::place(comparison, "end");
  EXPECT_EQ(place.change, Change::worse);
  EXPECT_EQ(place.from, 1u);
  EXPECT_EQ(place.records[1].change, Change::repaired);
  EXPECT_EQ(place.records[2].change, Change::worse);
  EXPECT_TRUE(place.records[1].repaired);
  EXPECT_EQ(place.rate->from, RateFrom::difference);
  EXPECT_NEAR(place.rate->per_year.value, .10 / 4, 1e-4);
}

// Dated before the second survey, first named in the third: the break lies where it was made.
TEST(History, ARepairNamedLateStartsWhereItWasMade) {
  const Comparison comparison =
      compared({{"2017-04-08", thick},
                {"2021-04-08", thick},
                {"2025-04-08", in_sill(found({"end: none, metal .90 .90 .90"}) +
                                       repairs({"let-in, seam-weld, 2019-05"}))}});
  const Place& place = fixture::place(comparison, "end");
  EXPECT_EQ(place.from, 1u);
  EXPECT_TRUE(place.records[1].repaired);
  EXPECT_FALSE(place.records[2].repaired);
}

// Its year alone doesn't tell whether it came before or after the survey of that year.
TEST(History, ARepairOfTheYearOfASurveyStartsWhereItIsFirstNamed) {
  const Comparison comparison =
      compared({{"2017-04-08", thick},
                {"2021-06-16", thick},
                {"2025-04-08", in_sill(found({"end: none, metal .90 .90 .90"}) +
                                       repairs({"let-in, seam-weld, 2021"}))}});
  const Place& place = fixture::place(comparison, "end");
  EXPECT_FALSE(place.records[1].repaired);
  EXPECT_TRUE(place.records[2].repaired);
  EXPECT_EQ(place.change, Change::repaired);
  for (const Question& each : comparison.questions) EXPECT_NE(each.kind, "repair-found-later");
}

TEST(History, ARepairOlderThanAllSurveysMarksNone) {
  const Comparison comparison =
      compared({{"2017-04-08", thick},
                {"2025-04-08", in_sill(found({"end: none, metal .90 .90 .90"}) +
                                       repairs({"let-in, seam-weld, 2010"}))}});
  for (const Record& each : fixture::place(comparison, "end").records) EXPECT_FALSE(each.repaired);
}

// The faster of the line and the last two readings: by hand .18 mm in 5 years, .20 mm in 10.
TEST(Rate, TheFasterOneGoverns) {
  const auto over = [](const char* middle) {
    return end_of({{"2009-06-16", of_1_mm("1.00 1.00 1.00")},
                   {"2014-06-16", of_1_mm(middle)},
                   {"2019-06-16", of_1_mm(".80 .80 .80")}});
  };
  const Place late = over(".98 .98 .98"), early = over(".83 .83 .83");
  EXPECT_EQ(late.rate->from, RateFrom::last_two);
  EXPECT_NEAR(late.rate->per_year.value, .18 / 5, 1e-4);
  EXPECT_EQ(early.rate->from, RateFrom::line);
  EXPECT_NEAR(early.rate->per_year.value, .20 / 10, 1e-4);
  EXPECT_NEAR(*early.rate->short_term, .03 / 5, 1e-4);
  EXPECT_NEAR(*early.rate->long_term, .20 / 10, 1e-4);
}

// Read through a coat whose thickness nobody read, metal may be far thinner than the reading.
TEST(Difference, NoneThroughACoatOfUnknownThickness) {
  const auto through = [](const char* date, const std::string& readings, const std::string& film) {
    return weighing::weigh(
        fixture::survey_of(
            std::string("survey: 1\nbody: test-body 1\ncar: {name: Wherry}\nvisit: {date: ") +
                date + "}\ngauges: {metal: {name: a, uncertainty: 0.05 mm, coating: left-on}}\n" +
                in_sill(found({"end: none, metal " + readings}) + film),
            fixture::small_plan()),
        {});
  };
  for (const auto& [film, told] : {std::pair("", false), {"film: 150 160 170", true}}) {
    std::vector<weighing::Result> results{through("2017-04-08", "1.10 1.10", film),
                                          through("2025-04-12", "1.00 1.00", film)};
    results[0].sha256 = "first";
    const Comparison comparison = compare(std::move(results), {});
    EXPECT_EQ(fixture::place(comparison, "end").lost_mm.has_value(), told) << film;
  }
}

TEST(Order, ByDateAndRefusals) {
  std::vector<weighing::Result> results;
  for (const char* date : {"2025-04-12", "2017", "2021-06"})
    results.push_back(fixture::result_of({date, thick}));
  sort_by_date(results);
  EXPECT_EQ(results[0].file, "2017.yaml");
  EXPECT_EQ(results[2].file, "2025-04-12.yaml");
  EXPECT_TRUE(refusals(results).empty());
  results.push_back(fixture::result_of({"2025-04", thin}));
  ASSERT_EQ(refusals(results).size(), 1u);
  EXPECT_EQ(refusals(results)[0].what,
            "2025-04-12.yaml of 2025-04-12 and 2025-04.yaml of 2025-04: which came first isn't "
            "told");
}

// Version 2 has the sill as another part: what bears its number is not compared.
TEST(Versions, AreMatchedByNumberAndNameWithANote) {
  body::Plan second = weighing::fixture::plan();
  second.version = 2;
  for (body::Zone& zone : second.zones)
    if (zone.number == 51) zone.name = "floor edge";
  const auto plan = std::make_shared<const body::Plan>(std::move(second));
  survey::Survey later = fixture::survey_of(
      "survey: 1\nbody: test-body 2\ncar: {name: Wherry}\nvisit: {date: 2025}\n" +
          in_sill(found({"end: none, metal .90"})) +
          "  52:\n    found:\n      - end: none, metal .90\n",
      plan);
  std::vector<weighing::Result> results{
      fixture::result_of({"2017", in_sill(found({"end: none, metal 1.00"})) +
                                      "  52:\n    found:\n      - end: none, metal 1.00\n"}),
      weighing::weigh(later, {})};
  const Comparison comparison = compare(std::move(results), {});
  EXPECT_EQ(comparison.notes.front(),
            "The survey of 2017 is of version 1 of the body plan, that of 2025 of version 2: zones "
            "are matched by number and name.");
  EXPECT_EQ(fixture::zone(comparison, 51).places[0].why, "no earlier survey has such a zone");
  EXPECT_TRUE(fixture::zone(comparison, 52).places[0].lost_mm);
}

// Straight line at both ends, and the power law of ISO 9224 from .10 of 1.00 mm lost in 45.95
// years: to .15 by b .523 45.95 x (1.5^(1/.523) - 1) = 53.83 years, by b .575 47.06.
TEST(OutlookOf, SpansStraightLineAndPowerLaw) {
  const std::string whole = of_1_mm("1.00 1.00 1.00"), less = of_1_mm(".90 .90 .90");
  const Place place = end_of({{"2019-06-16", whole, "name: Wherry, built: 1973"},
                              {"2019-06-17", whole, "name: Wherry, built: 1973"}});
  ASSERT_TRUE(place.outlook);  // nothing lost: no rate to speak of, no end
  EXPECT_FALSE(place.outlook->years_to_limit->high_years);

  const Comparison lost = compared({{"2009-06-16", whole, "name: Wherry, built: 1973"},
                                    {"2019-06-16", less, "name: Wherry, built: 1973"}});
  const Place& thinned = fixture::place(lost, "end");
  const double high_rate = thinned.rate->per_year.high;
  EXPECT_NEAR(thinned.outlook->limit_mm, .85, 1e-12);
  EXPECT_NEAR(thinned.outlook->years_to_limit->low_years, .05 / high_rate, 1e-9);
  EXPECT_NEAR(*thinned.outlook->years_to_limit_at_rate, 5, .01);
  const double age = quantity::years_between({1973, 0, 0}, {2019, 6, 16});
  EXPECT_NEAR(*thinned.outlook->years_to_limit->high_years, age * (std::pow(1.5, 1 / .523) - 1),
              1e-6);
}

// A limit against a sheet that nobody measured or stated would be a guess.
TEST(OutlookOf, IsWithheldAgainstAnAssumedSheet) {
  const Place place = end_of({{"2009-06-16", thick}, {"2019-06-16", thin}});
  EXPECT_TRUE(place.baseline_assumed);
  EXPECT_TRUE(place.rate);
  EXPECT_FALSE(place.outlook);
}

struct Next {
  std::string kept, readings;
  std::string date, why;
};

TEST(NextSurvey, IsHalfTheLifeOrWhatIsUsual) {
  const auto told = [](const Next& next) {
    const std::string kept = next.kept.empty() ? "" : "kept: {use: " + next.kept + "}\n";
    return std::vector<Told>{{"2019-06-16", kept + of_1_mm("1.00 1.00 1.00")},
                             {"2021-06-16", kept + of_1_mm(next.readings)}};
  };
  const Next cases[] = {
      {"stored", "1.00 1.00 1.00", "2025-06", "48 months, as is usual for a car stored dry"},
      {"dry-season", "1.00 1.00 1.00", "2023-06",
       "24 months, as is usual for a car driven in the dry season"},
      {"all-weather", "1.00 1.00 1.00", "2022-06",
       "12 months, as is usual for a car driven in all weathers"},
      {"salted", "1.00 1.00 1.00", "2021-12",
       "6 months, as is usual for a car driven on salted roads"},
      {"", "1.00 1.00 1.00", "2022-06",
       "12 months, as is usual for a car driven in all weathers (how it is kept isn't told)"},
      // .08 in 2 years, .07 left: half of 1.75 years.
      {"all-weather", ".92 .92 .92", "2022-04",
       "half the time that outer sill, left (51), end has to the limit in a straight line at its "
       "rate"},
      // .20 in 2 years, past the limit, .80 left: half of 8 years is more than 12 months.
      {"all-weather", ".80 .80 .80", "2022-06",
       "after the repair, and at the latest then: 12 months, as is usual for a car driven in all "
       "weathers"},
  };
  for (const Next& next : cases) {
    const Comparison comparison = compared(told(next));
    ASSERT_TRUE(comparison.next.date) << next.why;
    EXPECT_EQ(comparison.next.date->text(), next.date) << next.why;
    EXPECT_EQ(comparison.next.why, next.why);
  }
  const Comparison danger = compared(
      {{"2019-06-16", "seen: {bare: 61}\n"},
       {"2021-06-16", "seen: {bare: 61}\nzones:\n  61:\n    found:\n      - mount: hole\n"}});
  EXPECT_FALSE(danger.next.date);
  EXPECT_EQ(danger.next.why, "after the repair: the verdict is to keep it parked until then");
}

// Skin carries nothing: however fast it goes, it doesn't set the date.
TEST(NextSurvey, IsNotSetBySkin) {
  const auto wing = [](const std::string& readings) {
    return "kept: {use: all-weather}\nseen: {bare: 11 41 51 52 61 62 71}\nzones:\n  41:\n    " +
           found({"end: none, metal " + readings}) + "sheet: 1.00\n";
  };
  const Comparison comparison =
      compared({{"2019-06-16", wing("1.00 1.00 1.00")}, {"2021-06-16", wing(".92 .92 .92")}});
  EXPECT_EQ(fixture::zone(comparison, 41).role, body::Role::skin);
  EXPECT_EQ(fixture::place(comparison, "end").change, Change::worse);
  EXPECT_EQ(comparison.next.why, "12 months, as is usual for a car driven in all weathers");
}

// A station that is new says less than the zone as a whole.
TEST(Zones, AreNotCalledNewlySeenForANewStation) {
  const Comparison comparison =
      compared({{"2017", in_sill(found({"end: metal 1.00 1.00"}))},
                {"2025", in_sill(found({"end: metal 1.00 1.00", "middle: none, metal 1.00"}))}});
  EXPECT_EQ(fixture::place(comparison, "middle").change, Change::newly_seen);
  EXPECT_EQ(word(fixture::zone(comparison, 51).change), "same");
}

TEST(PlanningRate, StandsWhereNothingWasMeasuredTwice) {
  const Comparison comparison =
      compared({{"2019-06-16", in_sill("")},
                {"2021-06-16", "kept: {use: salted}\n" + of_1_mm(".95 .95 .95")}});
  const Place& place = fixture::place(comparison, "end");
  EXPECT_EQ(place.rate->from, RateFrom::planning);
  EXPECT_EQ(rate_text(place, quantity::Units::mm),
            "rate not measured; by how the car is kept 0.10 to 0.30 mm a year");
  EXPECT_NEAR(place.outlook->years_to_limit->low_years, .10 / .3, 1e-9);
}

// Nothing anywhere that reads as a date of failure.
TEST(Words, NeverPromise) {
  const Place place =
      end_of({{"2009-06-16", of_1_mm("1.00 1.00 1.00")}, {"2019-06-16", of_1_mm(".90 .90 .90")}});
  const std::string outlook = outlook_text(place, quantity::Units::mm);
  EXPECT_EQ(outlook, "to the limit of 0.85 mm: 3 to 14 years; to a hole: over 50 years");
  EXPECT_EQ(outlook.find("20"), std::string::npos);
}

}  // namespace
}  // namespace tinworm::history
