#include "documents/photo_strip.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "documents/typography.hpp"

namespace tinworm::documents {
namespace {

constexpr double most_high_mm = 36, gap_mm = 2.5, caption_mm = 4.2, after_mm = 2.6;
constexpr std::size_t a_row = 3;

struct Placed {
  const survey::Photo* photo = nullptr;
  const photos::Prepared* picture = nullptr;  // null: a gap
  std::string why;
  scene::Area area;
};

const photos::Album::mapped_type* in(const photos::Album& album, const std::string& path) {
  const auto found = album.find(path);
  return found == album.end() ? nullptr : &found->second;
}

std::vector<Placed> placed(const Photos& photos, const photos::Album& album,
                           const scene::Area& area) {
  // Two go side by side on a narrow strip; one alone isn't blown up.
  const double most_wide = std::min((area.width_mm - gap_mm) / 2, most_high_mm * 4 / 3);
  std::vector<Placed> all;
  double x = area.x_mm, y = area.y_mm, row = 0;
  for (const survey::Photo& photo : photos) {
    Placed each{&photo, nullptr, "not at hand", {}};
    double width = most_wide, height = most_wide * 3 / 4;
    if (const auto* print = in(album, photo.path)) {
      if (print->has_value()) {
        each.picture = &print->value();
        const double ratio = static_cast<double>(each.picture->width_px) / each.picture->height_px;
        height = std::min(most_high_mm, most_wide / ratio);
        width = height * ratio;
      } else {
        each.why = print->error();
      }
    }
    if (x > area.x_mm && x + width > area.right() + 1e-6) {
      x = area.x_mm;
      y += row + caption_mm;
      row = 0;
    }
    each.area = {x, y, width, height};
    x += width + gap_mm;
    row = std::max(row, height);
    all.push_back(each);
  }
  return all;
}

// "photos/IMG_14.jpg" as "IMG_14".
std::string stem(const std::string& path) {
  const std::size_t from = path.rfind('/') == std::string::npos ? 0 : path.rfind('/') + 1;
  return path.substr(from, path.rfind('.') - from);
}

void draw_gap(scene::Layer& layer, const Placed& gap, const scene::Measure& measure) {
  layer.items.push_back(
      scene::Shape{{scene::polyline(gap.area)}, {}, scene::Stroke{scene::soft_ink, 0.6, {1.5, 1}}});
  scene::set_block(layer, fmt::format("Photo missing: {}.", gap.why), note_style,
                   {gap.area.x_mm + 1.5, gap.area.y_mm + 1.5}, gap.area.width_mm - 3, measure, 6);
}

}  // namespace

std::vector<Photos> grouped(const Photos& photos, std::size_t most) {
  std::vector<Photos> groups;
  for (std::size_t i = 0; i < photos.size(); ++i) {
    if (i % most == 0) groups.emplace_back();
    groups.back().push_back(photos[i]);
  }
  return groups;
}

double strip_height_mm(const Photos& photos, const photos::Album& album, double width_mm) {
  double bottom = 0;
  for (const Placed& each : placed(photos, album, {0, 0, width_mm, 0}))
    bottom = std::max(bottom, each.area.bottom() + caption_mm);
  return bottom;
}

void draw_strip(scene::Page& page, const scene::Area& area, const Photos& photos,
                const photos::Album& album, const scene::Measure& measure) {
  scene::Layer& layer = page.layer("photos");
  const auto all = placed(photos, album, area);
  for (std::size_t i = 0; i < all.size(); ++i) {
    const Placed& each = all[i];
    if (each.picture)
      layer.items.push_back(scene::Photo{each.area, each.picture->jpeg, each.picture->width_px,
                                         each.picture->height_px});
    else
      draw_gap(layer, each, measure);
    const std::string caption =
        scene::cut(stem(each.photo->path), note_style, each.area.width_mm, measure);
    layer.items.push_back(scene::set(caption, note_style,
                                     {each.area.x_mm, each.area.bottom() + 2.9}, scene::Align::left,
                                     measure));
  }
}

void write_photos(Flow& flow, const Photos& photos, const photos::Album& album) {
  for (const Photos& row : grouped(photos, a_row))
    flow.block(strip_height_mm(row, album, flow.width_mm()) + after_mm,
               [&](scene::Page& page, const scene::Area& area) {
                 draw_strip(page, area, row, album, flow.measure());
               });
}

}  // namespace tinworm::documents
