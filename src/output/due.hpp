// The cars of an archive by when they are next to be looked at. Nothing private: cars go by name.
#pragma once

#include <string>
#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "history/due.hpp"
#include "output/weigh_text.hpp"

namespace tinworm::output {

struct DueList {
  std::vector<history::Due> cars;   // in their order
  quantity::PartialDate today;      // the list is of that day
  std::vector<std::string> unread;  // surveys with mistakes, or that could not be read
  std::string rules;                // those that were changed, in words; empty: none
};

std::string due_text(const DueList& list, const TextStyle& style = {});
std::string due_csv(const DueList& list);
nlohmann::ordered_json due_json(const DueList& list);

}  // namespace tinworm::output
