// The body plans compiled into the program, as the text of their files.
#pragma once

#include <string_view>
#include <vector>

namespace tinworm::body {

struct BuiltIn {
  std::string_view name;  // file name without ending, "two-door-saloon"
  std::string_view yaml;  // the whole file
};

// In order of name. Written by panels/compile-in.cmake at build time.
const std::vector<BuiltIn>& built_in_plans();

}  // namespace tinworm::body
