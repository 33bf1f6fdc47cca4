#include "survey/photo.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "survey/value.hpp"

namespace tinworm::survey {
namespace {

using yaml::Node;

bool is_number(std::string_view text) {
  return !text.empty() && text.find_first_not_of("0123456789") == std::string_view::npos;
}

bool is_jpeg(std::string_view path) {
  const std::size_t dot = path.rfind('.');
  if (dot == std::string_view::npos || dot == 0) return false;
  return std::find(jpeg_endings.begin(), jpeg_endings.end(), path.substr(dot)) !=
         jpeg_endings.end();
}

bool goes_up(std::string_view path) {
  for (std::size_t start = 0; start <= path.size();) {
    const std::size_t end = std::min(path.find('/', start), path.size());
    if (path.substr(start, end - start) == "..") return true;
    start = end + 1;
  }
  return false;
}

bool is_absolute(std::string_view path) {
  return path.substr(0, 1) == "/" || path.substr(0, 1) == "~" ||
         path.find(':') != std::string_view::npos;  // a drive or a scheme
}

// A path that can't lead out of the survey's folder.
bool stays_inside(Page& page, Place place, std::string_view path) {
  std::string what;
  if (path.find('\\') != std::string_view::npos)
    what = "a path is written with /";
  else if (is_absolute(path) || goes_up(path))
    what = "photos lie inside the survey's folder";
  if (what.empty()) return true;
  page.add({place, what, std::string(path), "photos/IMG_14.jpg",
            "put the photo in a folder beside the survey and write the path from there"});
  return false;
}

std::optional<std::string> path_of(Page& page, Place place, std::string_view written) {
  if (!is_number(written)) {
    if (is_jpeg(written))
      return stays_inside(page, place, written) ? std::optional(std::string(written))
                                                : std::nullopt;
    page.add({place, "a photo is a number or the path of a JPEG file", std::string(written),
              "14, photos/sill.jpg", "words go into the note"});
    return std::nullopt;
  }
  if (written.size() > photo_digits) {
    page.add({place, "a photo's number is too long", std::string(written),
              fmt::format("{} digits", photo_digits), "write the photo's path"});
    return std::nullopt;
  }
  if (page.photos.name.empty()) {
    page.add({place, "a photo's number needs the pattern of photo names", std::string(written), "",
              "add `photos: {folder: photos, name: \"IMG_{}.jpg\"}`, or write the path"});
    return std::nullopt;
  }
  std::string path = page.photos.folder.empty() ? "" : page.photos.folder + "/";
  const std::size_t blank = page.photos.name.find("{}");
  return path + page.photos.name.substr(0, blank) + std::string(written) +
         page.photos.name.substr(blank + 2);
}

void add_photo(Page& page, std::vector<Photo>& photos, Place place, std::string_view written) {
  auto path = path_of(page, place, written);
  if (path) photos.push_back({std::move(*path), place});
}

}  // namespace

PhotoFolder read_photo_folder(Page& page, const Node& node) {
  PhotoFolder photos;
  yaml::MapReader map(node, page.problems, "\"photos\"");
  if (const Node* folder = map.optional("folder")) {
    photos.folder = name_of(page, *folder, "the folder of photos");
    if (!stays_inside(page, folder->place, photos.folder)) photos.folder.clear();
    while (!photos.folder.empty() && photos.folder.back() == '/') photos.folder.pop_back();
  }
  if (const Node* name = map.optional("name")) {
    const std::string pattern = name_of(page, *name, "the pattern of photo names");
    const std::size_t blank = pattern.find("{}");
    const bool once =
        blank != std::string::npos && pattern.find("{}", blank + 2) == std::string::npos;
    if (!once || !is_jpeg(pattern))
      page.add({name->place,
                "a pattern has {} once, where the number goes, and ends in .jpg or .jpeg", pattern,
                "\"IMG_{}.jpg\"", ""});
    else if (stays_inside(page, name->place, pattern))
      photos.name = pattern;
  }
  map.finish();
  return photos;
}

std::vector<Photo> read_photos(Page& page, const Node& node) {
  std::vector<Photo> photos;
  if (node.kind != Node::Kind::sequence) {
    if (!scalar(page, node, "photos") || !is_short(page, node, "photos")) return photos;
    for (const std::string_view one : between_spaces(node.text))
      add_photo(page, photos, page.part_of(node, one).place, one);
    return photos;
  }
  for (const Node& item : node.items) {
    const auto one = scalar(page, item, "a photo");
    if (one) add_photo(page, photos, item.place, *one);
  }
  return photos;
}

}  // namespace tinworm::survey
