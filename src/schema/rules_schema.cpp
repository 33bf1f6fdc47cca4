#include "schema/rules_schema.hpp"

#include <fmt/format.h>

#include "rules/rules.hpp"
#include "schema/pattern.hpp"

namespace tinworm::schema {
namespace {

// The pattern of a value that carries its unit; none where there is no unit.
std::string pattern_of(rules::Written written) {
  switch (written) {
    case rules::Written::length:
    case rules::Written::film:
      return pattern::length();
    case rules::Written::share:
      return pattern::share();
    case rules::Written::number:
      break;
  }
  return "";
}

std::string bare_number(const rules::Constant& constant) {
  switch (rules::written(constant)) {
    case rules::Written::length:
    case rules::Written::film:
      return fmt::format(" A number without a unit is in {}.", constant.unit);
    case rules::Written::share:
      return " A number without % is a fraction: .85 is 85 %.";
    case rules::Written::number:
      break;
  }
  return "";
}

Json value_of(const rules::Constant& constant) {
  const double otherwise = rules::value({}, constant);
  const std::string bounds = fmt::format("{} to {}", rules::value_text(constant, constant.low),
                                         rules::value_text(constant, constant.high));
  const std::string source = fmt::format("{}{}{}", rules::word(constant.standing),
                                         constant.source.empty() ? "" : ": ", constant.source);
  const std::string pattern = pattern_of(rules::written(constant));
  Json value = pattern.empty() ? number(constant.low, constant.high)
                               : quantity(constant.low, constant.high, pattern, bounds);
  value["default"] = figure(otherwise);
  return titled(
      constant.key,
      fmt::format("{}: {} unless set ({}). From {}.{}", constant.what,
                  rules::value_text(constant, otherwise), source, bounds, bare_number(constant)),
      value);
}

}  // namespace

Json rules_schema() {
  std::vector<Key> keys = {
      {"rules", titled("rules", "The format: always 1.", {{"const", 1}}), Need::required},
      {"name", titled("name", "What these rules are called where results name them.", name(),
                      {"Stricter for salted roads"})}};
  for (const rules::Constant& constant : rules::constants())
    keys.push_back({constant.key, value_of(constant)});
  Json schema = {{"$schema", dialect}, {"$id", "urn:tinworm:rules:1"}};
  schema.update(titled("rules", "Constants of the method. One that isn't named keeps its default.",
                       map_of(keys)));
  return schema;
}

}  // namespace tinworm::schema
