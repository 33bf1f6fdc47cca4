#include "survey/signs.hpp"

namespace tinworm::survey {

bool holed(const Spot& spot) {
  return spot.hole || spot.rust == Rust::hole;
}

bool gives(const Spot& spot) {
  return spot.hand == Hand::gives || spot.tap == Tap::crunches;
}

bool breaks(const Spot& spot) {
  return spot.hand == Hand::breaks || spot.probe == Probe::goes_in;
}

bool gives_way(const Spot& spot) {
  return gives(spot) || breaks(spot);
}

}  // namespace tinworm::survey
