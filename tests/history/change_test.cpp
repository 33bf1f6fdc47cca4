// Every change word with its whole sentence.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "history/fixture.hpp"
#include "history/words.hpp"

namespace tinworm::history {
namespace {

using fixture::compared;
using fixture::found;
using fixture::in_sill;
using fixture::repairs;

struct Case {
  std::string name;
  std::string then, now;  // what zone 51 has
  Change change;
  std::string text;
  std::string seen_then = "bare: 11 41 51 52 61 62 71", seen_now = seen_then;
};

std::ostream& operator<<(std::ostream& out, const Case& c) {
  return out << c.name;
}

class Changes : public testing::TestWithParam<Case> {};

TEST_P(Changes, AreToldInOneSentence) {
  const Case& c = GetParam();
  const Comparison comparison = compared(
      {{"2017-04-08", in_sill(c.then, c.seen_then)}, {"2025-04-12", in_sill(c.now, c.seen_now)}});
  const Place& place = fixture::place(comparison, "end");
  EXPECT_EQ(word(place.change), word(c.change));
  EXPECT_EQ(change_text(place, comparison, quantity::Units::mm), c.text);
}

const std::vector<Case> cases = {
    {"Thinner", found({"end: metal .98 1.00 1.02"}), found({"end: metal .78 .80 .82"}),
     Change::worse, "0.20 mm lost since 2017-04-08 (0.13 to 0.27), 20 % of the sheet"},
    {"ThinnerAndHoled", found({"end: metal .98 1.00 1.02"}),
     found({"end: hole 9x9, metal .78 .80 .82"}), Change::worse,
     "0.20 mm lost since 2017-04-08 (0.13 to 0.27), 20 % of the sheet; holed since"},
    {"WithinError", found({"end: metal .98 1.00 1.02"}), found({"end: metal .96 .98 1.00"}),
     Change::same, "no change shown since 2017-04-08; under 0.07 mm none would have shown"},
    {"ThickerThanItCanBe", found({"end: metal .78 .80 .82"}), found({"end: metal .98 1.00 1.02"}),
     Change::not_comparable, "reads thicker than it did, by more than the error"},
    {"HoledSince", found({"end: scale"}), found({"end: hole 20x10"}), Change::worse,
     "holed since, between 2017-04-08 and 2025-04-12"},
    {"HoleHasGrown", found({"end: hole 20x10"}), found({"end: hole 30x20"}), Change::worse,
     "the hole has grown, between 2017-04-08 and 2025-04-12"},
    {"MoreHoles", found({"end: hole 20x10"}), found({"end: hole 20x10 8"}), Change::worse,
     "more holes since, between 2017-04-08 and 2025-04-12"},
    {"HoleAsItWas", found({"end: hole 20x10"}), found({"end: hole 21x10"}), Change::not_comparable,
     "rust then and now, never measured"},
    {"GivesSince", found({"end: scale, firm"}), found({"end: scale, gives"}), Change::worse,
     "gives under hand or tap since, between 2017-04-08 and 2025-04-12"},
    {"BreaksSince", found({"end: scale, gives"}), found({"end: scale, breaks"}), Change::worse,
     "breaks under hand or probe since, between 2017-04-08 and 2025-04-12"},
    {"CrackedSince", found({"end: surface"}), found({"end: surface, crack 30"}), Change::worse,
     "cracked since, between 2017-04-08 and 2025-04-12"},
    {"CrackHasGrown", found({"end: crack 20"}), found({"end: crack 30"}), Change::worse,
     "the crack has grown, between 2017-04-08 and 2025-04-12"},
    {"PittedDeeper", found({"end: pitting, pit .20"}), found({"end: pitting, pit .40"}),
     Change::worse, "pitted deeper, between 2017-04-08 and 2025-04-12"},
    {"PitAsDeepWithinTheError", found({"end: pitting, pit .20"}), found({"end: pitting, pit .30"}),
     Change::not_comparable, "rust then and now, never measured"},
    {"RustedSince", found({"end: none"}), found({"end: surface"}), Change::worse,
     "rust where there was none, between 2017-04-08 and 2025-04-12"},
    {"RustHasSpread", found({"end: surface, 60x40"}), found({"end: surface, 90x40"}), Change::worse,
     "the rust has spread, between 2017-04-08 and 2025-04-12"},
    {"RustedThenAndNow", found({"end: surface, 60x40"}), found({"end: pitting, 60x40"}),
     Change::not_comparable, "rust then and now, never measured"},
    {"NoRustThenOrNow", found({"end: none"}), found({"end: none"}), Change::not_comparable,
     "no rust then or now, never measured"},
    {"RustNoLongerNoted", found({"end: surface"}), found({"end: none"}), Change::not_comparable,
     "no rust noted now, not measured"},
    {"NotMeasuredNow", found({"end: surface, metal .98"}), found({"end: surface"}),
     Change::not_comparable, "not measured in 2025-04-12"},
    {"NotMeasuredThen", found({"end: surface"}), found({"end: surface, metal .98"}),
     Change::not_comparable, "not measured before 2025-04-12"},
    {"Repaired", found({"end: hole 20x10"}),
     found({"end: none"}) + repairs({"let-in, seam-weld, 2021-05"}), Change::repaired,
     "repaired since 2017-04-08 (let-in of 2021-05)"},
    {"RepairedAndNotNamedAgain", found({"end: hole 20x10"}), repairs({"let-in, seam-weld"}),
     Change::repaired, "repaired since 2017-04-08 (let-in)"},
    {"RepairedTwice", found({"end: hole 20x10"}), repairs({"filled, 2019", "plated-over, 2023"}),
     Change::repaired, "repaired since 2017-04-08 (filled of 2019; plated-over of 2023)"},
    {"TreatedIsNoRepair", found({"end: surface, metal .98 1.00 1.02"}),
     found({"end: surface, metal .78 .80 .82"}) + repairs({"treated, 2019"}), Change::worse,
     "0.20 mm lost since 2017-04-08 (0.13 to 0.27), 20 % of the sheet"},
    {"OlderRepairStartsNoNewHistory", found({"end: surface, metal .98 1.00 1.02"}),
     found({"end: surface, metal .78 .80 .82"}) + repairs({"let-in, seam-weld, 2010"}),
     Change::worse, "0.20 mm lost since 2017-04-08 (0.13 to 0.27), 20 % of the sheet"},
    {"NewStation", "inside: scoped", found({"end: none, metal 1.00"}), Change::newly_seen,
     "a new station"},
    {"NewRust", "inside: scoped", found({"end: scale"}), Change::newly_seen,
     "not noted before, though the zone was seen"},
    {"ZoneNotSeenBefore", "", found({"end: scale"}), Change::newly_seen,
     "the zone was not seen before", "bare: 11, hidden: {51: carpet}", "bare: 11 51"},
    {"ZoneHiddenNow", found({"end: scale"}), "", Change::no_longer_visible,
     "the zone is not seen now; last noted in 2017-04-08", "bare: 11 51",
     "bare: 11, hidden: {51: carpet}"},
    {"TappedIsNotSeen", found({"end: scale"}), "", Change::no_longer_visible,
     "the zone is not seen now; last noted in 2017-04-08", "bare: 11 51", "bare: 11, tap: 51"},
    {"RustNotNamedAgain", found({"end: scale"}), "inside: scoped", Change::no_longer_visible,
     "not noted now, though the zone was seen; last noted in 2017-04-08"},
    {"StationNotNamedAgain", found({"end: none, metal 1.00"}), "inside: scoped",
     Change::not_comparable, "not looked at again by that name"},
};

INSTANTIATE_TEST_SUITE_P(Table, Changes, testing::ValuesIn(cases),
                         [](const auto& each) { return each.param.name; });

TEST(ChangeWords, EachHasACase) {
  for (const Change change : {Change::worse, Change::same, Change::repaired, Change::newly_seen,
                              Change::no_longer_visible, Change::not_comparable})
    EXPECT_TRUE(std::ranges::any_of(cases, [&](const Case& c) { return c.change == change; }))
        << word(change);
}

TEST(ChangeWords, NotFittedNow) {
  const Comparison comparison = compared({{"2017", in_sill(found({"end: scale"}))},
                                          {"2025", "seen: {bare: 11 41 52, not-fitted: 51}\n"}});
  EXPECT_EQ(fixture::place(comparison, "end").why, "not fitted now");
  EXPECT_EQ(fixture::zone(comparison, 51).change, Change::not_comparable);
}

TEST(ChangeWords, ZoneMeansWhereNoPlaceHasACommonName) {
  const Comparison comparison = compared(
      {{"2017-04-08", in_sill(found({"a: metal .99 1.00 1.01", "b: metal 1.02", "c: metal 1.01"}))},
       {"2025-04-12", in_sill(found({"d: metal .79 .80 .81", "e: metal .82", "f: metal .81"}))}});
  const Place& mean = fixture::zone(comparison, 51).places.back();
  ASSERT_TRUE(mean.zone_mean);
  EXPECT_EQ(change_text(mean, comparison, quantity::Units::mm),
            "0.20 mm lost since 2017-04-08 (0.18 to 0.22), 20 % of the sheet; means of places that "
            "bear no common name");
}

TEST(ChangeWords, NoZoneMeanOfOnePlaceOrBesideACommonName) {
  const Comparison one = compared({{"2017", in_sill(found({"a: metal 1.00"}))},
                                   {"2025", in_sill(found({"b: metal .80", "c: metal .81"}))}});
  const Comparison common = compared({{"2017", in_sill(found({"a: metal 1.00", "b: metal 1.01"}))},
                                      {"2025", in_sill(found({"a: metal .80", "c: metal .81"}))}});
  for (const Comparison* each : {&one, &common})
    for (const Place& place : fixture::zone(*each, 51).places) EXPECT_FALSE(place.zone_mean);
}

TEST(ChangeWords, ThousandthsOfAnInch) {
  const Comparison comparison =
      compared({{"2017-04-08", in_sill(found({"end: metal .98 1.00 1.02"}))},
                {"2025-04-12", in_sill(found({"end: metal .78 .80 .82"}))}});
  EXPECT_EQ(change_text(fixture::place(comparison, "end"), comparison, quantity::Units::inch),
            "7.9 thou lost since 2017-04-08 (5.3 to 10.5), 20 % of the sheet");
}

// Worse by a sign first, then by the share lost, then by the eye; what is the same last.
TEST(ChangeWords, LargestChangeFirst) {
  const std::string then =
      found({"a: metal 1.00 1.01", "b: metal 1.00 1.01", "c: scale", "d: metal 1.00", "f: none"});
  const std::string now = found({"a: metal .90 .91", "b: metal .70 .71", "c: hole", "d: metal .99",
                                 "e: scale", "f: surface"});
  const Comparison comparison = compared({{"2017", in_sill(then)}, {"2025", in_sill(now)}});
  std::vector<std::string> names;
  for (const Place* place : comparison.by_change()) names.push_back(place->name);
  EXPECT_THAT(names, testing::ElementsAre("c", "b", "a", "f", "e", "d"));
}

}  // namespace
}  // namespace tinworm::history
