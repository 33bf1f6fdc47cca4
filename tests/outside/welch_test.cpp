// Welch's t test against two worked examples (both quoted; the section number is from memory).
#include <gtest/gtest.h>

#include "metal/welch.hpp"
#include "outside/record.hpp"

namespace tinworm::outside {
namespace {

TEST(Welch, CarMileage) {
  const auto w = metal::welch({249, 20.14458, 6.41470}, {79, 30.48101, 6.10771});
  ASSERT_TRUE(w);
  const std::string source = "NIST/SEMATECH e-Handbook 1.3.5.3, car mileage (quoted)";
  expect_published(source, "t", -12.94627, w->t, 1e-5);
  expect_published(source, "dof", 136.87499, w->degrees_of_freedom, 1e-5);
}

TEST(Welch, TwoSetsOfFifteen) {
  const std::vector<double> a{27.5, 21.0, 19.0, 23.6, 17.0, 17.9, 16.9, 20.1,
                              21.9, 22.6, 23.1, 19.6, 19.0, 21.7, 21.4};
  const std::vector<double> b{27.1, 22.0, 20.8, 23.4, 23.4, 23.5, 25.8, 22.0,
                              24.8, 20.2, 21.9, 22.1, 22.9, 20.5, 24.4};
  const auto w = metal::welch(metal::sample_of(a), metal::sample_of(b));
  ASSERT_TRUE(w);
  const std::string source = "Welch's t test, worked example of 15 and 15 (quoted)";
  expect_published(source, "t", -2.45535639828601, w->t, 1e-12);
  expect_published(source, "dof", 24.9885292902309, w->degrees_of_freedom, 1e-11);
  expect_published(source, "two-sided p", 0.021378001462867, w->two_sided, 1e-13);
  // The ends are quoted to nine figures and differ from ours, and from SciPy 1.10.1's
  // -3.98409626714 and -0.34923706619, in the last.
  expect_published(source, "95 % of the difference, low", -3.98409625, w->difference.low, 2e-8);
  expect_published(source, "95 % of the difference, high", -0.34923708, w->difference.high, 2e-8);
}

}  // namespace
}  // namespace tinworm::outside
