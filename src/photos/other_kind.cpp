#include "photos/other_kind.hpp"

#include <cstddef>

#include <fmt/format.h>

namespace tinworm::photos {
namespace {

struct Start {
  std::size_t offset;
  std::string_view bytes;
  std::string_view kind;
};

// PNG: ISO/IEC 15948, 5.2. GIF: its specification 89a, 17. ISO base media: ISO/IEC 14496-12, 4.3.
// The others from memory.
constexpr Start starts[] = {
    {0, "\x89PNG\r\n\x1a\n", "a PNG file"},
    {0, "GIF8", "a GIF file"},
    {4, "ftyphei", "a HEIC file"},
    {4, "ftypmif1", "a HEIC file"},
    {4, "ftypavif", "an AVIF file"},
    {4, "ftyp", "a film"},
    {8, "WEBP", "a WebP file"},
    {0, std::string_view("II*\0", 4), "a TIFF or raw file"},
    {0, std::string_view("MM\0*", 4), "a TIFF or raw file"},
    {0, "%PDF", "a PDF file"},
};

}  // namespace

std::string other_kind(std::string_view bytes) {
  for (const Start& start : starts) {
    if (bytes.size() < start.offset) continue;
    if (bytes.substr(start.offset).starts_with(start.bytes)) {
      return fmt::format("{}, whatever its name says", start.kind);
    }
  }
  return "no JPEG";
}

}  // namespace tinworm::photos
