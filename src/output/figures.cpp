#include "output/figures.hpp"

#include <cmath>

#include <fmt/format.h>

namespace tinworm::output {
namespace {

constexpr double mm_per_inch = 25.4;

long whole_percent(double share) {
  return std::lround(100 * share);
}

}  // namespace

double rounded(double value) {
  return std::round(value * 1e6) / 1e6 + 0.0;
}

std::string sheet_text(double mm, quantity::Units units) {
  if (units == quantity::Units::mm) return fmt::format("{:.2f} mm", mm);
  return fmt::format("{:.0f} thou", 1000 * mm / mm_per_inch);
}

std::string distance_text(double mm, quantity::Units units) {
  if (units == quantity::Units::mm) return fmt::format("{:.0f} mm", mm);
  return fmt::format("{:.1f} in", mm / mm_per_inch);
}

std::string percent_text(double share) {
  return fmt::format("{} %", whole_percent(share));
}

std::string percent_span(const weighing::Span& share) {
  return fmt::format("{}–{}–{} %", whole_percent(share.low), whole_percent(share.value),
                     whole_percent(share.high));
}

std::string burden_word(double burden) {
  if (burden <= 0.05) return "next to none";
  if (burden <= 0.20) return "light";
  if (burden <= 0.45) return "considerable";
  return burden <= 0.75 ? "heavy" : "very heavy";
}

}  // namespace tinworm::output
