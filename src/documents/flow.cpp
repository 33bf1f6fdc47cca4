#include "documents/flow.hpp"

#include <algorithm>
#include <cstddef>

namespace tinworm::documents {
namespace {

constexpr double cell_gap_mm = 3, row_gap_mm = 1, after_mm = 1.4, note_after_mm = 1;
constexpr double above_section_mm = 6, below_section_mm = 1.6;
constexpr double above_heading_mm = 2.6, below_heading_mm = 0.4;
constexpr double bullet_mm = 4;
constexpr double rise = 0.79;  // of a line's height down to its baseline

constexpr double whole_table_mm = 60;  // lower ones aren't torn

const Style& style_of(const Row& row) {
  return row.strong ? small_heading_style : small_style;
}

double share_of(const Column& column, const std::vector<Column>& columns) {
  double all = 0;
  for (const Column& each : columns) all += each.share;
  return column.share / all;
}

}  // namespace

Flow::Flow(const Paper& paper, const scene::Measure& measure) : paper_(paper), measure_(measure) {}

void Flow::start() {
  pages_.push_back(blank_page(paper_));
  y_mm_ = paper_.text.y_mm;
}

void Flow::new_page() {
  if (!pages_.empty() && y_mm_ > paper_.text.y_mm) start();
}

void Flow::space(double height_mm) {
  if (!pages_.empty() && y_mm_ > paper_.text.y_mm) y_mm_ += height_mm;
}

void Flow::section(std::string_view title, std::string_view place, std::string_view note) {
  waiting_.push_back({std::string(title), std::string(place), std::string(note), true});
}

void Flow::heading(std::string_view text, std::string_view note) {
  waiting_.push_back({std::string(text), "", std::string(note), false});
}

double Flow::height_of(std::string_view text, const Style& style) const {
  return scene::line_height_mm(style) *
         static_cast<double>(scene::wrap(text, style, paper_.text.width_mm, measure_).size());
}

double Flow::headings_mm() const {
  double height = 0;
  for (const Heading& each : waiting_) {
    height += each.section
                  ? height_of(each.text, section_style) + above_section_mm + below_section_mm
                  : height_of(each.text, heading_style) + above_heading_mm + below_heading_mm;
    if (!each.note.empty()) height += height_of(each.note, note_style) + note_after_mm;
  }
  return height;
}

bool Flow::need(double height_mm) {
  const bool full = pages_.empty() || y_mm_ + headings_mm() + height_mm > paper_.text.bottom();
  if (full) start();
  write_headings();
  return full;
}

void Flow::write_headings() {
  for (const Heading& each : std::exchange(waiting_, {})) write(each);
}

void Flow::write(const Heading& heading) {
  space(heading.section ? above_section_mm : above_heading_mm);
  scene::Page& page = pages_.back();
  scene::Layer& layer = page.layer("text");
  const double left = paper_.text.x_mm, width = paper_.text.width_mm;
  if (!heading.place.empty()) page.places.push_back({heading.place, {left, y_mm_}});
  if (heading.section) page.outline.push_back({heading.text, {left, y_mm_}});
  y_mm_ += scene::set_block(layer, heading.text, heading.section ? section_style : heading_style,
                            {left, y_mm_}, width, measure_);
  if (heading.section)
    layer.items.push_back(
        scene::Shape{{scene::segment({left, y_mm_ + 0.4}, {paper_.text.right(), y_mm_ + 0.4})},
                     {},
                     scene::Stroke{scene::ink, 0.8, {}}});
  y_mm_ += heading.section ? below_section_mm : below_heading_mm;
  if (heading.note.empty()) return;
  y_mm_ += note_after_mm +
           scene::set_block(layer, heading.note, note_style, {left, y_mm_}, width, measure_);
}

void Flow::lines(const std::vector<std::string>& lines, const Style& style, double indent_mm) {
  constexpr std::size_t together = 2;  // fewer lines never stand alone at a foot or a head
  const double each = scene::line_height_mm(style);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const std::size_t left = lines.size() - i;
    const std::size_t kept = left <= together + 1 ? left : together;
    if (i == 0 || left == together)
      need(each * static_cast<double>(kept));
    else
      need(each);
    pages_.back().layer("text").items.push_back(
        scene::set(lines[i], style, {paper_.text.x_mm + indent_mm, y_mm_ + rise * each},
                   scene::Align::left, measure_));
    y_mm_ += each;
  }
}

void Flow::paragraph(std::string_view text, const Style& style) {
  lines(scene::wrap(text, style, paper_.text.width_mm, measure_), style, 0);
  if (!text.empty()) y_mm_ += after_mm;
}

void Flow::item(std::string_view text, std::string_view link, const Style& style) {
  const auto broken = scene::wrap(text, style, paper_.text.width_mm - bullet_mm, measure_);
  if (broken.empty()) return;
  const double each = scene::line_height_mm(style);
  need(each * static_cast<double>(std::min<std::size_t>(broken.size(), 3)));
  scene::Page& page = pages_.back();
  page.layer("text").items.push_back(scene::set("–", style, {paper_.text.x_mm, y_mm_ + rise * each},
                                                scene::Align::left, measure_));
  if (!link.empty())
    page.links.push_back(
        {{paper_.text.x_mm, y_mm_, paper_.text.width_mm, each}, std::string(link)});
  lines(broken, style, bullet_mm);
  y_mm_ += after_mm * 0.4;
}

