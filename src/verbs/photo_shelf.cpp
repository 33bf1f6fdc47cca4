#include "verbs/photo_shelf.hpp"

#include <algorithm>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include "output/fingerprint.hpp"
#include "output/progress.hpp"
#include "photos/limits.hpp"
#include "survey/named_photos.hpp"
#include "verbs/budget.hpp"
#include "verbs/in_order.hpp"
#include "verbs/photo_file.hpp"

namespace tinworm::verbs {
namespace {

struct Shown {
  tl::expected<photos::Prepared, photos::Refusal> photo;
  std::string sha256;  // of the file; empty where it can't be read
};

Shown shown(const std::string& folder, const std::string& path, const photos::Wanted& wanted,
            Budget& memory) {
  const auto bytes = read_photo(folder, path);
  if (!bytes) return {tl::unexpected(bytes.error()), ""};
  const Budget::Share share(memory, photos::held_bytes(*bytes));
  return {photos::prepare(*bytes, wanted), output::sha256(*bytes)};
}

std::vector<std::string> each_once(const std::vector<survey::Photo>& named) {
  std::vector<std::string> paths;
  for (const survey::Photo& photo : named) paths.push_back(photo.path);
  std::sort(paths.begin(), paths.end());
  paths.erase(std::unique(paths.begin(), paths.end()), paths.end());
  return paths;
}

yaml::Problem problem_of(const survey::Photo& photo, const photos::Refusal& refusal) {
  return {photo.place, refusal.what, photo.path, refusal.allowed,
          refusal.cure + ", or give --missing-photos to have the gap marked"};
}

std::string folder_for(const Loaded& loaded, const std::string& named) {
  return named.empty() ? folder_of(loaded.file) : named;
}

}  // namespace

std::vector<std::string> photo_files(const Loaded& loaded, const std::string& named_folder) {
  std::vector<std::string> files = each_once(survey::named_photos(*loaded.survey));
  const std::string folder = folder_for(loaded, named_folder);
  for (std::string& each : files)
    each = fmt::format("{}/{}", folder, photo_path(folder, loaded.survey->photos, each));
  return files;
}

ShelvedPhotos shelve_photos(const Loaded& loaded, const PhotoOptions& options,
                            const Streams& streams) {
  const std::vector<survey::Photo> named = survey::named_photos(*loaded.survey);
  const std::vector<std::string> paths = each_once(named);
  const std::string folder = folder_for(loaded, options.folder);
  ShelvedPhotos shelved;
  std::map<std::string, photos::Refusal> refused;
  output::Progress progress(streams.messages, paths.size(), !streams.quiet);
  std::size_t taken = 0;
  Budget memory(photos::most_held_bytes);
  std::string prints;  // a line for each
  in_order(
      paths.size(), options.jobs,
      [&](std::size_t i) {
        const std::string path = photo_path(folder, loaded.survey->photos, paths[i]);
        return shown(folder, path, options.wanted, memory);
      },
      [&](Shown& each) {
        auto& photo = each.photo;
        prints += each.sha256 + "\n";
        const std::string& path = paths[taken];
        if (photo) {
          shelved.album.emplace(path, std::move(*photo));
        } else {
          shelved.album.emplace(path, tl::unexpected(photo.error().what));
          refused.emplace(path, std::move(photo.error()));
        }
        progress.show(++taken);
      });
  if (!paths.empty()) shelved.sha256 = output::sha256(prints);
  if (options.missing_photos || refused.empty()) return shelved;
  yaml::Problems problems;
  for (const survey::Photo& photo : named) {
    const auto found = refused.find(photo.path);
    if (found != refused.end()) problems.push_back(problem_of(photo, found->second));
  }
  shelved.mistakes = yaml::to_text(problems, loaded.place, loaded.text, options.problems);
  return shelved;
}

}  // namespace tinworm::verbs
