#include "scene/palette.hpp"

#include <array>

namespace tinworm::scene {
namespace {

using weighing::Step;

struct Tone {
  double lightness, chroma, hue_deg;
};

// Hues from 88 (straw) to 35 degrees (oxide): yellow to red-brown, never beyond into green.
Tone tone(Step step) {
  switch (step) {
    case Step::sound:
      return {1.00, 0.000, 88};
    case Step::film:
      return {0.89, 0.085, 88};
    case Step::pitted:
      return {0.76, 0.130, 72};
    case Step::thin:
      return {0.61, 0.140, 50};
    case Step::weak:
      return {0.44, 0.115, 38};
    case Step::holed:
      return {0.24, 0.040, 35};
    case Step::not_seen:
      return {0.78, 0.012, 250};
  }
  return {1, 0, 0};
}

Tone tint(Step step) {
  switch (step) {
    case Step::sound:
      return {1.00, 0.000, 88};
    case Step::film:
      return {0.965, 0.032, 88};
    case Step::pitted:
      return {0.925, 0.050, 76};
    case Step::thin:
      return {0.875, 0.060, 56};
    case Step::weak:
      return {0.815, 0.060, 42};
    case Step::holed:
      return {0.745, 0.045, 36};
    case Step::not_seen:
      return {0.78, 0.012, 250};
  }
  return {1, 0, 0};
}

Colour colour(Tone tone) {
  return from_oklch(tone.lightness, tone.chroma, tone.hue_deg);
}

}  // namespace

const Colour ink = from_oklch(0.20, 0.005, 60);
const Colour soft_ink = from_oklch(0.42, 0.005, 60);
const Colour faint_ink = from_oklch(0.62, 0.005, 60);
const Colour not_seen_grey = colour(tone(Step::not_seen));
const Colour not_seen_mark = from_oklch(0.58, 0.014, 250);
const Colour repair_ink = from_oklch(0.30, 0.055, 262);

Colour strong(Step step) {
  return colour(tone(step));
}
Colour pale(Step step) {
  return colour(tint(step));
}

Colour marking(Step step) {
  const Tone full = tone(step);
  const Tone ground = tint(step);
  return from_oklch(ground.lightness - 0.24, full.chroma * 0.8, full.hue_deg);
}

}  // namespace tinworm::scene
