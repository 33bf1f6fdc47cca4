// Words of a body plan.
#include "schema/meaning.hpp"

namespace tinworm::schema {

std::string_view meaning(body::Construction value) {
  using enum body::Construction;
  switch (value) {
    case unitary:
      return "the body carries the car";
    case separate_chassis:
      return "a chassis carries the body";
  }
  return "";
}

std::string_view meaning(body::Role value) {
  using enum body::Role;
  switch (value) {
    case main:
      return "carries the car";
    case local:
      return "stiffens or shares a load";
    case skin:
      return "keeps water out";
  }
  return "";
}

std::string_view meaning(body::Joined value) {
  using enum body::Joined;
  switch (value) {
    case welded:
      return "part of the shell";
    case bolted:
      return "comes off with bolts";
  }
  return "";
}

std::string_view meaning(body::Build value) {
  using enum body::Build;
  switch (value) {
    case single:
      return "one sheet";
    case folded:
      return "one sheet with a fold";
    case box:
      return "a closed section, with an inside";
    case layered:
      return "sheets on one another, with an inside";
  }
  return "";
}

std::string_view meaning(body::Carries value) {
  using enum body::Carries;
  switch (value) {
    case brakes:
      return "judged most strictly nearby";
    case steering:
      return "judged most strictly nearby";
    case suspension:
      return "judged most strictly nearby";
    case belts:
      return "judged most strictly nearby";
    case towing:
      return "judged most strictly nearby";
    case seat:
      return "a seat";
    case jack:
      return "the jack";
    case tank:
      return "the fuel tank";
    case engine:
      return "engine or gearbox";
    case body:
      return "the body on its chassis";
    case door:
      return "hinges or lock of a door";
  }
  return "";
}

std::string_view meaning(body::Side value) {
  using enum body::Side;
  switch (value) {
    case left:
      return "as seated facing forward";
    case right:
      return "as seated facing forward";
    case centre:
      return "on the centre line, or right across";
  }
  return "";
}

std::string_view meaning(body::Weight value) {
  using enum body::Weight;
  switch (value) {
    case strong:
      return "the outline";
    case medium:
      return "shut lines";
    case light:
      return "glass, lamps, wheels";
    case ghost:
      return "the skin's outline on structure sheets";
  }
  return "";
}

std::string_view meaning(body::Job value) {
  using enum body::Job;
  switch (value) {
    case jacking_point:
      return "where a jack lifts it";
    case outer_sill:
      return "the outermost layer of a sill";
    case sill_membrane:
      return "between outer and inner sill: reckoned like the inner, welded after it";
    case inner_sill:
      return "the innermost layer of a sill";
    case floor:
      return "of the cabin";
    case cross_member:
      return "outriggers and bearers too";
    case spring_hanger_front:
      return "the front one of a rear spring, or an axle link's";
    case spring_hanger_rear:
      return "the rear one of a rear spring";
    case chassis_leg:
      return "of a unitary body, front or rear";
    case main_rail:
      return "of a separate chassis";
    case strut_top:
      return "damper towers too";
    case inner_wing:
      return "of the engine bay";
    case post_foot:
      return "the post above it and a dogleg too";
    case bulkhead_corner:
      return "bulkheads and toe-boards";
    case scuttle:
      return "below the windscreen";
    case screen_corner:
      return "the frame of a screen or window";
    case roof:
      return "lets water in like scuttle and screens";
    case inner_arch:
      return "of a wheel, from inside";
    case outer_arch:
      return "of a wheel: its lip";
    case rear_wing:
      return "the outer panel";
    case front_wing:
      return "the outer panel";
    case door_bottom:
      return "skin or shell of a door";
    case boot_floor:
      return "load floors too";
    case spare_well:
      return "for the spare wheel";
    case front_valance:
      return "below the front bumper";
    case rear_valance:
      return "below the rear bumper";
    case battery_tray:
      return "box or tray";
    case other_part:
      return "none of these";
  }
  return "";
}

std::string_view meaning(body::View value) {
  using enum body::View;
  switch (value) {
    case left:
      return "X, Z";
    case right:
      return "X, Z";
    case top:
      return "X, Y";
    case underneath:
      return "X, Y";
    case front:
      return "Y, Z";
    case rear:
      return "Y, Z";
    case frame:
      return "X, Y; of a separate chassis";
  }
  return "";
}

std::string_view meaning(body::Layer value) {
  using enum body::Layer;
  switch (value) {
    case skin:
      return "with the skin on";
    case structure:
      return "with the skin off";
  }
  return "";
}

std::string_view meaning(body::Axis value) {
  using enum body::Axis;
  switch (value) {
    case along:
      return "X, front to rear";
    case across:
      return "Y, left to right";
    case up:
      return "Z, from the ground";
  }
  return "";
}

}  // namespace tinworm::schema
