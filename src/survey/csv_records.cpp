#include "survey/csv_records.hpp"

#include <csv.h>

#include <algorithm>
#include <cstddef>
#include <new>

#include "yaml/characters.hpp"

namespace tinworm::survey {
namespace {

struct Reading {
  std::vector<Record> records;
  Record current{1, {}, false};
};

void take_cell(void* bytes, std::size_t count, void* reading) {
  const std::string cell = bytes ? std::string(static_cast<const char*>(bytes), count) : "";
  static_cast<Reading*>(reading)->current.cells.push_back(cell);
}

void end_row(int, void* data) {
  Reading& reading = *static_cast<Reading*>(data);
  const auto& cells = reading.current.cells;
  const bool blank =
      std::all_of(cells.begin(), cells.end(), [](const std::string& cell) { return cell.empty(); });
  const int row = reading.current.row;
  if (!blank) reading.records.push_back(std::move(reading.current));
  reading.current = {row + 1, {}, false};
}

class Parser {
 public:
  explicit Parser(unsigned char between) {
    if (csv_init(&parser_, CSV_STRICT | CSV_STRICT_FINI | CSV_REPALL_NL) != 0)
      throw std::bad_alloc();
    csv_set_delim(&parser_, between);
  }
  Parser(const Parser&) = delete;
  Parser& operator=(const Parser&) = delete;
  ~Parser() { csv_free(&parser_); }

  bool read(std::string_view text, Reading& reading) {
    const bool whole = csv_parse(&parser_, text.data(), text.size(), take_cell, end_row,
                                 &reading) == text.size() &&
                       csv_fini(&parser_, take_cell, end_row, &reading) == 0;
    if (csv_error(&parser_) == CSV_ENOMEM) throw std::bad_alloc();
    return whole;
  }

 private:
  csv_parser parser_;
};

// Line breaks as one LF each, so that rows are counted as a spreadsheet does.
std::string with_plain_breaks(std::string_view text) {
  std::string plain;
  plain.reserve(text.size());
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text[i] != '\r')
      plain += text[i];
    else if (i + 1 == text.size() || text[i + 1] != '\n')
      plain += '\n';
  }
  return plain;
}

unsigned char between_cells(std::string_view text) {
  const std::string_view first = text.substr(0, text.find('\n'));
  unsigned char best = ',';
  std::ptrdiff_t most = 0;
  for (const char candidate : {',', ';', '\t'}) {
    const auto count = std::count(first.begin(), first.end(), candidate);
    if (count > most) {
      most = count;
      best = static_cast<unsigned char>(candidate);
    }
  }
  return best;
}

// What spreadsheets save unless told otherwise: a ZIP archive, or the older compound file.
bool is_spreadsheet(std::string_view text) {
  return text.starts_with("PK\x03\x04") || text.starts_with("\xD0\xCF\x11\xE0");
}

}  // namespace

tl::expected<std::vector<Record>, CsvMistake> csv_records(std::string_view text) {
  constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
  if (text.starts_with(byte_order_mark)) text.remove_prefix(byte_order_mark.size());
  const std::string cure = "save the sheet as \"CSV UTF-8\"";
  if (is_spreadsheet(text))
    return tl::unexpected(CsvMistake{0, "this is a spreadsheet's own file, not CSV", cure});
  const std::string plain = with_plain_breaks(text);
  if (const auto broken = yaml::not_text(plain))
    return tl::unexpected(CsvMistake{broken->place.line, broken->what, cure});
  Reading reading;
  const unsigned char between = between_cells(plain);
  if (!Parser(between).read(plain, reading)) {
    if (plain.find("=\"") != std::string::npos)
      return tl::unexpected(CsvMistake{reading.current.row, "a quote stands after =, as in =\"51\"",
                                       "write 51 alone"});
    return tl::unexpected(
        CsvMistake{reading.current.row, "a quote stands where CSV allows none, or is not closed",
                   "a cell that holds a quote is quoted, and the quote is doubled: \"\""});
  }
  for (Record& record : reading.records) record.semicolons = between == ';';
  return std::move(reading.records);
}

}  // namespace tinworm::survey
