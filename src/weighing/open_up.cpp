#include "weighing/open_up.hpp"

#include <algorithm>
#include <limits>
#include <string>
#include <string_view>
#include <tuple>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include "weighing/gauging.hpp"
#include "weighing/nearness.hpp"
#include "weighing/verdict.hpp"
#include "weighing/words.hpp"

namespace tinworm::weighing {
namespace {

using body::Role;

bool has_filler(const survey::Spot& spot) {
  return std::ranges::find(spot.shapes, survey::Shape::filler) != spot.shapes.end();
}

constexpr double tolerance = 1e-9;

// Until one can look, common practice: paint off, trim out, a hole for a scope.
constexpr int minutes_coat = 10, minutes_trim = 30, minutes_scope = 15, minutes_seat = 40;

class Finder {
 public:
  Finder(Result& result, const std::vector<ZoneFacts>& facts, const rules::Rules& rules)
      : result_(result), facts_(facts), rules_(rules) {}

  void find() {
    find_coverage();
    for (std::size_t i = 0; i < facts_.size(); ++i) {
      if (!facts_[i].fitted()) continue;
      find_unseen(i);
      find_coated_mount(i);
      find_hidden(i);
      find_tapped(i);
      for (const Spot* spot : worst_first(result_.zones[i])) find_place(i, *spot);
      find_coat(i);
    }
    for (const survey::Gap& gap : result_.survey.gaps)
      if (moves(gap, rules_)) find_gap(gap);
    find_insides();
    result_.open_up_first = !result_.open_up.empty() || short_of_coverage_;
  }

 private:
  // By rank, then by name: never by the order in which they were written down.
  static std::vector<const Spot*> worst_first(const Zone& zone) {
    std::vector<const Spot*> spots;
    for (const Spot& spot : zone.spots) spots.push_back(&spot);
    std::ranges::stable_sort(spots, {}, [](const Spot* spot) {
      const int rank = spot->rank > 0 ? spot->rank : std::numeric_limits<int>::max();
      return std::pair(rank, std::string_view(spot->name));
    });
    return spots;
  }

  // What a whole zone that nobody saw could be.
  Verdict whole_zone(std::size_t i) const {
    const Zone& zone = result_.zones[i];
    if (zone.role == Role::skin) return Verdict::treat;
    return zone.on_mount || zone.into_mount ? Verdict::keep_parked : Verdict::mend;
  }

  const body::Opening* opening_of(std::size_t i) const {
    if (!facts_[i].plan || facts_[i].plan->opening.empty()) return nullptr;
    return result_.body->opening(facts_[i].plan->opening);
  }

  int minutes(std::size_t i) const {
    using survey::SeenWord;
    const auto word = facts_[i].seen.word;
    if (const body::Opening* opening = opening_of(i)) return static_cast<int>(opening->minutes);
    if (!facts_[i].is_seen() && facts_[i].seen.by == survey::HiddenBy::seat) return minutes_seat;
    if (!facts_[i].is_seen() && word != SeenWord::tap) return minutes_trim;
    const bool inside = facts_[i].has_inside() && !facts_[i].inside_seen();
    return inside && word == SeenWord::bare ? minutes_scope : minutes_coat;
  }

  // One entry a zone; a second cause joins the first.
  void open(std::size_t i, std::string_view rule, const std::string& why, Verdict could_become) {
    const Zone& zone = result_.zones[i];
    for (OpenUp& each : result_.open_up) {
      if (each.zone != zone.number || each.own != zone.own) continue;
      each.could_become = std::max(each.could_become, could_become);
      if (each.why.find(why) == std::string::npos) each.why += "; " + why;
      return;
    }
    OpenUp entry{zone.number, zone.own, std::string(rule), why, could_become};
    entry.minutes = minutes(i);
    entry.carries = zone.on_mount;
    if (const body::Opening* opening = opening_of(i)) entry.opening = opening->how;
    result_.open_up.push_back(entry);
  }

