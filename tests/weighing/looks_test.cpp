// What to open up, by what one does to open it.
#include "weighing/looks.hpp"

#include <algorithm>

#include <gtest/gtest.h>

#include "weighing/fixture.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::weighing {
namespace {

OpenUp open(int zone, std::string opening, int minutes, Verdict could_become, double high,
            double low, bool carries = false) {
  OpenUp made{zone, "", "main-not-seen", "not seen", could_become};
  made.opening = std::move(opening);
  made.minutes = minutes;
  made.carries = carries;
  made.structure_high_if_no_worse = high;
  made.structure_low_if_gone = low;
  return made;
}

// Of a structure burden of .10 to .80.
std::vector<Look> looked(std::vector<OpenUp> candidates, Result& result) {
  result.structure.low = .10;
  result.structure.high = .80;
  result.open_up = std::move(candidates);
  return looks(result);
}

std::vector<int> zones(const Look& look) {
  std::vector<int> all;
  for (const OpenUp* each : look.shows) all.push_back(each->zone);
  return all;
}

TEST(Looks, OneOpeningIsOneLine) {
  Result result;
  const auto all = looked({open(55, "carpet up", 20, Verdict::mend, .75, .30),
                           open(81, "", 30, Verdict::mend, .79, .11),
                           open(61, "carpet up", 20, Verdict::keep_parked, .78, .40, true)},
                          result);
  ASSERT_EQ(all.size(), 2u);
  EXPECT_EQ(all[0].opening, "carpet up");
  EXPECT_EQ(zones(all[0]), (std::vector<int>{55, 61}));
  EXPECT_EQ(all[0].minutes, 20) << "once";
  EXPECT_EQ(all[0].could_become, Verdict::keep_parked) << "the worst";
  EXPECT_TRUE(all[0].carries);
  EXPECT_NEAR(all[0].moves, (.05 + .20) + (.02 + .30), 1e-12) << "the sum";
  EXPECT_EQ(zones(all[1]), std::vector<int>{81});
}

TEST(Looks, WithoutAnOpeningEachIsItsOwn) {
  Result result;
  EXPECT_EQ(
      looked({open(81, "", 30, Verdict::mend, .7, .2), open(82, "", 30, Verdict::mend, .7, .2)},
             result)
          .size(),
      2u);
}

TEST(Looks, OneThatSettlesSeveralComesFirst) {
  Result result;
  const auto all = looked({open(81, "boot mat out", 10, Verdict::mend, .70, .20),
                           open(65, "carpet up", 20, Verdict::mend, .74, .14),
                           open(55, "carpet up", 20, Verdict::mend, .72, .16)},
                          result);
  ASSERT_EQ(all.size(), 2u);
  EXPECT_EQ(all[0].opening, "carpet up") << "24 hundredths against 20";
  EXPECT_EQ(all[1].opening, "boot mat out");
}

TEST(Looks, ByVerdictThenMountThenMinutes) {
  Result result;
  const auto all = looked(
      {open(11, "a", 10, Verdict::mend, .2, .7), open(12, "b", 40, Verdict::keep_parked, .8, .1),
       open(13, "c", 90, Verdict::keep_parked, .8, .1, true),
       open(14, "d", 20, Verdict::keep_parked, .8, .1)},
      result);
  std::vector<std::string> order;
  for (const Look& each : all) order.push_back(each.opening);
  EXPECT_EQ(order, (std::vector<std::string>{"c", "d", "b", "a"}));
}

// Every candidate stands in one line, whatever was weighed.
TEST(Looks, LoseNoCandidate) {
  survey::Survey survey = fixture::sound_survey();
  for (const int zone : {11, 51, 61, 62}) survey.seen[zone].word = survey::SeenWord::hidden;
  const Result result = weigh(survey, {});
  std::vector<int> shown, wanted;
  for (const Look& look : looks(result))
    for (const int zone : zones(look)) shown.push_back(zone);
  for (const OpenUp& each : result.open_up) wanted.push_back(each.zone);
  std::ranges::sort(shown);
  std::ranges::sort(wanted);
  EXPECT_EQ(shown, wanted);
  EXPECT_EQ(shown.size(), 4u);
}

}  // namespace
}  // namespace tinworm::weighing
