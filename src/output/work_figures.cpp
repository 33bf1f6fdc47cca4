#include "output/work_figures.hpp"

#include <cmath>

#include <fmt/format.h>

namespace tinworm::output {
namespace {

std::string grouped(long long value) {
  std::string digits = fmt::format("{}", std::llabs(value));
  for (std::ptrdiff_t at = std::ssize(digits) - 3; at > 0; at -= 3)
    digits.insert(static_cast<std::size_t>(at), " ");
  return value < 0 ? "-" + digits : digits;
}

template <class Write>
std::string span(const work::Range& range, Write write) {
  const std::string low = write(range.low), likely = write(range.likely), high = write(range.high);
  if (low == high) return low;
  return fmt::format("{}–{}–{}", low, likely, high);
}

}  // namespace

std::string hours_text(double hours) {
  constexpr double whole_from = 9.75;  // 9.5 is the last half
  constexpr double fine_below = 0.75;  // sums of short tasks would not be seen to add up
  if (hours >= whole_from) return grouped(std::llround(hours));
  if (hours < fine_below) return fmt::format("{:.1g}", std::round(10 * hours) / 10 + 0.0);
  return fmt::format("{:.3g}", std::round(2 * hours) / 2 + 0.0);
}

std::string money_text(double money) {
  constexpr double coarse_from = 995;  // 990 is the last of tens
  const double step = std::abs(money) < coarse_from ? 10 : 100;
  return grouped(std::llround(money / step) * std::llround(step));
}

std::string hours_span(const work::Range& hours) {
  return span(hours, hours_text);
}

std::string money_span(const work::Range& money) {
  return span(money, money_text);
}

std::string figure_span(const work::Range& range, int decimals) {
  return span(range, [&](double value) {
    return value == 0 ? std::string("0") : fmt::format("{:.{}f}", value, decimals);
  });
}

std::string runs(const std::vector<int>& numbers) {
  std::string text;
  for (std::size_t first = 0; first < numbers.size();) {
    std::size_t last = first;
    while (last + 1 < numbers.size() && numbers[last + 1] == numbers[last] + 1) ++last;
    if (last == first + 1) last = first;
    if (!text.empty()) text += ", ";
    text += fmt::format("{}", numbers[first]);
    if (last > first) text += fmt::format("–{}", numbers[last]);
    first = last + 1;
  }
  return text;
}

}  // namespace tinworm::output
