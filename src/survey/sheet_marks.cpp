#include "survey/sheet_marks.hpp"

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include <fmt/format.h>

#include "quantity/ascii.hpp"
#include "yaml/characters.hpp"

namespace tinworm::survey {
namespace {

using yaml::Problem;

template <std::size_t N>
bool holds(const std::array<std::string_view, N>& all, std::string_view text) {
  return std::find(all.begin(), all.end(), text) != all.end();
}

// By its heading.
bool is_of_figures(std::string_view column) {
  constexpr std::array<std::string_view, 8> figures{"reference", "film", "readings", "metal",
                                                    "pit",       "size", "hole",     "crack"};
  return holds(figures, column);
}

std::optional<Problem> unfit_character(std::string_view cell) {
  for (std::size_t i = 0; i < cell.size();) {
    const yaml::Character character = yaml::character_at(cell, i);
    if (const auto what = yaml::unfit(character.code); !what.empty())
      return Problem{{},
                     fmt::format("{} ({}) stands here", what, yaml::code_name(character.code)),
                     "",
                     "",
                     "delete it, or type the cell anew"};
    i += character.bytes;
  }
  return std::nullopt;
}

// "#REF!", "#NAME?", "#N/A", "Err:502"; "####" where a column is too narrow.
std::optional<Problem> not_worked_out(const std::string& cell) {
  const bool narrow = cell.size() > 1 && cell.find_first_not_of('#') == std::string::npos;
  if (narrow)
    return Problem{
        {}, "the column was too narrow for its cell", cell, "", "widen it and save again"};
  const bool wrong = cell.front() == '#' && cell.size() > 2 && cell[1] >= 'A' && cell[1] <= 'Z' &&
                     (cell.back() == '!' || cell.back() == '?' || cell == "#N/A");
  if (!wrong && !cell.starts_with("Err:")) return std::nullopt;
  return Problem{{}, "the spreadsheet couldn't work this cell out", cell, "", "type what was read"};
}

// What stands between quotes of one kind; none where there are none.
std::optional<std::string_view> inside_quotes(std::string_view cell) {
  for (const auto& [open, close] : {std::pair<std::string_view, std::string_view>{"\"", "\""},
                                    {"'", "'"},
                                    {"“", "”"},
                                    {"„", "“"},
                                    {"‘", "’"}})
    if (cell.size() > open.size() + close.size() && cell.starts_with(open) && cell.ends_with(close))
      return cell.substr(open.size(), cell.size() - open.size() - close.size());
  return std::nullopt;
}

std::optional<Problem> formula(const std::string& cell) {
  if (cell.front() != '=') return std::nullopt;
  const auto text = inside_quotes(std::string_view(cell).substr(1));
  return Problem{{},
                 "a formula stands here, not what it comes to",
                 cell,
                 "",
                 text ? fmt::format("write {}", *text) : "type what it comes to, without the ="};
}

std::optional<Problem> mark_of_text(const std::string& cell, bool free_words) {
  const auto inner = inside_quotes(cell);
  if (inner && !free_words)
    return Problem{{}, "quotes stand round this cell", cell, "", fmt::format("write {}", *inner)};
  const bool before_sign =
      cell.size() > 1 && std::string_view("=+-@").find(cell[1]) != std::string_view::npos;
  if (cell.front() != '\'' || (free_words && !before_sign)) return std::nullopt;
  return Problem{
      {}, "an apostrophe stands first, as spreadsheets mark text", cell, "", "take it out"};
}

std::optional<Problem> mark_for_nothing(const std::string& cell) {
  constexpr std::array<std::string_view, 12> nothing{"-", "--", "–", "—", "/",   "\\",
                                                     "?", "*",  ".", "…", "n/a", "N/A"};
  if (!holds(nothing, cell)) return std::nullopt;
  return Problem{{},
                 "a mark alone says nothing",
                 cell,
                 "",
                 "leave the cell empty where nothing was read, and say why under \"note\""};
}

// What would have to be quoted in a survey is no figure.
std::optional<Problem> more_than_figures(const std::string& cell) {
  constexpr std::string_view never_first = "\"'{}[]#&*!|>%@`?:,";
  const bool marked = never_first.find(cell.front()) != std::string_view::npos ||
                      cell.starts_with("- ") || cell.find(": ") != std::string::npos ||
                      cell.ends_with(':') || cell.find(" #") != std::string::npos ||
                      cell.find_first_of("\n\t") != std::string::npos;
  if (!marked) return std::nullopt;
  return Problem{{},
                 "this cell holds more than figures",
                 cell,
                 ".81 .78 .84, or 180x60",
                 "words go under \"note\""};
}

std::optional<Problem> mark_in(const std::string& cell, std::string_view column) {
  if (cell.empty()) return std::nullopt;
  const bool free_words = column == "note" || column == "hint" || column == "mark";
  if (auto found = unfit_character(cell)) return found;
  if (auto found = not_worked_out(cell)) return found;
  if (auto found = formula(cell)) return found;
  if (auto found = mark_of_text(cell, free_words)) return found;
  if (free_words) return std::nullopt;
  if (auto found = mark_for_nothing(cell)) return found;
  return is_of_figures(column) ? more_than_figures(cell) : std::nullopt;
}

// Where a thing was found, and words on it, say nothing yet.
bool says_something(const Record& record, const std::vector<std::string>& columns) {
  constexpr std::array<std::string_view, 7> not_yet{"zone", "hint",  "station", "kind",
                                                    "size", "photo", "note"};
  for (std::size_t i = 0; i < record.cells.size(); ++i)
    if (!record.cells[i].empty() && i < columns.size() && !holds(not_yet, columns[i])) return true;
  return false;
}

}  // namespace

std::vector<SheetProblem> marks_in_headings(const Record& headings) {
  std::vector<SheetProblem> problems;
  for (const std::string& cell : headings.cells)
    if (auto mark = mark_in(cell, "")) problems.push_back({headings.row, "", std::move(*mark)});
  return problems;
}

std::vector<SheetProblem> take_out_marks(std::vector<Record>& records) {
  std::vector<SheetProblem> problems;
  if (records.empty()) return problems;
  std::vector<std::string> columns;
  for (const std::string& cell : records.front().cells)
    columns.push_back(quantity::lower_case(cell));
  for (std::size_t i = 1; i < records.size(); ++i) {
    Record& record = records[i];
    const std::size_t before = problems.size();
    bool unplaced = false;
    for (std::size_t k = 0; k < record.cells.size(); ++k) {
      const std::string column = k < columns.size() ? columns[k] : "";
      auto mark = mark_in(record.cells[k], column);
      if (!mark) continue;
      problems.push_back({record.row, column, std::move(*mark)});
      record.cells[k].clear();
      unplaced = unplaced || column == "zone" || column == "station";
    }
    if (problems.size() > before && (unplaced || !says_something(record, columns)))
      record.cells.clear();
  }
  std::erase_if(records, [](const Record& record) { return record.cells.empty(); });
  return problems;
}

}  // namespace tinworm::survey
