// The field sheet: paper to take under the car. In the order of a walk round, for every place that
// the body plan names: words to circle, room to write, where rust starts; of an earlier survey also
// what was found then, in grey. Black on white, letters of 9 points or more, rows of 9 mm, none
// torn over the end of a page. What is left blank was not looked at.
#pragma once

#include <string>
#include <vector>

#include "body/plan.hpp"
#include "scene/page.hpp"
#include "scene/sheet.hpp"
#include "survey/survey.hpp"

namespace tinworm::documents {

struct FieldSheetOptions {
  scene::Paper paper = scene::Paper::a4;  // a4 or letter
  std::string next_step;                  // how what was written becomes a survey: a sentence
};

// `before` is an earlier survey of the same body, or null. Nothing private of it is on the sheet.
std::vector<scene::Page> field_sheet(const body::Plan& plan, const survey::Survey* before,
                                     const FieldSheetOptions& options,
                                     const scene::Measure& measure);

}  // namespace tinworm::documents
