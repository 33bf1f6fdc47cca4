#include "verbs/map.hpp"

#include <filesystem>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "output/file_error.hpp"
#include "output/whole_file.hpp"
#include "painting/measure.hpp"
#include "scene/diagram.hpp"
#include "scene/phone.hpp"
#include "verbs/command_error.hpp"
#include "verbs/over_surveys.hpp"
#include "verbs/picture.hpp"
#include "verbs/record.hpp"
#include "verbs/record_words.hpp"
#include "verbs/survey_file.hpp"
#include "verbs/weigh.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {
namespace {

namespace fs = std::filesystem;

scene::DiagramOptions diagram_options(const MapOptions& options) {
  scene::DiagramOptions diagram;
  diagram.paper = options.picture.paper;
  diagram.private_too = options.with_private;
  diagram.circles = options.circles;
  if (options.to.kind != Kind::pdf) diagram.sheets = {options.picture.sheet};
  return diagram;
}

std::string output_of(const std::string& file, const MapOptions& options) {
  if (!options.to.folder) return options.to.path;
  const std::string name =
      fs::path(file).stem().string() + "." + std::string(word(options.to.kind));
  return (fs::path(options.to.path) / name).string();
}

std::vector<scene::Page> pages_of(const weighing::Result& result, const MapOptions& options) {
  const scene::DiagramOptions diagram = diagram_options(options);
  if (!options.picture.phone) return scene::diagram(result, diagram, painting::measure());
  const auto page = scene::phone_page(result, options.picture.sheet, diagram, painting::measure());
  if (!page) return {};
  return {*page};
}

Outcome draw(const Loaded& loaded, PlanShelf& plans, const RulesInForce& rules,
             const std::string& output, const MapOptions& options) {
  const weighing::Result result = weighed(loaded, rules);
  const auto pages = pages_of(result, options);
  if (pages.empty()) {
    return {{},
            fmt::format("tinworm map: {}: {} has no {} sheet\n", yaml::shown(loaded.file),
                        result.body->name, word(options.picture.sheet)),
            {},
            wrong_command};
  }
  painting::Warnings warnings;
  std::string picture = picture_of(
      pages,
      metadata_of("map", result, record_of(words_of(options), options.to.kind, {result}, rules)),
      options.to.kind, options.picture, warnings);
  if (options.to.kind == Kind::pdf && options.with_private)
    picture = attachments::with_attachments(picture, to_carry(loaded, plans, rules, nullptr));
  if (options.to.kind != Kind::pdf && pages.size() > 1) {
    std::vector<std::string> lacking;
    for (std::size_t i = 1; i < pages.size(); ++i) lacking.push_back(pages[i].title);
    warnings.push_back(fmt::format("this picture is the first of {} pages; a PDF has all: {}",
                                   pages.size(), fmt::join(lacking, "; ")));
  }
  Outcome outcome;
  for (const std::string& warning : warnings) {
    outcome.complaints += fmt::format("tinworm: {}: {}\n", yaml::shown(loaded.file), warning);
  }
  if (output == "-") {
    outcome.results = picture;
  } else {
    output::write_whole(output, picture);
    outcome.results = fmt::format("wrote {}\n", yaml::shown(output));
  }
  return outcome;
}

void make_folder(const std::string& path) {
  std::error_code error;
  fs::create_directories(path, error);
  if (error)
    throw output::FileError(path, output::reason_of(error.value()), output::cure_of(error.value()));
}

}  // namespace

ExitStatus run(const MapOptions& options, const Streams& streams) {
  const auto rules = load_rules(options.common, streams);
  if (!rules) return errors_in_files;
  PlanShelf plans(options.common.panels, options.common.problems);
  const std::vector<std::string> files = named_files(options.files);
  std::vector<std::string> outputs;
  for (const std::string& file : files) outputs.push_back(output_of(file, options));
  keep_apart("map", with_rules(files, options.common.rules), outputs);
  if (options.to.folder) make_folder(options.to.path);

  const Work work = [&](const std::string& file) -> Outcome {
    const Loaded loaded = load_survey(file, plans);
    if (!loaded.survey) return {{}, loaded.mistakes, {}, errors_in_files};
    Outcome outcome = draw(loaded, plans, *rules, output_of(file, options), options);
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
