// Writes every shape and text of a survey's map as a plain list, for bare.cpp to draw again.
//   draw_list SURVEY > LIST
#include <fmt/format.h>

#include <cstdio>

#include "painting/measure.hpp"
#include "scene/diagram.hpp"
#include "verbs/plan_shelf.hpp"
#include "verbs/surveys.hpp"
#include "weighing/weigh.hpp"

namespace {

using namespace tinworm;

void print(const std::vector<scene::Polyline>& lines) {
  for (const scene::Polyline& line : lines) {
    fmt::print("P {} {}", line.closed ? 1 : 0, line.points.size());
    for (const scene::At at : line.points) fmt::print(" {:.4f} {:.4f}", at.x_mm, at.y_mm);
    fmt::print("\n");
  }
}

void print(const scene::Shape& shape) {
  print(shape.lines);
  if (shape.fill) fmt::print("F\n");
  if (shape.stroke) fmt::print("S {:.3f}\n", shape.stroke->width_pt);
  fmt::print("N\n");
}

void print(const scene::Item& item) {
  if (const auto* shape = std::get_if<scene::Shape>(&item)) print(*shape);
  if (const auto* text = std::get_if<scene::Text>(&item))
    fmt::print("T {:.4f} {:.4f} {:.2f} {} {}\n", text->area.x_mm, text->at.y_mm, text->size_pt,
               text->font == scene::Font::bold ? 1 : 0, text->text);
  if (const auto* clipped = std::get_if<scene::Clipped>(&item)) {
    print(clipped->clip);
    fmt::print("C\n");
    for (const scene::Shape& shape : clipped->within) print(shape);
    fmt::print("R\n");
  }
}

}  // namespace

int main(int count, char** words) {
  if (count != 2) return 2;
  verbs::PlanShelf plans("");
  const auto loaded = verbs::load_survey(words[1], plans);
  if (!loaded.survey) return 1;
  const auto result = weighing::weigh(*loaded.survey, {});
  for (const scene::Page& page : scene::diagram(result, {}, painting::measure())) {
    fmt::print("G {} {}\n", page.width_mm, page.height_mm);
    for (const scene::Layer& layer : page.layers)
      for (const scene::Item& item : layer.items) print(item);
  }
}
