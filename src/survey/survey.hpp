// One look at one car: the survey as a plain value. Its file is described in README.md.
// Lengths mm, films µm, areas m², distances driven km, shares 0 to 1. Equality counts places too.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "body/plan.hpp"
#include "quantity/date.hpp"
#include "quantity/length.hpp"
#include "survey/words.hpp"
#include "yaml/problem.hpp"

namespace tinworm::survey {

using quantity::PartialDate;
using quantity::Size;
using yaml::Place;

struct Car {
  std::string name;
  std::optional<int> built;  // year
  std::optional<double> odometer_km;
  std::string odometer;  // as typed, with its unit: "61200 mi"
  std::string colour;
  std::string chassis_number, engine_number, registration, owner;  // private
  bool operator==(const Car&) const = default;
};

struct Visit {
  PartialDate date;
  std::optional<Reason> reason;
  std::string by;                  // printed on the owner's papers only, unless signed
  std::string interest;            // any interest in a sale of this car
  std::string place;               // private
  std::vector<std::string> leave;  // what the owner agreed to have lifted, scraped, probed
  std::optional<Weather> weather;
  bool operator==(const Visit&) const = default;
};

struct Kept {
  std::optional<Use> use;
  std::optional<Air> air;
  std::optional<PartialDate> waxed;
  bool operator==(const Kept&) const = default;
};

struct MetalGauge {
  std::string name;                      // what tells it from others; empty: not told
  std::optional<double> uncertainty_mm;  // standard uncertainty, k = 1
  Coating coating = Coating::removed;
  bool coating_assumed = true;  // `coating` was left out
  bool operator==(const MetalGauge&) const = default;
};

struct PhotoFolder {
  std::string folder;  // inside the survey's folder
  std::string name;    // "IMG_{}.jpg"; a photo is then just its number
  bool operator==(const PhotoFolder&) const = default;
};

struct Photo {
  std::string path;  // relative to the survey's folder, from `photos:` and a number or as written
  Place place;
  bool operator==(const Photo&) const = default;
};

struct Gap {
  std::string where;
  std::optional<body::Side> side;  // left or right
  GapKind kind = GapKind::gap;
  std::optional<double> wheels_mm;  // on its wheels
  std::optional<double> lift_mm;    // on the lift
  Place place;
  bool operator==(const Gap&) const = default;
};

// How one zone was seen. A zone that no key names is not seen, and `word` is then empty.
struct Seen {
  std::optional<SeenWord> word;
  double share = 1;            // seen of the zone: `part` gives it, everything else is 1 or 0
  std::string reason;          // for hidden
  std::optional<HiddenBy> by;  // the reason's first word, where it is one of these
  Place place;
  bool operator==(const Seen&) const = default;
};

struct Position {  // any of the three
  std::optional<double> x_mm, y_mm, z_mm;
  bool known() const { return x_mm || y_mm || z_mm; }
  bool operator==(const Position&) const = default;
};

struct PitPatches {  // greatest pit of each of several equal patches
  Size each;
  std::vector<double> deepest_mm;
  bool operator==(const PitPatches&) const = default;
};

struct Spot {
  std::string name;  // unique in its zone; a station's name places it
  Position at;       // from `at`, else the station's
  bool at_station = false;
  std::optional<Rust> rust;  // none given: as if only what the other signs say
  std::optional<Hand> hand;
  std::optional<Tap> tap;
  std::optional<Probe> probe;
  std::optional<Magnet> magnet;
  std::vector<Shape> shapes;       // dent, wavy, filler
  std::vector<double> metal_mm;    // readings
  std::optional<Coating> coating;  // under the gauge there, where otherwise than elsewhere
  std::vector<double> pit_mm;      // depths from the surrounding rusted face
  std::optional<PitPatches> pits;
  std::optional<Size> size;       // `hole 14x9` without `size` is the size
  std::optional<Size> hole;       // the largest
  std::vector<Size> other_holes;  // of the same place, largest first
  std::optional<double> crack_mm;
  std::optional<Stuffed> stuffed;
  std::vector<Photo> photos;
  std::string note;
  Place place;
  bool operator==(const Spot&) const = default;
};

struct Repair {
  std::string name;  // where it is, as of a spot; empty: not told
  Position at;       // from `at`, else the station's
  bool at_station = false;
  RepairKind kind = RepairKind::let_in;
  std::optional<Joint> joint;
  std::vector<Joint> other_joints;  // where it is joined in several ways: the worst of them tells
  std::optional<Sides> sides;       // open_side: a side of it isn't welded
  std::optional<int> layers;        // sheets that lie on one another
  std::optional<double> sheet_mm;   // of the repair's own sheet, when new
  std::vector<double> metal_mm;     // readings on it
  std::optional<Size> size;
  std::optional<PartialDate> date;
  std::optional<Beneath> beneath;
  Now now = Now::sound;
  bool now_assumed = true;  // `now` was left out
  std::vector<Photo> photos;
  std::string note;
  Place place;

