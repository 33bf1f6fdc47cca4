#include <cairo.h>
#include <fmt/format.h>
#include <ft2build.h>
#include <hb.h>
#include <pango/pango.h>
#include <png.h>
#include <zlib.h>

#include "painting/picture.hpp"
#include FT_FREETYPE_H

namespace tinworm::painting {
namespace {

std::string freetype_version() {
  FT_Library library = nullptr;
  if (FT_Init_FreeType(&library) != 0) return "unknown";
  FT_Int major = 0, minor = 0, patch = 0;
  FT_Library_Version(library, &major, &minor, &patch);
  FT_Done_FreeType(library);
  return fmt::format("{}.{}.{}", major, minor, patch);
}

}  // namespace

std::string libraries() {
  return fmt::format("cairo {} pango {} harfbuzz {} freetype {} libpng {} zlib {}",
                     cairo_version_string(), pango_version_string(), hb_version_string(),
                     freetype_version(), png_get_libpng_ver(nullptr), zlibVersion());
}

}  // namespace tinworm::painting
