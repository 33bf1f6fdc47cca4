#include "survey/named_photos.hpp"

#include <algorithm>

namespace tinworm::survey {
namespace {

void gather(const Zone& zone, std::vector<Photo>& photos) {
  const auto add = [&](const std::vector<Photo>& more) {
    photos.insert(photos.end(), more.begin(), more.end());
  };
  add(zone.photos);
  for (const Spot& spot : zone.found) add(spot.photos);
  for (const Repair& repair : zone.repairs) add(repair.photos);
}

}  // namespace

std::vector<Photo> named_photos(const Survey& survey) {
  std::vector<Photo> photos;
  for (const auto& [number, zone] : survey.zones) gather(zone, photos);
  for (const OwnZone& own : survey.own) gather(own.zone, photos);
  std::ranges::stable_sort(photos, {}, &Photo::place);
  return photos;
}

}  // namespace tinworm::survey
