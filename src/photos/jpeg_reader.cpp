#include "photos/jpeg_reader.hpp"

#include <algorithm>
#include <cstdint>
#include <new>
#include <optional>
#include <utility>

#include <fmt/format.h>

#include "photos/libjpeg.hpp"
#include "photos/limits.hpp"
#include "photos/orientation.hpp"
#include "photos/other_kind.hpp"
#include "photos/shrinking.hpp"

namespace tinworm::photos {
namespace {

constexpr int exif_marker = JPEG_APP0 + 1;
constexpr std::string_view exif_start("Exif\0\0", 6);
constexpr unsigned longest_segment = 0xFFFF;
constexpr std::string_view copy_again = "copy it from the camera again";

Refusal refusal(const Failure& failure) {
  switch (failure.code) {
    case JERR_OUT_OF_MEMORY:
      throw std::bad_alloc();
    case JERR_NO_BACKING_STORE:
      return {"the photo is a progressive JPEG too large to be held whole", "",
              "save it smaller or as a baseline JPEG"};
    case too_many_scans:
      return {fmt::format("the photo is a JPEG of more than {} scans", most_scans), "",
              "save it as a baseline JPEG"};
    case JWRN_JPEG_EOF:
    case JERR_INPUT_EOF:
      return {"the photo is cut short", "", std::string(copy_again)};
    case JERR_SOF_UNSUPPORTED:
    case JERR_BAD_PRECISION:
    case JERR_COMPONENT_COUNT:
    case JERR_CONVERSION_NOTIMPL:
    case JERR_FRACT_SAMPLE_NOTIMPL:
    case JERR_EMPTY_IMAGE:
    case JERR_IMAGE_TOO_BIG:
      return {fmt::format("the photo is an unusual JPEG: {}", failure.words), "",
              "save it as a baseline JPEG"};
    default:
      return {"the photo is damaged", "", std::string(copy_again)};
  }
}

void count_scans(j_common_ptr jpeg) {
  if (reinterpret_cast<j_decompress_ptr>(jpeg)->input_scan_number > most_scans) {
    Trouble::leave(jpeg, too_many_scans);
  }
}

// A side once the greater is `greatest` and was `from_greatest`.
int scaled(JDIMENSION side, int greatest, int from_greatest) {
  const std::int64_t twice = std::int64_t{2} * side * greatest + from_greatest;
  return std::max(1, static_cast<int>(twice / (2 * from_greatest)));
}

class Reader {
 public:
  Reader() {
    jpeg_.err = trouble_.manager();
    trouble_.guard([this] { jpeg_create_decompress(&jpeg_); });
    jpeg_.mem->max_memory_to_use = most_held_bytes;
    progress_.progress_monitor = count_scans;
    jpeg_.progress = &progress_;
  }
  Reader(const Reader&) = delete;
  Reader& operator=(const Reader&) = delete;
  ~Reader() { jpeg_destroy_decompress(&jpeg_); }

  // `jpeg` outlives the reader. Throws Failure.
  void read_header(std::string_view jpeg) {
    trouble_.guard([&] {
      jpeg_mem_src(&jpeg_, reinterpret_cast<const unsigned char*>(jpeg.data()), jpeg.size());
      jpeg_save_markers(&jpeg_, exif_marker, longest_segment);
      jpeg_read_header(&jpeg_, TRUE);
    });
  }

  std::optional<Refusal> against_header() const {
    if (std::int64_t{jpeg_.image_width} * jpeg_.image_height > most_pixels) {
      return Refusal{
          fmt::format("the photo has {} x {} pixels", jpeg_.image_width, jpeg_.image_height),
          fmt::format("{} million in all", most_pixels / 1'000'000), "save it smaller"};
    }
    switch (jpeg_.jpeg_color_space) {
      case JCS_GRAYSCALE:
      case JCS_RGB:
      case JCS_YCbCr:
        return std::nullopt;
      case JCS_CMYK:
      case JCS_YCCK:
        return Refusal{"the photo is made for a printing press (CMYK)", "grey, RGB",
                       "save it as an RGB JPEG"};
      default:
        return Refusal{"the photo has colours of an unknown kind", "grey, RGB",
                       "save it as an RGB JPEG"};
    }
  }

