// What one survey's gauge is worth, and what each zone's sheet is measured against.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "metal/repeatability.hpp"
#include "metal/thickness.hpp"
#include "rules/rules.hpp"
#include "survey/survey.hpp"
#include "weighing/result.hpp"
#include "weighing/zone_facts.hpp"

namespace tinworm::weighing {

// The echo of a gauge that reads coating as metal, as far as the zone's film readings mend it.
struct Coating {
  double subtract_mm = 0;                    // from every reading in the zone
  double standard_mm = 0;                    // uncertainty of that
  std::optional<double> degrees_of_freedom;  // of it; none: nothing is subtracted
  bool upper_bound = false;  // the film isn't known, or isn't paint: the sheet is thinner than read
};

// Whether a coat may be thicker than that. What is off the gauge's scale may be as thick as it
// likes.
bool is_thicker(const Film& film, double limit_um);

struct ZoneBaseline {
  BaselineFrom from = BaselineFrom::none;
  metal::Baseline metal;  // meaningless where `from` is none
};

struct Gauging {
  metal::Prior prior;
  metal::Repeatability pooled;  // over every set of readings and references of the survey
  double gauge_standard_mm = 0;
  bool gauge_assumed = false;
};

Gauging gauging(const survey::Survey& survey, const rules::Rules& rules);

// Of readings in the zone that say how the coat was under them, or don't: as the survey's gauge.
Coating coating(const survey::Survey& survey, const survey::Zone* entry,
                std::optional<survey::Coating> told, const rules::Rules& rules);

// Whether some set of readings in it is only a bound of what is beneath.
bool has_upper_bound(const survey::Survey& survey, const survey::Zone& entry,
                     const rules::Rules& rules);

// The first that exists: the zone's reference; its pair's, where both have the same sheet; the
// survey's `sheet:`; the plan's.
ZoneBaseline baseline(const ZoneFacts& zone, const survey::Survey& survey, const Gauging& gauging,
                      const rules::Rules& rules);

// A set of readings as one measured mean, the coating taken off.
metal::Measured measured(std::span<const double> readings_mm, const Coating& coating,
                         const Gauging& gauging);

}  // namespace tinworm::weighing
