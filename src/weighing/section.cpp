#include "weighing/section.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <set>

#include "weighing/faces.hpp"
#include "weighing/nearness.hpp"

namespace tinworm::weighing {
namespace {

using geometry::Interval;
using End = double Span::*;

constexpr double tolerance = 1e-9;

// Metal gone from a wall over a stretch of the box and of its developed width.
struct Gone {
  std::size_t wall = 0;
  Interval along, across;
  double lambda = 0;
  Spot* spot = nullptr;
};

bool is_weak(const Spot& spot, End end) {
  const bool low = end == &Span::low;
  return (low ? spot.beside_step_low : spot.beside_step) >= Step::weak;
}

bool is_hole(const Spot& spot) {
  return spot.signs.hole && !spot.signs.pinhole;
}

bool is_bad_repair(const Spot& spot, const Zone& zone) {
  const bool is = spot.is_repair && spot.found;
  return is && zone.repairs[spot.index].reliable == false && !zone.repairs[spot.index].treatment;
}

bool meets(const Interval& a, const Interval& b, double apart_mm) {
  return a.low <= b.high + apart_mm + tolerance && b.low <= a.high + apart_mm + tolerance;
}

// One box with all that is known of its walls.
class Boxed {
 public:
  Boxed(const body::Box& box, std::vector<Zone>& zones, const std::vector<ZoneFacts>& facts,
        const rules::Rules& rules)
      : box_(box), faces_(faces(box)), zones_(zones), facts_(facts), rules_(rules) {
    for (std::size_t i = 0; i < facts.size(); ++i)
      if (facts[i].plan && facts[i].fitted() && is_wall(facts[i].number)) layers_.push_back(i);
  }

  bool any_known() const {
    return std::ranges::any_of(
        layers_, [&](std::size_t i) { return facts_[i].is_seen() || !zones_[i].spots.empty(); });
  }

  SectionLeft left() {
    SectionLeft section;
    section.limit = rules_.section_limit;
    section.from_mm = box_.from_mm;
    section.to_mm = box_.to_mm;
    const Place at_value = least_place(&Span::value), at_low = least_place(&Span::low);
    const double high = left_at(gone(&Span::high), at_value.along.middle());
    section.left = {at_low.left, at_value.left, std::max(at_value.left, high)};
    section.left.low = std::min(section.left.low, section.left.value);
    section.from_mm = at_value.along.low;
    section.to_mm = at_value.along.high;
    section.walls = walls_at(at_value.along.middle());
    section.all_layers = all_layers(&Span::value, &Spot::section_gone);
    const bool all_may = all_layers(&Span::low, &Spot::section_may_go);
    section.gone = section.all_layers || is_under(section.left.value);
    section.may_go = section.gone || all_may || is_under(section.left.low);
    mark(&Span::value, &Spot::section_gone);
    mark(&Span::low, &Spot::section_may_go);
    return section;
  }

  // Which places lie on one wall only.
  void find_single_walls() {
    for (const std::size_t i : layers_)
      for (Spot& spot : zones_[i].spots) {
        if (!lies_in(spot, *facts_[i].plan, box_, faces_, rules_)) continue;
        spot.one_wall = others_are_sound(spot, i, &Span::value);
        spot.one_wall_at_worst = others_are_sound(spot, i, &Span::low);
      }
  }

 private:
  struct Place {
    Interval along;
    double left = 1;
  };

  bool is_wall(int zone) const {
    return std::ranges::find(box_.walls, zone, &body::BoxWall::zone) != box_.walls.end();
  }

  bool is_under(double left) const { return left < rules_.section_limit - tolerance; }

  double width_mm(std::size_t wall) const {
    double width = 0;
    for (const Face& face : faces_)
      if (face.wall == wall) width += face.length_mm;
    return width;
  }

