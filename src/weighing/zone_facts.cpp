#include "weighing/zone_facts.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace tinworm::weighing {
namespace {

using survey::SeenWord;

std::string title(const std::string& name, body::Side side, const std::string& key) {
  if (side == body::Side::centre) return fmt::format("{} ({})", name, key);
  return fmt::format("{}, {} ({})", name, body::word(side), key);
}

ZoneFacts facts_of(const body::Zone& zone, const survey::Survey& survey) {
  ZoneFacts facts;
  facts.number = zone.number;
  facts.name = zone.name;
  facts.role = zone.role;
  facts.side = zone.side();
  facts.plan = &zone;
  if (const auto seen = survey.seen.find(zone.number); seen != survey.seen.end())
    facts.seen = seen->second;
  if (const auto entry = survey.zones.find(zone.number); entry != survey.zones.end())
    facts.entry = &entry->second;
  return facts;
}

}  // namespace

bool ZoneFacts::is_seen() const {
  return seen.word == SeenWord::bare || seen.word == SeenWord::coated ||
         seen.word == SeenWord::part || seen.word == SeenWord::scope;
}

bool ZoneFacts::has_inside() const {
  return plan && (plan->build == body::Build::box || plan->build == body::Build::layered);
}

bool ZoneFacts::inside_seen() const {
  if (!has_inside()) return true;
  const bool stuffed = entry && std::ranges::any_of(entry->found, [](const auto& s) {
                         return s.stuffed.has_value();
                       });
  if (stuffed) return false;
  return seen.word == SeenWord::scope || (entry && entry->inside == survey::Inside::scoped);
}

std::vector<ZoneFacts> zone_facts(const survey::Survey& survey) {
  std::vector<ZoneFacts> all;
  for (const body::Zone& zone : survey.body->zones) all.push_back(facts_of(zone, survey));
  for (const survey::OwnZone& own : survey.own) {
    ZoneFacts facts;
    facts.own = own.key;
    facts.name = own.name;
    facts.role = own.role;
    facts.side = own.side;
    facts.entry = &own.zone;
    facts.seen = own.seen;
    all.push_back(facts);
  }
  return all;
}

std::string title(const ZoneFacts& zone) {
  return title(zone.name, zone.side, zone.own.empty() ? std::to_string(zone.number) : zone.own);
}

std::string title(const Zone& zone) {
  return title(zone.name, zone.side, zone.own.empty() ? std::to_string(zone.number) : zone.own);
}

}  // namespace tinworm::weighing
