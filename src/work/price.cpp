#include "work/price.hpp"

namespace tinworm::work {

std::optional<Range> left_over(const Plan& plan, const survey::Price& price) {
  if (!price.asked || !price.sound) return std::nullopt;
  const std::string& currency = plan.rates.currency;
  if (price.asked->currency != currency || price.sound->currency != currency) return std::nullopt;
  const double before_work = price.sound->amount - price.asked->amount;
  const double apart = plan.contingency ? plan.contingency->cost.high : 0;
  return Range{before_work - plan.cost.in_80_of_100 - apart, before_work - plan.cost.mean,
               before_work - plan.cost.sum.low};
}

}  // namespace tinworm::work
