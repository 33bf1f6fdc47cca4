#include "photos/jpeg_writer.hpp"

#include <cstdlib>
#include <stdexcept>

#include "photos/libjpeg.hpp"

namespace tinworm::photos {
namespace {

class Writer {
 public:
  Writer() {
    jpeg_.err = trouble_.manager();
    trouble_.guard([this] { jpeg_create_compress(&jpeg_); });
  }
  Writer(const Writer&) = delete;
  Writer& operator=(const Writer&) = delete;
  ~Writer() {
    jpeg_destroy_compress(&jpeg_);
    std::free(bytes_);
  }

  std::string write(const Pixels& pixels, int quality) {
    trouble_.guard([&] {
      jpeg_mem_dest(&jpeg_, &bytes_, &size_);
      start(pixels, quality);
      const JDIMENSION height = jpeg_.image_height;
      while (jpeg_.next_scanline < height) {
        // The library reads rows through a pointer that lets it write.
        auto* row = const_cast<JSAMPLE*>(pixels.at(0, static_cast<int>(jpeg_.next_scanline)));
        jpeg_write_scanlines(&jpeg_, &row, 1);
      }
      jpeg_finish_compress(&jpeg_);
    });
    return {reinterpret_cast<const char*>(bytes_), size_};
  }

 private:
  void start(const Pixels& pixels, int quality) {
    jpeg_.image_width = pixels.width_px;
    jpeg_.image_height = pixels.height_px;
    jpeg_.input_components = pixels.channels;
    jpeg_.in_color_space = pixels.channels == 1 ? JCS_GRAYSCALE : JCS_RGB;
    jpeg_set_defaults(&jpeg_);
    jpeg_set_quality(&jpeg_, quality, TRUE);
    jpeg_.dct_method = JDCT_ISLOW;  // the same bytes on every machine
    jpeg_.optimize_coding = TRUE;
    jpeg_start_compress(&jpeg_, TRUE);
  }

  Trouble trouble_;
  jpeg_compress_struct jpeg_{};
  unsigned char* bytes_ = nullptr;
  unsigned long size_ = 0;
};

}  // namespace

std::string write_jpeg(const Pixels& pixels, int quality) {
  try {
    return Writer().write(pixels, quality);
  } catch (const Failure& failure) {
    throw std::runtime_error(std::string("writing a JPEG: ") + failure.words);
  }
}

}  // namespace tinworm::photos