  void reason(std::size_t i, const std::string& spot, std::string_view rule,
              const std::string& text) {
    const Zone& zone = result_.zones[i];
    result_.open_reasons.push_back(
        {zone.number, zone.own, spot, text, std::string(rule), rule_source(rule, rules_)});
  }

  void place_reason(std::size_t i, const Spot& spot, std::string_view rule,
                    const std::string& what) {
    reason(i, spot.name, rule, describe(spot, result_.zones[i], rule, rules_) + "; " + what);
  }

  void find_coverage() {
    const double seen = result_.main.area_share;
    short_of_coverage_ = seen + tolerance < rules_.coverage_limit;
    if (!short_of_coverage_) return;
    result_.open_reasons.push_back(
        {0, "", "",
         fmt::format("{:.0f} % of the main structure was seen; {:.0f} % is the least to judge by",
                     100 * seen, 100 * rules_.coverage_limit),
         "coverage", rule_source("coverage", rules_)});
  }

  // Main structure, and any part that a mount stands on.
  void find_unseen(std::size_t i) {
    const Zone& zone = result_.zones[i];
    if (facts_[i].is_seen() || zone.role == Role::skin) return;
    if (zone.on_mount || zone.into_mount) {
      const std::string why = fmt::format("the {} stands on {}", zone.near,
                                          zone.on_mount ? "it" : "a part welded to it");
      open(i, "mount-not-seen", why, whole_zone(i));
      reason(i, "", "mount-not-seen", fmt::format("{}: not seen, and {}", title(zone), why));
    } else if (zone.role == Role::main) {
      open(i, "main-not-seen", "main structure, not seen", whole_zone(i));
      reason(i, "", "main-not-seen", fmt::format("{}: main structure, not seen", title(zone)));
    }
  }

  // A mount's own part seen only through its coat.
  void find_coated_mount(std::size_t i) {
    const Zone& zone = result_.zones[i];
    if (!facts_[i].is_seen() || !facts_[i].load_bearing() || !zone.on_mount) return;
    if (is_known(zone, facts_[i])) return;
    const bool coated = facts_[i].seen.word != survey::SeenWord::bare;
    if (!coated) return;  // a bare box: its inside asks
    open(
        i, "mount-not-seen",
        fmt::format("the {} stands on it; seen only through its coat, not felt, measured or scoped",
                    zone.near),
        whole_zone(i));
    reason(i, "", "mount-not-seen",
           fmt::format("{}: the {} stands on it; seen only through its coat, not felt, measured or "
                       "scoped",
                       title(zone), zone.near));
  }

  static bool hides_more(const Spot& spot, const Zone& zone) {
    if (spot.is_repair)
      return spot.found && !zone.repairs[spot.index].treatment &&
             zone.repairs[spot.index].reliable == false;
    return spot.found && spot.step >= Step::weak;
  }

  // A part that hides both of a pair: whether the place reaches that side of the car's middle.
  static bool on_its_side(const Spot& spot, const body::Zone& zone, body::Side hidden) {
    const geometry::Interval y = place_of(spot.at, spot.size, zone).y;
    if (hidden == body::Side::left) return y.low < 0;
    return hidden == body::Side::centre || y.high > 0;
  }

  // Zones behind one with a weak or holed place or a repair that can't be relied on.
  void find_hidden(std::size_t i) {
    if (!facts_[i].plan) return;
    const Zone& zone = result_.zones[i];
    for (std::size_t k = 0; k < facts_.size(); ++k) {
      const auto& hides = facts_[i].plan->hides;
      if (!facts_[k].plan || facts_[k].is_seen() || !facts_[k].fitted()) continue;
      if (std::ranges::find(hides, facts_[k].number) == hides.end()) continue;
      const auto bad = std::ranges::find_if(zone.spots, [&](const Spot& s) {
        return hides_more(s, zone) && on_its_side(s, *facts_[i].plan, facts_[k].side);
      });
      if (bad == zone.spots.end()) continue;
      open(k, "hidden-neighbour", fmt::format("hides behind {}", title(zone)), whole_zone(k));
      reason(k, "", "hidden-neighbour",
             fmt::format("{}: not seen, and it hides behind {}, where there is {}",
                         title(result_.zones[k]), title(zone),
                         bad->is_repair ? "a repair that can't be relied on"
                                        : fmt::format("a {} place", word(bad->step))));
    }
  }

