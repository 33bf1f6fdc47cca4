#include "weighing/advice_today.hpp"

#include <chrono>

#include <fmt/format.h>

namespace tinworm::weighing {

std::vector<Advice> advice_today(const survey::Survey& survey, const survey::PartialDate& today) {
  // Somewhere it is tomorrow already: a day ahead is no slip.
  const survey::PartialDate& visit = survey.visit.date;
  if (visit.first() <= today.last() + std::chrono::days(1)) return {};
  Advice ask;
  ask.kind = "visit-to-come";
  ask.question = fmt::format("was the car seen on {}? Today is {}.", visit.text(), today.text());
  ask.why = "Nobody has seen yet what a later date tells of, and rates of rusting go by the date.";
  return {ask};
}

}  // namespace tinworm::weighing
