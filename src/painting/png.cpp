#include <algorithm>
#include <cmath>
#include <cstdint>
#include <stdexcept>

#include <png.h>

#include "painting/painter.hpp"
#include "painting/picture.hpp"

namespace tinworm::painting {
namespace {

constexpr int most_px = 20'000;  // Cairo's own limit is 32,767 a side

using Rows = std::vector<unsigned char>;  // RGB, 8 bits each

[[noreturn]] void fail(png_structp, png_const_charp message) {
  throw std::runtime_error(std::string("writing the PNG: ") + message);
}

void ignore(png_structp, png_const_charp) {}

void append(png_structp png, png_bytep data, png_size_t length) {
  static_cast<std::string*>(png_get_io_ptr(png))
      ->append(reinterpret_cast<const char*>(data), length);
}

void flush(png_structp) {}

Rows rgb_of(cairo_surface_t* surface) {
  const int width = cairo_image_surface_get_width(surface);
  const int height = cairo_image_surface_get_height(surface);
  const int stride = cairo_image_surface_get_stride(surface);
  const unsigned char* data = cairo_image_surface_get_data(surface);
  Rows rows(static_cast<std::size_t>(width) * height * 3);
  auto to = rows.begin();
  for (int y = 0; y < height; ++y) {
    const auto* row = reinterpret_cast<const std::uint32_t*>(data + std::ptrdiff_t{stride} * y);
    for (int x = 0; x < width; ++x) {
      *to++ = static_cast<unsigned char>(row[x] >> 16 & 0xFF);
      *to++ = static_cast<unsigned char>(row[x] >> 8 & 0xFF);
      *to++ = static_cast<unsigned char>(row[x] & 0xFF);
    }
  }
  return rows;
}

class Writer {
 public:
  explicit Writer(std::string& to)
      : png_(png_create_write_struct(PNG_LIBPNG_VER_STRING, nullptr, fail, ignore)),
        info_(png_create_info_struct(png_)) {
    png_set_write_fn(png_, &to, append, flush);
  }
  Writer(const Writer&) = delete;
  Writer& operator=(const Writer&) = delete;
  ~Writer() { png_destroy_write_struct(&png_, &info_); }
  png_structp png() { return png_; }
  png_infop info() { return info_; }

 private:
  png_structp png_;
  png_infop info_;
};

// UTF-8 text chunks (iTXt), uncompressed, so that any tool shows them.
void set_text(Writer& writer, const Metadata& metadata) {
  std::vector<std::pair<std::string, std::string>> pairs{{"Title", metadata.title},
                                                         {"Author", metadata.author},
                                                         {"Description", metadata.description},
                                                         {"Creation Time", metadata.date},
                                                         {"Software", metadata.creator},
                                                         {"Record", metadata.record}};
  std::vector<png_text> chunks;
  for (auto& [key, text] : pairs) {
    if (text.empty()) continue;
    png_text chunk{};
    chunk.compression = PNG_ITXT_COMPRESSION_NONE;
    chunk.key = key.data();
    chunk.text = text.data();
    chunk.itxt_length = text.size();
    chunks.push_back(chunk);
  }
  png_set_text(writer.png(), writer.info(), chunks.data(), static_cast<int>(chunks.size()));
}

std::string encoded(Rows& rows, int width, int height, double px_per_mm, const Metadata& metadata) {
  std::string bytes;
  Writer writer(bytes);
  png_set_IHDR(writer.png(), writer.info(), width, height, 8, PNG_COLOR_TYPE_RGB,
               PNG_INTERLACE_NONE, PNG_COMPRESSION_TYPE_DEFAULT, PNG_FILTER_TYPE_DEFAULT);
  // Unfiltered line drawings pack smaller and four times quicker.
  png_set_filter(writer.png(), 0, PNG_FILTER_NONE);
  png_set_compression_level(writer.png(), 3);
  const auto px_per_m = static_cast<png_uint_32>(std::lround(px_per_mm * 1000));
  png_set_pHYs(writer.png(), writer.info(), px_per_m, px_per_m, PNG_RESOLUTION_METER);
  set_text(writer, metadata);
  png_write_info(writer.png(), writer.info());
  for (int y = 0; y < height; ++y) {
    png_write_row(writer.png(), rows.data() + std::ptrdiff_t{width} * 3 * y);
  }
  png_write_end(writer.png(), nullptr);
  return bytes;
}

}  // namespace

std::string to_png(const scene::Page& page, int width_px, const Metadata& metadata,
                   Warnings* warnings) {
  const double px_per_mm = width_px / page.width_mm;
  const int height_px = static_cast<int>(std::lround(px_per_mm * page.height_mm));
  if (width_px < 1 || height_px < 1 || width_px > most_px || height_px > most_px) {
    throw std::invalid_argument("a PNG is 1 to " + std::to_string(most_px) + " pixels a side");
  }
  const Held<cairo_surface_t> surface(
      cairo_image_surface_create(CAIRO_FORMAT_RGB24, width_px, height_px));
  check(surface.get(), "starting the PNG");
  const Held<cairo_t> cairo(cairo_create(surface.get()));
  cairo_set_source_rgb(cairo.get(), 1, 1, 1);
  cairo_paint(cairo.get());
  cairo_scale(cairo.get(), px_per_mm * scene::mm_per_pt, px_per_mm * scene::mm_per_pt);
  paint(cairo.get(), page, warnings);
  check(cairo.get(), "drawing the PNG");
  cairo_surface_flush(surface.get());
  check(surface.get(), "finishing the PNG");
  Rows rows = rgb_of(surface.get());
  return encoded(rows, width_px, height_px, px_per_mm, metadata);
}

}  // namespace tinworm::painting
