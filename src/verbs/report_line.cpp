#include <fmt/format.h>

#include "verbs/command_error.hpp"
#include "verbs/line_parts.hpp"
#include "verbs/lines.hpp"
#include "verbs/verb_line.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {

Command parse_report(const Arguments& arguments) {
  ReportOptions options;
  CommonLine common;
  std::string path, as, paper, units;
  VerbLine line(
      "report",
      "Writes the owner's paper: whether it can be driven, the worst places, what nobody "
      "saw, what to do first and what it may take, all on the first page; then the "
      "sheets, the findings with their photos, repairs, the plan of work, the method. "
      "It holds the owner's name, the car's numbers and the price, and carries the survey "
      "itself, so that it may stand wherever that may: for a sale there is `listing`.",
      "SURVEY");
  line.option("-o", "FILE", path, "where to, a .pdf");
  line.option("--as", "pdf", as, "the same, for -o -");
  line.option("--rates", "FILE", options.rates,
              "what work takes and costs where you are; the paper names what it changes");
  line.several("--before", "OLD", options.before,
               "an earlier survey of the car, or a folder of them; give it for each. What changed "
               "since is a section then, and the date to look again rests on all of them");
  line.option("--photos", "DIR", options.photos,
              "where the photos lie, if not beside the survey or the paper that carries it");
  line.flag("--missing-photos", options.missing_photos,
            "go on where photos are missing or broken: a marked gap says why");
  line.option("--paper", "a4|a3|letter", paper,
              "of the sheets; a4 unless given. Text stands upright on a4 or letter");
  line.option("--units", "mm|inch", units, "of lengths; mm unless given");
  common.declare_rules(line);
  common.declare(line);
  common.declare_jobs(line);
  line.example("tinworm report wherry-2025.yaml -o wherry.pdf", "to print for the owner");
  line.example("tinworm report wherry-2025.yaml --before wherry-years -o wherry.pdf",
               "with what changed since the surveys in that folder");
  line.example("tinworm report wherry-2025.yaml --rates mine.yaml --missing-photos -o wherry.pdf",
               "by your rates, with gaps for photos that aren't at hand");
  const std::vector<std::string> files = line.parse(arguments);
  if (line.help_wanted()) return Shown{line.help()};
  require_files("report", files);
  if (are_many(files))
    throw CommandError("report", "takes one survey", "tinworm report SURVEY.yaml -o report.pdf");
  options.file = files.front();
  if (path.empty())
    throw CommandError("report", "where to write is missing",
                       fmt::format("tinworm report {} -o report.pdf", yaml::shown(options.file)));
  options.to = destination({"report", path, as, "--as", {Kind::pdf}, false});
  options.paper = choice<scene::Paper>(
      "report", "--paper", paper,
      {{"a4", scene::Paper::a4}, {"a3", scene::Paper::a3}, {"letter", scene::Paper::letter}});
  options.units = choice<quantity::Units>(
      "report", "--units", units, {{"mm", quantity::Units::mm}, {"inch", quantity::Units::inch}});
  options.common = common.read("report");
  return options;
}

}  // namespace tinworm::verbs
