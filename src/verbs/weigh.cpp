#include "verbs/weigh.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "output/explain.hpp"
#include "output/weigh_csv.hpp"
#include "output/weigh_json.hpp"
#include "output/weigh_text.hpp"
#include "output/zone_text.hpp"
#include "rules/rules.hpp"
#include "verbs/command_error.hpp"
#include "verbs/over_surveys.hpp"
#include "verbs/record.hpp"
#include "verbs/record_words.hpp"
#include "verbs/sink.hpp"
#include "weighing/weigh.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {
namespace {

const weighing::Zone& zone_to_explain(const weighing::Result& result, const std::string& wanted) {
  for (const weighing::Zone& zone : result.zones) {
    if (output::zone_number(zone.number, zone.own) == wanted) return zone;
  }
  throw CommandError("weigh", fmt::format("{} has no zone {}", result.named, yaml::shown(wanted)),
                     fmt::format("\"tinworm bodies {}\" lists them.", result.body->name));
}

std::string text_of(const weighing::Result& result, const WeighOptions& options,
                    const Record& record, bool many, const output::TextStyle& style) {
  switch (options.to.kind) {
    case Kind::json:
      return json_with(record, output::weigh_json(result),
                       many ? output::Lines::one : output::Lines::many);
    case Kind::csv:
      return output::weigh_csv_rows(result);
    default:
      break;
  }
  if (!options.explain.empty()) {
    return output::explain_zone(result, zone_to_explain(result, options.explain), style) +
           (many ? "" : last_line(record, style));
  }
  return many ? "" : output::weigh_text(result, style) + last_line(record, style);
}

// Above a table of many surveys, which has no room for it in each line.
std::string rules_of_many(const RulesInForce& rules, const output::TextStyle& style) {
  const std::string block = output::rules_block(of_rules_alone(rules), style);
  return block.empty() ? "" : block + "\n";
}

}  // namespace

weighing::Result of_rules_alone(const RulesInForce& rules) {
  weighing::Result result;
  result.rules = rules.file;
  result.rules_name = rules.name;
  result.rules_changed = rules::changed(rules.constants);
  return result;
}

weighing::Result weighed(const Loaded& loaded, const RulesInForce& rules) {
  weighing::Result result = weighing::weigh(*loaded.survey, rules.constants);
  if (!result.rules_changed.empty()) {
    result.rules = rules.file;
    result.rules_name = rules.name;
  }
  result.file = yaml::shown(loaded.name);
  result.named = yaml::shown(loaded.file);
  result.sha256 = loaded.sha256;
  return result;
}

ExitStatus run(const WeighOptions& options, const Streams& streams) {
  const auto rules = load_rules(options.common, streams);
  if (!rules) return errors_in_files;
  PlanShelf plans(options.common.panels, options.common.problems);
  const std::vector<std::string> files = named_files(options.files);
  keep_apart("weigh", with_rules(files, options.common.rules), {options.to.path});
  const bool many = files.size() > 1 || files != options.files;  // a folder, be it of one
  output::TextStyle style;
  if (options.to.path == "-") style = streams.style(options.common.no_colour);
  style.units = options.units;

  const Work work = [&](const std::string& file) -> Outcome {
    const Loaded loaded = load_survey(file, plans);
    if (!loaded.survey) return {{}, loaded.mistakes, {}, errors_in_files};
    const weighing::Result result = weighed(loaded, *rules);
    const Record record = record_of(words_of(options), options.to.kind, {result}, *rules);
    return {text_of(result, options, record, many, style), loaded.mistakes,
            output::weigh_line(result), done};
  };
  Sink sink(options.to, streams);
  const bool as_table = many && options.to.kind == Kind::text && options.explain.empty();
  std::vector<output::Row> lines;
  bool first = true;
  const ExitStatus status =
      over_surveys(files, options.common, streams, work, [&](const Outcome& outcome) {
        if (outcome.status != done) return;
        if (first && options.to.kind == Kind::csv) sink.add(output::weigh_csv_header());
        first = false;
        sink.add(outcome.results);
        if (as_table) lines.push_back(outcome.line);
      });
  if (as_table) {
    sink.add(rules_of_many(*rules, style));
    sink.add(output::table(output::weigh_line_columns(), lines, style.width, ""));
  }
  sink.finish();
  return status;
}

}  // namespace tinworm::verbs
