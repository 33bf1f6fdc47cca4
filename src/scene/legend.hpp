// The key beside a sheet: only what its drawing uses, in words.
#pragma once

#include <string>
#include <vector>

#include "scene/drafting.hpp"
#include "scene/setting.hpp"

namespace tinworm::scene {

// What an entry is of, for those who say it otherwise or leave it out; never its words.
enum class KeySign {
  sound,
  step,           // the others, as the method has them
  step_by_rules,  // one whose words follow changed rules
  ground,         // bare, or under coating
  part,           // only part was seen, or not its inside
  judged_edge,
  symbol,
  open_mark,
  station,
  rank,
  repair,
  other
};

struct LegendEntry {
  std::string words;         // bold part: "thin"
  std::string meaning;       // "past the limit for metal that carries"
  std::vector<Item> swatch;  // within 9 x 3.4 mm, from (0, 0)
  KeySign sign = KeySign::other;
};

constexpr double swatch_width_mm = 9, swatch_height_mm = 3.4;

// `rules`: those the car was weighed by, for the figures among the words.
std::vector<LegendEntry> legend_of(const Used& used, const rules::Rules& rules);

void add_swatch(Layer& layer, const LegendEntry& entry, At top_left);

// Swatches with their bold parts alone, side by side, broken into lines where they must. Returns
// the height used.
double set_key_row(Layer& layer, const std::vector<LegendEntry>& entries, const Style& style,
                   const Area& area, const Measure& measure);

}  // namespace tinworm::scene
