// The command line of each verb, read into its options. Arguments are those after the verb. Each
// throws CommandError, and looks at the disk only to tell folders from files.
#pragma once

#include "verbs/command_line.hpp"

namespace tinworm::verbs {

using Arguments = std::vector<std::string>;

Command parse_bodies(const Arguments& arguments);
Command parse_start(const Arguments& arguments);
Command parse_field_sheet(const Arguments& arguments);
Command parse_check(const Arguments& arguments);
Command parse_weigh(const Arguments& arguments);
Command parse_map(const Arguments& arguments);
Command parse_compare(const Arguments& arguments);
Command parse_due(const Arguments& arguments);
Command parse_work(const Arguments& arguments);
Command parse_report(const Arguments& arguments);
Command parse_listing(const Arguments& arguments);
Command parse_schema(const Arguments& arguments);

}  // namespace tinworm::verbs