  double sheet_mm(std::size_t wall) const {
    for (const std::size_t i : layers_)
      if (facts_[i].number == box_.walls[wall].zone) return facts_[i].plan->sheet_mm;
    return 0;
  }

  // The developed stretch that a place of such a width covers: on its face, or, wider than that,
  // round the corner half each way.
  Interval across(const Face& face, const InPlane& at, double width) const {
    double centre = face.start_mm + face.length_mm / 2;
    if (at.u && at.v && width < face.length_mm) {
      const double du = face.to.u - face.from.u, dv = face.to.v - face.from.v;
      const double t = ((*at.u - face.from.u) * du + (*at.v - face.from.v) * dv) / face.length_mm;
      centre = face.start_mm + std::clamp(t, width / 2, face.length_mm - width / 2);
    }
    return {centre - width / 2, centre + width / 2};
  }

  void add(Spot& spot, const body::Zone& zone, const std::optional<survey::Size>& size,
           double lambda, std::vector<Gone>& all) const {
    const Face* face = widest(nearest_faces(faces_, zone.number, in_plane(spot.at, box_.axis)));
    if (face == nullptr) return;
    const Extents of = extents(size, zone, box_, rules_);
    const Interval stretch = along(spot.at, of.along_mm, box_);
    all.push_back(
        {face->wall, stretch,
         across(*face, in_plane(spot.at, box_.axis), of.across_mm.value_or(rules_.hole_mm)), lambda,
         &spot});
  }

  // All holes of a place beside one another across the box.
  std::optional<survey::Size> holes_together(const Spot& spot) const {
    if (spot.holes.empty())
      return spot.size_assumed ? std::nullopt
                               : std::optional(survey::Size{rules_.hole_mm, rules_.hole_mm});
    survey::Size all = spot.holes.front();
    for (std::size_t i = 1; i < spot.holes.size(); ++i) all.across_mm += spot.holes[i].across_mm;
    return all;
  }

  void add_spot(std::size_t layer, Spot& spot, End end, std::vector<Gone>& all) const {
    const bool low = end == &Span::low;
    const body::Zone& zone = *facts_[layer].plan;
    if (!spot.found || !lies_in(spot, zone, box_, faces_, rules_)) return;
    if (is_bad_repair(spot, zones_[layer])) {
      if (low) add_repair(layer, spot, all);
      return;
    }
    if (spot.is_repair) return;
    if (is_hole(spot)) add(spot, zone, holes_together(spot), 0, all);
    const bool counts = low || spot.beside_by_measure_or_hand;
    if (counts && is_weak(spot, end)) add(spot, zone, spot.size, spot.beside.*end, all);
    if (low && spot.stuffed) add(spot, zone, spot.size, 0, all);
  }

  void add_repair(std::size_t layer, Spot& spot, std::vector<Gone>& all) const {
    const body::Zone& zone = *facts_[layer].plan;
    add(spot, zone, spot.size, spot.metal.weighed.low, all);
    const bool placed = coordinate(spot.at, box_.axis).has_value();
    const Interval stretch =
        placed ? along(spot.at, extents(spot.size, zone, box_, rules_).along_mm, box_)
               : Interval{box_.from_mm, box_.to_mm};
    for (std::size_t w = 0; w < box_.walls.size(); ++w)
      for (const std::size_t i : layers_)
        if (i != layer && facts_[i].number == box_.walls[w].zone && !facts_[i].inside_seen())
          all.push_back({w, stretch, {0, width_mm(w)}, 0, &spot});
  }

  std::vector<Gone> gone(End end) const {
    std::vector<Gone> all;
    for (const std::size_t i : layers_)
      for (Spot& spot : zones_[i].spots) add_spot(i, spot, end, all);
    return all;
  }

