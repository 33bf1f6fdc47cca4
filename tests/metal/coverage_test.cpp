// 95 % intervals of metal left must hold the truth in 93 to 97 % of surveys. Simulated: one gauge
// error a survey, common to all its readings; scatter of every reading; references of their own.
#include <cmath>
#include <random>

#include <fmt/core.h>
#include <gtest/gtest.h>

#include "metal/thickness.hpp"

namespace tinworm::metal {
namespace {

constexpr double gauge_mm = 0.05;
constexpr int surveys = 10000;

enum class From { reference, pair, survey_sheet, plan_sheet };

struct Plan {  // of a simulated survey
  std::string name;
  From from = From::reference;
  int zones = 3;  // each with one spot and, where its baseline is measured, one reference
  int readings = 4;
  int sound_readings = 3;
  bool any_scatter = false;
  double film_mm = 0;  // standard error of the coating correction of a zone
};

double share_of(From from) {
  switch (from) {
    case From::reference:
      return 0;
    case From::pair:
      return .05;
    case From::survey_sheet:
      return .10;
    case From::plan_sheet:
      return .20;
  }
  return 0;
}

bool is_measured(From from) {
  return from == From::reference || from == From::pair;
}

struct Zone {
  double lambda = 1;     // the truth
  double stated_mm = 1;  // sheet as the papers have it, or of the pair
  std::vector<double> spot, sound;
};

class Surveyor {
 public:
  explicit Surveyor(std::uint64_t seed) : random_(seed) {}

  std::vector<Zone> survey(const Plan& plan) {
    scatter_mm_ = plan.any_scatter ? scatter_drawn_mm() : Prior{}.standard_mm;
    const double gauge_error_mm = gauge_mm * normal_(random_);
    std::vector<Zone> zones(plan.zones);
    for (Zone& zone : zones) {
      zone.lambda = std::uniform_real_distribution(.4, 1.0)(random_);
      zone.stated_mm = std::uniform_real_distribution(.8, 1.6)(random_);
      const double share = share_of(plan.from);
      const double sheet_mm =
          zone.stated_mm * (1 + std::uniform_real_distribution(-share, share)(random_));
      const double film_mm = plan.film_mm * normal_(random_);
      const double film_at_reference_mm = plan.film_mm * normal_(random_);
      zone.spot = readings(zone.lambda * sheet_mm + gauge_error_mm + film_mm, plan.readings);
      if (is_measured(plan.from))
        zone.sound =
            readings(zone.stated_mm + gauge_error_mm + film_at_reference_mm, plan.sound_readings);
    }
    return zones;
  }

 private:
  // What the prior says of gauges: variance = v0 s0^2 / chi-squared of v0 degrees of freedom.
  double scatter_drawn_mm() {
    const Prior prior;
    std::chi_squared_distribution<double> draw(prior.degrees_of_freedom);
    return prior.standard_mm * std::sqrt(prior.degrees_of_freedom / draw(random_));
  }

  std::vector<double> readings(double mean_mm, int count) {
    std::vector<double> all(count);
    for (double& r : all) r = mean_mm + scatter_mm_ * normal_(random_);
    return all;
  }

  std::mt19937_64 random_;
  std::normal_distribution<double> normal_;
  double scatter_mm_ = 0;
};

MetalInterval interval_of(const Zone& zone, const Plan& plan, const Repeatability& pool) {
  const auto measured = [&](const std::vector<double>& set) {
    return Measured{mean(set), static_cast<int>(set.size()), repeatability_of(set, pool, {}),
                    plan.film_mm};
  };
  if (!is_measured(plan.from))
    return metal_left(measured(zone.spot), stated_sheet(zone.stated_mm, share_of(plan.from)),
                      gauge_mm);
  const Baseline baseline = plan.from == From::reference
                                ? reference(measured(zone.sound))
                                : pair_reference(measured(zone.sound), share_of(plan.from));
  return metal_left(measured(zone.spot), baseline, gauge_mm);
}

// Share of intervals that hold the truth, over every zone of every survey.
double coverage(const Plan& plan) {
  Surveyor surveyor(19670412);
  int held = 0;
  for (int survey = 0; survey < surveys; ++survey) {
    const auto zones = surveyor.survey(plan);
    std::vector<std::vector<double>> sets;
    for (const Zone& zone : zones) sets.push_back(zone.spot), sets.push_back(zone.sound);
    const Repeatability pool = pooled(sets, {});
    for (const Zone& zone : zones) {
      const MetalInterval metal = interval_of(zone, plan, pool);
      held += metal.low <= zone.lambda && zone.lambda <= metal.high;
    }
  }
  return held / static_cast<double>(surveys * plan.zones);
}

// The gauge scatters as the prior expects, or as gauges do of which the prior is the knowledge.
const std::vector<Plan> plans{
    {.name = "reference of the zone"},
    {.name = "one zone", .zones = 1},
    {.name = "reference, coating left on", .film_mm = .03},
    {.name = "reference of the pair", .from = From::pair},
    {.name = "pair, coating left on", .from = From::pair, .film_mm = .03},
    {.name = "sheet of the survey", .from = From::survey_sheet},
    {.name = "sheet of the plan", .from = From::plan_sheet},
    {.name = "any gauge, reference", .any_scatter = true},
    {.name = "any gauge, one zone", .zones = 1, .any_scatter = true},
    {.name = "any gauge, sheet of the plan", .from = From::plan_sheet, .any_scatter = true},
};

double printed_coverage(const Plan& plan) {
  const double share = coverage(plan);
  fmt::print("{:<36} {:.2f} % of 95 % intervals hold the truth\n", plan.name, 100 * share);
  return share;
}

TEST(Coverage, IntervalsHoldTheTruth) {
  for (const Plan& plan : plans) {
    const double share = printed_coverage(plan);
    EXPECT_GE(share, .93) << plan.name;
    EXPECT_LE(share, .97) << plan.name;
  }
}

// Without repeats the survey learns nothing of its gauge, and the interval is as good as the prior:
// right over all the gauges that the prior stands for, too wide for one that is just as expected.
TEST(Coverage, SingleReadingsLeanOnThePrior) {
  const Plan as_expected{.name = "single readings", .readings = 1, .sound_readings = 1};
  Plan any = as_expected;
  any.name = "any gauge, single readings";
  any.any_scatter = true;
  const double expected_share = printed_coverage(as_expected), any_share = printed_coverage(any);
  EXPECT_GE(expected_share, .97);
  EXPECT_LE(expected_share, .99);
  EXPECT_GE(any_share, .93);
  EXPECT_LE(any_share, .97);
}

}  // namespace
}  // namespace tinworm::metal
