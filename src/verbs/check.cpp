#include "verbs/check.hpp"

#include <filesystem>
#include <iterator>
#include <utility>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "output/weigh_json.hpp"
#include "verbs/command_error.hpp"
#include "verbs/matches.hpp"
#include "verbs/over_surveys.hpp"
#include "verbs/photo_file.hpp"
#include "verbs/plan_shelf.hpp"
#include "verbs/source_date.hpp"
#include "verbs/survey_file.hpp"
#include "verbs/surveys.hpp"
#include "verbs/weigh.hpp"
#include "weighing/advice.hpp"
#include "weighing/advice_today.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {
namespace {

namespace fs = std::filesystem;

using weighing::Advice;

std::string counted(std::size_t count, const char* one, const char* several) {
  return fmt::format("{} {}", count, count == 1 ? one : several);
}

std::string reads_well(const Loaded& loaded, std::size_t questions) {
  const survey::Survey& survey = *loaded.survey;
  std::size_t spots = 0;
  for (const auto& [number, zone] : survey.zones) spots += zone.found.size();
  for (const survey::OwnZone& own : survey.own) spots += own.zone.found.size();
  return fmt::format("{}: no mistakes; {}; {} {}, {}, {}\n", yaml::shown(loaded.file),
                     questions == 0 ? "no questions" : counted(questions, "question", "questions"),
                     survey.body->name, survey.body->version,
                     counted(survey.seen.size() + survey.own.size(), "zone named", "zones named"),
                     counted(spots, "spot", "spots"));
}

std::string text_of(const Loaded& loaded, const std::vector<Advice>& advice,
                    const RulesInForce& rules) {
  std::string text = loaded.mistakes;
  for (const std::string& change : rules::changed(rules.constants)) {
    text +=
        fmt::format("{}: rule changed by {}: {}\n", yaml::shown(loaded.file), rules.file, change);
  }
  for (std::size_t i = 0; i < advice.size(); ++i) {
    const yaml::Place& place = advice[i].place;
    text += yaml::shown(loaded.file);
    if (place.line > 0) text += fmt::format(":{}:{}", place.line, place.column);
    text += fmt::format(": question: {}\n", advice[i].question);
    if (!same_reason_follows(advice, i)) text += fmt::format("    why: {}\n", advice[i].why);
  }
  if (loaded.survey) text += reads_well(loaded, advice.size());
  return text;
}

nlohmann::ordered_json problems_json(const yaml::Problems& problems) {
  auto json = nlohmann::ordered_json::array();
  for (const yaml::Problem& problem : problems) {
    json.push_back({{"line", problem.place.line},
                    {"column", problem.place.column},
                    {"what", problem.what},
                    {"found", problem.found},
                    {"allowed", problem.allowed},
                    {"cure", problem.cure}});
  }
  return json;
}

// Null where a piece is of the whole car, of no one spot, or of no place in the file.
nlohmann::ordered_json advice_json(const std::vector<Advice>& advice) {
  using Json = nlohmann::ordered_json;
  const auto text = [](const std::string& words) { return words.empty() ? Json() : Json(words); };
  const auto place = [](int number) { return number > 0 ? Json(number) : Json(); };
  Json json = Json::array();
  for (const Advice& each : advice) {
    json.push_back({{"zone", each.zone != 0 ? Json(each.zone) : text(each.own)},
                    {"spot", text(each.spot)},
                    {"line", place(each.place.line)},
                    {"column", place(each.place.column)},
                    {"kind", each.kind},
                    {"question", each.question},
                    {"why", each.why}});
  }
  return json;
}

std::string json_of(const Loaded& loaded, const std::vector<Advice>& advice,
                    const RulesInForce& rules, bool many) {
  const std::vector<std::string> changed = rules::changed(rules.constants);
  auto questions = nlohmann::ordered_json::array();
  for (const Advice& each : advice) questions.push_back(text(each));
  return output::json_text({{"tinworm", TINWORM_VERSION},
                            {"kind", "check"},
                            {"file", loaded.name},
                            {"sha256", loaded.sha256},
                            {"rules", changed.empty() ? "default" : rules.file},
                            {"rules_changed", changed},
                            {"problems", problems_json(loaded.problems)},
                            {"advice", advice_json(advice)},
                            {"questions", questions}},
                           many ? output::Lines::one : output::Lines::many);
}

void must_go_together(const Loaded& now, const Loaded& before) {
  const body::Plan& body = *now.survey->body;
  const body::Plan& other = *before.survey->body;
  if (body.name != other.name || body.version != other.version) {
    throw CommandError(
        "check",
        fmt::format("{} is of the body {} {}, {} of {} {}", yaml::shown(before.file), other.name,
                    other.version, yaml::shown(now.file), body.name, body.version),
        "--before takes an earlier survey of the same body.");
  }
  const survey::PartialDate date = now.survey->visit.date, earlier = before.survey->visit.date;
  if (earlier.first() > date.last()) {
    throw CommandError("check",
                       fmt::format("{} is of {}, after {} of {}", yaml::shown(before.file),
                                   earlier.text(), yaml::shown(now.file), date.text()),
                       "--before takes an earlier survey.");
  }
}

std::vector<Advice> advice_on(const Loaded& loaded, const Loaded* before, const RulesInForce& rules,
                              const quantity::PartialDate& now) {
  if (!loaded.survey) return {};
  if (before) must_go_together(loaded, *before);
  const std::string folder = folder_of(loaded.file);
  const weighing::Beside beside = {
      [&](const std::string& named) {
        const std::string path = photo_path(folder, loaded.survey->photos, named);
        std::error_code hidden;  // what can't be looked at may be there
        return fs::status(fs::path(folder) / path, hidden).type() != fs::file_type::not_found;
      },
      before ? &*before->survey : nullptr};
  std::vector<Advice> advice = weighed(loaded, rules).advice;
  std::vector<Advice> more = weighing::advice_beside(*loaded.survey, beside);
  std::move(more.begin(), more.end(), std::back_inserter(advice));
  std::vector<Advice> by_date = weighing::advice_today(*loaded.survey, now);
  std::move(by_date.begin(), by_date.end(), std::back_inserter(advice));
  weighing::sort(advice);
  return advice;
}

// By its bytes alone: a survey with mistakes has a fingerprint too.
ExitStatus hold_against(const CheckOptions& options, const Streams& streams) {
  const std::string& file = options.files.front();
  const Match found = match({file, read_survey_file(file).sha256, options.matches,
                             options.common.rules, options.rates, options.common.panels});
  streams.print(found.text);
  streams.complain(found.messages);
  return found.belonging == Belonging::identical ? done : errors_in_files;
}

}  // namespace

