#include "verbs/command_error.hpp"
#include "verbs/line_parts.hpp"
#include "verbs/lines.hpp"
#include "verbs/verb_line.hpp"

namespace tinworm::verbs {

Command parse_work(const Arguments& arguments) {
  WorkOptions options;
  CommonLine common;
  std::string format, as, path, units;
  VerbLine line("work",
                "Says what to do in what order, and what sheet, hours and money it may take, as "
                "ranges, with what could double it. A plan to talk over, no quote. One line each "
                "for several surveys.",
                "SURVEY…");
  line.option("-o", "FILE", path, "where to; the ending tells the kind (.txt .json .csv)");
  line.option("--format", "text|json|csv", format, "kind of output; text unless given");
  line.option("--as", "text|json|csv", as, "the same, for -o -");
  line.option("--rates", "FILE", options.rates,
              "what work takes and costs where you are; every output names what it changes");
  line.option("--units", "mm|inch", units, "of lengths in text; mm unless given");
  common.declare_rules(line);
  common.declare(line);
  common.declare_jobs(line);
  line.example("tinworm work wherry-2025.yaml", "the tasks in order, and what they may take");
  line.example("tinworm work wherry-2025.yaml --rates mine.yaml",
               "by rates of your own, as in: {rates: 1, hour: 80, outer-sill: 10 14 20}");
  line.example("tinworm work wherry-2025.yaml -o work.csv", "a table for a spreadsheet");
  options.files = line.parse(arguments);
  if (line.help_wanted()) return Shown{line.help()};
  require_files("work", options.files);
  const auto [kind, option] = kind_option("work", format, as);
  options.to = destination(
      {"work", path, kind, option, {Kind::text, Kind::json, Kind::csv}, are_many(options.files)});
  options.units = choice<quantity::Units>(
      "work", "--units", units, {{"mm", quantity::Units::mm}, {"inch", quantity::Units::inch}});
  options.common = common.read("work");
  return options;
}

}  // namespace tinworm::verbs
