// What each verb was asked to do. Plain values: the command line is read into these and nothing
// else knows how they were written.
#pragma once

#include <string>
#include <vector>

#include "quantity/length.hpp"
#include "scene/sheet.hpp"
#include "verbs/destination.hpp"
#include "yaml/problem.hpp"

namespace tinworm::verbs {

struct CommonOptions {
  std::string panels;  // folder of body plans; empty: built-in ones only
  std::string rules;   // file of changed constants; empty: the defaults
  bool quiet = false;
  bool no_colour = false;
  int problems = yaml::problems_listed;  // of one file at most
  unsigned jobs = 0;                     // threads; 0: all processors
};

struct PictureOptions {
  scene::SheetKind sheet = scene::SheetKind::structure;  // of SVG and PNG; PDF has all
  scene::Paper paper = scene::Paper::a4;
  bool phone = false;   // one tall column for a telephone, SVG or PNG; in place of paper
  int width_px = 2400;  // of PNG
};

struct BodiesOptions {
  std::string name;  // empty: list them all
  Destination to;    // pictures are of the numbered key
  PictureOptions picture;
  CommonOptions common;
};

struct StartOptions {
  std::string body;      // may be empty where `from` is given
  std::string from;      // an earlier survey; or
  std::string from_csv;  // a field sheet; or neither
  bool blank = false;    // a field sheet to fill in, in place of a survey
  std::string car;       // its name; empty: the earlier survey's, or none
  std::string date;      // as typed; empty: today
  quantity::Units units = quantity::Units::mm;
  std::string path = "-";
  CommonOptions common;
};

struct FieldSheetOptions {
  std::string of;  // a body's name, or an earlier survey's file
  Destination to;
  scene::Paper paper = scene::Paper::a4;
  CommonOptions common;
};

struct CheckOptions {
  std::vector<std::string> files;
  std::string before;   // an earlier survey of the one to check; may be empty
  bool strict = false;  // advice counts as an error
  Destination to;
  CommonOptions common;
  std::string matches;  // an output to hold against the one survey; empty: none
  std::string rates;    // file of rates that the output was made by; may be empty
};

struct WeighOptions {
  std::vector<std::string> files;
  std::string explain;  // a zone, by number or key; empty: the whole car
  Destination to;
  quantity::Units units = quantity::Units::mm;  // of text
  CommonOptions common;
};

struct CompareOptions {
  std::vector<std::string> files;  // two or more, or a folder
  Destination to;
  PictureOptions picture;
  quantity::Units units = quantity::Units::mm;  // of text and pictures
  CommonOptions common;
};

struct DueOptions {
  std::vector<std::string> folders;  // or surveys
  Destination to;
  CommonOptions common;
};

enum class Described { survey, body, rules };

struct SchemaOptions {
  Described of = Described::survey;  // the kind of file
};

struct MapOptions {
  std::vector<std::string> files;
  Destination to;
  PictureOptions picture;
  bool with_private = false;
  bool circles = false;  // of the near radius round mounts
  CommonOptions common;
};

struct ReportOptions {
  std::string file;
  std::string rates;                // file of rates; empty: the defaults
  std::vector<std::string> before;  // earlier surveys of the car, or a folder of them
  Destination to;
  scene::Paper paper = scene::Paper::a4;
  quantity::Units units = quantity::Units::mm;
  std::string photos;           // folder that photos are taken from; empty: the survey's own
  bool missing_photos = false;  // a gap where a photo can't be had, not a mistake
  CommonOptions common;
};

struct ListingOptions {
  std::string file;
  Destination to;
  PictureOptions picture;
  bool signed_name = false;
  CommonOptions common;
};

struct WorkOptions {
  std::vector<std::string> files;
  std::string rates;  // file of rates; empty: the defaults
  Destination to;     // a PDF holds one survey's plan
  scene::Paper paper = scene::Paper::a4;
  quantity::Units units = quantity::Units::mm;  // of text and PDF
  CommonOptions common;
};

}  // namespace tinworm::verbs
