// Objects of Cairo, Pango and Fontconfig, let go of when their holder ends.
#pragma once

#include <memory>

#include <cairo.h>
#include <fontconfig/fontconfig.h>
#include <pango/pangocairo.h>

namespace tinworm::painting {

struct LetGo {
  void operator()(cairo_t* it) const { cairo_destroy(it); }
  void operator()(cairo_surface_t* it) const { cairo_surface_destroy(it); }
  void operator()(cairo_font_options_t* it) const { cairo_font_options_destroy(it); }
  void operator()(FcConfig* it) const { FcConfigDestroy(it); }
  void operator()(PangoFontMap* it) const { g_object_unref(it); }
  void operator()(PangoContext* it) const { g_object_unref(it); }
  void operator()(PangoLayout* it) const { g_object_unref(it); }
  void operator()(PangoFontDescription* it) const { pango_font_description_free(it); }
};

template <class It>
using Held = std::unique_ptr<It, LetGo>;

}  // namespace tinworm::painting
