#include "documents/paper.hpp"

#include <fmt/format.h>

#include "documents/typography.hpp"

namespace tinworm::documents {
namespace {

constexpr double left_mm = 22, right_mm = 15, top_mm = 15, foot_mm = 24;
constexpr double under_foot_mm = 9;

scene::PaperSize size_of_text(scene::Paper drawings) {
  return scene::size_of(drawings == scene::Paper::letter ? scene::Paper::letter : scene::Paper::a4);
}

Paper of_size(double width_mm, double height_mm) {
  return {width_mm,
          height_mm,
          {left_mm, top_mm, width_mm - left_mm - right_mm, height_mm - top_mm - foot_mm}};
}

}  // namespace

Paper upright(scene::Paper drawings) {
  const scene::PaperSize size = size_of_text(drawings);
  return of_size(size.height_mm, size.width_mm);  // drawings lie on their side
}

Paper lying(scene::Paper drawings) {
  const scene::PaperSize size = size_of_text(drawings);
  return of_size(size.width_mm, size.height_mm);
}

scene::Page blank_page(const Paper& paper) {
  scene::Page page;
  page.width_mm = paper.width_mm;
  page.height_mm = paper.height_mm;
  page.frame = {left_mm, top_mm, paper.text.width_mm, paper.height_mm - top_mm - under_foot_mm};
  page.layer("text");
  return page;
}

void write_foot(scene::Page& page, const Paper& paper, const Foot& foot, std::size_t number,
                std::size_t pages, const scene::Measure& measure) {
  page.label = fmt::format("{}", number);
  scene::Layer& layer = page.layer("foot");
  const scene::Area& text = paper.text;
  const double top = text.bottom() + 4;
  layer.items.push_back(scene::Shape{{scene::segment({text.x_mm, top}, {text.right(), top})},
                                     {},
                                     scene::Stroke{scene::ink, 0.5, {}}});
  const double used = scene::set_block(layer, foot.caution, caution_style, {text.x_mm, top + 1.2},
                                       text.width_mm, measure);
  const double baseline = top + 1.2 + used + scene::line_height_mm(note_style);
  const std::string count = fmt::format("page {} of {}", number, pages);
  scene::Text right = scene::set(count, small_heading_style, {text.right(), baseline},
                                 scene::Align::right, measure);
  const double room = text.width_mm - right.area.width_mm - 4;
  layer.items.push_back(scene::set(scene::cut(foot.of, note_style, room, measure), note_style,
                                   {text.x_mm, baseline}, scene::Align::left, measure));
  layer.items.push_back(std::move(right));
}

}  // namespace tinworm::documents
