// Any bytes as a survey: read, and weighed where they are one.
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include <nlohmann/json.hpp>

#include "fuzz/built_in_plan.hpp"
#include "output/weigh_json.hpp"
#include "survey/reader.hpp"
#include "weighing/weigh.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(bytes), size);
  const auto reading =
      tinworm::survey::read_survey(text, [](std::string_view) { return tinworm::built_in_plan(); });
  if (!reading.survey) {
    if (reading.problems.empty()) std::abort();  // refused, and nothing said
    tinworm::yaml::to_text(reading.problems, "fuzz.yaml", text);
    return 0;
  }
  tinworm::output::weigh_json(tinworm::weighing::weigh(*reading.survey, {})).dump();
  return 0;
}
