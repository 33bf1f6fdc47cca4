#include "output/zone_text.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

namespace tinworm::output {

std::string heading(const std::string& text, const TextStyle& style) {
  return style.bold ? "\033[1m" + text + "\033[0m" : text;
}

std::string zone_number(int number, const std::string& own) {
  return number != 0 ? fmt::format("{:02}", number) : own;
}

std::string zone_title(const weighing::Zone& zone) {
  std::string title = zone_number(zone.number, zone.own) + " " + zone.name;
  if (zone.side != body::Side::centre) title += fmt::format(", {}", body::word(zone.side));
  return title;
}

std::string zone_title(const weighing::Result& result, int number, const std::string& own) {
  for (const weighing::Zone& zone : result.zones) {
    if (zone.number == number && (number != 0 || zone.own == own)) return zone_title(zone);
  }
  return zone_number(number, own);
}

std::string step_text(weighing::Step step, weighing::Step mildest, weighing::Step worst) {
  if (mildest == worst) return std::string(word(step));
  std::string span = fmt::format("{} to {}", word(mildest), word(worst));
  if (step == mildest || step == worst) return span;
  return fmt::format("{}, {} likely", span, word(step));
}

std::string evidence_text(weighing::Evidence evidence) {
  return evidence == weighing::Evidence::looked ? "only looked at" : std::string(word(evidence));
}

std::string zone_ranges(std::vector<int> numbers) {
  std::sort(numbers.begin(), numbers.end());
  std::string text;
  for (std::size_t first = 0; first < numbers.size();) {
    std::size_t last = first;
    while (last + 1 < numbers.size() && numbers[last + 1] == numbers[last] + 1) ++last;
    if (last == first + 1) last = first;
    if (!text.empty()) text += ", ";
    text += zone_number(numbers[first], "");
    if (last > first) text += "–" + zone_number(numbers[last], "");
    first = last + 1;
  }
  return text;
}

std::string car_text(const survey::Car& car) {
  std::string text = car.name.empty() ? "Car without a name" : car.name;
  if (car.built) text += fmt::format(", built {}", *car.built);
  if (!car.odometer.empty()) text += ", " + car.odometer;
  return text;
}

}  // namespace tinworm::output
