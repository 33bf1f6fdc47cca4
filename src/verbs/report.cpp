#include "verbs/report.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "documents/report.hpp"
#include "history/compare.hpp"
#include "history/order.hpp"
#include "output/whole_file.hpp"
#include "painting/measure.hpp"
#include "verbs/command_error.hpp"
#include "verbs/compare.hpp"
#include "verbs/photo_shelf.hpp"
#include "verbs/picture.hpp"
#include "verbs/record.hpp"
#include "verbs/record_words.hpp"
#include "verbs/survey_file.hpp"
#include "verbs/weigh.hpp"
#include "verbs/work.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {
namespace {

painting::Metadata metadata_of_report(const weighing::Result& result, const Record& record) {
  painting::Metadata metadata = metadata_of("report", result, record);
  metadata.subject = "Corrosion survey, report to the owner";
  metadata.author = result.survey.visit.by;
  return metadata;
}

auto count_missing(const photos::Album& album) {
  return std::ranges::count_if(album, [](const auto& each) { return !each.second.has_value(); });
}

struct Before {
  bool well = true;                       // no earlier survey has mistakes
  std::vector<weighing::Result> results;  // of the earlier ones
  std::optional<history::Comparison>
      comparison;  // of them with this one; none where there are none
};

// Mistakes are told. Throws CommandError where the surveys can't be compared.
Before before_it(const std::vector<std::string>& files, const weighing::Result& result,
                 PlanShelf& plans, const RulesInForce& rules, const Streams& streams) {
  Before before;
  for (const std::string& file : files) {
    const Loaded loaded = load_survey(file, plans);
    streams.complain(loaded.mistakes);
    before.well = before.well && loaded.survey.has_value();
    if (loaded.survey) before.results.push_back(weighed(loaded, rules));
  }
  if (!before.well || before.results.empty()) return before;
  std::vector<weighing::Result> all = before.results;
  all.push_back(result);
  history::sort_by_date(all);
  must_compare("report", all);
  before.comparison = history::compare(std::move(all), rules.constants);
  if (before.comparison->latest().sha256 != result.sha256)
    throw CommandError(
        "report",
        fmt::format("{} is of {}, after {}", before.comparison->latest().named,
                    before.comparison->latest().survey.visit.date.text(), result.named),
        "--before takes earlier surveys.");
  return before;
}

Record record_of_report(ReportOptions options, std::vector<weighing::Result> before,
                        const weighing::Result& result, const RulesInForce& rules,
                        const RatesInForce& rates, const ShelvedPhotos& photos) {
  options.missing_photos = count_missing(photos.album) > 0;
  before.push_back(result);
  Record record = record_of(words_of(options), options.to.kind, before, rules);
  add_rates(record, rates);
  if (!photos.sha256.empty()) record.inputs.push_back({InputKind::photos, "", photos.sha256});
  return record;
}

// ", 2 photos missing"
std::string gaps(const photos::Album& album) {
  const auto missing = count_missing(album);
  if (missing == 0) return "";
  return fmt::format(", {} photo{} missing", missing, missing == 1 ? "" : "s");
}

}  // namespace

ExitStatus run(const ReportOptions& options, const Streams& streams) {
  const auto rules = load_rules(options.common, streams);
  const auto rates = load_rates(options.rates, options.common, streams);
  if (!rules || !rates) return errors_in_files;
  const std::vector<std::string> earlier = named_files(options.before);
  std::vector<std::string> read = with_rules({options.file}, options.common.rules);
  read.insert(read.end(), earlier.begin(), earlier.end());
  keep_apart("report", with_rules(read, options.rates), {options.to.path});
  PlanShelf plans(options.common.panels, options.common.problems);
  const Loaded loaded = load_survey(options.file, plans);
  streams.complain(loaded.mistakes);
  if (!loaded.survey) return errors_in_files;
  keep_apart("report", photo_files(loaded, options.photos), {options.to.path});
  const ShelvedPhotos photos = shelve_photos(
      loaded,
      {options.photos, {}, options.missing_photos, options.common.jobs, options.common.problems},
      streams);
  streams.complain(photos.mistakes);
  if (!photos.mistakes.empty()) return errors_in_files;
  const weighing::Result result = weighed(loaded, *rules);
  const Before before = before_it(earlier, result, plans, *rules, streams);
  if (!before.well) return errors_in_files;
  const work::Plan plan = planned(result, *rates);
  const std::vector<scene::Page> pages = documents::report(
      result, plan, photos.album,
      {options.paper, options.units, before.comparison ? &*before.comparison : nullptr},
      painting::measure());
  painting::Warnings warnings;
  const Record record = record_of_report(options, before.results, result, *rules, *rates, photos);
  const std::string pdf = attachments::with_attachments(
      painting::to_pdf(pages, metadata_of_report(result, record), &warnings),
      to_carry(loaded, plans, *rules, &*rates));
  for (const std::string& warning : warnings)
    streams.complain(fmt::format("tinworm: {}: {}\n", yaml::shown(options.file), warning));
  if (options.to.path == "-") {
    streams.print(pdf);
  } else {
    output::write_whole(options.to.path, pdf);
    streams.tell(fmt::format("wrote {}, {} pages{}\n", yaml::shown(options.to.path), pages.size(),
                             gaps(photos.album)));
  }
  return done;
}

}  // namespace tinworm::verbs
