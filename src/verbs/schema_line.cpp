#include "verbs/lines.hpp"

#include <fmt/format.h>

#include "verbs/command_error.hpp"
#include "verbs/line_parts.hpp"
#include "verbs/verb_line.hpp"

namespace tinworm::verbs {

Command parse_schema(const Arguments& arguments) {
  SchemaOptions options;
  VerbLine line(
      "schema",
      "Prints the JSON Schema (draft 2020-12) of a kind of file, so that an editor completes "
      "words and marks mistakes while one writes.",
      "survey|body|rules");
  line.example("tinworm schema survey > survey.schema.json",
               "for a survey's first line, # yaml-language-server: $schema=survey.schema.json");
  const Arguments words = line.parse(arguments);
  if (line.help_wanted()) return Shown{line.help()};
  if (words.size() != 1) {
    throw CommandError("schema", fmt::format("takes one kind of file, not {}", words.size()),
                       "tinworm schema survey, body or rules");
  }
  options.of = choice<Described>(
      "schema", "schema", words.front(),
      {{"survey", Described::survey}, {"body", Described::body}, {"rules", Described::rules}});
  return options;
}

}  // namespace tinworm::verbs
