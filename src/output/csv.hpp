// Comma-separated values (RFC 4180), safe to open in a spreadsheet.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace tinworm::output {

// One field. Quoted where it holds a comma, a quote or a line break. Text that a spreadsheet would
// run as a formula (it starts with = + - @, their full-width twins, tab or carriage return) gets an
// apostrophe before it; a plain number such as -0.5 stays as it is.
std::string csv_field(std::string_view text);

// One record, ended by CR LF as RFC 4180 has it.
std::string csv_record(const std::vector<std::string>& fields);

}  // namespace tinworm::output
