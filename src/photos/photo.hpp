// Photos as papers take them: plain values, no file and no library.
#pragma once

#include <map>
#include <string>

#include <tl/expected.hpp>

namespace tinworm::photos {

struct Prepared {  // ready to be put into a paper: baseline JPEG, upright, nothing but the picture
  std::string jpeg;
  int width_px = 0, height_px = 0;
  bool operator==(const Prepared&) const = default;
};

// By the path that the survey names; where there is no picture, why: a clause such as
// "there is no such photo". A paper marks the gap.
using Album = std::map<std::string, tl::expected<Prepared, std::string>>;

}  // namespace tinworm::photos
