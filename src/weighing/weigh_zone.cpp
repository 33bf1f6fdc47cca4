#include "weighing/weigh_zone.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string_view>
#include <tuple>

#include "geometry/space.hpp"
#include "metal/film.hpp"
#include "metal/repeatability.hpp"
#include "metal/rusted_area.hpp"
#include "survey/signs.hpp"
#include "weighing/burden.hpp"
#include "weighing/holes.hpp"
#include "weighing/metal_at.hpp"
#include "weighing/nearness.hpp"
#include "weighing/repair.hpp"
#include "weighing/repair_metal.hpp"
#include "weighing/spread.hpp"
#include "weighing/step.hpp"

namespace tinworm::weighing {
namespace {

bool is_near(const Spot& spot) {
  return spot.bearing.near != Near::no;
}

// Whether anything but its hole is recorded of a place.
bool hole_alone(const survey::Spot& spot) {
  const bool word = spot.rust && spot.rust != survey::Rust::hole && spot.rust != survey::Rust::none;
  return holed(spot) && !word && !gives(spot) && !breaks(spot) && spot.metal_mm.empty() &&
         spot.pit_mm.empty() && !spot.pits && !spot.crack_mm && !spot.stuffed;
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
  if (found.size || !hole_alone(found)) return;
  if (!spot.holes.empty()) {
    spot.size = in_a_row(spot.holes);
    spot.size_of_holes = spot.holes.size() > 1;
  } else {
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

void bear(Spot& spot, const Nearness& nearby) {
  spot.bearing = nearby.sure;
  spot.may_bear = nearby.may_be;
  spot.tank_mm = nearby.tank_mm;
  spot.may_tank_mm = nearby.may_tank_mm;
  spot.near = nearby.near();
  const Bearing& shown = nearby.sure.near == Near::no ? nearby.may_be : nearby.sure;
  spot.near_what = shown.mount;
  spot.near_mm = shown.distance_mm;
}

// An own zone that carries a mount is on it as a whole, and makes no other zone near.
Nearness nearness_of_own(const ZoneFacts& zone, const Context& context) {
  Nearness found;
  const survey::OwnZone* own = context.survey.own_zone(zone.own);
  if (!own || !own->carries || !zone.load_bearing()) return found;
  if (own->carries == body::Carries::tank) found.tank_mm = found.may_tank_mm = 0;
  if (body::under_near_rule(*own->carries))
    found.sure = found.may_be = {Near::on_mount, own->name, *own->carries, 0, false};
  return found;
}

void place(Spot& spot, const ZoneFacts& zone, const Context& context) {
  if (!zone.plan) return bear(spot, nearness_of_own(zone, context));
  // Its holes lie at the place, even where its own size isn't known.
  auto size = spot.size;
  if (!size && !spot.holes.empty()) size = in_a_row(spot.holes);
  bear(spot,
       nearness(spot.at, size, *zone.plan, context.mounts, *context.survey.body, context.rules));
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

bool judged_likely_new(const survey::Spot& spot) {
  using survey::Rust;
  const bool word =
      spot.rust == Rust::blister || spot.rust == Rust::bleed || spot.rust == Rust::seam;
  return (word || spot.tap == survey::Tap::dull) && spot.metal_mm.empty();
}

Signs signs_of(const survey::Spot& spot, bool pinhole, const rules::Rules& rules) {
  Signs signs;
  signs.hole = holed(spot);
  signs.pinhole = signs.hole && pinhole;
  if (signs.hole)
    signs.hole_mm = spot.hole ? std::max(spot.hole->along_mm, spot.hole->across_mm) : rules.hole_mm;
  signs.alone = hole_alone(spot);
  signs.gives = gives(spot);
  signs.breaks = breaks(spot);
  const bool filler = std::ranges::find(spot.shapes, survey::Shape::filler) != spot.shapes.end();
  signs.thick_coat =
      filler || spot.magnet == survey::Magnet::weak || spot.magnet == survey::Magnet::none;
  signs.crack_mm = spot.crack_mm;
  signs.judged_likely_new = judged_likely_new(spot);
  return signs;
}

// A crack weighs no more than the limit, near a mount no more than weak metal.
void weigh_crack(Spot& spot, const rules::Rules& rules) {
  if (!spot.signs.crack_mm) return;
  const auto cut = [&](double most) {
    Span& metal = spot.metal.weighed;
    metal = {std::min(metal.low, most), std::min(metal.value, most), std::min(metal.high, most)};
  };
  cut(is_near(spot) ? rules.crack_on_mount_most : rules.crack_most);
  if (spot.may_bear.near != Near::no)
    spot.metal.weighed.low = std::min(spot.metal.weighed.low, rules.crack_on_mount_most);
}

// Steps of the place and of the metal beside its hole, its crack or its stuffing.
void step(Spot& spot, const survey::Spot& found, const rules::Rules& rules) {
  const auto least = [&](std::optional<double> pit_left, bool near) {
    return least_step(found, pit_left, near, rules);
  };
  const bool may_be_near = spot.may_bear.near != Near::no;
  set_steps(
      spot, spot.found,
      {least(spot.metal.pit_left, is_near(spot)), least(spot.metal.pit_left_low, may_be_near)},
      rules);
  survey::Spot beside = found;
  beside.hole.reset();
  beside.crack_mm.reset();
  if (beside.rust == survey::Rust::hole) beside.rust.reset();
  const auto at = [&](double metal, std::optional<double> pit_left) {
    return std::max(step_of(metal, spot.found, rules), least_step(beside, pit_left, false, rules));
  };
  spot.beside_step = at(spot.beside.value, spot.metal.pit_left);
  spot.beside_step_low = at(spot.beside.low, spot.metal.pit_left_low);
}

Spot weigh_spot(const survey::Spot& found, int index, bool pinhole, const ZoneFacts& zone,
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
      metal_at(found, baseline, coating(context.survey, zone.entry, found.coating, context.rules),
               context.gauging, context.rules, place_mm2(spot), pinhole);
  spot.metal = judged.metal;
  spot.beside = judged.beside;
  spot.evidence = judged.evidence;
  spot.by_measure_or_hand = judged.by_measure_or_hand;
  spot.beside_by_measure_or_hand = judged.beside_by_measure_or_hand;
  spot.too_thick = judged.too_thick;
  spot.stuffed = found.stuffed;
  spot.contradict = judged.contradict;
  spot.bound_not_sound = judged.bound_not_sound;
  spot.sheet_assumed = judged.sheet_assumed;
  spot.signs = signs_of(found, pinhole, context.rules);
  spot.found = has_sign_of_rust(found) || lost_unseen(spot.metal, context.rules);
  place(spot, zone, context);
  weigh_crack(spot, context.rules);
  step(spot, found, context.rules);
  return spot;
}

// Pinholes near one another count together; where one's place isn't known, with all of its zone.
// More than a few are a hole.
std::vector<bool> pinholes(const survey::Zone& entry, const ZoneBaseline& baseline,
                           const Context& context) {
  std::vector<bool> are;
  for (const survey::Spot& spot : entry.found)
    are.push_back(is_pinhole(spot, baseline,
                             coating(context.survey, &entry, spot.coating, context.rules),
                             context.rules));
  const auto together = [&](const survey::Position& a, const survey::Position& b) {
    const auto apart = [](std::optional<double> p, std::optional<double> q) {
      return p && q ? *p - *q : 0;
    };
    return std::hypot(apart(a.x_mm, b.x_mm), apart(a.y_mm, b.y_mm), apart(a.z_mm, b.z_mm)) <=
           context.rules.pinholes_mm + 1e-9;
  };
  std::vector<bool> still = are;
  for (std::size_t i = 0; i < are.size(); ++i) {
    int count = 0;
    for (std::size_t k = 0; k < are.size(); ++k)
      if (are[k] && together(entry.found[i].at, entry.found[k].at))
        count += holes_in(entry.found[k]);
    if (count > context.rules.pinholes) still[i] = false;
  }
  return still;
}

// Without a place a repair lies on its whole zone.
Nearness nearness_of(const survey::Repair& repair, const ZoneFacts& zone, const Context& context) {
  if (!zone.plan) return nearness_of_own(zone, context);
  const body::Plan& plan = *context.survey.body;
  return is_placed(repair.at)
             ? nearness(repair.at, repair.size, *zone.plan, context.mounts, plan, context.rules)
             : nearness_of_whole(*zone.plan, context.mounts, plan, context.rules);
}

// What a spot is measured against where a repair renewed the metal: the repair's own sheet, else
// nothing. Where such a repair has no place it may lie anywhere in its zone: only a reference taken
// beside it then tells the sheet.
ZoneBaseline baseline_at(const survey::Spot& spot, const ZoneFacts& zone, const ZoneBaseline& base,
                         const Context& context) {
  for (const survey::Repair& repair : zone.entry->repairs) {
    if (!renews(repair)) continue;
    if (!repair.at.known()) {
      if (base.from == BaselineFrom::reference) continue;
    } else if (!zone.plan || !geometry::overlap(place_of(repair.at, repair.size, *zone.plan),
                                                place_of(spot.at, spot.size, *zone.plan))) {
      continue;
    }
    if (!repair.sheet_mm) return {};
    return {BaselineFrom::survey_sheet,
            metal::stated_sheet(*repair.sheet_mm, context.rules.survey_sheet_half_share)};
  }
  return base;
}

// A repair whose own metal is past the limit can't be relied on, and is no better than its
// readings.
void weigh_own_metal(Repair& judged, const survey::Repair& repair, const Judgement& metal,
                     body::Role role) {
  const std::string wasted = wasted_text(repair, metal);
  judged.why = judged.reliable == false ? fmt::format("{}; {}", judged.why, wasted) : wasted;
  if (role == body::Role::skin) judged.why += "; on skin it changes nothing";
  judged.reliable = false;
}

Span worse_of(const Span& a, const Span& b) {
  return {std::min(a.low, b.low), std::min(a.value, b.value), std::min(a.high, b.high)};
}

// A repair that weighs: one that can't be relied on, or whose joint isn't known, on load-bearing
// metal; and a treatment that rusts again anywhere.
std::optional<Spot> weigh_repair(const survey::Repair& repair, const Repair& judged, int index,
                                 const std::optional<Judgement>& own_metal, const ZoneFacts& zone,
                                 const Context& context) {
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
  if (own_metal && is_past_limit(*own_metal, context.rules)) {
    spot.metal = own_metal->metal;
    spot.metal.kind = SpanKind::envelope;  // no longer what was measured alone
    spot.metal.weighed = worse_of(own_metal->metal.weighed, bad_repair(context.rules).weighed);
    spot.metal.shown = spot.metal.weighed;
    spot.evidence = own_metal->evidence;
    spot.by_measure_or_hand = own_metal->by_measure_or_hand;
  }
  spot.at = repair.at;
  if (!repair.name.empty()) spot.name = repair.name;
  bear(spot, nearness_of(repair, zone, context));
  spot.beside = spot.metal.weighed;
  set_steps(spot, spot.found, {}, context.rules);
  return spot;
}

// D at one end: of the place, and of its hole, which leaves nothing over its own size.
double weight(const Spot& spot, double metal, double place_share, double hole_share,
              const rules::Rules& rules) {
  const auto spread_over = [&](double share) {
    return rules.spread_base + (1 - rules.spread_base) * share;
  };
  const bool hole = spot.signs.hole && !spot.signs.pinhole;
  const double place =
      hole && spot.signs.alone ? 0 : damage(metal, rules) * spread_over(place_share);
  return hole ? std::max(place, spread_over(hole_share)) : place;
}

void weigh_damage(std::vector<Spot>& spots, const ZoneFacts& zone, const rules::Rules& rules) {
  const std::vector<Spread> over = spread(spots, zone, rules);
  for (std::size_t i = 0; i < spots.size(); ++i) {
    Spot& spot = spots[i];
    const bool hole = spot.signs.hole && !spot.signs.pinhole;
    const Span& metal = hole ? spot.beside : spot.metal.weighed;
    spot.damage = damage(spot.metal.weighed.value, rules);
    const auto& [place, its_hole] = over[i];
    spot.weight.value = weight(spot, metal.value, place.value, its_hole.value, rules);
    spot.weight.low =
        std::min(spot.weight.value, weight(spot, metal.high, place.low, its_hole.low, rules));
    spot.weight.high =
        std::max(spot.weight.value, weight(spot, metal.low, place.high, its_hole.high, rules));
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

// The spot that a zone's metal left is told by: the least likely figure, then the least low end,
// then the name, so that the order of findings changes nothing.
const Spot* governing(const std::vector<Spot>& spots) {
  const auto key = [](const Spot& spot) {
    const Span& metal = spot.metal.weighed;
    return std::tuple(metal.value, metal.low, metal.high, -static_cast<int>(spot.evidence),
                      std::string_view(spot.name));
  };
  const auto least = std::ranges::min_element(spots, {}, key);
  return least == spots.end() ? nullptr : &*least;
}

// The zone as a whole: least low, least likely, least high, what a look can miss of its rest among
// them; the worst steps; the evidence of the spot with the least likely figure.
void sum_up(Zone& zone, const ZoneFacts& facts, const rules::Rules& rules) {
  for (const Spot& spot : zone.spots) {
    zone.weight = {std::max(zone.weight.low, spot.weight.low),
                   std::max(zone.weight.value, spot.weight.value),
                   std::max(zone.weight.high, spot.weight.high)};
    const bool measured = spot.evidence == Evidence::measured;
    zone.measured = zone.measured || (measured && facts.is_seen());
  }
  if (!facts.is_seen() && !has_finding(zone)) return;
  zone.damage = zone.weight.value;
  const double rest = least_unproved(facts, rules);
  const Spot* worst = governing(zone.spots);
  zone.metal = worst ? worst->metal : from_envelope({rest, 1, 1});
  zone.evidence = worst ? worst->evidence : facts.is_seen() ? Evidence::looked : Evidence::felt;
  Span& metal = zone.metal->weighed;
  metal.low = std::min(metal.low, rest);
  zone.step = zone.step_high = Step::sound;
  zone.step_low = step_of(rest, false, rules);
  const bool all_measured = std::ranges::all_of(
      zone.spots, [](const Spot& spot) { return spot.metal.kind == SpanKind::interval; });
  if (!all_measured) zone.metal->kind = SpanKind::envelope;
  for (const Spot& spot : zone.spots) {
    metal.low = std::min(metal.low, spot.metal.weighed.low);
    metal.high = std::min(metal.high, spot.metal.weighed.high);
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
  const Coating coat = coating(context.survey, &entry, std::nullopt, context.rules);
  const std::vector<bool> small = pinholes(entry, base, context);
  for (std::size_t i = 0; i < entry.found.size(); ++i)
    zone.spots.push_back(weigh_spot(entry.found[i], static_cast<int>(i), small[i], facts,
                                    baseline_at(entry.found[i], facts, base, context), context));
  for (std::size_t i = 0; i < entry.repairs.size(); ++i) {
    Repair judged = judge(entry.repairs[i], facts.role);
    judged.zone = facts.number;
    judged.own = facts.own;
    const auto own_metal = repair_metal(entry.repairs[i], coat, context.gauging, context.rules);
    if (own_metal && is_past_limit(*own_metal, context.rules))
      weigh_own_metal(judged, entry.repairs[i], *own_metal, facts.role);
    zone.repairs.push_back(judged);
    if (auto spot =
            weigh_repair(entry.repairs[i], judged, static_cast<int>(i), own_metal, facts, context))
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
    const Bearing mount = reached(*facts.plan, context.mounts, *context.survey.body, context.rules);
    zone.near = mount.mount;
    zone.on_mount = mount.near == Near::on_mount;
    zone.into_mount = mount.near == Near::into_mount;
  } else if (!facts.plan && zone.fitted) {
    const Bearing mount = nearness_of_own(facts, context).sure;
    zone.near = mount.mount;
    zone.on_mount = mount.near == Near::on_mount;
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
