// Which surveys of an archive are of one and the same car.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "survey/survey.hpp"

namespace tinworm::history {

struct Filed {
  survey::Car car;
  std::string body;  // the plan's name
  survey::PartialDate date;
  std::string sha256;  // of the survey's bytes
};

// Indices into `all`, a list for each car: by date, and copies of one survey once. The chassis
// number tells where both surveys have one, else the registration; else name, body and the year
// built where both say it. Letter case and spaces don't matter. A survey without any of them is a
// car of its own.
std::vector<std::vector<std::size_t>> by_car(const std::vector<Filed>& all);

}  // namespace tinworm::history
