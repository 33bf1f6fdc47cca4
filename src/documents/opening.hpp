// The first page: what an owner asks first, answered on half of it, and a small map.
#pragma once

#include <string>

#include "documents/paper.hpp"
#include "history/comparison.hpp"
#include "weighing/result.hpp"
#include "work/plan.hpp"

namespace tinworm::documents {

// `contents`: where the rest stands, in one line or two at its end.
scene::Page opening(const weighing::Result& result, const work::Plan& plan,
                    const history::Comparison* before, const Paper& paper,
                    const std::string& contents, const scene::Measure& measure);

}  // namespace tinworm::documents
