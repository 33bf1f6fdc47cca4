// Options and openings of a body plan, and what belongs to one choice of an option.
#pragma once

#include <string_view>
#include <vector>

#include "body/fields.hpp"

namespace tinworm::body {

// `options: {steering: [left, right]}`; two choices at least.
std::vector<Option> read_options(Context& context, const yaml::Node* node);

// `openings: {carpet-left: {how: carpet up, minutes: 20}}`
std::vector<Opening> read_openings(Context& context, const yaml::Node* node);

// `when: {steering: right}`; whether the plan has that option is the checker's to find.
std::optional<Condition> condition(Context& context, const yaml::Node* node, std::string_view what);

}  // namespace tinworm::body
