#include "scene/label.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <optional>

#include <fmt/format.h>

#include "scene/palette.hpp"
#include "scene/plate.hpp"
#include "scene/setting.hpp"

namespace tinworm::scene {
namespace {

constexpr Style number_style{number_pt, Font::regular, black, Says::zone_number};
constexpr double digit_share = 0.73;  // height of a digit over the letter size, DejaVu Sans
constexpr double clear_x_mm = 0.35, clear_y_mm = 0.3;

std::string number_text(int number) {
  return fmt::format("{:02}", number);
}

// The plate of a number whose digits are centred on `at`.
Area plate_at(const Drafting& drafting, int number, At at) {
  const double width =
      drafting.measure(number_text(number), Font::regular, number_pt).width_mm + 2 * clear_x_mm;
  const double height = number_pt * digit_share * mm_per_pt + 2 * clear_y_mm;
  return {at.x_mm - width / 2, at.y_mm - height / 2, width, height};
}

void draw_number(Drafting& drafting, const DrawnZone& drawn, const Area& plate, bool led) {
  Layer& layer = drafting.page.layer("numbers");
  const Colour colour = draw_plate(drafting, *drawn.zone, plate);
  Text text =
      set(number_text(drawn.zone->number), number_style,
          {plate.middle().x_mm, plate.bottom() - clear_y_mm}, Align::centre, drafting.measure);
  text.area = plate.grown(-0.05);
  text.colour = colour;
  layer.items.push_back(text);
  drafting.space.write(plate);
  drafting.page.labels.push_back({drawn.zone->number, plate, drawn.centre, led});
}

bool inside_whole(const std::vector<Polyline>& shape, const Area& area) {
  for (const double x : {area.x_mm, area.middle().x_mm, area.right()}) {
    for (const double y : {area.y_mm, area.middle().y_mm, area.bottom()}) {
      if (!inside(shape, {x, y})) return false;
    }
  }
  return true;
}

// Glass and wheels that lie on the zones.
bool hidden(const Drafting& drafting, const Area& area) {
  return std::any_of(drafting.covers.begin(), drafting.covers.end(), [&](const Cover& cover) {
    if (!cover.area.overlaps(area)) return false;
    for (const At at : {At{area.x_mm, area.y_mm}, At{area.right(), area.y_mm},
                        At{area.x_mm, area.bottom()}, At{area.right(), area.bottom()}}) {
      if (inside(cover.shape, at)) return true;
    }
    return false;
  });
}

// How much of the worst-covered spot a plate would hide, 0 to 1.
double hides(const Drafting& drafting, std::size_t view, const Area& plate) {
  double most = 0;
  for (const SpotMark& mark : drafting.spots) {
    const Area own = bounds(mark.shape);
    if (mark.view != view || !own.overlaps(plate)) continue;
    const double width = std::min(own.right(), plate.right()) - std::max(own.x_mm, plate.x_mm);
    const double height = std::min(own.bottom(), plate.bottom()) - std::max(own.y_mm, plate.y_mm);
    most = std::max(most, width * height / (own.width_mm * own.height_mm));
  }
  return most;
}

// The place nearest to the middle at which a plate of this size lies in the zone, clear of words,
// and hides no more than that much of any spot.
std::optional<Area> room_inside(const Drafting& drafting, const DrawnZone& drawn, double width_mm,
                                double height_mm, double may_hide, double clear_mm = 0.3) {
  constexpr double pitch = 0.6;
  const Area extent = bounds(drawn.shape);
  std::optional<Area> best;
  double least = std::numeric_limits<double>::max();
  const auto try_at = [&](At at) {
    const double far = std::hypot(at.x_mm - drawn.centre.x_mm, at.y_mm - drawn.centre.y_mm);
    if (far >= least) return;
    const Area plate{at.x_mm - width_mm / 2, at.y_mm - height_mm / 2, width_mm, height_mm};
    if (!drafting.space.unwritten(plate.grown(0.2)) || !inside_whole(drawn.shape, plate)) return;
    if (hidden(drafting, plate) || drafting.space.leader_crosses(plate.grown(0.3))) return;
    if (hides(drafting, drawn.view, plate.grown(may_hide > 0 ? 0 : clear_mm)) > may_hide) return;
    least = far;
    best = plate;
  };
  if (extent.width_mm < width_mm || extent.height_mm < height_mm) return best;
  try_at(drawn.centre);
  for (double y = extent.y_mm; y <= extent.bottom() && least > 0; y += pitch) {
    for (double x = extent.x_mm; x <= extent.right(); x += pitch) try_at({x, y});
  }
  return best;
}

// What stands with a number: a name beside it or in lines under it, last that it wasn't seen.
struct Wording {
  std::string beside;
  std::vector<std::string> below;
  bool unseen = false;

