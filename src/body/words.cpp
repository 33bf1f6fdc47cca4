#include "body/words.hpp"

#include <array>
#include <stdexcept>

namespace tinworm::body {
namespace {

constexpr std::array constructions{Word{Construction::unitary, "unitary"},
                                   Word{Construction::separate_chassis, "separate-chassis"}};
constexpr std::array roles{Word{Role::main, "main"}, Word{Role::local, "local"},
                           Word{Role::skin, "skin"}};
constexpr std::array joints{Word{Joined::welded, "welded"}, Word{Joined::bolted, "bolted"}};
constexpr std::array builds{Word{Build::single, "single"}, Word{Build::folded, "folded"},
                            Word{Build::box, "box"}, Word{Build::layered, "layered"}};
constexpr std::array loads{Word{Carries::brakes, "brakes"},
                           Word{Carries::steering, "steering"},
                           Word{Carries::suspension, "suspension"},
                           Word{Carries::belts, "belts"},
                           Word{Carries::towing, "towing"},
                           Word{Carries::seat, "seat"},
                           Word{Carries::jack, "jack"},
                           Word{Carries::tank, "tank"},
                           Word{Carries::engine, "engine"},
                           Word{Carries::body, "body"},
                           Word{Carries::door, "door"}};
constexpr std::array sides{Word{Side::left, "left"}, Word{Side::right, "right"},
                           Word{Side::centre, "centre"}};
constexpr std::array weights{Word{Weight::strong, "strong"}, Word{Weight::medium, "medium"},
                             Word{Weight::light, "light"}, Word{Weight::ghost, "ghost"}};
constexpr std::array views{Word{View::left, "left"},   Word{View::right, "right"},
                           Word{View::top, "top"},     Word{View::underneath, "underneath"},
                           Word{View::front, "front"}, Word{View::rear, "rear"},
                           Word{View::frame, "frame"}};
constexpr std::array layers{Word{Layer::skin, "skin"}, Word{Layer::structure, "structure"}};
constexpr std::array axes{Word{Axis::along, "along"}, Word{Axis::across, "across"},
                          Word{Axis::up, "up"}};

template <typename Value>
std::string_view word_of(Value value, std::span<const Word<Value>> words) {
  for (const Word<Value>& entry : words)
    if (entry.value == value) return entry.word;
  throw std::logic_error("a value without a word");
}

}  // namespace

std::span<const Word<Construction>> construction_words() {
  return constructions;
}
std::span<const Word<Role>> role_words() {
  return roles;
}
std::span<const Word<Joined>> joined_words() {
  return joints;
}
std::span<const Word<Build>> build_words() {
  return builds;
}
std::span<const Word<Carries>> carries_words() {
  return loads;
}
std::span<const Word<Side>> side_words() {
  return sides;
}
std::span<const Word<Weight>> weight_words() {
  return weights;
}
std::span<const Word<View>> view_words() {
  return views;
}
std::span<const Word<Layer>> layer_words() {
  return layers;
}
std::span<const Word<Axis>> axis_words() {
  return axes;
}

std::string_view word(Construction value) {
  return word_of(value, construction_words());
}
std::string_view word(Role value) {
  return word_of(value, role_words());
}
std::string_view word(Joined value) {
  return word_of(value, joined_words());
}
std::string_view word(Build value) {
  return word_of(value, build_words());
}
std::string_view word(Carries value) {
  return word_of(value, carries_words());
}
std::string_view word(Side value) {
  return word_of(value, side_words());
}
std::string_view word(Weight value) {
  return word_of(value, weight_words());
}
std::string_view word(View value) {
  return word_of(value, view_words());
}
std::string_view word(Layer value) {
  return word_of(value, layer_words());
}
std::string_view word(Axis value) {
  return word_of(value, axis_words());
}

std::optional<View> view_of(std::string_view text) {
  return value_of(text, view_words());
}

}  // namespace tinworm::body
