#include "verbs/lines.hpp"

#include "verbs/command_error.hpp"
#include "verbs/line_parts.hpp"
#include "verbs/verb_line.hpp"

namespace tinworm::verbs {

Command parse_check(const Arguments& arguments) {
  CheckOptions options;
  CommonLine common;
  std::string format;
  VerbLine line("check",
                "Names every mistake in a survey with its place, then asks what a careful surveyor "
                "would ask. Changes nothing.",
                "SURVEY…");
  line.option("--format", "text|json", format, "kind of output; text unless given");
  line.option("--before", "OLD.yaml", options.before,
              "an earlier survey of the same car: asks for its stations too");
  line.option(
      "--matches", "OUTPUT", options.matches,
      "makes this PDF, SVG, PNG, JSON or text again and tells whether it belongs to the survey as "
      "it stands: identical; names this survey but differs; not from it; or can't tell");
  line.option("--rates", "FILE", options.rates, "the rates that OUTPUT was made by");
  line.flag("--strict", options.strict, "questions give exit status 1 too");
  common.declare_rules(line);
  common.declare(line);
  common.declare_jobs(line);
  line.example("tinworm check wherry-2025.yaml", "mistakes and questions of one survey");
  line.example("tinworm check surveys/ --strict", "those of every survey in a folder");
  line.example("tinworm check wherry-2025.yaml --before wherry-2022.yaml",
               "and what was named or measured otherwise last time");
  options.files = line.parse(arguments);
  if (line.help_wanted()) return Shown{line.help()};
  require_files("check", options.files);
  if (!options.matches.empty() && are_many(options.files)) {
    throw CommandError("check", "--matches holds one output against one survey",
                       "Name one survey.");
  }
  if (!options.rates.empty() && options.matches.empty()) {
    throw CommandError("check", "--rates goes with --matches: no question rests on rates",
                       "Leave it out.");
  }
  if (!options.before.empty() && are_many(options.files)) {
    throw CommandError("check", "--before goes with one survey to check, not several",
                       "Check each with its own.");
  }
  options.to = destination({"check", "", format, "--format", {Kind::text, Kind::json}, false});
  options.common = common.read("check");
  return options;
}

}  // namespace tinworm::verbs
