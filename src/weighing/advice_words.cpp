#include <algorithm>

#include <fmt/format.h>

#include "survey/damage_words.hpp"
#include "weighing/asking.hpp"

namespace tinworm::weighing {
namespace {

using survey::Damage;

constexpr std::string_view why =
    "Words alone count for nothing: no step and no verdict knows of them.";

bool gives(const survey::Spot& spot) {
  return spot.hand == survey::Hand::gives || spot.hand == survey::Hand::breaks ||
         spot.tap == survey::Tap::crunches || spot.probe == survey::Probe::goes_in;
}

// Whether a place records what a word of its remark names.
bool records(const survey::Spot& spot, Damage damage) {
  const bool holed = spot.hole || spot.rust == survey::Rust::hole;
  switch (damage) {
    case Damage::hole:
      return holed;
    case Damage::gives:
      return gives(spot) || holed;
    case Damage::crack:
      return spot.crack_mm.has_value();
    case Damage::scale:
      return spot.rust == survey::Rust::scale || holed;
    case Damage::stuffed:
      return spot.stuffed.has_value();
    case Damage::filler:
      return spot.magnet && spot.magnet != survey::Magnet::holds;
    case Damage::thin:
      return !spot.metal_mm.empty() || holed;
    case Damage::loose:
    case Damage::repair:
    case Damage::figure:
      break;
  }
  return false;
}

// What the zone as a whole records of it.
bool records(const survey::Zone& zone, Damage damage) {
  if (damage == Damage::filler && !zone.film_um.empty()) return true;
  const bool of_repairs = damage == Damage::repair || damage == Damage::loose ||
                          damage == Damage::crack || damage == Damage::filler;
  return (of_repairs && !zone.repairs.empty()) ||
         std::ranges::any_of(zone.found,
                             [&](const survey::Spot& spot) { return records(spot, damage); });
}

// The word to ask about: the worst that `is_recorded` doesn't know.
template <class IsRecorded>
std::optional<survey::DamageWord> unrecorded(std::string_view text, IsRecorded is_recorded) {
  std::vector<survey::DamageWord> words = survey::damage_words(text);
  std::erase_if(words, [&](const survey::DamageWord& word) { return is_recorded(word.damage); });
  const survey::DamageWord* word = survey::worst(words);
  return word ? std::optional(*word) : std::nullopt;
}

std::string question(std::string_view where, const survey::DamageWord& word) {
  return fmt::format("{}: the words say \"{}\"; is that damage, and recorded as such (\"{}\")?",
                     where, word.found, word.offer);
}

constexpr std::string_view kind = "said-not-recorded";

bool is_station(const Find& find) {
  const body::Zone* plan = find.look->facts.plan;
  return plan && std::ranges::find(plan->stations, find.recorded->name, &body::Station::name) !=
                     plan->stations.end();
}

void ask_at_places(Asking& asking) {
  for (const Find& find : asking.finds) {
    const auto recorded = [&](Damage damage) {
      const survey::Zone& zone = *find.look->facts.entry;
      const bool of_zone =
          damage == Damage::repair || damage == Damage::loose || damage == Damage::filler;
      return records(*find.recorded, damage) || (of_zone && records(zone, damage));
    };
    // A name is typed as freely as a remark, but for the body plan's own.
    const std::string name = is_station(find) ? "" : find.recorded->name;
    for (const std::string& text : {find.recorded->note, name})
      if (const auto word = unrecorded(text, recorded)) {
        asking.of_spot(find, kind, question(title(find), *word), std::string(why));
        break;
      }
  }
}

void ask_of_repairs(Asking& asking) {
  for (const Mend& mend : asking.mends) {
    const auto recorded = [&](Damage damage) {
      return damage == Damage::repair || damage == Damage::loose || damage == Damage::filler ||
             records(*mend.look->facts.entry, damage);
    };
    if (const auto word = unrecorded(mend.recorded->note, recorded))
      asking.of_repair(mend, kind, question(title(mend), *word), std::string(why));
  }
}

void ask_of_zones(Asking& asking) {
  const survey::Zone none;
  for (const Look& look : asking.looks) {
    const survey::Zone& entry = look.facts.entry ? *look.facts.entry : none;
    const auto recorded = [&](Damage damage) { return records(entry, damage); };
    const std::string own_name = look.facts.plan ? "" : look.facts.name;
    for (const std::string& text : {entry.note, look.facts.seen.reason, own_name})
      if (const auto word = unrecorded(text, recorded)) {
        asking.of_zone(look, kind, question(title(look), *word), std::string(why));
        break;
      }
  }
}

// Words that belong to no zone: nothing of the body is recorded there.
void ask_of_car(Asking& asking, std::string_view where, std::string_view text,
                survey::Place place) {
  const auto word = unrecorded(text, [](Damage) { return false; });
  if (!word) return;
  asking.of_car(kind,
                fmt::format("{}: the words say \"{}\"; if the body is meant, is it recorded at its "
                            "zone (\"{}\")?",
                            where, word->found, word->offer),
                std::string(why), place);
}

void ask_beside_zones(Asking& asking) {
  const survey::Survey& survey = asking.result.survey;
  for (const survey::Gap& gap : survey.gaps) ask_of_car(asking, "a gap", gap.where, gap.place);
  for (const survey::Also& also : survey.also)
    ask_of_car(asking, fmt::format("also, {}", also.what),
               fmt::format("{}: {}", also.what, also.say), also.place);
}

}  // namespace

void ask_about_words(Asking& asking) {
  ask_at_places(asking);
  ask_of_repairs(asking);
  ask_of_zones(asking);
  ask_beside_zones(asking);
}

}  // namespace tinworm::weighing