  std::vector<Joint> joints() const;  // all of them, in the order recorded
  bool operator==(const Repair&) const = default;
};

struct DrainsAt {  // of one place of a zone
  std::string where;
  Drains drains = Drains::open;
  bool operator==(const DrainsAt&) const = default;
};

struct Mark {  // how to find a measured place again
  std::string where;
  std::string how;  // "140 behind the jack socket, 25 above the seam, photo 31"
  bool operator==(const Mark&) const = default;
};

struct Zone {  // what was found in a zone of the plan; a zone without an entry has none of these
  std::optional<Inside> inside;
  double inside_share = 0;                   // of an inside seen in part
  std::vector<double> reference_mm;          // sound metal of the same sheet
  std::optional<Coating> reference_coating;  // as of a spot
  std::optional<double> sheet_mm;
  std::vector<Spot> found;
  std::vector<double> film_um;
  bool film_off_scale =
      false;  // the greatest of them is only a lower bound: the gauge went no higher
  std::optional<Drains> drains;  // of all its drain holes; where told by place, the worst
  std::vector<DrainsAt> drains_at;
  std::vector<Mark> marks;
  std::vector<Repair> repairs;
  std::vector<Photo> photos;
  std::string note;
  Place place;
  bool operator==(const Zone&) const = default;
};

struct OwnZone {    // what the body plan doesn't know
  std::string key;  // "own-a"
  std::string name;
  body::Role role = body::Role::local;
  body::Side side = body::Side::centre;
  std::optional<body::View> view;  // where it is drawn
  Position at;
  std::optional<body::Carries> carries;  // a mount of its own
  Seen seen;
  Zone zone;
  bool operator==(const OwnZone&) const = default;
};

struct Mileage {
  double km = 0;
  std::string text;  // as typed: "65000 mi"
  bool operator==(const Mileage&) const = default;
};

struct Also {        // what else the owner must know
  std::string what;  // begins with the word of its matter
  Matter matter = Matter::other;
  std::string code;  // tyre date code
  std::string say;
  std::optional<std::variant<When, PartialDate, Mileage>> when;
  Place place;
  bool operator==(const Also&) const = default;
};

struct Opened {     // after work: what the cut showed
  int zone = 0;     // 0: an own zone
  std::string own;  // key of an own zone
  std::string where;
  std::optional<PartialDate> date;
  std::vector<double> metal_mm;
  std::string say;
  Place place;
  bool operator==(const Opened&) const = default;
};

struct Money {
  double amount = 0;
  std::string currency;
  bool operator==(const Money&) const = default;
};
struct Price {
  std::optional<Money> asked, sound;
  bool operator==(const Price&) const = default;
};  // private

struct Survey {
  std::string body_text;  // as written: "two-door-saloon 1" or a path
  body::PlanPtr body;
  quantity::Units units = quantity::Units::mm;
  Car car;
  Visit visit;
  Kept kept;
  MetalGauge gauge;
  PhotoFolder photos;
  std::string summary;  // the surveyor's own words, on the owner's papers only
  std::vector<Tool> tools;
  std::map<std::string, std::string> fitted;  // the body plan's options of this car, by name
  std::vector<Gap> gaps;
  std::map<int, Seen> seen;  // every zone that any key names, by number
  std::map<int, Zone> zones;
  std::vector<int> zone_order;  // numbers as they stand in the file: ranks break ties by it
  std::vector<OwnZone> own;
  std::vector<Also> also;
  std::vector<Opened> opened;
  Price price;

  // What it says of a zone of the plan, or with `number` 0 of one of its own; null: nothing.
  const Zone* zone(int number, const std::string& own) const;
  const OwnZone* own_zone(std::string_view key) const;  // null: it has none of that key
  bool operator==(const Survey&) const = default;
};

}  // namespace tinworm::survey
