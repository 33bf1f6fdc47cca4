#include "weighing/verdict.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <tuple>

#include "weighing/open_up.hpp"
#include "weighing/words.hpp"

namespace tinworm::weighing {
namespace {

bool strictly_near(const Spot& spot) {
  return spot.near == Near::on_mount || spot.near == Near::within_radius;
}

enum class At { likely, low };

Level level_of(const Spot& spot, const Zone& zone, At end) {
  const bool at_low = end == At::low;
  const Step step = at_low ? spot.step_low : spot.step;
  const bool near = at_low ? spot.near != Near::no : strictly_near(spot);
  const bool proved = at_low || spot.by_measure_or_hand;
  const bool load_bearing = zone.role != body::Role::skin;
  if (spot.is_repair && load_bearing) {
    const std::optional<bool> reliable = zone.repairs[spot.index].reliable;
    const bool bad = spot.found ? reliable == false : at_low;
    if (bad)
      return near ? Level{Verdict::do_not_drive, "repair-near-mount"}
                  : Level{Verdict::repair, "repair-not-relied-on"};
  }
  if (!spot.found) return {};
  if (load_bearing && spot.by_stuffing && !at_low) return {Verdict::repair, "stuffed"};
  if (load_bearing && proved && near && step >= Step::weak)
    return {Verdict::do_not_drive, "weak-near-mount"};
  if (load_bearing && proved && step >= Step::thin)
    return {Verdict::repair, step == Step::thin ? "past-limit" : "weak"};
  if (!load_bearing && step == Step::holed) return {Verdict::treat, "skin-holed"};
  return {Verdict::treat, "rusted"};
}

std::string default_source(std::string_view rule) {
  static const char* const manual = "UK MOT inspection manual, cars, Appendix A section 2";
  if (rule == "weak-near-mount")
    return fmt::format(
        "{} (load-bearing metal within 30 cm of such a mounting); its older Appendix C (a hole, or "
        "metal not sound under hand or tool)",
        manual);
  if (rule == "repair-near-mount" || rule == "repair-not-relied-on")
    return "UK MOT inspection manual, cars, Appendix A (continuous seam weld; brazing, solder, "
           "bonding, fibre and filler are not strong enough for load-bearing members)";
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
  if (rule == "stuffed")
    return "metal behind foam, paper, board, mesh or cement isn't there until somebody shows it "
           "(common practice)";
  if (rule == "skin-holed")
    return "a holed skin lets water in and carries no load (common practice)";
  return "common practice";
}

// The constants that a rule rests on, of those a rules file can change.
std::vector<std::string_view> rests_on(std::string_view rule) {
  if (rule == "weak-near-mount") return {"near-radius", "weak-limit"};
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

void find_verdict(Result& result, const rules::Rules& rules) {
  each_spot(result, [&](const Spot& spot, const Zone& zone) {
    result.verdict = std::max(result.verdict, level(spot, zone).verdict);
  });
  if (result.verdict == Verdict::not_known) {
    const bool enough = result.main.area_share + 1e-9 >= rules.coverage_limit;
    if (enough) result.verdict = Verdict::leave_alone;
    const char* rule = enough ? "nothing-found" : "coverage";
    result.reasons.push_back({0, "", "",
                              enough ? "nothing found where looked"
                                     : "nothing found, but too little was seen to say more",
                              rule, rule_source(rule, rules)});
    return;
  }
  const auto of_level = [&](Verdict verdict) {
    std::vector<std::pair<int, Reason>> found;
    each_spot(result, [&](const Spot& spot, const Zone& zone) {
      const Level asks = level(spot, zone);
      if (asks.verdict == verdict)
        found.emplace_back(spot.rank, reason(spot, zone, asks.rule, rules));
    });
    std::ranges::stable_sort(found, {}, &std::pair<int, Reason>::first);
    std::vector<Reason> reasons;
    for (auto& [rank, each] : found) reasons.push_back(std::move(each));
    return reasons;
  };
  result.reasons = of_level(result.verdict);
  if (result.verdict > Verdict::repair) result.also_to_repair = of_level(Verdict::repair);
}

void find_could_be(Result& result, const std::vector<ZoneFacts>& facts) {
  result.could_be = result.verdict;
  for (std::size_t i = 0; i < result.zones.size(); ++i) {
    const Zone& zone = result.zones[i];
    if (zone.fitted && zone.role == body::Role::main && zone.on_mount && !facts[i].is_seen())
      result.could_be = Verdict::do_not_drive;
    for (const Spot& spot : zone.spots)
      result.could_be = std::max(result.could_be, level_at_low(spot, zone).verdict);
  }
}

}  // namespace

Level level(const Spot& spot, const Zone& zone) {
  return level_of(spot, zone, At::likely);
}

Level level_at_low(const Spot& spot, const Zone& zone) {
  return level_of(spot, zone, At::low);
}

std::string rule_source(std::string_view rule, const rules::Rules& rules) {
  const std::vector<std::string> changes = rules::changed(rules, rests_on(rule));
  if (changes.empty()) return default_source(rule);
  return fmt::format("{}; here by changed rules: {}", default_source(rule),
                     fmt::join(changes, "; "));
}

void judge(Result& result, const std::vector<ZoneFacts>& facts, const rules::Rules& rules) {
  find_verdict(result, rules);
  find_could_be(result, facts);
  find_open_up(result, facts, rules);
}

void rank(std::vector<Zone>& zones) {
  struct Placed {
    Spot* spot;
    const Zone* zone;
    int order;
  };
  std::vector<Placed> found;
  for (Zone& zone : zones)
    for (Spot& spot : zone.spots)
      if (spot.found) found.push_back({&spot, &zone, static_cast<int>(found.size())});
  const auto key = [](const Placed& p) {
    const int number = p.zone->own.empty() ? p.zone->number : 1000;
    return std::tuple(-static_cast<int>(level(*p.spot, *p.zone).verdict), !strictly_near(*p.spot),
                      static_cast<int>(p.zone->role), p.spot->metal.weighed.value, number, p.order);
  };
  std::ranges::sort(found, {}, key);
  int rank = 0;
  for (const Placed& each : found) each.spot->rank = ++rank;
}

}  // namespace tinworm::weighing
