// What each word of a survey or a body plan means, in a clause: an editor shows it with the word.
#pragma once

#include <string_view>

#include "body/plan.hpp"
#include "quantity/length.hpp"
#include "survey/words.hpp"

namespace tinworm::schema {

std::string_view meaning(survey::Rust), meaning(survey::Hand), meaning(survey::Tap),
    meaning(survey::Probe), meaning(survey::Magnet), meaning(survey::Stuffed),
    meaning(survey::RepairKind), meaning(survey::Joint), meaning(survey::Beneath),
    meaning(survey::Now), meaning(survey::SeenWord), meaning(survey::Drains),
    meaning(survey::Inside), meaning(survey::Reason), meaning(survey::Use), meaning(survey::Air),
    meaning(survey::Coating), meaning(survey::When);

std::string_view meaning(body::Construction), meaning(body::Role), meaning(body::Joined),
    meaning(body::Build), meaning(body::Carries), meaning(body::Side), meaning(body::Weight),
    meaning(body::View), meaning(body::Layer), meaning(body::Axis);

}  // namespace tinworm::schema
