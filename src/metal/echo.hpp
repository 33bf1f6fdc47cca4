// Coating left on under a single-echo ultrasonic gauge: it reads the coating as steel, at about 2.3
// times its real thickness (the ratio of the sound speeds; quoted).
#pragma once

#include <optional>
#include <span>

namespace tinworm::metal {

struct EchoRule {
  double times_film = 2.3;
  double least_share = 0.10;    // the film's error is at least this share of its median
  double paint_limit_um = 500;  // over it the coating isn't paint
};

// What the coating adds to a reading.
struct EchoCorrection {
  double subtract_mm = 0;  // 2.3 x median film
  double standard_mm = 0;  // 2.3 x the greater of the film's standard deviation and 10 % of median
};

// From a zone's film readings, µm. None without readings or with a median over the limit: metal
// readings through such a coating are only an upper bound.
std::optional<EchoCorrection> echo_correction(std::span<const double> film_um,
                                              const EchoRule& rule = {});

}  // namespace tinworm::metal
