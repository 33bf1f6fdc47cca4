// What the method needs to know of one zone: the plan's and the survey's word on it, side by side.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "body/plan.hpp"
#include "metal/thickness.hpp"
#include "rules/rules.hpp"
#include "survey/survey.hpp"
#include "weighing/result.hpp"

namespace tinworm::weighing {

struct ZoneFacts {
  int number = 0;   // 0 for an own zone
  std::string own;  // key of an own zone
  std::string name;
  body::Role role = body::Role::skin;
  body::Side side = body::Side::centre;
  const body::Zone* plan = nullptr;     // null for an own zone
  const survey::Zone* entry = nullptr;  // null where the survey has none
  survey::Seen seen;

  bool fitted() const { return seen.word != survey::SeenWord::not_fitted; }
  bool is_seen() const;  // bare, coated, part or scope
  bool load_bearing() const { return role != body::Role::skin; }
  bool has_inside() const;   // a box or layers
  bool inside_seen() const;  // true where there is no inside
};

// Every zone of the plan by number, then own zones in file order. Points into `survey`.
std::vector<ZoneFacts> zone_facts(const survey::Survey& survey);

// "outer sill, left (51)", "sunroof tray (own-a)".
std::string title(const ZoneFacts& zone);
std::string title(const Zone& zone);

}  // namespace tinworm::weighing
