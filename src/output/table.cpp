#include "output/table.hpp"

#include <algorithm>

#include "output/display_width.hpp"

namespace tinworm::output {
namespace {

constexpr int gap = 2;
constexpr int narrowest = 14;  // of a column that is wrapped to fit

void keep_used(std::vector<Column>& columns, std::vector<Row>& rows) {
  for (std::size_t c = columns.size(); c-- > 0;) {
    if (std::any_of(rows.begin(), rows.end(), [c](const Row& row) { return !row[c].empty(); }))
      continue;
    columns.erase(columns.begin() + static_cast<std::ptrdiff_t>(c));
    for (Row& row : rows) row.erase(row.begin() + static_cast<std::ptrdiff_t>(c));
  }
}

std::string padded(const std::string& cell, int width, Align align) {
  const std::string space(static_cast<std::size_t>(std::max(0, width - display_width(cell))), ' ');
  return align == Align::left ? cell + space : space + cell;
}

void trim_right(std::string& line) {
  line.erase(line.find_last_not_of(' ') + 1);
}

// As wide as their widest cells; where that is too much, the widest columns of words give way.
std::vector<int> column_widths(const std::vector<Column>& columns, const std::vector<Row>& rows,
                               int room) {
  std::vector<int> widths(columns.size(), 0);
  for (const Row& row : rows) {
    for (std::size_t c = 0; c < columns.size(); ++c) {
      widths[c] = std::max(widths[c], display_width(row[c]));
    }
  }
  int excess = gap * (static_cast<int>(columns.size()) - 1) - room;
  for (const int width : widths) excess += width;
  for (; excess > 0; --excess) {
    int* widest = nullptr;
    for (std::size_t c = 0; c < columns.size(); ++c) {
      if (columns[c].align == Align::right || widths[c] <= narrowest) continue;
      if (widest == nullptr || widths[c] >= *widest) widest = &widths[c];
    }
    if (widest == nullptr) break;
    --*widest;
  }
  return widths;
}

std::string row_text(const std::vector<Column>& columns, const std::vector<int>& widths,
                     const Row& row, const std::string& indent) {
  std::vector<std::vector<std::string>> cells;
  std::size_t height = 1;
  for (std::size_t c = 0; c < columns.size(); ++c) {
    cells.push_back(wrapped(row[c], widths[c]));
    height = std::max(height, cells[c].size());
  }
  std::string text;
  for (std::size_t l = 0; l < height; ++l) {
    std::string line = indent;
    for (std::size_t c = 0; c < columns.size(); ++c) {
      if (c > 0) line += std::string(gap, ' ');
      line += padded(l < cells[c].size() ? cells[c][l] : "", widths[c], columns[c].align);
    }
    trim_right(line);
    text += line + "\n";
  }
  return text;
}

}  // namespace

std::string table(const std::vector<Column>& all_columns, const std::vector<Row>& all_rows,
                  int width, const std::string& indent) {
  std::vector<Column> columns = all_columns;
  std::vector<Row> rows = all_rows;
  keep_used(columns, rows);
  if (rows.empty() || columns.empty()) return {};
  Row titles;
  for (const Column& column : columns) titles.push_back(column.title);
  rows.insert(rows.begin(), titles);

  const std::vector<int> widths = column_widths(columns, rows, width - display_width(indent));
  std::string text;
  for (const Row& row : rows) text += row_text(columns, widths, row, indent);
  return text;
}

}  // namespace tinworm::output