  // What is round a place that only a tap found isn't known.
  void find_tapped(std::size_t i) {
    if (facts_[i].is_seen()) return;
    const Zone& zone = result_.zones[i];
    for (const Spot* spot : worst_first(zone)) {
      if (!spot->found) continue;
      open(i, "found-by-tap", "found by tapping, not seen", whole_zone(i));
      place_reason(i, *spot, "found-by-tap", "not seen");
    }
  }

  void place(std::size_t i, const Spot& spot, std::string_view rule, const std::string& why,
             const std::string& what) {
    const Verdict low = level_at_low(spot, result_.zones[i], rules_).verdict;
    open(i, rule, why, std::max(low, Verdict::treat));
    place_reason(i, spot, rule, what);
  }

  void find_place(std::size_t i, const Spot& spot) {
    const Zone& zone = result_.zones[i];
    if (!facts_[i].load_bearing()) return;
    if (spot.is_repair) {
      find_repair(i, spot);
      return;
    }
    find_readings(i, spot);
    const bool may_be_worse =
        spot.may_bear.near > spot.bearing.near && spot.may_bear.near > Near::within_radius;
    const bool changes =
        level_at_low(spot, zone, rules_).verdict > level(spot, zone, rules_).verdict;
    if (spot.found && may_be_worse && changes)
      place(i, spot, "may-be-near", fmt::format("may be near the {}", spot.may_bear.mount),
            "its place wasn't recorded");
    if (spot.found && !spot.by_measure_or_hand && spot.step_low >= Step::thin)
      place(i, spot, "judged-by-eye", "only judged, and could be thin or worse", "not measured");
    if (spot.found && spot.signs.thick_coat)
      place(i, spot, "thick-coat", "the magnet holds badly",
            "the magnet holds badly: a thick coat");
    if (spot.found && spot.stuffed)
      place(i, spot, "stuffed", "stuffed: what is behind isn't known",
            "what is behind isn't known");
    const bool reaches =
        level_at_low(spot, zone, rules_).verdict > level(spot, zone, rules_).verdict;
    if (spot.found && spot.by_measure_or_hand && reaches)
      place(i, spot, "interval-reaches", "what was measured or felt could be worse",
            "at its low end it would be worse");
  }

  void find_readings(std::size_t i, const Spot& spot) {
    if (spot.too_thick) {
      open(i, "too-thick", "more than one sheet was measured",
           std::max(Verdict::mend, level_at_low(spot, result_.zones[i], rules_).verdict));
      place_reason(i, spot, "too-thick", "readings over one sheet; a plate or a second skin");
    }
    if (spot.contradict)
      place(i, spot, "readings-contradict", "its readings contradict each other",
            "its readings contradict each other");
    if (spot.bound_not_sound)
      place(i, spot, "judged-by-eye", "readings through a coat say less than sound",
            "an upper bound, and not sound");
    const bool sound = !spot.found && spot.metal.shown.value >= sheet_opens_nothing - tolerance;
    if (spot.sheet_assumed && !sound)
      place(i, spot, "sheet-assumed", "read sound metal of the same part",
            "its sheet is assumed: read sound metal of the same part");
  }

  void find_repair(std::size_t i, const Spot& spot) {
    const Repair& repair = result_.zones[i].repairs[spot.index];
    if (repair.treatment || repair.reliable) return;
    place(i, spot, "repair-not-known", "a repair whose joint isn't known",
          "how it is joined tells whether it can be relied on");
  }

