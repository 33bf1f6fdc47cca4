#include "verbs/compare.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "history/compare.hpp"
#include "history/order.hpp"
#include "output/compare_csv.hpp"
#include "output/compare_json.hpp"
#include "output/compare_text.hpp"
#include "output/weigh_json.hpp"
#include "output/whole_file.hpp"
#include "verbs/command_error.hpp"
#include "verbs/weigh.hpp"

namespace tinworm::verbs {
namespace {

// Every survey weighed; none where one has mistakes, all of which were then told.
std::optional<std::vector<weighing::Result>> weighed_all(const std::vector<std::string>& files,
                                                         const CompareOptions& options,
                                                         const RulesInForce& rules,
                                                         const Streams& streams) {
  PlanShelf plans(options.common.panels);
  std::vector<weighing::Result> results;
  bool well = true;
  for (const std::string& file : files) {
    const Loaded loaded = load_survey(file, plans);
    streams.complain(loaded.mistakes);
    well = well && loaded.survey.has_value();
    if (loaded.survey) results.push_back(weighed(loaded, rules));
  }
  if (!well) return std::nullopt;
  return results;
}

void must_compare(const std::vector<weighing::Result>& results) {
  const std::vector<history::Refusal> refusals = history::refusals(results);
  if (refusals.empty()) return;
  std::string what, cure;
  for (const history::Refusal& each : refusals) {
    what += (what.empty() ? "" : "\n  ") + each.what;
    if (cure.find(each.cure) == std::string::npos) cure += (cure.empty() ? "" : " ") + each.cure;
  }
  throw CommandError("compare", what, cure);
}

std::string text_of(const history::Comparison& comparison, const CompareOptions& options,
                    const Streams& streams) {
  switch (options.to.kind) {
    case Kind::json:
      return output::json_text(output::compare_json(comparison), output::Lines::many);
    case Kind::csv:
      return output::compare_csv(comparison);
    default:
      break;
  }
  output::TextStyle style;
  if (options.to.path == "-") style = streams.style(options.common.no_colour);
  style.units = options.units;
  return output::compare_text(comparison, style);
}

}  // namespace

ExitStatus run(const CompareOptions& options, const Streams& streams) {
  const auto rules = load_rules(options.common.rules, streams);
  if (!rules) return errors_in_files;
  const std::vector<std::string> files = named_files(options.files);
  keep_apart("compare", with_rules(files, options.common.rules), {options.to.path});
  if (files.size() < 2)
    throw CommandError("compare", "takes two surveys or more of one car, not one",
                       "tinworm compare OLD.yaml NEW.yaml");
  auto results = weighed_all(files, options, *rules, streams);
  if (!results) return errors_in_files;
  history::sort_by_date(*results);
  must_compare(*results);
  const history::Comparison comparison = history::compare(std::move(*results), rules->constants);
  const std::string text = text_of(comparison, options, streams);
  if (options.to.path == "-") {
    streams.print(text);
  } else {
    output::write_whole(options.to.path, text);
    streams.tell(fmt::format("wrote {}\n", options.to.path));
  }
  return done;
}

}  // namespace tinworm::verbs
