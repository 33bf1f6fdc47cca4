// ISO 9223:2012 Table 2, carbon steel, loss of the first year (quoted): lower bound exclusive,
// upper inclusive.
#include <cmath>

#include <fmt/core.h>
#include <gtest/gtest.h>

#include "metal/corrosivity.hpp"
#include "outside/record.hpp"

namespace tinworm::outside {
namespace {

using metal::Corrosivity;

struct Row {
  Corrosivity category;
  double upper_um, upper_g_per_m2;
};

const std::vector<Row> table{{Corrosivity::c1, 1.3, 10},   {Corrosivity::c2, 25, 200},
                             {Corrosivity::c3, 50, 400},   {Corrosivity::c4, 80, 650},
                             {Corrosivity::c5, 200, 1500}, {Corrosivity::cx, 700, 5500}};

double number(Corrosivity category) {
  return static_cast<double>(category) + 1;
}  // CX is 6

std::optional<double> number(std::optional<Corrosivity> category) {
  if (!category) return std::nullopt;
  return number(*category);
}

TEST(Iso9223, EitherSideOfEveryLimit) {
  for (const Row& row : table) {
    const double here = number(row.category);
    const auto expect = [&](double um, double g, double published) {
      expect_published("ISO 9223:2012 Table 2 (quoted)", fmt::format("{} µm/a", um), published,
                       number(metal::category_by_thickness(um)), 0);
      expect_published("ISO 9223:2012 Table 2 (quoted)", fmt::format("{} g/m²a", g), published,
                       number(metal::category_by_mass(g)), 0);
    };
    expect(row.upper_um, row.upper_g_per_m2, here);
    expect(row.upper_um * .999, row.upper_g_per_m2 * .999, here);
    if (row.category != Corrosivity::cx)
      expect(row.upper_um * 1.001, row.upper_g_per_m2 * 1.001, here + 1);
  }
}

TEST(Iso9223, OutsideTheTableThereIsNoCategory) {
  for (const double um : {700.1, -0.1, std::nan("")})
    EXPECT_FALSE(metal::category_by_thickness(um)) << um;
  for (const double g : {5501.0, -1.0, std::nan("")}) EXPECT_FALSE(metal::category_by_mass(g)) << g;
}

// The two units are rounded apart: 81 µm/a is 636 g/m2a at 7850 kg/m3.
TEST(Iso9223, UnitsDisagreeNearALimit) {
  EXPECT_EQ(metal::category_by_thickness(81), Corrosivity::c5);
  EXPECT_EQ(metal::category_by_mass(81 * 7.85), Corrosivity::c4);
}

TEST(Iso9223, BandOfACategory) {
  for (std::size_t i = 0; i < table.size(); ++i) {
    const auto um = metal::first_year_um(table[i].category);
    const auto g = metal::first_year_g_per_m2(table[i].category);
    EXPECT_EQ(um.high, table[i].upper_um);
    EXPECT_EQ(g.high, table[i].upper_g_per_m2);
    EXPECT_EQ(um.low, i == 0 ? 0 : table[i - 1].upper_um);
    EXPECT_EQ(g.low, i == 0 ? 0 : table[i - 1].upper_g_per_m2);
  }
}

}  // namespace
}  // namespace tinworm::outside
