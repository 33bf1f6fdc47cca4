#include "survey/field_sheet.hpp"

#include <algorithm>
#include <array>
#include <functional>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "body/walk_round.hpp"
#include "quantity/ascii.hpp"
#include "survey/field.hpp"
#include "survey/free_words.hpp"
#include "survey/written.hpp"

namespace tinworm::survey {

namespace {

bool is_of_either(std::string_view heading) {
  return heading == "note" || heading == "photo";
}

struct Column {
  std::string heading;
  std::string key;  // in a survey
  bool of_zone = false;
  bool free_words = false;
  bool of_figures = false;  // a comma between digits may be a decimal comma
};

bool is_of_figures(Writing writing) {
  return writing == Writing::readings || writing == Writing::films || writing == Writing::size ||
         writing == Writing::holes || writing == Writing::length || writing == Writing::sheet ||
         writing == Writing::position;
}

template <class Of>
void add_columns(std::vector<Column>& all, const std::vector<Field<Of>>& fields, bool of_zone) {
  for (const Field<Of>& field : fields)
    if (!field.facts.heading.empty())
      all.push_back({std::string(field.facts.heading), std::string(field.facts.key), of_zone,
                     field.facts.writing == Writing::text, is_of_figures(field.facts.writing)});
}

// What a row is about.
enum class Kind { finding, repair, reference, seen };
constexpr std::array<std::string_view, 4> kind_words{"finding", "repair", "reference", "seen"};

const std::vector<Column>& repair_columns() {
  static const std::vector<Column> all = [] {
    std::vector<Column> columns;
    add_columns(columns, repair_fields(), false);
    return columns;
  }();
  return all;
}

// What a zone and a place in it may say; a photo and a note may be of either. `station` and `zone`
// are not here: they say where the rest belongs.
const std::vector<Column>& columns() {
  static const std::vector<Column> all = [] {
    std::vector<Column> columns = {{"seen", "seen", true}};
    add_columns(columns, zone_fields(), true);
    std::erase_if(columns, [](const Column& column) { return is_of_either(column.heading); });
    add_columns(columns, finding_fields(), false);
    return columns;
  }();
  return all;
}

// A number, word or date as it stands, so that it is read as one; else in quotes.
std::string value_text(const std::string& cell) {
  constexpr std::string_view never_first = "\"'{}[]#&*!|>%@`?:,";
  const bool minus = cell.front() == '-' && cell.size() > 1 && cell[1] != ' ';  // `-3`
  const bool plain = cell.find_first_of("\n\t") == std::string::npos &&
                     cell.find(": ") == std::string::npos && cell.find(" #") == std::string::npos &&
                     !cell.ends_with(':') && never_first.find(cell.front()) == std::string::npos &&
                     (cell.front() != '-' || minus) && !cell.starts_with("---");
  return plain ? cell : written(cell);
}

bool has_heading(const std::vector<Column>& columns, std::string_view heading) {
  return std::ranges::find(columns, heading, &Column::heading) != columns.end();
}

// "0,82" as "0.82": where semicolons part the cells, a comma between digits is a decimal comma.
std::string with_points(std::string text) {
  using quantity::is_digit;
  for (std::size_t i = 0; i + 1 < text.size(); ++i) {
    const bool starts = i == 0 || is_digit(text[i - 1]) || text[i - 1] == ' ';
    if (text[i] == ',' && starts && is_digit(text[i + 1])) text[i] = '.';
  }
  return text;
}

struct ZoneRows {
  std::map<std::string, FormLine> of_zone;  // by key
  FormLines found;
  FormLines repairs;
  FormLines marks;
  std::map<std::string, int> rows;  // of the stations found
};

class SheetReader {
 public:
  SheetReader(const std::vector<Record>& records, const body::Plan& plan)
      : records_(records), plan_(plan) {}

  FieldSheet read() {
    if (records_.empty()) {
      refuse(1, "", {{}, "the sheet is empty", "", headings_text(), ""});
      return std::move(sheet_);
    }
    read_headings(records_.front());
    if (!sheet_.problems.empty()) return std::move(sheet_);
    for (std::size_t i = 1; i < records_.size(); ++i) row(records_[i]);
    for (auto& [zone, rows] :
         zones_)  // rows of the printed sheet that nobody filled in say nothing
      if (!rows.found.empty() || !rows.of_zone.empty() || !rows.repairs.empty() ||
          !rows.marks.empty())
        sheet_.zones.emplace(zone, lines_of(rows));
    return std::move(sheet_);
  }

