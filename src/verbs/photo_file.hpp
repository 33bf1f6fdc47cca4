// A photo's file beside its survey.
#pragma once

#include <string>

#include <tl/expected.hpp>

#include "photos/refusal.hpp"

namespace tinworm::verbs {

// The folder that a survey's photos go from.
std::string folder_of(const std::string& survey_file);

// The bytes of the file at `path`, relative to `folder`. Refused where there is none, it can't be
// read, is no plain file, is larger than photos/limits.hpp has it, or is led out of the folder by a
// link.
tl::expected<std::string, photos::Refusal> read_photo(const std::string& folder,
                                                      const std::string& path);

}  // namespace tinworm::verbs
