#include "verbs/line_parts.hpp"
#include "verbs/lines.hpp"
#include "verbs/verb_line.hpp"

namespace tinworm::verbs {

Command parse_due(const Arguments& arguments) {
  DueOptions options;
  CommonLine common;
  std::string format, as, path;
  VerbLine line(
      "due",
      "Lists the cars of an archive by when they are next to be looked at, and why then. "
      "All surveys in the folder, and in folders in it, are read; those of one car are "
      "set side by side, and the newest counts. Cars go by name; nothing private is told.",
      "FOLDER…");
  line.option("-o", "FILE", path, "where to; the ending tells the kind (.txt .json .csv)");
  line.option("--format", "text|json|csv", format, "kind of output; text unless given");
  line.option("--as", "text|json|csv", as, "the same, for -o -");
  common.declare_rules(line);
  common.declare(line);
  common.declare_jobs(line);
  line.example("tinworm due surveys/", "who is to be written to this month");
  line.example("tinworm due surveys/ -o due.csv", "a table for a spreadsheet");
  options.folders = line.parse(arguments);
  if (line.help_wanted()) return Shown{line.help()};
  require_files("due", options.folders);
  const auto [kind, option] = kind_option("due", format, as);
  options.to = destination({"due", path, kind, option, {Kind::text, Kind::json, Kind::csv}, false});
  options.common = common.read("due");
  return options;
}

}  // namespace tinworm::verbs
