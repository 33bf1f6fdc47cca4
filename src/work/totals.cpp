#include "work/totals.hpp"

#include <cmath>

namespace tinworm::work {

Total total(const std::vector<Range>& tasks, double correlation) {
  constexpr double z_of_80_per_cent = 0.8416212335729143;
  Total all;
  double deviations = 0, squares = 0;
  for (const Range& task : tasks) {
    const double deviation = (task.high - task.low) / 6;
    all.sum = all.sum + task;
    all.mean += (task.low + 4 * task.likely + task.high) / 6;
    deviations += deviation;
    squares += deviation * deviation;
  }
  all.standard_deviation =
      std::sqrt((1 - correlation) * squares + correlation * deviations * deviations);
  all.in_80_of_100 = all.mean + z_of_80_per_cent * all.standard_deviation;
  return all;
}

}  // namespace tinworm::work
