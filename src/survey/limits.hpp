// The range of every number a survey may hold: outside it a figure is a slip of pen or unit.
// Common practice: wide enough for any car, narrow enough that mm for inch is caught.
#pragma once

#include <string_view>

namespace tinworm::survey {

struct Range {
  std::string_view what;  // as messages call it: "a metal reading"
  double least;
  double most;
  std::string_view unit;
  bool of_sheet = false;       // a thickness of sheet metal: a gauge number may stand for it
  std::string_view cure = "";  // of a figure outside, where it has one of its own
};

constexpr Range metal_range{"a metal reading", 0, 12, "mm", true};  // 0: read through a hole
constexpr Range reference_range{"a reference reading", 0.1, 12, "mm", true};
constexpr Range sheet_range{"a sheet thickness", 0.3, 12, "mm", true};
constexpr Range pit_range{"a pit depth", 0.01, 12, "mm"};
constexpr Range film_range{"a coating thickness", 0, 20'000, "um"};
constexpr double thinnest_film_um = 2;  // but for 0: next to bare metal there is no coat
constexpr Range size_range{"a side of a size", 0.1, 5000, "mm"};
constexpr Range crack_range{"a crack's length", 0.1, 5000, "mm"};
constexpr Range position_range{"a position", -10'000, 10'000, "mm"};
constexpr Range layers_range{"a number of layers", 2, 9, ""};
constexpr Range gap_range{"a gap", 0, 200, "mm"};
constexpr Range uncertainty_range{"a gauge's uncertainty", 0.0005, 1, "mm"};
constexpr Range odometer_range{.what = "an odometer reading",
                               .least = 0,
                               .most = 1'609'344,  // a million miles
                               .unit = "km",
                               .cure =
                                   "over a million miles is a slip of the pen: look at the "
                                   "figures"};
constexpr Range built_range{"the year a car was built", 1885, 2199, ""};  // first motor car: 1885
constexpr Range money_range{"a price", 0.01, 1'000'000'000, ""};

constexpr std::size_t name_characters = 80;
constexpr std::size_t text_characters = 2000;
constexpr std::size_t summary_characters = 600;  // what the first page holds
constexpr std::size_t photo_digits = 9;
constexpr int most_photos_of_range = 100;  // 14-16; more is a slip

}  // namespace tinworm::survey
