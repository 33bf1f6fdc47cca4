#include "verbs/command_line.hpp"

#include <algorithm>
#include <charconv>
#include <filesystem>

#include <fmt/format.h>

#include "survey/field_sheet.hpp"
#include "verbs/command_error.hpp"
#include "verbs/verb_line.hpp"
#include "yaml/problem.hpp"

namespace tinworm::verbs {
namespace {

using Arguments = std::vector<std::string>;

template <class Value>
using Choices = std::vector<std::pair<std::string, Value>>;

template <class Value>
Value choice(const std::string& verb, const std::string& option, const std::string& text,
             const Choices<Value>& choices) {
  std::vector<std::string> words;
  std::string allowed;
  for (const auto& [word, value] : choices) {
    if (text.empty() || word == text) return value;  // the first where nothing is said
    if (!words.empty()) allowed += word == choices.back().first ? " or " : ", ";
    words.push_back(word);
    allowed += word;
  }
  const std::string near = yaml::nearest_word(text, words);
  throw CommandError(verb, fmt::format("{} takes {}, not \"{}\"", option, allowed, text),
                     near.empty() ? "" : fmt::format("Did you mean {}?", near));
}

int whole_number(const std::string& verb, const std::string& option, const std::string& text,
                 int least, int most, int otherwise) {
  if (text.empty()) return otherwise;
  int value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error == std::errc() && end == text.data() + text.size() && value >= least && value <= most) {
    return value;
  }
  throw CommandError(verb, fmt::format("{} takes a whole number from {} to {}, not \"{}\"", option,
                                       least, most, text));
}

// Options that every verb has, and their values still as text.
struct CommonLine {
  CommonOptions options;
  std::string jobs;

  void declare(VerbLine& line) {
    line.option("--panels", "DIR", options.panels,
                "a folder of body plans; they come before built-in ones of the same name");
    line.flag("--quiet", options.quiet, "say only what is wrong");
    line.flag("--no-color,--no-colour", options.no_colour,
              "plain letters on a terminal, as NO_COLOR");
  }
  void declare_rules(VerbLine& line) {
    line.option("--rules", "FILE", options.rules,
                "constants of the method set otherwise; every output names them");
  }
  void declare_jobs(VerbLine& line) {
    line.option("--jobs", "N", jobs, "surveys at once; all processors unless given");
  }
  CommonOptions read(const std::string& verb) {
    constexpr int most_jobs = 256;
    options.jobs = static_cast<unsigned>(whole_number(verb, "--jobs", jobs, 1, most_jobs, 0));
    return options;
  }
};

// Options of every verb that draws.
struct PictureLine {
  std::string sheet, paper, width;

  void declare(VerbLine& line) {
    line.option("--page", "structure|skin|frame", sheet, "the sheet of an SVG or PNG");
    line.option("--paper", "a4|a3|letter|phone", paper,
                "size of the sheet, a4 unless given; phone: one tall column, SVG or PNG");
    line.option("--width", "PX", width,
                "width of a PNG in pixels; 2400 unless given, 1080 on a phone");
  }
  bool given() const { return !sheet.empty() || !paper.empty() || !width.empty(); }

