#include "scene/chart_key.hpp"

#include <fmt/format.h>

#include "scene/setting.hpp"

namespace tinworm::scene {

std::vector<LegendEntry> key_of(const ChartParts& used, double limit_share) {
  const double y = swatch_height_mm / 2, middle = swatch_width_mm / 2;
  const auto line = [&](std::string words, const Stroke& stroke) {
    return LegendEntry{
        std::move(words), "", {Shape{{segment({0, y}, {swatch_width_mm, y})}, {}, stroke}}};
  };
  std::vector<LegendEntry> entries{
      {"metal left, with its 95 % range",
       "",
       {Shape{{segment({middle, 0.2}, {middle, swatch_height_mm - 0.2}),
               segment({middle - cap_mm, 0.2}, {middle + cap_mm, 0.2}),
               segment({middle - cap_mm, swatch_height_mm - 0.2},
                       {middle + cap_mm, swatch_height_mm - 0.2})},
              {},
              bar_stroke},
        Shape{{circle({middle, y}, point_mm, 24)}, ink, {}}}}};
  if (used.sheet) entries.push_back(line("sheet as it was", sheet_stroke));
  if (used.limit)
    entries.push_back(
        line(fmt::format("limit for load-bearing sheet, {:.4g} % of the sheet", 100 * limit_share),
             limit_stroke));
  if (used.repair)
    entries.push_back(
        {"repaired, a new history starts",
         "",
         {Shape{{segment({middle, 0}, {middle, swatch_height_mm})}, {}, repair_stroke}}});
  if (used.band)
    entries.push_back(
        {"planning range, no date of failure",
         "",
         {Shape{
              {Polyline{{{0, y}, {swatch_width_mm, 0.3}, {swatch_width_mm, swatch_height_mm - 0.1}},
                        true}},
              band_fill,
              {}},
          Shape{{segment({0, y}, {swatch_width_mm, 0.3}),
                 segment({0, y}, {swatch_width_mm, swatch_height_mm - 0.1})},
                {},
                band_stroke}}});
  return entries;
}

}  // namespace tinworm::scene
