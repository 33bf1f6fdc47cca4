#include <fmt/format.h>

#include <algorithm>

#include "survey/free_words.hpp"
#include "survey/named_photos.hpp"
#include "weighing/asking.hpp"

namespace tinworm::weighing {
namespace {

using Pieces = std::vector<Advice>;

// A folder that is missing is said once; photos in it are not looked for.
void ask_about_photos(const survey::Survey& survey, const Beside& beside, Pieces& pieces) {
  const std::vector<survey::Photo> photos = survey::named_photos(survey);
  const std::string& folder = survey.photos.folder;
  const bool no_folder = !photos.empty() && !folder.empty() && !beside.there(folder);
  if (no_folder)
    pieces.push_back({0,
                      "",
                      "",
                      {},
                      "photo-folder",
                      fmt::format("where is the folder of photos, \"{}\"? It isn't beside the "
                                  "survey.",
                                  folder),
                      "What can't be shown carries less weight."});
  std::vector<std::string> missing;
  survey::Place first;
  for (const survey::Photo& photo : photos) {
    if (no_folder && photo.path.starts_with(folder + "/")) continue;
    if (std::ranges::find(missing, photo.path) != missing.end()) continue;
    if (beside.there(photo.path)) continue;
    if (missing.empty()) first = photo.place;
    missing.push_back(photo.path);
  }
  if (missing.empty()) return;
  pieces.push_back({0, "", "", first, "photo-missing",
                    fmt::format("where {}? {} named but not there.",
                                missing.size() == 1 ? "is the photo " + missing.front()
                                                    : "are the photos " + list(missing),
                                missing.size() == 1 ? "It is" : "They are"),
                    "What can't be shown carries less weight."});
}

// Of the other survey's zones; null where it has none.
const survey::Zone* same_zone(const ZoneFacts& zone, const std::vector<ZoneFacts>& others) {
  const auto found = std::ranges::find_if(others, [&](const ZoneFacts& other) {
    return other.number == zone.number && other.own == zone.own;
  });
  return found == others.end() ? nullptr : found->entry;
}

std::vector<std::string> names_in(const survey::Zone* zone) {
  std::vector<std::string> names;
  if (zone)
    for (const survey::Spot& spot : zone->found) names.push_back(spot.name);
  return names;
}

// Names in `names` that `others` hasn't.
std::vector<std::string> only_in(const std::vector<std::string>& names,
                                 const std::vector<std::string>& others) {
  std::vector<std::string> kept;
  for (const std::string& name : names)
    if (std::ranges::find(others, name) == others.end()) kept.push_back(name);
  return kept;
}

struct Years {  // one zone, now and then
  ZoneFacts zone;
  const survey::Zone* before = nullptr;
  std::vector<std::string> names_now, names_before;
};

// New names that are nearly old ones; the old ones are added to `renamed`.
void ask_about_names(const Years& years, const survey::Survey& before, Pieces& pieces,
                     std::vector<std::string>& renamed) {
  const std::vector<std::string> gone = only_in(years.names_before, years.names_now);
  if (!years.zone.entry) return;
  for (const survey::Spot& spot : years.zone.entry->found) {
    if (std::ranges::find(years.names_before, spot.name) != years.names_before.end()) continue;
    const std::string meant = survey::meant_name(spot.name, gone);
    if (meant.empty()) continue;
    renamed.push_back(meant);
    pieces.push_back({years.zone.number, years.zone.own, spot.name, spot.place, "spot-name",
                      fmt::format("{}, {}: is it what the survey of {} calls \"{}\"?",
                                  title(years.zone), spot.name, before.visit.date.text(), meant),
                      "Only a place of the same name is compared over the years."});
  }
}

void list_unmeasured(const Years& years, const std::vector<std::string>& renamed,
                     std::vector<std::string>& entries) {
  if (!years.before) return;
  for (const survey::Spot& then : years.before->found) {
    if (then.metal_mm.empty()) continue;
    if (std::ranges::find(renamed, then.name) != renamed.end()) continue;
    const auto measured_now = [&](const survey::Spot& now) {
      return now.name == then.name && !now.metal_mm.empty();
    };
    if (years.zone.entry && std::ranges::any_of(years.zone.entry->found, measured_now)) continue;
    entries.push_back(fmt::format("{}, {}", title(years.zone), then.name));
  }
}

void ask_about_before(const survey::Survey& survey, const survey::Survey& before, Pieces& pieces) {
  if (another_car(survey.car, before.car))
    pieces.push_back({0,
                      "",
                      "",
                      {},
                      "another-car",
                      fmt::format("is it the same car? Name, year or chassis number differ from "
                                  "those of {}.",
                                  before.visit.date.text()),
                      "Metal of two cars compared says nothing of either."});
  const std::vector<ZoneFacts> zones_before = zone_facts(before);
  std::vector<std::string> entries;
  Advice first;
  for (const ZoneFacts& zone : zone_facts(survey)) {
    if (!zone.fitted()) continue;
    Years years{zone, same_zone(zone, zones_before), names_in(zone.entry), {}};
    years.names_before = names_in(years.before);
    std::vector<std::string> renamed;
    ask_about_names(years, before, pieces, renamed);
    const bool none_yet = entries.empty();
    list_unmeasured(years, renamed, entries);
    if (none_yet && !entries.empty())
      first = {zone.number, zone.own, "", Look{nullptr, zone}.place(), "", "", ""};
  }
  if (entries.empty()) return;
  first.kind = "not-measured-again";
  first.question = fmt::format("can it be measured again, as in {}: {}?", before.visit.date.text(),
                               list(entries));
  first.why = "Only the same place measured twice shows how fast it rusts.";
  pieces.push_back(first);
}

}  // namespace

bool another_car(const survey::Car& now, const survey::Car& then) {
  const auto differ = [](const auto& a, const auto& b) { return a && b && *a != *b; };
  const bool numbers = !now.chassis_number.empty() && !then.chassis_number.empty() &&
                       now.chassis_number != then.chassis_number;
  return now.name != then.name || differ(now.built, then.built) || numbers;
}

std::vector<Advice> advice_beside(const survey::Survey& survey, const Beside& beside) {
  Pieces pieces;
  if (beside.there) ask_about_photos(survey, beside, pieces);
  if (beside.before) ask_about_before(survey, *beside.before, pieces);
  sort(pieces);
  return pieces;
}

}  // namespace tinworm::weighing
