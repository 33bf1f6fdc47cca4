#include "work/job.hpp"

#include <algorithm>
#include <array>

namespace tinworm::work {
namespace {

using weighing::ZoneFacts;

enum Stage {
  legs,
  bulkheads,
  inner_wings,
  carriers,
  floors,
  doublers,
  posts,
  inner_sill,
  on_inner_sill,
  membrane,
  outer_sill,
  skins
};

struct Row {
  rates::Job job;
  Stage stage;  // skins: only where it is skin or outside, else a carrier
};

using rates::Job;

// By body::Job.
constexpr auto rows = std::to_array<Row>({
    {Job::jacking_point, floors},
    {Job::outer_sill, outer_sill},
    {Job::inner_sill, membrane},
    {Job::inner_sill, inner_sill},
    {Job::floor, floors},
    {Job::cross_member, floors},
    {Job::spring_hanger_front, carriers},
    {Job::spring_hanger_rear, carriers},
    {Job::chassis_leg, legs},
    {Job::main_rail, legs},
    {Job::strut_top, carriers},
    {Job::inner_wing, inner_wings},
    {Job::post_foot, posts},
    {Job::bulkhead_corner, bulkheads},
    {Job::scuttle, skins},
    {Job::screen_corner, skins},
    {Job::other_part, skins},  // roof
    {Job::inner_arch, skins},
    {Job::outer_arch, skins},
    {Job::rear_wing, skins},
    {Job::front_wing, skins},
    {Job::door_bottom, skins},
    {Job::boot_floor, floors},
    {Job::spare_well, floors},
    {Job::front_valance, skins},
    {Job::rear_valance, skins},
    {Job::battery_tray, skins},
    {Job::other_part, skins},
});
static_assert(rows.size() == static_cast<std::size_t>(body::Job::other_part) + 1);

const Row& row_of(body::Job part) {
  return rows[static_cast<std::size_t>(part)];
}

bool stands_on_inner_sill(const ZoneFacts& zone, const std::vector<ZoneFacts>& all) {
  const body::Job part = kind_of_part(zone);
  if (part != body::Job::jacking_point && part != body::Job::cross_member) return false;
  return std::ranges::any_of(all, [&](const ZoneFacts& other) {
    return kind_of_part(other) == body::Job::inner_sill && are_joined(zone, other);
  });
}

}  // namespace

body::Job kind_of_part(const ZoneFacts& zone) {
  return zone.plan ? zone.plan->job : body::Job::other_part;
}

rates::Job job_of(body::Job part) {
  return row_of(part).job;
}

bool is_sill(rates::Job job) {
  return job == Job::outer_sill || job == Job::inner_sill;
}

bool lets_water_in(const ZoneFacts& zone) {
  const body::Job part = kind_of_part(zone);
  return part == body::Job::scuttle || part == body::Job::screen_corner || part == body::Job::roof;
}

bool is_folded_skin(const ZoneFacts& zone) {
  return kind_of_part(zone) == body::Job::door_bottom && zone.role == body::Role::skin &&
         zone.plan->build == body::Build::single;
}

bool is_outside(const ZoneFacts& zone) {
  return zone.plan && std::ranges::any_of(zone.plan->drawn, [](const body::Drawing& drawing) {
           return drawing.layer == body::Layer::skin;
         });
}

bool are_joined(const ZoneFacts& a, const ZoneFacts& b) {
  const auto names = [](const ZoneFacts& one, const ZoneFacts& other) {
    return one.plan && other.plan &&
           std::ranges::find(one.plan->joins, other.number) != one.plan->joins.end();
  };
  return names(a, b) || names(b, a);
}

int stage(const ZoneFacts& zone, const std::vector<ZoneFacts>& all) {
  if (zone.plan && zone.plan->doubler) return doublers;
  if (stands_on_inner_sill(zone, all)) return on_inner_sill;
  const Stage usual = row_of(kind_of_part(zone)).stage;
  if (usual != skins) return usual;
  return zone.role == body::Role::skin || is_outside(zone) ? skins : carriers;
}

}  // namespace tinworm::work
