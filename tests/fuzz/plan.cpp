// Any bytes as a body plan: read, and checked where they are one.
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "body/checker.hpp"
#include "body/reader.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(bytes), size);
  const auto reading = tinworm::body::read_plan(text);
  if (!reading.plan && reading.problems.empty()) std::abort();  // refused, and nothing said
  tinworm::yaml::to_text(reading.problems, "fuzz.yaml", text);
  if (reading.plan) tinworm::body::check_plan(*reading.plan);
  return 0;
}
