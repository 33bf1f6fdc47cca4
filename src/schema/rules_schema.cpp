#include "schema/rules_schema.hpp"

#include <fmt/format.h>

#include "rules/rules.hpp"
#include "schema/pattern.hpp"

namespace tinworm::schema {
namespace {

// How a value of that unit is written, and what a number without a unit is.
struct Writing {
  std::string pattern, how;
};

Writing writing(const rules::Constant& constant) {
  if (constant.unit.empty()) return {};
  if (constant.unit == "mm" || constant.unit == "um")
    return {pattern::length(), fmt::format("A number without a unit is in {}.", constant.unit)};
  return {pattern::share(), "Per cent, or a fraction: 85 % is .85."};
}

Json value_of(const rules::Constant& constant, const rules::Rules& standard) {
  const double otherwise = rules::value(standard, constant);
  const Writing writing = schema::writing(constant);
  const std::string unit = constant.unit.empty() ? "" : " " + constant.unit;
  const std::string source = fmt::format("{}{}{}", rules::word(constant.standing),
                                         constant.source.empty() ? "" : ": ", constant.source);
  const std::string description =
      fmt::format("{}. {} unless set ({}). {} to {}{}.{}{}", constant.what,
                  fmt::format("{}{}", otherwise, unit), source, constant.low, constant.high, unit,
                  writing.how.empty() ? "" : " ", writing.how);
  Json value =
      writing.pattern.empty()
          ? number(constant.low, constant.high)
          : quantity(constant.low, constant.high, writing.pattern,
                     fmt::format("a number from {} to {}{}", constant.low, constant.high, unit));
  value["default"] = figure(otherwise);
  return titled(constant.key, description, value);
}

}  // namespace

Json rules_schema() {
  std::vector<Key> keys = {
      {"rules", titled("rules", "The format: always 1.", {{"const", 1}}), Need::required},
      {"name", titled("name", "What these rules are called where results name them.", name(),
                      {"Stricter for salted roads"})}};
  const rules::Rules standard;
  for (const rules::Constant& constant : rules::constants())
    keys.push_back({constant.key, value_of(constant, standard)});
  Json schema = {{"$schema", dialect}, {"$id", "urn:tinworm:rules:1"}};
  schema.update(titled("rules", "Constants of the method. One that isn't named keeps its default.",
                       map_of(keys)));
  return schema;
}

}  // namespace tinworm::schema
