// What the first page leaves out where there is more to say than it holds: names are shortened,
// lists end with how many more there are.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "scene/writer.hpp"
#include "weighing/result.hpp"
#include "work/plan.hpp"

namespace tinworm::documents {

struct Brevity {
  std::size_t names;            // in a list
  std::size_t letters;          // of a name
  std::size_t before_use;       // lines for what is to be seen to before the car is driven
  std::size_t rules;            // lines for changed rules
  std::size_t free_letters;     // of free words: a place, an interest, a remark
  std::size_t summary_letters;  // of the surveyor's own words; whole under The car and the visit
};

// `text` itself, or its first letters with "…" in place of the rest; combining marks count.
std::string shortened(std::string_view text, std::size_t letters);

// The same with shorter names of zones and places; figures, sides and numbers stay.
weighing::Result shortened(weighing::Result result, std::size_t letters);
work::Plan shortened(work::Plan plan, std::size_t letters);

struct List {
  std::string head;  // "Before it is driven: "
  std::vector<std::string> items;
  std::string_view rest_in;  // the section that has all of them
};

// "head a; b; and 7 more under What else was seen.", as many items as stand in so many lines, one
// at least.
std::string listed(const List& list, const scene::Style& style, std::size_t lines,
                   const scene::Writer& writer);

}  // namespace tinworm::documents
