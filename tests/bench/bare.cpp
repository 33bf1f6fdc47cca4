// The floor for `map`: the same shapes and texts by plain Cairo and Pango, with nothing read but a
// list, nothing weighed, nothing laid out.
//   bare LIST OUT.pdf
#include <cairo-pdf.h>
#include <pango/pangocairo.h>

#include <fstream>
#include <sstream>
#include <string>

namespace {

constexpr double pt = 72 / 25.4;

void polyline(cairo_t* cairo, std::istream& in) {
  int closed = 0, points = 0;
  in >> closed >> points;
  for (int i = 0; i < points; ++i) {
    double x = 0, y = 0;
    in >> x >> y;
    i == 0 ? cairo_move_to(cairo, x * pt, y * pt) : cairo_line_to(cairo, x * pt, y * pt);
  }
  if (closed) cairo_close_path(cairo);
}

void text(cairo_t* cairo, PangoLayout* layout, std::istream& in) {
  double x = 0, baseline = 0, size = 0;
  int bold = 0;
  in >> x >> baseline >> size >> bold;
  std::string words;
  std::getline(in >> std::ws, words);
  PangoFontDescription* font =
      pango_font_description_from_string(bold ? "DejaVu Sans Bold" : "DejaVu Sans");
  pango_font_description_set_absolute_size(font, size * PANGO_SCALE);
  pango_layout_set_font_description(layout, font);
  pango_layout_set_text(layout, words.c_str(), -1);
  cairo_move_to(cairo, x * pt,
                baseline * pt - pango_layout_get_baseline(layout) / double(PANGO_SCALE));
  pango_cairo_show_layout(cairo, layout);
  pango_font_description_free(font);
}

void draw(cairo_t* cairo, cairo_surface_t* surface, PangoLayout* layout, const std::string& line,
          bool& first) {
  std::istringstream in(line);
  char kind = 0;
  in >> kind;
  double a = 0, b = 0;
  switch (kind) {
    case 'G':
      in >> a >> b;
      if (!first) cairo_show_page(cairo);
      first = false;
      cairo_pdf_surface_set_size(surface, a * pt, b * pt);
      break;
    case 'P':
      polyline(cairo, in);
      break;
    case 'F':
      cairo_fill_preserve(cairo);
      break;
    case 'S':
      in >> a;
      cairo_set_line_width(cairo, a);
      cairo_stroke_preserve(cairo);
      break;
    case 'N':
      cairo_new_path(cairo);
      break;
    case 'T':
      text(cairo, layout, in);
      break;
    case 'C':
      cairo_save(cairo);
      cairo_clip(cairo);
      break;
    case 'R':
      cairo_restore(cairo);
      break;
    default:
      break;
  }
}

}  // namespace

int main(int count, char** words) {
  if (count != 3) return 2;
  std::ifstream list(words[1]);
  cairo_surface_t* surface = cairo_pdf_surface_create(words[2], 842, 595);
  cairo_t* cairo = cairo_create(surface);
  PangoLayout* layout = pango_cairo_create_layout(cairo);
  bool first = true;
  std::string line;
  while (std::getline(list, line)) draw(cairo, surface, layout, line, first);
  g_object_unref(layout);
  cairo_destroy(cairo);
  cairo_surface_finish(surface);
  const bool good = cairo_surface_status(surface) == CAIRO_STATUS_SUCCESS;
  cairo_surface_destroy(surface);
  return good ? 0 : 3;
}
