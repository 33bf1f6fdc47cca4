// The SHA-256 of a file (FIPS 180-4), by which a paper names the survey it came from.
#pragma once

#include <string>
#include <string_view>

namespace tinworm::output {

std::string sha256(std::string_view bytes);  // 64 lower-case hexadecimal digits

}  // namespace tinworm::output
