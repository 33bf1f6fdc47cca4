#include "verbs/lines.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "survey/field_sheet.hpp"
#include "verbs/command_error.hpp"
#include "verbs/destination.hpp"
#include "verbs/line_parts.hpp"
#include "verbs/verb_line.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {

namespace {

// What ends otherwise would be taken for another kind of file, and by `check FOLDER` for none.
void require_name(const std::string& path, bool blank) {
  if (path == "-") return;
  if (names_folder(path)) {
    const bool slash = path.ends_with('/');
    throw CommandError(
        "start", fmt::format("{} is a folder", yaml::shown(path)),
        fmt::format("Name the file too: -o {}{}survey.yaml", yaml::shown(path), slash ? "" : "/"));
  }
  const std::string ending = ending_of(path);
  const bool fits = blank ? ending == "csv" : ending == "yaml" || ending == "yml";
  if (fits) return;
  const std::string stem = path.substr(0, path.size() - (ending.empty() ? 0 : ending.size() + 1));
  if (blank)
    throw CommandError("start",
                       fmt::format("--blank writes a sheet for a spreadsheet, which ends in .csv, "
                                   "not {}",
                                   yaml::shown(path)),
                       fmt::format("Name it so: -o {}.csv", yaml::shown(stem)));
  throw CommandError(
      "start",
      fmt::format("writes a survey, which ends in .yaml or .yml, not {}", yaml::shown(path)),
      fmt::format("Name it so: -o {}.yaml", yaml::shown(stem)));
}

}  // namespace

Command parse_start(const Arguments& arguments) {
  StartOptions options;
  CommonLine common;
  std::string path, units;
  VerbLine line("start",
                "Writes a survey to fill in: every zone of a body in the order of a walk round the "
                "car, with where rust starts and what to measure. Never replaces a file.",
                "[BODY]");
  line.option("-o", "FILE", path, "where to; standard output unless given");
  line.option("--from", "SURVEY", options.from,
              "an earlier survey of the car: keeps names, stations, references and repairs, and "
              "shows its readings beside the blanks");
  line.option("--from-csv", "SHEET", options.from_csv,
              "a sheet typed into a spreadsheet: a row for each place, repair or reference, with "
              "headings");
  line.flag("--blank", options.blank,
            "rows for a spreadsheet to fill in, every zone and station in walk-round order");
  line.option("--car", "NAME", options.car, "what the car is called");
  line.option("--date", "DATE", options.date, "of the visit: 2025-04-12; today unless given");
  line.option("--units", "mm|inch", units, "of the lengths you will write; mm unless given");
  common.declare(line);
  line.example("tinworm start two-door-saloon --car \"Wherry 1200\" -o wherry.yaml",
               "a new survey");
  line.example("tinworm start --from wherry-2025.yaml -o wherry-2029.yaml", "the same car again");
  line.example("tinworm start two-door-saloon --blank -o sheet.csv", "rows for a spreadsheet");
  line.example("tinworm start two-door-saloon --from-csv sheet.csv -o wherry.yaml",
               "from a spreadsheet; headings: " +
                   fmt::format("{}", fmt::join(survey::sheet_headings(), ", ")));
  const Arguments words = line.parse(arguments);
  if (line.help_wanted()) return Shown{line.help()};
  if (words.size() > 1)
    throw CommandError("start", fmt::format("takes one body, not {}", words.size()));
  if (!words.empty()) options.body = words.front();
  if (!options.from.empty() && !options.from_csv.empty())
    throw CommandError("start", "--from and --from-csv don't go together", "Leave one out.");
  if (options.blank && (!options.from.empty() || !options.from_csv.empty()))
    throw CommandError("start", "--blank goes with a body alone", "Leave the other option out.");
  if (options.body.empty() && options.from.empty())
    throw CommandError("start", "the body is missing",
                       "tinworm bodies lists them: tinworm start two-door-saloon -o survey.yaml");
  if (!options.from.empty() && !units.empty())
    throw CommandError("start", "--units doesn't go with --from, which keeps the survey's",
                       "Leave one out.");
  options.units = choice<quantity::Units>(
      "start", "--units", units, {{"mm", quantity::Units::mm}, {"inch", quantity::Units::inch}});
  if (!path.empty()) options.path = path;
  require_name(options.path, options.blank);
  keep_apart("start", {options.from, options.from_csv}, {options.path});
  options.common = common.read("start");
  return options;
}

}  // namespace tinworm::verbs
