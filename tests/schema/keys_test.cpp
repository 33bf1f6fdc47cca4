// Each map of a schema has the keys that the reader asks for, no more and no fewer: the reader
// names them all where it finds one it doesn't know.
#include <algorithm>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "body/reader.hpp"
#include "rules/rules.hpp"
#include "schema/body_schema.hpp"
#include "schema/rules_schema.hpp"
#include "schema/survey_schema.hpp"
#include "survey/reader.hpp"

namespace tinworm::schema {
namespace {

std::string keys(const Json& schema, const std::string& pointer) {
  std::string all;
  for (const auto& [key, value] : schema.at(Json::json_pointer(pointer + "/properties")).items())
    all += (all.empty() ? "" : ", ") + key;
  return all;
}

std::string words(const Json& schema, const std::string& pointer) {
  std::string all;
  for (const Json& word : schema.at(Json::json_pointer(pointer + "/enum")))
    all += (all.empty() ? "" : ", ") + word.get<std::string>();
  return all;
}

// What the reader says is allowed where it found "zzz".
std::string allowed(const yaml::Problems& problems) {
  const auto unknown = std::find_if(problems.begin(), problems.end(),
                                    [](const yaml::Problem& each) { return each.found == "zzz"; });
  return unknown == problems.end() ? "nothing was found" : unknown->allowed;
}

std::string allowed_in_survey(const std::string& yaml) {
  const auto no_plan = [](std::string_view) -> tl::expected<body::PlanPtr, yaml::Problem> {
    return tl::make_unexpected(yaml::Problem{});
  };
  return allowed(survey::read_survey(yaml, no_plan).problems);
}

// The pointer to the schema of a zone, whose key is a pattern.
std::string zone_pointer(const Json& schema, std::size_t index) {
  const Json& patterns = schema.at(Json::json_pointer("/properties/zones/patternProperties"));
  const std::string pattern = std::next(patterns.items().begin(), static_cast<long>(index)).key();
  return "/properties/zones/patternProperties/" + pattern;
}

TEST(Keys, OfASurveyAreThoseTheReaderAsksFor) {
  const Json schema = survey_schema();
  const struct {
    std::string yaml, pointer;
  } cases[] = {
      {"zzz: 1", ""},
      {"car: {zzz: 1}", "/properties/car"},
      {"visit: {zzz: 1}", "/properties/visit"},
      {"kept: {zzz: 1}", "/properties/kept"},
      {"gauges: {zzz: 1}", "/properties/gauges"},
      {"gauges: {metal: {zzz: 1}}", "/properties/gauges/properties/metal"},
      {"photos: {zzz: 1}", "/properties/photos"},
      {"gaps: [{zzz: 1}]", "/properties/gaps/items"},
      {"seen: {zzz: 1}", "/properties/seen"},
      {"zones: {51: {zzz: 1}}", zone_pointer(schema, 0)},
      {"zones: {51: {seen: {zzz: 1}}}", zone_pointer(schema, 0) + "/properties/seen"},
      {"zones: {own-a: {zzz: 1}}", zone_pointer(schema, 1)},
      {"zones: {51: {found: [{spot: a, zzz: 1}]}}", "/$defs/finding/then"},
      {"zones: {51: {found: [{spot: a, at: {zzz: 1}}]}}", "/$defs/finding/then/properties/at"},
      {"zones: {51: {found: [{spot: a, pits: {zzz: 1}}]}}", "/$defs/finding/then/properties/pits"},
      {"zones: {51: {repairs: [{zzz: 1}]}}", "/$defs/repair/else/then"},
      {"also: [{zzz: 1}]", "/properties/also/items"},
      {"price: {zzz: 1}", "/properties/price"},
  };
  for (const auto& [yaml, pointer] : cases)
    EXPECT_EQ(keys(schema, pointer), allowed_in_survey(yaml)) << yaml;
  EXPECT_EQ(words(schema, "/properties/units"), allowed_in_survey("units: zzz"));
}

TEST(Keys, OfABodyPlanAreThoseTheReaderAsksFor) {
  const Json schema = body_schema();
  const struct {
    std::string yaml, pointer;
  } cases[] = {
      {"zzz: 1", ""},
      {"size: {zzz: 1}", "/properties/size"},
      {"lines: {zzz: 1}", "/properties/lines"},
      {"lines: {right: {zzz: 1}}", "/properties/lines/properties/right"},
      {"lines: {top: [{zzz: 1}]}", "/$defs/line"},
      {"zones: {51: {zzz: 1}}", "/$defs/zone"},
      {"zones: {51: {drawn: {zzz: 1}}}", "/$defs/zone/properties/drawn"},
      {"zones: {51: {drawn: {skin: {zzz: 1}}}}", "/$defs/zone/properties/drawn/properties/skin"},
      {"zones: {51: {drawn: {structure: {zzz: 1}}}}",
       "/$defs/zone/properties/drawn/properties/structure"},
      {"zones: {51: {span: {zzz: 1}}}", "/$defs/zone/properties/span"},
      {"zones: {52: {mirror: 51, zzz: 1}}", zone_pointer(schema, 1) + "/then"},
      {"mounts: [{zzz: 1}]", "/properties/mounts/items"},
      {"boxes: [{zzz: 1}]", "/properties/boxes/items/else"},
      {"boxes: [{name: a, mirror: b, zzz: 1}]", "/properties/boxes/items/then"},
      {"boxes: [{walls: [{zzz: 1}]}]", "/properties/boxes/items/else/properties/walls/items"},
  };
  for (const auto& [yaml, pointer] : cases)
    EXPECT_EQ(keys(schema, pointer), allowed(body::read_plan(yaml).problems)) << yaml;
}

TEST(Keys, OfRulesAreTheConstants) {
  const Json schema = rules_schema();
  std::string all = "rules, name";
  for (const rules::Constant& constant : rules::constants()) {
    all += ", " + constant.key;
    const Json& key = schema["properties"][constant.key];
    EXPECT_EQ(key["minimum"].get<double>(), constant.low) << constant.key;
    EXPECT_EQ(key["maximum"].get<double>(), constant.high) << constant.key;
    EXPECT_EQ(key["default"].get<double>(), rules::value({}, constant)) << constant.key;
  }
  EXPECT_EQ(keys(schema, ""), all);
}

// How many keys of closed maps tell an editor what they are; the others are failures.
int told_in(const Json& part, const std::string& where) {
  int told = 0;
  const bool is_map = part.is_object() && part.value("additionalProperties", Json(true)) == false &&
                      part.contains("properties") && !part.contains("patternProperties");
  if (is_map)
    for (const auto& [key, value] : part["properties"].items()) {
      const bool tells = value.contains("description");
      EXPECT_TRUE(tells) << where << "/" << key;
      told += tells;
    }
  if (part.is_structured())
    for (const auto& [key, value] : part.items()) told += told_in(value, where + "/" + key);
  return told;
}

TEST(Schemas, SayWhatEachKeyIs) {
  EXPECT_GT(told_in(survey_schema(), "survey"), 90);
  EXPECT_GT(told_in(body_schema(), "body"), 60);
  EXPECT_GT(told_in(rules_schema(), "rules"), 90);
}

}  // namespace
}  // namespace tinworm::schema
