// What coating thickness says about a panel. Films µm.
#pragma once

#include <span>
#include <string_view>

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

}  // namespace tinworm::metal
