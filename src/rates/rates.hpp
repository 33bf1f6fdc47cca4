// What work takes and costs: the one table of assumptions that a plan of work rests on. Each has a
// unit, bounds and a standing, and can be set otherwise by a rates file (reader.hpp). See
// rates.cpp for the table. Hours are those of an experienced hand, without stripping, paint, parts
// and mechanical work.
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "rules/rules.hpp"

namespace tinworm::rates {

struct Range {  // low <= likely <= high
  double low = 0;
  double likely = 0;
  double high = 0;
  auto operator<=>(const Range&) const = default;
};
// low <= likely <= high holds for sums and products of ranges over 0.
Range operator+(const Range& a, const Range& b);
Range operator*(const Range& a, const Range& b);
Range operator*(const Range& a, double by);

// Jobs that the trade reckons as a whole. Each is also the most that cuts in one such part take.
enum class Job {
  jacking_point,
  outer_sill,
  inner_sill,
  floor,
  cross_member,
  spring_hanger_front,
  spring_hanger_rear,
  chassis_leg,
  strut_top,
  inner_wing,
  post_foot,
  bulkhead_corner,
  scuttle,
  screen_corner,
  inner_arch,
  outer_arch,
  rear_wing,
  front_wing,
  door_bottom,
  boot_floor,
  spare_well,
  front_valance,
  rear_valance,
  battery_tray,
  main_rail,
  other_part,  // whatever isn't named above
};
constexpr std::size_t jobs = static_cast<std::size_t>(Job::other_part) + 1;
std::string_view key(Job job);  // "outer-sill": also in the rates file

struct Rates {
  std::string currency = "EUR";  // ISO 4217

  // Money
  double hour = 65;
  double sheet_per_kg = 5;
  Range consumables = {.08, .115, .15};  // of labour

  // Cuts
  Range margin_mm = {25, 35, 50};
  double join_mm = 100;
  double to_outline_mm = 30;
  Range unsized_mm = {50, 100, 200};
  double sill_end = .25;
  double lip_share = .5;
  double cutting_allowance = .25;
  double steel_kg_per_m3 = 7850;

  // Hours
  Range weld_speed = {.15, .25, .40};  // m/h
  Range flat_cut = {.4, .5, .6};
  Range folded_cut = {2.0, 2.5, 3.3};
  Range pinhole = {.3, .5, 1.0};
  Range treat = {.3, .5, 1.0};
  Range drains = {.3, .5, 1.0};
  Range brace = {3, 5.5, 8};
  Range protect = {6, 9, 12};
  std::array<Range, jobs> job = {};  // by Job; filled by the constructor

  // What isn't seen yet
  double hidden_bare = 1.15, hidden_scope = 1.3, hidden_coated = 1.6, hidden_repair = 2.0;
  Range contingency_bare = {.10, .125, .15};
  Range contingency_scoped = {.20, .25, .30};
  Range contingency_coated = {.30, .45, .60};
  Range contingency_repaired = {.50, .75, 1.0};
  double correlation = .5;

  Rates();
  const Range& of(Job each) const { return job[static_cast<std::size_t>(each)]; }
};

using rules::Standing;

// Where a rate's value lies in Rates: a single figure, or a range of three.
struct Rate {
  std::string key;   // in the rates file: "weld-speed"
  std::string unit;  // "h", "m/h", "mm", "%", "" or "per hour", "per kg" of the currency
  std::string what;
  double least = 0, most = 0;  // bounds, inclusive, of each figure
  Standing standing = Standing::memory;
  std::string source;
  double& (*single)(Rates&) = nullptr;  // one of the two is set
  Range& (*range)(Rates&) = nullptr;
};

// Every rate, in the order of the file.
const std::vector<Rate>& table();

// A single figure as a range without width.
Range value(const Rates& rates, const Rate& rate);

// A value with its unit, a range as low–likely–high: "65 EUR per hour", "0.15–0.25–0.4 m/h".
std::string value_text(const Rates& rates, const Rate& rate);

// "hour 80 EUR per hour (default 65)" for each that isn't at its default.
std::vector<std::string> changed(const Rates& rates);

}  // namespace tinworm::rates
