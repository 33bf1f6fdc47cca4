#include "verbs/lines.hpp"

#include <fmt/format.h>

#include "verbs/command_error.hpp"
#include "verbs/line_parts.hpp"
#include "verbs/verb_line.hpp"

namespace tinworm::verbs {

Command parse_map(const Arguments& arguments) {
  MapOptions options;
  CommonLine common;
  PictureLine picture;
  std::string path, as;
  VerbLine line("map",
                "Draws the car's metal. A PDF has every sheet; SVG and PNG hold one, the structure "
                "sheet unless --page says otherwise.",
                "SURVEY…");
  line.option("-o", "FILE", path,
              "where to; the ending tells the kind (.pdf .svg .png). A folder "
              "where there are several surveys");
  line.option("--as", "pdf|svg|png", as, "kind of picture, for -o - and for folders");
  picture.declare(line);
  line.flag("--private", options.with_private,
            "with owner, registration, chassis number and place; a PDF then carries the survey");
  line.flag("--circles", options.circles,
            "with the circles round mounts inside which metal is judged as theirs");
  common.declare_rules(line);
  common.declare(line);
  common.declare_jobs(line);
  line.example("tinworm map wherry-2025.yaml -o wherry.pdf", "every sheet, ready to print");
  line.example("tinworm map wherry-2025.yaml -o wherry.png --page skin", "the outer skin");
  line.example("tinworm map surveys/ -o pictures/ --as svg", "a picture of each survey");
  options.files = line.parse(arguments);
  if (line.help_wanted()) return Shown{line.help()};
  require_files("map", options.files);
  if (path.empty()) {
    throw CommandError("map", "where to draw is missing",
                       fmt::format("tinworm map {} -o map.pdf", options.files.front()));
  }
  options.to = destination(
      {"map", path, as, "--as", {Kind::pdf, Kind::svg, Kind::png}, are_many(options.files)});
  options.picture = picture.read("map", options.to.kind);
  options.common = common.read("map");
  return options;
}

}  // namespace tinworm::verbs
