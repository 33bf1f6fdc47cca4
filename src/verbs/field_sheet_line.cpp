#include <fmt/format.h>

#include "verbs/command_error.hpp"
#include "verbs/line_parts.hpp"
#include "verbs/lines.hpp"
#include "verbs/verb_line.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {

Command parse_field_sheet(const Arguments& arguments) {
  FieldSheetOptions options;
  CommonLine common;
  std::string path, as, paper;
  VerbLine line("field-sheet",
                "Writes paper to take under the car: every place of the body in the order of a "
                "walk round, with words to circle and room to write. Of an earlier survey (or a "
                "report that carries one) it also has, in grey, what was found last time and how "
                "to find the point again. Nothing private is on it.",
                "BODY|SURVEY");
  line.option("-o", "FILE", path, "where to, a .pdf");
  line.option("--as", "pdf", as, "the same, for -o -");
  line.option("--paper", "a4|letter", paper, "a4 unless given; upright");
  common.declare(line);
  line.example("tinworm field-sheet two-door-saloon -o sheet.pdf",
               "for a car nobody looked at yet");
  line.example("tinworm field-sheet wherry-2025.yaml -o sheet.pdf", "for its next visit");
  const std::vector<std::string> words = line.parse(arguments);
  if (line.help_wanted()) return Shown{line.help()};
  if (words.empty())
    throw CommandError("field-sheet", "a body or a survey is missing",
                       "tinworm field-sheet two-door-saloon -o sheet.pdf");
  if (words.size() > 1)
    throw CommandError("field-sheet", fmt::format("takes one body or survey, not {}", words.size()),
                       "tinworm field-sheet two-door-saloon -o sheet.pdf");
  options.of = words.front();
  if (path.empty())
    throw CommandError("field-sheet", "where to write is missing",
                       fmt::format("tinworm field-sheet {} -o sheet.pdf", yaml::shown(options.of)));
  options.to = destination({"field-sheet", path, as, "--as", {Kind::pdf}, false});
  options.paper =
      choice<scene::Paper>("field-sheet", "--paper", paper,
                           {{"a4", scene::Paper::a4}, {"letter", scene::Paper::letter}});
  options.common = common.read("field-sheet");
  return options;
}

}  // namespace tinworm::verbs
