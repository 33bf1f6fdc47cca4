#include "verbs/due.hpp"

#include <filesystem>
#include <map>
#include <mutex>
#include <optional>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "history/archive.hpp"
#include "output/due.hpp"
#include "output/weigh_json.hpp"
#include "verbs/in_order.hpp"
#include "verbs/over_surveys.hpp"
#include "verbs/sink.hpp"
#include "verbs/source_date.hpp"
#include "verbs/weigh.hpp"
#include "weighing/words.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {
namespace {

namespace fs = std::filesystem;

struct Archive {
  std::vector<std::string> files;  // of surveys that were read well
  std::vector<history::Filed> filed;
  std::vector<std::string> unread;
  ExitStatus status = done;
};

// Rules, rates and body plans may lie in an archive too; whatever has the key of a survey is one.
bool is_survey(const Loaded& loaded) {
  return loaded.text.starts_with("survey:") || loaded.text.find("\nsurvey:") != std::string::npos;
}

// What is needed to tell the cars apart, and no more: an archive may hold thousands.
Archive read_archive(const DueOptions& options, PlanShelf& plans, const Streams& streams) {
  const std::vector<std::string> files = files_below(options.folders);
  std::map<std::string, history::Filed> found;
  std::mutex guard;  // of `found`
  std::size_t taken = 0;
  Archive archive;
  const Work work = [&](const std::string& file) -> Outcome {
    const Loaded loaded = load_survey(file, plans);
    if (!loaded.survey && !is_survey(loaded))
      return {{}, fmt::format("{}: no survey, passed over\n", yaml::shown(file)), {}, done};
    if (!loaded.survey) return {{}, loaded.mistakes, {}, errors_in_files};
    const survey::Survey& survey = *loaded.survey;
    const std::lock_guard lock(guard);
    found[file] = {survey.car, survey.body->name, survey.visit.date, loaded.sha256};
    return {{}, loaded.mistakes, {}, done};
  };
  archive.status = over_surveys(files, options.common, streams, work, [&](const Outcome& outcome) {
    const std::string& file = files[taken++];
    if (outcome.status != done)
      archive.unread.push_back(yaml::shown(fs::path(file).filename().string()));
  });
  for (auto& [file, filed] : found) {
    archive.files.push_back(file);
    archive.filed.push_back(std::move(filed));
  }
  return archive;
}

// A survey that can't be read any more since it was: none.
std::optional<history::Due> due_of(const Archive& archive, const std::vector<std::size_t>& car,
                                   PlanShelf& plans, const RulesInForce& rules) {
  std::vector<weighing::Result> results;
  for (const std::size_t i : car) {
    const Loaded loaded = load_survey(archive.files[i], plans);
    if (!loaded.survey) return std::nullopt;
    results.push_back(weighed(loaded, rules));
  }
  return history::due_of(std::move(results), rules.constants);
}

std::string text_of(const output::DueList& list, const DueOptions& options,
                    const Streams& streams) {
  if (options.to.kind == Kind::json)
    return output::json_text(output::due_json(list), output::Lines::many);
  if (options.to.kind == Kind::csv) return output::due_csv(list);
  output::TextStyle style;
  if (options.to.path == "-") style = streams.style(options.common.no_colour);
  return output::due_text(list, style);
}

}  // namespace

ExitStatus run(const DueOptions& options, const Streams& streams) {
  const auto rules = load_rules(options.common, streams);
  if (!rules) return errors_in_files;
  PlanShelf plans(options.common.panels, options.common.problems);
  Archive archive = read_archive(options, plans, streams);
  keep_apart("due", with_rules(archive.files, options.common.rules), {options.to.path});
  output::DueList list;
  list.today = today("due");
  list.unread = archive.unread;
  list.rules = weighing::rules_text(of_rules_alone(*rules));
  const std::vector<std::vector<std::size_t>> cars = history::by_car(archive.filed);
  std::size_t taken = 0;
  in_order(
      cars.size(), options.common.jobs,
      [&](std::size_t i) { return due_of(archive, cars[i], plans, *rules); },
      [&](std::optional<history::Due>& due) {
        const std::size_t newest = cars[taken++].back();
        if (due)
          list.cars.push_back(std::move(*due));
        else
          list.unread.push_back(yaml::shown(fs::path(archive.files[newest]).filename().string()));
      });
  history::sort(list.cars);
  Sink sink(options.to, streams);
  sink.add(text_of(list, options, streams));
  sink.finish();
  return list.unread.empty() ? archive.status : std::max(archive.status, errors_in_files);
}

}  // namespace tinworm::verbs
