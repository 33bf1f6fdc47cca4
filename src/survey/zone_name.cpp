#include "survey/zone_name.hpp"

#include <algorithm>
#include <vector>

#include <fmt/format.h>

#include "survey/free_words.hpp"
#include "yaml/problem.hpp"

namespace tinworm::survey {
namespace {

std::vector<std::string> sorted_words(std::string_view text) {
  std::vector<std::string> words = words_in(text);
  std::ranges::sort(words);
  return words;
}

std::string full_name(const body::Zone& zone, const std::string& name) {
  return zone.side() == body::Side::centre ? name
                                           : fmt::format("{} {}", body::word(zone.side()), name);
}

// Both words for the zone, with its side.
std::vector<std::string> names_of(const body::Zone& zone) {
  std::vector<std::string> names = {full_name(zone, zone.name)};
  if (!zone.also.empty()) names.push_back(full_name(zone, zone.also));
  return names;
}

std::size_t shared_words(const std::vector<std::string>& a, const std::vector<std::string>& b) {
  std::vector<std::string> both;
  std::ranges::set_intersection(a, b, std::back_inserter(both));
  return both.size();
}

}  // namespace

std::optional<int> zone_named(const body::Plan& plan, std::string_view text) {
  const std::vector<std::string> words = sorted_words(text);
  std::optional<int> found;
  for (const body::Zone& zone : plan.zones)
    for (const std::string& name : names_of(zone)) {
      if (sorted_words(name) != words) continue;
      if (found && found != zone.number) return std::nullopt;
      found = zone.number;
    }
  return found;
}

std::string nearest_zone(const body::Plan& plan, std::string_view text) {
  const auto titled = [](const body::Zone& zone) {
    return fmt::format("{} ({})", full_name(zone, zone.name), zone.number);
  };
  std::vector<std::string> all;
  for (const body::Zone& zone : plan.zones)
    for (std::string& name : names_of(zone)) all.push_back(std::move(name));
  if (const std::string near = yaml::nearest_word(text, all); !near.empty()) {
    const auto zone = std::ranges::find_if(plan.zones, [&](const body::Zone& each) {
      return std::ranges::count(names_of(each), near) > 0;
    });
    return titled(*zone);
  }
  const std::vector<std::string> words = sorted_words(text);
  const body::Zone* nearest = nullptr;
  std::size_t most = 0;
  for (const body::Zone& zone : plan.zones)
    for (const std::string& name : names_of(zone))
      if (const std::size_t shared = shared_words(words, sorted_words(name)); shared > most) {
        most = shared;
        nearest = &zone;
      }
  return nearest && most >= 2 ? titled(*nearest) : "";
}

}  // namespace tinworm::survey
