// Writes down a column: blocks of text one under the other, and rules between them.
#pragma once

#include <string_view>

#include "scene/palette.hpp"
#include "scene/setting.hpp"

namespace tinworm::scene {

inline constexpr Style heading_style{8, Font::bold, black, Says::legend, 1.3};
inline constexpr Style list_style{7, Font::regular, black, Says::words, 1.22};
inline constexpr Style not_seen_style{7, Font::regular, black, Says::not_seen, 1.22};
inline constexpr Style caution_style{6.5, Font::regular, black, Says::caution, 1.22};
constexpr double apart_mm = 2.2;  // between sections

struct Writer {
  Layer& layer;
  Area area;  // inside its margins
  double y;   // where the next block starts
  Measure measure;

  double room() const { return area.bottom() - y; }
  double height(std::string_view text, const Style& style) const {
    return line_height_mm(style) *
           static_cast<double>(wrap(text, style, area.width_mm, measure).size());
  }
  void block(std::string_view text, const Style& style, double indent_mm = 0) {
    y += set_block(layer, text, style, {area.x_mm + indent_mm, y}, area.width_mm - indent_mm,
                   measure);
  }
  void rule() {
    layer.items.push_back(
        Shape{{segment({area.x_mm, y}, {area.right(), y})}, {}, Stroke{faint_ink, 0.4, {}}});
    y += apart_mm * 0.7;
  }
};

}  // namespace tinworm::scene
