#include "scene/change_paragraphs.hpp"

#include <algorithm>
#include <utility>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "history/words.hpp"
#include "scene/change_words.hpp"
#include "scene/naming.hpp"

namespace tinworm::scene {
namespace {

using history::Change;
using history::Comparison;
using history::Zone;

// What shares a reason, in the order in which reasons first come up.
class Grouped {
 public:
  void add(const std::string& why, std::string what) {
    auto same = std::ranges::find(groups_, why, &Group::first);
    if (same == groups_.end()) same = groups_.insert(same, {why, {}});
    same->second.push_back(std::move(what));
  }
  using Group = std::pair<std::string, std::vector<std::string>>;
  const std::vector<Group>& groups() const { return groups_; }

 private:
  std::vector<Group> groups_;
};

std::string numbered(const Zone& zone) {
  return zone.number == 0 ? zone_words(zone)
                          : fmt::format("{:02}{}{}", zone.number, no_break, zone_words(zone));
}

std::string name_of(const history::Place& place) {
  return place.zone_mean ? "mean of its readings" : place.name;
}

std::string reason(const Comparison& comparison, const history::Place& place) {
  const std::string date = date_words(comparison, place.from);
  if (place.change == Change::no_longer_visible)
    return fmt::format("{}, last noted in {}", place.why, date);
  if (place.change == Change::repaired)
    return fmt::format("{}; last seen as it was in {}", place.why, date);
  return place.why;
}

void add_places(std::vector<Paragraph>& paragraphs, Change change, const Comparison& comparison,
                const std::vector<std::string>& linked) {
  for (const Zone& zone : comparison.zones) {
    Grouped places;
    for (const history::Place& place : zone.places)
      if (place.change == change) places.add(reason(comparison, place), name_of(place));
    for (const auto& [why, names] : places.groups())
      paragraphs.push_back(
          {fmt::format("{} ({}): {}.", numbered(zone), fmt::join(names, ", "), why),
           link_to(zone.number, linked)});
  }
}

// Zones that no place of theirs tells of; by their numbers alone where they are many.
void add_zones(std::vector<Paragraph>& paragraphs, Change change, const Comparison& comparison) {
  constexpr std::size_t few = 6;
  Grouped named;
  std::vector<int> numbers;
  for (const Zone& zone : comparison.zones) {
    const bool told =
        std::ranges::any_of(zone.places, [&](const auto& each) { return each.change == change; });
    if (zone.change != change || told) continue;
    named.add(zone.why, numbered(zone));
    if (zone.number != 0) numbers.push_back(zone.number);
  }
  for (const auto& [why, names] : named.groups()) {
    const bool by_number =
        names.size() > few && named.groups().size() == 1 && numbers.size() == names.size();
    const std::string list =
        by_number ? number_list(numbers) : fmt::format("{}", fmt::join(names, "; "));
    paragraphs.push_back({fmt::format("Whole zones{}: {}.", why.empty() ? "" : ", " + why, list)});
  }
}

// Every place of one change, a paragraph for each reason: "14 right end; 55 middle, front end".
std::vector<Paragraph> by_reason(Change change, const Comparison& comparison) {
  Grouped grouped;
  for (const Zone& zone : comparison.zones) {
    Grouped places;
    for (const history::Place& place : zone.places)
      if (place.change == change)
        places.add(change == Change::same ? "" : place.why, name_of(place));
    for (const auto& [why, names] : places.groups())
      grouped.add(
          why, fmt::format("{}{}{}",
                           zone.number == 0 ? zone_words(zone) : fmt::format("{:02}", zone.number),
                           no_break, fmt::join(names, ", ")));
  }
  std::vector<Paragraph> paragraphs;
  for (const auto& [why, places] : grouped.groups()) {
    const std::string before = why.empty() ? "" : capitalised(why) + ": ";
    paragraphs.push_back({fmt::format("{}{}.", before, fmt::join(places, "; "))});
  }
  return paragraphs;
}

void add(std::vector<Paragraph>& all, std::string heading, std::vector<Paragraph> paragraphs) {
  if (paragraphs.empty()) return;
  all.push_back({std::move(heading), "", true});
  std::move(paragraphs.begin(), paragraphs.end(), std::back_inserter(all));
}

}  // namespace

std::string link_to(int number, const std::vector<std::string>& linked) {
  const std::string name = fmt::format("zone-{:02}", number);
  return std::ranges::find(linked, name) == linked.end() ? "" : name;
}

std::vector<Paragraph> change_paragraphs(const Comparison& comparison, Units units,
                                         const std::vector<std::string>& linked) {
  std::vector<Paragraph> all;
  for (const auto& [change, heading] :
       {std::pair(Change::no_longer_visible, "No longer visible"),
        std::pair(Change::newly_seen, "Newly seen"), std::pair(Change::repaired, "Repaired")}) {
    std::vector<Paragraph> paragraphs;
    add_places(paragraphs, change, comparison, linked);
    add_zones(paragraphs, change, comparison);
    add(all, heading, std::move(paragraphs));
  }
  std::vector<Paragraph> same = by_reason(Change::same, comparison);
  if (const std::string least = history::least_shown_text(comparison, units); !least.empty())
    same.insert(same.begin(), {fmt::format("A loss of less than {} would not have shown.", least)});
  add(all, "The same within the error of reading", std::move(same));
  add(all, "Not comparable", by_reason(Change::not_comparable, comparison));
  return all;
}

}  // namespace tinworm::scene
