// The table against what its weights must do, and against its script run anew.
#include "metal/gumbel_table.hpp"
#include "paths.hpp"

#include <array>
#include <cmath>
#include <cstdio>
#include <memory>
#include <numbers>
#include <numeric>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

#include <gtest/gtest.h>

namespace tinworm::metal {
namespace {

// Mean of the i-th smallest of n standard Gumbel values, i from 1, in closed form: the density of
// the i-th is a sum of Gumbel densities, each with the mean g + ln(i + k).
double ordered_mean(int n, int i) {
  const auto choose = [](int of, int k) {
    return std::exp(std::lgamma(of + 1.0L) - std::lgamma(k + 1.0L) - std::lgamma(of - k + 1.0L));
  };
  long double sum = 0;
  for (int k = 0; k <= n - i; ++k) {
    const long double mean = std::numbers::egamma_v<long double> + std::log(i + k * 1.0L);
    sum += (k % 2 ? -1 : 1) * choose(n - i, k) * mean / (i + k);
  }
  return static_cast<double>(sum * i * choose(n, i));
}

// Whatever the location and the scale, the estimates are right on average.
TEST(GumbelTable, WeightsAreUnbiased) {
  for (std::size_t n = fewest_patches; n <= most_patches; ++n) {
    SCOPED_TRACE(n);
    const GumbelRow& row = gumbel_row(n);
    std::array<double, most_patches> mean = {};
    for (std::size_t i = 0; i < n; ++i)
      mean[i] = ordered_mean(static_cast<int>(n), static_cast<int>(i) + 1);
    const auto sum = [](const auto& of) { return std::accumulate(of.begin(), of.end(), 0.0); };
    const auto product = [](const auto& a, const auto& b) {
      return std::inner_product(a.begin(), a.end(), b.begin(), 0.0);
    };
    EXPECT_NEAR(sum(row.location), 1, 1e-8);
    EXPECT_NEAR(sum(row.scale), 0, 1e-8);
    EXPECT_NEAR(product(row.location, mean), 0, 1e-8);
    EXPECT_NEAR(product(row.scale, mean), 1, 1e-8);
    for (std::size_t i = n; i < most_patches; ++i)
      EXPECT_TRUE(row.location[i] == 0 && row.scale[i] == 0) << i;
  }
}

// More of the area left makes the bound higher, more of it read lower; and since the bound bends
// upward over ln(unread), a straight line between two figures never lies under it.
TEST(GumbelTable, BoundsRiseAndBendUpward) {
  for (std::size_t n = fewest_patches; n <= most_patches; ++n) {
    SCOPED_TRACE(n);
    const auto& bound = gumbel_row(n).bound;
    double slope_before = 0;
    for (std::size_t i = 1; i < bound.size(); ++i) {
      const double slope =
          (bound[i] - bound[i - 1]) / std::log(tabled_unread[i] / tabled_unread[i - 1]);
      EXPECT_GT(slope, slope_before) << i;
      slope_before = slope;
    }
    if (n == fewest_patches) continue;
    for (std::size_t i = 0; i < bound.size(); ++i) EXPECT_LT(bound[i], gumbel_row(n - 1).bound[i]);
  }
}

TEST(GumbelTable, HasNoOtherRows) {
  EXPECT_THROW(gumbel_row(0), std::out_of_range);
  EXPECT_THROW(gumbel_row(fewest_patches - 1), std::out_of_range);
  EXPECT_THROW(gumbel_row(most_patches + 1), std::out_of_range);
}

// What a command writes to its standard output; fails the test where its status isn't 0.
std::string output_of(const std::string& command) {
  std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(command.c_str(), "r"), [](FILE*) { return 0; });
  std::string text;
  std::array<char, 4096> part;
  while (const std::size_t read = fread(part.data(), 1, part.size(), pipe.get()))
    text.append(part.data(), read);
  EXPECT_EQ(pclose(pipe.release()), 0) << command << ": is python3-scipy installed?";
  return text;
}

std::vector<double> next_figures(std::istream& line) {
  std::string part;
  std::getline(line, part, ';');
  std::istringstream in(part);
  std::vector<double> all;
  for (double x = 0; in >> x;) all.push_back(x);
  return all;
}

// Needs Debian's python3-scipy. A tenth of the draws: its bounds are within 3 % of the table's.
TEST(GumbelTable, IsWhatItsScriptWrites) {
  std::istringstream lines(output_of("/usr/bin/python3 " + source_folder() +
                                     "/tests/metal/gumbel_weights.py --draws 100000 5 11 20"));
  int rows = 0;
  for (std::string text; std::getline(lines, text); ++rows) {
    std::istringstream line(text);
    const auto n = static_cast<std::size_t>(next_figures(line).at(0));
    SCOPED_TRACE(n);
    const auto location = next_figures(line), scale = next_figures(line);
    const auto bound = next_figures(line);
    ASSERT_EQ(location.size(), n);
    ASSERT_EQ(scale.size(), n);
    ASSERT_EQ(bound.size(), tabled_unread.size());
    const GumbelRow& row = gumbel_row(n);
    for (std::size_t i = 0; i < n; ++i) {
      EXPECT_NEAR(row.location[i], location[i], 1e-9);
      EXPECT_NEAR(row.scale[i], scale[i], 1e-9);
    }
    for (std::size_t i = 0; i < bound.size(); ++i)
      EXPECT_NEAR(row.bound[i], bound[i], .03 * bound[i]) << tabled_unread[i];
  }
  EXPECT_EQ(rows, 3);
}

}  // namespace
}  // namespace tinworm::metal
