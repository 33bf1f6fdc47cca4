// API 510, 10th edition, 7.1.1 (rates), 7.2.1 (remaining life), 6.5.1.1 (interval): worked cases
// (quoted). Inches.
#include <cmath>

#include <fmt/core.h>
#include <gtest/gtest.h>

#include "metal/rates.hpp"
#include "outside/record.hpp"

namespace tinworm::outside {
namespace {

const std::string rates = "API 510 10th ed. 7.1.1 (quoted)";
const std::string lives = "API 510 10th ed. 7.2.1 (quoted)";
const std::string intervals = "API 510 10th ed. 6.5.1.1 (quoted)";
constexpr double cap_years = 10;

TEST(Api510, ShortRateGoverns) {
  const auto rate =
      metal::governing_rate(metal::loss_rate(.413, .352, 5.0), metal::loss_rate(.5, .4, 1.0));
  expect_published(rates, ".413 to .352 in 5.0 y, in/y", 0.012, rate.long_term, 0.0005);
  expect_published(rates, ".5 to .4 in 1.0 y, in/y", 0.100, rate.short_term, 1e-12);
  EXPECT_TRUE(rate.short_governs);
  const auto life = metal::remaining_life(.4, .3, rate.rate);
  expect_published(lives, ".4, required .3, years", 1.00, life, 1e-12);
  expect_published(intervals, "half of 1.00 years", 0.50,
                   metal::half_life_interval(life, cap_years), 1e-12);
}

// Readings of Jan 1991, May 1995, Oct 1998 and May 2003. The printed 11.8 years need the rate
// rounded to .005 first; 11.774 unrounded needs 4.59 years for Oct 1998 to May 2003.
TEST(Api510, FourReadings) {
  constexpr double last_years = 4.59, all_years = 12 + 4.0 / 12;
  const auto rate = metal::governing_rate(metal::loss_rate(.500, .454, all_years),
                                          metal::loss_rate(.477, .454, last_years));
  expect_published(rates, ".500 to .454, Jan 1991 to May 2003, in/y", .004, rate.long_term, 0.0005);
  expect_published(rates, ".477 to .454, Oct 1998 to May 2003, in/y", .005, rate.short_term,
                   0.0005);
  EXPECT_TRUE(rate.short_governs);
  const double rounded = std::round(rate.rate * 1000) / 1000;
  expect_published(lives, ".454, required .395, rate rounded, years", 11.8,
                   metal::remaining_life(.454, .395, rounded), 0.001);
  expect_published(lives + ", worked", ".454, required .395, unrounded, years", 11.774,
                   metal::remaining_life(.454, .395, rate.rate), 0.0005);
}

TEST(Api510, Rates) {
  struct Case {
    double before, now, years, published, tolerance;
  };
  for (const Case& c : {Case{.400, .260, 20, 0.007, 1e-12}, Case{.750, .675, 15, 0.005, 1e-12},
                        Case{.565, .521, 4.42, 0.010, 0.00005}, Case{.742, .718, 6, .004, 1e-12},
                        Case{.750, .718, 13, .00246, 0.000005}}) {
    expect_published(rates, fmt::format("{} to {} in {} y, in/y", c.before, c.now, c.years),
                     c.published, metal::loss_rate(c.before, c.now, c.years), c.tolerance);
  }
  const auto both =
      metal::governing_rate(metal::loss_rate(.750, .718, 13), metal::loss_rate(.742, .718, 6));
  EXPECT_TRUE(both.short_governs);
  EXPECT_EQ(both.rate, both.short_term);
}

TEST(Api510, Lives) {
  expect_published(lives, ".198, required .150, rate .007, years", 6.857,
                   metal::remaining_life(.198, .150, .007), 0.0005);
  expect_published(lives, ".211, required .150, rate .003, years", 20.3,
                   metal::remaining_life(.211, .150, .003), 0.05);
}

TEST(Api510, HalfLifeUpToTheCap) {
  struct Case {
    double life, published;
  };
  for (const Case& c :
       {Case{18.7, 9.35}, Case{9, 4.5}, Case{5.5, 2.75}, Case{20, 10}, Case{11.2, 5.6}}) {
    expect_published(intervals, fmt::format("life {} years", c.life), c.published,
                     metal::half_life_interval(c.life, cap_years), 1e-12);
  }
  EXPECT_EQ(metal::half_life_interval(20.1, cap_years), cap_years);
  EXPECT_EQ(metal::half_life_interval(std::nullopt, cap_years), cap_years);
}

}  // namespace
}  // namespace tinworm::outside
