#include "schema/finding_schema.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "schema/pattern.hpp"
#include "survey/field.hpp"

namespace tinworm::schema {
namespace {

using survey::Writing;

constexpr std::string_view finding_how =
    "Parts between commas in any order: the rust, what the hand and a light tap say, a size along "
    "and "
    "across the zone, metal and pit readings, hole, crack, probe, magnet, stuffed, photo, at x y "
    "z; "
    "free words anywhere.";
constexpr std::string_view repair_how =
    "Parts between commas in any order: the kind, the joint, a size, the date, what is beneath, "
    "how it "
    "is now, open-side, layers, sheet, metal readings, photo, at x y z; free words anywhere. A "
    "place "
    "may stand before it with a colon.";

Json pits() {
  return map_of(
      {{"each", titled("each", "Size of one patch.", size(survey::size_range)), Need::required},
       {"deepest", titled("deepest", "One depth a patch.", lengths(survey::pit_range)),
        Need::required}});
}

Json words_of(const survey::FieldFacts& facts) {
  std::vector<Meaning> meanings;
  for (const survey::Term& term : facts.terms) meanings.push_back({term.word, term.meaning});
  return words(meanings);
}

Json inside() {
  const std::string part(survey::word(survey::Inside::part));
  std::vector<std::string_view> alone;
  for (const std::string& each : survey::words<survey::Inside>())
    if (each != part) alone.push_back(each);
  return matching(fmt::format("{}|{}[ ,]+{}", pattern::one_of(alone), part, pattern::share()),
                  "scoped, not-seen or hidden; part 40 %");
}

// Where places are named, their words are the reader's to weigh.
Json drains(const survey::FieldFacts& facts) {
  const Json word = words_of(facts);
  std::vector<std::string_view> known;
  for (const survey::Term& term : facts.terms) known.push_back(term.word);
  const std::string each = fmt::format("[^,]*[^, ] +{0}", pattern::one_of(known));
  Json value = matching(fmt::format("{0}|{1}(?: *, *{1})*", pattern::one_of(known), each),
                        "a word for all, or a place and its word, commas between");
  value["type"] = {"string", "object"};
  value["minProperties"] = 1;
  value["additionalProperties"] = word;
  value["description"] = word["description"];
  return value;
}

Json marks() {
  return {{"type", "object"}, {"minProperties", 1}, {"additionalProperties", text()}};
}

Json value_of(const survey::FieldFacts& facts) {
  switch (facts.writing) {
    case Writing::word:
      return words_of(facts);
    case Writing::words:
      return several_words(words_of(facts));
    case Writing::inside:
      return inside();
    case Writing::drains:
      return drains(facts);
    case Writing::marks:
      return marks();
    case Writing::count:
      return {{"type", "integer"},
              {"minimum", figure(facts.range->least)},
              {"maximum", figure(facts.range->most)}};
    case Writing::readings:
      return lengths(*facts.range);
    case Writing::films:
      return films(*facts.range);
    case Writing::size:
      return size(*facts.range);
    case Writing::holes:
      return holes(*facts.range);
    case Writing::length:
      return length(*facts.range);
    case Writing::sheet:
      return quantity(0, facts.range->most, pattern::sheet(),
                      "a thickness, or a gauge with its scale: 1.1 mm, 20 SWG, 20 US");
    case Writing::date:
      return date();
    case Writing::photos:
      return photos();
    case Writing::position:
      return position();
    case Writing::pits:
      return pits();
    case Writing::text:
      break;
  }
  return text();
}

template <class Of>
std::vector<Key> field_keys(const std::vector<survey::Field<Of>>& fields) {
  std::vector<Key> keys;
  for (const survey::Field<Of>& field : fields) keys.push_back(key_of(field.facts));
  return keys;
}

std::vector<Key> finding_keys() {
  std::vector<Key> keys = field_keys(survey::finding_fields());
  keys.insert(keys.begin(),
              {"spot",
               titled("spot", "A station of the body plan, which places it, or any name.", name(),
                      {"rear end"}),
               Need::required});
  return keys;
}

// Parts between commas: free words may stand among them, in any case, so that no pattern of use can
// tell a part from a remark. The reader does.
Json one_line() {
  Json line = text();
  line["type"] = "string";
  return line;
}

Json has_a_key_of(const std::vector<Key>& keys) {
  Json any = Json::array();
  for (const Key& key : keys) any.push_back({{"required", {key.name}}});
  return any;
}

// A finding written long needs one of the keys that tell something.
Json tells_something() {
  Json any = Json::array();
  for (const survey::Field<survey::Spot>& field : survey::finding_fields())
    if (field.facts.counts == survey::Counts::yes) any.push_back({{"required", {field.facts.key}}});
  return any;
}

}  // namespace

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

Key key_of(const survey::FieldFacts& facts) {
  const std::string key(facts.key);
  if (facts.writing == Writing::photos) return {key, photos()};
  if (facts.writing == Writing::position) return {key, position()};
  std::vector<Json> examples;
  // A length without a unit is a number in YAML.
  for (const std::string_view each : facts.examples)
    examples.push_back(facts.writing == Writing::length || facts.writing == Writing::count
                           ? Json(std::stoi(std::string(each)))
                           : Json(each));
  return {key, titled(facts.key, facts.meaning, value_of(facts), examples)};
}

Json finding() {
  Json written_long = map_of(finding_keys());
  written_long["anyOf"] = tells_something();
  const Json line = one_line();
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
  std::vector<Key> keys = field_keys(survey::repair_fields());
  const auto kind = std::ranges::find(keys, "kind", &Key::name);
  kind->need = Need::required;
  std::rotate(keys.begin(), kind, kind + 1);  // the reader asks for it first
  keys.insert(keys.begin(), {"spot", titled("spot", "Where it is: a station, or any name.", name(),
                                            {"rear end"})});
  const Json named = {{"minProperties", 1},
                      {"maxProperties", 1},
                      {"propertyNames", name()},
                      {"additionalProperties", one_line()}};
  Json value = {{"if", {{"type", "object"}, {"not", {{"anyOf", has_a_key_of(keys)}}}}},
                {"then", named},
                {"else", {{"if", {{"type", "object"}}}, {"then", map_of(keys)}}}};
  value.update(one_line());
  value["type"] = {"string", "object"};
  return titled("repair", repair_how, value,
                {"let-in, seam-weld, 300x120, 2021-05, cut-out, sound",
                 {{"rear end", "let-in, seam-weld, 300x120, sheet 1.2, metal 1.18 1.20"}}});
}

}  // namespace tinworm::schema
