// What must hold for the plan of work of any survey, tried on random ones with a fixed seed.
#include <gtest/gtest.h>

#include <random>

#include "work/fixture.hpp"

namespace tinworm::work {
namespace {

using fixture::planned;

constexpr unsigned surveys = 300;

class Dice {
 public:
  explicit Dice(unsigned seed) : engine_(seed) {}
  int below(int n) { return static_cast<int>(engine_() % static_cast<unsigned>(n)); }
  bool one_in(int n) { return below(n) == 0; }
  double between(double low, double high) { return low + (high - low) * below(10001) / 10000.0; }

 private:
  std::mt19937 engine_;
};

survey::Spot random_spot(const body::Zone& zone, int index, Dice& dice) {
  survey::Spot spot = fixture::car::spot("spot " + std::to_string(index),
                                         static_cast<survey::Rust>(dice.below(12)));
  const geometry::Box3& in = zone.extent;
  if (!dice.one_in(4))
    spot.at = {dice.between(in.x.low, in.x.high), dice.between(in.y.low, in.y.high),
               dice.between(in.z.low, in.z.high)};
  if (!dice.one_in(4)) spot.size = survey::Size{dice.between(5, 300), dice.between(5, 100)};
  if (dice.one_in(2)) spot.metal_mm = {zone.sheet_mm * dice.between(.3, 1.0)};
  if (dice.one_in(3)) spot.hand = static_cast<survey::Hand>(dice.below(3));
  return spot;
}

survey::Survey random_survey(unsigned seed, int most_spots) {
  using survey::SeenWord;
  Dice dice(seed);
  survey::Survey survey = fixture::sound_survey();
  for (const body::Zone& zone : survey.body->zones) {
    const SeenWord words[] = {SeenWord::bare,  SeenWord::coated, SeenWord::part,
                              SeenWord::scope, SeenWord::tap,    SeenWord::hidden};
    survey.seen[zone.number].word = words[dice.below(6)];
    survey::Zone& entry = survey.zones[zone.number];
    for (int n = dice.below(most_spots + 1); n > 0; --n)
      entry.found.push_back(random_spot(zone, n, dice));
    if (!dice.one_in(4)) continue;
    survey::Repair repair;
    repair.kind = static_cast<survey::RepairKind>(dice.below(9));
    if (dice.one_in(2)) repair.joint = static_cast<survey::Joint>(dice.below(5));
    if (dice.one_in(2)) repair.size = survey::Size{dice.between(50, 400), dice.between(50, 200)};
    entry.repairs.push_back(repair);
  }
  return survey;
}

void expect_ordered(const Range& range) {
  EXPECT_GE(range.low, 0);
  EXPECT_LE(range.low, range.likely);
  EXPECT_LE(range.likely, range.high);
}

TEST(WorkProperties, LowIsNeverOverLikelyNorLikelyOverHigh) {
  int tasks = 0;
  for (unsigned seed = 0; seed < surveys; ++seed) {
    SCOPED_TRACE(seed);
    const Plan made = planned(random_survey(seed, 4));
    for (const Task& task : made.tasks) {
      ++tasks;
      expect_ordered(task.hours);
      expect_ordered(task.cost);
      expect_ordered(task.weld_m);
      EXPECT_GT(task.hours.low, 0);
      for (const Cut& cut : task.cuts) {
        expect_ordered(cut.along_mm);
        expect_ordered(cut.across_mm);
      }
      if (task.sheet) {
        expect_ordered(task.sheet->area_m2);
        EXPECT_GE(task.sheet->thickness_mm + 1e-9, task.sheet->original_mm);
      }
    }
    for (const Doubt& doubt : made.doubts) expect_ordered(doubt.cost);
    EXPECT_LE(made.cost.sum.low, made.cost.mean);
    EXPECT_LE(made.cost.mean, made.cost.in_80_of_100);
    EXPECT_LE(made.cost.in_80_of_100, made.cost.sum.high + 1e-9);
  }
  EXPECT_GT(tasks, 1000);
}

TEST(WorkProperties, NothingComesBeforeWhatItWaitsFor) {
  for (unsigned seed = 0; seed < surveys; ++seed) {
    const Plan made = planned(random_survey(seed, 4));
    for (std::size_t i = 0; i < made.tasks.size(); ++i) {
      EXPECT_EQ(made.tasks[i].number, static_cast<int>(i) + 1);
      for (const int before : made.tasks[i].after) EXPECT_LT(before, made.tasks[i].number) << seed;
    }
  }
}

survey::Survey random_layers(unsigned seed) {
  Dice dice(seed + 500000);
  survey::Survey survey = fixture::car::sound_survey(fixture::layered_plan());
  for (const body::Zone& zone : survey.body->zones)
    for (int n = dice.below(3); n > 0; --n)
      survey.zones[zone.number].found.push_back(random_spot(zone, n, dice));
  return survey;
}

TEST(WorkProperties, NoJoinedPartComesBeforeWhatItStandsOn) {
  const std::pair<int, int> stands_on[] = {{57, 55}, {63, 55}, {63, 65}, {55, 65},
                                           {53, 55}, {51, 53}, {51, 55}};
  int tried = 0;
  for (unsigned seed = 0; seed < surveys; ++seed) {
    const Plan made = planned(random_layers(seed));
    for (const auto& [late, early] : stands_on)
      for (const Task& on : made.tasks)
        for (const Task& under : made.tasks) {
          if (on.kind != Kind::cut || under.kind != Kind::cut) continue;
          if (on.zone != late || under.zone != early) continue;
          ++tried;
          EXPECT_LT(under.number, on.number) << seed << ": " << late << " on " << early;
        }
    EXPECT_TRUE(made.order_notes.empty()) << seed;
  }
  EXPECT_GT(tried, 300);
}

TEST(WorkProperties, AccessIsNeverWithoutWhatItReaches) {
  int tried = 0;
  for (unsigned seed = 0; seed < surveys; ++seed) {
    const Plan made = planned(random_layers(seed));
    for (const Task& task : made.tasks) {
      if (task.kind != Kind::access) continue;
      ++tried;
      const auto inner = std::ranges::find_if(made.tasks, [&](const Task& each) {
        return each.kind == Kind::cut && each.zone == task.reaches && each.judged == task.judged;
      });
      ASSERT_NE(inner, made.tasks.end()) << seed;
      EXPECT_LT(task.number, inner->number) << seed;
      EXPECT_LE(task.cuts.size(), inner->cuts.size()) << seed;
      EXPECT_GT(task.weld_m.high, 0) << seed;
      EXPECT_FALSE(task.sheet) << seed;
    }
  }
  EXPECT_GT(tried, 30);
}

TEST(WorkProperties, TotalsAreTheSumOfSureAndJudged) {
  for (unsigned seed = 0; seed < surveys; ++seed) {
    const Plan made = planned(random_survey(seed, 4));
    Range hours, cost;
    for (const Task& task : made.tasks) {
      hours = hours + task.hours;
      cost = cost + task.cost;
    }
    const Range apart = made.sure.cost.sum + made.if_opening_shows.cost.sum;
    for (const auto figure : {&Range::low, &Range::likely, &Range::high}) {
      EXPECT_NEAR(made.hours.sum.*figure, hours.*figure, 1e-6) << seed;
      EXPECT_NEAR(made.cost.sum.*figure, cost.*figure, 1e-6) << seed;
      EXPECT_NEAR(apart.*figure, cost.*figure, 1e-6) << seed;
    }
  }
}

// With one place in each part, so that no two cuts become one.
TEST(WorkProperties, ALargerSpotNeverTakesLess) {
  int tried = 0;
  for (unsigned seed = 0; seed < surveys; ++seed) {
    Dice dice(seed + 100000);
    survey::Survey survey = random_survey(seed, 1);
    const Plan before = planned(survey);
    std::vector<survey::Spot*> sized;
    for (auto& [number, zone] : survey.zones)
      for (survey::Spot& spot : zone.found)
        if (spot.size) sized.push_back(&spot);
    if (sized.empty()) continue;
    ++tried;
    survey::Size& size =
        *sized[static_cast<std::size_t>(dice.below(static_cast<int>(sized.size())))]->size;
    size.along_mm *= dice.between(1, 3);
    size.across_mm *= dice.between(1, 3);
    const Plan after = planned(survey);
    EXPECT_GE(after.hours.sum.low + 1e-9, before.hours.sum.low) << seed;
    EXPECT_GE(after.hours.sum.likely + 1e-9, before.hours.sum.likely) << seed;
    EXPECT_GE(after.hours.sum.high + 1e-9, before.hours.sum.high) << seed;
    EXPECT_GE(after.hours.mean + 1e-9, before.hours.mean) << seed;
    EXPECT_GE(after.cost.mean + 1e-9, before.cost.mean) << seed;
  }
  EXPECT_GT(tried, static_cast<int>(surveys) / 2);
}

int twin(int number) {
  return number < 41 ? number : number % 2 ? number + 1 : number - 1;
}

body::Plan mirrored(body::Plan plan) {
  for (body::Zone& zone : plan.zones) {
    zone.number = twin(zone.number);
    zone.extent.y = {-zone.extent.y.high, -zone.extent.y.low};
    for (int& hidden : zone.hides) hidden = twin(hidden);
  }
  std::ranges::sort(plan.zones, {}, &body::Zone::number);
  for (body::Mount& mount : plan.mounts) {
    mount.at.y_mm = -mount.at.y_mm;
    for (int& on : mount.on) on = twin(on);
  }
  return plan;
}

TEST(WorkProperties, AMirrorChangesNoTotal) {
  for (unsigned seed = 0; seed < surveys; ++seed) {
    const survey::Survey left = random_survey(seed, 4);
    survey::Survey right = left;
    right.body = std::make_shared<const body::Plan>(mirrored(*left.body));
    right.seen.clear();
    right.zones.clear();
    for (const auto& [number, seen] : left.seen) right.seen[twin(number)] = seen;
    for (const auto& [number, zone] : left.zones) {
      right.zones[twin(number)] = zone;
      for (survey::Spot& spot : right.zones[twin(number)].found)
        if (spot.at.y_mm) spot.at.y_mm = -*spot.at.y_mm;
    }
    const Plan a = planned(left), b = planned(right);
    EXPECT_EQ(a.tasks.size(), b.tasks.size()) << seed;
    EXPECT_NEAR(a.hours.mean, b.hours.mean, 1e-9) << seed;
    EXPECT_NEAR(a.cost.in_80_of_100, b.cost.in_80_of_100, 1e-6) << seed;
    EXPECT_NEAR(a.doubts_cost.high, b.doubts_cost.high, 1e-6) << seed;
  }
}

TEST(WorkProperties, ADearerHourNeverCostsLess) {
  rates::Rates dear;
  dear.hour = 90;
  for (unsigned seed = 0; seed < surveys; ++seed) {
    const survey::Survey survey = random_survey(seed, 4);
    const Plan before = planned(survey), after = planned(survey, dear);
    EXPECT_EQ(before.hours.mean, after.hours.mean);
    EXPECT_GE(after.cost.mean, before.cost.mean);
    if (before.tasks.empty()) continue;
    EXPECT_GT(after.cost.mean, before.cost.mean) << seed;
  }
}

}  // namespace
}  // namespace tinworm::work
