// NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, upper critical values of Student's t
// (quoted; the section number is from memory).
#include <optional>

#include <fmt/core.h>
#include <gtest/gtest.h>

#include "metal/uncertainty.hpp"
#include "outside/record.hpp"

namespace tinworm::outside {
namespace {

struct Row {
  std::optional<double> dof;
  double at_05, at_025, at_005;
};

const std::vector<Row> table{
    {1, 6.314, 12.706, 63.657}, {2, 2.920, 4.303, 9.925},  {3, 2.353, 3.182, 5.841},
    {4, 2.132, 2.776, 4.604},   {5, 2.015, 2.571, 4.032},  {8, 1.860, 2.306, 3.355},
    {10, 1.812, 2.228, 3.169},  {20, 1.725, 2.086, 2.845}, {30, 1.697, 2.042, 2.750},
    {{}, 1.645, 1.960, 2.576},
};

TEST(StudentT, UpperCriticalValues) {
  for (const Row& row : table) {
    const std::string dof = row.dof ? fmt::format("{} dof", *row.dof) : "infinite dof";
    const auto expect = [&](double upper, double published) {
      expect_published("NIST/SEMATECH e-Handbook 1.3.6.7.2 (quoted)",
                       fmt::format("{}, upper {}", dof, upper), published,
                       metal::student_t_quantile(1 - upper, row.dof), 0.00051);
    };
    expect(.05, row.at_05);
    expect(.025, row.at_025);
    expect(.005, row.at_005);
  }
}

}  // namespace
}  // namespace tinworm::outside
