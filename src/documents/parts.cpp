#include "documents/parts.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "weighing/zone_facts.hpp"

namespace tinworm::documents {

const weighing::Zone* part(const weighing::Result& result, int number, const std::string& own) {
  const auto found = std::ranges::find_if(result.zones, [&](const weighing::Zone& zone) {
    return zone.number == number && zone.own == own;
  });
  return found == result.zones.end() ? nullptr : &*found;
}

std::string title_of(const weighing::Result& result, int number, const std::string& own) {
  const weighing::Zone* zone = part(result, number, own);
  return zone ? weighing::title(*zone) : own;
}

std::string on_sheet(int number) {
  return number == 0 ? "" : fmt::format("zone-{:02}", number);
}

}  // namespace tinworm::documents
