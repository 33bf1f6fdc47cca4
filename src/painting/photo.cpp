#include "painting/photo.hpp"

#include <cstdint>
#include <memory>
#include <stdexcept>
#include <string>
#include <utility>

#include <fmt/format.h>

#include "output/fingerprint.hpp"
#include "painting/painter.hpp"
#include "photos/jpeg_reader.hpp"

namespace tinworm::painting {
namespace {

photos::Pixels pixels_of(const scene::Photo& photo) {
  auto pixels = photos::read_jpeg(photo.jpeg);
  if (!pixels) throw std::invalid_argument("a photo can't be drawn: " + pixels.error().what);
  if (pixels->width_px != photo.width_px || pixels->height_px != photo.height_px) {
    throw std::invalid_argument(fmt::format("a photo told as {} x {} pixels has {} x {}",
                                            photo.width_px, photo.height_px, pixels->width_px,
                                            pixels->height_px));
  }
  return std::move(*pixels);
}

Held<cairo_surface_t> surface_of(const photos::Pixels& pixels) {
  Held<cairo_surface_t> surface(
      cairo_image_surface_create(CAIRO_FORMAT_RGB24, pixels.width_px, pixels.height_px));
  check(surface.get(), "holding a photo");
  unsigned char* const data = cairo_image_surface_get_data(surface.get());
  const int stride = cairo_image_surface_get_stride(surface.get());
  const bool grey = pixels.channels == 1;
  for (int y = 0; y < pixels.height_px; ++y) {
    auto* to = reinterpret_cast<std::uint32_t*>(data + std::ptrdiff_t{stride} * y);
    const unsigned char* from = pixels.at(0, y);
    for (int x = 0; x < pixels.width_px; ++x, from += pixels.channels) {
      *to++ = std::uint32_t{from[0]} << 16 | from[grey ? 0 : 1] << 8 | from[grey ? 0 : 2];
    }
  }
  cairo_surface_mark_dirty(surface.get());
  return surface;
}

// Cairo keeps the text until it is done with the surface.
void attach(cairo_surface_t* surface, const char* type, const std::string& text) {
  auto kept = std::make_unique<std::string>(text);
  const auto* bytes = reinterpret_cast<const unsigned char*>(kept->data());
  const cairo_status_t status = cairo_surface_set_mime_data(
      surface, type, bytes, kept->size(),
      [](void* string) { delete static_cast<std::string*>(string); }, kept.get());
  check(status, "holding a photo");
  [[maybe_unused]] const std::string* const of_cairo = kept.release();
}

}  // namespace

void draw(cairo_t* cairo, const scene::Photo& photo) {
  if (!(photo.area.width_mm > 0 && photo.area.height_mm > 0)) {
    throw std::invalid_argument("a photo to be drawn has no area");
  }
  const Held<cairo_surface_t> surface = surface_of(pixels_of(photo));
  attach(surface.get(), CAIRO_MIME_TYPE_JPEG, photo.jpeg);
  attach(surface.get(), CAIRO_MIME_TYPE_UNIQUE_ID, output::sha256(photo.jpeg));
  cairo_save(cairo);
  cairo_translate(cairo, coordinate(photo.area.x_mm), coordinate(photo.area.y_mm));
  cairo_scale(cairo, coordinate(photo.area.width_mm) / photo.width_px,
              coordinate(photo.area.height_mm) / photo.height_px);
  cairo_set_source_surface(cairo, surface.get(), 0, 0);
  // Not cairo_paint: within a PDF's tag Cairo 1.16 fails at an opaque image that nothing clips.
  cairo_rectangle(cairo, 0, 0, photo.width_px, photo.height_px);
  cairo_fill(cairo);
  cairo_restore(cairo);
}

}  // namespace tinworm::painting
