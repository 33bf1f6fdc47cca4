#include "painting/svg_text.hpp"

#include <memory>
#include <set>
#include <stdexcept>

#include <fmt/format.h>
#include <glib.h>
#include <hb-subset.h>

#include "painting/lettering.hpp"
#include "painting/painter.hpp"

namespace tinworm::painting {
namespace {

struct Destroy {
  void operator()(hb_blob_t* it) const { hb_blob_destroy(it); }
  void operator()(hb_face_t* it) const { hb_face_destroy(it); }
  void operator()(hb_subset_input_t* it) const { hb_subset_input_destroy(it); }
};

template <class It>
using Own = std::unique_ptr<It, Destroy>;

std::set<gunichar> letters_in(const scene::Page& page, scene::Font font) {
  std::set<gunichar> letters;
  for (const scene::Text* text : texts(page)) {
    if (text->font != font) continue;
    for (const char* at = text->text.c_str(); *at != '\0'; at = g_utf8_next_char(at))
      letters.insert(g_utf8_get_char(at));
  }
  return letters;
}

std::string base64(const char* bytes, std::size_t length) {
  const std::unique_ptr<char, decltype(&g_free)> coded(
      g_base64_encode(reinterpret_cast<const guchar*>(bytes), length), g_free);
  return coded.get();
}

// The font with these letters alone.
std::string cut_down(scene::Font font, const std::set<gunichar>& letters) {
  const Own<hb_blob_t> file(hb_blob_create_from_file_or_fail(font_file(font)));
  if (!file) throw std::runtime_error(fmt::format("{} can't be read", font_file(font)));
  const Own<hb_face_t> face(hb_face_create(file.get(), 0));
  const Own<hb_subset_input_t> input(hb_subset_input_create_or_fail());
  if (!input) throw std::bad_alloc();
  for (const gunichar letter : letters)
    hb_set_add(hb_subset_input_unicode_set(input.get()), letter);
  hb_subset_input_set_flags(input.get(), HB_SUBSET_FLAGS_NO_HINTING);
  const Own<hb_face_t> small(hb_subset_or_fail(face.get(), input.get()));
  if (!small) throw std::runtime_error(fmt::format("{} can't be cut down", font_file(font)));
  const Own<hb_blob_t> bytes(hb_face_reference_blob(small.get()));
  unsigned length = 0;
  const char* data = hb_blob_get_data(bytes.get(), &length);
  return base64(data, length);
}

std::string font_face(const scene::Page& page, scene::Font font) {
  const auto letters = letters_in(page, font);
  if (letters.empty()) return "";
  return fmt::format(
      "@font-face{{font-family:\"sheet\";font-weight:{};src:url(data:font/ttf;base64,{})}}\n",
      font == scene::Font::bold ? "bold" : "normal", cut_down(font, letters));
}

std::string hex(scene::Colour colour) {
  const auto part = [](double share) { return static_cast<int>(share * 255 + 0.5); };
  return fmt::format("#{:02x}{:02x}{:02x}", part(colour.red), part(colour.green),
                     part(colour.blue));
}

std::string element(const scene::Text& text) {
  std::string attributes =
      fmt::format("x=\"{:.2f}\" y=\"{:.2f}\" font-size=\"{:g}\"", coordinate(text.at.x_mm),
                  coordinate(text.at.y_mm), text.size_pt);
  if (text.font == scene::Font::bold) attributes += " font-weight=\"bold\"";
  if (text.align == scene::Align::centre) attributes += " text-anchor=\"middle\"";
  if (text.align == scene::Align::right) attributes += " text-anchor=\"end\"";
  if (text.colour != scene::black) attributes += fmt::format(" fill=\"{}\"", hex(text.colour));
  return fmt::format("<text {}>{}</text>\n", attributes, escaped(text.text));
}

}  // namespace

std::string escaped(std::string_view text) {
  std::string xml;
  for (const char letter : text) {
    switch (letter) {
      case '&':
        xml += "&amp;";
        break;
      case '<':
        xml += "&lt;";
        break;
      case '>':
        xml += "&gt;";
        break;
      case '"':
        xml += "&quot;";
        break;
      default:
        xml += letter;
    }
  }
  return xml;
}

std::string svg_text(const scene::Page& page) {
  std::string runs;
  for (const scene::Text* text : texts(page))
    if (!text->text.empty()) runs += element(*text);
  if (runs.empty()) return "";
  return fmt::format(
      "<style>\n{}{}</style>\n<g font-family=\"sheet, 'DejaVu Sans', sans-serif\" fill=\"#000\" "
      "xml:space=\"preserve\">\n{}</g>\n",
      font_face(page, scene::Font::regular), font_face(page, scene::Font::bold), runs);
}

}  // namespace tinworm::painting
