// From the words of the command line to what is to be done.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "verbs/options.hpp"

namespace tinworm::verbs {

struct Shown {  // --help, --version: printed, and that is all
  std::string text;
};

using Command = std::variant<Shown, BodiesOptions, StartOptions, FieldSheetOptions, CheckOptions,
                             WeighOptions, MapOptions, CompareOptions, DueOptions, WorkOptions,
                             ReportOptions, ListingOptions, SchemaOptions>;

// `arguments` without the program's name. Throws CommandError. Looks at the disk only to tell
// folders from files.
Command parse_command_line(const std::vector<std::string>& arguments);

}  // namespace tinworm::verbs