void Flow::block(double height_mm, const Draw& draw) {
  need(height_mm);
  draw(pages_.back(), {paper_.text.x_mm, y_mm_, paper_.text.width_mm, height_mm});
  y_mm_ += height_mm;
}

Flow::Laid Flow::laid(const std::vector<Column>& columns, const std::vector<std::string>& cells,
                      const Style& style) const {
  Laid row;
  std::size_t most = 1;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    const double width = paper_.text.width_mm * share_of(columns[i], columns) - cell_gap_mm;
    row.cells.push_back(scene::wrap(cells[i], style, width, measure_));
    most = std::max(most, row.cells.back().size());
  }
  row.height_mm = scene::line_height_mm(style) * static_cast<double>(most) + row_gap_mm;
  return row;
}

void Flow::write(const std::vector<Column>& columns, const Laid& row, const Style& style,
                 double line_pt) {
  scene::Layer& layer = pages_.back().layer("text");
  const double each = scene::line_height_mm(style);
  double x = paper_.text.x_mm;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    const double width = paper_.text.width_mm * share_of(columns[i], columns);
    const bool right = columns[i].align == scene::Align::right;
    double baseline = y_mm_ + row_gap_mm / 2 + rise * each;
    for (const std::string& line : row.cells[i]) {
      layer.items.push_back(scene::set(line, style, {right ? x + width - cell_gap_mm : x, baseline},
                                       columns[i].align, measure_));
      baseline += each;
    }
    x += width;
  }
  y_mm_ += row.height_mm;
  layer.items.push_back(
      scene::Shape{{scene::segment({paper_.text.x_mm, y_mm_}, {paper_.text.right(), y_mm_})},
                   {},
                   scene::Stroke{scene::faint_ink, line_pt, {}}});
}

std::vector<Flow::Piece> Flow::pieces(const std::vector<Column>& columns,
                                      const std::vector<Row>& rows, double most_mm) const {
  std::vector<Piece> all;
  for (const Row& row : rows) {
    Laid whole = laid(columns, row.cells, style_of(row));
    const double each = scene::line_height_mm(style_of(row));
    const auto most = static_cast<std::size_t>((most_mm - row_gap_mm) / each);
    std::size_t left = 1;
    for (const auto& cell : whole.cells) left = std::max(left, cell.size());
    for (bool first = true; left > 0; first = false) {
      const std::size_t lines = std::min(left, most);
      Piece piece{&row, {{}, each * static_cast<double>(lines) + row_gap_mm}, first};
      for (auto& cell : whole.cells) {
        const auto end = cell.begin() + static_cast<std::ptrdiff_t>(std::min(lines, cell.size()));
        piece.laid.cells.emplace_back(cell.begin(), end);
        cell.erase(cell.begin(), end);
      }
      all.push_back(std::move(piece));
      left -= lines;
    }
  }
  return all;
}

void Flow::mark(const Piece& piece, double first_column_mm) {
  if (!piece.first) return;
  scene::Page& page = pages_.back();
  const Row& row = *piece.row;
  if (!row.place.empty()) page.places.push_back({row.place, {paper_.text.x_mm, y_mm_}});
  if (!row.link.empty())
    page.links.push_back(
        {{paper_.text.x_mm, y_mm_, first_column_mm, piece.laid.height_mm}, row.link});
}

void Flow::table(const std::vector<Column>& columns, const std::vector<Row>& rows) {
  std::vector<std::string> headings;
  for (const Column& column : columns) headings.push_back(column.heading);
  const Laid head = laid(columns, headings, small_heading_style);
  const std::vector<Piece> broken =
      pieces(columns, rows, paper_.text.height_mm - headings_mm() - head.height_mm);
  double all_mm = head.height_mm;
  for (const Piece& each : broken) all_mm += each.laid.height_mm;
  const double first_column = paper_.text.width_mm * share_of(columns[0], columns) - cell_gap_mm;
  bool headed = false;
  for (std::size_t i = 0; i < broken.size(); ++i) {
    const Piece& piece = broken[i];
    double kept_mm = piece.laid.height_mm + (headed ? 0 : head.height_mm);
    const bool first = i == 0, last_but_one = i + 2 == broken.size();
    if ((first || last_but_one) && i + 1 < broken.size()) kept_mm += broken[i + 1].laid.height_mm;
    if (i == 0 && all_mm <= whole_table_mm) kept_mm = all_mm;
    const bool fresh = need(kept_mm);
    if (fresh || !headed) write(columns, head, small_heading_style, 0.7);
    headed = true;
    mark(piece, first_column);
    write(columns, piece.laid, style_of(*piece.row), 0.25);
  }
  if (headed) y_mm_ += after_mm;
}

std::vector<scene::Page> Flow::pages() && {
  return std::move(pages_);
}

}  // namespace tinworm::documents
