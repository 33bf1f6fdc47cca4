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
#include "output/zone_text.hpp"
#include "painting/measure.hpp"
#include "scene/comparison.hpp"
#include "verbs/command_error.hpp"
#include "verbs/picture.hpp"
#include "verbs/record.hpp"
#include "verbs/record_words.hpp"
#include "verbs/source_date.hpp"
#include "verbs/weigh.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {
namespace {

// Every survey weighed; none where one has mistakes, all of which were then told.
std::optional<std::vector<weighing::Result>> weighed_all(const std::vector<std::string>& files,
                                                         const CompareOptions& options,
                                                         const RulesInForce& rules,
                                                         const Streams& streams) {
  PlanShelf plans(options.common.panels, options.common.problems);
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

std::string text_of(const history::Comparison& comparison, const CompareOptions& options,
                    const Record& record, const Streams& streams) {
  switch (options.to.kind) {
    case Kind::json:
      return json_with(record, output::compare_json(comparison), output::Lines::many);
    case Kind::csv:
      return output::compare_csv(comparison);
    default:
      break;
  }
  output::TextStyle style;
  if (options.to.path == "-") style = streams.style(options.common.no_colour);
  style.units = options.units;
  return output::compare_text(comparison, style) + last_line(record, style);
}

// The same input gives the same bytes: the day of the latest survey, never the clock.
painting::Metadata metadata_of(const history::Comparison& comparison, const Record& record) {
  const weighing::Result &first = comparison.surveys.front(), &last = comparison.latest();
  painting::Metadata metadata;
  metadata.title = fmt::format("{}, {} to {}", output::car_text(last.survey.car),
                               first.survey.visit.date.text(), last.survey.visit.date.text());
  metadata.subject = "Corrosion surveys compared";
  metadata.record = text(record);
  metadata.creator = "tinworm " TINWORM_VERSION;
  metadata.date = date_of_file("compare", last.survey.visit.date.first());
  metadata.description = scene::picture_description(comparison);
  return metadata;
}

std::string picture_of(const history::Comparison& comparison, const CompareOptions& options,
                       const Record& record, const Streams& streams) {
  const scene::ComparisonOptions drawing{options.picture.paper, options.units};
  const auto pages =
      options.to.kind == Kind::pdf
          ? scene::comparison_pages(comparison, drawing, painting::measure())
          : scene::comparison_map(comparison, options.picture.sheet, drawing, painting::measure());
  if (pages.empty())
    throw CommandError("compare",
                       fmt::format("{} has no {} sheet", comparison.latest().body->name,
                                   word(options.picture.sheet)),
                       "");
  painting::Warnings warnings;
  std::string picture = picture_of(pages, metadata_of(comparison, record), options.to.kind,
                                   options.picture, warnings);
  if (options.to.kind != Kind::pdf && pages.size() > 1)
    warnings.push_back(
        "a list found no room beside the map and is on a page that this picture lacks; a PDF has "
        "it");
  for (const std::string& warning : warnings)
    streams.complain(fmt::format("tinworm compare: {}\n", warning));
  return picture;
}

}  // namespace

void must_compare(const std::string& verb, const std::vector<weighing::Result>& results) {
  const std::vector<history::Refusal> refusals = history::refusals(results);
  if (refusals.empty()) return;
  std::string what, cure;
  for (const history::Refusal& each : refusals) {
    what += (what.empty() ? "" : "\n  ") + each.what;
    if (cure.find(each.cure) == std::string::npos) cure += (cure.empty() ? "" : " ") + each.cure;
  }
  throw CommandError(verb, what, cure);
}

ExitStatus run(const CompareOptions& options, const Streams& streams) {
  const auto rules = load_rules(options.common, streams);
  if (!rules) return errors_in_files;
  const std::vector<std::string> files = named_files(options.files);
  keep_apart("compare", with_rules(files, options.common.rules), {options.to.path});
  auto results = weighed_all(files, options, *rules, streams);
  if (!results) return errors_in_files;
  if (files.size() < 2)
    throw CommandError("compare", "takes two surveys or more of one car, not one",
                       "Name them, or a folder that holds them: tinworm compare OLD.yaml NEW.yaml");
  history::sort_by_date(*results);
  must_compare("compare", *results);
  const history::Comparison comparison = history::compare(std::move(*results), rules->constants);
  const Record record = record_of(words_of(options), options.to.kind, comparison.surveys, *rules);
  const std::string text = is_picture(options.to.kind)
                               ? picture_of(comparison, options, record, streams)
                               : text_of(comparison, options, record, streams);
  if (options.to.path == "-") {
    streams.print(text);
  } else {
    output::write_whole(options.to.path, text);
    streams.tell(fmt::format("wrote {}\n", yaml::shown(options.to.path)));
  }
  return done;
}

}  // namespace tinworm::verbs
