#include "history/due.hpp"

#include <algorithm>
#include <tuple>

#include <fmt/format.h>

#include "history/compare.hpp"
#include "history/order.hpp"
#include "history/outlook.hpp"

namespace tinworm::history {
namespace {

NextSurvey by_the_newest(weighing::Result newest, const rules::Rules& rules) {
  Comparison alone;
  alone.surveys.push_back(std::move(newest));
  return next_survey(alone, rules);
}

}  // namespace

Due due_of(std::vector<weighing::Result> surveys, const rules::Rules& rules) {
  sort_by_date(surveys);
  Due due;
  const weighing::Result& newest = surveys.back();
  due.car = newest.survey.car;
  due.body = newest.body->name;
  due.file = newest.file;
  due.sha256 = newest.sha256;
  due.seen = newest.survey.visit.date;
  due.surveys = surveys.size();
  due.verdict = newest.verdict;
  due.could_be = newest.could_be;
  const std::vector<Refusal> refused = refusals(surveys);
  if (!refused.empty())
    due.note = fmt::format("by the newest survey alone: {}", refused.front().what);
  due.next = surveys.size() == 1 || !refused.empty() ? by_the_newest(surveys.back(), rules)
                                                     : compare(std::move(surveys), rules).next;
  return due;
}

bool is_overdue(const Due& due, const quantity::PartialDate& today) {
  return due.next.date && due.next.date->last() < today.first();
}

void sort(std::vector<Due>& all) {
  std::ranges::stable_sort(all, {}, [](const Due& due) {
    const bool has_date = due.next.date.has_value();
    return std::tuple(has_date, has_date ? due.next.date->first() : due.seen.first(), due.car.name);
  });
}

}  // namespace tinworm::history
