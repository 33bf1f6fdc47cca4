// The one table of constants that the method works with. Each has a unit, bounds and a source, and
// can be set otherwise by a rules file (reader.hpp). See constants.cpp for the table.
#pragma once

#include <array>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "survey/words.hpp"

namespace tinworm::rules {

struct Envelope {  // of metal left, as fractions of the sheet; no confidence interval
  double least = 0;
  double likely = 0;
  double most = 0;
};

struct Rules {
  // Readings and baselines
  double prior_scatter_mm = 0.04;
  double prior_degrees = 5;
  double scatter_limit_mm = 0.30;
  double gauge_uncertainty_mm = 0.05;
  double pair_half_share = 0.05;
  double survey_sheet_half_share = 0.10;
  double plan_sheet_half_share = 0.20;
  double echo_factor = 2.3;
  double film_prior_share = 0.20;
  double film_prior_degrees = 2;
  double echo_film_limit_um = 500;
  double too_thick = 1.25;
  double too_thick_least = 0.50;

  // Pits
  double pit_left_limit = 0.70;
  double pit_most = 0.85;
  double pit_through_most = 0.50;

  // What a word or a hand tells where nothing was measured; by survey::Rust
  std::array<Envelope, survey::rusts> envelope = std::to_array<Envelope>({
      {.95, 1.0, 1.0},  // none
      {.95, .98, 1.0},  // surface
      {.30, .70, .95},  // blister
      {.70, .85, .95},  // pitting
      {.50, .70, .90},  // scale
      {.50, .75, .92},  // seam
      {.40, .65, .90},  // poultice
      {.40, .75, .95},  // edge
      {.85, .93, .99},  // contact
      {.30, .60, .90},  // acid
      {.40, .75, .97},  // bleed
      {0, 0, 0},        // hole
  });
  double firm_least = 0.50;
  Envelope gives = {.15, .35, .50};
  Envelope breaks = {0, .10, .30};
  Envelope dull = {.50, .70, .85};
  Envelope stuffed = {0, .15, .50};
  double thick_coat_least = 0.30;
  double pinhole_most = 0.85;
  double crack_most = 0.85;
  double crack_on_mount_most = 0.50;
  double least_bare = 0.95;
  double least_coated = 0.85;
  double least_part = 0.50;
  double least_inside_not_seen = 0.50;

  // Steps: least metal left of each; a value on a limit counts to its sound side
  double sound_limit = 0.95;
  double repair_limit = 0.85;
  double weak_limit = 0.50;

  // Place and area
  double near_radius_mm = 300;
  double on_mm = 100;
  double into_mm = 200;
  double tank_mm = 150;
  double gap_moves_mm = 3;
  double hole_mm = 25;
  double pinhole_mm = 10;
  double pinholes = 3;
  double pinholes_mm = 100;
  double unsized_area_share = 0.01;
  double unsized_length_share = 0.25;

  // Sections of boxes
  double section_limit = 0.75;
  double section_along_mm = 150;
  double section_place_mm = 40;
  double wall_reach_mm = 50;

  // Burden
  double damage_at_sound = 0.10;
  double damage_at_limit = 0.30;
  double damage_at_weak = 0.75;
  double spread_base = 0.4;
  double exponent = 6;
  double local_weight = 0.5;
  double unseen_damage = 0.75;
  double unseen_damage_neighbour_good = 0.30;
  double skin_damage_factor = 0.6;
  double skin_holed = 0.7;
  double skin_in_shell = 0.2;
  Envelope bad_repair = {0, .50, .85};
  double unknown_repair_least = 0.50;

  // Coverage and coating
  double coverage_limit = 0.80;
  double scope_share = 0.5;
  double film_factory_um = 200;
  double film_repainted_um = 500;
  double film_heavy_um = 1000;

  // Years: rates that no gauge has measured, by how the car is kept (planning figures), and the
  // longest time until the next survey
  double stored_low_mm = 0, stored_high_mm = .01;
  double dry_season_low_mm = .01, dry_season_high_mm = .03;
  double all_weather_low_mm = .05, all_weather_high_mm = .15;
  double salted_low_mm = .1, salted_high_mm = .3;
  double next_stored_months = 48, next_dry_season_months = 24;
  double next_all_weather_months = 12, next_salted_months = 6;
  double grown = 1.5;

  // Questions: what is asked about, and when. They change no figure.
  double ask_readings = 5;
  double ask_repeats = 4;
  double ask_far_mm = 100;
  double ask_fresh_years = 1;
  double ask_film_zones = 5;
  double ask_film_unlike = 3.5;
  double ask_film_patch = 3;
  double ask_gap_mm = 2;
  double ask_film_thicker = 2;

  const Envelope& of(survey::Rust rust) const { return envelope[static_cast<std::size_t>(rust)]; }
};

enum class Standing { published, practice, memory };  // how sure the default is
std::string_view word(Standing standing);

struct Constant {
  std::string key;  // in the rules file: "near-radius"
  std::string unit;
  std::string what;
  double low = 0, high = 0;  // bounds, inclusive
  Standing standing = Standing::memory;
  std::string source;
  double& (*of)(Rules&);
};

// Every constant, in the order of the file.
const std::vector<Constant>& constants();

// The constant with that key; the key must exist.
const Constant& constant(std::string_view key);

double value(const Rules& rules, const Constant& constant);

enum class Written { length, film, share, number };  // how a value is written, by its unit
Written written(const Constant& constant);

// A value with its unit: "300 mm", "85 % of the sheet", "6".
std::string value_text(const Constant& constant, double value);

// "near-radius 250 mm (default 300 mm)" for each constant that isn't at its default, in the order
// of the table.
std::vector<std::string> changed(const Rules& rules);
// The same for some keys only, each of which must exist.
std::vector<std::string> changed(const Rules& rules, std::span<const std::string_view> keys);

}  // namespace tinworm::rules
