// ISO 4628-3:2016, degree of rusting by area (quoted): Ri 0 to 4 up to 0, 0.05, 0.5, 1, 8 %; Ri 5
// is 40 to 50 %, and here everything over 8 %.
#include <fmt/core.h>
#include <gtest/gtest.h>

#include "metal/rusted_area.hpp"
#include "outside/record.hpp"

namespace tinworm::outside {
namespace {

TEST(Iso4628_3, EitherSideOfEveryLimit) {
  struct Row {
    double percent;
    int ri;
  };
  const std::vector<Row> table{{0, 0},     {0.00001, 1}, {0.05, 1},  {0.0501, 2}, {0.5, 2},
                               {0.501, 3}, {1, 3},       {1.001, 4}, {8, 4},      {8.001, 5},
                               {40, 5},    {50, 5},      {100, 5}};
  for (const Row& row : table) {
    expect_published("ISO 4628-3:2016 degree of rusting (quoted)", fmt::format("{} %", row.percent),
                     row.ri, metal::iso4628_3(row.percent / 100), 0);
  }
}

// Published mappings between the two scales disagree; ours come each from the area.
TEST(Iso4628_3, OneRiHasSeveralD610Grades) {
  EXPECT_EQ(metal::iso4628_3(0.0003), 1);
  EXPECT_EQ(metal::astm_d610(0.0003), 9);
  EXPECT_EQ(metal::iso4628_3(0.0005), 1);
  EXPECT_EQ(metal::astm_d610(0.0005), 8);
}

}  // namespace
}  // namespace tinworm::outside
