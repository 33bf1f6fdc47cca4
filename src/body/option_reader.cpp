#include "body/option_reader.hpp"

#include <algorithm>

namespace tinworm::body {
namespace {

constexpr int longest_opening_minutes = 960;  // two days: more is no opening but work

}  // namespace

std::vector<Option> read_options(Context& context, const yaml::Node* node) {
  std::vector<Option> options;
  if (!node) return options;
  const yaml::MapReader map(*node, context.problems, "`options`");
  if (!map.is_map()) return options;
  for (const yaml::Entry& entry : node->entries) {
    const auto what = fmt::format("the option {}", entry.key);
    Option option{entry.key, {}};
    for (const yaml::Node& item : items(context, &entry.value, what))
      option.choices.push_back(text(context, &item, fmt::format("a choice of {}", what)));
    if (entry.value.kind == yaml::Node::Kind::sequence && option.choices.size() < 2)
      context.refuse({entry.key_place, fmt::format("{} leaves no choice", what), "",
                      "steering: [left, right]", "list two choices at least"});
    options.push_back(std::move(option));
  }
  return options;
}

std::vector<Opening> read_openings(Context& context, const yaml::Node* node) {
  std::vector<Opening> openings;
  if (!node) return openings;
  const yaml::MapReader map(*node, context.problems, "`openings`");
  if (!map.is_map()) return openings;
  for (const yaml::Entry& entry : node->entries) {
    const auto what = fmt::format("the opening {}", entry.key);
    yaml::MapReader opening(entry.value, context.problems, what);
    const auto how = text(context, opening.required("how"), "how " + what + " is made");
    const int minutes = whole_number(context, opening.required("minutes"), "the minutes of " + what,
                                     1, longest_opening_minutes);
    opening.finish();
    openings.push_back({entry.key, how, static_cast<double>(minutes), entry.key_place});
  }
  return openings;
}

std::optional<Condition> condition(Context& context, const yaml::Node* node,
                                   std::string_view what) {
  if (!node) return {};
  const yaml::MapReader map(*node, context.problems, std::string(what));
  if (!map.is_map()) return {};
  if (node->entries.size() != 1) {
    context.refuse({node->place, fmt::format("{} names one option and one choice", what), "",
                    "when: {steering: right}", ""});
    return {};
  }
  const yaml::Entry& only = node->entries.front();
  return Condition{only.key, text(context, &only.value, what), only.key_place};
}

}  // namespace tinworm::body
