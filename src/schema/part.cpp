#include "schema/part.hpp"

#include <cmath>

#include <fmt/format.h>

#include "body/fields.hpp"
#include "quantity/date.hpp"
#include "schema/pattern.hpp"

namespace tinworm::schema {
namespace {

constexpr std::string_view not_blank = "[^ \\t\\n]";
constexpr std::string_view one_line = "^[^\\n]*[^ \\t\\n][^\\n]*$";

Json text_of(std::size_t most_characters, std::string_view pattern) {
  return {{"type", {"string", "number"}}, {"maxLength", most_characters}, {"pattern", pattern}};
}

std::string in_words(const survey::Range& range) {
  return range.unit.empty() ? fmt::format("{} to {}", range.least, range.most)
                            : fmt::format("{} to {} {}", range.least, range.most, range.unit);
}

// A number without a unit is in the survey's, which may be inches: the bounds in mm hold for both
// only upwards of nothing.
Json of_length(const survey::Range& range, const std::string& allowed, std::string_view how) {
  Json value = quantity(range.least, range.most, allowed, how);
  if (range.least > 0) {
    value.erase("minimum");
    value["exclusiveMinimum"] = 0;
  }
  value["description"] =
      fmt::format("{}. A number without a unit is in the survey's units, mm unless it says inch.",
                  in_words(range));
  return value;
}

}  // namespace

Json titled(std::string_view title, std::string_view description, Json value,
            const std::vector<Json>& examples) {
  const std::string how = value.value("description", "");
  const std::string_view between = how.empty() || how.starts_with('\n') ? "" : " ";
  Json all = {{"title", title}, {"description", fmt::format("{}{}{}", description, between, how)}};
  for (auto& [key, part] : value.items())
    if (key != "title" && key != "description") all[key] = std::move(part);
  if (!examples.empty()) all["examples"] = examples;
  return all;
}

Json map_of(const std::vector<Key>& keys) {
  Json properties = Json::object();
  Json required = Json::array();
  for (const Key& key : keys) {
    properties[key.name] = key.value;
    if (key.need == Need::required) required.push_back(key.name);
  }
  Json map = {{"type", "object"}, {"properties", properties}};
  if (!required.empty()) map["required"] = required;
  map["additionalProperties"] = false;
  return map;
}

Json list_of(Json item) {
  return {{"type", "array"}, {"items", std::move(item)}};
}

Json name() {
  return text_of(survey::name_characters, one_line);
}

Json text() {
  return text_of(survey::text_characters, not_blank);
}

Json matching(const std::string& allowed, std::string_view how) {
  return {{"type", "string"},
          {"pattern", pattern::whole(allowed)},
          {"patternErrorMessage", fmt::format("Write {}.", how)}};
}

Json figure(double value) {
  return value == std::floor(value) ? Json(static_cast<long>(value)) : Json(value);
}

Json number(double low, double high) {
  return {{"type", "number"}, {"minimum", figure(low)}, {"maximum", figure(high)}};
}

Json whole_number(int most, const std::function<bool(int)>& is_taken) {
  int low = 0, high = most;
  while (low < high && !is_taken(low)) ++low;
  while (low < high && !is_taken(high)) --high;
  Json value = {{"type", "integer"}, {"minimum", low}, {"maximum", high}};
  for (int number = low; number < high; ++number)
    if (!is_taken(number)) value["not"]["enum"].push_back(number);
  return value;
}

Json quantity(double low, double high, const std::string& allowed, std::string_view how) {
  Json value = matching(allowed, how);
  value.update(number(low, high));
  value["type"] = {"number", "string"};
  return value;
}

Json several(Json quantity) {
  Json list = quantity;
  list["type"] = {"number", "string", "array"};
  list["minItems"] = 1;
  quantity.erase("description");
  list["items"] = std::move(quantity);
  return list;
}

Json length(const survey::Range& range) {
  Json value = of_length(range, pattern::length(), "a length: 4.5, 0.82 mm, 32 thou, 3/64 in");
  value["examples"] = {"4.5 mm", "32 thou", "1.5 in"};
  return value;
}

Json lengths(const survey::Range& range) {
  Json value =
      several(of_length(range, range.of_sheet ? pattern::sheets() : pattern::lengths(),
                        "readings between spaces, one unit for all at the end: .81 .78 mm"));
  value["examples"] = {".81 .78 .84", "32 31 33 thou", 0.81};
  return value;
}

Json films(const survey::Range& range) {
  Json value = several(quantity(range.least, range.most, pattern::films(),
                                "films between spaces, one unit for all at the end: 140 155 um, "
                                "900-1600, over 2000"));
  value["description"] = fmt::format("{}. A number without a unit is in um.", in_words(range));
  value["examples"] = {"140 155 900 um", "over 2000", 120};
  return value;
}

Json size(const survey::Range& range) {
  Json value = of_length(range, pattern::size(), "a size: 180x60, 3\" x 1\", 250 for a length");
  value["examples"] = {"180x60", "300x120 mm", 40};
  return value;
}

Json holes(const survey::Range& range) {
  Json value = of_length(range, pattern::holes(),
                         "a hole: 14x9, 20 across, 20 15 8 for three, 5 holes to 30");
  value["examples"] = {"14x9", "20 15 8", "5 holes to 30"};
  return value;
}

Json date() {
  Json value = matching(pattern::date(), "a date: 2025-04-12, 2025-04 or 2025");
  value.update(whole_number(
      9999, [](int year) { return quantity::parse_date(fmt::format("{:04}", year)).has_value(); }));
  value["type"] = {"integer", "string"};
  value["description"] = "Year, month and day; what isn't known is left out.";
  value["examples"] = {"2025-04-12", "2025-04", 2025};
  return value;
}

Json zone_number() {
  return whole_number(
      99, [](int number) { return body::zone_number(fmt::format("{:02}", number)).has_value(); });
}

Json words(const std::vector<Meaning>& meanings) {
  std::string description;
  Json all = Json::array();
  for (const auto& [word, meaning] : meanings) {
    description += fmt::format("\n- {}: {}", word, meaning);
    all.push_back(word);
  }
  return {{"description", description}, {"enum", all}};
}

Json several_words(Json words) {
  std::vector<std::string> known = words["enum"];
  const std::string one = pattern::one_of({known.begin(), known.end()});
  Json value = matching(one + "(?: +" + one + ")*", "one word, or several between spaces");
  value["type"] = {"string", "array"};
  value["minItems"] = 1;
  value["uniqueItems"] = true;
  value["items"] = {{"enum", known}};
  value["description"] = words["description"];
  return value;
}

}  // namespace tinworm::schema
