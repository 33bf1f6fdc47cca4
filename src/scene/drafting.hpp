// A sheet while it is being drawn: what is at hand, and what the legend will have to explain.
#pragma once

#include <functional>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "scene/diagram.hpp"
#include "scene/free_space.hpp"
#include "scene/page.hpp"
#include "scene/sheet.hpp"

namespace tinworm::scene {

struct DrawnZone {  // one zone in one view
  const body::Zone* plan = nullptr;
  const weighing::Zone* zone = nullptr;
  std::size_t view = 0;  // index in the sheet's views
  std::vector<Polyline> shape;
  At centre;           // visually central point
  double room_mm = 0;  // radius of the largest circle inside
};

// At its true extent; a symbol, not to scale, under 2 mm; open where size or place isn't known; a
// cross for a station with whole metal; none for a repair.
enum class MarkKind { patch, symbol, open, station, none };

struct SpotMark {  // one spot in one view
  const weighing::Spot* spot = nullptr;
  std::size_t view = 0;
  std::vector<Polyline> shape;
  At at;
  bool place_known = false;
  MarkKind kind = MarkKind::patch;
  bool principal = false;  // the view in which the spot is named
};

struct Cover {  // glass, a wheel or a lamp that hides what lies beneath
  std::vector<Polyline> shape;
  Area area;
};

struct Used {                                     // what the drawing uses, for the legend
  std::set<weighing::Step> zones, spots, plates;  // tinted zones, spots, plates of numbers
  std::set<body::Role> roles;
  bool seen_bare = false, under_coating = false, not_seen = false, part_seen = false,
       inside_not_seen = false, not_fitted = false;
  bool measured = false, judged = false;  // solid and broken edges
  bool symbols = false, open_marks = false, stations = false;
  bool place_unknown = false, ranks = false, unranked = false;
  bool repair_relied = false, repair_not_relied = false, repair_not_known = false;
  bool circles = false;
  std::set<int> named;       // zones whose name stands beside their number
  std::set<int> unnumbered;  // zones whose number found no room in some view
};

// How zones and spots are shown where a sheet tells something else than what one survey found.
struct Dress {
  // A zone's fill; none: how it was seen, its step on the plate of its number, repairs as an edge.
  std::function<Item(const DrawnZone& drawn)> zone;
  // A spot's fill, no smaller than 2 mm; none: by its step, at its true extent, or a sign of its
  // own where that is too small or not known.
  std::function<Item(const SpotMark& mark)> spot;
  // Of a callout: its title and what stands under it. None: step, rust, metal left, nearness.
  std::function<std::pair<std::string, std::string>(const weighing::Spot& spot)> words;
  // A list tells all of it too: a callout's title may stand alone where it stands nearer, and none
  // is better than a leader across the car.
  bool details_elsewhere = false;
  double strokes = 1;  // width of bounds and lines over that of a whole sheet
};

struct Drafting {
  Page& page;
  const Sheet& sheet;
  const weighing::Result& result;
  const DiagramOptions& options;
  Measure measure;
  FreeSpace space;
  Used used;
  std::vector<DrawnZone> zones;
  std::vector<SpotMark> spots;
  std::vector<Cover> covers;
  bool numbers_everywhere = true;  // else only where something was found or mended
  bool part_names = false;         // beside numbers, where there is room
  Dress dress = {};
  std::vector<const weighing::Spot*> lettered = {};  // that bear a letter on this sheet, A first
};

}  // namespace tinworm::scene