ExitStatus run(const CheckOptions& options, const Streams& streams) {
  if (!options.matches.empty()) return hold_against(options, streams);
  const auto rules = load_rules(options.common, streams);
  if (!rules) return errors_in_files;
  PlanShelf plans(options.common.panels, options.common.problems);
  const std::vector<std::string> files = named_files(options.files);
  const bool json = options.to.kind == Kind::json;
  const bool many = files.size() > 1 || files != options.files;  // a folder, be it of one
  std::optional<Loaded> before;
  if (!options.before.empty()) {
    before = load_survey(options.before, plans);
    if (!before->survey) {
      streams.complain(before->mistakes);
      return errors_in_files;
    }
  }
  const quantity::PartialDate now = today("check");
  const Work work = [&](const std::string& file) -> Outcome {
    const Loaded loaded = load_survey(file, plans);
    const std::vector<Advice> advice = advice_on(loaded, before ? &*before : nullptr, *rules, now);
    const bool bad = !loaded.survey || (options.strict && !advice.empty());
    return {json ? json_of(loaded, advice, *rules, many) : text_of(loaded, advice, *rules),
            {},
            {},
            bad ? errors_in_files : done};
  };
  return over_surveys(files, options.common, streams, work,
                      [&](const Outcome& outcome) { streams.print(outcome.results); });
}

}  // namespace tinworm::verbs
