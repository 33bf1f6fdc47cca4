#include "scene/setting.hpp"

#include <algorithm>

namespace tinworm::scene {
namespace {

double width(std::string_view text, const Style& style, const Measure& measure) {
  return measure(text, style.font, style.size_pt).width_mm;
}

// The most bytes from the start of `text` that fit, in whole characters, one at least.
std::size_t fitting(std::string_view text, const Style& style, double width_mm,
                    const Measure& measure) {
  std::size_t fits = 0, next = 0;
  while (next < text.size()) {
    next = whole_characters(text, next + 1);
    if (fits > 0 && width(text.substr(0, next), style, measure) > width_mm) break;
    fits = next;
  }
  return fits;
}

bool is_letter(char c) {
  const auto byte = static_cast<unsigned char>(c);
  return byte >= 0x80 || (byte >= 'A' && byte <= 'Z') || (byte >= 'a' && byte <= 'z');
}

// Where `text` may be broken: after each run of spaces or a hyphen between letters, of dates none.
std::vector<std::string_view> pieces(std::string_view text) {
  std::vector<std::string_view> found;
  std::size_t from = 0;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool last = i + 1 == text.size();
    const bool after_space = text[i] == ' ' && !last && text[i + 1] != ' ';
    const bool after_hyphen =
        text[i] == '-' && i > from + 2 && is_letter(text[i - 1]) && !last && is_letter(text[i + 1]);
    if (!after_space && !after_hyphen && !last) continue;
    found.push_back(text.substr(from, i + 1 - from));
    from = i + 1;
  }
  return found;
}

std::string_view without_end_spaces(std::string_view text) {
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  return text;
}

}  // namespace

double line_height_mm(const Style& style) {
  return style.size_pt * style.leading * mm_per_pt;
}

std::size_t whole_characters(std::string_view text, std::size_t bytes) {
  bytes = std::min(bytes, text.size());
  while (bytes < text.size() && (static_cast<unsigned char>(text[bytes]) & 0xC0) == 0x80) ++bytes;
  return bytes;
}

std::vector<std::string> wrap(std::string_view text, const Style& style, double width_mm,
                              const Measure& measure) {
  std::vector<std::string> lines;
  std::string line;
  const auto finish = [&] {
    if (!line.empty()) lines.emplace_back(without_end_spaces(line));
    line.clear();
  };
  for (std::string_view piece : pieces(text)) {
    const std::string longer = line + std::string(without_end_spaces(piece));
    if (width(longer, style, measure) > width_mm) finish();
    while (width(without_end_spaces(piece), style, measure) > width_mm) {
      const std::size_t fits = fitting(piece, style, width_mm, measure);
      lines.emplace_back(piece.substr(0, fits));
      piece.remove_prefix(fits);
    }
    line += piece;
  }
  finish();
  return lines;
}

std::string cut(std::string_view text, const Style& style, double width_mm,
                const Measure& measure) {
  if (width(text, style, measure) <= width_mm) return std::string(text);
  std::string shortened;
  for (std::size_t end = 0; end < text.size();) {
    end = whole_characters(text, end + 1);
    const std::string longer = std::string(without_end_spaces(text.substr(0, end))) + "\u2026";
    if (width(longer, style, measure) > width_mm) break;
    shortened = longer;
  }
  return shortened.empty() ? "\u2026" : shortened;
}

std::string plain_spaces(std::string_view text) {
  std::string plain(text);
  for (std::size_t at = plain.find(no_break); at != std::string::npos;
       at = plain.find(no_break, at))
    plain.replace(at, no_break.size(), " ");
  return plain;
}

Text set(std::string_view text, const Style& style, At baseline, Align align,
         const Measure& measure) {
  const Extent extent = measure(text, style.font, style.size_pt);
  const double left = align == Align::left     ? baseline.x_mm
                      : align == Align::centre ? baseline.x_mm - extent.width_mm / 2
                                               : baseline.x_mm - extent.width_mm;
  return {plain_spaces(text),
          style.font,
          style.size_pt,
          baseline,
          align,
          style.colour,
          style.says,
          {left, baseline.y_mm - extent.ascent_mm, extent.width_mm, extent.height_mm()}};
}

double set_block(Layer& layer, std::string_view text, const Style& style, At top_left,
                 double width_mm, const Measure& measure, int most) {
  std::vector<std::string> lines = wrap(text, style, width_mm, measure);
  if (static_cast<int>(lines.size()) > most) {
    lines.resize(most);
    lines.back() = cut(lines.back() + " \u2026", style, width_mm, measure);
  }
  const double height = line_height_mm(style);
  double baseline = top_left.y_mm + 0.79 * height;
  for (const std::string& line : lines) {
    layer.items.push_back(set(line, style, {top_left.x_mm, baseline}, Align::left, measure));
    baseline += height;
  }
  return height * static_cast<double>(lines.size());
}

}  // namespace tinworm::scene
