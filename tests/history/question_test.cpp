// Every question with its whole text, and a case beside it where it is silent.
#include <algorithm>
#include <set>

#include <gtest/gtest.h>

#include "history/fixture.hpp"
#include "history/questions.hpp"

namespace tinworm::history {
namespace {

using fixture::compared;
using fixture::found;
using fixture::in_sill;
using fixture::repairs;
using fixture::Told;

struct Case {
  std::string kind;
  std::vector<Told> asked;
  std::string text;
  std::vector<Told> silent;
};

std::ostream& operator<<(std::ostream& out, const Case& c) {
  return out << c.kind;
}

std::vector<std::string> of_kind(const Comparison& comparison, const std::string& kind) {
  std::vector<std::string> found;
  for (const Question& each : comparison.questions)
    if (each.kind == kind) found.push_back(each.question + " " + each.why);
  return found;
}

class Questions : public testing::TestWithParam<Case> {};

TEST_P(Questions, AreAskedAndNotAsked) {
  const Case& c = GetParam();
  EXPECT_EQ(of_kind(compared(c.asked), c.kind), std::vector<std::string>{c.text});
  EXPECT_EQ(of_kind(compared(c.silent), c.kind), std::vector<std::string>{});
}

const std::string end_1 = in_sill(found({"end: none, metal .99 1.00 1.01"}));
const std::string end_08 = in_sill(found({"end: none, metal .79 .80 .81"}));
const std::string rust = in_sill(found({"end: scale, metal .90"}));

const std::vector<Case> cases = {
    {"another-car",
     {{"2017", end_1, "name: Wherry, chassis-number: W1"},
      {"2025", end_1, "name: Wherry, chassis-number: W2"}},
     "is it the same car? Name, year or chassis number of 2025 differ from those of 2017. Metal of "
     "two cars compared says nothing of either.",
     {{"2017", end_1}, {"2025", end_1, "name: Wherry, chassis-number: W2"}}},
    {"thin-after-repair",
     {{"2017", rust},
      {"2025", in_sill("reference: 1.00 1.01 .99\n    " + found({"end: scale, metal .70"}) +
                       repairs({"let-in, seam-weld, 2021"}))}},
     "was this part of what was mended since 2017: outer sill, left (51), end (70 % of the sheet "
     "left)? If so, it thinned since; if not, the repair stopped short.",
     {{"2017", rust},
      {"2025", in_sill("reference: 1.00 1.01 .99\n    " + found({"end: none, metal .99"}) +
                       repairs({"let-in, seam-weld, 2021"}))}}},
    {"thicker-than-before",
     {{"2017", end_08}, {"2025", end_1}},
     "why does metal read thicker than before, with no repair on record: outer sill, left (51), "
     "end "
     "(0.20 mm more than in 2017)? Metal doesn't grow: another place was read, another gauge was "
     "used, or a plate or a coat lies over it.",
     {{"2017", end_08}, {"2025", in_sill(found({"end: none, metal 1.00"}) + repairs({"let-in"}))}}},
    {"rust-gone",
     {{"2017", rust}, {"2025", in_sill(found({"end: none"}))}},
     "where did the rust of 2017 go: outer sill, left (51), end? The zone was seen in 2025, and no "
     "repair is on record. Rust doesn't heal: it was mended, covered, or not looked for at the "
     "same "
     "place.",
     {{"2017", rust}, {"2025", in_sill(repairs({"treated, 2019"}))}}},
    {"hidden-since",
     {{"2017", rust}, {"2025", "seen: {bare: 11 41 52 61 62 71, hidden: {51: carpet}}\n"}},
     "why was it not seen in 2025, as it was in 2017: outer sill, left (51)? What was open once "
     "and "
     "is covered now may have been covered for a reason.",
     {{"2017", rust}, {"2025", "seen: {bare: 11 41 52 61 62 71, not-fitted: 51}\n"}}},
    {"coat-thicker",
     {{"2017", in_sill("film: 110 120 130 um")}, {"2025", in_sill("film: 230 240 250 um")}},
     "what was put over the metal between 2017 and 2025: outer sill, left (51) (120 µm, then 240 "
     "µm)? Paint, underseal or filler: a coat that has grown may cover what was there before.",
     {{"2017", in_sill("film: 110 120 130 um")}, {"2025", in_sill("film: 229 239 249 um")}}},
    {"repair-found-later",
     {{"2017", rust}, {"2025", in_sill(repairs({"plated-over, 2015"}))}},
     "outer sill, left (51): was the repair of 2015 (plated-over) there in 2017? The zone was seen "
     "then and the repair not named; it is first recorded in 2025. A repair that a survey passed "
     "over was well hidden, or its date is wrong.",
     {{"2017", "seen: {bare: 11}\n"}, {"2025", in_sill(repairs({"plated-over, 2015"}))}}},
    {"baseline-moved",
     {{"2017", in_sill("reference: 1.00 1.01 1.02")}, {"2025", in_sill("reference: .90 .91 .92")}},
     "was sound metal read at the same place in 2017 and 2025: outer sill, left (51) (1.01 mm, "
     "then "
     "0.91 mm)? Sound metal stays as it is; a reference that moves shifts every share of metal "
     "left.",
     {{"2017", in_sill("reference: 1.00 1.01 1.02")}, {"2025", in_sill("reference: .97 .98 .99")}}},
    {"odometer-back",
     {{"2017", end_1, "name: Wherry, odometer: 90000 km"},
      {"2025", end_1, "name: Wherry, odometer: 41000 km"}},
     "why did the odometer go back, from 90000 km in 2017 to 41000 km in 2025? A slip, another "
     "instrument, or a turned one: what the car has done is then not known.",
     {{"2017", end_1, "name: Wherry, odometer: 90000 km"},
      {"2025", end_1, "name: Wherry, odometer: 90000 km"}}},
    {"spot-name",
     {{"2017", in_sill(found({"rear seam: scale"}))},
      {"2025", in_sill(found({"rear saem: scale"}))}},
     "outer sill, left (51), rear saem in 2025: is it what the survey of 2017 calls \"rear seam\"? "
     "Only a place of the same name is compared over the years.",
     {{"2017", in_sill(found({"hole 1: scale"}))}, {"2025", in_sill(found({"hole 2: scale"}))}}},
    {"not-measured-again",
     {{"2017", end_1}, {"2025", in_sill(found({"end: surface"}))}},
     "can it be measured again, as before 2025: outer sill, left (51), end? Only the same place "
     "measured twice shows how fast it rusts.",
     {{"2017", end_1}, {"2025", in_sill(repairs({"let-in"}))}}},
    {"gauge-not-named",
     {{"2017", end_1, "name: Wherry", "uncertainty: 0.05 mm"}, {"2025", end_08}},
     "was it the same gauge every time? Give its `name` under `gauges: metal:` in each survey. It "
     "is taken to be the same, so that its own error cancels; between two gauges it doesn't, and "
     "small changes would not show.",
     {{"2017", end_1}, {"2025", end_08}}},
};

INSTANTIATE_TEST_SUITE_P(Table, Questions, testing::ValuesIn(cases), [](const auto& each) {
  std::string name = each.param.kind;
  std::erase(name, '-');
  return name;
});

TEST(QuestionKinds, EachHasACaseAndNoOtherIs) {
  std::set<std::string> with_case;
  for (const Case& each : cases) with_case.insert(each.kind);
  const auto& kinds = question_kinds();
  EXPECT_EQ(with_case, std::set<std::string>(kinds.begin(), kinds.end()));
}

// A near miss is asked about, and the two places stay apart.
TEST(QuestionKinds, NearMissesAreNeverMatched) {
  const Comparison comparison = compared({{"2017", in_sill(found({"rear seam: metal 1.00"}))},
                                          {"2025", in_sill(found({"rear saem: metal .80"}))}});
  EXPECT_EQ(fixture::place(comparison, "rear saem").change, Change::newly_seen);
  EXPECT_FALSE(fixture::place(comparison, "rear seam").lost_mm);
}

}  // namespace
}  // namespace tinworm::history
