#include "photos/made_jpeg.hpp"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <stdexcept>

#include <jpeglib.h>

namespace tinworm::photos::fixture {
namespace {

// DC, then each other coefficient twice: all but its last bit, and that bit.
std::vector<jpeg_scan_info> scan_of_each_coefficient() {
  std::vector<jpeg_scan_info> scans{{1, {0}, 0, 0, 0, 0}};
  for (int k = 1; k < 64; ++k) scans.push_back({1, {0}, k, k, 0, 1});
  for (int k = 1; k < 64; ++k) scans.push_back({1, {0}, k, k, 1, 0});
  return scans;
}

class Tiff {  // Exif's own form: TIFF 6.0, section 2
 public:
  explicit Tiff(bool big_endian) : big_(big_endian), bytes_(big_endian ? "MM" : "II") {
    number(42, 2);
    number(8, 4);
  }
  void number(unsigned value, int size) {
    for (int i = 0; i < size; ++i) {
      bytes_ += static_cast<char>(value >> 8 * (big_ ? size - 1 - i : i) & 0xFF);
    }
  }
  void entry(unsigned tag, unsigned type, unsigned count) {
    number(tag, 2);
    number(type, 2);
    number(count, 4);
  }
  void text(const std::string& text) { bytes_ += text; }
  const std::string& bytes() const { return bytes_; }

 private:
  bool big_;
  std::string bytes_;
};

}  // namespace

Pixels quarters(int width_px, int height_px, const std::vector<Colour>& colours) {
  const int channels = static_cast<int>(colours.front().size());
  Pixels pixels{width_px, height_px, channels, {}};
  pixels.rows.resize(std::size_t{1} * width_px * height_px * channels);
  for (int y = 0; y < height_px; ++y) {
    for (int x = 0; x < width_px; ++x) {
      const Colour& colour = colours[2 * (2 * y >= height_px) + (2 * x >= width_px)];
      std::copy(colour.begin(), colour.end(), pixels.at(x, y));
    }
  }
  return pixels;
}

std::string made_jpeg(const Pixels& pixels, const Recipe& recipe) {
  jpeg_compress_struct jpeg{};
  jpeg_error_mgr errors;  // ends the program with a word: a test that asks for nonsense
  jpeg.err = jpeg_std_error(&errors);
  jpeg_create_compress(&jpeg);
  unsigned char* bytes = nullptr;
  unsigned long size = 0;
  jpeg_mem_dest(&jpeg, &bytes, &size);
  jpeg.image_width = pixels.width_px;
  jpeg.image_height = pixels.height_px;
  jpeg.input_components = pixels.channels;
  jpeg.in_color_space = pixels.channels == 1   ? JCS_GRAYSCALE
                        : pixels.channels == 3 ? JCS_RGB
                                               : JCS_CMYK;
  jpeg_set_defaults(&jpeg);
  jpeg_set_quality(&jpeg, recipe.quality, TRUE);
  jpeg.restart_in_rows = recipe.restart_rows;
  const std::vector<jpeg_scan_info> scans = scan_of_each_coefficient();
  if (recipe.scans == Scans::progressive) jpeg_simple_progression(&jpeg);
  if (recipe.scans == Scans::of_each_coefficient) {
    jpeg.scan_info = scans.data();
    jpeg.num_scans = static_cast<int>(scans.size());
  }
  jpeg_start_compress(&jpeg, TRUE);
  for (const auto& [marker, data] : recipe.segments) {
    jpeg_write_marker(&jpeg, marker, reinterpret_cast<const JOCTET*>(data.data()),
                      static_cast<unsigned>(data.size()));
  }
  while (jpeg.next_scanline < jpeg.image_height) {
    auto* row = const_cast<JSAMPLE*>(pixels.at(0, static_cast<int>(jpeg.next_scanline)));
    jpeg_write_scanlines(&jpeg, &row, 1);
  }
  jpeg_finish_compress(&jpeg);
  std::string made(reinterpret_cast<const char*>(bytes), size);
  jpeg_destroy_compress(&jpeg);
  std::free(bytes);
  return made;
}

std::pair<int, std::string> exif(int orientation, bool big_endian) {
  constexpr unsigned text = 2, two_bytes = 3, four_bytes = 4, fraction = 5;
  const std::string camera("Wherryflex Nine\0", 16);
  constexpr unsigned after_first = 8 + 2 + 3 * 12 + 4, after_camera = after_first + 16;
  Tiff tiff(big_endian);
  tiff.number(3, 2);  // entries of the first directory
  tiff.entry(0x0110, text, 16);
  tiff.number(after_first, 4);
  tiff.entry(0x0112, two_bytes, 1);
  tiff.number(orientation, 2);
  tiff.number(0, 2);
  tiff.entry(0x8825, four_bytes, 1);  // where the place on earth stands
  tiff.number(after_camera, 4);
  tiff.number(0, 4);  // no thumbnail
  tiff.text(camera);
  tiff.number(2, 2);
  tiff.entry(0x0001, text, 2);
  tiff.text(std::string("N\0\0\0", 4));
  tiff.entry(0x0002, fraction, 3);
  tiff.number(after_camera + 2 + 2 * 12 + 4, 4);
  tiff.number(0, 4);
  for (const unsigned part : {52u, 37u, 11u}) {
    tiff.number(part, 4);
    tiff.number(1, 4);
  }
  return {JPEG_APP0 + 1, std::string("Exif\0\0", 6) + tiff.bytes()};
}

std::string with_size(std::string jpeg, int width_px, int height_px) {
  std::size_t at = std::min(jpeg.find("\xFF\xC0"), jpeg.find("\xFF\xC2"));
  if (at == std::string::npos) throw std::invalid_argument("no frame to change");
  at += 5;  // marker, length, precision
  for (const int side : {height_px, width_px}) {
    jpeg[at++] = static_cast<char>(side >> 8);
    jpeg[at++] = static_cast<char>(side & 0xFF);
  }
  return jpeg;
}

}  // namespace tinworm::photos::fixture
