// What a survey tells beside its findings, in the words of the papers: one line for each fact, in
// the order of the file. Text, JSON and the report print these lines, so that whatever may be
// written comes out.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "survey/survey.hpp"

namespace tinworm::survey {

enum class Reader { owner, anybody };  // whether private facts may be told

struct Told {
  std::string_view key;  // as in the survey: "engine-number"
  std::string label;     // "Engine number"
  std::string text;
};

// Of the car, the visit and what was used; its name, year and odometer are of every paper's title.
std::vector<Told> told_of_car(const Survey& survey, Reader reader);

// Of a zone as a whole: its inside, drain holes and marks.
std::vector<Told> told_of_zone(const Zone& zone);

// Of a zone of the survey's own: where it is and what it carries.
std::string told_of_own(const OwnZone& own);

std::string gap_text(const Gap& gap);  // "left door rear edge, left: 4.5 mm on its wheels, …"
std::string opened_text(const Opened& cut);  // "rear end, 2025-09: metal 0.40 mm; membrane gone"

// "at-once", "2025-10", "65000 mi"; empty where it isn't said.
std::string when_word(const Also& item);
// "at once", "before it is driven", "by 2025-10", "by 65000 mi", "at the next survey".
std::string when_text(const Also& item);
bool is_at_once(const Also& item);
bool is_before_use(const Also& item);  // at once too

}  // namespace tinworm::survey
