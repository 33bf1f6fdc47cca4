#include "weighing/asking.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <utility>

namespace tinworm::weighing {

survey::Place Look::place() const {
  return facts.entry && facts.entry->place.line > 0 ? facts.entry->place : facts.seen.place;
}

Asking::Asking(const Result& weighed, const rules::Rules& constants)
    : result(weighed), rules(constants) {
  const std::vector<ZoneFacts> facts = zone_facts(result.survey);
  for (std::size_t i = 0; i < facts.size(); ++i)
    if (facts[i].fitted()) looks.push_back({&result.zones[i], facts[i]});
  for (const Look& look : looks) {
    if (!look.facts.entry) continue;
    const survey::Zone& entry = *look.facts.entry;
    for (std::size_t k = 0; k < entry.found.size(); ++k)
      finds.push_back({&look, &entry.found[k], &look.zone->spots[k]});
    for (std::size_t k = 0; k < entry.repairs.size(); ++k)
      mends.push_back({&look, &entry.repairs[k], &look.zone->repairs[k], static_cast<int>(k) + 1});
  }
}

void Asking::of_car(std::string_view kind, std::string question, std::string why,
                    survey::Place place) {
  pieces.push_back({0, "", "", place, std::string(kind), std::move(question), std::move(why)});
}

void Asking::of_zone(const Look& look, std::string_view kind, std::string question,
                     std::string why) {
  pieces.push_back({look.facts.number, look.facts.own, "", look.place(), std::string(kind),
                    std::move(question), std::move(why)});
}

void Asking::of_spot(const Find& find, std::string_view kind, std::string question,
                     std::string why) {
  const ZoneFacts& zone = find.look->facts;
  pieces.push_back({zone.number, zone.own, find.recorded->name, find.recorded->place,
                    std::string(kind), std::move(question), std::move(why)});
}

void Asking::of_repair(const Mend& mend, std::string_view kind, std::string question,
                       std::string why) {
  const ZoneFacts& zone = mend.look->facts;
  pieces.push_back({zone.number, zone.own, fmt::format("repair {}", mend.number),
                    mend.recorded->place, std::string(kind), std::move(question), std::move(why)});
}

int Asking::main_readings() const {
  int readings = 0;
  for (const Find& find : finds)
    if (find.look->facts.role == body::Role::main)
      readings += static_cast<int>(find.recorded->metal_mm.size());
  return readings;
}

std::string list(const std::vector<std::string>& entries, std::size_t most) {
  if (entries.size() <= most + 1) return fmt::format("{}", fmt::join(entries, "; "));
  return fmt::format("{}; and {} more",
                     fmt::join(entries.begin(), entries.begin() + static_cast<long>(most), "; "),
                     entries.size() - most);
}

std::string list(const Looks& looks) {
  std::vector<std::string> entries;
  for (std::size_t i = 0; i < looks.size(); ++i) {
    const ZoneFacts& zone = looks[i]->facts;
    const bool pair = i + 1 < looks.size() && zone.plan &&
                      zone.plan->pair() == looks[i + 1]->facts.number &&
                      zone.name == looks[i + 1]->facts.name;
    entries.push_back(pair ? fmt::format("{}, both sides ({} {})", zone.name, zone.number,
                                         looks[i + 1]->facts.number)
                           : title(zone));
    if (pair) ++i;
  }
  return list(entries);
}

std::string list(const Finds& finds) {
  std::vector<std::string> entries;
  for (const Find* find : finds) entries.push_back(title(*find));
  return list(entries);
}

std::string list(const Mends& mends) {
  std::vector<std::string> entries;
  for (const Mend* mend : mends) entries.push_back(title(*mend));
  return list(entries);
}

std::string title(const Look& look) {
  return title(look.facts);
}

std::string title(const Find& find) {
  return fmt::format("{}, {}", title(*find.look), find.recorded->name);
}

std::string title(const Mend& mend) {
  std::string what(word(mend.recorded->kind));
  if (mend.recorded->date) what += " of " + mend.recorded->date->text();
  return fmt::format("{}, repair {} ({})", title(*mend.look), mend.number, what);
}

const char* is_it(std::size_t how_many) {
  return how_many == 1 ? "is it" : "are they";
}

std::string percent(double share) {
  return fmt::format("{:.0f} %", 100 * share);
}

}  // namespace tinworm::weighing
