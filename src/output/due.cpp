#include "output/due.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>
#include <nlohmann/json.hpp>

#include "history/words.hpp"
#include "output/csv.hpp"
#include "output/display_width.hpp"
#include "output/table.hpp"
#include "output/zone_text.hpp"
#include "weighing/words.hpp"

namespace tinworm::output {
namespace {

using history::Due;
using Json = nlohmann::ordered_json;

std::string when_text(const Due& due, const quantity::PartialDate& today) {
  if (!due.next.date) return "after the repair";
  return due.next.date->text() + (is_overdue(due, today) ? ", overdue" : "");
}

std::string why_text(const Due& due) {
  const std::string why = due.next.date ? due.next.why : "";  // "after the repair" says it
  if (due.note.empty()) return why;
  return why.empty() ? due.note : fmt::format("{}; {}", why, due.note);
}

std::string title(const survey::Car& car) {
  survey::Car named;
  named.name = car.name;
  named.built = car.built;
  return car_text(named);
}

std::string verdict_text(const Due& due) {
  std::string text(word(due.verdict));
  if (due.could_be != due.verdict) text += fmt::format(", could be {}", word(due.could_be));
  return text;
}

std::string caution() {
  return fmt::format("{} {}", history::planning_caution, weighing::standing_caution);
}

std::string lapses(const DueList& list) {
  if (list.unread.empty()) return "";
  return fmt::format(
      "The list lacks {} that couldn't be read, so a car may be due sooner than it says: {}.\n\n",
      list.unread.size() == 1 ? "one survey" : fmt::format("{} surveys", list.unread.size()),
      fmt::join(list.unread, ", "));
}

}  // namespace

std::string due_text(const DueList& list, const TextStyle& style) {
  std::vector<Row> rows;
  for (const Due& due : list.cars)
    rows.push_back({when_text(due, list.today), title(due.car), due.seen.text(),
                    fmt::format("{}", due.surveys), verdict_text(due), why_text(due), due.file});
  const std::vector<Column> columns{
      {"look again"}, {"car"},      {"last seen"},    {"surveys", Align::right},
      {"verdict"},    {"why then"}, {"newest survey"}};
  return heading(fmt::format("To be looked at again, on {}", list.today.text()), style) + "\n" +
         table(columns, rows, style.width) + "\n" + indented(lapses(list), style.width, "", "") +
         (list.rules.empty() ? "" : indented(list.rules, style.width, "", "") + "\n\n") +
         indented(caution(), style.width, "", "") + "\n";
}

std::string due_csv(const DueList& list) {
  std::string text =
      csv_record({"look_again", "overdue", "car", "built", "body", "last_seen", "surveys",
                  "verdict", "could_be", "why", "note", "file", "sha256"});
  for (const Due& due : list.cars)
    text += csv_record(
        {due.next.date ? due.next.date->text() : "", is_overdue(due, list.today) ? "true" : "false",
         due.car.name, due.car.built ? fmt::format("{}", *due.car.built) : "", due.body,
         due.seen.text(), fmt::format("{}", due.surveys), std::string(word(due.verdict)),
         std::string(word(due.could_be)), due.next.why, due.note, due.file, due.sha256});
  return text;
}

Json due_json(const DueList& list) {
  Json cars = Json::array();
  for (const Due& due : list.cars)
    cars.push_back(
        {{"car",
          {{"name", due.car.name}, {"built", due.car.built ? Json(*due.car.built) : Json()}}},
         {"body", due.body},
         {"file", due.file},
         {"sha256", due.sha256},
         {"date", due.seen.text()},
         {"surveys", due.surveys},
         {"verdict", {{"word", word(due.verdict)}, {"could_be", word(due.could_be)}}},
         {"next_survey",
          {{"date", due.next.date ? Json(due.next.date->text()) : Json()},
           {"why", due.next.why},
           {"overdue", is_overdue(due, list.today)}}},
         {"note", due.note.empty() ? Json() : Json(due.note)}});
  return {{"tinworm", TINWORM_VERSION}, {"kind", "due"},
          {"today", list.today.text()}, {"cars", std::move(cars)},
          {"unread", list.unread},      {"rules", list.rules.empty() ? Json() : Json(list.rules)},
          {"caution", caution()}};
}

}  // namespace tinworm::output