  void find_coat(std::size_t i) {
    const Zone& zone = result_.zones[i];
    if (!facts_[i].load_bearing() || !facts_[i].entry) return;
    const Verdict could = zone.on_mount ? Verdict::keep_parked : Verdict::mend;
    if (zone.film && is_thicker(*zone.film, rules_.film_heavy_um)) {
      open(i, "thick-coat", "a coat thick enough for filler", could);
      reason(i, "", "thick-coat",
             fmt::format("{}: coat of {}{}, filler or a thick seal; metal beneath not known",
                         title(zone), greatest_text(*zone.film),
                         zone.film->off_scale ? ", off the gauge's scale" : " at most"));
    }
    for (const survey::Spot& spot : facts_[i].entry->found) {
      if (!has_filler(spot)) continue;
      open(i, "thick-coat", "filler on it", could);
      reason(i, spot.name, "thick-coat",
             fmt::format("{}, {}: filler; metal beneath not known", title(zone), spot.name));
    }
  }

  void find_gap(const survey::Gap& gap) {
    for (const body::Side side : sides_of(gap)) {
      const auto sill = result_.body->sills.find(side);
      if (sill == result_.body->sills.end()) continue;
      const auto is_wall = [&](std::size_t i) {
        return std::ranges::find(sill->second, facts_[i].number) != sill->second.end();
      };
      bool all_seen = true;
      for (std::size_t i = 0; i < facts_.size(); ++i)
        if (is_wall(i)) all_seen = all_seen && facts_[i].is_seen() && facts_[i].inside_seen();
      for (std::size_t i = 0; i < facts_.size(); ++i) {
        if (!is_wall(i)) continue;
        open(i, "gap-moves", "a gap above it moves on the lift",
             all_seen ? Verdict::mend : Verdict::keep_parked);
        reason(i, "", "gap-moves",
               fmt::format("{}: {} moves on the lift", title(result_.zones[i]), gap.where));
      }
    }
  }

  bool is_thin(std::size_t i) const {
    return std::ranges::any_of(result_.zones[i].spots,
                               [](const Spot& s) { return s.found && s.step >= Step::thin; });
  }

  bool beside_a_thin_place(std::size_t i) const {
    if (is_thin(i)) return true;
    for (const body::Box& box : result_.body->boxes) {
      const auto is_wall = [&](std::size_t k) {
        return facts_[k].plan && std::ranges::find(box.walls, facts_[k].number,
                                                   &body::BoxWall::zone) != box.walls.end();
      };
      if (!is_wall(i)) continue;
      for (std::size_t k = 0; k < facts_.size(); ++k)
        if (is_wall(k) && is_thin(k)) return true;
    }
    return false;
  }

  // One sentence for all: which insides were seen is said once.
  void find_insides() {
    std::string zones;
    int count = 0;
    for (std::size_t i = 0; i < facts_.size(); ++i) {
      if (facts_[i].role != Role::main || !facts_[i].is_seen() || facts_[i].inside_seen()) continue;
      if (!result_.zones[i].on_mount && !beside_a_thin_place(i)) continue;
      open(i, "inside-not-seen", "its inside wasn't seen", Verdict::mend);
      zones += (zones.empty() ? "" : "; ") + title(result_.zones[i]);
      ++count;
    }
    if (zones.empty()) return;
    result_.open_reasons.push_back({0, "", "",
                                    fmt::format("the inside wasn't seen of {} part{}: {}", count,
                                                count == 1 ? "" : "s", zones),
                                    "inside-not-seen", rule_source("inside-not-seen", rules_)});
  }

  static constexpr double sheet_opens_nothing = 0.90;  // of an assumed sheet, without rust

  Result& result_;
  const std::vector<ZoneFacts>& facts_;
  const rules::Rules& rules_;
  bool short_of_coverage_ = false;
};

}  // namespace

void find_open_up(Result& result, const std::vector<ZoneFacts>& facts, const rules::Rules& rules) {
  Finder(result, facts, rules).find();
}

}  // namespace tinworm::weighing
