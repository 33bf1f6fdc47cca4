// Advice that depends on the day on which it is asked for.
#include "weighing/advice_today.hpp"

#include <gtest/gtest.h>

#include "weighing/fixture.hpp"

namespace tinworm::weighing {
namespace {

TEST(AdviceToday, AsksAboutAVisitThatIsYetToCome) {
  const struct {
    survey::PartialDate visit;
    std::string asked;
  } cases[] = {
      {{2025, 4, 12}, ""},       {{2025, 4, 13}, ""},  // tomorrow has begun somewhere
      {{2025, 4, 0}, ""},        {{2025, 0, 0}, ""},     {{2025, 4, 14}, "2025-04-14"},
      {{2025, 5, 0}, "2025-05"}, {{2026, 0, 0}, "2026"}, {{2052, 4, 12}, "2052-04-12"},
  };
  for (const auto& [visit, date] : cases) {
    survey::Survey survey = fixture::sound_survey();
    survey.visit.date = visit;
    const std::vector<Advice> advice = advice_today(survey, {2025, 4, 12});
    ASSERT_EQ(advice.size(), date.empty() ? 0u : 1u) << visit.text();
    if (date.empty()) continue;
    EXPECT_EQ(advice.front().kind, "visit-to-come");
    EXPECT_EQ(text(advice.front()),
              "was the car seen on " + date +
                  "? Today is 2025-04-12. Nobody has seen yet what a later date tells of, and "
                  "rates of rusting go by the date.");
  }
}

}  // namespace
}  // namespace tinworm::weighing
