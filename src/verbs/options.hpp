// What each verb was asked to do. Plain values: the command line is read into these and nothing
// else knows how they were written.
#pragma once

#include <string>
#include <vector>

#include "quantity/length.hpp"
#include "verbs/destination.hpp"

namespace tinworm::verbs {

struct CommonOptions {
  std::string panels;  // folder of body plans; empty: built-in ones only
  std::string rules;   // file of changed constants; empty: the defaults
  bool quiet = false;
  bool no_colour = false;
  unsigned jobs = 0;  // threads; 0: all processors
};

struct BodiesOptions {
  std::string name;  // empty: list them all
  Destination to;
  CommonOptions common;
};

struct CheckOptions {
  std::vector<std::string> files;
  bool strict = false;  // advice counts as an error
  Destination to;
  CommonOptions common;
};

struct WeighOptions {
  std::vector<std::string> files;
  std::string explain;  // a zone, by number or key; empty: the whole car
  Destination to;
  quantity::Units units = quantity::Units::mm;  // of text
  CommonOptions common;
};

enum class Described { survey, body, rules };

struct SchemaOptions {
  Described of = Described::survey;  // the kind of file
};

enum class Sheet { structure, skin, frame };
enum class Paper { a4, a3, letter };

struct MapOptions {
  std::vector<std::string> files;
  Destination to;
  Sheet sheet = Sheet::structure;  // of SVG and PNG; PDF has all
  Paper paper = Paper::a4;
  int width_px = 2400;  // of PNG
  bool with_private = false;
  bool circles = false;  // of the near radius round mounts
  CommonOptions common;
};

}  // namespace tinworm::verbs
