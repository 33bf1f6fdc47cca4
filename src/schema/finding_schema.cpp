#include "schema/finding_schema.hpp"

#include <fmt/format.h>

#include "schema/line.hpp"
#include "schema/pattern.hpp"

namespace tinworm::schema {
namespace {

using survey::Beneath;
using survey::Hand;
using survey::Joint;
using survey::Magnet;
using survey::Now;
using survey::Probe;
using survey::RepairKind;
using survey::Rust;
using survey::Stuffed;
using survey::Tap;

constexpr std::string_view finding_how =
    "Parts between commas in any order: the rust, what the hand and a light tap say, a size along "
    "and "
    "across the zone, metal and pit readings, hole, crack, probe, magnet, stuffed, photo, at x y "
    "z; "
    "free words last.";
constexpr std::string_view repair_how =
    "Parts between commas in any order: the kind, the joint, a size, the date, what is beneath, "
    "how it "
    "is now, photo; free words last.";

const Line& finding_line() {
  static const Line line{{{"rust", survey::words<Rust>(), Alone::yes, Counts::yes},
                          {"hand", survey::words<Hand>(), Alone::yes, Counts::yes},
                          {"tap", survey::words<Tap>(), Alone::yes, Counts::yes},
                          {"probe", survey::words<Probe>(), Alone::no, Counts::yes},
                          {"magnet", survey::words<Magnet>(), Alone::no, Counts::yes},
                          {"stuffed", survey::words<Stuffed>(), Alone::no, Counts::yes},
                          {"metal", {}, Alone::no, Counts::yes, pattern::lengths()},
                          {"pit", {}, Alone::no, Counts::yes, pattern::lengths()},
                          {"size", {}, Alone::yes, Counts::no, pattern::size()},
                          {"hole", {}, Alone::no, Counts::yes, pattern::size()},
                          {"crack", {}, Alone::no, Counts::yes, pattern::length()},
                          {"photo", {}, Alone::no, Counts::no, pattern::photos()},
                          {"at", {}, Alone::no, Counts::no, pattern::position()}}};
  return line;
}

const Line& repair_line() {
  static const Line line{{{"kind", survey::words<RepairKind>(), Alone::yes, Counts::yes},
                          {"joint", survey::words<Joint>(), Alone::yes, Counts::no},
                          {"beneath", survey::words<Beneath>(), Alone::yes, Counts::no},
                          {"now", survey::words<Now>(), Alone::yes, Counts::no},
                          {"size", {}, Alone::yes, Counts::no, pattern::size()},
                          {"date", {}, Alone::yes, Counts::no, pattern::date()},
                          {"photo", {}, Alone::no, Counts::no, pattern::photos()}}};
  return line;
}

Json position() {
  const auto axis = [](std::string_view letter, std::string_view runs) {
    const survey::Range& range = survey::position_range;
    return titled(
        letter, runs,
        quantity(range.least, range.most, pattern::coordinate(), "a place: 1150, -28.5 in"));
  };
  Json value = map_of({{"x", axis("x", "Rearward from the front axle.")},
                       {"y", axis("y", "To the right; the left side is negative.")},
                       {"z", axis("z", "Up from the ground.")}});
  value["minProperties"] = 1;
  value.update(matching(pattern::position(), "an axis and its number: x 1150 z 200"));
  value["type"] = {"object", "string"};
  return titled("where it is", "Not needed where the spot has a station's name.", value,
                {"x 1150 z 200", {{"x", 1150}, {"z", 200}}});
}

Json pits() {
  return titled(
      "pits", "The deepest pit of each of several equal patches, for a statistic of pits.",
      map_of(
          {{"each", titled("each", "Size of one patch.", size(survey::size_range)), Need::required},
           {"deepest", titled("deepest", "One depth a patch.", lengths(survey::pit_range)),
            Need::required}}));
}

std::vector<Key> finding_keys() {
  return {
      {"spot",
       titled("spot", "A station of the body plan, which places it, or any name.", name(),
              {"rear end"}),
       Need::required},
      {"at", position()},
      {"rust", titled("rust", "What is seen.", words<Rust>())},
      {"hand", titled("hand", "What a hard thumb says.", words<Hand>())},
      {"tap", titled("tap", "What a light tap says.", words<Tap>())},
      {"probe", titled("probe", "What a point says, with the owner's leave.", words<Probe>())},
      {"magnet", titled("magnet", "Whether a magnet holds.", words<Magnet>())},
      {"metal", titled("metal", "Thickness of metal left, read at this spot.",
                       lengths(survey::metal_range))},
      {"pit", titled("pit", "Depth of pits from the rusted face around them.",
                     lengths(survey::pit_range), {".31 .25"})},
      {"pits", pits()},
      {"size", titled("size", "Along and across the zone.", size(survey::size_range))},
      {"hole", titled("hole", "Size of the hole.", size(survey::size_range), {"14x9"})},
      {"crack", titled("crack", "Its length.", length(survey::crack_range), {30})},
      {"stuffed", titled("stuffed", "What someone closed the hole with.", words<Stuffed>())},
      {"photo", photos()},
      {"note", titled("note", "Free words.", text())},
  };
}

std::vector<Key> repair_keys() {
  return {
      {"kind", titled("kind", "What was done.", words<RepairKind>()), Need::required},
      {"joint", titled("joint", "How it is joined.", words<Joint>())},
      {"size", titled("size", "Along and across the zone.", size(survey::size_range))},
      {"date", titled("date", "When it was done.", date())},
      {"beneath", titled("beneath", "What became of the rusted metal.", words<Beneath>())},
      {"now", titled("now", "How the repair is today; sound if left out.", words<Now>())},
      {"photo", photos()},
      {"note", titled("note", "Free words.", text())},
  };
}

// A finding written long needs one of the keys that tell something.
Json tells_something() {
  Json any = Json::array();
  for (const Part& part : finding_line().parts)
    if (part.counts == Counts::yes) any.push_back({{"required", {part.name}}});
  any.push_back({{"required", {"pits"}}});
  return any;
}

}  // namespace

Json photos() {
  Json value = matching(pattern::photos(), "numbers of photos, or paths of JPEG files");
  value["type"] = {"integer", "string", "array"};
  value["minimum"] = 0;
  value["maximum"] = std::stoi(std::string(survey::photo_digits, '9'));
  value["items"] = matching(pattern::photo(), "the number of a photo, or the path of a JPEG file");
  value["items"]["type"] = {"integer", "string"};
  return titled("photo", "Numbers, as `photos` has it, or paths inside the survey's folder.", value,
                {"14 15", "details/lip.jpg"});
}

Json finding() {
  Json written_long = map_of(finding_keys());
  written_long["anyOf"] = tells_something();
  Json line = matching(on_one_line(finding_line()),
                       "parts between commas: pitting, firm, 180x60, metal .81 .78");
  line["maxLength"] = survey::text_characters;
  return titled(
      "finding", finding_how,
      {{"type", "object"},
       {"if", {{"required", {"spot"}}}},
       {"then", written_long},
       {"else",
        {{"minProperties", 1},
         {"maxProperties", 1},
         {"propertyNames", name()},
         {"additionalProperties", titled("finding", finding_how, line)}}}},
      {{{"rear end", "pitting, firm, dull, 180x60, metal .81 .78 .84, pit .31, photo 14"}},
       {{"middle", "none, metal .98 1.00"}}});
}

Json repair() {
  Json value = map_of(repair_keys());
  value.update(matching(on_one_line(repair_line()),
                        "parts between commas: let-in, seam-weld, 300x120, 2021-05"));
  value["type"] = {"string", "object"};
  value["maxLength"] = survey::text_characters;
  return titled("repair", repair_how, value,
                {"let-in, seam-weld, 300x120, 2021-05, cut-out, sound"});
}

}  // namespace tinworm::schema
