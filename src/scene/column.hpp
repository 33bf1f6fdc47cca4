// The column beside a sheet's drawing: verdict, the worst places,
// changed rules, key, what was not seen, the caution.
#pragma once

#include <string_view>

#include "scene/drafting.hpp"
#include "scene/further_pages.hpp"
#include "scene/sheet_key.hpp"
#include "scene/writer.hpp"

namespace tinworm::scene {

// Fills the column, and blank paper of the drawing with the key and the names of the numbers where
// there is room. Tells what found none and needs a page of its own, which will be called
// `overflow_page`.
Further draw_column(Drafting& drafting, const std::string& overflow_page);

// Its parts, for pictures of another shape.

// The line beside it, and the caution at its foot, whatever else there is. Returns what writes in
// the room over it.
Writer open_column(Drafting& drafting, std::string_view caution);

void write_verdict(Writer& writer, const weighing::Result& result);

// All of the rules that were changed, or where they are too many for the writer's area the names of
// as many as there is room for and how many more there are. True if they were shortened. With no
// overflow page the names stand alone.
bool write_rules(Writer& writer, const weighing::Result& result, const std::string& overflow_page);

}  // namespace tinworm::scene