  PictureOptions read(const std::string& verb, Kind kind) const {
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
};

void require_files(const std::string& verb, const Arguments& files) {
  if (!files.empty()) return;
  throw CommandError(verb, "the survey to read is missing",
                     fmt::format("tinworm {} SURVEY.yaml", verb));
}

bool are_many(const Arguments& files) {
  std::error_code unknown;  // reading it will tell
  return files.size() > 1 || std::filesystem::is_directory(files.front(), unknown);
}

// `--format` and `--as` mean the same where a verb has both; they must not differ.
std::pair<std::string, std::string> kind_option(const std::string& verb, const std::string& format,
                                                const std::string& as) {
  if (!format.empty() && !as.empty() && format != as) {
    throw CommandError(verb, fmt::format("--format {} and --as {} disagree", format, as),
                       "Leave one out.");
  }
  return as.empty() ? std::pair(format, "--format") : std::pair(as, "--as");
}

Command parse_bodies(const Arguments& arguments) {
  BodiesOptions options;
  CommonLine common;
  PictureLine picture;
  std::string format, as, path;
  VerbLine line(
      "bodies",
      "Lists the body plans; with a name, the zones of one and where rust starts. With -o "
      "it draws the numbered key of that body, with its stations and mounts.",
      "[NAME]");
  line.option("-o", "FILE", path,
              "where to; the ending tells the kind (.txt .json .pdf .svg .png)");
  line.option("--format", "text|json", format, "kind of output; text unless given");
  line.option("--as", "text|json|pdf|svg|png", as, "the same, for -o -");
  picture.declare(line);
  common.declare(line);
  line.example("tinworm bodies", "every body plan, built in");
  line.example("tinworm bodies two-door-saloon", "its zones, what they carry and their sheet");
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

Command parse_start(const Arguments& arguments) {
  StartOptions options;
  CommonLine common;
  std::string path, units;
  VerbLine line("start",
                "Writes a survey to fill in: every zone of a body in the order of a walk round the "
                "car, with where rust starts and what to measure. Never replaces a file.",
                "[BODY]");
  line.option("-o", "FILE", path, "where to; standard output unless given");
  line.option("--from", "SURVEY", options.from,
              "an earlier survey of the car: keeps names, stations, references and repairs, and "
              "shows its readings beside the blanks");
  line.option("--from-csv", "SHEET", options.from_csv,
              "a field sheet typed into a spreadsheet: a row for each place, with headings");
  line.option("--car", "NAME", options.car, "what the car is called");
  line.option("--date", "DATE", options.date, "of the visit: 2025-04-12; today unless given");
  line.option("--units", "mm|inch", units, "of the lengths you will write; mm unless given");
  common.declare(line);
  line.example("tinworm start two-door-saloon --car \"Wherry 1200\" -o wherry.yaml",
               "a new survey");
  line.example("tinworm start --from wherry-2025.yaml -o wherry-2029.yaml", "the same car again");
  line.example("tinworm start two-door-saloon --from-csv sheet.csv -o wherry.yaml",
               "from a spreadsheet; headings: " +
                   fmt::format("{}", fmt::join(survey::sheet_headings(), ", ")));
  const Arguments words = line.parse(arguments);
  if (line.help_wanted()) return Shown{line.help()};
  if (words.size() > 1)
    throw CommandError("start", fmt::format("takes one body, not {}", words.size()));
  if (!words.empty()) options.body = words.front();
  if (!options.from.empty() && !options.from_csv.empty())
    throw CommandError("start", "--from and --from-csv don't go together", "Leave one out.");
  if (options.body.empty() && options.from.empty())
    throw CommandError("start", "the body is missing",
                       "tinworm bodies lists them: tinworm start two-door-saloon -o survey.yaml");
  if (!options.from.empty() && !units.empty())
    throw CommandError("start", "--units doesn't go with --from, which keeps the survey's",
                       "Leave one out.");
  options.units = choice<quantity::Units>(
      "start", "--units", units, {{"mm", quantity::Units::mm}, {"inch", quantity::Units::inch}});
  if (!path.empty()) options.path = path;
  keep_apart("start", {options.from, options.from_csv}, {options.path});
  options.common = common.read("start");
  return options;
}

Command parse_check(const Arguments& arguments) {
  CheckOptions options;
  CommonLine common;
  std::string format;
  VerbLine line("check",
                "Names every mistake in a survey with its place, then asks what a careful surveyor "
                "would ask. Changes nothing.",
                "SURVEY…");
  line.option("--format", "text|json", format, "kind of output; text unless given");
  line.option("--before", "OLD.yaml", options.before,
              "an earlier survey of the same car: asks for its stations too");
  line.option("--matches", "OUTPUT", options.matches,
              "tells whether this PDF, SVG, PNG, JSON or text came from the survey as it stands");
  line.flag("--strict", options.strict, "questions give exit status 1 too");
  common.declare_rules(line);
  common.declare(line);
  common.declare_jobs(line);
  line.example("tinworm check wherry-2025.yaml", "mistakes and questions of one survey");
  line.example("tinworm check surveys/ --strict", "those of every survey in a folder");
  line.example("tinworm check wherry-2025.yaml --before wherry-2022.yaml",
               "and what was named or measured otherwise last time");
  options.files = line.parse(arguments);
  if (line.help_wanted()) return Shown{line.help()};
  require_files("check", options.files);
  if (!options.matches.empty() && are_many(options.files)) {
    throw CommandError("check", "--matches holds one output against one survey",
                       "Name one survey.");
  }
  if (!options.before.empty() && are_many(options.files)) {
    throw CommandError("check", "--before goes with one survey to check, not several",
                       "Check each with its own.");
  }
  options.to = destination({"check", "", format, "--format", {Kind::text, Kind::json}, false});
  options.common = common.read("check");
  return options;
}

Command parse_weigh(const Arguments& arguments) {
  WeighOptions options;
  CommonLine common;
  std::string format, as, path, units;
  VerbLine line("weigh",
                "Says what a survey comes to: the verdict with its reasons, how much the rust "
                "weighs, what was found and what was not seen. One line each for several surveys.",
                "SURVEY…");
  line.option("-o", "FILE", path, "where to; the ending tells the kind (.txt .json .csv)");
  line.option("--format", "text|json|csv", format, "kind of output; text unless given");
  line.option("--as", "text|json|csv", as, "the same, for -o -");
  line.option("--explain", "ZONE", options.explain, "the whole chain for one zone");
  line.option("--units", "mm|inch", units, "of lengths in text; mm unless given");
  common.declare_rules(line);
  common.declare(line);
  common.declare_jobs(line);
  line.example("tinworm weigh wherry-2025.yaml", "the verdict and all that it rests on");
  line.example("tinworm weigh wherry-2025.yaml --explain 51", "from the readings of zone 51 on");
  line.example("tinworm weigh wherry-2025.yaml --rules salted.yaml",
               "by rules of your own, as in: {rules: 1, near-radius: 400 mm}");
  line.example("tinworm weigh surveys/ -o surveys.csv", "a table for a spreadsheet");
  options.files = line.parse(arguments);
  if (line.help_wanted()) return Shown{line.help()};
  require_files("weigh", options.files);
  const auto [kind, option] = kind_option("weigh", format, as);
  options.to = destination(
      {"weigh", path, kind, option, {Kind::text, Kind::json, Kind::csv}, are_many(options.files)});
  if (!options.explain.empty() && options.to.kind != Kind::text) {
    throw CommandError(
        "weigh",
        fmt::format("--explain is text; {} holds every zone as it is", word(options.to.kind)),
        "Leave one out.");
  }
  options.units = choice<quantity::Units>(
      "weigh", "--units", units, {{"mm", quantity::Units::mm}, {"inch", quantity::Units::inch}});
  options.common = common.read("weigh");
  return options;
}

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
            "with owner, registration, chassis number and place");
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

Command parse_schema(const Arguments& arguments) {
  SchemaOptions options;
  VerbLine line(
      "schema",
      "Prints the JSON Schema (draft 2020-12) of a kind of file, so that an editor completes "
      "words and marks mistakes while one writes.",
      "survey|body|rules");
  line.example("tinworm schema survey > survey.schema.json",
               "for a survey's first line, # yaml-language-server: $schema=survey.schema.json");
  const Arguments words = line.parse(arguments);
  if (line.help_wanted()) return Shown{line.help()};
  if (words.size() != 1) {
    throw CommandError("schema", fmt::format("takes one kind of file, not {}", words.size()),
                       "tinworm schema survey, body or rules");
  }
  options.of = choice<Described>(
      "schema", "schema", words.front(),
      {{"survey", Described::survey}, {"body", Described::body}, {"rules", Described::rules}});
  return options;
}

struct Verb {
  std::string name, does;
  Command (*parse)(const Arguments&);
};

const std::vector<Verb>& verbs() {
  static const std::vector<Verb> all = {
      {"bodies", "body plans, and the zones of one", parse_bodies},
      {"start", "a survey to fill in", parse_start},
      {"check", "mistakes in a survey, and questions", parse_check},
      {"weigh", "what a survey comes to, with reasons", parse_weigh},
      {"map", "the diagram, as PDF, SVG or PNG", parse_map},
      {"schema", "what an editor needs to help with a file", parse_schema},
  };
  return all;
}

std::string overview() {
  std::string text =
      "tinworm maps the corrosion of a car from a survey and weighs what it means.\n\n"
      "tinworm VERB FILE… [options]\n\n";
  for (const Verb& verb : verbs()) text += fmt::format("  {:<8}{}\n", verb.name, verb.does);
  return text +
         "\nFor example\n"
         "  tinworm map wherry-2025.yaml -o wherry.pdf\n"
         "\ntinworm VERB --help tells the rest. Exit status: 0 done, 1 mistakes in the survey, "
         "plan\n"
         "or rules, 2 mistakes on the command line, 3 a file could not be read or written.\n";
}

}  // namespace

Command parse_command_line(const std::vector<std::string>& arguments) {
  if (arguments.empty()) throw CommandError("", "a verb is missing", "\n" + overview());
  const std::string& first = arguments.front();
  if (first == "--help" || first == "-h" || first == "help") return Shown{overview()};
  if (first == "--version") return Shown{"tinworm " TINWORM_VERSION "\n"};
  std::vector<std::string> names;
  for (const Verb& verb : verbs()) {
    if (verb.name == first) return verb.parse({arguments.begin() + 1, arguments.end()});
    names.push_back(verb.name);
  }
  if (first.starts_with('-')) {
    throw CommandError("", fmt::format("the verb comes before {}", first),
                       fmt::format("The verbs are {}.", fmt::join(names, ", ")));
  }
  const std::string near = yaml::nearest_word(first, names);
  throw CommandError("", fmt::format("there is no verb \"{}\"", first),
                     near.empty() ? fmt::format("The verbs are {}.", fmt::join(names, ", "))
                                  : fmt::format("Did you mean {}?", near));
}

}  // namespace tinworm::verbs
