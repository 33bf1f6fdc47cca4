#include "scene/plate.hpp"

#include "scene/palette.hpp"
#include "scene/texture.hpp"

namespace tinworm::scene {
namespace {

using weighing::Step;

// Closer and paler than on the ground, so that a number reads on it.
std::vector<Shape> fine_hatch(const std::vector<Polyline>& shape) {
  std::vector<Shape> rows = strokes(Texture::hatch, shape, coated_mark);
  for (Shape& each : rows) each.stroke->width_pt = 0.7;
  return rows;
}

}  // namespace

std::vector<Item> plate(Step step, bool measured, const Area& area) {
  const std::vector<Polyline> shape{polyline(area)};
  const bool not_seen = step == Step::not_seen;
  const bool sound = step == Step::sound;
  const Stroke edge = measured || not_seen ? Stroke{soft_ink, 0.35, {}}
                      : sound              ? Stroke{faint_ink, 0.45, {0.6, 0.45}}
                                           : Stroke{ink, 0.45, {0.45, 0.45}};
  if (!not_seen) return {Shape{shape, strong(step), edge}};
  Clipped fill{shape, {Shape{shape, not_seen_ground, {}}}};
  for (Shape& each : fine_hatch(shape)) fill.within.push_back(std::move(each));
  return {fill, Shape{shape, {}, edge}};
}

Colour draw_plate(Drafting& drafting, const weighing::Zone& zone, const Area& area) {
  auto& items = drafting.page.layer("numbers").items;
  if (drafting.dress.zone || !zone.fitted) {
    items.push_back(Shape{{polyline(area)}, paper, {}});
    return black;
  }
  const bool measured = zone.evidence == weighing::Evidence::measured;
  for (Item& each : plate(zone.step, measured, area)) items.push_back(std::move(each));
  drafting.used.plates.insert(zone.step);
  if (zone.step != Step::not_seen && !measured) drafting.used.judged = true;
  return zone.step == Step::not_seen ? black : ink_on(strong(zone.step));
}

}  // namespace tinworm::scene
