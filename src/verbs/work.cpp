#include "verbs/work.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "documents/report.hpp"
#include "output/display_width.hpp"
#include "output/weigh_json.hpp"
#include "output/work_csv.hpp"
#include "output/work_json.hpp"
#include "output/work_text.hpp"
#include "painting/measure.hpp"
#include "verbs/over_surveys.hpp"
#include "verbs/picture.hpp"
#include "verbs/record.hpp"
#include "verbs/record_words.hpp"
#include "verbs/sink.hpp"
#include "verbs/weigh.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {
namespace {

painting::Metadata metadata_of_work(const weighing::Result& result, const Record& record) {
  painting::Metadata metadata = metadata_of("work", result, record);
  metadata.title = fmt::format("{}, plan of work after the survey of {}", result.survey.car.name,
                               result.survey.visit.date.text());
  metadata.subject = "Plan of work after a corrosion survey";
  return metadata;
}

std::string pdf_of(const weighing::Result& result, const work::Plan& plan,
                   const WorkOptions& options, const Record& record, std::string& complaints) {
  painting::Warnings warnings;
  std::string pdf = painting::to_pdf(
      documents::work_paper(result, plan, {options.paper, options.units}, painting::measure()),
      metadata_of_work(result, record), &warnings);
  for (const std::string& warning : warnings)
    complaints += fmt::format("tinworm: {}: {}\n", result.named, warning);
  return pdf;
}

std::string text_of(const weighing::Result& result, const work::Plan& plan,
                    const WorkOptions& options, const Record& record, bool many,
                    const output::TextStyle& style, std::string& complaints) {
  switch (options.to.kind) {
    case Kind::json:
      return json_with(record, output::work_json(result, plan),
                       many ? output::Lines::one : output::Lines::many);
    case Kind::csv:
      return output::work_csv_rows(result, plan);
    case Kind::pdf:
      return pdf_of(result, plan, options, record, complaints);
    default:
      return many ? "" : output::work_text(result, plan, style) + last_line(record, style);
  }
}

std::string above_many(const RatesInForce& rates, const output::TextStyle& style) {
  work::Plan none;
  none.rates_changed = rates::changed(rates.rates);
  none.rates_file = rates.file;
  none.rates_name = rates.name;
  return output::indented(output::rates_text(none), style.width, "", "  ") + "\n";
}

std::vector<std::string> inputs(std::vector<std::string> surveys, const WorkOptions& options) {
  return with_rules(with_rules(std::move(surveys), options.common.rules), options.rates);
}

}  // namespace

work::Plan planned(const weighing::Result& result, const RatesInForce& rates) {
  work::Plan plan = work::plan(result, rates.rates);
  if (!plan.rates_changed.empty()) {
    plan.rates_file = rates.file;
    plan.rates_name = rates.name;
  }
  return plan;
}

ExitStatus run(const WorkOptions& options, const Streams& streams) {
  const auto rules = load_rules(options.common, streams);
  const auto rates = load_rates(options.rates, options.common, streams);
  if (!rules || !rates) return errors_in_files;
  PlanShelf plans(options.common.panels, options.common.problems);
  const std::vector<std::string> files = named_files(options.files);
  keep_apart("work", inputs(files, options), {options.to.path});
  const bool many = files.size() > 1 || files != options.files;  // a folder, be it of one
  output::TextStyle style;
  if (options.to.path == "-") style = streams.style(options.common.no_colour);
  style.units = options.units;

  const Work work = [&](const std::string& file) -> Outcome {
    const Loaded loaded = load_survey(file, plans);
    if (!loaded.survey) return {{}, loaded.mistakes, {}, errors_in_files};
    const weighing::Result result = weighed(loaded, *rules);
    const work::Plan plan = planned(result, *rates);
    std::string complaints = loaded.mistakes;
    Record record = record_of(words_of(options), options.to.kind, {result}, *rules);
    add_rates(record, *rates);
    std::string text = text_of(result, plan, options, record, many, style, complaints);
    return {std::move(text), complaints, output::work_line(result, plan), done};
  };
  Sink sink(options.to, streams);
  const bool as_table = many && options.to.kind == Kind::text;
  std::vector<output::Row> lines;
  bool first = true;
  const ExitStatus status =
      over_surveys(files, options.common, streams, work, [&](const Outcome& outcome) {
        if (outcome.status != done) return;
        if (first && options.to.kind == Kind::csv) sink.add(output::work_csv_header());
        first = false;
        sink.add(outcome.results);
        if (as_table) lines.push_back(outcome.line);
      });
  if (!lines.empty()) {
    sink.add(above_many(*rates, style));
    sink.add(
        output::table(output::work_line_columns(rates->rates.currency), lines, style.width, ""));
  }
  sink.finish();
  return status;
}

}  // namespace tinworm::verbs
