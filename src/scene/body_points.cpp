#include "scene/body_points.hpp"

#include <algorithm>
#include <array>
#include <set>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "scene/palette.hpp"
#include "scene/setting.hpp"

namespace tinworm::scene {
namespace {

constexpr Style mount_style{6.5, Font::regular, soft_ink, Says::words};
constexpr double digit_share = 0.73, clear_mm = 0.3, beside_mm = 1.2;

std::vector<Paragraph> mount_lines(const body::Plan& plan) {
  std::vector<Paragraph> lines;
  std::set<std::string> told;
  for (const body::Mount& mount : plan.mounts) {
    if (!told.insert(mount.what).second) continue;
    std::set<int> on;  // of both of a pair
    for (const body::Mount& each : plan.mounts)
      if (each.what == mount.what) on.insert(each.on.begin(), each.on.end());
    lines.push_back(
        {fmt::format("{}: {}, on {}", mount.what, word(mount.carries), fmt::join(on, " "))});
  }
  return lines;
}

std::vector<Paragraph> station_lines(const body::Plan& plan) {
  std::vector<Paragraph> lines;
  for (const body::Zone& zone : plan.zones) {
    const auto pair = zone.pair();
    if (zone.stations.empty() || (pair && zone.side() == body::Side::right)) continue;
    std::vector<std::string> names;
    for (const body::Station& station : zone.stations) names.push_back(station.name);
    const std::string number =
        pair ? fmt::format("{} {}", zone.number, *pair) : fmt::format("{}", zone.number);
    lines.push_back({fmt::format("{} {}: {}", number, zone.name, fmt::join(names, ", "))});
  }
  return lines;
}

// Right of the mark, left of it, over it, under it.
std::array<Area, 4> seats(At at, double width, double height) {
  return {Area{at.x_mm + beside_mm, at.y_mm - height / 2, width, height},
          Area{at.x_mm - beside_mm - width, at.y_mm - height / 2, width, height},
          Area{at.x_mm - width / 2, at.y_mm - beside_mm - height, width, height},
          Area{at.x_mm - width / 2, at.y_mm + beside_mm, width, height}};
}

bool name_mount(Drafting& drafting, const body::Mount& mount, At at) {
  const double width =
      drafting.measure(mount.what, mount_style.font, mount_style.size_pt).width_mm + 2 * clear_mm;
  const double height = mount_style.size_pt * digit_share * mm_per_pt + 3 * clear_mm;
  for (const Area& area : seats(at, width, height)) {
    if (!drafting.space.unwritten(area.grown(0.2)) || drafting.space.leader_crosses(area)) continue;
    Layer& layer = drafting.page.layer("numbers");
    layer.items.push_back(Shape{{polyline(area)}, paper, {}});
    Text text = set(mount.what, mount_style, {area.middle().x_mm, area.bottom() - 1.6 * clear_mm},
                    Align::centre, drafting.measure);
    text.area = area.grown(-0.05);
    layer.items.push_back(text);
    drafting.space.write(area);
    return true;
  }
  return false;
}

bool stands_in(const Drafting& drafting, std::size_t view, const body::Mount& mount) {
  return std::ranges::any_of(drafting.zones, [&](const DrawnZone& drawn) {
    return drawn.view == view && std::ranges::find(mount.on, drawn.plan->number) != mount.on.end();
  });
}

}  // namespace

std::vector<Paragraph> points_of(const body::Plan& plan) {
  std::vector<Paragraph> paragraphs;
  const auto add = [&](const char* heading, std::vector<Paragraph> lines) {
    if (lines.empty()) return;
    paragraphs.push_back({heading, "", true});
    for (Paragraph& line : lines) paragraphs.push_back(std::move(line));
  };
  add("Mounts: what they carry, and the parts they stand on", mount_lines(plan));
  add("Stations, where to measure now and years later", station_lines(plan));
  return paragraphs;
}

void name_mounts(Drafting& drafting) {
  std::set<std::string> named;
  for (std::size_t view = 0; view < drafting.sheet.views.size(); ++view) {
    const Projection& projection = drafting.sheet.views[view].projection;
    for (const body::Mount& mount : drafting.result.body->mounts) {
      if (mount.at.y_mm > 0 || named.contains(mount.what)) continue;
      if (projection.view == body::View::right || !stands_in(drafting, view, mount)) continue;
      if (name_mount(drafting, mount, projection.project(mount.at))) named.insert(mount.what);
    }
  }
}

}  // namespace tinworm::scene
