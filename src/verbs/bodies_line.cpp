#include "verbs/lines.hpp"

#include <fmt/format.h>

#include "verbs/command_error.hpp"
#include "verbs/line_parts.hpp"
#include "verbs/verb_line.hpp"

namespace tinworm::verbs {

Command parse_bodies(const Arguments& arguments) {
  BodiesOptions options;
  CommonLine common;
  PictureLine picture;
  std::string format, as, path;
  VerbLine line(
      "bodies",
      "Lists the body plans; with a name, the zones of one, where rust starts and the names of "
      "its stations. With -o it draws the numbered key of that body, with its stations and mounts.",
      "[NAME]");
  line.option("-o", "FILE", path,
              "where to; the ending tells the kind (.txt .json .pdf .svg .png)");
  line.option("--format", "text|json", format, "kind of output; text unless given");
  line.option("--as", "text|json|pdf|svg|png", as, "the same, for -o -");
  picture.declare(line);
  common.declare(line);
  line.example("tinworm bodies", "every body plan, built in");
  line.example("tinworm bodies two-door-saloon", "its zones, their stations, what they carry");
  line.example("tinworm bodies two-door-saloon -o key.pdf", "its key, to take under the car");
  const Arguments words = line.parse(arguments);
  if (line.help_wanted()) return Shown{line.help()};
  if (words.size() > 1) {
    throw CommandError("bodies", fmt::format("takes one body, not {}", words.size()));
  }
  if (!words.empty()) options.name = words.front();
  const auto [kind, option] = kind_option("bodies", format, as);
  options.to = destination({"bodies",
                            path,
                            kind,
                            option,
                            {Kind::text, Kind::json, Kind::pdf, Kind::svg, Kind::png},
                            false});
  const bool drawn = options.to.kind != Kind::text && options.to.kind != Kind::json;
  if (drawn && options.name.empty()) {
    throw CommandError("bodies", "a key is drawn of one body, and none is named",
                       "tinworm bodies lists them.");
  }
  if (!drawn && picture.given()) {
    throw CommandError("bodies", "--page, --paper and --width are for pictures",
                       "Name one with -o: key.pdf, key.svg or key.png.");
  }
  options.picture = picture.read("bodies", options.to.kind);
  if (options.picture.phone) {
    throw CommandError("bodies", "a key is drawn on paper", "--paper takes a4, a3 or letter here.");
  }
  options.common = common.read("bodies");
  return options;
}

}  // namespace tinworm::verbs
