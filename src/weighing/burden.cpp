#include "weighing/burden.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

#include "metal/repeatability.hpp"
#include "metal/rusted_area.hpp"
#include "weighing/nearness.hpp"
#include "weighing/step.hpp"
#include "weighing/weigh_zone.hpp"

namespace tinworm::weighing {
namespace {

// One zone's part in a weighted power mean: weight below the line, and above it at each end.
struct Part {
  std::size_t zone = 0;
  double weight = 0;
  Span above;  // w D^p
  bool seen = false;
  bool counts = false;  // seen, or something was found in it: then its rest stays unknown
};

struct Ends {
  std::optional<double> value;
  double low = 0, high = 0;
  std::vector<double> shares;  // of the value, by part
};

double role_weight(body::Role role, const rules::Rules& rules) {
  return role == body::Role::main ? 1 : rules.local_weight;
}

// What an unseen zone may be at worst, judged by its pair and by zones that hide it: no less than
// the worst that these may be.
double unseen_damage(const ZoneFacts& unseen, const std::vector<Zone>& zones,
                     const std::vector<ZoneFacts>& facts, const rules::Rules& rules) {
  if (!unseen.plan) return rules.unseen_damage;
  bool any_seen = false, any_bad = false;
  double worst = 0;
  for (std::size_t i = 0; i < zones.size(); ++i) {
    if (!facts[i].plan) continue;
    const bool pair = unseen.plan->pair() == facts[i].number;
    const auto& hides = facts[i].plan->hides;
    const bool hider = std::ranges::find(hides, unseen.number) != hides.end();
    if (!pair && !hider) continue;
    any_bad = any_bad || zones[i].step >= Step::thin;
    any_seen = any_seen || facts[i].is_seen();
    worst = std::max(worst, zones[i].weight.high);
  }
  const bool good = any_seen && !any_bad;
  return std::max(worst, good ? rules.unseen_damage_neighbour_good : rules.unseen_damage);
}

double unproved_damage(const ZoneFacts& facts, const rules::Rules& rules) {
  return damage(least_unproved(facts, rules), rules) * rules.spread_base;
}

Part structure_part(std::size_t index, const Zone& zone, const ZoneFacts& facts,
                    const rules::Rules& rules) {
  Part part{index, role_weight(zone.role, rules), {}, facts.is_seen()};
  part.counts = part.seen || has_finding(zone);
  if (!part.counts) return part;
  const auto above = [&](double w, double d) { return w * std::pow(d, rules.exponent); };
  part.above.high = above(part.weight, unproved_damage(facts, rules));
  for (const Spot& spot : zone.spots) {
    part.above.low = std::max(part.above.low, above(spot.counts, spot.weight.low));
    part.above.value = std::max(part.above.value, above(spot.counts, spot.weight.value));
    part.above.high = std::max(part.above.high, above(spot.counts, spot.weight.high));
  }
  return part;
}

double skin_weight(const Zone& zone, double d, Step step, const rules::Rules& rules) {
  const double by_area = 1 - metal::astm_d610_continuous(zone.rusted_share.value_or(0)) / 10;
  const double by_depth = rules.skin_damage_factor * d;
  const double holed = step == Step::holed ? rules.skin_holed : 0;
  return std::max({by_area, by_depth, holed, 0.0});
}

Part skin_part(std::size_t index, const Zone& zone, const ZoneFacts& facts,
               const rules::Rules& rules) {
  Part part{index, facts.plan->area_m2, {}, facts.is_seen()};
  part.counts = part.seen || has_finding(zone);
  if (!part.counts) return part;
  const double unproved = unproved_damage(facts, rules);
  part.above = {
      part.weight * skin_weight(zone, zone.weight.low, zone.step_high, rules),
      part.weight * skin_weight(zone, zone.weight.value, zone.step, rules),
      part.weight * skin_weight(zone, std::max(zone.weight.high, unproved), zone.step_low, rules)};
  return part;
}

double mean_power(double above, double below, double p) {
  return below > 0 ? std::min(1.0, std::pow(above / below, 1 / p)) : 0;
}

// Completes unseen parts at the high end and takes the means.
Ends ends(const std::vector<Part>& parts, const std::vector<Zone>& zones,
          const std::vector<ZoneFacts>& facts, double p, const rules::Rules& rules) {
  double weight_all = 0, weight_counted = 0, low = 0, value = 0, high_counted = 0, high = 0;
  for (const Part& part : parts) {
    weight_all += part.weight;
    low += part.above.low;
    if (!part.counts) continue;
    weight_counted += part.weight;
    value += part.above.value;
    high_counted += part.above.high;
    if (part.seen) high += part.above.high;
  }
  const double counted_high = mean_power(high_counted, weight_counted, p);
  for (const Part& part : parts) {
    if (part.seen) continue;
    const ZoneFacts& zone = facts[part.zone];
    const double d = std::max(
        {unseen_damage(zone, zones, facts, rules), zones[part.zone].weight.high, counted_high});
    const bool on_mount = zone.load_bearing() && zones[part.zone].on_mount;
    const double rest = (on_mount ? std::max(1.0, part.weight) : part.weight) * std::pow(d, p);
    high += std::max(rest, part.above.high);
  }
  Ends result;
  result.low = mean_power(low, weight_all, p);
  result.high = mean_power(high, weight_all, p);
  if (weight_counted > 0) result.value = mean_power(value, weight_counted, p);
  for (const Part& part : parts)
    result.shares.push_back(part.counts && value > 0 ? part.above.value / value : 0);
  return result;
}

Burden burden_of(const Ends& ends, bool enough_seen, const char* nothing_seen) {
  Burden burden{ends.value, ends.low, ends.high, ""};
  if (!ends.value)
    burden.why = nothing_seen;
  else if (!enough_seen) {
    burden.value.reset();
    burden.why = "too little of the main structure was seen";
  }
  return burden;
}

Burden shell_of(const Burden& structure, const Burden& skin, const rules::Rules& rules) {
  const auto join = [&](double s, double k) { return s + rules.skin_in_shell * k * (1 - s); };
  Burden shell;
  shell.low = join(structure.low, skin.low);
  shell.high = join(structure.high, skin.high);
  if (structure.value && skin.value)
    shell.value = join(*structure.value, *skin.value);
  else
    shell.why = structure.value ? skin.why : structure.why;
  return shell;
}

// Filler or a thick seal: the film is told of the zone, so what it hides may lie anywhere in it.
bool is_thickly_coated(const ZoneFacts& facts, const rules::Rules& rules) {
  if (!facts.load_bearing() || !facts.entry) return false;
  const survey::Zone& entry = *facts.entry;
  return entry.film_off_scale ||
         (!entry.film_um.empty() && metal::greatest(entry.film_um) > rules.film_heavy_um + 1e-9);
}

}  // namespace

double least_unproved(const ZoneFacts& facts, const rules::Rules& rules) {
  using survey::SeenWord;
  double least = facts.seen.word == SeenWord::bare ? rules.least_bare : rules.least_coated;
  if (!facts.is_seen() || facts.seen.word == SeenWord::part)
    least = std::min(least, rules.least_part);
  if (!facts.inside_seen()) least = std::min(least, rules.least_inside_not_seen);
  if (is_thickly_coated(facts, rules)) least = std::min(least, rules.thick_coat_least);
  return least;
}

double skin_damage(const Zone& zone, const rules::Rules& rules) {
  return skin_weight(zone, zone.weight.value, zone.step, rules);
}

Coverage coverage(const std::vector<Zone>& zones, const std::vector<ZoneFacts>& facts,
                  body::Role role) {
  double all = 0, seen = 0, measured = 0;
  for (std::size_t i = 0; i < zones.size(); ++i) {
    if (zones[i].role != role || !facts[i].plan || !facts[i].fitted()) continue;
    const double area = facts[i].plan->area_m2;
    all += area;
    seen += area * zones[i].seen_share;
    if (zones[i].measured) measured += area;
  }
  if (all <= 0) return {};
  return {seen / all, measured / all, true};
}

Burdens burdens(const std::vector<Zone>& zones, const std::vector<ZoneFacts>& facts,
                const rules::Rules& rules) {
  std::vector<Part> structure, skin;
  for (std::size_t i = 0; i < zones.size(); ++i) {
    if (!facts[i].fitted()) continue;
    if (facts[i].load_bearing())
      structure.push_back(structure_part(i, zones[i], facts[i], rules));
    else if (facts[i].plan)
      skin.push_back(skin_part(i, zones[i], facts[i], rules));
  }
  const Ends s = ends(structure, zones, facts, rules.exponent, rules);
  const Ends k = ends(skin, zones, facts, 1, rules);
  const bool enough =
      coverage(zones, facts, body::Role::main).area_share + 1e-9 >= rules.coverage_limit;

  Burdens result;
  result.structure = burden_of(s, enough, "none of the structure was seen");
  result.skin = burden_of(k, true, "none of the skin was seen");
  result.shell = shell_of(result.structure, result.skin, rules);
  double weights = 0;
  for (const Part& part : structure) weights += part.weight;
  result.one_zone_gone = mean_power(1, weights, rules.exponent);

  const double s_value = s.value.value_or(0);
  const double k_value = rules.skin_in_shell * k.value.value_or(0) * (1 - s_value);
  const double total = s_value + k_value;
  result.shares.assign(zones.size(), 0);
  if (total > 0) {
    for (std::size_t i = 0; i < structure.size(); ++i)
      result.shares[structure[i].zone] += s.shares[i] * s_value / total;
    for (std::size_t i = 0; i < skin.size(); ++i)
      result.shares[skin[i].zone] += k.shares[i] * k_value / total;
  }
  return result;
}

}  // namespace tinworm::weighing
