#include "survey/spot.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "survey/photo.hpp"
#include "survey/value.hpp"

namespace tinworm::survey {
namespace {

using yaml::MapReader;
using yaml::Node;

PitPatches read_pits(Page& page, const Node& node) {
  PitPatches pits;
  MapReader map(node, page.problems, "\"pits\"");
  if (const Node* each = map.required("each")) pits.each = size_mm(page, *each).value_or(Size{});
  if (const Node* deepest = map.required("deepest"))
    pits.deepest_mm = readings_mm(page, *deepest, pit_range);
  map.finish();
  return pits;
}

void read_signs(Page& page, MapReader& map, Spot& spot) {
  if (const Node* rust = map.optional("rust")) spot.rust = word_of<Rust>(page, *rust, "rust");
  if (const Node* hand = map.optional("hand")) spot.hand = word_of<Hand>(page, *hand, "hand");
  if (const Node* tap = map.optional("tap")) spot.tap = word_of<Tap>(page, *tap, "tap");
  if (const Node* probe = map.optional("probe")) spot.probe = word_of<Probe>(page, *probe, "probe");
  if (const Node* magnet = map.optional("magnet"))
    spot.magnet = word_of<Magnet>(page, *magnet, "magnet");
}

void read_measures(Page& page, MapReader& map, Spot& spot) {
  if (const Node* metal = map.optional("metal"))
    spot.metal_mm = readings_mm(page, *metal, metal_range);
  if (const Node* pit = map.optional("pit")) spot.pit_mm = readings_mm(page, *pit, pit_range);
  if (const Node* pits = map.optional("pits")) spot.pits = read_pits(page, *pits);
  if (const Node* size = map.optional("size")) spot.size = size_mm(page, *size);
  if (const Node* hole = map.optional("hole")) spot.hole = size_mm(page, *hole);
  if (const Node* crack = map.optional("crack"))
    spot.crack_mm = length_mm(page, *crack, crack_range);
  if (const Node* stuffed = map.optional("stuffed"))
    spot.stuffed = word_of<Stuffed>(page, *stuffed, "stuffed");
  if (const Node* photo = map.optional("photo")) spot.photos = read_photos(page, *photo);
  if (const Node* note = map.optional("note")) spot.note = text_of(page, *note, "a note");
}

void stand_at_station(Spot& spot, const body::Zone& zone) {
  const auto station = std::find_if(zone.stations.begin(), zone.stations.end(),
                                    [&](const body::Station& s) { return s.name == spot.name; });
  if (station == zone.stations.end()) return;
  spot.at = {station->at.x_mm, station->at.y_mm, station->at.z_mm};
  spot.at_station = true;
}

bool records_something(const Spot& spot) {
  return spot.rust || spot.hand || spot.tap || spot.probe || spot.magnet ||
         !spot.metal_mm.empty() || !spot.pit_mm.empty() || spot.pits || spot.hole ||
         spot.crack_mm || spot.stuffed;
}

std::optional<double>* axis_of(Position& at, std::string_view word) {
  if (word == "x") return &at.x_mm;
  if (word == "y") return &at.y_mm;
  if (word == "z") return &at.z_mm;
  return nullptr;
}

// `x 1150 z 200`: a letter, then a length up to the next letter.
Position position_in_line(Page& page, const Node& node) {
  Position at;
  const auto words = between_spaces(node.text);
  for (std::size_t i = 0; i < words.size();) {
    std::optional<double>* axis = axis_of(at, words[i]);
    std::size_t end = i + 1;
    while (end < words.size() && !axis_of(at, words[end])) ++end;
    const Node here = page.part_of(node, words[i]);
    if (!axis || end == i + 1) {
      page.add({here.place, "a position is an axis and a number for it", here.text, "x 1150 z 200",
                "x rearward from the front axle, y to the right, z up"});
      return at;
    }
    if (*axis) page.add({here.place, "an axis stands twice in one position", here.text, "", ""});
    const std::size_t from = static_cast<std::size_t>(&words[i + 1].front() - &node.text.front());
    const std::size_t to = static_cast<std::size_t>(&words[end - 1].back() - &node.text.front());
    const std::string_view number = std::string_view(node.text).substr(from, to - from + 1);
    *axis = coordinate_mm(page, page.part_of(node, number));
    i = end;
  }
  return at;
}

}  // namespace

Position read_position(Page& page, const Node& node) {
  if (node.kind == Node::Kind::scalar)
    return is_short(page, node, "a position") ? position_in_line(page, node) : Position{};
  Position at;
  MapReader map(node, page.problems, "a position");
  for (const std::string_view axis : {"x", "y", "z"})
    if (const Node* value = map.optional(axis)) *axis_of(at, axis) = coordinate_mm(page, *value);
  if (map.is_map() && node.entries.empty())
    page.add({node.place, "a position is empty", "", "{x: 1150, z: 200}", ""});
  map.finish();
  return at;
}

Spot read_spot(Page& page, const Node& node, const body::Zone* zone, bool complete) {
  const std::size_t problems_before = page.problems.size();
  Spot spot;
  spot.place = node.place;
  MapReader map(node, page.problems, "a finding");
  if (const Node* name = map.required("spot")) spot.name = name_of(page, *name, "a spot's name");
  const Node* at = map.optional("at");
  if (at)
    spot.at = read_position(page, *at);
  else if (zone)
    stand_at_station(spot, *zone);
  read_signs(page, map, spot);
  read_measures(page, map, spot);
  map.finish();
  if (complete && !records_something(spot) && page.problems.size() == problems_before)
    page.add({spot.place, "a finding says neither rust nor any other sign", spot.name, "",
              "add a rust word; `rust: none`, in one line `none`, is a station that was measured"});
  return spot;
}

}  // namespace tinworm::survey
