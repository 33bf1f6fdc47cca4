#include "verbs/lines.hpp"

#include <fmt/format.h>

#include "verbs/command_error.hpp"
#include "verbs/line_parts.hpp"
#include "verbs/verb_line.hpp"

namespace tinworm::verbs {

Command parse_weigh(const Arguments& arguments) {
  WeighOptions options;
  CommonLine common;
  std::string format, as, path, units;
  VerbLine line("weigh",
                "Says what a survey comes to: the verdict with its reasons, how much the rust "
                "weighs, what was found and what was not seen. One line each for several surveys.",
                "SURVEY…");
  line.option("-o", "FILE", path, "where to; the ending tells the kind (.txt .json .csv)");
  line.option("--format", "text|json|csv", format, "kind of output; text unless given");
  line.option("--as", "text|json|csv", as, "the same, for -o -");
  line.option("--explain", "ZONE", options.explain, "the whole chain for one zone");
  line.option("--units", "mm|inch", units, "of lengths in text; mm unless given");
  common.declare_rules(line);
  common.declare(line);
  common.declare_jobs(line);
  line.example("tinworm weigh wherry-2025.yaml", "the verdict and all that it rests on");
  line.example("tinworm weigh wherry-2025.yaml --explain 51", "from the readings of zone 51 on");
  line.example("tinworm weigh wherry-2025.yaml --rules salted.yaml",
               "by rules of your own, as in: {rules: 1, near-radius: 400 mm}");
  line.example("tinworm weigh surveys/ -o surveys.csv", "a table for a spreadsheet");
  options.files = line.parse(arguments);
  if (line.help_wanted()) return Shown{line.help()};
  require_files("weigh", options.files);
  const auto [kind, option] = kind_option("weigh", format, as);
  options.to = destination(
      {"weigh", path, kind, option, {Kind::text, Kind::json, Kind::csv}, are_many(options.files)});
  if (!options.explain.empty() && options.to.kind != Kind::text) {
    throw CommandError(
        "weigh",
        fmt::format("--explain is text; {} holds every zone as it is", word(options.to.kind)),
        "Leave one out.");
  }
  options.units = choice<quantity::Units>(
      "weigh", "--units", units, {{"mm", quantity::Units::mm}, {"inch", quantity::Units::inch}});
  options.common = common.read("weigh");
  return options;
}

}  // namespace tinworm::verbs
