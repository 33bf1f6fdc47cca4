#include "work/job.hpp"

#include <algorithm>

namespace tinworm::work {
namespace {

using rates::Job;

struct Row {
  std::string_view words;  // of a zone's name
  Job job;
};

// The first that fits: longer names stand before those they hold.
constexpr Row rows[] = {
    {"jacking point", Job::jacking_point},
    {"outer sill", Job::outer_sill},
    {"inner sill", Job::inner_sill},
    {"membrane", Job::inner_sill},
    {"outrigger", Job::cross_member},
    {"bearer", Job::cross_member},
    {"cross-member", Job::cross_member},
    {"front spring hanger", Job::spring_hanger_front},
    {"axle-link", Job::spring_hanger_front},
    {"spring hanger", Job::spring_hanger_rear},
    {"boot floor", Job::boot_floor},
    {"load floor", Job::boot_floor},
    {"floor", Job::floor},
    {"chassis leg", Job::chassis_leg},
    {"main rail", Job::main_rail},
    {"strut top", Job::strut_top},
    {"damper", Job::strut_top},
    {"inner wing", Job::inner_wing},
    {"spare-wheel", Job::spare_well},
    {"battery", Job::battery_tray},
    {"arch lip", Job::outer_arch},
    {"arch", Job::inner_arch},
    {"wheel box", Job::inner_arch},
    {"-post", Job::post_foot},
    {"dogleg", Job::post_foot},
    {"bulkhead", Job::bulkhead_corner},
    {"toe-board", Job::bulkhead_corner},
    {"scuttle", Job::scuttle},
    {"windscreen frame", Job::screen_corner},
    {"window frame", Job::screen_corner},
    {"tailgate ring", Job::screen_corner},
    {"rear wing", Job::rear_wing},
    {"front wing", Job::front_wing},
    {"door", Job::door_bottom},
    {"front valance", Job::front_valance},
    {"rear valance", Job::rear_valance},
};

enum Stage { carriers, floors, posts, inner_sill, membrane, outer_sill, skins };

}  // namespace

Job job_of(std::string_view zone_name) {
  const auto found = std::ranges::find_if(
      rows, [&](const Row& row) { return zone_name.find(row.words) != zone_name.npos; });
  return found == std::end(rows) ? Job::other_part : found->job;
}

bool is_sill(Job job) {
  return job == Job::outer_sill || job == Job::inner_sill;
}

bool lets_water_in(Job job, std::string_view zone_name) {
  return job == Job::scuttle || job == Job::screen_corner ||
         zone_name.find("roof") != zone_name.npos;
}

bool is_outside(const weighing::ZoneFacts& zone) {
  return zone.plan && std::ranges::any_of(zone.plan->drawn, [](const body::Drawing& drawing) {
           return drawing.layer == body::Layer::skin;
         });
}

int stage(const weighing::ZoneFacts& zone) {
  switch (job_of(zone.name)) {
    case Job::floor:
    case Job::boot_floor:
    case Job::spare_well:
    case Job::cross_member:
    case Job::jacking_point:
      return floors;
    case Job::post_foot:
      return posts;
    case Job::inner_sill:
      return zone.name.find("membrane") == zone.name.npos ? inner_sill : membrane;
    case Job::outer_sill:
      return outer_sill;
    case Job::bulkhead_corner:
    case Job::strut_top:
    case Job::inner_wing:
      return carriers;
    default:
      return zone.role == body::Role::skin || is_outside(zone) ? skins : carriers;
  }
}

}  // namespace tinworm::work
