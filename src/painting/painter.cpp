#include "painting/painter.hpp"

#include <algorithm>
#include <cmath>
#include <new>
#include <stdexcept>

#include <fmt/format.h>

#include "painting/lettering.hpp"
#include "painting/photo.hpp"
#include "painting/simplified.hpp"

namespace tinworm::painting {
namespace {

// Cairo's fixed-point coordinates wrap silently far off the page, and it takes NaN without a word.
constexpr double most_points = 20'000;

void set_colour(cairo_t* cairo, scene::Colour colour) {
  cairo_set_source_rgb(cairo, colour.red, colour.green, colour.blue);
}

// To a 16th of a point, 0.011 mm off at most: Cairo writes such places with fewer figures, many of
// them alike.
double traced(double mm) {
  constexpr double parts = 16;
  return std::round(coordinate(mm) * parts) / parts;
}

void trace(cairo_t* cairo, const std::vector<scene::Polyline>& lines) {
  cairo_new_path(cairo);
  for (const scene::Polyline& each : lines) {
    const scene::Polyline line = simplified(each);
    bool first = true;
    for (const scene::At at : line.points) {
      const double x = traced(at.x_mm), y = traced(at.y_mm);
      first ? cairo_move_to(cairo, x, y) : cairo_line_to(cairo, x, y);
      first = false;
    }
    if (line.closed) cairo_close_path(cairo);
  }
}

void draw(cairo_t* cairo, const scene::Shape& shape) {
  trace(cairo, shape.lines);
  if (shape.fill) {
    set_colour(cairo, *shape.fill);
    cairo_fill_preserve(cairo);
  }
  if (shape.stroke) {
    std::vector<double> dash;
    for (const double mm : shape.stroke->dash_mm) {
      if (mm > 0) dash.push_back(points(mm));
    }
    // Round caps would close the gaps of a fine dash.
    cairo_set_line_cap(cairo, dash.empty() ? CAIRO_LINE_CAP_ROUND : CAIRO_LINE_CAP_BUTT);
    cairo_set_dash(cairo, dash.data(), static_cast<int>(dash.size()), 0);
    cairo_set_line_width(cairo, shape.stroke->width_pt);
    set_colour(cairo, shape.stroke->colour);
    cairo_stroke_preserve(cairo);
  }
  cairo_new_path(cairo);
}

// Nothing but a fill, of the clip itself or of a rectangle round all of it.
bool fills_whole(const scene::Shape& shape, const std::vector<scene::Polyline>& clip) {
  if (!shape.fill || shape.stroke || clip.empty()) return false;
  const auto same = [](const scene::Polyline& one, const scene::Polyline& other) {
    return one.points == other.points;
  };
  if (std::ranges::equal(shape.lines, clip, same)) return true;
  if (shape.lines.size() != 1) return false;
  const scene::Area area = scene::bounds(shape.lines);
  const std::vector<scene::At> corners = scene::polyline(area).points;
  const auto near = [](scene::At one, scene::At other) {
    constexpr double rounding = 1e-6;
    return std::abs(one.x_mm - other.x_mm) < rounding && std::abs(one.y_mm - other.y_mm) < rounding;
  };
  return std::ranges::equal(shape.lines[0].points, corners, near) && area.contains(bounds(clip));
}

void draw(cairo_t* cairo, const scene::Clipped& clipped) {
  auto shape = clipped.within.begin();
  // Cairo writes a clip's path anew for each thing that is drawn within it.
  for (; shape != clipped.within.end() && fills_whole(*shape, clipped.clip); ++shape)
    draw(cairo, scene::Shape{clipped.clip, shape->fill, {}});
  if (shape == clipped.within.end()) return;
  cairo_save(cairo);
  trace(cairo, clipped.clip);
  cairo_clip(cairo);
  for (; shape != clipped.within.end(); ++shape) draw(cairo, *shape);
  cairo_restore(cairo);
}

void warn(Warnings* warnings, std::string text) {
  if (warnings == nullptr) return;
  if (std::find(warnings->begin(), warnings->end(), text) == warnings->end()) {
    warnings->push_back(std::move(text));
  }
}

void draw(cairo_t* cairo, const scene::Text& text, Warnings* warnings, Words words) {
  if (text.text.empty()) return;
  const Line line = lay_out(text.text, text.font, text.size_pt);
  if (line.unknown_letters > 0) {
    warn(warnings,
         fmt::format("no installed font has every letter of \"{}\": boxes are drawn", text.text));
  } else if (line.fallen_back) {
    warn(warnings, fmt::format("\"{}\" has letters that the packaged fonts lack: an installed font "
                               "stands in, and the file may differ on another machine",
                               text.text));
  }
  const double share = text.align == scene::Align::left     ? 0
                       : text.align == scene::Align::centre ? 0.5
                                                            : 1;
  if (words == Words::left_out) return;
  set_colour(cairo, text.colour);
  cairo_move_to(cairo, coordinate(text.at.x_mm - share * line.extent.width_mm),
                coordinate(text.at.y_mm));
  pango_cairo_show_layout_line(cairo, line.first);
  cairo_new_path(cairo);
}

}  // namespace

double points(double mm) {
  return mm / scene::mm_per_pt;
}

double coordinate(double mm) {
  const double value = points(mm);
  if (!std::isfinite(value) || std::abs(value) > most_points) {
    throw std::invalid_argument("a shape lies too far off the page to be drawn");
  }
  return value;
}

void check(cairo_status_t status, const char* doing) {
  if (status == CAIRO_STATUS_SUCCESS) return;
  if (status == CAIRO_STATUS_NO_MEMORY) throw std::bad_alloc();
  throw std::runtime_error(fmt::format("{}: {}", doing, cairo_status_to_string(status)));
}

void check(cairo_t* cairo, const char* doing) {
  check(cairo_status(cairo), doing);
}

void check(cairo_surface_t* surface, const char* doing) {
  check(cairo_surface_status(surface), doing);
}

cairo_status_t append_to_string(void* string, const unsigned char* data, unsigned int length) {
  try {
    static_cast<std::string*>(string)->append(reinterpret_cast<const char*>(data), length);
    return CAIRO_STATUS_SUCCESS;
  } catch (const std::bad_alloc&) {  // Cairo is C: nothing may be thrown through it
    return CAIRO_STATUS_NO_MEMORY;
  }
}

void paint(cairo_t* cairo, const scene::Page& page, Warnings* warnings, Words words) {
  cairo_set_fill_rule(cairo, CAIRO_FILL_RULE_EVEN_ODD);
  cairo_set_line_join(cairo, CAIRO_LINE_JOIN_ROUND);
  for (const scene::Layer& layer : page.layers) {
    for (const scene::Item& item : layer.items) {
      if (const auto* shape = std::get_if<scene::Shape>(&item)) draw(cairo, *shape);
      if (const auto* clipped = std::get_if<scene::Clipped>(&item)) draw(cairo, *clipped);
      if (const auto* text = std::get_if<scene::Text>(&item)) draw(cairo, *text, warnings, words);
      if (const auto* photo = std::get_if<scene::Photo>(&item)) draw(cairo, *photo);
    }
  }
}

}  // namespace tinworm::painting
