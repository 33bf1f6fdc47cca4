#include "survey/told.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "survey/inside.hpp"
#include "survey/position.hpp"
#include "survey/written.hpp"

namespace tinworm::survey {
namespace {

class Telling {
 public:
  void add(std::string_view key, std::string label, std::string text) {
    if (!text.empty()) told_.push_back({key, std::move(label), std::move(text)});
  }
  std::vector<Told> take() { return std::move(told_); }

 private:
  std::vector<Told> told_;
};

std::string tools_text(const std::vector<Tool>& tools) {
  std::vector<std::string_view> texts;
  for (const Tool tool : tools) texts.push_back(meaning(tool));
  return fmt::format("{}", fmt::join(texts, ", "));
}

std::string fitted_text(const Survey& survey) {
  std::vector<std::string> texts;
  for (const auto& [option, choice] : survey.fitted)
    texts.push_back(fmt::format("{} {}", option, choice));
  return fmt::format("{}", fmt::join(texts, ", "));
}

std::string gap_kind(const Gap& gap) {
  return gap.kind == GapKind::gap ? "" : fmt::format(" ({})", word(gap.kind));
}

// "middle: dent, filler; rear end: wavy"
std::string shapes_text(const Zone& zone) {
  std::vector<std::string> places;
  for (const Spot& spot : zone.found) {
    std::vector<std::string_view> shapes;
    for (const Shape shape : spot.shapes) shapes.push_back(word(shape));
    if (!shapes.empty())
      places.push_back(fmt::format("{}: {}", spot.name, fmt::join(shapes, ", ")));
  }
  return fmt::format("{}", fmt::join(places, "; "));
}

const When* word_of_when(const Also& item) {
  return item.when ? std::get_if<When>(&*item.when) : nullptr;
}

}  // namespace

std::vector<Told> told_of_car(const Survey& survey, Reader reader) {
  Telling telling;
  telling.add("colour", "Colour", survey.car.colour);
  if (reader == Reader::owner) {
    telling.add("engine-number", "Engine number", survey.car.engine_number);
    telling.add("summary", "In the surveyor's own words", survey.summary);
  }
  if (survey.visit.weather)
    telling.add("weather", "The car was", std::string(word(*survey.visit.weather)));
  telling.add("tools", "Used", tools_text(survey.tools));
  telling.add("fitted", "This car has", fitted_text(survey));
  return telling.take();
}

std::vector<Told> told_of_zone(const Zone& zone) {
  Telling telling;
  telling.add("inside", "Inside", inside_text(zone));
  telling.add("drains", "Drain holes", drains_text(zone));
  telling.add("mark", "To find it again", marks_text(zone.marks));
  telling.add("shape", "Out of shape", shapes_text(zone));
  return telling.take();
}

std::string told_of_own(const OwnZone& own) {
  std::vector<std::string> parts;
  if (own.carries) parts.push_back(fmt::format("carries {}", body::word(*own.carries)));
  if (own.at.known()) parts.push_back("at " + position_text(own.at));
  if (own.view) parts.push_back(fmt::format("seen from the {} view", body::word(*own.view)));
  return fmt::format("{}", fmt::join(parts, ", "));
}

std::string gap_text(const Gap& gap) {
  const std::string side = gap.side ? fmt::format(", {}", body::word(*gap.side)) : "";
  std::vector<std::string> widths;
  if (gap.wheels_mm) widths.push_back(fmt::format("{:g} mm on its wheels", *gap.wheels_mm));
  if (gap.lift_mm) widths.push_back(fmt::format("{:g} mm on the lift", *gap.lift_mm));
  return fmt::format("{}{}{}: {}", gap.where, side, gap_kind(gap), fmt::join(widths, ", "));
}

std::string opened_text(const Opened& cut) {
  std::vector<std::string> parts;
  if (!cut.metal_mm.empty()) parts.push_back(fmt::format("metal {} mm", readings(cut.metal_mm)));
  if (!cut.say.empty()) parts.push_back(cut.say);
  const std::string date = cut.date ? ", " + cut.date->text() : "";
  return fmt::format("{}{}: {}", cut.where, date, fmt::join(parts, "; "));
}

std::string when_word(const Also& item) {
  if (!item.when) return "";
  if (const When* when = word_of_when(item)) return std::string(word(*when));
  if (const auto* mileage = std::get_if<Mileage>(&*item.when)) return mileage->text;
  return std::get<PartialDate>(*item.when).text();
}

std::string when_text(const Also& item) {
  if (!item.when) return "";
  const When* when = word_of_when(item);
  if (!when) return "by " + when_word(item);
  switch (*when) {
    case When::at_once:
      return "at once";
    case When::before_use:
      return "before it is driven";
    case When::next_survey:
      return "at the next survey";
  }
  return "";
}

bool is_at_once(const Also& item) {
  const When* when = word_of_when(item);
  return when && *when == When::at_once;
}

bool is_before_use(const Also& item) {
  const When* when = word_of_when(item);
  return when && *when != When::next_survey;
}

}  // namespace tinworm::survey
