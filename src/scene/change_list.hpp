// Every change and every question in tables, for the pages after the pictures.
#pragma once

#include <vector>

#include "scene/comparison.hpp"

namespace tinworm::scene {

// Its rows link to the zones in `linked`, places of other pages such as "zone-51". `with_limits`:
// what was not seen and the changed rules in full, for maps that had no room for them.
std::vector<Page> change_list(const history::Comparison& comparison,
                              const ComparisonOptions& options,
                              const std::vector<std::string>& linked, bool with_limits,
                              const Measure& measure);

}  // namespace tinworm::scene
