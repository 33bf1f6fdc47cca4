#include "verbs/command_error.hpp"
#include "verbs/line_parts.hpp"
#include "verbs/lines.hpp"
#include "verbs/verb_line.hpp"

namespace tinworm::verbs {

Command parse_work(const Arguments& arguments) {
  WorkOptions options;
  CommonLine common;
  std::string format, as, path, paper, units;
  VerbLine line("work",
                "Says what to do in what order, and what sheet, hours and money it may take, as "
                "ranges, with what could double it. A plan to talk over, no quote. One line each "
                "for several surveys.",
                "SURVEY…");
  line.option("-o", "FILE", path, "where to; the ending tells the kind (.txt .json .csv .pdf)");
  line.option("--format", "text|json|csv", format, "kind of output; text unless given");
  line.option("--as", "text|json|csv|pdf", as, "the same, for -o -");
  line.option("--rates", "FILE", options.rates,
              "what work takes and costs where you are; every output names what it changes");
  line.option("--units", "mm|inch", units, "of lengths in text and PDF; mm unless given");
  line.option("--paper", "a4|letter", paper, "of a PDF; a4 unless given");
  common.declare_rules(line);
  common.declare(line);
  common.declare_jobs(line);
  line.example("tinworm work wherry-2025.yaml", "the tasks in order, and what they may take");
  line.example("tinworm work wherry-2025.yaml --rates mine.yaml",
               "by rates of your own, as in: {rates: 1, hour: 80, outer-sill: 10 14 20}");
  line.example("tinworm work wherry-2025.yaml -o work.csv", "a table for a spreadsheet");
  line.example("tinworm work wherry-2025.yaml -o work.pdf", "to hang up in the workshop");
  options.files = line.parse(arguments);
  if (line.help_wanted()) return Shown{line.help()};
  require_files("work", options.files);
  const auto [kind, option] = kind_option("work", format, as);
  options.to = destination(
      {"work", path, kind, option, {Kind::text, Kind::json, Kind::csv, Kind::pdf}, false});
  if (options.to.kind == Kind::pdf && are_many(options.files))
    throw CommandError("work", "a PDF holds the plan of one survey",
                       "tinworm work SURVEY.yaml -o work.pdf");
  if (options.to.kind != Kind::pdf && !paper.empty())
    throw CommandError("work", "--paper is for a PDF", "Name one with -o: work.pdf.");
  options.paper = choice<scene::Paper>(
      "work", "--paper", paper, {{"a4", scene::Paper::a4}, {"letter", scene::Paper::letter}});
  options.units = choice<quantity::Units>(
      "work", "--units", units, {{"mm", quantity::Units::mm}, {"inch", quantity::Units::inch}});
  options.common = common.read("work");
  return options;
}

}  // namespace tinworm::verbs
