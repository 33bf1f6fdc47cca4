// Every photo that a survey names.
#pragma once

#include <vector>

#include "survey/survey.hpp"

namespace tinworm::survey {

// Of zones, spots and repairs, own zones too, in order of place; one named twice comes twice.
std::vector<Photo> named_photos(const Survey& survey);

}  // namespace tinworm::survey
