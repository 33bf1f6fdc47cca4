#include "verbs/field_sheet.hpp"

#include <filesystem>
#include <optional>

#include <fmt/format.h>

#include "documents/field_sheet.hpp"
#include "output/whole_file.hpp"
#include "painting/measure.hpp"
#include "painting/picture.hpp"
#include "verbs/named_plan.hpp"
#include "verbs/plan_shelf.hpp"
#include "verbs/source_date.hpp"
#include "verbs/surveys.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {
namespace {

// A body is a name; a survey is a file that is there, or looks like one that should be.
bool is_survey(const std::string& of) {
  std::error_code unknown;  // reading it will tell
  return of.ends_with(".yaml") || of.ends_with(".pdf") || std::filesystem::exists(of, unknown);
}

std::string next_step(const std::string& of, bool survey) {
  return survey ? fmt::format(
                      "Then type it: \"tinworm start --from {} -o new.yaml\" makes the "
                      "survey to fill in, its places in this order.",
                      yaml::shown(of))
                : fmt::format(
                      "Then type it: \"tinworm start {} -o new.yaml\" makes the survey to "
                      "fill in, its places in this order; with --blank, a spreadsheet.",
                      yaml::shown(of));
}

painting::Metadata metadata(const body::Plan& plan, const survey::Survey* before) {
  painting::Metadata metadata;
  metadata.title = before ? fmt::format("{}: field sheet", before->car.name)
                          : fmt::format("{}: field sheet", plan.title);
  metadata.subject = "Corrosion survey, sheet to fill in under the car";
  metadata.creator = "tinworm " TINWORM_VERSION;
  // Plans carry no date, and the clock's would make no two files alike.
  metadata.date = before ? date_of_file("field-sheet", before->visit.date.first())
                         : date_of_file("field-sheet", {});
  return metadata;
}

}  // namespace

ExitStatus run(const FieldSheetOptions& options, const Streams& streams) {
  PlanShelf plans(options.common.panels, options.common.problems);
  std::optional<Loaded> loaded;
  body::PlanPtr plan;
  if (is_survey(options.of)) {
    keep_apart("field-sheet", {options.of}, {options.to.path});
    loaded = load_survey(options.of, plans);
    streams.complain(loaded->mistakes);
    if (!loaded->survey) return errors_in_files;
    plan = loaded->survey->body;
  } else {
    plan = named_plan("field-sheet", plans, options.of, streams);
    if (!plan) return errors_in_files;
  }
  const survey::Survey* before = loaded ? &*loaded->survey : nullptr;
  const auto pages = documents::field_sheet(
      *plan, before, {options.paper, next_step(options.of, loaded.has_value())},
      painting::measure());
  painting::Warnings warnings;
  const std::string pdf = painting::to_pdf(pages, metadata(*plan, before), &warnings);
  for (const std::string& warning : warnings)
    streams.complain(fmt::format("tinworm: {}: {}\n", yaml::shown(options.of), warning));
  if (options.to.path == "-") {
    streams.print(pdf);
  } else {
    output::write_whole(options.to.path, pdf);
    streams.tell(fmt::format("wrote {}, {} pages\n", yaml::shown(options.to.path), pages.size()));
  }
  return done;
}

}  // namespace tinworm::verbs
