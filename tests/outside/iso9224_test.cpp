// ISO 9224:2012, loss after t years = first year x t^b, and the tangent after 20 years.
#include <fmt/core.h>
#include <gtest/gtest.h>

#include "metal/corrosivity.hpp"
#include "outside/record.hpp"

namespace tinworm::outside {
namespace {

using Table = std::vector<std::pair<double, double>>;  // years, published

TEST(Iso9224, PowerOfTheYears) {
  const Table b1{{2, 1.437},  {5, 2.320},  {10, 3.334}, {15, 4.122},  {20, 4.791},
                 {25, 5.384}, {30, 5.923}, {50, 7.737}, {100, 11.117}};
  const Table b2{{2, 1.490},  {5, 2.523},  {10, 3.758}, {15, 4.745},
                 {20, 5.599}, {30, 7.069}, {50, 9.482}, {100, 14.125}};
  for (const auto& [years, factor] : b1) {
    expect_published("ISO 9224:2012, carbon steel, B1 0.523 (quoted)",
                     fmt::format("t^b, {} years", years), factor,
                     metal::power_law_loss(1, years, metal::steel_b1), 0.00051);
  }
  for (const auto& [years, factor] : b2) {
    expect_published("ISO 9224:2012, carbon steel, B2 0.575 (quoted)",
                     fmt::format("t^b, {} years", years), factor,
                     metal::power_law_loss(1, years, metal::steel_b2), 0.00051);
  }
}

TEST(Iso9224, TangentAfterTwentyYears) {
  expect_published("ISO 9224:2012, zinc, b 0.813, tangent (quoted)", "30 years", 16.06486657718427,
                   metal::tangent_loss(1, 30, metal::zinc_b1), 1e-13);
  const Table b1{{25, 5.4176}, {30, 6.0440}, {50, 8.5498}};
  for (const auto& [years, factor] : b1) {
    expect_published("ISO 9224:2012, carbon steel, B1, tangent (worked)",
                     fmt::format("{} years", years), factor,
                     metal::tangent_loss(1, years, metal::steel_b1), 0.00005);
  }
}

TEST(Iso9224, AttackAtTheUpperLimitOfEachCategory) {
  struct Row {
    metal::Corrosivity category;
    std::vector<double> attack_um;  // after 1, 2, 5, 10, 15, 20 years
  };
  const std::vector<double> years{1, 2, 5, 10, 15, 20};
  const std::vector<Row> table{{metal::Corrosivity::c2, {25, 35.9, 58.0, 83.4, 103.1, 119.8}},
                               {metal::Corrosivity::c3, {50, 71.9, 116.0, 166.7, 206.1, 239.6}},
                               {metal::Corrosivity::c4, {80, 115.0, 185.6, 266.7, 329.8, 383.3}},
                               {metal::Corrosivity::c5, {200, 287.4, 464.1, 666.9, 824.4, 958.2}}};
  for (const Row& row : table) {
    const double first_year_um = metal::first_year_um(row.category).high;
    // Printed to 0.1 µm, some from t^b rounded to three decimals first.
    const double tolerance_um = 0.05 + 0.0005 * first_year_um;
    for (std::size_t i = 0; i < years.size(); ++i) {
      expect_published(
          "ISO 9224:2012 Annex A (worked; memory of the annex agrees)",
          fmt::format("{} upper limit, {} years, µm", metal::word(row.category), years[i]),
          row.attack_um[i], metal::power_law_loss(first_year_um, years[i], metal::steel_b1),
          tolerance_um);
    }
  }
}

// The standard's own table goes on with the power law past 20 years; the tangent gives more.
TEST(Iso9224, TheTwoOptionsPartAfterTwentyYears) {
  expect_published("ISO 9224:2012, C5, 50 years, power law (worked)", "200 µm first year", 1547,
                   metal::power_law_loss(200, 50, metal::steel_b1), 0.5);
  expect_published("ISO 9224:2012, C5, 50 years, tangent (worked)", "200 µm first year", 1710,
                   metal::tangent_loss(200, 50, metal::steel_b1), 0.5);
  for (const double years : {1.0, 5.0, 20.0}) {
    EXPECT_EQ(metal::tangent_loss(200, years, metal::steel_b1),
              metal::power_law_loss(200, years, metal::steel_b1));
  }
}

}  // namespace
}  // namespace tinworm::outside