 private:
  static std::string headings_text() {
    return fmt::format("{}", fmt::join(sheet_headings(), ", "));
  }

  void refuse(int row, std::string column, yaml::Problem problem) {
    sheet_.problems.push_back({row, std::move(column), std::move(problem)});
  }

  void read_headings(const Record& record) {
    for (const std::string& cell : record.cells) {
      const std::string heading = lower_case(cell) == "metal" ? "readings" : lower_case(cell);
      const auto& known = sheet_headings();
      if (!heading.empty() && std::find(known.begin(), known.end(), heading) == known.end())
        refuse(record.row, "",
               {{},
                "no column is called that",
                cell,
                headings_text(),
                yaml::did_you_mean(heading, known)});
      else if (!heading.empty() &&
               std::find(headings_.begin(), headings_.end(), heading) != headings_.end())
        refuse(record.row, heading, {{}, "two columns have the same heading", cell, "", ""});
      headings_.push_back(heading);
    }
    if (std::find(headings_.begin(), headings_.end(), "zone") == headings_.end() &&
        sheet_.problems.empty())
      refuse(record.row, "",
             {{}, "the first row has no heading \"zone\"", "", headings_text(), ""});
  }

  std::string cell(const Record& record, std::string_view heading) const {
    for (std::size_t i = 0; i < headings_.size() && i < record.cells.size(); ++i)
      if (headings_[i] == heading) return record.cells[i];
    return "";
  }

  std::optional<int> zone_of(const Record& record) {
    const std::string text = cell(record, "zone");
    const bool digits =
        text.size() == 2 && text.find_first_not_of("0123456789") == std::string::npos;
    if (!digits) {
      refuse(record.row, "zone",
             {{},
              "a zone is a number of two digits",
              text,
              "10 to 98",
              "write it in each row, also where the row above has the same"});
      return std::nullopt;
    }
    const int number = (text[0] - '0') * 10 + (text[1] - '0');
    if (plan_.zone(number)) return number;
    refuse(record.row, "zone",
           {{},
            fmt::format("the body has no zone {}", text),
            "",
            "",
            fmt::format("`tinworm bodies {}` lists its zones", plan_.name)});
    return std::nullopt;
  }

  void row(const Record& record) {
    for (std::size_t i = 0; i < record.cells.size(); ++i) {
      if (record.cells[i].empty() || (i < headings_.size() && !headings_[i].empty())) continue;
      refuse(record.row, "", {{}, "a cell stands under no heading", record.cells[i], "", ""});
    }
    const auto number = zone_of(record);
    if (!number) return;
    check_hint(record, *plan_.zone(*number));
    ZoneRows& zone = zones_[*number];
    const auto kind = kind_of(record);
    if (kind == Kind::repair) return repair(zone, record);
    if (kind == Kind::reference) return reference(zone, record);
    if (kind) finding(zone, record);
  }

  std::optional<Kind> kind_of(const Record& record) {
    const std::string text = lower_case(cell(record, "kind"));
    if (text.empty()) return cell(record, "repair").empty() ? Kind::finding : Kind::repair;
    for (std::size_t i = 0; i < kind_words.size(); ++i)
      if (text == kind_words[i]) return static_cast<Kind>(i);
    const std::vector<std::string> known(kind_words.begin(), kind_words.end());
    refuse(record.row, "kind",
           {{},
            "unknown word for what a row is about",
            text,
            fmt::format("{}", fmt::join(known, ", ")),
            yaml::did_you_mean(text, known)});
    return std::nullopt;
  }

  // The tool's own words, to read by; what was typed there would be lost.
  void check_hint(const Record& record, const body::Zone& zone) {
    const std::string text = cell(record, "hint");
    if (text.empty() || text == hint_of(zone)) return;
    refuse(record.row, "hint",
           {{}, "nothing is read from the hints", text, "", "write it under \"note\""});
  }

  std::string value_of(const Record& record, const Column& column) const {
    const std::string text = cell(record, column.heading);
    return column.of_figures && record.semicolons ? with_points(text) : text;
  }

  void refuse_others(const Record& record, std::string_view of,
                     const std::function<bool(const Column&)>& belongs) {
    for (const std::vector<Column>* all : {&columns(), &repair_columns()})
      for (const Column& column : *all)
        if (!column.of_zone && !belongs(column) && !cell(record, column.heading).empty())
          refuse(record.row, column.heading,
                 {{},
                  fmt::format("a row of {} has no such cell", of),
                  cell(record, column.heading),
                  "",
                  "give it a row of its own"});
  }

