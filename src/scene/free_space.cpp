#include "scene/free_space.hpp"

#include <algorithm>
#include <cmath>

namespace tinworm::scene {
namespace {

double turn(At a, At b, At c) {
  return (b.x_mm - a.x_mm) * (c.y_mm - a.y_mm) - (b.y_mm - a.y_mm) * (c.x_mm - a.x_mm);
}

}  // namespace

bool crosses(At a, At b, At c, At d) {
  return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
}

bool crosses(At a, At b, const Area& area) {
  if (area.contains(a) || area.contains(b)) return true;
  const At top_left{area.x_mm, area.y_mm}, bottom_right{area.right(), area.bottom()};
  const At top_right{area.right(), area.y_mm}, bottom_left{area.x_mm, area.bottom()};
  return crosses(a, b, top_left, bottom_right) || crosses(a, b, top_right, bottom_left);
}

At nearest_on(const Area& area, At at) {
  return {std::clamp(at.x_mm, area.x_mm, area.right()),
          std::clamp(at.y_mm, area.y_mm, area.bottom())};
}

FreeSpace::FreeSpace(Area whole)
    : whole_(whole),
      columns_(static_cast<int>(std::ceil(whole.width_mm / pitch_mm_)) + 1),
      rows_(static_cast<int>(std::ceil(whole.height_mm / pitch_mm_)) + 1),
      drawn_(static_cast<std::size_t>(columns_) * rows_, nothing) {}

void FreeSpace::mark(At at, Mark mark) {
  const auto column = std::lround((at.x_mm - whole_.x_mm) / pitch_mm_);
  const auto row = std::lround((at.y_mm - whole_.y_mm) / pitch_mm_);
  if (column < 0 || row < 0 || column >= columns_ || row >= rows_) return;
  Mark& here = drawn_[cell(static_cast<int>(column), static_cast<int>(row))];
  here = std::max(here, mark);
}

void FreeSpace::trace(const std::vector<Polyline>& shape) {
  for (const Polyline& each : shape) {
    const std::size_t count = each.points.size();
    for (std::size_t i = 0; i + (each.closed ? 0 : 1) < count; ++i) {
      const At a = each.points[i], b = each.points[(i + 1) % count];
      const int steps =
          1 + static_cast<int>(std::hypot(b.x_mm - a.x_mm, b.y_mm - a.y_mm) / pitch_mm_);
      for (int k = 0; k <= steps; ++k) {
        const double t = static_cast<double>(k) / steps;
        mark({std::lerp(a.x_mm, b.x_mm, t), std::lerp(a.y_mm, b.y_mm, t)}, line);
      }
    }
  }
}

void FreeSpace::cover(const std::vector<Polyline>& shape) {
  if (shape.empty()) return;
  trace(shape);  // so that thin shapes leave a mark
  const Area extent = bounds(shape);
  for (int row = 0; row < rows_; ++row) {
    const double y = whole_.y_mm + row * pitch_mm_;
    if (y < extent.y_mm || y > extent.bottom()) continue;
    for (int column = 0; column < columns_; ++column) {
      const double x = whole_.x_mm + column * pitch_mm_;
      if (x < extent.x_mm || x > extent.right()) continue;
      if (inside(shape, {x, y})) mark({x, y}, zone);
    }
  }
}

void FreeSpace::write(const Area& area) {
  words_.push_back(area);
}

void FreeSpace::lead(At from, At to) {
  leaders_.emplace_back(from, to);
}

FreeSpace::Mark FreeSpace::drawn(const Area& area) const {
  const auto low = [](double mm) { return static_cast<int>(std::floor(mm / pitch_mm_)); };
  const auto high = [](double mm) { return static_cast<int>(std::ceil(mm / pitch_mm_)); };
  const int top = std::max(0, low(area.y_mm - whole_.y_mm));
  const int left = std::max(0, low(area.x_mm - whole_.x_mm));
  const int bottom = std::min(rows_ - 1, high(area.bottom() - whole_.y_mm));
  const int right = std::min(columns_ - 1, high(area.right() - whole_.x_mm));
  Mark heaviest = nothing;
  for (int row = top; row <= bottom; ++row) {
    for (int column = left; column <= right; ++column) {
      heaviest = std::max(heaviest, drawn_[cell(column, row)]);
      if (heaviest == zone) return zone;
    }
  }
  return heaviest;
}

bool FreeSpace::unwritten(const Area& area) const {
  return within(area) && std::none_of(words_.begin(), words_.end(),
                                      [&](const Area& words) { return words.overlaps(area); });
}

bool FreeSpace::blank(const Area& area) const {
  return within(area) && drawn(area) == nothing && unwritten(area);
}

bool FreeSpace::uncovered(const Area& area) const {
  return within(area) && drawn(area) != zone && unwritten(area);
}

int FreeSpace::crossings(At from, At to, const Area& own_words) const {
  int count = 0;
  for (const Area& words : words_) {
    if (words != own_words && crosses(from, to, words)) count += never;
  }
  for (const auto& [a, b] : leaders_) count += crosses(from, to, a, b) ? 1 : 0;
  return count;
}

bool FreeSpace::leader_crosses(const Area& area) const {
  return std::any_of(leaders_.begin(), leaders_.end(), [&](const auto& leader) {
    return crosses(leader.first, leader.second, area);
  });
}

}  // namespace tinworm::scene
