#include "verbs/check.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "output/weigh_json.hpp"
#include "verbs/over_surveys.hpp"
#include "verbs/plan_shelf.hpp"
#include "verbs/surveys.hpp"
#include "verbs/weigh.hpp"

namespace tinworm::verbs {
namespace {

std::string counted(std::size_t count, const char* one, const char* several) {
  return fmt::format("{} {}", count, count == 1 ? one : several);
}

std::string reads_well(const Loaded& loaded) {
  const survey::Survey& survey = *loaded.survey;
  std::size_t spots = 0;
  for (const auto& [number, zone] : survey.zones) spots += zone.found.size();
  for (const survey::OwnZone& own : survey.own) spots += own.zone.found.size();
  return fmt::format("{}: no mistakes; {} {}, {}, {}\n", loaded.file, survey.body->name,
                     survey.body->version,
                     counted(survey.seen.size() + survey.own.size(), "zone named", "zones named"),
                     counted(spots, "spot", "spots"));
}

std::string text_of(const Loaded& loaded, const std::vector<std::string>& questions,
                    const RulesInForce& rules) {
  std::string text = loaded.mistakes;
  if (loaded.survey) text += reads_well(loaded);
  for (const std::string& change : rules::changed(rules.constants)) {
    text += fmt::format("{}: rule changed by {}: {}\n", loaded.file, rules.file, change);
  }
  for (const std::string& question : questions) {
    text += fmt::format("{}: question: {}\n", loaded.file, question);
  }
  return text;
}

std::string json_of(const Loaded& loaded, const std::vector<std::string>& questions,
                    const RulesInForce& rules, bool many) {
  const std::vector<std::string> changed = rules::changed(rules.constants);
  nlohmann::ordered_json problems = nlohmann::ordered_json::array();
  for (const yaml::Problem& problem : loaded.problems) {
    problems.push_back({{"line", problem.place.line},
                        {"column", problem.place.column},
                        {"what", problem.what},
                        {"found", problem.found},
                        {"allowed", problem.allowed},
                        {"cure", problem.cure}});
  }
  return output::json_text({{"tinworm", TINWORM_VERSION},
                            {"kind", "check"},
                            {"file", loaded.file},
                            {"sha256", loaded.sha256},
                            {"rules", changed.empty() ? "default" : rules.file},
                            {"rules_changed", changed},
                            {"problems", problems},
                            {"questions", questions}},
                           many ? output::Lines::one : output::Lines::many);
}

}  // namespace

ExitStatus run(const CheckOptions& options, const Streams& streams) {
  const auto rules = load_rules(options.common.rules, streams);
  if (!rules) return errors_in_files;
  PlanShelf plans(options.common.panels);
  const std::vector<std::string> files = named_files(options.files);
  const bool json = options.to.kind == Kind::json;
  const bool many = files.size() > 1 || files != options.files;  // a folder, be it of one
  const Work work = [&](const std::string& file) -> Outcome {
    const Loaded loaded = load_survey(file, plans);
    std::vector<std::string> questions;
    if (loaded.survey) questions = weighed(loaded, *rules).questions;
    const bool bad = !loaded.survey || (options.strict && !questions.empty());
    return {json ? json_of(loaded, questions, *rules, many) : text_of(loaded, questions, *rules),
            {},
            {},
            bad ? errors_in_files : done};
  };
  return over_surveys(files, options.common, streams, work,
                      [&](const Outcome& outcome) { streams.print(outcome.results); });
}

}  // namespace tinworm::verbs
