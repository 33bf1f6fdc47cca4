// Names of parts beside their numbers: who reads a drawing has no key sheet.
#pragma once

#include <set>
#include <string>
#include <vector>

#include "weighing/result.hpp"

namespace tinworm::scene {

struct PartName {
  std::string numbers;      // "41 42": pairs once
  std::string name, whole;  // whole: with the other word for it, "front wing (fender)"
};

// Of the plan's zones among `zones`, by number.
std::vector<PartName> part_names(const body::Plan& plan, const std::set<int>& zones);

// "69 70 seat box, 15 battery tray": in the order given, a pair where its first stands.
std::string numbers_and_names(const weighing::Result& result, const std::vector<int>& zones);

// What would change the verdict most if it were rotten comes first: as to be opened up, then main
// parts, local ones, skin.
std::vector<int> by_consequence(const weighing::Result& result, std::vector<int> zones);

}  // namespace tinworm::scene
