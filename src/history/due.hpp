// When a car of an archive is next to be looked at. Dates for planning, never of failure.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "history/comparison.hpp"
#include "rules/rules.hpp"

namespace tinworm::history {

struct Due {
  survey::Car car;                 // by its newest survey, as is all below
  std::string body, file, sha256;  // file without folders
  quantity::PartialDate seen;      // when it was looked at last
  std::size_t surveys = 0;         // of this car
  weighing::Verdict verdict = weighing::Verdict::not_known;
  weighing::Verdict could_be = weighing::Verdict::not_known;
  NextSurvey next;
  std::string note;  // why only the newest survey was reckoned with; empty where all were
};

// Of all surveys of one car, weighed by `rules`; at least one, in any order. Where they can't be
// compared the newest counts alone.
Due due_of(std::vector<weighing::Result> surveys, const rules::Rules& rules);

// Not before the whole of its date has passed: a month counts to its last day.
bool is_overdue(const Due& due, const quantity::PartialDate& today);

// What is to be repaired before it is looked at again first, then by date, then by name.
void sort(std::vector<Due>& all);

}  // namespace tinworm::history