  void take_zone_cells(ZoneRows& zone, const Record& record,
                       const std::vector<Column>& own_columns) {
    for (const Column& column : columns())
      if (const std::string text = value_of(record, column);
          column.of_zone && !text.empty() && !has_heading(own_columns, column.heading))
        take(zone, record.row, column, text, false);
  }

  void repair(ZoneRows& zone, const Record& record) {
    const std::string station = cell(record, "station");
    const std::size_t before = zone.repairs.size();
    const auto add = [&](std::string_view key, const std::string& value, std::string column) {
      const bool first = zone.repairs.size() == before;
      zone.repairs.push_back({fmt::format("      {} {}: {}", first ? "-" : " ", key, value),
                              record.row, std::move(column)});
    };
    for (const Column& column : repair_columns()) {
      const std::string text = value_of(record, column);
      if (text.empty()) continue;
      if (column.heading == "photo" && text.find_first_not_of("0123456789 ") == std::string::npos)
        sheet_.numbered_photos = true;
      add(column.key, column.free_words ? written(text) : value_text(text), column.heading);
    }
    if (zone.repairs.size() > before && !station.empty()) add("spot", written(station), "station");
    take_mark(zone, record);
    take_zone_cells(zone, record, repair_columns());
    refuse_others(record, "a repair",
                  [](const Column& each) { return has_heading(repair_columns(), each.heading); });
  }

  void reference(ZoneRows& zone, const Record& record) {
    const auto is_readings = [](const Column& column) { return column.heading == "readings"; };
    const Column& readings = *std::ranges::find_if(columns(), is_readings);
    if (const std::string text = value_of(record, readings); !text.empty())
      take(zone, record.row, {"readings", "reference", true}, text, false);
    if (!cell(record, "station").empty())
      refuse(
          record.row, "station",
          {{}, "a reference is of the whole zone", cell(record, "station"), "", "leave it empty"});
    take_zone_cells(zone, record, {});
    refuse_others(record, "a reference", [&](const Column& each) {
      return is_readings(each) || is_of_either(each.heading);
    });
  }

  void take_mark(ZoneRows& zone, const Record& record) {
    const std::string how = cell(record, "mark"), station = cell(record, "station");
    if (how.empty()) return;
    if (station.empty())
      refuse(record.row, "mark",
             {{}, "a mark needs the name of its place", how, "", "write it under \"station\""});
    else
      zone.marks.push_back(
          {fmt::format("      {}: {}", written(station), written(how)), record.row, "mark"});
  }

  // A line of the printed sheet that nobody filled in doesn't, nor one with a mark alone.
  bool says_of_place(const Record& record) const {
    return std::ranges::any_of(columns(), [&](const Column& column) {
      return !column.of_zone && !cell(record, column.heading).empty();
    });
  }

  void finding(ZoneRows& zone, const Record& record) {
    take_mark(zone, record);
    refuse_others(record, "a finding",
                  [](const Column& each) { return has_heading(columns(), each.heading); });
    const std::string station = cell(record, "station");
    if (!says_of_place(record)) return take_zone_cells(zone, record, {});
    std::string name = station;
    if (const auto first = zone.rows.find(station); first != zone.rows.end()) {
      refuse(record.row, "station",
             {{},
              "two findings of one zone have the same name",
              station,
              "",
              fmt::format("the first is on row {}: name each spot apart", first->second)});
      name += fmt::format(", row {}", record.row);  // so that the rest of the row is checked too
    }
    if (!station.empty())
      zone.found.push_back({"      - spot: " + written(name), record.row, "station"});
    for (const Column& column : columns()) {
      const std::string text = value_of(record, column);
      if (!text.empty()) take(zone, record.row, column, text, !station.empty());
    }
    if (!station.empty()) zone.rows.emplace(station, record.row);
  }

  void take(ZoneRows& zone, int row, const Column& column, const std::string& text,
            bool has_station) {
    const std::string value = column.free_words ? written(text) : value_text(text);
    if (column.heading == "photo" && text.find_first_not_of("0123456789 ") == std::string::npos)
      sheet_.numbered_photos = true;
    const bool with_either = is_of_either(column.heading);
    if (!column.of_zone && has_station) {
      zone.found.push_back({fmt::format("        {}: {}", column.key, value), row, column.heading});
    } else if (column.of_zone || with_either) {
      const std::string key = column.key == "photo" ? "photos" : column.key;
      const FormLine line{fmt::format("    {}: {}", key, value), row, column.heading};
      const auto [first, is_new] = zone.of_zone.emplace(key, line);
      if (!is_new && first->second.text != line.text)
        refuse(row, column.heading,
               {{},
                "a zone has one value for this",
                text,
                "",
                fmt::format("row {} has another: keep one", first->second.row)});
    } else {
      refuse(row, column.heading,
             {{},
              "what was found needs the name of its place",
              text,
              "",
              "write it under \"station\""});
    }
  }

