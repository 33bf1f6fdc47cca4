#include <fmt/format.h>

#include "verbs/command_error.hpp"
#include "verbs/line_parts.hpp"
#include "verbs/lines.hpp"
#include "verbs/verb_line.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {

Command parse_listing(const Arguments& arguments) {
  ListingOptions options;
  CommonLine common;
  PictureLine picture;
  std::string path, as;
  VerbLine line(
      "listing",
      "Draws what goes with the car when it is sold: how it was looked at, the verdict, "
      "the sheets, repairs, what was not seen. Never owner, registration, chassis number, "
      "place, money, notes or photos. A PDF has every sheet; SVG and PNG hold one, the "
      "structure sheet unless --page says otherwise.",
      "SURVEY");
  line.option("-o", "FILE", path, "where to; the ending tells the kind (.pdf .svg .png)");
  line.option("--as", "pdf|svg|png", as, "kind of picture, for -o -");
  picture.declare(line);
  line.flag("--signed", options.signed_name,
            "with the surveyor's name, and whether any interest in the sale was declared");
  common.declare_rules(line);
  common.declare(line);
  line.example("tinworm listing wherry-2025.yaml -o wherry.pdf", "to print or to send");
  line.example("tinworm listing wherry-2025.yaml --paper phone -o wherry.png",
               "to put beside the pictures of the car");
  const std::vector<std::string> files = line.parse(arguments);
  if (line.help_wanted()) return Shown{line.help()};
  require_files("listing", files);
  if (are_many(files)) {
    throw CommandError("listing", "takes one survey, that of the car for sale",
                       "tinworm listing SURVEY.yaml -o listing.pdf");
  }
  options.file = files.front();
  if (path.empty()) {
    throw CommandError("listing", "where to draw is missing",
                       fmt::format("tinworm listing {} -o listing.pdf", yaml::shown(options.file)));
  }
  options.to = destination({"listing", path, as, "--as", {Kind::pdf, Kind::svg, Kind::png}, false});
  options.picture = picture.read("listing", options.to.kind);
  options.common = common.read("listing");
  return options;
}

}  // namespace tinworm::verbs
