#include "weighing/verdict.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>

#include "survey/free_words.hpp"
#include "weighing/nearness.hpp"
#include "weighing/open_up.hpp"
#include "weighing/words.hpp"

namespace tinworm::weighing {
namespace {

enum class At { likely, low };

// What the table of places asks about one place.
struct Condition {
  bool weak = false, cracked = false, breaking = false;
  bool holed = false, over_25 = false, pinhole = false;
  bool thin = false, stuffed = false, bad_repair = false;
  bool likely_new = false;  // judged only, but likely new metal
};

constexpr double tolerance_mm = 1e-9;

bool is_likely_new(const Spot& spot, const Zone& zone, const rules::Rules& rules) {
  if (spot.signs.thick_coat && spot.counts >= 1) return true;
  const bool on = spot.bearing.near == Near::on_mount;
  const bool read = spot.metal.readings > 0 && !spot.sheet_assumed;
  if (!on || read || zone.role == body::Role::skin) return false;
  return spot.signs.judged_likely_new ||
         spot.metal.weighed.value < rules.repair_limit - tolerance_mm;
}

bool is_bad_repair(const Spot& spot, const Zone& zone, At end) {
  if (!spot.is_repair) return false;
  const Repair& repair = zone.repairs[spot.index];
  if (repair.treatment) return false;
  return repair.reliable == false || (!repair.reliable && end == At::low);
}

Condition condition(const Spot& spot, const Zone& zone, At end, const rules::Rules& rules) {
  const bool low = end == At::low;
  Condition is;
  is.bad_repair = is_bad_repair(spot, zone, end);
  if (spot.is_repair) return is;
  const Step beside = low ? spot.beside_step_low : spot.beside_step;
  const bool proved = low || spot.beside_by_measure_or_hand;
  is.weak = proved && beside >= Step::weak;
  is.thin = proved && beside >= Step::thin;
  is.breaking = spot.signs.breaks;
  is.cracked = spot.signs.crack_mm.has_value();
  is.pinhole = spot.signs.pinhole;
  is.holed = spot.signs.hole && !spot.signs.pinhole;
  is.over_25 = spot.signs.hole_mm > rules.hole_mm + tolerance_mm;
  is.stuffed = spot.stuffed.has_value();
  is.likely_new = !spot.by_measure_or_hand && is_likely_new(spot, zone, rules);
  if (low && (is.stuffed || is.likely_new)) is.holed = is.over_25 = true;
  return is;
}

// The rows for places on a mount, and in a part that takes its load.
Level by_mount(const Bearing& bearing, const Condition& is, const rules::Rules& rules) {
  constexpr Level none;
  const int row = row_of(bearing, rules);
  if (row >= 4 && is.bad_repair) return {Verdict::keep_parked, "repair-on-mount"};
  if (row >= 4 && (is.weak || is.cracked || is.holed)) return {Verdict::keep_parked, "on-mount"};
  if (row == 5 && is.pinhole) return {Verdict::keep_parked, "on-mount"};
  const bool big_hole = is.holed && (is.over_25 || is.breaking);
  if (row == 3 && (is.weak || is.cracked || big_hole)) return {Verdict::keep_parked, "into-mount"};
  return none;
}

Level to_be_mended(const Bearing& bearing, const Condition& is) {
  if (is.bad_repair) return {Verdict::mend, "repair-not-relied-on"};
  if (is.cracked) return {Verdict::mend, "cracked"};
  if (is.weak || is.holed) return {Verdict::mend, "weak"};
  if (is.thin) return {Verdict::mend, "past-limit"};
  if (is.stuffed) return {Verdict::mend, "stuffed"};
  if (is.pinhole && bearing.near == Near::on_mount) return {Verdict::mend, "pinhole-on-mount"};
  if (is.pinhole) return {Verdict::mend, "pinhole"};
  if (is.likely_new) return {Verdict::mend, "likely-past-limit"};
  return {};
}

bool at_a_tank(const Spot& spot, At end, const rules::Rules& rules) {
  const auto& distance_mm = end == At::low ? spot.may_tank_mm : spot.tank_mm;
  return distance_mm && *distance_mm <= rules.tank_mm + tolerance_mm;
}

Level level_of(const Spot& spot, const Zone& zone, At end, const rules::Rules& rules) {
  const bool low = end == At::low;
  const bool load_bearing = zone.role != body::Role::skin;
  const Condition is = condition(spot, zone, end, rules);
  if (!load_bearing || !(spot.found || is.bad_repair)) {
    if (!spot.found) return {};
    const bool holed = spot.signs.hole || spot.step == Step::holed;
    return {Verdict::treat, !load_bearing && holed ? "skin-holed" : "rusted"};
  }
  if (low ? spot.section_may_go || spot.section_gone : spot.section_gone)
    return {Verdict::keep_parked, "section-gone"};
  const bool gone = is.weak || is.cracked || is.holed;
  if (at_a_tank(spot, end, rules) && gone) return {Verdict::keep_parked, "fuel"};
  const Bearing& bearing = low ? spot.may_bear : spot.bearing;
  const Level at_mount = by_mount(bearing, is, rules);
  const bool one_wall = low ? spot.one_wall_at_worst : spot.one_wall;
  const bool spared = one_wall && bearing.near != Near::on_mount;
  if (at_mount.verdict == Verdict::keep_parked && !spared) return at_mount;
  const Level mend = to_be_mended(bearing, is);
  if (mend.verdict == Verdict::mend) return mend;
  return spot.found ? Level{Verdict::treat, "rusted"} : Level{};
}

constexpr const char* places =
    "a table of places drawn from small cases judged by trade sense before any rule was read "
    "(common practice)";

std::string default_source(std::string_view rule) {
  static const char* const manual = "UK MOT inspection manual, cars, Appendix A section 2";
  if (rule == "on-mount" || rule == "into-mount" || rule == "pinhole-on-mount")
    return fmt::format(
        "{} (30 cm of such a mounting; a hole, or metal not sound under hand or "
        "tool); which of it may not be moved: {}",
        manual, places);
  if (rule == "repair-on-mount" || rule == "repair-not-relied-on")
    return "UK MOT inspection manual, cars, Appendix A (continuous seam weld; brazing, solder, "
           "bonding, fibre and filler are not strong enough for load-bearing members)";
  if (rule == "section-gone")
    return "is there still a sill? Under three quarters of its wall metal, or every layer gone at "
           "one place, the shell can fold (memory; common practice)";
  if (rule == "fuel") return "a tank that can drop is fire on the road (common practice)";
  if (rule == "shell-moves")
    return "a door gap that moves on the lift beside a rotten sill: the shell bends (common "
           "practice)";
  if (rule == "cracked")
    return "a crack grows with every load, whatever its metal (common practice)";
  if (rule == "stuffed")
    return "filling in a structure is there for a reason and holds water; the metal behind isn't "
           "there until somebody shows it (common practice)";
  if (rule == "pinhole") return "a small hole in sound metal is welded up (common practice)";
  if (rule == "likely-past-limit")
    return "a blister above is a hole below until shown otherwise (common practice)";
  if (rule == "sheet-assumed")
    return "sheet tolerance, EN 10131:2006 Table 1; what the body plan has is from memory";
  if (rule == "past-limit") return rules::constant("repair-limit").source;
  if (rule == "weak") return "less than half the sheet left, or it gives (memory)";
  if (rule == "coverage") return "a share of the main structure must be seen (memory)";
  if (rule == "mount-not-seen" || rule == "may-be-near")
    return fmt::format(
        "{} (30 cm); what is covered need not be checked there, and a pass is silent "
        "about it",
        manual);
  if (rule == "found-by-tap")
    return "UK MOT inspection manual, cars, Appendix A section 3 (light tapping: corroded or "
           "filled "
           "metal sounds duller)";
  if (rule == "skin-holed")
    return "a holed skin lets water in and carries no load (common practice)";
  return "common practice";
}

// The constants that a rule rests on, of those a rules file can change.
std::vector<std::string_view> rests_on(std::string_view rule) {
  if (rule == "on-mount" || rule == "pinhole-on-mount")
    return {"near-radius", "on-mount", "weak-limit", "pinhole"};
  if (rule == "into-mount") return {"near-radius", "into-mount", "weak-limit"};
  if (rule == "repair-on-mount") return {"near-radius"};
  if (rule == "section-gone") return {"section-limit", "section-along", "section-place"};
  if (rule == "fuel") return {"tank-strap"};
  if (rule == "shell-moves" || rule == "gap-moves") return {"gap-moves"};
  if (rule == "pinhole") return {"pinhole", "pinholes", "pinholes-within"};
  if (rule == "likely-past-limit") return {"repair-limit", "near-radius"};
  if (rule == "interval-reaches") return {"repair-limit", "weak-limit"};
  if (rule == "past-limit") return {"repair-limit", "weak-limit", "pit-limit"};
  if (rule == "weak") return {"weak-limit"};
  if (rule == "stuffed") return {"stuffed.least", "stuffed.likely", "stuffed.most"};
  if (rule == "coverage" || rule == "nothing-found") return {"coverage-limit", "scope-share"};
  if (rule == "may-be-near") return {"near-radius"};
  if (rule == "judged-by-eye") return {"repair-limit"};
  if (rule == "thick-coat") return {"film-heavy"};
  if (rule == "too-thick") return {"too-thick"};
  return {};
}

Reason reason(const Spot& spot, const Zone& zone, std::string_view rule,
              const rules::Rules& rules) {
  return {zone.number,       zone.own,
          spot.name,         describe(spot, zone, rule, rules),
          std::string(rule), rule_source(rule, rules)};
}

// Places count however their zone was seen.
template <class Use>
void each_spot(const Result& result, Use use) {
  for (const Zone& zone : result.zones)
    if (zone.fitted)
      for (const Spot& spot : zone.spots) use(spot, zone);
}

// A sill that lets its door gap move: the reasons, one for each such place.
std::vector<Reason> shell_moves(const Result& result, const rules::Rules& rules) {
  std::vector<Reason> reasons;
  for (const survey::Gap& gap : result.survey.gaps) {
    if (!moves(gap, rules)) continue;
    for (const body::Side side : sides_of(gap)) {
      const auto sill = result.body->sills.find(side);
      if (sill == result.body->sills.end()) continue;
      each_spot(result, [&](const Spot& spot, const Zone& zone) {
        const bool wall =
            zone.own.empty() && std::ranges::find(sill->second, zone.number) != sill->second.end();
        const bool weak = spot.beside_step >= Step::weak && spot.beside_by_measure_or_hand;
        const bool holed = spot.signs.hole && !spot.signs.pinhole;
        if (!wall || !spot.found || spot.is_repair || !(weak || holed)) return;
        Reason each = reason(spot, zone, "shell-moves", rules);
        each.text += fmt::format("; {} moves {:.1f} mm on the lift", gap.where,
                                 std::abs(*gap.wheels_mm - *gap.lift_mm));
        reasons.push_back(std::move(each));
      });
    }
  }
  return reasons;
}

// Whether every part that such a mount stands on was felt firm, measured, scoped, or is a single
// sheet seen bare.
bool parts_of_mounts_known(const Result& result, const std::vector<ZoneFacts>& facts) {
  for (std::size_t i = 0; i < facts.size(); ++i)
    if (result.zones[i].fitted && result.zones[i].on_mount && facts[i].load_bearing() &&
        !is_known(result.zones[i], facts[i]))
      return false;
  return true;
}

std::vector<Reason> of_level(const Result& result, Verdict verdict, const rules::Rules& rules) {
  std::vector<std::pair<int, Reason>> found;
  each_spot(result, [&](const Spot& spot, const Zone& zone) {
    const Level asks = level(spot, zone, rules);
    if (asks.verdict == verdict)
      found.emplace_back(spot.rank, reason(spot, zone, asks.rule, rules));
  });
  std::ranges::stable_sort(found, {}, &std::pair<int, Reason>::first);
  std::vector<Reason> reasons;
  for (auto& [rank, each] : found) reasons.push_back(std::move(each));
  return reasons;
}

void find_nothing(Result& result, const std::vector<ZoneFacts>& facts, const rules::Rules& rules) {
  const bool enough = result.main.area_share + 1e-9 >= rules.coverage_limit;
  const bool known = parts_of_mounts_known(result, facts);
  if (enough && known) result.verdict = Verdict::leave_alone;
  const char* rule = enough && known ? "nothing-found" : "coverage";
  const char* text = enough && known ? "nothing found where looked"
                     : enough
                         ? "nothing found, but a part that a mount stands on was only looked at "
                           "through its coat or not at all"
                         : "nothing found, but too little was seen to say more";
  result.reasons.push_back({0, "", "", text, rule, rule_source(rule, rules)});
}

void find_verdict(Result& result, const std::vector<ZoneFacts>& facts, const rules::Rules& rules) {
  each_spot(result, [&](const Spot& spot, const Zone& zone) {
    result.verdict = std::max(result.verdict, level(spot, zone, rules).verdict);
  });
  const std::vector<Reason> moving = shell_moves(result, rules);
  if (!moving.empty()) result.verdict = Verdict::keep_parked;
  if (result.verdict == Verdict::not_known) {
    find_nothing(result, facts, rules);
    return;
  }
  result.reasons = of_level(result, result.verdict, rules);
  for (const Reason& each : moving) {
    const auto same = [&](const Reason& other) {
      return other.zone == each.zone && other.own == each.own && other.spot == each.spot;
    };
    if (std::ranges::none_of(result.reasons, same)) result.reasons.push_back(each);
  }
  if (result.verdict > Verdict::mend) result.also_to_mend = of_level(result, Verdict::mend, rules);
}

// The worst of the verdict and of what each of open_up could become: one rule for both.
void find_could_be(Result& result) {
  result.could_be = result.verdict;
  for (const OpenUp& each : result.open_up)
    result.could_be = std::max(result.could_be, each.could_become);
}

}  // namespace

Level level(const Spot& spot, const Zone& zone, const rules::Rules& rules) {
  return level_of(spot, zone, At::likely, rules);
}

Level level_at_low(const Spot& spot, const Zone& zone, const rules::Rules& rules) {
  return level_of(spot, zone, At::low, rules);
}

bool is_known(const Zone& zone, const ZoneFacts& facts) {
  const auto felt_or_measured = [&](const Spot& spot) {
    if (spot.is_repair || !facts.entry) return false;
    return facts.entry->found[spot.index].hand == survey::Hand::firm ||
           spot.metal.kind == SpanKind::interval;
  };
  if (std::ranges::any_of(zone.spots, felt_or_measured)) return true;
  if (!facts.is_seen()) return false;
  if (facts.has_inside()) return facts.inside_seen();
  return facts.seen.word == survey::SeenWord::bare || facts.seen.word == survey::SeenWord::scope;
}

std::vector<body::Side> sides_of(const survey::Gap& gap) {
  if (gap.side) return {*gap.side};
  const std::vector<std::string> words = survey::words_in(gap.where);
  std::vector<body::Side> named;
  for (const body::Side side : {body::Side::left, body::Side::right})
    if (std::ranges::find(words, word(side)) != words.end()) named.push_back(side);
  return named.empty() ? std::vector{body::Side::left, body::Side::right} : named;
}

bool moves(const survey::Gap& gap, const rules::Rules& rules) {
  return gap.wheels_mm && gap.lift_mm &&
         std::abs(*gap.wheels_mm - *gap.lift_mm) >= rules.gap_moves_mm - tolerance_mm;
}

std::string rule_source(std::string_view rule, const rules::Rules& rules) {
  const std::vector<std::string> changes = rules::changed(rules, rests_on(rule));
  if (changes.empty()) return default_source(rule);
  return fmt::format("{}; here by changed rules: {}", default_source(rule),
                     fmt::join(changes, "; "));
}

void judge(Result& result, const std::vector<ZoneFacts>& facts, const rules::Rules& rules) {
  find_verdict(result, facts, rules);
  find_open_up(result, facts, rules);
  find_could_be(result);
}

}  // namespace tinworm::weighing
