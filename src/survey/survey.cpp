#include "survey/survey.hpp"

#include <algorithm>

namespace tinworm::survey {

std::vector<Joint> Repair::joints() const {
  std::vector<Joint> all = other_joints;
  if (joint) all.insert(all.begin(), *joint);
  return all;
}

const Zone* Survey::zone(int number, const std::string& key) const {
  if (!key.empty()) {
    const OwnZone* its_own = own_zone(key);
    return its_own ? &its_own->zone : nullptr;
  }
  const auto found = zones.find(number);
  return found == zones.end() ? nullptr : &found->second;
}

const OwnZone* Survey::own_zone(std::string_view key) const {
  const auto found = std::ranges::find(own, key, &OwnZone::key);
  return found == own.end() ? nullptr : &*found;
}

}  // namespace tinworm::survey