  static FormLines lines_of(const ZoneRows& rows) {
    FormLines lines;
    for (const auto& [key, line] : rows.of_zone) lines.push_back(line);
    if (!rows.found.empty()) {
      lines.push_back({"    found:", rows.found.front().row, "station"});
      lines.insert(lines.end(), rows.found.begin(), rows.found.end());
    }
    const auto add = [&](std::string_view key, const FormLines& more) {
      if (more.empty()) return;
      lines.push_back({fmt::format("    {}:", key), more.front().row, more.front().column});
      lines.insert(lines.end(), more.begin(), more.end());
    };
    add("repairs", rows.repairs);
    add("mark", rows.marks);
    return lines;
  }

  const std::vector<Record>& records_;
  const body::Plan& plan_;
  std::vector<std::string> headings_;
  std::map<int, ZoneRows> zones_;
  FieldSheet sheet_;
};

}  // namespace

const std::vector<std::string>& sheet_headings() {
  static const std::vector<std::string> all = [] {
    std::vector<std::string> headings = {"zone", "hint", "station", "kind"};
    for (const Column& column : columns()) headings.push_back(column.heading);
    for (const Column& column : repair_columns())
      if (std::ranges::find(headings, column.heading) == headings.end())
        headings.push_back(column.heading);
    headings.push_back("mark");
    return headings;
  }();
  return all;
}

std::string hint_of(const body::Zone& zone) {
  const std::string side =
      zone.side() == body::Side::centre ? "" : fmt::format(", {}", body::word(zone.side()));
  return fmt::format("{}{}{}{}", zone.name, side, zone.starts.empty() ? "" : ": rust starts at ",
                     zone.starts);
}

std::vector<std::vector<std::string>> blank_rows(const body::Plan& plan) {
  const std::vector<std::string>& headings = sheet_headings();
  std::vector<std::vector<std::string>> rows{headings};
  const auto add = [&](const body::Zone& zone, const std::string& station, Kind kind) {
    std::vector<std::string> row(headings.size());
    row[0] = std::to_string(zone.number);
    if (kind == Kind::seen) row[1] = hint_of(zone);
    row[2] = station;
    row[3] = kind_words[static_cast<std::size_t>(kind)];
    rows.push_back(std::move(row));
  };
  for (const body::Leg& leg : body::walk_round(plan))
    for (const int number : leg.zones) {
      const body::Zone& zone = *plan.zone(number);
      add(zone, "", Kind::seen);
      if (zone.role != body::Role::skin) add(zone, "", Kind::reference);
      for (const body::Station& station : zone.stations) add(zone, station.name, Kind::finding);
    }
  return rows;
}

FieldSheet read_field_sheet(const std::vector<Record>& records, const body::Plan& plan) {
  return SheetReader(records, plan).read();
}

std::vector<SheetProblem> of_sheet(const yaml::Problems& problems, const FormLines& lines) {
  std::vector<SheetProblem> told;
  for (const yaml::Problem& problem : problems) {
    const std::size_t line = static_cast<std::size_t>(std::max(problem.place.line, 1)) - 1;
    const FormLine at = line < lines.size() ? lines[line] : FormLine{};
    told.push_back({at.row, at.column, problem});
    told.back().problem.place = {};
  }
  return told;
}

std::string to_text(std::vector<SheetProblem> problems, std::string_view file, int listed) {
  const auto most = static_cast<std::size_t>(listed);
  std::stable_sort(problems.begin(), problems.end(),
                   [](const auto& a, const auto& b) { return a.row < b.row; });
  std::string text;
  for (std::size_t i = 0; i < problems.size() && i < most; ++i) {
    const SheetProblem& one = problems[i];
    const std::string column = one.column.empty() ? "" : fmt::format(", column \"{}\"", one.column);
    const std::string row = one.row > 0 ? fmt::format(": row {}", one.row) : "";
    text += yaml::to_text({one.problem}, fmt::format("{}{}{}", file, row, column), "");
  }
  if (problems.size() > most)
    text += fmt::format("{}: and {} more: --all lists them\n", file, problems.size() - most);
  return text;
}

}  // namespace tinworm::survey
