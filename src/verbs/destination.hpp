// Where the output goes and of what kind it is.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace tinworm::verbs {

enum class Kind { text, json, csv, pdf, svg, png };
std::string_view word(Kind kind);  // also the ending of files, but for text: "txt"
bool is_picture(Kind kind);        // pdf, svg, png
std::optional<Kind> kind_of(std::string_view word);

struct Destination {
  std::string path = "-";  // `-` is standard output
  Kind kind = Kind::text;
  bool folder = false;  // one file for each survey goes into `path`
};

// As the command line has it: `-o`, and `--as` or `--format`. Each may be empty.
struct Wanted {
  std::string verb;  // for messages
  std::string path;
  std::string as;             // the value
  std::string as_option;      // which option gave it: "--as", "--format"
  std::vector<Kind> allowed;  // kinds the verb makes; the first where nothing is said
  bool many = false;          // several surveys: pictures go into a folder
};

// Throws CommandError: an ending that tells no kind or one the verb doesn't make, an ending and an
// option that disagree, `-o -` without `--as`.
Destination destination(const Wanted& wanted);

// Of a path: "pdf"; without its dot, in lower case.
std::string ending_of(const std::string& path);

// Whether a path is that of a folder: there is one, or it ends in a slash.
bool names_folder(const std::string& path);

// "pdf, svg or png"
std::string listed(const std::vector<Kind>& kinds);

// Refuses, with CommandError, an output that is one of the inputs, or two outputs that are one
// file.
void keep_apart(const std::string& verb, const std::vector<std::string>& inputs,
                const std::vector<std::string>& outputs);

}  // namespace tinworm::verbs
