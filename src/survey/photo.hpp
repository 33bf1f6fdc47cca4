// Photos by number, through the survey's pattern, or by path; always inside the survey's folder.
#pragma once

#include <array>
#include <string_view>
#include <vector>

#include "survey/page.hpp"

namespace tinworm::survey {

constexpr std::array<std::string_view, 4> jpeg_endings{".jpg", ".jpeg", ".JPG", ".JPEG"};

// `photos: {folder: photos, name: "IMG_{}.jpg"}`; `{:04}` writes four digits at least
PhotoFolder read_photo_folder(Page& page, const yaml::Node& node);

// `14 15`, `14, 15`, `14-16`, or a list of numbers, ranges and paths.
std::vector<Photo> read_photos(Page& page, const yaml::Node& node);

// The paths of the same photo with more or fewer zeros before its number: "photos/IMG_0014.jpg" of
// "photos/IMG_14.jpg". None where it wasn't named by a number.
std::vector<std::string> with_other_zeros(const PhotoFolder& photos, std::string_view path);

}  // namespace tinworm::survey
