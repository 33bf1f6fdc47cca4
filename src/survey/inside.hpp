// What a zone says of its inside, its drain holes and its measured places beside one word.
#pragma once

#include <string>
#include <vector>

#include "survey/page.hpp"

namespace tinworm::survey {

// `scoped`, `part 40 %`, `not-seen`, `hidden`.
void read_inside(Page& page, const yaml::Node& node, Zone& zone);
std::string inside_text(const Zone& zone);  // as it is written; empty where nothing is said

// `open`; by place `{front end: blocked, rear end: open}` or `front end blocked, rear end open`.
// The zone's own word is then the worst of them: blocked or plugged before open.
void read_drains(Page& page, const yaml::Node& node, Zone& zone);
std::string drains_text(const Zone& zone);

// `{rear end: "140 behind the jack socket, 25 above the seam, photo 31"}`.
std::vector<Mark> read_marks(Page& page, const yaml::Node& node);
std::string marks_text(const std::vector<Mark>& marks);  // "rear end: 140 behind …; …"

}  // namespace tinworm::survey
