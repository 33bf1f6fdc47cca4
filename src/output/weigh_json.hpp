// A result as JSON. Keys stay once published; new ones may join. Lengths mm, films µm, fractions
// 0 to 1; a value that can't be given is null with its reason beside it, under `why`.
#pragma once

#include <string>

#include <nlohmann/json_fwd.hpp>

#include "weighing/result.hpp"

namespace tinworm::output {

nlohmann::ordered_json weigh_json(const weighing::Result& result);

enum class Lines { many, one };  // one: a line of newline-delimited JSON

// The document as text, ended by a newline. Bytes that are no UTF-8 (in file names) are replaced.
std::string json_text(const nlohmann::ordered_json& document, Lines lines);

}  // namespace tinworm::output
