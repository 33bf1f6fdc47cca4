// The column beside a sheet's drawing: verdict, key, what was not seen, the caution.
#pragma once

#include "scene/drafting.hpp"

namespace tinworm::scene {

// One line of the not-seen list: zones that share a reason.
struct NotSeenLine {
  std::vector<int> zones;
  std::string why;  // may be empty: nobody named them
};
std::vector<NotSeenLine> not_seen_lines(const weighing::Result& result);

// Fills the column; true if the reasons why zones were not seen found no room and need a page.
// Their numbers are always there. `overflow_page` is what that page will be called.
bool draw_column(Drafting& drafting, const std::vector<const weighing::Spot*>& called,
                 const std::string& overflow_page);

// The list with its reasons, on pages of its own.
std::vector<Page> not_seen_pages(const weighing::Result& result, const DiagramOptions& options,
                                 const Measure& measure);

}  // namespace tinworm::scene
