// From files named on a command line to surveys.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "survey/survey.hpp"
#include "verbs/plan_shelf.hpp"

namespace tinworm::verbs {

// Read at most; the YAML reader refuses much less, with a place and a cure.
constexpr std::size_t most_bytes = 16u << 20;

struct Loaded {
  std::string file;    // as named: the survey, or a paper that carries it
  std::string name;    // the survey's own, without folders
  std::string sha256;  // of its bytes
  std::optional<survey::Survey> survey;
  yaml::Problems problems;
  std::string mistakes;  // every problem with its place, those of a bad body plan after them
  std::string text;      // of the survey, for mistakes found later
  std::string place;     // what mistakes in it are told of
};

// Throws output::FileError where the file can't be read, and for a paper that carries no survey.
// What a paper carries beside it is told among the mistakes, and is none.
Loaded load_survey(const std::string& file, PlanShelf& plans);

// The files named, a folder replaced by its *.yaml in order of name. Throws output::FileError for a
// folder without one.
std::vector<std::string> named_files(const std::vector<std::string>& named);

// The files named, a folder replaced by the *.yaml in it and in folders in it, in order of path.
// Throws output::FileError for a folder without one.
std::vector<std::string> files_below(const std::vector<std::string>& named);

// The *.yaml files of a folder in order of name. Throws output::FileError.
std::vector<std::string> yaml_files(const std::string& folder);

}  // namespace tinworm::verbs
