// What each word of a body plan means, in a clause: an editor shows it with the word. A survey's
// words bring theirs along: survey/words.hpp.
#pragma once

#include <string_view>

#include "body/plan.hpp"

namespace tinworm::schema {

std::string_view meaning(body::Construction), meaning(body::Role), meaning(body::Joined),
    meaning(body::Build), meaning(body::Carries), meaning(body::Job), meaning(body::Side),
    meaning(body::Weight), meaning(body::View), meaning(body::Layer), meaning(body::Axis);

}  // namespace tinworm::schema
