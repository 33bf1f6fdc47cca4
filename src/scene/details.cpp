#include "scene/details.hpp"

#include <algorithm>
#include <optional>
#include <set>

#include <fmt/format.h>

#include "scene/body_view.hpp"
#include "scene/drafting.hpp"
#include "scene/naming.hpp"
#include "scene/spot_mark.hpp"

namespace tinworm::scene {
namespace {

constexpr double window_mm = 20, round_mm = 4;
constexpr std::size_t least_places = 6, most_details = 2;
constexpr int detail_scale = 10;

struct Crowd {
  const Sheet* sheet = nullptr;
  std::size_t view = 0;
  std::set<const weighing::Spot*> places;
  Area area;  // on the sheet, round their marks
};

// The marks that a sheet would show, by a drawing that is thrown away.
std::vector<SpotMark> marks_on(const Sheet& sheet, const weighing::Result& result,
                               const DiagramOptions& options, const Measure& measure) {
  Page page;
  Drafting drafting{page, sheet, result, options, measure, FreeSpace(sheet.drawing),
                    {},   {},    {},     {}};
  draw_body(drafting);
  draw_spots(drafting);
  std::erase_if(drafting.spots, [](const SpotMark& mark) {
    return mark.spot->rank == 0 || mark.kind == MarkKind::none || !mark.place_known;
  });
  return drafting.spots;
}

Crowd crowd_at(const Sheet& sheet, std::size_t view, const std::vector<SpotMark>& marks,
               const Area& window) {
  Crowd crowd{&sheet, view, {}, {}};
  std::vector<Polyline> shapes;
  for (const SpotMark& mark : marks) {
    if (mark.view != view || !window.contains(mark.at)) continue;
    crowd.places.insert(mark.spot);
    shapes.push_back({{mark.at}, false});
  }
  if (!shapes.empty()) crowd.area = bounds(shapes).grown(round_mm);
  return crowd;
}

// The most crowded window of any view; a mark stands on each of two of its edges.
std::optional<Crowd> worst_crowd(const Sheet& sheet, const std::vector<SpotMark>& marks) {
  std::optional<Crowd> worst;
  for (const SpotMark& left : marks) {
    for (const SpotMark& top : marks) {
      if (left.view != top.view) continue;
      const Area window{left.at.x_mm, top.at.y_mm, window_mm, window_mm};
      Crowd crowd = crowd_at(sheet, left.view, marks, window);
      if (crowd.places.size() < least_places) continue;
      if (!worst || crowd.places.size() > worst->places.size()) worst = std::move(crowd);
    }
  }
  return worst;
}

// All crowds of a sheet, one after the other, none with places of another.
std::vector<Crowd> crowds_on(const Sheet& sheet, const weighing::Result& result,
                             const DiagramOptions& options, const Measure& measure) {
  std::vector<SpotMark> marks = marks_on(sheet, result, options, measure);
  std::vector<Crowd> crowds;
  while (auto crowd = worst_crowd(sheet, marks)) {
    std::erase_if(marks, [&](const SpotMark& mark) { return crowd->places.contains(mark.spot); });
    crowds.push_back(std::move(*crowd));
  }
  return crowds;
}

// "Detail, underneath: round the outer sill, left", by its worst place.
std::string name_of(const Crowd& crowd, const weighing::Result& result) {
  const auto worst = std::ranges::min_element(crowd.places, {}, &weighing::Spot::rank);
  const weighing::Zone* zone = result.zone((*worst)->zone);
  const std::string_view view = view_name(crowd.sheet->views[crowd.view].projection.view);
  return fmt::format("Detail: {}, round the {}", view, zone == nullptr ? "" : zone_name(*zone));
}

geometry::Rect part_of(const Crowd& crowd) {
  const Projection& projection = crowd.sheet->views[crowd.view].projection;
  const geometry::Point one = projection.body({crowd.area.x_mm, crowd.area.y_mm});
  const geometry::Point other = projection.body({crowd.area.right(), crowd.area.bottom()});
  return {{std::min(one.u, other.u), std::max(one.u, other.u)},
          {std::min(one.v, other.v), std::max(one.v, other.v)}};
}

// False where there is no room for it beside the others.
bool add_detail(Sheet& page, const Crowd& crowd, const weighing::Result& result) {
  constexpr double above_mm = 13, apart_mm = 12;
  const geometry::Rect part = part_of(crowd);
  const double width = part.u.length() / detail_scale, height = part.v.length() / detail_scale;
  double left = page.drawing.x_mm + apart_mm;
  if (!page.views.empty()) {
    const Area& before = page.views.back().area;
    left = before.x_mm + std::max(before.width_mm, detail_caption_mm) + apart_mm;
  }
  const Area area{left, page.drawing.y_mm + above_mm, width, height};
  if (!page.drawing.contains(area) || left + detail_caption_mm > page.drawing.right()) return false;
  PlacedView placed{crowd.sheet->views[crowd.view].projection, area, {left, area.y_mm - 2.2}};
  placed.projection.scale = 1.0 / detail_scale;
  placed.projection.origin = {};
  const At one = placed.projection.paper({part.u.low, part.v.low});
  const At other = placed.projection.paper({part.u.high, part.v.high});
  placed.projection.origin = {left - std::min(one.x_mm, other.x_mm),
                              area.y_mm - std::min(one.y_mm, other.y_mm)};
  placed.part = part;
  placed.name = name_of(crowd, result);
  page.views.push_back(std::move(placed));
  return true;
}

}  // namespace

std::vector<Sheet> details_of(const std::vector<Sheet>& sheets, const weighing::Result& result,
                              const DiagramOptions& options, const Measure& measure) {
  std::vector<Crowd> crowds;
  for (const Sheet& sheet : sheets) {
    if (sheet.kind == SheetKind::skin) continue;
    for (Crowd& crowd : crowds_on(sheet, result, options, measure))
      crowds.push_back(std::move(crowd));
  }
  std::ranges::stable_sort(crowds, std::greater(),
                           [](const Crowd& each) { return each.places.size(); });
  if (crowds.empty()) return {};
  Sheet page = *crowds.front().sheet;
  page.scale = detail_scale;
  page.views.clear();
  for (const Crowd& crowd : crowds) {
    if (page.views.size() == most_details) break;
    if (crowd.sheet->kind == page.kind) add_detail(page, crowd, result);
  }
  if (page.views.empty()) return {};
  return {page};
}

}  // namespace tinworm::scene
