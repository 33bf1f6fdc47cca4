// Whether an output came from a survey as it stands: by the fingerprint that every output carries.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace tinworm::verbs {

// The fingerprint of the survey that `output` was made of, as it is written there: all 64 digits of
// SHA-256 in JSON and in the metadata of pictures, the first 12 in text. None where it has none.
std::optional<std::string> fingerprint_in(std::string_view output);

struct Match {
  bool same = false;
  std::string text;  // a sentence for the user
};

// `output_file` and `survey_file` as named on the command line.
Match match(std::string_view output, const std::string& output_file, const std::string& sha256,
            const std::string& survey_file);

}  // namespace tinworm::verbs
