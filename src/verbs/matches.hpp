// Whether an output came from a survey as it stands: by the fingerprint that every output carries,
// a comparison those of all its surveys.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace tinworm::verbs {

// The fingerprints of the surveys that `output` was made of, each once, as they are written there:
// all 64 digits of SHA-256 in JSON and in the metadata of pictures, the first 12 in text. Several
// in a comparison; empty where it has none.
std::vector<std::string> fingerprints_in(std::string_view output);

struct Match {
  bool same = false;  // the survey is the one, or among those, that the output was made of
  std::string text;   // a sentence for the user
};

// `output_file` and `survey_file` as named on the command line.
Match match(std::string_view output, const std::string& output_file, const std::string& sha256,
            const std::string& survey_file);

}  // namespace tinworm::verbs
