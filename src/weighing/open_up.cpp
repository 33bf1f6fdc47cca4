#include "weighing/open_up.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string>
#include <string_view>
#include <tuple>

#include "weighing/gauging.hpp"
#include "weighing/verdict.hpp"
#include "weighing/words.hpp"

namespace tinworm::weighing {
namespace {

using body::Role;

bool has_filler(const survey::Spot& spot) {
  return std::ranges::find(spot.shapes, survey::Shape::filler) != spot.shapes.end();
}

class Finder {
 public:
  Finder(Result& result, const std::vector<ZoneFacts>& facts, const rules::Rules& rules)
      : result_(result), facts_(facts), rules_(rules) {}

  void find() {
    find_coverage();
    for (std::size_t i = 0; i < facts_.size(); ++i) {
      if (!facts_[i].fitted()) continue;
      find_unseen_mount(i);
      find_hidden(i);
      find_tapped(i);
      find_places(i);
      find_coat(i);
    }
    find_insides();
    sort();
    result_.open_up_first = !result_.open_up.empty() || short_of_coverage_;
  }

 private:
  Verdict could_become(std::size_t i) const {
    if (facts_[i].role == Role::skin) return Verdict::treat;
    return result_.zones[i].near.empty() ? Verdict::repair : Verdict::do_not_drive;
  }

  // One entry a zone; a second cause joins the first.
  void open(std::size_t i, std::string_view rule, const std::string& why) {
    const Zone& zone = result_.zones[i];
    for (OpenUp& each : result_.open_up) {
      if (each.zone != zone.number || each.own != zone.own) continue;
      if (each.why.find(why) == std::string::npos) each.why += "; " + why;
      return;
    }
    result_.open_up.push_back({zone.number, zone.own, std::string(rule), why, could_become(i)});
  }

  void reason(std::size_t i, const std::string& spot, std::string_view rule,
              const std::string& text) {
    const Zone& zone = result_.zones[i];
    result_.reasons.push_back(
        {zone.number, zone.own, spot, text, std::string(rule), rule_source(rule, rules_)});
  }

  void find_coverage() {
    const double seen = result_.main.area_share;
    short_of_coverage_ = seen + 1e-9 < rules_.coverage_limit;
    if (!short_of_coverage_) return;
    result_.reasons.push_back(
        {0, "", "",
         fmt::format("{:.0f} % of the main structure was seen; {:.0f} % is the least to judge by",
                     100 * seen, 100 * rules_.coverage_limit),
         "coverage", rule_source("coverage", rules_)});
    for (std::size_t i = 0; i < facts_.size(); ++i)
      if (facts_[i].role == Role::main && facts_[i].fitted() && !facts_[i].is_seen())
        open(i, "coverage", "main structure, not seen");
  }

  void find_unseen_mount(std::size_t i) {
    const Zone& zone = result_.zones[i];
    if (zone.role != Role::main || facts_[i].is_seen() || !zone.on_mount) return;
    open(i, "mount-not-seen", fmt::format("the {} stands on it", zone.near));
    reason(i, "", "mount-not-seen",
           fmt::format("{}: not seen, and the {} stands on it", title(zone), zone.near));
  }

  // Zones behind one with a weak or holed place or a repair that can't be relied on.
  void find_hidden(std::size_t i) {
    if (!facts_[i].plan) return;
    const Zone& zone = result_.zones[i];
    const auto bad = std::ranges::find_if(
        zone.spots, [](const Spot& s) { return s.found && (s.step >= Step::weak || s.is_repair); });
    if (bad == zone.spots.end()) return;
    for (std::size_t k = 0; k < facts_.size(); ++k) {
      const auto& hides = facts_[i].plan->hides;
      if (!facts_[k].plan || facts_[k].is_seen() || !facts_[k].fitted()) continue;
      if (std::ranges::find(hides, facts_[k].number) == hides.end()) continue;
      open(k, "hidden-neighbour", fmt::format("hides behind {}", title(zone)));
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
    for (const Spot& spot : zone.spots) {
      if (!spot.found) continue;
      open(i, "found-by-tap", "found by tapping, not seen");
      reason(i, spot.name, "found-by-tap",
             describe(spot, zone, "found-by-tap", rules_) + "; not seen");
    }
  }

  void find_places(std::size_t i) {
    const Zone& zone = result_.zones[i];
    for (const Spot& spot : zone.spots) {
      if (!facts_[i].load_bearing() || !spot.found || spot.is_repair) continue;
      if (!spot.by_measure_or_hand && spot.step_low >= Step::thin) {
        open(i, "judged-by-eye", "only judged, and could be thin or worse");
        reason(i, spot.name, "judged-by-eye",
               describe(spot, zone, "judged-by-eye", rules_) + "; not measured");
      }
      if (spot.near == Near::maybe) {
        open(i, "may-be-near", fmt::format("may be near the {}", spot.near_what));
        reason(i, spot.name, "may-be-near",
               describe(spot, zone, "may-be-near", rules_) + "; its place wasn't recorded");
      }
    }
  }

  void find_coat(std::size_t i) {
    if (!facts_[i].load_bearing() || !facts_[i].entry) return;
    const Zone& zone = result_.zones[i];
    if (zone.film && is_thicker(*zone.film, rules_.film_heavy_um)) {
      open(i, "thick-coat", "a coat thick enough for filler");
      reason(i, "", "thick-coat",
             fmt::format("{}: coat of {}{}, filler or a thick seal; metal beneath not known",
                         title(zone), greatest_text(*zone.film),
                         zone.film->off_scale ? ", off the gauge's scale" : " at most"));
    }
    for (const survey::Spot& spot : facts_[i].entry->found) {
      if (has_filler(spot)) {
        open(i, "thick-coat", "filler on it");
        reason(i, spot.name, "thick-coat",
               fmt::format("{}, {}: filler; metal beneath not known", title(zone), spot.name));
      }
      if (spot.magnet != survey::Magnet::weak && spot.magnet != survey::Magnet::none) continue;
      open(i, "thick-coat", "the magnet holds badly");
      reason(i, spot.name, "thick-coat",
             fmt::format("{}, {}: magnet {}; a thick coat", title(zone), spot.name,
                         word(*spot.magnet)));
    }
    for (const Spot& spot : zone.spots) {
      if (!spot.too_thick) continue;
      open(i, "too-thick", "more than one sheet was measured");
      reason(i, spot.name, "too-thick",
             fmt::format("{}, {}: readings over one sheet; a plate or a second skin", title(zone),
                         spot.name));
    }
  }

  void find_insides() {
    std::string zones;
    for (std::size_t i = 0; i < facts_.size(); ++i) {
      if (facts_[i].role != Role::main || !facts_[i].is_seen() || facts_[i].inside_seen()) continue;
      open(i, "inside-not-seen", "its inside wasn't seen");
      zones += (zones.empty() ? "" : "; ") + title(result_.zones[i]);
    }
    if (zones.empty()) return;
    result_.reasons.push_back({0, "", "", "the inside wasn't seen of: " + zones, "inside-not-seen",
                               rule_source("inside-not-seen", rules_)});
  }

  void sort() {
    const auto key = [](const OpenUp& each) {
      return std::tuple(-static_cast<int>(each.could_become), each.own.empty() ? each.zone : 1000);
    };
    std::ranges::stable_sort(result_.open_up, {}, key);
  }

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
