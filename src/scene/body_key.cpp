#include "scene/body_key.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

#include <fmt/format.h>

#include "scene/blank_page.hpp"
#include "scene/body_points.hpp"
#include "scene/body_view.hpp"
#include "scene/column.hpp"
#include "scene/drafting.hpp"
#include "scene/label.hpp"
#include "scene/legend.hpp"
#include "scene/naming.hpp"
#include "scene/paper_table.hpp"
#include "scene/part_names.hpp"
#include "scene/strip.hpp"
#include "scene/writer.hpp"

namespace tinworm::scene {
namespace {

constexpr double mark_mm = 0.85;     // half a mount's diamond
constexpr double station_mm = 0.45;  // radius of a station's ring
constexpr Style name_style{6.5, Font::regular, black, Says::legend, 1.2};

// The body as if all of it had been seen and nothing found: what draws surveys then draws it.
weighing::Result untouched(const body::PlanPtr& plan) {
  weighing::Result result;
  result.body = plan;
  result.survey.body = plan;
  for (const body::Zone& each : plan->zones) {
    weighing::Zone zone;
    zone.number = each.number;
    zone.name = each.name;
    zone.side = each.side();
    zone.role = each.role;
    zone.seen_share = 1;
    zone.evidence = weighing::Evidence::measured;
    zone.step = zone.step_low = zone.step_high = weighing::Step::sound;
    result.zones.push_back(std::move(zone));
  }
  return result;
}

Shape diamond(At at, std::optional<Colour> fill) {
  return Shape{{Polyline{{{at.x_mm, at.y_mm - mark_mm},
                          {at.x_mm + mark_mm, at.y_mm},
                          {at.x_mm, at.y_mm + mark_mm},
                          {at.x_mm - mark_mm, at.y_mm}},
                         true}},
               fill,
               Stroke{ink, 0.5, {}}};
}

Shape ring(At at) {
  return Shape{{circle(at, station_mm)}, paper, Stroke{ink, 0.5, {}}};
}

bool drawn_in(const Drafting& drafting, std::size_t view, const std::vector<int>& zones) {
  return std::any_of(drafting.zones.begin(), drafting.zones.end(), [&](const DrawnZone& drawn) {
    return drawn.view == view &&
           std::find(zones.begin(), zones.end(), drawn.plan->number) != zones.end();
  });
}

// Mounts on what the view shows; those of the far side are hidden by the body.
void draw_mounts(Drafting& drafting) {
  Layer& layer = drafting.page.layer("spots");
  for (std::size_t i = 0; i < drafting.sheet.views.size(); ++i) {
    const Projection& projection = drafting.sheet.views[i].projection;
    for (const body::Mount& mount : drafting.result.body->mounts) {
      const bool far_side = (projection.view == body::View::left && mount.at.y_mm > 0) ||
                            (projection.view == body::View::right && mount.at.y_mm < 0);
      if (far_side || !drawn_in(drafting, i, mount.on)) continue;
      const At at = projection.project(mount.at);
      const bool strict = body::under_near_rule(mount.carries);
      layer.items.push_back(diamond(at, strict ? ink : paper));
      drafting.space.write({at.x_mm - mark_mm, at.y_mm - mark_mm, 2 * mark_mm, 2 * mark_mm});
    }
  }
}

void draw_stations(Drafting& drafting) {
  Layer& layer = drafting.page.layer("spots");
  for (const DrawnZone& drawn : drafting.zones) {
    for (const body::Station& station : drawn.plan->stations) {
      const At at = drafting.sheet.views[drawn.view].projection.project(station.at);
      if (!inside(drawn.shape, at)) continue;
      layer.items.push_back(ring(at));
      drafting.space.write(
          {at.x_mm - station_mm, at.y_mm - station_mm, 2 * station_mm, 2 * station_mm});
    }
  }
}

// A leader that ends on a mark would have to cross it: its zone is pointed at beside the mark.
void move_anchors(Drafting& drafting) {
  constexpr double step_mm = 0.5, farthest_mm = 6;
  constexpr int turns = 16;
  const auto is_free = [&](const DrawnZone& drawn, At at) {
    return inside(drawn.shape, at) &&
           drafting.space.unwritten(Area{at.x_mm, at.y_mm, 0, 0}.grown(0.35));
  };
  for (DrawnZone& drawn : drafting.zones) {
    const At centre = drawn.centre;
    if (is_free(drawn, centre)) continue;
    for (double far = step_mm; far <= farthest_mm && drawn.centre == centre; far += step_mm) {
      for (int i = 0; i < turns; ++i) {
        const double angle = 2 * std::numbers::pi * i / turns;
        const At at{centre.x_mm + far * std::cos(angle), centre.y_mm + far * std::sin(angle)};
        if (!is_free(drawn, at)) continue;
        drawn.centre = at;
        break;
      }
    }
  }
}

std::vector<LegendEntry> signs(const Drafting& drafting) {
  std::vector<LegendEntry> entries = legend_of(drafting.used, rules::Rules{});
  std::erase_if(entries, [](const LegendEntry& entry) { return entry.sign == KeySign::sound; });
  const At middle{swatch_width_mm / 2, swatch_height_mm / 2};
  entries.push_back(
      {"mount", "brakes, steering, suspension, belts, towing", {diamond(middle, ink)}});
  entries.push_back({"mount", "of anything else", {diamond(middle, paper)}});
  entries.push_back({"station", "measure here, now and years later", {ring(middle)}});
  return entries;
}

std::vector<PartName> names_on(const Drafting& drafting) {
  std::set<int> drawn;
  for (const DrawnZone& zone : drafting.zones) drawn.insert(zone.plan->number);
  return part_names(*drafting.result.body, drawn);
}

// Where the column is too short for all, the lines stand closer and no name takes two of them.
void write_names(Writer& writer, const Drafting& drafting) {
  constexpr double numbers_mm = 9.5;
  writer.rule();
  writer.block("Zones: odd left, even right", heading_style);
  const std::vector<PartName> names = names_on(drafting);
  Writer narrow = writer;
  narrow.area.width_mm -= numbers_mm;
  double whole_mm = 0;
  for (const PartName& name : names) whole_mm += narrow.height(name.whole, name_style);
  const bool close = whole_mm > writer.room();
  Style style = name_style;
  if (close) style.leading = 1.08;
  for (const PartName& name : names) {
    const bool fits = narrow.height(name.whole, style) <= line_height_mm(style) * 1.01;
    const double top = writer.y;
    writer.block(name.numbers, style);
    writer.y = top;
    writer.block(close && !fits ? name.name : name.whole, style, numbers_mm);
  }
}

void draw_key_column(Drafting& drafting) {
  const Area column = drafting.sheet.column;
  Layer& layer = drafting.page.layer("column");
  layer.items.push_back(Shape{{segment({column.x_mm, column.y_mm}, {column.x_mm, column.bottom()})},
                              {},
                              Stroke{ink, 0.5, {}}});
  Writer writer{layer,
                {column.x_mm + 3, column.y_mm + 2.4, column.width_mm - 6, column.height_mm - 4},
                column.y_mm + 2.4,
                drafting.measure};
  writer.block("Key to the zones", {11.5, Font::bold, black, Says::title, 1.3});
  writer.y += 0.6;
  write_entries(writer, signs(drafting), name_style, 0.2);
  write_names(writer, drafting);
}

Page key_page(const Sheet& sheet, const weighing::Result& result, Paper size,
              const Measure& measure) {
  Page page = blank_page(sheet, size_of(size));
  const DiagramOptions options;
  Drafting drafting{page, sheet, result, options, measure, FreeSpace(sheet.drawing),
                    {},   {},    {},     {}};
  // Nothing was surveyed: no ground, and numbers on plain plates.
  drafting.dress.zone = [](const DrawnZone& drawn) { return Shape{drawn.shape, paper, {}}; };
  draw_body(drafting);
  draw_view_names(drafting);
  draw_mounts(drafting);
  draw_stations(drafting);
  move_anchors(drafting);
  label_outside(drafting, label_inside(drafting));
  name_mounts(drafting);
  draw_key_column(drafting);
  return page;
}

}  // namespace

std::vector<Page> body_key(const body::PlanPtr& plan, Paper size,
                           const std::vector<SheetKind>& kinds, const Measure& measure,
                           bool points_by_name) {
  const weighing::Result result = untouched(plan);
  std::vector<Sheet> sheets;
  for (const SheetKind kind : kinds)
    for (const Sheet& sheet : lay_out(kind, *plan, size)) sheets.push_back(sheet);
  std::vector<Page> pages;
  for (const Sheet& sheet : sheets) pages.push_back(key_page(sheet, result, size, measure));
  if (points_by_name && !pages.empty()) {
    PaperPages list(size, "Stations and mounts", "", measure);
    list.columns(points_of(*plan));
    for (Page& page : std::move(list).pages()) pages.push_back(std::move(page));
  }
  for (std::size_t i = 0; i < pages.size(); ++i) {
    Page& page = pages[i];
    page.label = fmt::format("{}", i + 1);
    const int scale = i < sheets.size() ? sheets[i].scale : 0;
    std::vector<StripCell> cells = {
        {"Body", plan->title, fmt::format("{} {}", plan->name, plan->version), 80, true, false},
        {"Size",
         fmt::format("{:g} x {:g} x {:g} mm", plan->size.length_mm, plan->size.width_mm,
                     plan->size.height_mm),
         fmt::format("wheelbase {:g} mm", plan->size.wheelbase_mm), 50, false, false},
        {"Sheet", page.title, fmt::format("page {} of {}", i + 1, pages.size()), 40, false, false}};
    if (scale > 0) cells.push_back({"Scale", fmt::format("1:{}", scale), "", 52, false, true});
    Area strip{page.frame.x_mm, page.frame.bottom() - 11.5, page.frame.width_mm, 11.5};
    if (i < sheets.size()) strip = sheets[i].strip;
    draw_cells(page, strip, cells, scale, quantity::Units::mm, measure);
  }
  return pages;
}

}  // namespace tinworm::scene
