#include "verbs/destination.hpp"

#include <algorithm>
#include <filesystem>
#include <set>

#include <fmt/format.h>

#include "quantity/ascii.hpp"
#include "verbs/command_error.hpp"
#include "yaml/characters.hpp"
#include "yaml/problem.hpp"

namespace tinworm::verbs {
namespace {

namespace fs = std::filesystem;

constexpr Kind all_kinds[] = {Kind::text, Kind::json, Kind::csv, Kind::pdf, Kind::svg, Kind::png};

// What the user wrote by hand or took with a camera ends so; empty for all else.
std::string_view kept_by_ending(const std::string& path) {
  const std::string ending = ending_of(path);
  if (ending == "yaml" || ending == "yml") return "surveys and body plans";
  return ending == "jpg" || ending == "jpeg" ? "photos" : "";
}

std::optional<Kind> kind_of_ending(const std::string& path) {
  const std::string ending = ending_of(path);
  if (ending.empty()) return std::nullopt;
  if (ending == "txt") return Kind::text;
  if (ending == "ndjson") return Kind::json;
  return ending == "text" ? std::nullopt : kind_of(ending);
}

void require_made(const Wanted& wanted, Kind kind) {
  if (std::find(wanted.allowed.begin(), wanted.allowed.end(), kind) != wanted.allowed.end()) return;
  throw CommandError(wanted.verb, fmt::format("{} doesn't make {}", wanted.verb, word(kind)),
                     fmt::format("It makes {}.", listed(wanted.allowed)));
}

std::optional<Kind> kind_by_option(const Wanted& wanted) {
  if (wanted.as.empty()) return std::nullopt;
  const std::optional<Kind> kind = kind_of(wanted.as);
  if (kind) return kind;
  std::vector<std::string> words;
  for (const Kind made : wanted.allowed) words.emplace_back(word(made));
  const std::string near = yaml::did_you_mean(wanted.as, words);
  throw CommandError(wanted.verb,
                     fmt::format("{} takes {}, not \"{}\"", wanted.as_option,
                                 listed(wanted.allowed), yaml::shown(wanted.as)),
                     near.empty() ? "" : "D" + near.substr(1));
}

Kind kind_of_file(const Wanted& wanted, std::optional<Kind> by_option) {
  const std::optional<Kind> by_ending = kind_of_ending(wanted.path);
  if (by_ending && by_option && *by_ending != *by_option) {
    throw CommandError(wanted.verb,
                       fmt::format("{} {} and the ending of {} disagree", wanted.as_option,
                                   wanted.as, yaml::shown(wanted.path)),
                       "Leave one out.");
  }
  if (by_ending) return *by_ending;
  if (by_option) return *by_option;
  throw CommandError(
      wanted.verb,
      fmt::format("the ending of \"{}\" doesn't tell what to write", yaml::shown(wanted.path)),
      fmt::format("Name a file that ends in the kind ({}), or add --as.", listed(wanted.allowed)));
}

}  // namespace

std::string_view word(Kind kind) {
  switch (kind) {
    case Kind::text:
      return "text";
    case Kind::json:
      return "json";
    case Kind::csv:
      return "csv";
    case Kind::pdf:
      return "pdf";
    case Kind::svg:
      return "svg";
    case Kind::png:
      break;
  }
  return "png";
}

bool is_picture(Kind kind) {
  return kind == Kind::pdf || kind == Kind::svg || kind == Kind::png;
}

std::optional<Kind> kind_of(std::string_view text) {
  for (const Kind kind : all_kinds) {
    if (word(kind) == text) return kind;
  }
  return std::nullopt;
}

std::string listed(const std::vector<Kind>& kinds) {
  std::string text;
  for (std::size_t i = 0; i < kinds.size(); ++i) {
    if (i > 0) text += i + 1 == kinds.size() ? " or " : ", ";
    text += word(kinds[i]);
  }
  return text;
}

Destination destination(const Wanted& wanted) {
  const std::optional<Kind> by_option = kind_by_option(wanted);
  Destination result;
  result.kind = by_option.value_or(wanted.allowed.front());
  const bool pictures = is_picture(wanted.allowed.front());
  if (const std::string_view kept = kept_by_ending(wanted.path); !kept.empty()) {
    throw CommandError(
        wanted.verb,
        fmt::format("{} ends as {} do; outputs never replace one", yaml::shown(wanted.path), kept),
        fmt::format("Give it an ending of its own ({}).", listed(wanted.allowed)));
  }
  if (wanted.path == "-") {
    if (!by_option) {
      throw CommandError(wanted.verb, "-o - doesn't tell what to write",
                         fmt::format("Add --as {}.", listed(wanted.allowed)));
    }
    if (pictures && wanted.many) {
      throw CommandError(wanted.verb, "several pictures can't all go to standard output",
                         "Name a folder: -o pictures/");
    }
  } else if (!wanted.path.empty()) {
    result.path = wanted.path;
    if (pictures && wanted.many && !names_folder(wanted.path) && kind_of_ending(wanted.path)) {
      throw CommandError(
          wanted.verb,
          fmt::format("several pictures can't all go into {}", yaml::shown(wanted.path)),
          "Name a folder: -o pictures/");
    }
    result.folder = pictures && (wanted.many || names_folder(wanted.path));
    if (!result.folder) result.kind = kind_of_file(wanted, by_option);
  }
  require_made(wanted, result.kind);
  return result;
}

std::string ending_of(const std::string& path) {
  std::string ending = fs::path(path).extension().string();
  if (ending.empty()) return ending;
  return quantity::lower_case(std::string_view(ending).substr(1));
}

bool names_folder(const std::string& path) {
  std::error_code unknown;  // what can't be looked at is no folder yet
  return path.ends_with('/') || fs::is_directory(path, unknown);
}

void keep_apart(const std::string& verb, const std::vector<std::string>& inputs,
                const std::vector<std::string>& outputs) {
  std::set<fs::path> taken;
  for (const std::string& output : outputs) {
    if (output == "-") continue;
    std::error_code unknown;  // an output that isn't there yet is no input
    for (const std::string& input : inputs) {
      if (!fs::is_regular_file(output, unknown) || !fs::equivalent(input, output, unknown))
        continue;
      throw CommandError(
          verb, fmt::format("{} is itself to be read; it is never written", yaml::shown(output)),
          "Give the output another name.");
    }
    if (!taken.insert(fs::path(output).lexically_normal()).second) {
      throw CommandError(
          verb, fmt::format("two surveys would both be written to {}", yaml::shown(output)),
          "Give the surveys different names, or write them one at a time.");
    }
  }
}

}  // namespace tinworm::verbs
