// ASTM D610-08 (2012) Table 1 (read): per cent of surface rusted, upper bounds inclusive.
#include <fmt/core.h>
#include <gtest/gtest.h>

#include "metal/rusted_area.hpp"
#include "outside/record.hpp"

namespace tinworm::outside {
namespace {

const std::string source = "ASTM D610-08 (2012) Table 1";

struct Row {
  double upper_percent;
  int grade;
};

const std::vector<Row> table{{0.01, 10}, {0.03, 9}, {0.1, 8}, {0.3, 7}, {1, 6},  {3, 5},
                             {10, 4},    {16, 3},   {33, 2},  {50, 1},  {100, 0}};

TEST(AstmD610, EitherSideOfEveryLimit) {
  expect_published(source, "0 %", 10, metal::astm_d610(0), 0);
  for (const Row& row : table) {
    const auto expect = [](double percent, int grade) {
      expect_published(source, fmt::format("{:.6g} %", percent), grade,
                       metal::astm_d610(percent / 100), 0);
    };
    expect(row.upper_percent, row.grade);
    expect(row.upper_percent * .999, row.grade);
    if (row.grade > 0) expect(row.upper_percent * 1.001, row.grade - 1);
  }
}

// The interpolation between steps is our own; on the steps it must be the standard's.
TEST(AstmD610, ContinuousGradeMeetsTheTableAtItsBounds) {
  for (const Row& row : table) {
    expect_published(source + ", interpolated", fmt::format("{} %", row.upper_percent), row.grade,
                     metal::astm_d610_continuous(row.upper_percent / 100), 1e-9);
  }
}

}  // namespace
}  // namespace tinworm::outside
