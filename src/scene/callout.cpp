#include "scene/callout.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include <fmt/format.h>

#include "scene/naming.hpp"
#include "scene/palette.hpp"
#include "scene/setting.hpp"
#include "weighing/words.hpp"

namespace tinworm::scene {
namespace {

constexpr Style title_style{9, Font::bold, black, Says::callout, 1.18};
constexpr Style detail_style{7, Font::regular, soft_ink, Says::callout, 1.2};
constexpr double badge_mm = 4.6, indent_mm = 5.6;
// In mm of leader: what a title costs for each line over two. Where a list tells all of it too:
// what each mm costs that runs over what is drawn, what a title costs that stands alone, and from
// where on no callout is better than one that far off.
constexpr double line_cost = 12, over_zones_cost = 0.6, alone_cost = 15, too_far = 75,
                 no_seat = 1e6;

Callout callout_of(const Drafting& drafting, const SpotMark& mark, const weighing::Zone& zone) {
  const weighing::Spot& spot = *mark.spot;
  if (drafting.dress.words) {
    auto [title, detail] = drafting.dress.words(spot);
    return {&mark, std::move(title), std::move(detail)};
  }
  Callout callout{&mark, fmt::format("{}: {}", zone_name(zone), step_words(spot)), {}};
  // Beside what was found "none" would contradict it.
  const bool told = spot.rust != survey::word(survey::Rust::none);
  const std::string rust = spot.is_repair ? "repair that can\u2019t be relied on"
                           : told         ? spot.rust
                                          : "";
  const std::string metal = metal_words(spot);
  for (const std::string& part : {spot.is_repair ? std::string() : spot.name, rust,
                                  weighing::signs_text(spot), metal, near_words(spot)}) {
    if (part.empty()) continue;
    callout.detail += (callout.detail.empty() ? "" : "; ") + part;
  }
  callout.title = capitalised(callout.title);
  return callout;
}

struct Box {
  std::vector<std::string> title, detail;
  double width_mm = 0, height_mm = 0;
};

Box box_of(const Callout& callout, double width_mm, const Measure& measure) {
  Box box;
  const double words_mm = width_mm - indent_mm;
  box.title = wrap(callout.title, title_style, words_mm, measure);
  box.detail = wrap(callout.detail, detail_style, words_mm, measure);
  double widest = 0;
  const auto widen = [&](const std::vector<std::string>& lines, const Style& style) {
    for (const std::string& line : lines) {
      widest = std::max(widest, measure(line, style.font, style.size_pt).width_mm);
    }
    box.height_mm += line_height_mm(style) * static_cast<double>(lines.size());
  };
  widen(box.title, title_style);
  widen(box.detail, detail_style);
  box.width_mm = widest + indent_mm + 0.5;
  return box;
}

struct Seat {
  Area area;
  At from, to;
  double cost = std::numeric_limits<double>::max();
};

// The point of the mark's edge nearest to `from`.
At edge_towards(const SpotMark& mark, At from) {
  At best = mark.at;
  double least = std::numeric_limits<double>::max();
  for (const At at : mark.shape[0].points) {
    const double far = std::hypot(at.x_mm - from.x_mm, at.y_mm - from.y_mm);
    if (far < least) {
      least = far;
      best = at;
    }
  }
  return best;
}

// A leader starts at the ring where the place lies to its left, else on a reference line over or
// under the words (ISO 128-2), else at the end of the first line.
At start_of(const Area& box, At to) {
  const At ring{box.x_mm + badge_mm / 2, box.y_mm + badge_mm / 2};
  if (to.x_mm < ring.x_mm) return ring;
  if (to.y_mm < box.y_mm || to.y_mm > box.bottom()) return nearest_on(box, to);
  return {box.right(), ring.y_mm};
}

void seek(const Drafting& drafting, const FreeSpace& space, const SpotMark& mark, const Box& box,
          bool on_drawing, Seat& best, double surcharge = 0) {
  constexpr double pitch = 2;
  const Area where = drafting.sheet.drawing;
  const double over_cost = drafting.dress.details_elsewhere ? over_zones_cost : 0;
  for (double y = where.y_mm + 1; y + box.height_mm <= where.bottom() - 1; y += pitch) {
    for (double x = where.x_mm + 1; x + box.width_mm <= where.right() - 1; x += pitch) {
      const Area area{x, y, box.width_mm, box.height_mm};
      const At from = start_of(area, mark.at);
      const double far = std::hypot(from.x_mm - mark.at.x_mm, from.y_mm - mark.at.y_mm);
      if (far >= best.cost || far < 3) continue;
      const Area room = area.grown(0.9);
      if (on_drawing ? !space.unwritten(room) : !space.blank(room)) continue;
      if (space.leader_crosses(room)) continue;
      const At to = edge_towards(mark, from);
      const double cost = surcharge + far + over_cost * space.over_zones_mm(from, to) +
                          25 * space.crossings(from, to, area);
      if (cost < best.cost) best = {area, from, to, cost};
    }
  }
}

struct Placing {
  std::vector<std::pair<Box, Seat>> seats;  // as the callouts are ordered
  double cost = 0;
};

// The best seat for one callout as the space stands; its cost is no_seat or more where there is
// none that is good enough.
std::pair<Box, Seat> seated(const Drafting& drafting, const FreeSpace& space,
                            const Callout& callout) {
  const bool details_elsewhere = drafting.dress.details_elsewhere;
  Box chosen;
  Seat best;
  const auto offer = [&](const Callout& words, double width, bool on_drawing, double surcharge) {
    const Box box = box_of(words, width, drafting.measure);
    const double before = best.cost;
    const double more_lines = std::max(0.0, static_cast<double>(box.title.size()) - 2);
    seek(drafting, space, *callout.mark, box, on_drawing, best, surcharge + line_cost * more_lines);
    if (best.cost < before) chosen = box;
  };
  const Callout title{callout.mark, callout.title, ""};
  for (const double width : {62.0, 50.0, 38.0}) offer(callout, width, false, 0);
  if (details_elsewhere)
    for (const double width : {62.0, 50.0, 38.0}) offer(title, width, false, alone_cost);
  // The first line alone needs less room.
  for (const bool on_drawing : {false, true}) {
    if (best.cost < FreeSpace::never) break;
    best = {};
    offer(title, 62, on_drawing, 0);
  }
  if (details_elsewhere && best.cost > too_far) best.cost = no_seat;
  return {std::move(chosen), best};
}

// Seats for all callouts, chosen one after the other in the given order.
Placing placed_in_order(const Drafting& drafting, const std::vector<Callout>& callouts,
                        const std::vector<std::size_t>& order) {
  FreeSpace space = drafting.space;
  Placing placing{std::vector<std::pair<Box, Seat>>(callouts.size()), 0};
  for (const std::size_t i : order) {
    placing.seats[i] = seated(drafting, space, callouts[i]);
    const Seat& seat = placing.seats[i].second;
    placing.cost += std::min(seat.cost, no_seat);
    if (seat.cost >= no_seat) continue;
    space.write(seat.area);
    space.lead(seat.from, seat.to);
  }
  return placing;
}

// The order that gives the shortest leaders with the fewest crossings.
Placing best_placing(const Drafting& drafting, const std::vector<Callout>& callouts) {
  std::vector<std::size_t> order(callouts.size());
  for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
  Placing best = placed_in_order(drafting, callouts, order);
  while (std::next_permutation(order.begin(), order.end())) {
    Placing other = placed_in_order(drafting, callouts, order);
    if (other.cost < best.cost) best = std::move(other);
  }
  return best;
}

void draw_badge(Layer& layer, const Drafting& drafting, At middle, int rank) {
  layer.items.push_back(Shape{{circle(middle, badge_mm / 2 - 0.2)}, paper, Stroke{ink, 0.9, {}}});
  const Style style{8, Font::bold, black, Says::rank};
  layer.items.push_back(set(fmt::format("{}", rank), style,
                            {middle.x_mm, middle.y_mm + 8 * 0.73 * mm_per_pt / 2}, Align::centre,
                            drafting.measure));
}

void draw_leader(Drafting& drafting, const Callout& callout, const Seat& seat) {
  Layer& leaders = drafting.page.layer("leaders");
  leaders.items.push_back(Shape{{segment(seat.from, seat.to)}, {}, Stroke{paper, 2.0, {}}});
  leaders.items.push_back(Shape{{segment(seat.from, seat.to)}, {}, Stroke{ink, 0.75, {}}});
  leaders.items.push_back(Shape{{circle(seat.to, 0.5)}, ink, Stroke{paper, 0.4, {}}});
  // A speck must be found at a glance too, in grey as well; what is longer shows by itself.
  const Area spot = bounds(callout.mark->shape);
  const double reach_mm = std::hypot(spot.width_mm, spot.height_mm) / 2 + 0.9;
  constexpr double speck_mm = 2.8;
  if (reach_mm < speck_mm) {
    const std::vector<Polyline> ring = {circle(spot.middle(), reach_mm)};
    leaders.items.push_back(Shape{ring, {}, Stroke{paper, 2.4, {}}});
    leaders.items.push_back(Shape{ring, {}, Stroke{ink, 1.1, {}}});
    drafting.space.trace(ring);
  }
  drafting.space.lead(seat.from, seat.to);
}

void draw_box(Drafting& drafting, const Callout& callout, const Box& box, const Seat& seat) {
  Layer& layer = drafting.page.layer("callouts");
  const bool from_ring =
      seat.from.x_mm < seat.area.x_mm + indent_mm && seat.to.x_mm < seat.from.x_mm;
  Area words = seat.area;
  // A steep leader runs down beside the words, and would be cut short.
  const bool steep =
      std::abs(seat.to.y_mm - seat.from.y_mm) > std::abs(seat.to.x_mm - seat.from.x_mm);
  if (from_ring && steep) words.x_mm += indent_mm, words.width_mm -= indent_mm;
  layer.items.push_back(Shape{{polyline(words.grown(0.4))}, paper, {}});
  if (!from_ring && (seat.from.y_mm == seat.area.y_mm || seat.from.y_mm == seat.area.bottom())) {
    layer.items.push_back(
        Shape{{segment({seat.area.x_mm, seat.from.y_mm}, {seat.area.right(), seat.from.y_mm})},
              {},
              Stroke{ink, 0.75, {}}});
  }
  draw_badge(layer, drafting, {seat.area.x_mm + badge_mm / 2, seat.area.y_mm + badge_mm / 2},
             callout.mark->spot->rank);
  double y = seat.area.y_mm;
  const auto write = [&](const std::vector<std::string>& lines, const Style& style) {
    for (const std::string& line : lines) {
      const At at{seat.area.x_mm + indent_mm, y + 0.8 * line_height_mm(style)};
      layer.items.push_back(set(line, style, at, Align::left, drafting.measure));
      y += line_height_mm(style);
    }
  };
  write(box.title, title_style);
  write(box.detail, detail_style);
  drafting.space.write(seat.area);
}

}  // namespace

std::vector<Callout> callouts_of(const Drafting& drafting, int most) {
  std::vector<Callout> callouts;
  for (const SpotMark& mark : drafting.spots) {
    const weighing::Zone* zone = drafting.result.zone(mark.spot->zone);
    if (mark.principal && mark.spot->rank > 0 && zone != nullptr) {
      callouts.push_back(callout_of(drafting, mark, *zone));
    }
  }
  std::sort(callouts.begin(), callouts.end(), [](const Callout& a, const Callout& b) {
    return a.mark->spot->rank < b.mark->spot->rank;
  });
  if (static_cast<int>(callouts.size()) > most) callouts.resize(most);
  return callouts;
}

std::vector<const weighing::Spot*> draw_callouts(Drafting& drafting) {
  std::vector<const weighing::Spot*> called;
  const std::vector<Callout> callouts = callouts_of(drafting, 3);
  const Placing placing = best_placing(drafting, callouts);
  for (std::size_t i = 0; i < callouts.size(); ++i) {
    const auto& [box, seat] = placing.seats[i];
    if (seat.cost >= no_seat) continue;  // no room for it: its ring and the list beside say it
    draw_leader(drafting, callouts[i], seat);
    draw_box(drafting, callouts[i], box, seat);
    called.push_back(callouts[i].mark->spot);
  }
  return called;
}

}  // namespace tinworm::scene
