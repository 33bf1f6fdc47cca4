#include "scene/palette.hpp"

#include <array>

namespace tinworm::scene {
namespace {

using weighing::Step;

struct Tone {
  double lightness, chroma, hue_deg;
};

// Of what was seen. Hues from 88 (straw) to 35 degrees (oxide): yellow to red-brown, never beyond
// into green.
Tone tone(Step step) {
  switch (step) {
    case Step::sound:
      return {1.00, 0.000, 88};
    case Step::bloom:
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
      break;
  }
  return {1, 0, 0};
}

Tone tint(Step step) {
  switch (step) {
    case Step::sound:
      return {1.00, 0.000, 88};
    case Step::bloom:
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
      break;
  }
  return {1, 0, 0};
}

Colour colour(Tone tone) {
  return from_oklch(tone.lightness, tone.chroma, tone.hue_deg);
}

}  // namespace

Colour strong(Step step) {
  return step == Step::not_seen ? not_seen_grey : colour(tone(step));
}
Colour pale(Step step) {
  return step == Step::not_seen ? not_seen_grey : colour(tint(step));
}

Colour marking(Step step) {
  if (step == Step::not_seen) return not_seen_mark;
  const Tone full = tone(step);
  const Tone ground = tint(step);
  return from_oklch(ground.lightness - 0.24, full.chroma * 0.8, full.hue_deg);
}

}  // namespace tinworm::scene
