#include "verbs/named_plan.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "verbs/command_error.hpp"
#include "yaml/characters.hpp"
#include "yaml/problem.hpp"

namespace tinworm::verbs {

body::PlanPtr named_plan(const std::string& verb, PlanShelf& plans, const std::string& name,
                         const Streams& streams) {
  const auto plan = plans.find(name, "");
  if (plan) return *plan;
  const std::string mistakes = plans.mistakes(name, "");
  if (mistakes.empty()) {
    const std::string near = yaml::nearest_word(name, plans.names());
    throw CommandError(verb, fmt::format("{}: \"{}\"", plan.error().what, yaml::shown(name)),
                       near.empty() ? fmt::format("There are {}.", fmt::join(plans.names(), ", "))
                                    : fmt::format("Did you mean {}?", near));
  }
  streams.complain(mistakes);
  return nullptr;
}

}  // namespace tinworm::verbs
