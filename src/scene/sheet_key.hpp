// The key written out: down a column, or on blank paper of the drawing.
#pragma once

#include <optional>
#include <vector>

#include "scene/legend.hpp"
#include "scene/writer.hpp"

namespace tinworm::scene {

// Set smaller where room is short, down to the least size there is; at last the steps by their
// names alone, two by two.
enum class Fit { roomy, close, brief };
void write_legend(Writer& writer, const Used& used, const rules::Rules& rules, Fit fit);

// A place of that size on the drawing with nothing drawn or written, as far right as there is.
std::optional<Area> blank_place(const Drafting& drafting, double width_mm, double height_mm);

// How the key is set on blank paper of the drawing, so that the column has room for words.
struct KeySetting {
  Area area;
  Fit fit = Fit::roomy;
  bool line_weights = true;
};

// No briefer than `least`, and clear of `taken` too; after all labels are seated.
std::optional<KeySetting> place_for_key(const Drafting& drafting, Fit least,
                                        const std::optional<Area>& taken = {});
void draw_key(Drafting& drafting, const KeySetting& setting);

// Swatches with their words, without a heading, that far apart.
void write_entries(Writer& writer, const std::vector<LegendEntry>& entries, const Style& style,
                   double between_mm);

}  // namespace tinworm::scene
