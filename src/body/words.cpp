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
constexpr std::array jobs{Word{Job::jacking_point, "jacking-point"},
                          Word{Job::outer_sill, "outer-sill"},
                          Word{Job::sill_membrane, "sill-membrane"},
                          Word{Job::inner_sill, "inner-sill"},
                          Word{Job::floor, "floor"},
                          Word{Job::cross_member, "cross-member"},
                          Word{Job::spring_hanger_front, "spring-hanger-front"},
                          Word{Job::spring_hanger_rear, "spring-hanger-rear"},
                          Word{Job::chassis_leg, "chassis-leg"},
                          Word{Job::main_rail, "main-rail"},
                          Word{Job::strut_top, "strut-top"},
                          Word{Job::inner_wing, "inner-wing"},
                          Word{Job::post_foot, "post-foot"},
                          Word{Job::bulkhead_corner, "bulkhead-corner"},
                          Word{Job::scuttle, "scuttle"},
                          Word{Job::screen_corner, "screen-corner"},
                          Word{Job::roof, "roof"},
                          Word{Job::inner_arch, "inner-arch"},
                          Word{Job::outer_arch, "outer-arch"},
                          Word{Job::rear_wing, "rear-wing"},
                          Word{Job::front_wing, "front-wing"},
                          Word{Job::door_bottom, "door-bottom"},
                          Word{Job::boot_floor, "boot-floor"},
                          Word{Job::spare_well, "spare-well"},
                          Word{Job::front_valance, "front-valance"},
                          Word{Job::rear_valance, "rear-valance"},
                          Word{Job::battery_tray, "battery-tray"},
                          Word{Job::other_part, "other-part"}};
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
std::span<const Word<Job>> job_words() {
  return jobs;
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
std::string_view word(Job value) {
  return word_of(value, job_words());
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
