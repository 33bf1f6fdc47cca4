#include "scene/paper_table.hpp"

#include <algorithm>
#include <cmath>

#include "scene/writer.hpp"

namespace tinworm::scene {
namespace {

constexpr Style page_heading{12, Font::bold, black, Says::title, 1.3};
constexpr Style head_style{7, Font::bold, black, Says::words, 1.22};
constexpr Style cell_style{7, Font::regular, black, Says::words, 1.22};
constexpr double cell_gap_mm = 3, row_gap_mm = 0.9;

double width_of(const TableColumn& column, const std::vector<TableColumn>& columns, double all_mm) {
  double shares = 0;
  for (const TableColumn& each : columns) shares += each.share;
  return all_mm * column.share / shares;
}

}  // namespace

PaperPages::PaperPages(Paper size, std::string title, std::string caution, const Measure& measure)
    : paper_(size), title_(std::move(title)), caution_(std::move(caution)), measure_(measure) {
  const Area frame = frame_of(size);
  inner_ = {frame.x_mm + 6, frame.y_mm + 5, frame.width_mm - 12, frame.height_mm - 20.5};
}

void PaperPages::start() {
  const PaperSize size = size_of(paper_);
  Page page;
  page.width_mm = size.width_mm;
  page.height_mm = size.height_mm;
  page.frame = frame_of(paper_);
  page.title = title_;
  pages_.push_back(std::move(page));
  Writer foot{pages_.back().layer("column"), inner_, inner_.y_mm, measure_};
  end_ = inner_.bottom() - foot.height(caution_, caution_style) - apart_mm;
  foot.y = end_ + apart_mm;
  foot.block(caution_, caution_style);
  y_ = inner_.y_mm;
}

void PaperPages::need(double height_mm) {
  if (pages_.empty() || y_ + height_mm > end_) start();
}

void PaperPages::heading(std::string_view text) {
  constexpr double with_text_mm = 14;  // no heading stands alone at a foot
  need(line_height_mm(page_heading) + with_text_mm);
  if (y_ > inner_.y_mm) y_ += 2 * apart_mm;
  Writer writer{pages_.back().layer("column"), inner_, y_, measure_};
  writer.block(text, page_heading);
  y_ = writer.y + 0.6;
}

void PaperPages::paragraph(std::string_view text) {
  for (const std::string& line : wrap(text, cell_style, inner_.width_mm, measure_)) {
    need(line_height_mm(cell_style));
    Writer writer{pages_.back().layer("column"), inner_, y_, measure_};
    writer.block(line, cell_style);
    y_ = writer.y;
  }
  y_ += row_gap_mm;
}

PaperPages::Laid PaperPages::laid(const std::vector<TableColumn>& columns,
                                  const std::vector<std::string>& cells, const Style& style) const {
  Laid row;
  std::size_t most = 1;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    const double width = width_of(columns[i], columns, inner_.width_mm) - cell_gap_mm;
    row.cells.push_back(wrap(cells[i], style, width, measure_));
    most = std::max(most, row.cells.back().size());
  }
  row.height_mm = line_height_mm(style) * static_cast<double>(most) + row_gap_mm;
  return row;
}

void PaperPages::write(const std::vector<TableColumn>& columns, const Laid& row,
                       const Style& style) {
  Layer& layer = pages_.back().layer("column");
  double x = inner_.x_mm;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    double baseline = y_ + row_gap_mm / 2 + 0.79 * line_height_mm(style);
    for (const std::string& line : row.cells[i]) {
      layer.items.push_back(set(line, style, {x, baseline}, Align::left, measure_));
      baseline += line_height_mm(style);
    }
    x += width_of(columns[i], columns, inner_.width_mm);
  }
  y_ += row.height_mm;
  layer.items.push_back(Shape{{segment({inner_.x_mm, y_}, {inner_.right(), y_})},
                              {},
                              Stroke{faint_ink, style.font == Font::bold ? 0.6 : 0.25, {}}});
}

void PaperPages::table(const std::vector<TableColumn>& columns, const std::vector<TableRow>& rows) {
  std::vector<std::string> headings;
  for (const TableColumn& column : columns) headings.push_back(column.heading);
  const Laid head = laid(columns, headings, head_style);
  const auto write_head = [&] { write(columns, head, head_style); };
  bool headed = false;
  for (const TableRow& row : rows) {
    const Laid broken = laid(columns, row.cells, cell_style);
    const bool full =
        pages_.empty() || y_ + broken.height_mm + (headed ? 0 : head.height_mm) > end_;
    if (full) start();
    if (full || !headed) write_head();
    headed = true;
    if (!row.link.empty())
      pages_.back().links.push_back(
          {{inner_.x_mm, y_, inner_.width_mm, broken.height_mm}, row.link});
    write(columns, broken, cell_style);
  }
  y_ += row_gap_mm;
}

void PaperPages::write(const ColumnLine& line, At top_left, double width_mm) {
  const double height_mm = line_height_mm(line.style);
  pages_.back().layer("column").items.push_back(
      set(line.text, line.style, {top_left.x_mm, top_left.y_mm + 0.79 * height_mm}, Align::left,
          measure_));
  if (!line.link.empty())
    pages_.back().links.push_back({{top_left.x_mm, top_left.y_mm, width_mm, height_mm}, line.link});
}

void PaperPages::columns(const std::vector<Paragraph>& paragraphs) {
  constexpr double easy_mm = 115, gap_mm = 7, least_mm = 25;
  const auto count = static_cast<std::size_t>(std::max(2.0, std::round(inner_.width_mm / easy_mm)));
  const double pitch = (inner_.width_mm + gap_mm) / static_cast<double>(count);
  const std::vector<ColumnLine> lines = column_lines(paragraphs, pitch - gap_mm, measure_);
  need(least_mm);
  if (y_ > inner_.y_mm) y_ += 1.5 * apart_mm;
  for (std::size_t first = 0; first < lines.size();) {
    if (first > 0) start();
    double end = y_;
    for (const ColumnPlace& place : set_in_columns(lines, first, count, end_ - y_)) {
      const At at{inner_.x_mm + pitch * static_cast<double>(place.column), y_ + place.y_mm};
      write(lines[first], at, pitch - gap_mm);
      end = std::max(end, at.y_mm + line_height_mm(lines[first].style));
      ++first;
    }
    y_ = end;
  }
  y_ += row_gap_mm;
}

}  // namespace tinworm::scene
