#include "scene/ground.hpp"

#include "scene/palette.hpp"
#include "scene/texture.hpp"

namespace tinworm::scene {
namespace {

using survey::SeenWord;

constexpr double bold_mm = 0.5;  // of the diagonals of what was not seen

Shape whole(const std::vector<Polyline>& shape, Colour colour) {
  return {{polyline(bounds(shape).grown(0.5))}, colour, {}};
}

// Every other of the wide diagonals, and thinner.
std::vector<Shape> sparse_diagonals(const std::vector<Polyline>& shape) {
  std::vector<Shape> rows = strokes(Texture::wide_diagonals, shape, not_seen_mark);
  for (Shape& each : rows) {
    each.stroke->width_pt = 0.7;
    std::vector<Polyline> every_other;
    for (std::size_t i = 0; i < each.lines.size(); i += 2) every_other.push_back(each.lines[i]);
    each.lines = every_other;
  }
  return rows;
}

Shape crossed_out(const Area& area) {
  return {{segment({area.x_mm, area.y_mm}, {area.right(), area.bottom()}),
           segment({area.right(), area.y_mm}, {area.x_mm, area.bottom()})},
          {},
          Stroke{faint_ink, 0.4, {}}};
}

}  // namespace

SeenAs seen_as(const weighing::Zone& zone) {
  if (!zone.fitted) return SeenAs::not_fitted;
  if (zone.step == weighing::Step::not_seen) return SeenAs::not_seen;
  if (zone.seen_share < 0.995 || zone.inside == survey::word(survey::Inside::not_seen))
    return SeenAs::in_part;
  const bool covered = zone.seen.word == SeenWord::coated || zone.seen.word == SeenWord::scope ||
                       zone.seen.word == SeenWord::tap;
  return covered && !zone.measured ? SeenAs::under_coating : SeenAs::bare;
}

Item ground_fill(SeenAs seen, const std::vector<Polyline>& shape) {
  if (seen == SeenAs::bare) return Shape{shape, paper, {}};
  Clipped fill{shape, {whole(shape, seen == SeenAs::not_seen ? not_seen_ground : paper)}};
  std::vector<Shape> over;
  switch (seen) {
    case SeenAs::bare:
      break;
    case SeenAs::under_coating:
      over = strokes(Texture::level_lines, shape, coated_mark);
      break;
    case SeenAs::in_part:
      over = sparse_diagonals(shape);
      break;
    case SeenAs::not_seen:
      over = strokes(Texture::wide_diagonals, shape, not_seen_mark);
      // Bold, and yet the whole stays lighter than any ink from pitted on.
      for (Shape& each : over) each.stroke->width_pt = bold_mm / mm_per_pt;
      break;
    case SeenAs::not_fitted:
      over = {crossed_out(bounds(shape))};
      break;
  }
  for (Shape& each : over) fill.within.push_back(std::move(each));
  return fill;
}

void draw_ground(Drafting& drafting, const DrawnZone& drawn) {
  const weighing::Zone& zone = *drawn.zone;
  const SeenAs seen = seen_as(zone);
  auto& items = drafting.page.layer("zones").items;
  Used& used = drafting.used;
  const bool own_dress = drafting.dress.zone && seen != SeenAs::not_fitted;
  if (own_dress) {
    items.push_back(drafting.dress.zone(drawn));
    return;
  }
  items.push_back(ground_fill(seen, drawn.shape));
  used.seen_bare |= seen == SeenAs::bare;
  used.under_coating |= seen == SeenAs::under_coating;
  used.not_seen |= seen == SeenAs::not_seen;
  used.not_fitted |= seen == SeenAs::not_fitted;
  if (seen != SeenAs::in_part) return;
  const bool part = zone.seen_share < 0.995;
  used.part_seen |= part;
  used.inside_not_seen |= !part;
}

}  // namespace tinworm::scene
