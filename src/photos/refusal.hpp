// Why a file can't be used as a photo. Whoever knows where the photo is named adds the place.
#pragma once

#include <string>

namespace tinworm::photos {

struct Refusal {
  std::string what;     // a clause: "the photo is cut short"
  std::string allowed;  // may be empty
  std::string cure;     // may be empty
  bool operator==(const Refusal&) const = default;
};

}  // namespace tinworm::photos
