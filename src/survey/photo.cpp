#include "survey/photo.hpp"

#include <algorithm>
#include <cctype>

#include <fmt/format.h>

#include "quantity/ascii.hpp"
#include "survey/value.hpp"

namespace tinworm::survey {
namespace {

using quantity::is_digit;
using yaml::Node;

bool is_number(std::string_view text) {
  return !text.empty() && text.find_first_not_of("0123456789") == std::string_view::npos;
}

std::string cure_of(std::string_view written) {
  if (written.find('.') != std::string_view::npos) return "save the picture as JPEG";
  const bool is_word = !written.empty() && std::isalpha(static_cast<unsigned char>(written[0]));
  return is_word ? "words go into the note" : "";
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

struct Blank {  // where the number goes in a pattern: `{}`, or `{:04}` for four digits at least
  std::size_t at;
  std::size_t length;
  std::size_t digits;
};

std::optional<Blank> blank_of(std::string_view pattern) {
  for (std::size_t at = pattern.find('{'); at != std::string_view::npos;
       at = pattern.find('{', at + 1)) {
    const std::string_view from = pattern.substr(at);
    if (from.starts_with("{}")) return Blank{at, 2, 1};
    if (from.size() >= 5 && from.starts_with("{:0") && from[3] >= '1' && from[3] <= '9' &&
        from[4] == '}')
      return Blank{at, 5, static_cast<std::size_t>(from[3] - '0')};
  }
  return std::nullopt;
}

std::optional<std::string> path_of(Page& page, Place place, std::string_view written) {
  if (!is_number(written)) {
    if (is_jpeg(written))
      return stays_inside(page, place, written) ? std::optional(std::string(written))
                                                : std::nullopt;
    page.add({place, "a photo is a number or the path of a JPEG file", std::string(written),
              "14, 14-16, photos/sill.jpg", cure_of(written)});
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
  const Blank blank = *blank_of(page.photos.name);
  const std::string folder = page.photos.folder.empty() ? "" : page.photos.folder + "/";
  return fmt::format("{}{}{:0>{}}{}", folder, page.photos.name.substr(0, blank.at), written,
                     blank.digits, page.photos.name.substr(blank.at + blank.length));
}

// `14-16`: each number from the first to the last.
bool is_range(std::string_view text) {
  const std::size_t dash = text.find('-');
  return dash != std::string_view::npos && is_number(text.substr(0, dash)) &&
         is_number(text.substr(dash + 1));
}

std::vector<std::string> numbers_of(Page& page, Place place, std::string_view range) {
  const std::size_t dash = range.find('-');
  const std::string_view ends[] = {range.substr(0, dash), range.substr(dash + 1)};
  const auto refuse = [&](std::string what, std::string cure) -> std::vector<std::string> {
    page.add({place, std::move(what), std::string(range),
              fmt::format("14-16, up to {} photos", most_photos_of_range), std::move(cure)});
    return {};
  };
  for (const std::string_view end : ends)
    if (end.size() > photo_digits)
      return refuse("a photo's number is too long", fmt::format("{} digits at most", photo_digits));
  const int first = std::stoi(std::string(ends[0])), last = std::stoi(std::string(ends[1]));
  if (last <= first) return refuse("a range of photos goes upward", "write the lower number first");
  if (last - first >= most_photos_of_range)
    return refuse("a range has too many photos", "see to its numbers, or write several ranges");
  std::vector<std::string> numbers;
  for (int number = first; number <= last; ++number)
    numbers.push_back(fmt::format("{:0{}}", number, ends[0].front() == '0' ? ends[0].size() : 1));
  return numbers;
}

void add_photos(Page& page, std::vector<Photo>& photos, Place place, std::string_view written) {
  std::vector<std::string> each{std::string(written)};
  if (is_range(written)) each = numbers_of(page, place, written);
  for (const std::string& one : each) {
    auto path = path_of(page, place, one);
    if (!path) return;  // one problem a range is enough
    photos.push_back({std::move(*path), place});
  }
}

// Numbers, ranges and paths between spaces or commas, numbers between slashes too; what stands
// inside a path is the path's.
std::vector<std::string_view> listed(std::string_view line) {
  std::vector<std::string_view> all;
  for (std::string_view part : between_spaces(line)) {
    const bool last = part.data() + part.size() == line.data() + line.size();
    if (!last && part.size() > 1 && part.ends_with(',')) part.remove_suffix(1);
    if (part.find_first_not_of("0123456789,/-") != std::string_view::npos ||
        !is_digit(part.front())) {
      all.push_back(part);
      continue;
    }
    for (std::size_t start = 0; start <= part.size();) {
      const std::size_t end = std::min(part.find_first_of(",/", start), part.size());
      all.push_back(part.substr(start, end - start));
      start = end + 1;
    }
  }
  return all;
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
    const auto blank = blank_of(pattern);
    if (!blank || blank_of(pattern.substr(blank->at + blank->length)) || !is_jpeg(pattern))
      page.add({name->place,
                "a pattern has {} once, where the number goes, and ends in .jpg or .jpeg", pattern,
                "\"IMG_{}.jpg\", \"IMG_{:04}.jpg\" for IMG_0014.jpg", ""});
    else if (stays_inside(
                 page, name->place,
                 pattern.substr(0, blank->at) + "{}" + pattern.substr(blank->at + blank->length)))
      photos.name = pattern;
  }
  map.finish();
  return photos;
}

std::vector<Photo> read_photos(Page& page, const Node& node) {
  std::vector<Photo> photos;
  if (node.kind != Node::Kind::sequence) {
    if (!scalar(page, node, "photos") || !is_short(page, node, "photos")) return photos;
    for (const std::string_view one : listed(node.text))
      add_photos(page, photos, page.part_of(node, one).place, one);
    return photos;
  }
  for (const Node& item : node.items) {
    const auto one = scalar(page, item, "a photo");
    if (one) add_photos(page, photos, item.place, *one);
  }
  return photos;
}

std::vector<std::string> with_other_zeros(const PhotoFolder& photos, std::string_view path) {
  if (photos.name.empty()) return {};
  const Blank blank = *blank_of(photos.name);
  const std::string folder = photos.folder.empty() ? "" : photos.folder + "/";
  const std::string before = folder + photos.name.substr(0, blank.at);
  const std::string after = photos.name.substr(blank.at + blank.length);
  if (!path.starts_with(before) || !path.ends_with(after) ||
      path.size() < before.size() + after.size())
    return {};
  std::string_view number = path.substr(before.size(), path.size() - before.size() - after.size());
  if (!is_number(number)) return {};
  number.remove_prefix(std::min(number.find_first_not_of('0'), number.size() - 1));
  std::vector<std::string> others;
  for (std::size_t digits = number.size(); digits <= photo_digits; ++digits) {
    std::string other = fmt::format("{}{:0>{}}{}", before, number, digits, after);
    if (other != path) others.push_back(std::move(other));
  }
  return others;
}

}  // namespace tinworm::survey
