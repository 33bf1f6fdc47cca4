#include "survey/spot.hpp"

#include <algorithm>

#include "survey/field.hpp"
#include "survey/station.hpp"
#include "survey/value.hpp"

namespace tinworm::survey {
namespace {

using yaml::MapReader;
using yaml::Node;

bool records_something(const Spot& spot) {
  return std::ranges::any_of(finding_fields(), [&](const Field<Spot>& field) {
    return field.facts.counts == Counts::yes && !field.written(spot).empty();
  });
}

}  // namespace

Spot read_spot(Page& page, const Node& node, const body::Zone* zone, bool complete) {
  const std::size_t problems_before = page.problems.size();
  Spot spot;
  spot.place = node.place;
  MapReader map(node, page.problems, "a finding");
  if (const Node* name = map.required("spot")) spot.name = name_of(page, *name, "a spot's name");
  read_fields(page, map, finding_fields(), spot);
  if (zone) stand_at_station(spot, node.find("at") != nullptr, *zone);
  map.finish();
  if (complete && !records_something(spot) && page.problems.size() == problems_before)
    page.add(
        {spot.place, "a finding says neither rust nor any other sign", spot.name, "",
         "add a rust word, or where nothing rusted `none` (long: `rust: none`): then the words "
         "are printed and count for nothing"});
  return spot;
}

}  // namespace tinworm::survey
