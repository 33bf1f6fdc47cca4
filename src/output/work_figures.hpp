// Hours and money as they are written for people: no finer than an estimate is.
#pragma once

#include <string>

#include "work/plan.hpp"

namespace tinworm::output {

// To a tenth under 0.75 h, half an hour under 10 h ("4.5"), to the hour from there.
std::string hours_text(double hours);
std::string money_text(double money);  // to 10 under 1000, "380"; to 100 from there, "12 400"

// "3.5–5.5–9", low, likely, high; figures that come out alike are written once.
std::string hours_span(const work::Range& hours);
std::string money_span(const work::Range& money);

// Metres, square metres, kilograms; nothing at all is "0".
std::string figure_span(const work::Range& range, int decimals);

std::string runs(const std::vector<int>& numbers);  // "1, 2, 5–9", of numbers in order

}  // namespace tinworm::output
