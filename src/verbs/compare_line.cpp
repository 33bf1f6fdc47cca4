#include "verbs/line_parts.hpp"
#include "verbs/lines.hpp"
#include "verbs/verb_line.hpp"

namespace tinworm::verbs {

Command parse_compare(const Arguments& arguments) {
  CompareOptions options;
  CommonLine common;
  PictureLine picture;
  std::string format, as, path, units;
  VerbLine line("compare",
                "Sets surveys of one car side by side, in any order: what got worse and how fast, "
                "what was mended, what can't be seen any more, what to ask, when to look again.",
                "OLD NEW…");
  line.option("-o", "FILE", path,
              "where to; the ending tells the kind (.txt .json .csv .pdf .svg .png)");
  line.option("--format", "text|json|csv", format, "kind of output; text unless given");
  line.option("--as", "text|json|csv|pdf|svg|png", as, "the same, for -o -");
  line.option("--units", "mm|inch", units, "of lengths in text and pictures; mm unless given");
  picture.declare_on_paper(line);
  common.declare_rules(line);
  common.declare(line);
  line.example("tinworm compare wherry-2017.yaml wherry-2025.yaml", "what changed in between");
  line.example("tinworm compare wherry/ -o wherry.pdf", "every survey of a folder, drawn");
  line.example("tinworm compare wherry/ -o wherry.csv", "a row for each zone, spot and year");
  options.files = line.parse(arguments);
  if (line.help_wanted()) return Shown{line.help()};
  if (options.files.empty())
    throw CommandError("compare", "takes two surveys or more of one car",
                       "Name them, or a folder that holds them: tinworm compare OLD.yaml NEW.yaml");
  const auto [kind, option] = kind_option("compare", format, as);
  options.to = destination({"compare",
                            path,
                            kind,
                            option,
                            {Kind::text, Kind::json, Kind::csv, Kind::pdf, Kind::svg, Kind::png},
                            false});
  const bool drawn =
      options.to.kind == Kind::pdf || options.to.kind == Kind::svg || options.to.kind == Kind::png;
  if (!drawn && picture.given())
    throw CommandError("compare", "--page, --paper and --width are for pictures",
                       "Name one with -o: years.pdf, years.svg or years.png.");
  options.picture = picture.read("compare", options.to.kind);
  if (options.picture.phone)
    throw CommandError("compare", "a comparison is drawn on paper",
                       "--paper takes a4, a3 or letter here.");
  options.units = choice<quantity::Units>(
      "compare", "--units", units, {{"mm", quantity::Units::mm}, {"inch", quantity::Units::inch}});
  options.common = common.read("compare");
  return options;
}

}  // namespace tinworm::verbs
