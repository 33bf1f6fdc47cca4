// A photo's file beside its survey.
#pragma once

#include <string>

#include <tl/expected.hpp>

#include "photos/refusal.hpp"
#include "survey/survey.hpp"

namespace tinworm::verbs {

// The folder that a survey's photos go from.
std::string folder_of(const std::string& survey_file);

// The path, from `folder` too, at which the photo lies: as the survey has it, else with the zeros
// that its camera put before the number ("IMG_0014.jpg" for 14 of "IMG_{}.jpg"), where one such
// file alone is there; likewise where `folder` is itself the one that the survey keeps its photos
// in; else as the survey has it.
std::string photo_path(const std::string& folder, const survey::PhotoFolder& photos,
                       const std::string& path);

// The bytes of the file at `path`, relative to `folder`. Refused where there is none, it can't be
// read, is no plain file, is larger than photos/limits.hpp has it, or is led out of the folder by a
// link.
tl::expected<std::string, photos::Refusal> read_photo(const std::string& folder,
                                                      const std::string& path);

}  // namespace tinworm::verbs
