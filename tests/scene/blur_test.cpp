// Seen from afar, where one can't read: the darkest ink of a sample's structure sheet lies at one
// of its worst three places. On any survey it can't be so: places rank by what they bear, ink by
// area.
#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "paths.hpp"
#include "scene/body_view.hpp"
#include "scene/figure.hpp"
#include "scene/fixture.hpp"
#include "scene/spot_mark.hpp"
#include "verbs/plan_shelf.hpp"
#include "verbs/surveys.hpp"

namespace tinworm::scene {
namespace {

constexpr double pitch_mm = 0.5;
constexpr int reach = 3;  // cells to each side: a box of 3 mm and a cell

// Darkness, 0 white to 1 black, in cells of 0.5 mm.
struct Grid {
  Area area;
  int columns, rows;
  std::vector<double> dark;

  explicit Grid(const Area& whole)
      : area(whole),
        columns(static_cast<int>(whole.width_mm / pitch_mm)),
        rows(static_cast<int>(whole.height_mm / pitch_mm)),
        dark(static_cast<std::size_t>(columns) * rows) {}
  At at(int column, int row) const {
    return {area.x_mm + column * pitch_mm, area.y_mm + row * pitch_mm};
  }
  double& cell(int column, int row) {
    return dark[static_cast<std::size_t>(row) * columns + column];
  }
  void fill(const std::vector<Polyline>& clip, const Shape& shape) {
    if (!shape.fill) return;
    for (int row = 0; row < rows; ++row)
      for (int column = 0; column < columns; ++column)
        if (inside(clip, at(column, row)) && inside(shape.lines, at(column, row)))
          cell(column, row) = 1 - relative_luminance(*shape.fill);
  }
  At darkest_blurred() {
    double most = 0;
    At found;
    for (int row = reach; row < rows - reach; ++row) {
      for (int column = reach; column < columns - reach; ++column) {
        double sum = 0;
        for (int i = -reach; i <= reach; ++i)
          for (int j = -reach; j <= reach; ++j) sum += cell(column + j, row + i);
        if (sum <= most) continue;
        most = sum;
        found = at(column, row);
      }
    }
    return found;
  }
};

double distance_mm(const Area& area, At at) {
  return std::hypot(std::max({area.x_mm - at.x_mm, 0.0, at.x_mm - area.right()}),
                    std::max({area.y_mm - at.y_mm, 0.0, at.y_mm - area.bottom()}));
}

double darkest_from_the_worst_mm(const weighing::Result& result) {
  constexpr std::size_t worst_places = 3;
  const Sheet sheet = lay_out(SheetKind::structure, *result.body, Paper::a4).at(0);
  Page page;
  const DiagramOptions options;
  Drafting drafting{page, sheet, result, options, fixture::measured, FreeSpace(sheet.drawing),
                    {},   {},    {},     {}};
  draw_body(drafting);
  draw_spots(drafting);
  Grid grid(sheet.drawing);
  for (const Item& item : page.layer("spots").items) {
    if (const auto* clipped = std::get_if<Clipped>(&item))
      for (const Shape& shape : clipped->within) grid.fill(clipped->clip, shape);
    if (const auto* shape = std::get_if<Shape>(&item)) grid.fill(shape->lines, *shape);
  }
  const At darkest = grid.darkest_blurred();
  auto worst = lettered(result);
  worst.resize(std::min(worst.size(), worst_places));
  double least = 1e9;
  for (const SpotMark& mark : drafting.spots)
    if (std::ranges::find(worst, mark.spot) != worst.end())
      least = std::min(least, distance_mm(bounds(mark.shape), darkest));
  return least;
}

TEST(Blur, TheSamplesAreDarkestAtTheirWorstPlaces) {
  for (const char* name : {"wherry-2025.yaml", "coble-2024.yaml"}) {
    verbs::PlanShelf plans("");
    const auto loaded = verbs::load_survey(source_folder() + "/output-samples/" + name, plans);
    ASSERT_TRUE(loaded.survey) << name;
    EXPECT_LE(darkest_from_the_worst_mm(fixture::weighed(*loaded.survey)), 6) << name;
  }
}

}  // namespace
}  // namespace tinworm::scene
