// A plan of work: what to do to a car, in what order, and what it may take, as ranges. All that any
// output needs; outputs compute nothing. Ranges are low, likely, high. Lengths mm, welds m, areas
// m², masses kg, hours h, money in the currency of the rates; nothing is rounded.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "body/plan.hpp"
#include "geometry/point.hpp"
#include "rates/rates.hpp"
#include "weighing/result.hpp"

namespace tinworm::work {

using rates::Range;

// access: an outer part is opened to reach an inner one, and closed again.
enum class Kind { brace, access, cut, treat, drains, protect };
// What comes first. Danger: on or near mountings of brakes, steering, suspension, belts, towing.
enum class Urgency { danger, stiffness, water, spread, looks };
std::string_view word(Kind), word(Urgency);  // "cut", "danger": as in JSON

// How the part was seen, by what hides most; the high figures are raised for it.
enum class Hidden { nothing, bare, scope, coated, repair };

// What fits the damage. let_in: cut out and let in anew. weld_up: a pinhole in sound metal, at
// worst a small piece. crack: its ends drilled, welded, on load-bearing metal plated over.
// reopened: taken out for access, the same piece welded in again.
enum class Way { let_in, weld_up, crack, reopened };
std::string_view word(Way);  // "let-in": as in JSON

struct Cut {  // one rectangle
  Way way = Way::let_in;
  std::vector<std::string> places;
  Range along_mm, across_mm;         // along and across the part's run, margin included
  std::vector<std::string> to_edge;  // likely sides that go to the part's edge: "lower", "rear"
  bool certain = true;               // false: its places were only judged; low is then without it
  bool whole = false;                // the part from end to end
  bool size_assumed = false;         // of a place without size
  bool placed = true;                // false: nobody recorded where, so no side goes to an edge
  double crack_mm = 0;               // of a crack: its length
  double pinhole_mm = 0;             // of a pinhole: across
  bool plated = false;               // of a crack: over the rectangle
  std::optional<geometry::Interval> along_at;  // where it likely is along the run; none: not placed
};

struct Sheet {
  double thickness_mm = 0;  // to buy: the next in stock not under the original
  double original_mm = 0;
  Range area_m2;  // to buy, cutting allowance included
  Range mass_kg;
};

struct Task {
  int number = 0;  // from 1, in the order of work
  int zone = 0;    // 0: the whole car or an own zone
  std::string own;
  std::string name;  // of the zone; empty: the whole car
  body::Side side = body::Side::centre;
  Kind kind = Kind::treat;
  Urgency urgency = Urgency::looks;
  std::string what;     // in words, without figures
  bool judged = false;  // to be done only if opening up or measuring shows it
  int reaches = 0;      // of an access: the zone that it is for
  rates::Job job = rates::Job::other_part;
  std::vector<Cut> cuts;
  std::vector<std::string> treated;  // places that are treated, not cut
  Hidden hidden_by = Hidden::nothing;
  double hidden = 1;       // by which the high figures were raised for it
  std::string hidden_why;  // "inside not seen"
  bool at_most = false;    // the likely hours are those of the whole job, which its cuts exceed
  Range hours, cost, weld_m;
  std::optional<Sheet> sheet;          // none: nothing is let in, or no thickness is known
  std::vector<int> after;              // numbers of tasks that come before, ascending
  std::vector<std::string> questions;  // about its seams, each with its source (splices.hpp)
};

// By PERT: each task's mean is (low + 4 likely + high)/6 and its standard deviation (high - low)/6.
struct Total {
  Range sum;
  double mean = 0;
  double standard_deviation = 0;  // tasks of one car run over together, by `correlation`
  double in_80_of_100 = 0;        // mean + z s: not exceeded in 80 of 100 such plans
};

struct Sums {
  Total hours, cost;
};

struct Contingency {  // apart from the total
  std::string rate;   // its key: "contingency-coated"
  std::string state;  // "coated, or part of it not seen"
  Range share, cost;  // of the total's mean
};

struct Doubt {  // what isn't in the tasks and may come on top
  int zone = 0;
  std::string own;
  std::string name;
  body::Side side = body::Side::centre;
  std::string why;
  rates::Job job = rates::Job::other_part;
  Range hours, cost;  // if it is so
};

struct Caution {
  std::string text;
  std::vector<int> tasks;  // which it is for, ascending
};

struct Plan {
  rates::Rates rates;                          // what it was reckoned by
  std::string rates_file = "default";          // or the rates file, where it changes anything
  std::string rates_name;                      // its own name, where it has one
  std::vector<std::string> rates_changed;      // "hour 80 EUR per hour (default 65)"
  std::vector<const rates::Rate*> rates_used;  // by the tasks and doubts, in order of the table
  std::vector<Task> tasks;                     // in order
  Total hours, cost;                           // of all tasks
  Sums sure, if_opening_shows;                 // of those that aren't judged, and of those that are
  std::vector<std::string> order_notes;        // rings in the body plan that the order broke
  std::optional<Contingency> contingency;      // none without tasks
  std::vector<Sheet> sheets;                   // to buy, one for each thickness, thin first
  std::vector<Doubt> doubts;
  Range doubts_cost;  // of all of them together
  std::vector<Caution> cautions;
  std::vector<std::string> not_counted;  // what the hours and the money leave out
};

// Of a result of weigh(). Pure. The caller fills the name of the rates.
Plan plan(const weighing::Result& result, const rates::Rates& rates);

}  // namespace tinworm::work
