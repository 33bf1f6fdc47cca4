#include "metal/uncertainty.hpp"

#include <cmath>
#include <stdexcept>

#include <gtest/gtest.h>

namespace tinworm::metal {
namespace {

TEST(Uncertainty, RectangularIsHalfWidthOverRootThree) {
  EXPECT_NEAR(rectangular(0.3), 0.17320508, 1e-8);
  EXPECT_EQ(rectangular(0), 0);
}

TEST(Uncertainty, CombinesAsRootSumOfSquaresOfWhatEachDoesToTheResult) {
  const std::vector<Component> budget{{"a", 3, 1, {}}, {"b", 2, -2, {}}};
  EXPECT_NEAR(combined_standard(budget), 5, 1e-12);
  EXPECT_EQ(combined_standard({}), 0);
}

TEST(Uncertainty, DegreesOfFreedomOfOneComponentAreItsOwn) {
  const std::vector<Component> one{{"a", 0.04, 1.2, 7.5}};
  EXPECT_NEAR(effective_degrees_of_freedom(one).value(), 7.5, 1e-12);
}

TEST(Uncertainty, InfiniteDegreesOfFreedomStayInfinite) {
  EXPECT_FALSE(effective_degrees_of_freedom(std::vector<Component>{{"a", 1, 1, {}}}));
  EXPECT_FALSE(effective_degrees_of_freedom({}));
  // A finite component that does nothing to the result brings none in.
  const std::vector<Component> idle{{"a", 1, 1, {}}, {"b", 1, 0, 4.0}};
  EXPECT_FALSE(effective_degrees_of_freedom(idle));
}

TEST(Uncertainty, EffectiveDegreesOfFreedomLieBetweenTheLeastAndTheSum) {
  for (const double ratio : {0.01, 0.3, 1.0, 2.0, 50.0}) {
    const std::vector<Component> budget{{"a", 1, 1, 4.0}, {"b", ratio, 1, 9.0}};
    const double dof = effective_degrees_of_freedom(budget).value();
    EXPECT_GE(dof, 4 - 1e-9) << ratio;
    EXPECT_LE(dof, 13 + 1e-9) << ratio;
  }
}

TEST(Uncertainty, ScaleOfTheUnitDoesNotMatter) {
  const auto budget_in = [](double unit) {
    return std::vector<Component>{{"a", 3 * unit, 1, 4.0}, {"b", 2 * unit, 1, 9.0}};
  };
  const double dof = effective_degrees_of_freedom(budget_in(1)).value();
  for (const double unit : {1e-120, 1e-3, 25.4, 1e100})
    EXPECT_NEAR(effective_degrees_of_freedom(budget_in(unit)).value(), dof, 1e-9) << unit;
}

TEST(Uncertainty, StudentGoesOverIntoTheNormalDistribution) {
  EXPECT_NEAR(student_t_quantile(0.975, 1e7), student_t_quantile(0.975, std::nullopt), 1e-6);
  EXPECT_NEAR(student_t_quantile(0.5, 3.0), 0, 1e-12);
  EXPECT_NEAR(student_t_quantile(0.025, 3.0), -student_t_quantile(0.975, 3.0), 1e-12);
  EXPECT_EQ(coverage_factor(0.95, 8.0), student_t_quantile(0.975, 8.0));
}

TEST(Uncertainty, TwoSidedProbabilityUndoesTheQuantile) {
  for (const std::optional<double> dof : {std::optional<double>(2.5), std::optional<double>()}) {
    EXPECT_NEAR(student_t_two_sided(student_t_quantile(0.975, dof), dof), 0.05, 1e-12);
    EXPECT_NEAR(student_t_two_sided(-student_t_quantile(0.975, dof), dof), 0.05, 1e-12);
    EXPECT_NEAR(student_t_two_sided(0, dof), 1, 1e-12);
  }
}

TEST(Uncertainty, RefusesWhatHasNoQuantile) {
  for (const double p : {0.0, 1.0, -0.1, 1.5, std::nan("")})
    EXPECT_THROW(student_t_quantile(p, 5.0), std::domain_error) << p;
  for (const double dof : {0.0, -1.0, std::nan("")}) {
    EXPECT_THROW(student_t_quantile(0.975, dof), std::domain_error) << dof;
    EXPECT_THROW(student_t_two_sided(2, dof), std::domain_error) << dof;
  }
}

TEST(Uncertainty, ExpandedIsFactorTimesStandard) {
  const std::vector<Component> budget{{"a", 3, 1, 4.0}, {"b", 4, 1, {}}};
  const Expanded u = expanded(budget, 0.95);
  EXPECT_NEAR(u.standard, 5, 1e-12);
  EXPECT_NEAR(u.degrees_of_freedom.value(), 625.0 / (81.0 / 4), 1e-9);
  EXPECT_NEAR(u.half_width, u.factor * 5, 1e-12);
  EXPECT_EQ(u.factor, coverage_factor(0.95, u.degrees_of_freedom));
}

}  // namespace
}  // namespace tinworm::metal
