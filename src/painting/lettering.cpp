#include "painting/lettering.hpp"

#include <array>
#include <stdexcept>

#include <fmt/format.h>
#include <pango/pangofc-fontmap.h>

namespace tinworm::painting {
namespace {

constexpr std::array<const char*, 2> font_files{
    "/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf",
    "/usr/share/fonts/truetype/dejavu/DejaVuSans-Bold.ttf"};

Held<FcConfig> packaged_fonts() {
  Held<FcConfig> config(FcConfigCreate());
  for (const char* file : font_files) {
    if (!FcConfigAppFontAddFile(config.get(), reinterpret_cast<const FcChar8*>(file))) {
      throw std::runtime_error(
          fmt::format("the font {} can't be read; install the package fonts-dejavu-core", file));
    }
  }
  // Else Pango loads the system's configuration behind our back, which takes longer than a map.
  FcConfigSetCurrent(config.get());
  return config;
}

struct Fonts {
  explicit Fonts(FcConfig* config)
      : map(pango_cairo_font_map_new_for_font_type(CAIRO_FONT_TYPE_FT)) {
    pango_fc_font_map_set_config(PANGO_FC_FONT_MAP(map.get()), config);
    context.reset(pango_font_map_create_context(map.get()));
    const Held<cairo_font_options_t> options(cairo_font_options_create());
    cairo_font_options_set_antialias(options.get(), CAIRO_ANTIALIAS_GRAY);
    cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options.get(), CAIRO_HINT_METRICS_OFF);
    pango_cairo_context_set_font_options(context.get(), options.get());
    pango_cairo_context_set_resolution(context.get(), 72);
    pango_context_set_round_glyph_positions(context.get(), FALSE);
    pango_context_set_language(context.get(), pango_language_from_string("en-gb"));
    pango_context_set_base_dir(context.get(), PANGO_DIRECTION_LTR);
  }
  Held<PangoFontMap> map;
  Held<PangoContext> context;
};

Fonts& ours() {
  static const Held<FcConfig> config = packaged_fonts();
  thread_local Fonts fonts(config.get());
  return fonts;
}

Fonts& installed() {
  static const Held<FcConfig> config(FcInitLoadConfigAndFonts());
  thread_local Fonts fonts(config.get());
  return fonts;
}

Held<PangoLayout> layout_with(const Fonts& fonts, std::string_view text, scene::Font font,
                              double size_pt) {
  Held<PangoLayout> layout(pango_layout_new(fonts.context.get()));
  const Held<PangoFontDescription> description(pango_font_description_new());
  pango_font_description_set_family_static(description.get(), "DejaVu Sans");
  pango_font_description_set_weight(
      description.get(), font == scene::Font::bold ? PANGO_WEIGHT_BOLD : PANGO_WEIGHT_NORMAL);
  pango_font_description_set_absolute_size(description.get(), size_pt * PANGO_SCALE);
  pango_layout_set_font_description(layout.get(), description.get());
  pango_layout_set_auto_dir(layout.get(), FALSE);
  pango_layout_set_text(layout.get(), text.data(), static_cast<int>(text.size()));
  return layout;
}

}  // namespace

const char* font_file(scene::Font font) {
  return font_files[font == scene::Font::bold ? 1 : 0];
}

Line lay_out(std::string_view text, scene::Font font, double size_pt) {
  if (!g_utf8_validate(text.data(), static_cast<gssize>(text.size()), nullptr)) {
    throw std::invalid_argument("text to be drawn is not UTF-8");
  }
  Line line;
  line.layout = layout_with(ours(), text, font, size_pt);
  line.unknown_letters = pango_layout_get_unknown_glyphs_count(line.layout.get());
  if (line.unknown_letters > 0) {
    line.layout = layout_with(installed(), text, font, size_pt);
    line.unknown_letters = pango_layout_get_unknown_glyphs_count(line.layout.get());
    line.fallen_back = true;
  }
  if (pango_layout_get_line_count(line.layout.get()) > 1) {
    throw std::invalid_argument("text to be drawn has more than one line");
  }
  line.first = pango_layout_get_line_readonly(line.layout.get(), 0);
  PangoRectangle logical;
  pango_layout_line_get_extents(line.first, nullptr, &logical);
  const auto mm = [](int units) { return units / double{PANGO_SCALE} * scene::mm_per_pt; };
  line.extent = {mm(logical.width), mm(-logical.y), mm(logical.height + logical.y)};
  return line;
}

}  // namespace tinworm::painting
