#include "verbs/map.hpp"

#include <charconv>
#include <chrono>
#include <cstdlib>
#include <cstring>
#include <filesystem>

#include <fmt/chrono.h>
#include <fmt/format.h>

#include "output/file_error.hpp"
#include "output/whole_file.hpp"
#include "output/zone_text.hpp"
#include "painting/measure.hpp"
#include "painting/picture.hpp"
#include "scene/diagram.hpp"
#include "verbs/command_error.hpp"
#include "verbs/over_surveys.hpp"
#include "verbs/weigh.hpp"
#include "weighing/words.hpp"

namespace tinworm::verbs {
namespace {

namespace fs = std::filesystem;

scene::Paper paper_of(Paper paper) {
  switch (paper) {
    case Paper::a4:
      return scene::Paper::a4;
    case Paper::a3:
      return scene::Paper::a3;
    case Paper::letter:
      break;
  }
  return scene::Paper::letter;
}

scene::SheetKind kind_of(Sheet sheet) {
  switch (sheet) {
    case Sheet::structure:
      return scene::SheetKind::structure;
    case Sheet::skin:
      return scene::SheetKind::skin;
    case Sheet::frame:
      break;
  }
  return scene::SheetKind::frame;
}

std::string_view name_of(Sheet sheet) {
  return sheet == Sheet::structure ? "structure" : sheet == Sheet::skin ? "skin" : "frame";
}

// The same input gives the same bytes: SOURCE_DATE_EPOCH (https://reproducible-builds.org) or the
// day of the survey, never the clock.
std::string date_of_file(const survey::Survey& survey) {
  using namespace std::chrono;
  sys_seconds moment = survey.visit.date.first();
  if (const char* epoch = std::getenv("SOURCE_DATE_EPOCH"); epoch != nullptr && *epoch != '\0') {
    long long since = 0;
    const char* end = epoch + std::strlen(epoch);
    const auto [stop, error] = std::from_chars(epoch, end, since);
    constexpr long long year_9999 = 253402300799;
    if (error != std::errc() || stop != end || since < 0 || since > year_9999) {
      throw CommandError("map",
                         fmt::format("SOURCE_DATE_EPOCH is seconds since 1970, not \"{}\"", epoch));
    }
    moment = sys_seconds(seconds(since));
  }
  return fmt::format("{:%Y-%m-%dT%H:%M:%SZ}", moment);
}

painting::Metadata metadata_of(const weighing::Result& result) {
  painting::Metadata metadata;
  const std::string date = result.survey.visit.date.text();
  metadata.title = fmt::format("{}, survey of {}", output::car_text(result.survey.car), date);
  metadata.subject = "Corrosion survey, map of the metal";
  metadata.keywords = fmt::format("{} {}", result.body->name, result.body->version);
  metadata.creator = "tinworm " TINWORM_VERSION;
  metadata.date = date_of_file(result.survey);
  metadata.description = fmt::format("Verdict: {}.", sentence(result.verdict));
  if (result.could_be != result.verdict) {
    metadata.description += fmt::format(" Could be: {}.", sentence(result.could_be));
  }
  if (result.open_up_first) metadata.description += " Open up first.";
  if (const std::string changed = weighing::rules_text(result); !changed.empty()) {
    metadata.description += " " + changed;
  }
  metadata.description += " " + result.caution;
  metadata.fingerprint = result.sha256;
  return metadata;
}

scene::DiagramOptions diagram_options(const MapOptions& options) {
  scene::DiagramOptions diagram;
  diagram.paper = paper_of(options.paper);
  diagram.private_too = options.with_private;
  diagram.circles = options.circles;
  if (options.to.kind != Kind::pdf) diagram.sheets = {kind_of(options.sheet)};
  return diagram;
}

std::string output_of(const std::string& file, const MapOptions& options) {
  if (!options.to.folder) return options.to.path;
  const std::string name =
      fs::path(file).stem().string() + "." + std::string(word(options.to.kind));
  return (fs::path(options.to.path) / name).string();
}

std::string picture_of(const std::vector<scene::Page>& pages, const weighing::Result& result,
                       const MapOptions& options, painting::Warnings& warnings) {
  const painting::Metadata metadata = metadata_of(result);
  switch (options.to.kind) {
    case Kind::svg:
      return painting::to_svg(pages.front(), metadata, &warnings);
    case Kind::png:
      return painting::to_png(pages.front(), options.width_px, metadata, &warnings);
    default:
      return painting::to_pdf(pages, metadata, &warnings);
  }
}

Outcome draw(const Loaded& loaded, const RulesInForce& rules, const std::string& output,
             const MapOptions& options) {
  const weighing::Result result = weighed(loaded, rules);
  const auto pages = scene::diagram(result, diagram_options(options), painting::measure());
  if (pages.empty()) {
    return {{},
            fmt::format("tinworm map: {}: {} has no {} sheet\n", loaded.file, result.body->name,
                        name_of(options.sheet)),
            {},
            wrong_command};
  }
  painting::Warnings warnings;
  const std::string picture = picture_of(pages, result, options, warnings);
  if (options.to.kind != Kind::pdf && pages.size() > 1) {
    warnings.push_back(
        result.rules_changed.empty()
            ? "what was not seen is listed on a page of its own that this picture lacks; a PDF has "
              "it"
            : "what was not seen, and the changed rules, are listed in full on a page that this "
              "picture lacks; a PDF has it");
  }
  Outcome outcome;
  for (const std::string& warning : warnings) {
    outcome.complaints += fmt::format("tinworm: {}: {}\n", loaded.file, warning);
  }
  if (output == "-") {
    outcome.results = picture;
  } else {
    output::write_whole(output, picture);
    outcome.results = fmt::format("wrote {}\n", output);
  }
  return outcome;
}

void make_folder(const std::string& path) {
  std::error_code error;
  fs::create_directories(path, error);
  if (error) throw output::FileError(path, output::reason_of(error.value()));
}

}  // namespace

ExitStatus run(const MapOptions& options, const Streams& streams) {
  const auto rules = load_rules(options.common.rules, streams);
  if (!rules) return errors_in_files;
  PlanShelf plans(options.common.panels);
  const std::vector<std::string> files = named_files(options.files);
  std::vector<std::string> outputs;
  for (const std::string& file : files) outputs.push_back(output_of(file, options));
  keep_apart("map", with_rules(files, options.common.rules), outputs);
  if (options.to.folder) make_folder(options.to.path);

  const Work work = [&](const std::string& file) -> Outcome {
    const Loaded loaded = load_survey(file, plans);
    if (!loaded.survey) return {{}, loaded.mistakes, {}, errors_in_files};
    Outcome outcome = draw(loaded, *rules, output_of(file, options), options);
    outcome.complaints = loaded.mistakes + outcome.complaints;
    return outcome;
  };
  return over_surveys(files, options.common, streams, work, [&](const Outcome& outcome) {
    if (options.to.path == "-") {
      streams.print(outcome.results);
    } else {
      streams.tell(outcome.results);
    }
  });
}

}  // namespace tinworm::verbs
