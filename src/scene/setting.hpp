// Setting words: breaking them into lines, cutting what is too long, running down a column.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "scene/page.hpp"

namespace tinworm::scene {

struct Style {
  double size_pt = 7;
  Font font = Font::regular;
  Colour colour = black;
  Says says = Says::words;
  double leading = 1.22;  // line height over size
};

double line_height_mm(const Style& style);

// Keeps a figure with its unit where lines are broken; a plain space once it is set.
constexpr std::string_view no_break = "\u00a0";
std::string plain_spaces(std::string_view text);

// Lines no wider than `width_mm`, broken at spaces and hyphens; a single word that is too long is
// broken where it must be. Never empty unless `text` is.
std::vector<std::string> wrap(std::string_view text, const Style& style, double width_mm,
                              const Measure& measure);

// `text` itself if it fits, else its beginning and "…".
std::string cut(std::string_view text, const Style& style, double width_mm, const Measure& measure);

// One run of text with the area it covers.
Text set(std::string_view text, const Style& style, At baseline, Align align,
         const Measure& measure);

// At most `most` lines of `text`, the last one cut if there is more, from `top_left` down. Returns
// the height used.
double set_block(Layer& layer, std::string_view text, const Style& style, At top_left,
                 double width_mm, const Measure& measure, int most = 1000);

// The whole code points of `text` from its start within `bytes`.
std::size_t whole_characters(std::string_view text, std::size_t bytes);

}  // namespace tinworm::scene
