// What an owner asks first, answered in a few words from the survey and the plan of work.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "history/comparison.hpp"
#include "weighing/result.hpp"
#include "work/plan.hpp"

namespace tinworm::documents {

// "Not settled: what nobody saw could forbid it". Never a plain yes: law and licensed inspection
// decide.
std::string may_it_be_driven(const weighing::Result& result);
std::string verdict_line(const weighing::Result& result);  // the verdict and what it rests on

struct WorstPlace {
  std::string title;   // "Outer sill, left (51), rear end: thin"
  std::string detail;  // "79 % of the metal left (77 to 82), measured; near the belt anchorage"
  std::string link;    // to its finding
};
std::vector<WorstPlace> worst_places(const weighing::Result& result, std::size_t most);
std::string finding_place(const weighing::Spot& spot);  // the name of its finding, for links

// The first parts that could make the verdict worse, or where none could, add to the work; then
// what was not seen at all. Of each some, and how many more.
std::vector<std::string> unseen_lines(const weighing::Result& result, std::size_t most);

// In order: what to open up; what to cut, known to be past its limit, or where nothing is, to
// measure. Never empty.
std::vector<std::string> first_lines(const weighing::Result& result, const work::Plan& plan,
                                     std::size_t most);
// What feeds the rust today: drains, wet packing, salt. By common practice.
std::vector<std::string> stop_lines(const weighing::Result& result, std::size_t most);

// "By 2026-04 (12 months, as is usual …). By this survey alone: …"
// By `before`, that survey with earlier ones, where there are any; may be null.
std::string look_again(const weighing::Result& result, const history::Comparison* before);

}  // namespace tinworm::documents
