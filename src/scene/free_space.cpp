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
  counted_.clear();
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
    for (const auto& [left, right] : stretches(shape, y)) {
      const double first = whole_.x_mm + std::ceil((left - whole_.x_mm) / pitch_mm_) * pitch_mm_;
      for (double x = first; x <= right; x += pitch_mm_) mark({x, y}, zone);
    }
  }
}

void FreeSpace::write(const Area& area) {
  words_.push_back(area);
}

void FreeSpace::lead(At from, At to) {
  leaders_.emplace_back(from, to);
}

void FreeSpace::count() const {
  const auto next = static_cast<std::size_t>(columns_) + 1;
  counted_.assign(next * (rows_ + 1), {});
  for (int row = 0; row < rows_; ++row) {
    Counted so_far;
    for (int column = 0; column < columns_; ++column) {
      const Mark here = drawn_[cell(column, row)];
      so_far.marks += here != nothing;
      so_far.zones += here == zone;
      const Counted& above = counted_[row * next + column + 1];
      counted_[(row + 1) * next + column + 1] = {above.marks + so_far.marks,
                                                 above.zones + so_far.zones};
    }
  }
}

FreeSpace::Counted FreeSpace::drawn(const Area& area) const {
  if (counted_.empty()) count();
  const auto low = [](double mm) { return static_cast<int>(std::floor(mm / pitch_mm_)); };
  const auto high = [](double mm) { return static_cast<int>(std::ceil(mm / pitch_mm_)); };
  const int top = std::clamp(low(area.y_mm - whole_.y_mm), 0, rows_);
  const int left = std::clamp(low(area.x_mm - whole_.x_mm), 0, columns_);
  const int bottom = std::clamp(high(area.bottom() - whole_.y_mm) + 1, top, rows_);
  const int right = std::clamp(high(area.right() - whole_.x_mm) + 1, left, columns_);
  const auto next = static_cast<std::size_t>(columns_) + 1;
  const auto at = [&](int column, int row) -> const Counted& {
    return counted_[row * next + column];
  };
  const auto sum = [&](int Counted::* which) {
    return at(right, bottom).*which - at(left, bottom).*which - at(right, top).*which +
           at(left, top).*which;
  };
  return {sum(&Counted::marks), sum(&Counted::zones)};
}

bool FreeSpace::unwritten(const Area& area) const {
  return within(area) && std::none_of(words_.begin(), words_.end(),
                                      [&](const Area& words) { return words.overlaps(area); });
}

bool FreeSpace::blank(const Area& area) const {
  return within(area) && drawn(area).marks == 0 && unwritten(area);
}

bool FreeSpace::uncovered(const Area& area) const {
  return within(area) && drawn(area).zones == 0 && unwritten(area);
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

double FreeSpace::over_zones_mm(At from, At to) const {
  const double length = std::hypot(to.x_mm - from.x_mm, to.y_mm - from.y_mm);
  const int steps = 1 + static_cast<int>(length);
  int over = 0;
  for (int i = 0; i <= steps; ++i) {
    const double t = static_cast<double>(i) / steps;
    const auto column = std::lround((std::lerp(from.x_mm, to.x_mm, t) - whole_.x_mm) / pitch_mm_);
    const auto row = std::lround((std::lerp(from.y_mm, to.y_mm, t) - whole_.y_mm) / pitch_mm_);
    if (column < 0 || row < 0 || column >= columns_ || row >= rows_) continue;
    over += drawn_[cell(static_cast<int>(column), static_cast<int>(row))] == zone;
  }
  return length * over / (steps + 1);
}

}  // namespace tinworm::scene
