#include "history/order.hpp"

#include <algorithm>
#include <tuple>

#include <fmt/format.h>

namespace tinworm::history {
namespace {

using weighing::Result;

const quantity::PartialDate& date_of(const Result& result) {
  return result.survey.visit.date;
}

Refusal twice(const Result& a, const Result& b) {
  if (a.named == b.named)
    return {fmt::format("{} is named twice", a.named), "Name each survey once."};
  return {fmt::format("{} and {} are the same survey, byte for byte", a.named, b.named),
          "Leave one out."};
}

Refusal one_date(const Result& a, const Result& b) {
  if (date_of(a) == date_of(b))
    return {fmt::format("{} and {} have the same date, {}", a.named, b.named, date_of(a).text()),
            "A comparison needs surveys of different dates."};
  return {fmt::format("{} of {} and {} of {}: which came first isn't told", a.named,
                      date_of(a).text(), b.named, date_of(b).text()),
          "Give the month or day of both visits."};
}

}  // namespace

void sort_by_date(std::vector<Result>& results) {
  std::ranges::stable_sort(results, {}, [](const Result& each) {
    return std::tuple(date_of(each).middle_year(), date_of(each).text());
  });
}

std::vector<Refusal> refusals(const std::vector<Result>& results) {
  std::vector<Refusal> all;
  for (std::size_t i = 0; i < results.size(); ++i) {
    const Result& later = results[i];
    if (i > 0 && later.body->name != results[0].body->name)
      all.push_back({fmt::format("{} is of the body {}, {} of {}", results[0].named,
                                 results[0].body->name, later.named, later.body->name),
                     "Only surveys of one kind of body have zones to compare."});
    for (std::size_t k = 0; k < i; ++k) {
      const Result& earlier = results[k];
      if (earlier.sha256 == later.sha256 || earlier.named == later.named)
        all.push_back(twice(earlier, later));
      else if (date_of(earlier).last() >= date_of(later).first())
        all.push_back(one_date(earlier, later));
    }
  }
  return all;
}

}  // namespace tinworm::history
