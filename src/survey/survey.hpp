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
  std::string chassis_number, registration, owner;  // private
  bool operator==(const Car&) const = default;
};

struct Visit {
  PartialDate date;
  std::optional<Reason> reason;
  std::string by;                  // printed on the owner's papers only, unless signed
  std::string interest;            // any interest in a sale of this car
  std::string place;               // private
  std::vector<std::string> leave;  // what the owner agreed to have lifted, scraped, probed
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
  std::optional<double> wheels_mm;  // on its wheels
  std::optional<double> lift_mm;    // on the lift
  Place place;
  bool operator==(const Gap&) const = default;
};

// How one zone was seen. A zone that no key names is not seen, and `word` is then empty.
struct Seen {
  std::optional<SeenWord> word;
  double share = 1;    // seen of the zone: `part` gives it, everything else is 1 or 0
  std::string reason;  // for hidden
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
  std::vector<double> metal_mm;  // readings
  std::vector<double> pit_mm;    // depths from the surrounding rusted face
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
  RepairKind kind = RepairKind::let_in;
  std::optional<Joint> joint;
  std::optional<Size> size;
  std::optional<PartialDate> date;
  std::optional<Beneath> beneath;
  Now now = Now::sound;
  bool now_assumed = true;  // `now` was left out
  std::vector<Photo> photos;
  std::string note;
  Place place;
  bool operator==(const Repair&) const = default;
};

struct Zone {  // what was found in a zone of the plan; a zone without an entry has none of these
  std::optional<Inside> inside;
  std::vector<double> reference_mm;  // sound metal of the same sheet
  std::optional<double> sheet_mm;
  std::vector<Spot> found;
  std::vector<double> film_um;
  bool film_off_scale =
      false;  // the greatest of them is only a lower bound: the gauge went no higher
  std::optional<Drains> drains;
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
  Seen seen;
  Zone zone;
  bool operator==(const OwnZone&) const = default;
};

struct Also {  // what else the owner must know
  std::string what;
  std::string code;  // tyre date code
  std::string say;
  std::optional<std::variant<When, PartialDate>> when;
  Place place;
  bool operator==(const Also&) const = default;
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
  std::vector<Gap> gaps;
  std::map<int, Seen> seen;  // every zone that any key names, by number
  std::map<int, Zone> zones;
  std::vector<int> zone_order;  // numbers as they stand in the file: ranks break ties by it
  std::vector<OwnZone> own;
  std::vector<Also> also;
  Price price;
  bool operator==(const Survey&) const = default;
};

}  // namespace tinworm::survey