  std::int64_t coefficient_bytes() {
    if (jpeg_has_multiple_scans(&jpeg_) == FALSE) return 0;
    std::int64_t blocks = 0;
    for (int i = 0; i < jpeg_.num_components; ++i) {
      const jpeg_component_info& each = jpeg_.comp_info[i];
      blocks += std::int64_t{each.width_in_blocks} * each.height_in_blocks;
    }
    return blocks * DCTSIZE2 * std::int64_t{sizeof(JCOEF)};
  }

  Orientation orientation() const {
    for (auto* marker = jpeg_.marker_list; marker != nullptr; marker = marker->next) {
      const std::string_view data(reinterpret_cast<const char*>(marker->data), marker->data_length);
      if (marker->marker == exif_marker && data.starts_with(exif_start)) {
        return orientation_of(data);
      }
    }
    return Orientation::top_left;
  }

  // To the file's end. Throws Failure.
  Pixels read(int greatest_side_px) {
    const int from_greatest = static_cast<int>(std::max(jpeg_.image_width, jpeg_.image_height));
    const int greatest = std::min(greatest_side_px, from_greatest);
    start(greatest);
    Shrinking shrinking(
        static_cast<int>(jpeg_.output_width), static_cast<int>(jpeg_.output_height),
        std::min<int>(jpeg_.output_width, scaled(jpeg_.image_width, greatest, from_greatest)),
        std::min<int>(jpeg_.output_height, scaled(jpeg_.image_height, greatest, from_greatest)),
        jpeg_.output_components);
    std::vector<unsigned char> row(std::size_t{jpeg_.output_width} * jpeg_.output_components);
    unsigned char* const into = row.data();
    while (jpeg_.output_scanline < jpeg_.output_height) {
      trouble_.guard([&] {
        JSAMPROW one[] = {into};
        jpeg_read_scanlines(&jpeg_, one, 1);
      });
      shrinking.add(into);
    }
    trouble_.guard([this] { jpeg_finish_decompress(&jpeg_); });
    return std::move(shrinking).done();
  }

 private:
  // Scaled by the library as far as it goes and no further: eighths, never below `greatest`.
  void start(int greatest) {
    jpeg_.out_color_space = jpeg_.jpeg_color_space == JCS_GRAYSCALE ? JCS_GRAYSCALE : JCS_RGB;
    jpeg_.dct_method = JDCT_ISLOW;  // the same pixels on every machine
    jpeg_.scale_denom = 8;
    trouble_.guard([&] {
      for (jpeg_.scale_num = 1; jpeg_.scale_num < 8; ++jpeg_.scale_num) {
        jpeg_calc_output_dimensions(&jpeg_);
        if (static_cast<int>(std::max(jpeg_.output_width, jpeg_.output_height)) >= greatest) break;
      }
      jpeg_start_decompress(&jpeg_);
    });
  }

  Trouble trouble_;
  jpeg_progress_mgr progress_{};
  jpeg_decompress_struct jpeg_{};
};

}  // namespace

tl::expected<Pixels, Refusal> read_jpeg(std::string_view jpeg, int greatest_side_px) {
  if (jpeg.empty()) {
    return tl::unexpected(Refusal{"the photo's file is empty", "", std::string(copy_again)});
  }
  if (!jpeg.starts_with("\xFF\xD8")) {
    return tl::unexpected(Refusal{fmt::format("the photo is {}", other_kind(jpeg)), "JPEG",
                                  "save it as JPEG, or copy it from the camera again"});
  }
  try {
    Reader reader;
    reader.read_header(jpeg);
    if (auto refused = reader.against_header()) return tl::unexpected(std::move(*refused));
    const Orientation orientation = reader.orientation();
    return upright(reader.read(greatest_side_px), orientation);
  } catch (const Failure& failure) {
    return tl::unexpected(refusal(failure));
  }
}

std::int64_t coefficient_bytes(std::string_view jpeg) {
  try {
    Reader reader;
    reader.read_header(jpeg);
    return reader.coefficient_bytes();
  } catch (const Failure&) {  // as reading it will tell
    return 0;
  }
}

}  // namespace tinworm::photos
