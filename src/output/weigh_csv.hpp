// A result as comma-separated values: for each survey a row of each burden (kind `structure`,
// `skin`, `shell`), of each zone (`zone`) and of each spot (`spot`). `value`, `low` and `high` are
// a burden's or the share of metal left; an empty field is not known or does not apply.
#pragma once

#include <string>

#include "weighing/result.hpp"

namespace tinworm::output {

std::string weigh_csv_header();
std::string weigh_csv_rows(const weighing::Result& result);

}  // namespace tinworm::output
