#include "photos/orientation.hpp"

#include <algorithm>
#include <memory>
#include <utility>

#include <libexif/exif-data.h>

namespace tinworm::photos {
namespace {

struct LetGo {
  void operator()(ExifData* it) const { exif_data_unref(it); }
};

struct Step {
  int x, y;
};

// Where the upright picture's pixel (x, y) lies in the stored one.
Step stored_at(const Pixels& stored, Orientation orientation, int x, int y) {
  const int right = stored.width_px - 1, bottom = stored.height_px - 1;
  switch (orientation) {
    case Orientation::top_left:
      break;
    case Orientation::top_right:
      return {right - x, y};
    case Orientation::bottom_right:
      return {right - x, bottom - y};
    case Orientation::bottom_left:
      return {x, bottom - y};
    case Orientation::left_top:
      return {y, x};
    case Orientation::right_top:
      return {y, bottom - x};
    case Orientation::right_bottom:
      return {right - y, bottom - x};
    case Orientation::left_bottom:
      return {right - y, x};
  }
  return {x, y};
}

}  // namespace

Orientation orientation_of(std::string_view exif) {
  const std::unique_ptr<ExifData, LetGo> data(exif_data_new_from_data(
      reinterpret_cast<const unsigned char*>(exif.data()), static_cast<unsigned>(exif.size())));
  if (!data) return Orientation::top_left;
  const ExifEntry* entry =
      exif_content_get_entry(data->ifd[EXIF_IFD_0], EXIF_TAG_ORIENTATION);  // owned by `data`
  if (entry == nullptr || entry->format != EXIF_FORMAT_SHORT || entry->components != 1 ||
      entry->size < 2) {
    return Orientation::top_left;
  }
  const int value = exif_get_short(entry->data, exif_data_get_byte_order(data.get()));
  return value >= 1 && value <= 8 ? Orientation{value} : Orientation::top_left;
}

Pixels upright(Pixels stored, Orientation orientation) {
  if (orientation == Orientation::top_left) return stored;
  Pixels turned = stored;
  if (orientation >= Orientation::left_top) std::swap(turned.width_px, turned.height_px);
  for (int y = 0; y < turned.height_px; ++y) {
    for (int x = 0; x < turned.width_px; ++x) {
      const Step from = stored_at(stored, orientation, x, y);
      const unsigned char* pixel = stored.at(from.x, from.y);
      std::copy(pixel, pixel + stored.channels, turned.at(x, y));
    }
  }
  return turned;
}

}  // namespace tinworm::photos
