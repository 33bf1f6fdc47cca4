// What the command lines of several verbs have in common: options that all have, options of those
// that draw, and values that are one of a few words or a whole number.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include <fmt/format.h>

#include "verbs/command_error.hpp"
#include "verbs/options.hpp"
#include "verbs/verb_line.hpp"
#include "yaml/characters.hpp"
#include "yaml/problem.hpp"

namespace tinworm::verbs {

template <class Value>
using Choices = std::vector<std::pair<std::string, Value>>;

// The value that `text` names, the first where it is empty. Throws CommandError with the nearest
// word.
template <class Value>
Value choice(const std::string& verb, const std::string& option, const std::string& text,
             const Choices<Value>& choices) {
  std::vector<std::string> words;
  std::string allowed;
  for (const auto& [word, value] : choices) {
    if (text.empty() || word == text) return value;
    if (!words.empty()) allowed += word == choices.back().first ? " or " : ", ";
    words.push_back(word);
    allowed += word;
  }
  const std::string near = yaml::nearest_word(text, words);
  throw CommandError(verb,
                     fmt::format("{} takes {}, not \"{}\"", option, allowed, yaml::shown(text)),
                     near.empty() ? "" : fmt::format("Did you mean {}?", near));
}

// `otherwise` where `text` is empty. Throws CommandError.
int whole_number(const std::string& verb, const std::string& option, const std::string& text,
                 int least, int most, int otherwise);

// Options that every verb has, and their values still as text.
struct CommonLine {
  CommonOptions options;
  std::string jobs;
  bool all = false;

  void declare(VerbLine& line);
  void declare_rules(VerbLine& line);
  void declare_jobs(VerbLine& line);
  CommonOptions read(const std::string& verb);
};

// Options of every verb that draws.
struct PictureLine {
  std::string sheet, paper, width;

  void declare(VerbLine& line);
  void declare_on_paper(VerbLine& line);  // for pictures without a shape for phones
  bool given() const { return !sheet.empty() || !paper.empty() || !width.empty(); }
  PictureOptions read(const std::string& verb, Kind kind) const;
};

void require_files(const std::string& verb, const std::vector<std::string>& files);

// Several files, or a folder.
bool are_many(const std::vector<std::string>& files);

// `--format` and `--as` mean the same where a verb has both; they must not differ. The value, and
// which option gave it.
std::pair<std::string, std::string> kind_option(const std::string& verb, const std::string& format,
                                                const std::string& as);

}  // namespace tinworm::verbs
