#include "verbs/listing.hpp"

#include <fmt/format.h>

#include "output/whole_file.hpp"
#include "painting/measure.hpp"
#include "scene/for_sale.hpp"
#include "scene/listing.hpp"
#include "verbs/command_error.hpp"
#include "verbs/picture.hpp"
#include "verbs/record.hpp"
#include "verbs/record_words.hpp"
#include "verbs/weigh.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {
namespace {

std::vector<scene::Page> pages_of(const weighing::Result& result, const ListingOptions& options) {
  scene::ListingOptions listing;
  listing.paper = options.picture.paper;
  listing.signed_name = options.signed_name;
  if (options.to.kind != Kind::pdf) listing.sheets = {options.picture.sheet};
  if (!options.picture.phone) return scene::listing(result, listing, painting::measure());
  auto page = scene::listing_phone(result, options.picture.sheet, listing, painting::measure());
  if (!page) return {};
  return {std::move(*page)};
}

// Without the names of files: they may say more than a buyer should read.
Record record_for_sale(const weighing::Result& result, const RulesInForce& rules,
                       const ListingOptions& options) {
  Record record = record_of(words_of(options), options.to.kind, {result}, rules);
  for (Input& each : record.inputs) each.file.clear();
  return record;
}

painting::Metadata metadata_for_sale(const weighing::Result& result, const Record& record) {
  painting::Metadata metadata = metadata_of("listing", result, record);
  metadata.subject = "Corrosion survey, for a sale";
  metadata.author = result.survey.visit.by;
  return metadata;
}

}  // namespace

ExitStatus run(const ListingOptions& options, const Streams& streams) {
  const auto rules = load_rules(options.common, streams);
  if (!rules) return errors_in_files;
  keep_apart("listing", with_rules({options.file}, options.common.rules), {options.to.path});
  PlanShelf plans(options.common.panels, options.common.problems);
  const Loaded loaded = load_survey(options.file, plans);
  streams.complain(loaded.mistakes);
  if (!loaded.survey) return errors_in_files;
  if (options.signed_name && loaded.survey->visit.by.empty())
    throw CommandError("listing",
                       fmt::format("{} doesn't say who looked", yaml::shown(options.file)),
                       "Write the surveyor's name under visit, as in {by: NAME}, or leave out "
                       "--signed.");
  const weighing::Result result = scene::for_sale(weighed(loaded, *rules), options.signed_name);
  const std::vector<scene::Page> pages = pages_of(result, options);
  if (pages.empty())
    throw CommandError("listing", fmt::format("{}: {} has no {} sheet", yaml::shown(options.file),
                                              result.body->name, word(options.picture.sheet)));
  painting::Warnings warnings;
  const std::string picture =
      picture_of(pages, metadata_for_sale(result, record_for_sale(result, *rules, options)),
                 options.to.kind, options.picture, warnings);
  for (const std::string& warning : warnings)
    streams.complain(fmt::format("tinworm: {}: {}\n", yaml::shown(options.file), warning));
  if (options.to.path == "-") {
    streams.print(picture);
  } else {
    output::write_whole(options.to.path, picture);
    streams.tell(fmt::format("wrote {}\n", yaml::shown(options.to.path)));
  }
  return done;
}

}  // namespace tinworm::verbs
