// The key written out: down a column, or on blank paper of the drawing.
#pragma once

#include <vector>

#include "scene/legend.hpp"
#include "scene/writer.hpp"

namespace tinworm::scene {

// Set smaller where room is short, down to the least size there is; at last the steps by their
// names alone, two by two.
enum class Fit { roomy, close, brief };
void write_legend(Writer& writer, const Used& used, const rules::Rules& rules, Fit fit);

// So that the column has room for words: true if there was a blank place for the key, set no
// briefer than `least`. After all labels are seated.
bool draw_key_on_sheet(Drafting& drafting, Fit least);

// Swatches with their words, without a heading, that far apart.
void write_entries(Writer& writer, const std::vector<LegendEntry>& entries, const Style& style,
                   double between_mm);

}  // namespace tinworm::scene
