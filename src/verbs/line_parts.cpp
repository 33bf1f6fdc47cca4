#include "verbs/line_parts.hpp"

#include <charconv>
#include <filesystem>

#include "yaml/characters.hpp"

namespace tinworm::verbs {

int whole_number(const std::string& verb, const std::string& option, const std::string& text,
                 int least, int most, int otherwise) {
  if (text.empty()) return otherwise;
  int value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error == std::errc() && end == text.data() + text.size() && value >= least && value <= most) {
    return value;
  }
  throw CommandError(verb, fmt::format("{} takes a whole number from {} to {}, not \"{}\"", option,
                                       least, most, yaml::shown(text)));
}

void CommonLine::declare(VerbLine& line) {
  line.option("--panels", "DIR", options.panels,
              "a folder of body plans; they come before built-in ones of the same name");
  line.flag("--all", all, "every mistake of a file, not the first 50 alone");
  line.flag("--quiet", options.quiet, "say only what is wrong");
  line.flag("--no-color,--no-colour", options.no_colour,
            "plain letters on a terminal, as NO_COLOR");
}

void CommonLine::declare_rules(VerbLine& line) {
  line.option("--rules", "FILE", options.rules,
              "constants of the method set otherwise; every output names them");
}

void CommonLine::declare_jobs(VerbLine& line) {
  line.option("--jobs", "N", jobs, "surveys at once; all processors unless given");
}

CommonOptions CommonLine::read(const std::string& verb) {
  constexpr int most_jobs = 256;
  options.jobs = static_cast<unsigned>(whole_number(verb, "--jobs", jobs, 1, most_jobs, 0));
  if (all) options.problems = yaml::all_problems;
  return options;
}

void PictureLine::declare(VerbLine& line) {
  line.option("--page", "structure|skin|frame", sheet, "the sheet of an SVG or PNG");
  line.option("--paper", "a4|a3|letter|phone", paper,
              "size of the sheet, a4 unless given; phone: one tall column, SVG or PNG");
  line.option("--width", "PX", width,
              "width of a PNG in pixels; 2400 unless given, 1080 on a phone");
}

void PictureLine::declare_on_paper(VerbLine& line) {
  line.option("--page", "structure|skin|frame", sheet, "the sheet of an SVG or PNG");
  line.option("--paper", "a4|a3|letter", paper, "size of the sheet; a4 unless given");
  line.option("--width", "PX", width, "width of a PNG in pixels; 2400 unless given");
}

PictureOptions PictureLine::read(const std::string& verb, Kind kind) const {
  using scene::Paper;
  using scene::SheetKind;
  PictureOptions options;
  options.sheet = choice<SheetKind>(verb, "--page", sheet,
                                    {{"structure", SheetKind::structure},
                                     {"skin", SheetKind::skin},
                                     {"frame", SheetKind::frame}});
  if (!sheet.empty() && kind == Kind::pdf) {
    throw CommandError(verb, "--page is for SVG and PNG; a PDF has every sheet", "Leave it out.");
  }
  options.phone = paper == "phone";
  if (options.phone && kind == Kind::pdf) {
    throw CommandError(verb, "--paper phone is for SVG and PNG", "A PDF takes a4, a3 or letter.");
  }
  options.paper = choice<Paper>(
      verb, "--paper", paper,
      {{"a4", Paper::a4}, {"a3", Paper::a3}, {"letter", Paper::letter}, {"phone", Paper::a4}});
  constexpr int phone_px = 1080;
  if (options.phone) options.width_px = phone_px;
  if (!width.empty() && kind != Kind::png) {
    throw CommandError(verb, "--width is for PNG; PDF and SVG have no pixels", "Leave it out.");
  }
  constexpr int narrowest_px = 400;
  // A phone's column is some four times as high as wide, and libpng ends at 20 000.
  const int widest_px = options.phone ? 4000 : 10000;
  options.width_px =
      whole_number(verb, "--width", width, narrowest_px, widest_px, options.width_px);
  return options;
}

void require_files(const std::string& verb, const std::vector<std::string>& files) {
  if (!files.empty()) return;
  throw CommandError(verb, "the survey to read is missing",
                     fmt::format("tinworm {} SURVEY.yaml", verb));
}

bool are_many(const std::vector<std::string>& files) {
  std::error_code unknown;  // reading it will tell
  return files.size() > 1 || std::filesystem::is_directory(files.front(), unknown);
}

// `--format` and `--as` mean the same where a verb has both; they must not differ.
std::pair<std::string, std::string> kind_option(const std::string& verb, const std::string& format,
                                                const std::string& as) {
  if (!format.empty() && !as.empty() && format != as) {
    throw CommandError(
        verb, fmt::format("--format {} and --as {} disagree", yaml::shown(format), yaml::shown(as)),
        "Leave one out.");
  }
  return as.empty() ? std::pair(format, "--format") : std::pair(as, "--as");
}

}  // namespace tinworm::verbs
