#include "history/due.hpp"

#include <gtest/gtest.h>

#include "history/fixture.hpp"

namespace tinworm::history {
namespace {

using fixture::found;
using fixture::in_sill;
using fixture::result_of;
using fixture::Told;

const std::string thick = in_sill(found({"end: none, metal 1.00 1.00 1.00"}) + "reference: 1.00");
const std::string thin = in_sill(found({"end: none, metal .90 .90 .90"}) + "reference: 1.00");

Due due(const std::vector<Told>& all) {
  std::vector<weighing::Result> results;
  for (const Told& each : all) results.push_back(result_of(each));
  return due_of(std::move(results), {});
}

// By hand: .10 mm lost from 2017-04-12 to 2025-04-12, .0125 mm a year. The limit is 85 % of 1.00
// mm, so .05 mm are left, 4 years; half of them is 24 months, and a car driven in all weathers is
// looked at every 12.
TEST(Due, IsThatOfAllItsSurveys) {
  const Due due = history::due({{"2025-04-12", thin}, {"2017-04-12", thick}});
  EXPECT_EQ(due.seen.text(), "2025-04-12");
  EXPECT_EQ(due.surveys, 2u);
  ASSERT_TRUE(due.next.date);
  EXPECT_EQ(due.next.date->text(), "2026-04");
  EXPECT_EQ(due.next.why,
            "12 months, as is usual for a car driven in all weathers (how it is kept isn't told)");
  EXPECT_EQ(due.note, "");
}

// .10 mm in 365 days: .05 mm last half of that, and half again is 3 months less some hours: whole
// months are rounded down.
TEST(Due, IsSoonerWhereMetalIsBeingLost) {
  const Due due = history::due({{"2024-04-12", thick}, {"2025-04-12", thin}});
  ASSERT_TRUE(due.next.date);
  EXPECT_EQ(due.next.date->text(), "2025-06");
}

TEST(Due, IsThatOfTheNewestWhereTheyCannotBeCompared) {
  const Due due = history::due({{"2025-04-12", thin}, {"2025", thick}});
  EXPECT_EQ(due.note,
            "by the newest survey alone: 2025-04-12.yaml of 2025-04-12 and 2025.yaml of 2025: "
            "which came first isn't told");
  EXPECT_EQ(due.surveys, 2u);
}

TEST(Due, IsOverdueOnceItsMonthHasPassed) {
  Due due;
  due.next.date = quantity::PartialDate{2026, 4, 0};
  EXPECT_FALSE(is_overdue(due, {2026, 4, 30}));
  EXPECT_TRUE(is_overdue(due, {2026, 5, 1}));
  due.next.date.reset();
  EXPECT_FALSE(is_overdue(due, {2999, 1, 1}));
}

TEST(Due, RepairsComeFirstThenDatesThenNames) {
  const auto of = [](const std::string& name, std::optional<quantity::PartialDate> date) {
    Due due;
    due.car.name = name;
    due.next.date = date;
    return due;
  };
  std::vector<Due> all{of("Late", quantity::PartialDate{2027, 1, 0}),
                       of("Soon b", quantity::PartialDate{2026, 4, 0}),
                       of("Soon a", quantity::PartialDate{2026, 4, 0}), of("Parked", {})};
  sort(all);
  std::vector<std::string> names;
  for (const Due& each : all) names.push_back(each.car.name);
  EXPECT_EQ(names, (std::vector<std::string>{"Parked", "Soon a", "Soon b", "Late"}));
}

}  // namespace
}  // namespace tinworm::history
