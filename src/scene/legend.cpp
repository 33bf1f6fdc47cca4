#include "scene/legend.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "scene/ground.hpp"
#include "scene/naming.hpp"
#include "scene/palette.hpp"
#include "scene/plate.hpp"
#include "scene/repair_edge.hpp"
#include "scene/spot_shape.hpp"
#include "scene/texture.hpp"

namespace tinworm::scene {
namespace {

using weighing::Step;

constexpr Area whole{0, 0, swatch_width_mm, swatch_height_mm};

Item edge(Stroke stroke) {
  return Shape{{polyline(whole)}, {}, stroke};
}

constexpr Stroke thin_edge{ink, 0.4, {}};

Item moved(const Item& item, double dx, double dy) {
  const auto lines = [&](std::vector<Polyline> all) {
    for (Polyline& line : all) {
      for (At& at : line.points) at = {at.x_mm + dx, at.y_mm + dy};
    }
    return all;
  };
  const auto shape = [&](Shape each) {
    each.lines = lines(each.lines);
    return each;
  };
  if (const auto* plain = std::get_if<Shape>(&item)) return shape(*plain);
  Clipped clipped = std::get<Clipped>(item);
  clipped.clip = lines(clipped.clip);
  for (Shape& each : clipped.within) each = shape(each);
  return clipped;
}

// A tinted zone, the plate of a number, a spot: side by side as far as they are drawn.
LegendEntry step_entry(Step step, bool zone, bool plated, bool spot) {
  LegendEntry entry{std::string(step_name(step)),
                    std::string(step_meaning(step)),
                    {},
                    step == Step::sound ? KeySign::sound : KeySign::step};
  const double part = swatch_width_mm / (zone + plated + spot);
  Area place{0, 0, part, swatch_height_mm};
  if (zone) {
    entry.swatch.push_back(pale_fill(step, {polyline(place)}));
    place.x_mm += part;
  }
  if (plated) {
    for (Item& each : plate(step, true, place)) entry.swatch.push_back(std::move(each));
    place.x_mm += part;
  }
  if (spot) entry.swatch.push_back(strong_fill(step, {polyline(place)}));
  entry.swatch.push_back(edge(thin_edge));
  return entry;
}

LegendEntry ground_entry(SeenAs seen, std::string words, std::string meaning,
                         KeySign sign = KeySign::other) {
  return {std::move(words),
          std::move(meaning),
          {ground_fill(seen, {polyline(whole)}), edge(thin_edge)},
          sign};
}

LegendEntry line_entry(std::string words, std::string meaning, Stroke stroke) {
  const double y = swatch_height_mm / 2;
  return {std::move(words),
          std::move(meaning),
          {Shape{{segment({0, y}, {swatch_width_mm, y})}, {}, std::move(stroke)}}};
}

LegendEntry repair_entry(RepairEdge kind, std::string meaning) {
  return {"repaired",
          std::move(meaning),
          {edge(thin_edge), repair_edge(kind, {polyline(whole)})},
          KeySign::repair};
}

LegendEntry part_entry(const Used& used) {
  const bool both = used.part_seen && used.inside_not_seen;
  return ground_entry(SeenAs::in_part,
                      both             ? "part or inside not seen"
                      : used.part_seen ? "seen in part"
                                       : "inside not seen",
                      "the rest is not known", KeySign::part);
}

LegendEntry edge_entry(const Used& used) {
  const double half = swatch_width_mm / 2 - 0.5;
  LegendEntry entry{"broken edge, \u2248", "judged; solid: measured", {}, KeySign::judged_edge};
  const Area left{0.2, 0.4, half, swatch_height_mm - 0.8};
  const Area right{swatch_width_mm - half - 0.2, 0.4, half, swatch_height_mm - 0.8};
  entry.swatch.push_back(Shape{{polyline(left)}, {}, Stroke{ink, 0.6, {0.7, 0.6}}});
  if (used.measured)
    entry.swatch.push_back(Shape{{polyline(right)}, {}, Stroke{ink, 0.6, {}}});
  else
    entry.meaning = "judged, not measured";
  return entry;
}

LegendEntry symbol_entry() {
  return {"triangle", "too small to draw, not to scale",
          inked(MarkKind::symbol, Step::pitted, true, {symbol(whole.middle())}), KeySign::symbol};
}

LegendEntry open_entry() {
  return {"open circle", "size or place not recorded",
          inked(MarkKind::open, Step::pitted, true, {open_mark(whole.middle())}),
          KeySign::open_mark};
}

LegendEntry station_entry() {
  const At at = whole.middle();
  constexpr double half = 0.8;
  return {"cross",
          "measured, metal whole there",
          {Shape{{segment({at.x_mm - half, at.y_mm - half}, {at.x_mm + half, at.y_mm + half}),
                  segment({at.x_mm - half, at.y_mm + half}, {at.x_mm + half, at.y_mm - half})},
                 {},
                 Stroke{ink, 0.6, {}}}},
          KeySign::station};
}

LegendEntry unknown_place_entry() {
  Shape mark{{circle(whole.middle(), 1.3)}, {}, Stroke{ink, 0.6, {0.7, 0.5}}};
  return {"dashed spot", "place not fully recorded", {mark}};
}

LegendEntry rank_entry(const Used& used) {
  std::string meaning = "order of the places, 1 the worst";
  if (used.unranked) meaning += "; spots without a ring come after";
  return {"ring",
          meaning,
          {Shape{{circle(whole.middle(), 1.5)}, paper, Stroke{ink, 0.6, {}}}},
          KeySign::rank};
}

}  // namespace

std::vector<LegendEntry> legend_of(const Used& used, const rules::Rules& rules) {
  std::vector<LegendEntry> entries;
  for (const Step step :
       {Step::holed, Step::weak, Step::thin, Step::pitted, Step::bloom, Step::sound}) {
    const bool zone = used.zones.contains(step), spot = used.spots.contains(step);
    const bool plated = used.plates.contains(step);
    if (!zone && !spot && !plated) continue;
    entries.push_back(step_entry(step, zone, plated, spot));
    if (step == Step::weak && rules.weak_limit != rules::Rules{}.weak_limit) {
      entries.back().meaning =
          fmt::format("{:.0f} % gone or more, or gives", 100 * (1 - rules.weak_limit));
      entries.back().sign = KeySign::step_by_rules;
    }
  }
  if (used.seen_bare)
    entries.push_back(
        ground_entry(SeenAs::bare, "white ground", "seen bare, or measured", KeySign::ground));
  if (used.under_coating) {
    entries.push_back(ground_entry(SeenAs::under_coating, "pale lines", "under coating or by scope",
                                   KeySign::ground));
  }
  if (used.not_seen) {
    entries.push_back(ground_entry(SeenAs::not_seen, std::string(step_name(Step::not_seen)),
                                   std::string(step_meaning(Step::not_seen))));
  }
  if (used.part_seen || used.inside_not_seen) entries.push_back(part_entry(used));
  if (used.not_fitted)
    entries.push_back(ground_entry(SeenAs::not_fitted, "not fitted", "not on this car"));
  if (used.judged) entries.push_back(edge_entry(used));
  if (used.symbols) entries.push_back(symbol_entry());
  if (used.open_marks) entries.push_back(open_entry());
  if (used.place_unknown) entries.push_back(unknown_place_entry());
  if (used.stations) entries.push_back(station_entry());
  if (used.ranks || used.unranked) entries.push_back(rank_entry(used));
  if (used.repair_relied) {
    entries.push_back(repair_entry(RepairEdge::stitches, "can be relied on"));
  }
  if (used.repair_not_known) {
    entries.push_back(repair_entry(RepairEdge::dash_and_dot, "not known if reliable"));
  }
  if (used.repair_not_relied) {
    entries.push_back(repair_entry(RepairEdge::wave, "can\u2019t be relied on"));
  }
  if (used.circles) {
    entries.push_back(line_entry(
        "circle",
        fmt::format("{:.4g} cm round what carries brakes, steering, suspension, belts or towing",
                    rules.near_radius_mm / 10),
        Stroke{repair_ink, 0.4, {1.6, 1.1}}));
  }
  if (used.roles.contains(body::Role::main)) {
    entries.push_back(line_entry("main", "carries the car", Stroke{ink, 0.85, {}}));
  }
  if (used.roles.contains(body::Role::local)) {
    entries.push_back(line_entry("local", "stiffens or shares", Stroke{ink, 0.5, {}}));
  }
  if (used.roles.contains(body::Role::skin)) {
    entries.push_back(line_entry("skin", "hangs on, keeps water out", Stroke{soft_ink, 0.3, {}}));
  }
  if (!used.unnumbered.empty()) {
    entries.push_back(
        {"no number",
         fmt::format("no room for it in every view: {:02}", fmt::join(used.unnumbered, ", ")),
         {}});
  }
  return entries;
}

void add_swatch(Layer& layer, const LegendEntry& entry, At top_left) {
  for (const Item& item : entry.swatch)
    layer.items.push_back(moved(item, top_left.x_mm, top_left.y_mm));
}

double set_key_row(Layer& layer, const std::vector<LegendEntry>& entries, const Style& style,
                   const Area& area, const Measure& measure) {
  constexpr double word_mm = 1.6, apart_mm = 5, line_mm = swatch_height_mm + 1.2;
  double x = area.x_mm, y = area.y_mm;
  for (const LegendEntry& entry : entries) {
    const double width =
        swatch_width_mm + word_mm + measure(entry.words, style.font, style.size_pt).width_mm;
    if (x > area.x_mm && x + width > area.right()) x = area.x_mm, y += line_mm;
    add_swatch(layer, entry, {x, y});
    layer.items.push_back(set(entry.words, style,
                              {x + swatch_width_mm + word_mm, y + swatch_height_mm * 0.75},
                              Align::left, measure));
    x += width + apart_mm;
  }
  return entries.empty() ? 0 : y + line_mm - area.y_mm;
}

}  // namespace tinworm::scene
