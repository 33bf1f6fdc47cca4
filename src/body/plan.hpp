// A body plan: the drawing and the knowledge of one kind of body. Its file is described in
// panels/README.md. A plain value; mirrored zones and lines are written out whole.
#pragma once

#include <array>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "body/job.hpp"
#include "body/view.hpp"
#include "geometry/point.hpp"
#include "yaml/problem.hpp"

namespace tinworm::body {

enum class Construction { unitary, separate_chassis };
enum class Role {
  main,
  local,
  skin
};  // carries the car; stiffens or shares; hangs on and keeps water out
enum class Joined { welded, bolted };
enum class Build {
  single,
  folded,
  box,
  layered
};  // box and layered have an inside that can't be seen from without
enum class Carries {
  brakes,
  steering,
  suspension,
  belts,
  towing,
  seat,
  jack,
  tank,
  engine,
  body,
  door
};
enum class Side { left, right, centre };
enum class Weight {
  strong,
  medium,
  light,
  ghost
};  // of a line; ghost: the skin's outline on structure sheets

std::string_view word(Construction), word(Role), word(Joined), word(Build), word(Carries),
    word(Job), word(Side), word(Weight);

// brakes, steering, suspension, belts, towing: load-bearing parts that carry these, and what lies
// within the near radius, are judged most strictly (UK MOT inspection manual, cars, Appendix A,
// section 2).
bool under_near_rule(Carries carries);

// By number alone: below 41 the centre line and singles; from there odd is left, the next even
// right.
Side side_of(int number);
std::optional<int> pair_of(int number);  // the other side's number

struct Option {                      // what one car of this body has and another hasn't
  std::string name;                  // "steering"
  std::vector<std::string> choices;  // "left", "right"
};

struct Condition {  // one choice of an option
  std::string option, choice;
  yaml::Place place;
};

struct Opening {  // what is lifted or taken off to see behind it
  std::string name;
  std::string how;     // "carpet up"
  double minutes = 0;  // common practice, of one person
  yaml::Place place;
};

struct Station {  // a named place where one measures again years later
  std::string name;
  geometry::Point3 at;
  yaml::Place place;  // in the plan's file
};

struct Drawing {
  Layer layer = Layer::skin;
  View view = View::left;
  std::string path;           // SVG path data as written (the twin's, for a mirrored zone)
  geometry::Outline outline;  // flattened, mirrored where the zone is
  yaml::Place place;
};

struct Zone {
  int number =
      0;  // 10-39 centre line and singles, front to rear; 41-98 pairs, odd left, next even right
  std::string name;
  std::string also;  // the word used on the other side of the Atlantic; may be empty
  Role role = Role::skin;
  Joined joined = Joined::welded;
  Build build = Build::single;
  Job job = Job::other_part;  // the kind of part it is to mend
  Axis runs = Axis::along;    // the direction in which rust along it counts most
  double sheet_mm = 0;
  double area_m2 = 0;  // developed; the largest outline's where the plan gives none
  std::vector<Drawing> drawn;
  geometry::Box3 extent;  // least to greatest over all outlines and `span`
  std::vector<Station> stations;
  std::string starts;      // where rust starts, in words
  std::vector<int> hides;  // zones usually worse than this one looks
  bool doubler = false;    // a second sheet that spreads a mount's load: judged like the mount
  std::vector<int> joins;  // zones it is welded or bolted to
  std::string opening;     // by which one looks behind it; empty: none
  yaml::Place place;

  Side side() const;
  std::optional<int> pair() const;                       // the other side's number
  const Drawing* drawing(Layer layer, View view) const;  // null where it is not drawn
};

struct Mount {
  std::string what;
  Carries carries = Carries::body;
  geometry::Point3 at;
  std::vector<int> on;    // zones it stands on
  std::vector<int> into;  // zones welded to those, which take its load on
  yaml::Place place;
  std::optional<Condition> when = {};  // only on cars that have this
};

struct Line {  // line work without a zone
  Weight weight = Weight::light;
  std::optional<Layer> layer;  // none: on both sheets
  std::vector<geometry::Outline> shapes;
  std::string path;
  std::optional<Condition> when;
  bool filled_with_paper = false;  // hides what lies beneath (glass, wheels)
};

struct BoxWall {
  std::string path;  // "b n c": names of points
  int zone = 0;
  yaml::Place place;
};

std::vector<std::string> points_on(const std::string& path);  // b, n and c

struct Box {  // a thin-walled section that carries load; see boxes/
  std::string name;
  Axis axis = Axis::along;
  double from_mm = 0;
  double to_mm = 0;
  std::map<std::string, geometry::Point> points;  // along: (y, z); across: (x, z); up: (x, y)
  std::vector<BoxWall> walls;
  yaml::Place place;
};

struct Size {
  double length_mm = 0, width_mm = 0, height_mm = 0, wheelbase_mm = 0;
};

struct Plan {
  std::string name;
  int version = 1;
  std::string title;
  std::string sha256;  // of its file; empty: built in
  Construction construction = Construction::unitary;
  Size size;
  geometry::Interval x;  // where the car's length lies: front end is negative
  std::map<View, std::vector<Line>> lines;
  std::vector<Zone> zones;  // by number
  std::vector<Mount> mounts;
  std::vector<Box> boxes;
  std::map<Side, std::vector<int>> sills;  // zones of the sill below each side's door openings
  std::vector<Option> options;
  std::vector<Opening> openings;

  const Option* option(std::string_view wanted) const;    // null if the body has none
  const Opening* opening(std::string_view wanted) const;  // likewise
  const Zone* zone(int number) const;                     // null if the body has none
};

using PlanPtr = std::shared_ptr<const Plan>;

}  // namespace tinworm::body