  // Metal left of one wall at a place, over its developed width.
  WallLeft wall_at(const std::vector<Gone>& gone, std::size_t wall, double at_mm) const {
    WallLeft found{box_.walls[wall].zone, width_mm(wall), sheet_mm(wall)};
    std::vector<const Gone*> here;
    std::vector<double> cuts{0, found.width_mm};
    for (const Gone& each : gone) {
      if (each.wall != wall || at_mm < each.along.low || at_mm > each.along.high) continue;
      here.push_back(&each);
      for (const double end : {each.across.low, each.across.high})
        if (end > 0 && end < found.width_mm) cuts.push_back(end);
    }
    std::ranges::sort(cuts);
    double kept_mm = 0;
    for (std::size_t i = 1; i < cuts.size(); ++i) {
      const double middle = (cuts[i - 1] + cuts[i]) / 2, piece = cuts[i] - cuts[i - 1];
      double lambda = 1;
      bool is_gone = false;
      for (const Gone* each : here) {
        if (middle < each->across.low || middle > each->across.high) continue;
        lambda = std::min(lambda, each->lambda);
        is_gone = true;
      }
      kept_mm += piece * lambda;
      if (is_gone) found.gone_mm += piece;
    }
    if (found.width_mm > 0) found.left = kept_mm / found.width_mm;
    return found;
  }

  double left_at(const std::vector<Gone>& gone, double at_mm) const {
    double whole = 0, left = 0;
    for (std::size_t w = 0; w < box_.walls.size(); ++w) {
      const WallLeft wall = wall_at(gone, w, at_mm);
      whole += wall.width_mm * wall.sheet_mm;
      left += wall.width_mm * wall.sheet_mm * wall.left;
    }
    return whole > 0 ? left / whole : 1;
  }

  std::vector<WallLeft> walls_at(double at_mm) const {
    const std::vector<Gone> all = gone(&Span::value);
    std::vector<WallLeft> walls;
    for (std::size_t w = 0; w < box_.walls.size(); ++w) walls.push_back(wall_at(all, w, at_mm));
    return walls;
  }

  // The places between which the section doesn't change.
  std::vector<Interval> stretches(const std::vector<Gone>& gone) const {
    std::vector<double> cuts{box_.from_mm, box_.to_mm};
    for (const Gone& each : gone)
      for (const double end : {each.along.low, each.along.high})
        if (end > box_.from_mm && end < box_.to_mm) cuts.push_back(end);
    std::ranges::sort(cuts);
    std::vector<Interval> all;
    for (std::size_t i = 1; i < cuts.size(); ++i)
      if (cuts[i] > cuts[i - 1]) all.push_back({cuts[i - 1], cuts[i]});
    return all;
  }

  Place least_place(End end) const {
    const std::vector<Gone> all = gone(end);
    Place least{{box_.from_mm, box_.to_mm}, 1};
    for (const Interval& stretch : stretches(all)) {
      const double left = left_at(all, stretch.middle());
      if (left < least.left - tolerance) least = {stretch, left};
    }
    return least;
  }

  // Every place that has a part in a section under the limit.
  void mark(End end, bool Spot::*flag) {
    const std::vector<Gone> all = gone(end);
    for (const Interval& stretch : stretches(all)) {
      if (!is_under(left_at(all, stretch.middle()))) continue;
      for (const Gone& each : all)
        if (meets(each.along, stretch, -tolerance * 2)) each.spot->*flag = true;
    }
  }

  struct WeakPlace {
    std::size_t layer = 0;
    Interval along;
    Spot* spot = nullptr;
  };

  bool is_large(const Spot& spot) const {
    if (!spot.size && spot.holes.empty()) return true;
    if (spot.size_assumed) return true;
    double greater = spot.signs.hole_mm;
    if (spot.size) greater = std::max({greater, spot.size->along_mm, spot.size->across_mm});
    return greater >= rules_.section_place_mm - tolerance;
  }

