#include "verbs/command_line.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "verbs/command_error.hpp"
#include "verbs/lines.hpp"
#include "yaml/characters.hpp"
#include "yaml/problem.hpp"

namespace tinworm::verbs {
namespace {

struct Verb {
  std::string name, does;
  Command (*parse)(const Arguments&);
};

const std::vector<Verb>& verbs() {
  static const std::vector<Verb> all = {
      {"bodies", "body plans, and the zones of one", parse_bodies},
      {"start", "a survey to fill in", parse_start},
      {"field-sheet", "paper to take under the car", parse_field_sheet},
      {"check", "mistakes in a survey, and questions", parse_check},
      {"weigh", "what a survey comes to, with reasons", parse_weigh},
      {"map", "the diagram, as PDF, SVG or PNG", parse_map},
      {"compare", "what changed over the years", parse_compare},
      {"due", "the cars of an archive by their next survey", parse_due},
      {"work", "what to do in what order, and what it may take", parse_work},
      {"report", "the owner's paper", parse_report},
      {"listing", "what goes with the car when it is sold", parse_listing},
      {"schema", "what an editor needs to help with a file", parse_schema},
  };
  return all;
}

std::string overview() {
  std::string text =
      "tinworm maps the corrosion of a car from a survey and weighs what it means.\n\n"
      "tinworm VERB FILE… [options]\n\n";
  for (const Verb& verb : verbs()) text += fmt::format("  {:<13}{}\n", verb.name, verb.does);
  return text +
         "\nFor example\n"
         "  tinworm map wherry-2025.yaml -o wherry.pdf\n"
         "\ntinworm VERB --help tells the rest. Exit status: 0 done, 1 mistakes in the survey, "
         "plan,\n"
         "rules or rates, 2 mistakes on the command line, 3 a file could not be read or written.\n";
}

}  // namespace

Command parse_command_line(const std::vector<std::string>& arguments) {
  if (arguments.empty()) throw CommandError("", "a verb is missing", "\n" + overview());
  const std::string& first = arguments.front();
  if (first == "--help" || first == "-h" || first == "help") return Shown{overview()};
  if (first == "--version") return Shown{"tinworm " TINWORM_VERSION "\n"};
  std::vector<std::string> names;
  for (const Verb& verb : verbs()) {
    if (verb.name == first) return verb.parse({arguments.begin() + 1, arguments.end()});
    names.push_back(verb.name);
  }
  if (first.starts_with('-')) {
    throw CommandError("", fmt::format("the verb comes before {}", yaml::shown(first)),
                       fmt::format("The verbs are {}.", fmt::join(names, ", ")));
  }
  const std::string near = yaml::nearest_word(first, names);
  throw CommandError("", fmt::format("there is no verb \"{}\"", yaml::shown(first)),
                     near.empty() ? fmt::format("The verbs are {}.", fmt::join(names, ", "))
                                  : fmt::format("Did you mean {}?", near));
}

}  // namespace tinworm::verbs
