#include "scene/worst_list.hpp"

#include <algorithm>

#include <algorithm>

#include <fmt/format.h>

#include "scene/figure.hpp"
#include "scene/naming.hpp"
#include "scene/palette.hpp"
#include "weighing/words.hpp"

namespace tinworm::scene {
namespace {

constexpr double indent_mm = 4.2;
constexpr Style letter_style{7, Font::bold, white, Says::rank, 1.15};
constexpr Style name_style{7, Font::bold, black, Says::callout, 1.15};
constexpr Style detail_style{6.5, Font::regular, black, Says::callout, 1.15};

// Set close, a figure says by its sign alone whether it was judged.
std::string detail_of(const weighing::Result& result, const weighing::Spot& spot, Fit fit) {
  std::string text = "repair that can\u2019t be relied on";
  if (!spot.is_repair) {
    const std::string figure = figure_words(result, spot);
    text = spot.name.empty() ? step_words(spot) : spot.name + ": " + step_words(spot);
    if (figure != step_words(spot)) text += ", " + figure;
  }
  if (const std::string signs = weighing::signs_text(spot); !signs.empty()) text += "; " + signs;
  if (fit == Fit::roomy) {
    if (!spot.is_repair) text += fmt::format(", {}", evidence_words(spot.evidence));
    if (const std::string near = near_words(spot); !near.empty()) text += "; " + near;
  }
  return fmt::format("{} \u00b7{}{:02}", text, no_break, spot.zone);
}

void write_entry(Writer& writer, const Drafting& drafting, const weighing::Spot& spot, Fit fit) {
  const weighing::Zone* zone = drafting.result.zone(spot.zone);
  if (zone == nullptr) return;
  const double top = writer.y;
  // The same flag as at the place: it needs no entry in the key.
  const Area flag{writer.area.x_mm, top + 0.2, 2.7, line_height_mm(name_style) - 0.1};
  writer.layer.items.push_back(Shape{{polyline(flag)}, ink, {}});
  writer.layer.items.push_back(set(letter_of(drafting.result, spot), letter_style,
                                   {flag.middle().x_mm, top + 0.8 * line_height_mm(name_style)},
                                   Align::centre, writer.measure));
  if (fit == Fit::brief) {
    // The largest hole alone is never all that is told, nor is stuffing kept back.
    const std::string signs = weighing::signs_text(spot);
    writer.block(fmt::format("{}: {}{}{} \u00b7{}{:02}", zone_name(*zone),
                             figure_words(drafting.result, spot), signs.empty() ? "" : "; ", signs,
                             no_break, spot.zone),
                 detail_style, indent_mm);
    writer.y = std::max(writer.y, top + line_height_mm(name_style)) + 0.2;
    return;
  }
  writer.block(zone_name(*zone), name_style, indent_mm);
  writer.block(detail_of(drafting.result, spot, fit), detail_style, indent_mm);
  if (fit == Fit::roomy) writer.y += 0.4;
}

}  // namespace

void write_worst(Writer& writer, const Drafting& drafting, Fit fit, std::size_t most,
                 const std::string& overflow_page) {
  const auto& lettered = drafting.lettered;
  if (lettered.empty()) return;
  writer.rule();
  writer.block("Worst first", heading_style);
  for (std::size_t i = 0; i < std::min(most, lettered.size()); ++i)
    write_entry(writer, drafting, *lettered[i], fit);
  if (lettered.size() > most) {
    writer.block(fmt::format("From {} on: page {}.", letter_of(drafting.result, *lettered[most]),
                             overflow_page),
                 detail_style, indent_mm);
  }
  writer.y += apart_mm * 0.4;
}

std::string worst_line(const weighing::Result& result, const weighing::Spot& spot) {
  const weighing::Zone* zone = result.zone(spot.zone);
  return fmt::format("{}  {}: {}", letter_of(result, spot), zone == nullptr ? "" : zone_name(*zone),
                     detail_of(result, spot, Fit::roomy));
}

}  // namespace tinworm::scene