  std::vector<WeakPlace> weak_places(End end) const {
    const bool low = end == &Span::low;
    std::vector<WeakPlace> found;
    for (const std::size_t i : layers_)
      for (Spot& spot : zones_[i].spots) {
        if (!spot.found || spot.is_repair || !is_large(spot)) continue;
        if (!lies_in(spot, *facts_[i].plan, box_, faces_, rules_)) continue;
        const bool weak = is_weak(spot, end) && (low || spot.beside_by_measure_or_hand);
        if (!weak && !is_hole(spot) && !(low && spot.stuffed)) continue;
        const Extents of = extents(spot.size, *facts_[i].plan, box_, rules_);
        found.push_back({i, along(spot.at, of.along_mm, box_), &spot});
      }
    return found;
  }

  // Whether every layer is weak near one place; marks those places.
  bool all_layers(End end, bool Spot::*flag) {
    if (layers_.size() < 2) return false;
    bool any = false;
    const std::vector<WeakPlace> places = weak_places(end);
    for (const WeakPlace& anchor : places) {
      std::set<std::size_t> layers;
      for (const WeakPlace& other : places)
        if (meets(anchor.along, other.along, rules_.section_along_mm)) layers.insert(other.layer);
      if (layers.size() < layers_.size()) continue;
      any = true;
      anchor.spot->*flag = true;
      for (const WeakPlace& other : places)
        if (meets(anchor.along, other.along, rules_.section_along_mm)) other.spot->*flag = true;
    }
    return any;
  }

  bool others_are_sound(const Spot& spot, std::size_t layer, End end) const {
    const auto is_layer_seen = [&](std::size_t i) {
      return facts_[i].is_seen() && facts_[i].seen.word != survey::SeenWord::part &&
             facts_[i].inside_seen();
    };
    if (layers_.size() < 2 || !std::ranges::all_of(layers_, is_layer_seen)) return false;
    const auto stretch_of = [&](const Spot& of, std::size_t i) {
      return along(of.at, extents(of.size, *facts_[i].plan, box_, rules_).along_mm, box_);
    };
    const Interval here = stretch_of(spot, layer);
    for (const std::size_t i : layers_) {
      if (i == layer) continue;
      for (const Spot& other : zones_[i].spots) {
        const Step step = end == &Span::low ? other.step_low : other.step;
        const bool placed = coordinate(other.at, box_.axis).has_value();
        const bool beside = !placed || meets(here, stretch_of(other, i), rules_.section_along_mm);
        if (beside && step >= Step::thin) return false;
      }
    }
    return true;
  }

  const body::Box& box_;
  std::vector<Face> faces_;
  std::vector<Zone>& zones_;
  const std::vector<ZoneFacts>& facts_;
  const rules::Rules& rules_;
  std::vector<std::size_t> layers_;  // zones that are its walls, by their place in the lists
};

// Places of a gone section weigh as nothing left, as main structure.
void weigh_gone(Zone& zone) {
  for (Spot& spot : zone.spots) {
    if (!spot.section_gone) {
      if (spot.section_may_go) spot.weight.high = 1;
    } else {
      spot.weight.value = spot.weight.high = 1;
      spot.counts = 1;
    }
    zone.weight.value = std::max(zone.weight.value, spot.weight.value);
    zone.weight.high = std::max(zone.weight.high, spot.weight.high);
  }
  if (zone.damage) zone.damage = zone.weight.value;
}

}  // namespace

std::vector<std::optional<SectionLeft>> sections(const body::Plan& plan, std::vector<Zone>& zones,
                                                 const std::vector<ZoneFacts>& facts,
                                                 const rules::Rules& rules) {
  std::vector<std::optional<SectionLeft>> all;
  for (const body::Box& box : plan.boxes) {
    Boxed boxed(box, zones, facts, rules);
    all.push_back(boxed.any_known() ? std::optional(boxed.left()) : std::nullopt);
    boxed.find_single_walls();
  }
  for (Zone& zone : zones) weigh_gone(zone);
  return all;
}

}  // namespace tinworm::weighing
