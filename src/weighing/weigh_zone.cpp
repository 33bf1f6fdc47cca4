#include "weighing/weigh_zone.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "metal/film.hpp"
#include "metal/repeatability.hpp"
#include "metal/rusted_area.hpp"
#include "weighing/burden.hpp"
#include "weighing/holes.hpp"
#include "weighing/metal_at.hpp"
#include "weighing/nearness.hpp"
#include "weighing/repair.hpp"
#include "weighing/spread.hpp"
#include "weighing/step.hpp"

namespace tinworm::weighing {
namespace {

bool is_near(const Spot& spot) {
  return spot.near == Near::on_mount || spot.near == Near::within_radius;
}

std::vector<survey::Size> holes_of(const survey::Spot& spot) {
  std::vector<survey::Size> holes;
  if (spot.hole) holes.push_back(*spot.hole);
  holes.insert(holes.end(), spot.other_holes.begin(), spot.other_holes.end());
  return holes;
}

// Its holes, and the size of the whole place: they lie in what was recorded, else they are it.
void set_size(Spot& spot, const survey::Spot& found, const rules::Rules& rules) {
  spot.holes = holes_of(found);
  spot.size = found.size;
  if (found.size) return;
  if (!spot.holes.empty()) {
    spot.size = in_a_row(spot.holes);
    spot.size_of_holes = spot.holes.size() > 1;
  } else if (found.rust == survey::Rust::hole) {
    spot.size = survey::Size{rules.hole_mm, rules.hole_mm};
    spot.size_assumed = true;
  }
}

std::optional<double> place_mm2(const Spot& spot) {
  if (spot.size_of_holes) return area_mm2(spot.holes);
  if (!spot.size) return std::nullopt;
  return spot.size->along_mm * spot.size->across_mm;
}

double counts_as(body::Role role, bool near, const rules::Rules& rules) {
  if (role == body::Role::skin) return 0;
  return role == body::Role::main || near ? 1 : rules.local_weight;
}

void place(Spot& spot, const ZoneFacts& zone, const Context& context) {
  if (!zone.plan) return;
  const Nearness nearby =
      nearness(spot.at, spot.size, *zone.plan, *context.survey.body, context.rules);
  spot.near = nearby.near;
  spot.near_what = nearby.mount;
  spot.near_mm = nearby.distance_mm;
}

// The least that a place can be by its signs: at the likely metal left, and at its low end.
struct LeastSteps {
  Step likely = Step::sound;
  Step low = Step::sound;
};

// Steps at the likely metal left and at both ends.
void set_steps(Spot& spot, bool rusted, LeastSteps least, const rules::Rules& rules) {
  const Span& metal = spot.metal.weighed;
  spot.step = std::max(least.likely, step_of(metal.value, rusted, rules));
  spot.step_low = std::max(least.low, step_of(metal.low, rusted, rules));
  spot.step_high = std::max(least.likely, step_of(metal.high, rusted, rules));
}

// Whether metal was lost that no word tells of: by its readings, it must have gone on the side that
// wasn't seen.
bool lost_unseen(const MetalLeft& metal, const rules::Rules& rules) {
  return metal.weighed.value + 1e-9 < rules.sound_limit;
}

Spot weigh_spot(const survey::Spot& found, int index, const ZoneFacts& zone,
                const ZoneBaseline& baseline, const Context& context) {
  Spot spot;
  spot.zone = zone.number;
  spot.own = zone.own;
  spot.name = found.name;
  spot.index = index;
  spot.rust = found.rust ? std::string(word(*found.rust)) : "";
  spot.at = found.at;
  set_size(spot, found, context.rules);
  const Judgement judged =
      metal_at(found, baseline, coating(context.survey, zone.entry, context.rules), context.gauging,
               context.rules, place_mm2(spot));
  spot.metal = judged.metal;
  spot.evidence = judged.evidence;
  spot.by_measure_or_hand = judged.by_measure_or_hand;
  spot.too_thick = judged.too_thick;
  spot.stuffed = found.stuffed;
  spot.by_stuffing = judged.by_stuffing;
  spot.found = has_sign_of_rust(found) || lost_unseen(spot.metal, context.rules);
  place(spot, zone, context);
  const auto least = [&](std::optional<double> pit_left) {
    return least_step(found, pit_left, is_near(spot), context.rules);
  };
  set_steps(spot, spot.found, {least(spot.metal.pit_left), least(spot.metal.pit_left_low)},
            context.rules);
  return spot;
}

// A repair that weighs: one that can't be relied on, or whose joint isn't known, on load-bearing
// metal; and a treatment that rusts again anywhere.
std::optional<Spot> weigh_repair(const survey::Repair& repair, const Repair& judged, int index,
                                 const ZoneFacts& zone, const Context& context) {
  Spot spot;
  spot.zone = zone.number;
  spot.own = zone.own;
  spot.index = index;
  spot.is_repair = true;
  spot.name = fmt::format("repair {}", index + 1);
  spot.size = repair.size;
  if (failed_treatment(repair)) {
    spot.metal = from_envelope(context.rules.of(survey::Rust::surface));
    spot.found = true;
  } else if (!zone.load_bearing() || repair.kind == survey::RepairKind::treated ||
             judged.reliable == true) {
    return std::nullopt;
  } else {
    spot.metal = judged.reliable ? bad_repair(context.rules) : unknown_repair(context.rules);
    spot.found = judged.reliable.has_value();
  }
  if (const body::Mount* mount = zone.plan ? mount_on(*zone.plan, *context.survey.body) : nullptr) {
    spot.near = Near::on_mount;
    spot.near_what = mount->what;
  }
  set_steps(spot, spot.found, {}, context.rules);
  return spot;
}

void weigh_damage(std::vector<Spot>& spots, const ZoneFacts& zone, const rules::Rules& rules) {
  spread(spots, zone, rules);
  for (Spot& spot : spots) {
    const Span& metal = spot.metal.weighed;
    const double spread_share = rules.spread_base + (1 - rules.spread_base) * spot.share_of_length;
    spot.damage = damage(metal.value, rules);
    spot.weight = {damage(metal.high, rules) * spread_share, spot.damage * spread_share,
                   damage(metal.low, rules) * spread_share};
    spot.counts = counts_as(zone.role, is_near(spot), rules);
  }
}

double share_seen(const survey::Seen& seen, const rules::Rules& rules) {
  using survey::SeenWord;
  if (!seen.word) return 0;
  switch (*seen.word) {
    case SeenWord::bare:
    case SeenWord::coated:
      return 1;
    case SeenWord::part:
      return seen.share;
    case SeenWord::scope:
      return rules.scope_share;
    default:
      return 0;
  }
}

// The zone as a whole: least low, least likely, least high; the worst steps; the evidence of the
// spot with the least likely figure.
void sum_up(Zone& zone, const ZoneFacts& facts, const rules::Rules& rules) {
  for (const Spot& spot : zone.spots) {
    zone.weight = {std::max(zone.weight.low, spot.weight.low),
                   std::max(zone.weight.value, spot.weight.value),
                   std::max(zone.weight.high, spot.weight.high)};
    zone.measured = zone.measured || (spot.metal.kind == SpanKind::interval && facts.is_seen());
  }
  if (!facts.is_seen() && !has_finding(zone)) return;
  zone.damage = zone.weight.value;
  const bool all_looked_at = facts.is_seen() && facts.seen.word != survey::SeenWord::part;
  if (zone.spots.empty() || !all_looked_at) {
    zone.metal = from_envelope({least_unproved(zone, facts, rules), 1, 1});
    zone.evidence = facts.is_seen() ? Evidence::looked : Evidence::felt;
    zone.step = zone.step_high = Step::sound;
    zone.step_low = step_of(zone.metal->weighed.low, false, rules);
  }
  for (const Spot& spot : zone.spots) {
    if (!zone.metal || spot.metal.weighed.value < zone.metal->weighed.value) {
      const Span before = zone.metal ? zone.metal->weighed : Span{1, 1, 1};
      zone.metal = spot.metal;
      zone.metal->weighed.low = std::min(before.low, spot.metal.weighed.low);
      zone.metal->weighed.high = std::min(before.high, spot.metal.weighed.high);
      zone.evidence = spot.evidence;
    } else {
      zone.metal->weighed.low = std::min(zone.metal->weighed.low, spot.metal.weighed.low);
      zone.metal->weighed.high = std::min(zone.metal->weighed.high, spot.metal.weighed.high);
    }
    zone.step = std::max(zone.step, spot.step);
    zone.step_low = std::max(zone.step_low, spot.step_low);
    zone.step_high = std::max(zone.step_high, spot.step_high);
  }
}

void weigh_film(Zone& zone, const survey::Zone& entry, const rules::Rules& rules) {
  if (entry.film_um.empty()) return;
  const metal::FilmLimits limits = {rules.film_factory_um, rules.film_repainted_um,
                                    rules.film_heavy_um};
  const double greatest_um = metal::greatest(entry.film_um);
  metal::FilmWord reading = metal::film_word(greatest_um, limits);
  // How thick it is beyond the gauge's scale nobody knows.
  if (entry.film_off_scale) reading = metal::FilmWord::filler_likely;
  zone.film = Film{metal::median(entry.film_um), metal::least(entry.film_um), greatest_um,
                   std::string(metal::word(reading)), entry.film_off_scale};
}

void weigh_entry(Zone& zone, const ZoneFacts& facts, const Context& context) {
  const survey::Zone& entry = *facts.entry;
  const ZoneBaseline base = baseline(facts, context.survey, context.gauging, context.rules);
  for (std::size_t i = 0; i < entry.found.size(); ++i)
    zone.spots.push_back(weigh_spot(entry.found[i], static_cast<int>(i), facts, base, context));
  for (std::size_t i = 0; i < entry.repairs.size(); ++i) {
    Repair judged = judge(entry.repairs[i], facts.role);
    judged.zone = facts.number;
    judged.own = facts.own;
    zone.repairs.push_back(judged);
    if (auto spot = weigh_repair(entry.repairs[i], judged, static_cast<int>(i), facts, context))
      zone.spots.push_back(std::move(*spot));
  }
  weigh_damage(zone.spots, facts, context.rules);
  weigh_film(zone, entry, context.rules);
}

}  // namespace

bool has_finding(const Zone& zone) {
  return zone.fitted && std::ranges::any_of(zone.spots, &Spot::found);
}

Zone weigh_zone(const ZoneFacts& facts, const Context& context) {
  Zone zone;
  zone.number = facts.number;
  zone.own = facts.own;
  zone.name = facts.name;
  zone.side = facts.side;
  zone.role = facts.role;
  zone.seen = facts.seen;
  zone.fitted = facts.fitted();
  zone.seen_share = share_seen(facts.seen, context.rules);
  if (facts.has_inside()) zone.inside = facts.inside_seen() ? "scoped" : "not-seen";
  if (facts.plan && zone.fitted) {
    const body::Mount* mount = mount_reached(*facts.plan, *context.survey.body, context.rules);
    zone.near = mount ? mount->what : "";
    zone.on_mount = mount_on(*facts.plan, *context.survey.body) != nullptr;
  }
  if (facts.entry) weigh_entry(zone, facts, context);
  sum_up(zone, facts, context.rules);
  if (facts.plan && zone.step != Step::not_seen) {
    zone.rusted_share = rusted_share(zone.spots, *facts.plan, context.rules);
    zone.iso4628_3 = metal::iso4628_3(*zone.rusted_share);
    zone.astm_d610 = metal::astm_d610(*zone.rusted_share);
  }
  return zone;
}

}  // namespace tinworm::weighing
