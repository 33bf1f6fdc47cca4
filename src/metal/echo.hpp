// Coating left on under a single-echo ultrasonic gauge: it reads the coating as steel, at about 2.3
// times its real thickness (the ratio of the sound speeds; quoted).
#pragma once

#include <optional>
#include <span>

namespace tinworm::metal {

struct EchoRule {
  double times_film = 2.3;
  // What is taken to be known of how film varies from place to place before any was read.
  double prior_share = 0.20;  // standard deviation, of the median film
  double prior_degrees = 2;
  double paint_limit_um = 500;  // over it the coating isn't paint
};

// What the coating adds to a reading.
struct EchoCorrection {
  double subtract_mm = 0;  // 2.3 x median film
  // 2.3 s √(1 + 1/n): the film of the place itself differs from the median of n readings. s pools
  // their scatter with the prior: s² = (v0 s0² + Σ(x - mean)²) / (v0 + n - 1).
  double standard_mm = 0;
  double degrees_of_freedom = 0;  // v0 + n - 1
};

// From film readings, µm. None without readings or with a median over the limit: metal readings
// through such a coating are only an upper bound.
std::optional<EchoCorrection> echo_correction(std::span<const double> film_um,
                                              const EchoRule& rule = {});

}  // namespace tinworm::metal
