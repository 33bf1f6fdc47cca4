// What coating thickness says about a panel. Films µm.
#pragma once

#include <span>
#include <string_view>
#include <vector>

namespace tinworm::metal {

enum class FilmWord { factory, repainted, heavy, filler_likely };
std::string_view word(FilmWord film);  // "factory", "repainted", "heavy", "filler-likely"

// Upper limits, inclusive; common practice. Lead-loaded factory seams read thick too.
struct FilmLimits {
  double factory_um = 200;
  double repainted_um = 500;
  double heavy_um = 1000;
};

// By the greatest reading of a zone: filler hides in a small part of a panel.
FilmWord film_word(double greatest_um, const FilmLimits& limits = {});

// The middle reading, the mean of the middle two of an even number; not of nothing.
double median(std::span<const double> readings);

// How far one panel's film stands off from the rest of the same car, in robust standard deviations:
// (x - median) / s over the panels' medians, s = 1.4826 MAD (the factor makes the median absolute
// deviation a standard deviation for normal scatter). Median and MAD bear nearly half of the panels
// repainted where mean and deviation would hide them behind themselves.
// Source: B. Iglewicz and D. C. Hoaglin, How to Detect and Handle Outliers, ASQC 1993 (modified
// z-score; over 3.5 in size: an outlier). From memory; the floor of s is this method's own.
struct FilmOddity {
  double score = 0;  // positive: thicker than the rest
  bool odd = false;  // over the limit in size
};
struct FilmOddityLimits {
  double score = 3.5;
  double least_share = 0.15;  // s at least this share of the car's median: films vary by as much
                              // between sound panels, and equal readings would make s nothing
  int least_panels = 5;       // fewer say nothing of a car
};

// One for each panel, in their order; none at all of fewer panels than `least_panels`. `panels_um`:
// the median film of each panel, over 0.
std::vector<FilmOddity> film_oddities(std::span<const double> panels_um,
                                      const FilmOddityLimits& limits = {});

}  // namespace tinworm::metal
