#include "verbs/start.hpp"

#include <filesystem>
#include <optional>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include "output/csv.hpp"
#include "output/file_error.hpp"
#include "output/whole_file.hpp"
#include "survey/field_sheet.hpp"
#include "survey/form.hpp"
#include "survey/reader.hpp"
#include "survey/sheet_marks.hpp"
#include "verbs/command_error.hpp"
#include "verbs/named_plan.hpp"
#include "verbs/source_date.hpp"
#include "verbs/surveys.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {
namespace {

namespace fs = std::filesystem;

[[noreturn]] void refuse_existing(const std::string& path) {
  throw output::FileError(path, "this file is there already, and start never replaces one",
                          "give another name, or take it away yourself");
}

bool is_there(const std::string& path) {
  std::error_code unknown;  // writing it will tell
  return path != "-" && fs::exists(fs::symlink_status(path, unknown));
}

quantity::PartialDate date_of(const StartOptions& options) {
  if (options.date.empty()) return today("start");
  const auto date = quantity::parse_date(options.date);
  if (date) return *date;
  throw CommandError(
      "start", fmt::format("--date: {}, not \"{}\"", date.error().what, yaml::shown(options.date)),
      "Write 2025-04-12, 2025-04 or 2025.");
}

// The earlier survey must be of the body named, if one is.
void require_same_body(const StartOptions& options, const survey::Survey& before) {
  const std::string versioned = fmt::format("{} {}", before.body->name, before.body->version);
  if (options.body.empty() || options.body == before.body->name || options.body == versioned ||
      options.body == before.body_text)
    return;
  throw CommandError("start",
                     fmt::format("{} is of the body {}, not {}", yaml::shown(options.from),
                                 versioned, yaml::shown(options.body)),
                     "Leave the body out, or start from a survey of the same body.");
}

// What the command line put into the form must read as a survey too.
void require_readable(const survey::FormLines& lines, const body::PlanPtr& plan) {
  const survey::Reading reading =
      survey::read_survey(survey::text_of(lines), [&](std::string_view) { return plan; });
  if (reading.survey) return;
  const yaml::Problem& problem = reading.problems.front();
  std::string cure = problem.cure.empty() ? "" : problem.cure + ".";
  if (!cure.empty() && cure.front() >= 'a' && cure.front() <= 'z')
    cure.front() = static_cast<char>(cure.front() - 'a' + 'A');
  if (!problem.allowed.empty())
    cure = fmt::format("Allowed: {}.{}{}", problem.allowed, cure.empty() ? "" : " ", cure);
  throw CommandError("start", fmt::format("--car or --date: {}", problem.what), cure);
}

ExitStatus write(const StartOptions& options, const std::string& text, const Streams& streams) {
  if (options.path == "-") {
    streams.print(text);
    return done;
  }
  // Another program may have put one there since it was looked for.
  if (!output::write_new(options.path, text)) refuse_existing(options.path);
  const std::string path = yaml::shown(options.path);
  streams.tell(options.blank
                   ? fmt::format("wrote {0}: fill it in, then `tinworm start {1} --from-csv {0}`\n",
                                 path, options.body)
                   : fmt::format("wrote {0}: fill it in, then `tinworm check {0}`\n", path));
  return done;
}

// Nothing of it reads as found: a row that isn't filled in says nothing.
std::string blank_sheet(const body::Plan& plan) {
  std::string text;
  for (const std::vector<std::string>& row : survey::blank_rows(plan))
    text += output::csv_record(row);
  return text;
}

ExitStatus start_from_survey(const StartOptions& options, PlanShelf& plans,
                             const Streams& streams) {
  const Loaded loaded = load_survey(options.from, plans);
  if (!loaded.survey) {
    streams.complain(loaded.mistakes);
    return errors_in_files;
  }
  require_same_body(options, *loaded.survey);
  survey::Form form;
  form.before = &*loaded.survey;
  form.units = loaded.survey->units;
  form.car = options.car.empty() ? loaded.survey->car.name : options.car;
  form.date = date_of(options);
  if (form.date.last() < loaded.survey->visit.date.first())
    throw CommandError("start",
                       fmt::format("{} is of {}, after {}", yaml::shown(options.from),
                                   loaded.survey->visit.date.text(), form.date.text()),
                       "A later visit has a later --date.");
  const survey::FormLines lines = survey::form_lines(*loaded.survey->body, form);
  require_readable(lines, loaded.survey->body);
  return write(options, survey::text_of(lines), streams);
}

ExitStatus refuse_sheet(std::vector<survey::SheetProblem> problems, const StartOptions& options,
                        const Streams& streams) {
  streams.complain(survey::to_text(std::move(problems), options.from_csv, options.common.problems));
  return errors_in_files;
}

ExitStatus start_from_sheet(const StartOptions& options, const body::PlanPtr& plan,
                            survey::Form form, const Streams& streams) {
  const std::string text = output::read_whole(options.from_csv, most_bytes);
  auto records = survey::csv_records(text);
  if (!records) {
    const survey::CsvMistake& mistake = records.error();
    return refuse_sheet({{mistake.row, "", {{}, mistake.what, "", "", mistake.cure}}}, options,
                        streams);
  }
  if (!records->empty())
    if (auto marks = survey::marks_in_headings(records->front()); !marks.empty())
      return refuse_sheet(std::move(marks), options, streams);
  const auto marks = survey::take_out_marks(*records);
  survey::FieldSheet sheet = survey::read_field_sheet(*records, *plan);
  sheet.problems.insert(sheet.problems.end(), marks.begin(), marks.end());
  form.filled = std::move(sheet.zones);
  form.numbered_photos = sheet.numbered_photos;
  const survey::FormLines lines = survey::form_lines(*plan, form);
  const survey::Reading reading =
      survey::read_survey(survey::text_of(lines), [&](std::string_view) { return plan; });
  const auto more = survey::of_sheet(reading.problems, lines);
  sheet.problems.insert(sheet.problems.end(), more.begin(), more.end());
  if (!sheet.problems.empty()) return refuse_sheet(std::move(sheet.problems), options, streams);
  return write(options, survey::text_of(lines), streams);
}

}  // namespace

ExitStatus run(const StartOptions& options, const Streams& streams) {
  if (is_there(options.path)) refuse_existing(options.path);
  PlanShelf plans(options.common.panels, options.common.problems);
  if (!options.from.empty()) return start_from_survey(options, plans, streams);
  const body::PlanPtr plan = named_plan("start", plans, options.body, streams);
  if (!plan) return errors_in_files;
  if (options.blank) return write(options, blank_sheet(*plan), streams);
  survey::Form form;
  form.car = options.car.empty() ? "unnamed car" : options.car;
  form.date = date_of(options);
  form.units = options.units;
  if (!options.from_csv.empty()) return start_from_sheet(options, plan, std::move(form), streams);
  const survey::FormLines lines = survey::form_lines(*plan, form);
  require_readable(lines, plan);
  return write(options, survey::text_of(lines), streams);
}

}  // namespace tinworm::verbs
