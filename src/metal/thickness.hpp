// Metal left at a spot, as a fraction of the sheet that was there: lambda = t / t0, with its
// uncertainty by the GUM. Thicknesses mm; fractions of t0, as measured, so lambda may be over 1.
#pragma once

#include <optional>
#include <vector>

#include "metal/repeatability.hpp"
#include "metal/uncertainty.hpp"

namespace tinworm::metal {

// A mean of readings at one place, after any correction for coating.
struct Measured {
  double mean_mm = 0;
  int count = 1;                // readings in the mean, at least 1
  Repeatability repeatability;  // of one reading: see repeatability_of()
  double coating_mm = 0;        // standard uncertainty of the coating correction; 0: none was made
  std::optional<double> coating_degrees;  // its degrees of freedom; none: infinite
};

// What t0 is taken from.
struct Baseline {
  double sheet_mm = 0;  // t0, over 0; the mean of `measured` where that stands
  // Readings on sound metal with the same gauge; none: the sheet is stated or assumed.
  std::optional<Measured> measured;
  // t0 may lie anywhere within +/- this share of itself (rectangular): 0.05 more for a pair's
  // reference, 0.10 for a survey's sheet, 0.20 for a plan's.
  double half_width_share = 0;
  // One and the same film reading serves spot and reference, so that the error of the coating
  // correction is one in t and t0. Else film at two places is two errors.
  bool same_film = false;
};

Baseline reference(const Measured& measured);
Baseline pair_reference(const Measured& measured, double half_width_share);
Baseline stated_sheet(double sheet_mm, double half_width_share);

struct MetalInterval {
  double value = 0;  // lambda
  double low = 0;    // not under 0
  double high = 0;
  Expanded uncertainty;           // of lambda
  std::vector<Component> budget;  // what it is made of, in order of the sources named below
};

// The 95 % interval (or another coverage) of lambda = t / t0. The budget: the scatter of the spot's
// mean, 1/t0; the scatter of the reference's mean, -lambda/t0; the gauge's own error, which is one
// and the same in t and in a t0 read with it, (1 - lambda)/t0, else 1/t0; what the sheet itself may
// differ by, -lambda/t0; the coating correction as the gauge's error where the film is the same.
// Lines that are 0 by nature are left out.
//
// The scatter of spot and reference is mostly one estimate, pooled over the survey, yet each line
// brings its degrees of freedom to Welch-Satterthwaite, which asks for independent ones. Simulated
// (tests/metal/coverage_test.cpp), the intervals hold the truth in 93.8 to 95.6 % of surveys all
// the same; in 92.8 % where every place has a single reading.
MetalInterval metal_left(const Measured& spot, const Baseline& baseline, double gauge_standard_mm,
                         double coverage = 0.95);

}  // namespace tinworm::metal
