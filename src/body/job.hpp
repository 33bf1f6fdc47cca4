// What kind of part a zone is to whoever mends it. Said by the plan, so that no reckoning hangs on
// the words of a part's name.
#pragma once

namespace tinworm::body {

enum class Job {
  jacking_point,
  outer_sill,
  sill_membrane,  // between outer and inner sill: reckoned like the inner, welded after it
  inner_sill,
  floor,
  cross_member,  // outriggers and bearers too
  spring_hanger_front,
  spring_hanger_rear,
  chassis_leg,
  main_rail,
  strut_top,  // damper towers too
  inner_wing,
  post_foot,
  bulkhead_corner,  // toe-boards too
  scuttle,
  screen_corner,
  roof,
  inner_arch,
  outer_arch,  // the lip
  rear_wing,
  front_wing,
  door_bottom,
  boot_floor,
  spare_well,
  front_valance,
  rear_valance,
  battery_tray,
  other_part,  // none of these
};

}  // namespace tinworm::body
