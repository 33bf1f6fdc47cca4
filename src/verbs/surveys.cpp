#include "verbs/surveys.hpp"

#include <algorithm>
#include <filesystem>
#include <system_error>
#include <utility>

#include <fmt/format.h>

#include "output/file_error.hpp"
#include "survey/reader.hpp"
#include "verbs/survey_file.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {

namespace fs = std::filesystem;

namespace {

const attachments::Attachment* carried(const SurveyFile& source, attachments::Role role) {
  const auto found = std::ranges::find(source.beside, role, &attachments::Attachment::role);
  return found == source.beside.end() ? nullptr : &*found;
}

// What a paper was made by doesn't count unasked: one rule for every file.
std::string not_in_force(const SurveyFile& source, const std::string& file) {
  std::string told;
  for (const auto& [role, option] : {std::pair(attachments::Role::rules, "--rules"),
                                     std::pair(attachments::Role::rates, "--rates")}) {
    if (const attachments::Attachment* each = carried(source, role))
      told += fmt::format("{0}: carries {1}, which it was made by: {2} {0} takes it\n",
                          yaml::shown(file), yaml::shown(each->name), option);
  }
  return told;
}

}  // namespace

Loaded load_survey(const std::string& file, PlanShelf& plans) {
  SurveyFile source = read_survey_file(file);
  const attachments::Attachment* plan_carried = carried(source, attachments::Role::plan);
  const std::string beside = fs::path(file).parent_path().string();
  std::string bad_plan;
  survey::Reading reading = survey::read_survey(source.text, [&](std::string_view name) {
    if (plan_carried != nullptr) return plans.carried(source.place, plan_carried->bytes);
    auto plan = plans.find(name, beside);
    if (!plan) bad_plan = plans.mistakes(name, beside);
    return plan;
  });
  Loaded loaded;
  loaded.file = file;
  loaded.survey = std::move(reading.survey);
  loaded.problems = std::move(reading.problems);
  if (!loaded.problems.empty()) {
    loaded.mistakes =
        yaml::to_text(loaded.problems, source.place, source.text, plans.problems()) + bad_plan;
  }
  loaded.mistakes += not_in_force(source, file);
  loaded.name = std::move(source.name);
  loaded.sha256 = std::move(source.sha256);
  loaded.text = std::move(source.text);
  loaded.place = std::move(source.place);
  return loaded;
}

namespace {

// With the folders in it by `Iterator`; links to folders aren't followed.
template <class Iterator>
std::vector<std::string> yaml_files_by(const std::string& folder) {
  std::error_code error;
  std::vector<std::string> files;
  for (Iterator entry(folder, error), end; !error && entry != end; entry.increment(error)) {
    const fs::path& path = entry->path();
    const bool hidden = path.filename().string().starts_with('.');
    std::error_code unknown;  // reading it will tell
    const bool is_file =
        !entry->is_fifo(unknown) && !entry->is_socket(unknown) && !entry->is_directory(unknown);
    if (path.extension() == ".yaml" && !hidden && is_file) files.push_back(path.string());
  }
  if (error == std::errc::no_such_file_or_directory)
    throw output::FileError(folder, "no such folder", "look at the path");
  if (error)
    throw output::FileError(folder, output::reason_of(error.value()),
                            output::cure_of(error.value()));
  std::sort(files.begin(), files.end());
  return files;
}

std::vector<std::string> with_folders_replaced(
    const std::vector<std::string>& named,
    std::vector<std::string> (*inside_of)(const std::string& folder)) {
  std::vector<std::string> files;
  for (const std::string& name : named) {
    std::error_code unknown;  // reading it will tell
    if (!fs::is_directory(name, unknown)) {
      files.push_back(name);
      continue;
    }
    const std::vector<std::string> inside = inside_of(name);
    if (inside.empty()) {
      throw output::FileError(name, "a folder without surveys", "surveys end in .yaml");
    }
    files.insert(files.end(), inside.begin(), inside.end());
  }
  return files;
}

}  // namespace

std::vector<std::string> named_files(const std::vector<std::string>& named) {
  return with_folders_replaced(named, yaml_files);
}

std::vector<std::string> files_below(const std::vector<std::string>& named) {
  return with_folders_replaced(named, yaml_files_by<fs::recursive_directory_iterator>);
}

std::vector<std::string> yaml_files(const std::string& folder) {
  return yaml_files_by<fs::directory_iterator>(folder);
}

}  // namespace tinworm::verbs
