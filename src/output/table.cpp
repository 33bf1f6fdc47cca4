#include "output/table.hpp"

#include <algorithm>

#include "output/display_width.hpp"

namespace tinworm::output {
namespace {

constexpr int gap = 2;
constexpr int narrowest_last = 24;

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

  const std::size_t last = columns.size() - 1;
  std::vector<int> widths(columns.size(), 0);
  for (const Row& row : rows) {
    for (std::size_t c = 0; c < columns.size(); ++c) {
      widths[c] = std::max(widths[c], display_width(row[c]));
    }
  }
  int before_last = display_width(indent);
  for (std::size_t c = 0; c < last; ++c) before_last += widths[c] + gap;
  widths[last] = std::min(widths[last], std::max(narrowest_last, width - before_last));

  std::string text;
  for (const Row& row : rows) {
    std::string line = indent;
    for (std::size_t c = 0; c < last; ++c) {
      line += padded(row[c], widths[c], columns[c].align) + std::string(gap, ' ');
    }
    for (const std::string& part : wrapped(row[last], widths[last])) {
      line += padded(part, widths[last], columns[last].align);
      trim_right(line);
      text += line + "\n";
      line = std::string(static_cast<std::size_t>(before_last), ' ');
    }
  }
  return text;
}

}  // namespace tinworm::output
