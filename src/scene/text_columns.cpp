#include "scene/text_columns.hpp"

#include <algorithm>

#include "scene/palette.hpp"

namespace tinworm::scene {
namespace {

constexpr Style head_style{9, Font::bold, black, Says::words, 1.35};
constexpr Style text_style{7, Font::regular, black, Says::words, 1.22};
constexpr double over_heading_mm = 3, over_text_mm = 0.9;

// The end of the run that begins at `first` and may not be parted.
std::size_t end_of_run(const std::vector<ColumnLine>& lines, std::size_t first) {
  std::size_t end = first;
  while (end + 1 < lines.size() && lines[end].with_next) ++end;
  return end + 1;
}

std::vector<ColumnPlace> placed(const std::vector<ColumnLine>& lines, std::size_t first,
                                std::size_t columns, double height_mm) {
  std::vector<ColumnPlace> places;
  std::size_t column = 0;
  double y = 0;
  while (first < lines.size()) {
    const std::size_t end = end_of_run(lines, first);
    double run_mm = 0;
    for (std::size_t i = first; i < end; ++i)
      run_mm += line_height_mm(lines[i].style) + (y > 0 || i > first ? lines[i].before_mm : 0);
    if (y > 0 && y + run_mm > height_mm) {
      if (++column == columns) return places;
      y = 0;
    }
    for (; first < end; ++first) {
      if (y > 0) y += lines[first].before_mm;
      places.push_back({column, y});
      y += line_height_mm(lines[first].style);
    }
  }
  return places;
}

}  // namespace

std::vector<ColumnLine> column_lines(const std::vector<Paragraph>& paragraphs, double width_mm,
                                     const Measure& measure) {
  constexpr std::size_t short_lines = 3;
  std::vector<ColumnLine> lines;
  for (const Paragraph& each : paragraphs) {
    const Style& style = each.heading ? head_style : text_style;
    const std::vector<std::string> texts = wrap(each.text, style, width_mm, measure);
    for (std::size_t i = 0; i < texts.size(); ++i) {
      const bool last = i + 1 == texts.size();
      const bool edge = texts.size() <= short_lines || i == 0 || i + 2 == texts.size();
      const double before_mm = i > 0 ? 0 : each.heading ? over_heading_mm : over_text_mm;
      lines.push_back(
          {texts[i], style, i == 0 ? each.link : "", before_mm, each.heading || (edge && !last)});
    }
  }
  return lines;
}

std::vector<ColumnPlace> set_in_columns(const std::vector<ColumnLine>& lines, std::size_t first,
                                        std::size_t columns, double most_mm) {
  constexpr double step_mm = 1;
  const std::size_t rest = lines.size() - first;
  double all_mm = 0;
  for (std::size_t i = first; i < lines.size(); ++i)
    all_mm += line_height_mm(lines[i].style) + lines[i].before_mm;
  const double least_mm = 0.9 * all_mm / static_cast<double>(columns);
  for (double height = least_mm; height < most_mm; height += step_mm) {
    std::vector<ColumnPlace> places = placed(lines, first, columns, height);
    if (places.size() == rest) return places;
  }
  return placed(lines, first, columns, most_mm);
}

}  // namespace tinworm::scene
