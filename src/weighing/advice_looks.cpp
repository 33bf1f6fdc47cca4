#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "weighing/asking.hpp"

namespace tinworm::weighing {
namespace {

bool is_stuffed(const Look& look) {
  return look.facts.entry && std::ranges::any_of(look.facts.entry->found, [](const auto& spot) {
           return spot.stuffed.has_value();
         });
}

bool drains_shut(const Look& look) {
  return look.facts.entry && (look.facts.entry->drains == survey::Drains::blocked ||
                              look.facts.entry->drains == survey::Drains::plugged);
}

bool inside_open_to_doubt(const Look& look) {
  return look.facts.load_bearing() && look.facts.is_seen() && !look.facts.inside_seen();
}

void ask_for_coverage(Asking& asking) {
  const double seen = asking.result.main.area_share;
  if (!asking.result.main.any || seen + 1e-9 >= asking.rules.coverage_limit) return;
  Looks unseen;
  for (const Look& look : asking.looks)
    if (look.facts.plan && look.facts.role == body::Role::main && look.zone->seen_share < 1)
      unseen.push_back(&look);
  std::ranges::stable_sort(unseen, std::greater{}, [](const Look* look) {
    return look->facts.plan->area_m2 * (1 - look->zone->seen_share);
  });
  constexpr std::size_t largest = 4;
  unseen.resize(std::min(unseen.size(), largest));
  std::ranges::sort(unseen, {}, [](const Look* look) { return look->facts.number; });
  asking.of_car("coverage",
                fmt::format("can more of the main structure be seen? {} of its area was, and {} is "
                            "the least to judge by; the largest that wasn't: {}.",
                            percent(seen), percent(asking.rules.coverage_limit), list(unseen)),
                "What wasn't seen is not known and never counts as sound: until then the verdict "
                "stays open.");
}

void ask_for_readings(Asking& asking) {
  const int readings = asking.main_readings();
  const std::string why = fmt::format(
      "Load-bearing metal is to keep {} of its sheet, which neither eye nor hand can tell.",
      percent(asking.rules.repair_limit));
  if (readings == 0) {
    asking.of_car("nothing-measured",
                  "was nothing measured? Not one reading of the main structure is recorded; begin "
                  "with the stations of sills, legs and hangers.",
                  why);
  } else if (readings < asking.rules.ask_readings) {
    asking.of_car("few-readings",
                  fmt::format("can more be measured? Of the main structure {} reading{} recorded.",
                              readings, readings == 1 ? " is" : "s are"),
                  why);
  }
}

// Under a mount of the near rule, seen, whole as far as the hand can tell, and without a figure.
bool mount_lacks_reading(const Look& look) {
  if (!look.zone->on_mount || !look.facts.load_bearing() || !look.facts.is_seen()) return false;
  if (look.zone->step >= Step::weak) return false;  // the verdict has it already
  return std::ranges::none_of(look.zone->spots, [](const Spot& spot) {
    return spot.metal.kind == SpanKind::interval || spot.metal.pit_left;
  });
}

// What stands on any of these zones and falls under the near rule, each name once.
std::string standing_on(const Looks& looks, const body::Plan& plan) {
  std::vector<std::string> names;
  for (const body::Mount& mount : plan.mounts) {
    const bool stands = std::ranges::any_of(looks, [&](const Look* look) {
      return std::ranges::find(mount.on, look->facts.number) != mount.on.end();
    });
    const bool named = std::ranges::find(names, mount.what) != names.end();
    if (stands && !named && body::under_near_rule(mount.carries)) names.push_back(mount.what);
  }
  return list(names);
}

void ask_for_mounts(Asking& asking) {
  if (asking.main_readings() == 0) return;  // asked for the whole car
  Looks lacking;
  for (const Look& look : asking.looks)
    if (mount_lacks_reading(look)) lacking.push_back(&look);
  for (std::size_t i = 0; i < lacking.size(); ++i) {
    Looks sides = {lacking[i]};
    if (i + 1 < lacking.size() && lacking[i]->facts.plan->pair() == lacking[i + 1]->facts.number)
      sides.push_back(lacking[++i]);
    asking.of_zone(
        *sides.front(), "mount-not-measured",
        fmt::format("can a reading be taken on {}? What stands there: {}.", list(sides),
                    standing_on(sides, *asking.result.body)),
        "Weak metal under such a mounting decides whether the car may be driven, and no figure "
        "says how much is left.");
  }
}

void ask_for_insides(Asking& asking) {
  Looks outside_good;
  for (const Look& look : asking.looks)
    if (inside_open_to_doubt(look) && !is_stuffed(look) && !drains_shut(look) &&
        look.zone->step <= Step::bloom)
      outside_good.push_back(&look);
  if (outside_good.empty()) return;
  asking.of_zone(*outside_good.front(), "inside-not-seen",
                 fmt::format("can a scope be led into {}? Outside nothing worse than a film of "
                             "rust was found; inside nobody looked.",
                             list(outside_good)),
                 "Boxes and layers rust from inside, and metal can be gone behind a sound face.");
}

void ask_about_drains(Asking& asking) {
  for (const Look& look : asking.looks)
    if (inside_open_to_doubt(look) && drains_shut(look))
      asking.of_zone(
          look, "blocked-drain",
          fmt::format("{}: can its drains, which are {}, be cleared and its inside be looked at?",
                      title(look), word(*look.facts.entry->drains)),
          "Water stands behind a drain that is shut, and there nobody looked.");
}

void ask_about_insides_of_none(Asking& asking) {
  for (const Look& look : asking.looks) {
    if (!look.facts.plan || look.facts.has_inside()) continue;
    if (!look.facts.entry || !look.facts.entry->inside) continue;
    asking.of_zone(look, "inside-of-none",
                   fmt::format("{}: was `inside` meant for another zone? The body plan knows a "
                               "{} sheet here, which has none.",
                               title(look),
                               look.facts.plan->build == body::Build::single ? "single" : "folded"),
                   "The box that was looked into still counts as not seen inside.");
  }
}

void ask_about_unnamed(Asking& asking) {
  Looks unnamed;
  for (const Look& look : asking.looks)
    if (look.facts.plan && !look.facts.seen.word) unnamed.push_back(&look);
  if (unnamed.empty()) return;
  asking.of_zone(*unnamed.front(), "zone-not-named",
                 fmt::format("how was it seen: {}? The survey doesn't say.", list(unnamed)),
                 "A zone that is named nowhere counts as not seen.");
}

void ask_about_gaps(Asking& asking) {
  for (const survey::Gap& gap : asking.result.survey.gaps) {
    if (!gap.wheels_mm || !gap.lift_mm) continue;
    const double change_mm = std::abs(*gap.wheels_mm - *gap.lift_mm);
    if (change_mm + 1e-9 < asking.rules.ask_gap_mm) continue;
    asking.of_car("gap-moves",
                  fmt::format("why does the gap at the {} change by {:.1f} mm between wheels and "
                              "lift? Look again at sills, posts and floor.",
                              gap.where, change_mm),
                  "A gap that moves as the car is lifted speaks of a weak middle.", gap.place);
  }
}

}  // namespace

void ask_about_looks(Asking& asking) {
  ask_for_readings(asking);
  ask_for_coverage(asking);
  ask_for_mounts(asking);
  ask_for_insides(asking);
  ask_about_drains(asking);
  ask_about_insides_of_none(asking);
  ask_about_unnamed(asking);
  ask_about_gaps(asking);
}

}  // namespace tinworm::weighing
