// JCGM 100:2008 (GUM), annex H.1, end-gauge calibration; inputs quoted, results redone; the clauses
// within H.1 are numbered from memory.
#include <cmath>

#include <gtest/gtest.h>

#include "metal/uncertainty.hpp"
#include "outside/record.hpp"

namespace tinworm::outside {
namespace {

using metal::Component;

const std::vector<Component> difference_nm{
    {"repeated observations", 5.8, 1, 24.0}, {"random", 3.9, 1, 5.0}, {"systematic", 6.7, 1, 8.0}};

// The printed 25.6 degrees of freedom come of u(d) rounded to 9.7 nm before the division; unrounded
// it is 25.45.
TEST(Jcgm100H1, DifferenceOfTheGauges) {
  const double u_nm = metal::combined_standard(difference_nm);
  const double dof = metal::effective_degrees_of_freedom(difference_nm).value();
  expect_published("JCGM 100:2008 H.1.3.2", "u(d), nm", 9.7, u_nm, 0.05);
  expect_published("JCGM 100:2008 H.1.6, u(d) rounded to 9.7 first", "effective dof of d", 25.6,
                   dof * std::pow(9.7 / u_nm, 4), 0.05);
  expect_published("JCGM 100:2008 H.1.6, redone unrounded (worked)", "effective dof of d", 25.45,
                   dof, 0.005);
}

TEST(Jcgm100H1, WholeBudget) {
  const std::vector<Component> length_nm{{"standard", 25, 1, 18.0},
                                         {"difference", 9.7, 1, 25.6},
                                         {"expansion", 2.9, 1, 50.0},
                                         {"temperature", 16.6, 1, 2.0}};
  const metal::Expanded u = metal::expanded(length_nm, 0.99);
  expect_published("JCGM 100:2008 H.1.4", "u(l), nm", 32, u.standard, 0.5);
  expect_published("JCGM 100:2008 H.1.4, more digits (worked)", "u(l), nm", 31.7, u.standard, 0.05);
  // Of the components as printed, rounded, it is 16.76: good to one in the last digit.
  expect_published("JCGM 100:2008 H.1.6, before truncation", "effective dof of l", 16.7,
                   u.degrees_of_freedom, 0.1);
  // The standard truncates to 16 before it takes t; we don't.
  const double t99 = metal::coverage_factor(0.99, 16.0);
  expect_published("JCGM 100:2008 H.1.6", "t99 at 16 dof", 2.92, t99, 0.005);
  expect_published("JCGM 100:2008 H.1.6", "U99 from 32 nm and 16 dof, nm", 93, t99 * 32, 0.5);
}

}  // namespace
}  // namespace tinworm::outside
