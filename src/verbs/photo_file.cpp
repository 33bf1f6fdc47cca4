#include "verbs/photo_file.hpp"

#include <algorithm>
#include <filesystem>
#include <system_error>

#include <fmt/format.h>

#include "output/file_error.hpp"
#include "output/whole_file.hpp"
#include "photos/limits.hpp"
#include "quantity/ascii.hpp"
#include "survey/photo.hpp"

namespace tinworm::verbs {
namespace {

namespace fs = std::filesystem;

using photos::Refusal;

bool is_inside(const fs::path& file, const fs::path& folder) {
  return std::mismatch(folder.begin(), folder.end(), file.begin(), file.end()).first ==
         folder.end();
}

// Cameras write IMG_14.JPG where a survey has IMG_14.jpg.
std::string other_case(const fs::path& wanted) {
  const std::string name = wanted.filename().string();
  std::error_code unreadable;  // then there is nothing to suggest
  for (fs::directory_iterator entry(wanted.parent_path(), unreadable), end;
       !unreadable && entry != end; entry.increment(unreadable)) {
    const std::string there = entry->path().filename().string();
    if (there != name && quantity::lower_case(there) == quantity::lower_case(name)) return there;
  }
  return {};
}

Refusal not_there(const fs::path& wanted) {
  const std::string there = other_case(wanted);
  return {"there is no such photo", "",
          there.empty() ? "put the file there, correct the survey"
                        : fmt::format("the folder has {}: write it so", there)};
}

Refusal unreadable(const std::string& reason) {
  return {fmt::format("the photo can't be read: {}", reason), "", "see to the file"};
}

}  // namespace

std::string folder_of(const std::string& survey_file) {
  const std::string folder = fs::path(survey_file).parent_path().string();
  return folder.empty() ? "." : folder;
}

std::string photo_path(const std::string& folder, const survey::PhotoFolder& photos,
                       const std::string& path) {
  std::error_code hidden;  // reading it will tell
  const auto there = [&](const std::string& name) {
    return fs::exists(fs::path(folder) / name, hidden);
  };
  const std::string kept_in = photos.folder + "/";
  const auto inside = [&](const std::string& name) {
    const bool kept = kept_in.size() > 1 && name.starts_with(kept_in);
    return kept ? name.substr(kept_in.size()) : name;
  };
  for (const std::string& name : {path, inside(path)})
    if (there(name)) return name;
  std::vector<std::string> found;
  for (const std::string& name : survey::with_other_zeros(photos, path))
    for (const std::string& each : {name, inside(name)})
      if (there(each) && (found.empty() || found.back() != each)) found.push_back(each);
  return found.size() == 1 ? found.front() : path;
}

tl::expected<std::string, Refusal> read_photo(const std::string& folder, const std::string& path) {
  const fs::path wanted = fs::path(folder) / path;
  std::error_code error;
  const fs::path inside = fs::canonical(folder, error);
  const fs::path file = error ? fs::path() : fs::canonical(wanted, error);
  if (error == std::errc::no_such_file_or_directory) return tl::unexpected(not_there(wanted));
  if (error) return tl::unexpected(unreadable(output::reason_of(error.value())));
  if (!is_inside(file, inside)) {
    return tl::unexpected(Refusal{"the photo is a link that leads out of the survey's folder", "",
                                  "put the photo itself there"});
  }
  // A pipe would be waited for without end.
  if (!fs::is_regular_file(file, error)) {
    return tl::unexpected(
        unreadable(fs::is_directory(file, error) ? "a folder, not a file" : "not a plain file"));
  }
  try {
    return output::read_whole(file.string(), photos::most_file_bytes);
  } catch (const output::FileError& trouble) {
    return tl::unexpected(unreadable(trouble.reason()));
  }
}

}  // namespace tinworm::verbs