  bool names() const { return !beside.empty() || !below.empty(); }
};

constexpr const char* unseen_words = "not seen";

// From what says most to what says least; the number alone is another matter.
std::vector<Wording> wordings(const Drafting& drafting, const DrawnZone& drawn) {
  const bool unseen = drawn.zone->fitted && drawn.zone->step == weighing::Step::not_seen;
  const bool main = drawn.plan->role == body::Role::main || drafting.sheet.kind == SheetKind::skin;
  const std::string& name = drawn.zone->name;
  std::vector<Wording> all;
  if (drafting.part_names && main) {
    all.push_back({name, {}, unseen});
    all.push_back({"", {name}, unseen});
    const std::size_t middle = name.find(' ', name.size() > 8 ? name.size() / 2 - 4 : 0);
    if (middle != std::string::npos)
      all.push_back({"", {name.substr(0, middle), name.substr(middle + 1)}, unseen});
  }
  if (unseen) all.push_back({"", {}, true});
  return all;
}

void write_words(Drafting& drafting, const std::string& words, const Area& on, Says says) {
  const Style style{number_pt, Font::regular, black, says};
  Layer& layer = drafting.page.layer("numbers");
  layer.items.push_back(Shape{{polyline(on)}, paper, {}});
  Text text = set(words, style, {on.middle().x_mm, on.bottom() - clear_y_mm - 0.15}, Align::centre,
                  drafting.measure);
  text.area = on.grown(-0.05);
  layer.items.push_back(text);
  drafting.space.write(on);
}

// The number with these words where there is room for all of them.
bool say(Drafting& drafting, const DrawnZone& drawn, const Wording& wording) {
  constexpr double margin_mm = 0.4;
  // A name leaves room for the figures beside the places.
  const double clear_mm = wording.names() ? 2.4 : 0.3;
  const auto width_of = [&](const std::string& words) {
    return words.empty()
               ? 0
               : drafting.measure(words, Font::regular, number_pt).width_mm + 2 * clear_x_mm;
  };
  const Area number = plate_at(drafting, drawn.zone->number, {});
  const double beside_mm = width_of(wording.beside);
  double width = number.width_mm + beside_mm;
  std::vector<std::pair<std::string, Says>> rows;
  for (const std::string& words : wording.below) rows.emplace_back(words, Says::part_name);
  if (wording.unseen) rows.emplace_back(unseen_words, Says::words);
  for (const auto& [words, says] : rows) width = std::max(width, width_of(words));
  const double row_mm = number.height_mm + 0.2;
  const double height = row_mm * static_cast<double>(1 + rows.size());
  const auto room =
      room_inside(drafting, drawn, width + 2 * margin_mm, height + 2 * margin_mm, 0, clear_mm);
  if (!room) return false;
  const double middle = room->middle().x_mm, top = room->y_mm + margin_mm;
  const double left = middle - (number.width_mm + beside_mm) / 2;
  draw_number(drafting, drawn, {left, top, number.width_mm, number.height_mm}, false);
  if (!wording.beside.empty())
    write_words(drafting, wording.beside,
                {left + number.width_mm, top, beside_mm, number.height_mm}, Says::part_name);
  double y = top + row_mm;
  for (const auto& [words, says] : rows) {
    const double each_mm = width_of(words);
    write_words(drafting, words, {middle - each_mm / 2, y, each_mm, number.height_mm}, says);
    y += row_mm;
  }
  if (wording.names()) drafting.used.named.insert(drawn.zone->number);
  return true;
}

bool say_most(Drafting& drafting, const DrawnZone& drawn) {
  return std::ranges::any_of(wordings(drafting, drawn),
                             [&](const Wording& wording) { return say(drafting, drawn, wording); });
}

// Where a thing of this size may stand so that a leader reaches `anchor` best.
struct Seat {
  Area area;
  At from;
  double cost = std::numeric_limits<double>::max();
};

enum class Ground { blank, lines, anything };  // what a thing may stand on

Seat seat_near(const Drafting& drafting, At anchor, double width, double height, double farthest,
               Ground ground, bool clear_of_spots = false) {
  Seat best;
  const auto free = [&](const Area& area) {
    const FreeSpace& space = drafting.space;
    switch (ground) {
      case Ground::blank:
        return space.blank(area.grown(0.4));
      case Ground::lines:
        return space.uncovered(area.grown(0.4));
      case Ground::anything:
        return space.unwritten(area.grown(0.3));
    }
    return false;
  };
  const auto on_spot = [&](const Area& area) {
    return std::any_of(drafting.spots.begin(), drafting.spots.end(), [&](const SpotMark& mark) {
      return bounds(mark.shape).grown(0.2).overlaps(area);
    });
  };
  for (double radius = 2.5; radius <= farthest && radius < best.cost + 3; radius += 0.7) {
    const int turns = std::max(24, static_cast<int>(radius * 6));
    for (int i = 0; i < turns; ++i) {
      const double angle = 2 * std::numbers::pi * i / turns;
      const At at{anchor.x_mm + radius * std::cos(angle), anchor.y_mm + radius * std::sin(angle)};
      const Area area{at.x_mm - width / 2, at.y_mm - height / 2, width, height};
      if (!free(area) || drafting.space.leader_crosses(area.grown(0.2))) continue;
      if (clear_of_spots && on_spot(area)) continue;
      const At from = nearest_on(area, anchor);
      if (drafting.space.crossings(from, anchor, area) > 0) continue;
      const double cost = std::hypot(from.x_mm - anchor.x_mm, from.y_mm - anchor.y_mm);
      if (cost < best.cost) best = {area, from, cost};
    }
  }
  return best;
}

// A leader: a hairline on a paper edge, so that it shows on any tint, with a dot at its end.
void draw_leader(Drafting& drafting, At from, At to) {
  Layer& layer = drafting.page.layer("leaders");
  layer.items.push_back(Shape{{segment(from, to)}, {}, Stroke{paper, 1.1, {}}});
  layer.items.push_back(Shape{{segment(from, to)}, {}, Stroke{ink, 0.35, {}}});
  layer.items.push_back(Shape{{circle(to, 0.3)}, ink, {}});
  drafting.space.lead(from, to);
}

}  // namespace

std::vector<const DrawnZone*> label_inside(Drafting& drafting) {
  std::vector<const DrawnZone*> order, left;
  for (const DrawnZone& drawn : drafting.zones) order.push_back(&drawn);
  // The tightest first: they have the fewest places to go.
  std::stable_sort(order.begin(), order.end(),
                   [](const DrawnZone* a, const DrawnZone* b) { return a->room_mm < b->room_mm; });
  for (const DrawnZone* drawn : order) {
    if (say_most(drafting, *drawn)) continue;
    const bool tells = drawn->zone->step > weighing::Step::sound || !drawn->zone->repairs.empty();
    if (!drafting.numbers_everywhere && !tells) continue;
    const Area size = plate_at(drafting, drawn->zone->number, {});
    std::optional<Area> plate;
    for (const double may_hide : {0.0, 0.25}) {
      if (!plate) plate = room_inside(drafting, *drawn, size.width_mm, size.height_mm, may_hide);
    }
    if (!plate) {
      left.push_back(drawn);
      continue;
    }
    draw_number(drafting, *drawn, *plate, false);
  }
  return left;
}

void label_outside(Drafting& drafting, const std::vector<const DrawnZone*>& zones) {
  for (const DrawnZone* drawn : zones) {
    const Area size = plate_at(drafting, drawn->zone->number, {});
    struct Try {
      double farthest_mm;
      Ground ground;
    };
    Seat seat;
    for (const auto& [farthest, ground] :
         {Try{9, Ground::blank}, Try{10, Ground::lines}, Try{20, Ground::blank},
          Try{20, Ground::lines}, Try{25, Ground::anything}, Try{120, Ground::anything}}) {
      if (seat.cost < FreeSpace::never) break;
      seat = seat_near(drafting, drawn->centre, size.width_mm, size.height_mm, farthest, ground);
    }
    if (seat.cost >= FreeSpace::never) {
      drafting.used.unnumbered.insert(drawn->zone->number);
      continue;
    }
    draw_leader(drafting, seat.from, drawn->centre);
    draw_number(drafting, *drawn, seat.area, true);
  }
}

void ring_ranks(Drafting& drafting, const std::vector<const weighing::Spot*>& called, int last) {
  constexpr double radius_mm = 1.75;
  const Style style{6.5, Font::bold, black, Says::rank};
  std::vector<const SpotMark*> marks;
  for (const SpotMark& mark : drafting.spots) {
    const bool has_callout = std::find(called.begin(), called.end(), mark.spot) != called.end();
    if (!mark.principal || has_callout) continue;
    if (mark.spot->rank > last) drafting.used.unranked = true;
    if (mark.spot->rank <= last) marks.push_back(&mark);
  }
  std::sort(marks.begin(), marks.end(),
            [](const SpotMark* a, const SpotMark* b) { return a->spot->rank < b->spot->rank; });
  for (const SpotMark* mark : marks) {
    const Area own = bounds(mark->shape);
    const double size = 2 * radius_mm;
    const double reach = std::hypot(own.width_mm, own.height_mm) / 2 + 12;
    const Seat seat = seat_near(drafting, mark->at, size, size, reach, Ground::anything, true);
    if (seat.cost >= FreeSpace::never) continue;
    const At middle = seat.area.middle();
    const double far = std::hypot(middle.x_mm - mark->at.x_mm, middle.y_mm - mark->at.y_mm);
    Layer& layer = drafting.page.layer("ranks");
    layer.items.push_back(Shape{{segment(middle, mark->at)}, {}, Stroke{paper, 1.3, {}}});
    layer.items.push_back(Shape{{segment(middle, mark->at)}, {}, Stroke{ink, 0.5, {}}});
    if (far > radius_mm + 3) drafting.space.lead(seat.from, mark->at);
    layer.items.push_back(Shape{{circle(middle, radius_mm)}, paper, Stroke{ink, 0.6, {}}});
    Text text = set(fmt::format("{}", mark->spot->rank), style,
                    {middle.x_mm, middle.y_mm + 6.5 * digit_share * mm_per_pt / 2}, Align::centre,
                    drafting.measure);
    text.area = seat.area;
    layer.items.push_back(text);
    drafting.space.write(seat.area);
    drafting.used.ranks = true;
  }
}

}  // namespace tinworm::scene
