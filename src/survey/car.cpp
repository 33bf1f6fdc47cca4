#include "survey/car.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "survey/value.hpp"

namespace tinworm::survey {

using yaml::Node;

Car read_car(Page& page, const Node& node) {
  Car car;
  yaml::MapReader map(node, page.problems, "\"car\"");
  if (const Node* name = map.required("name")) car.name = name_of(page, *name, "the car's name");
  if (const Node* built = map.optional("built")) car.built = year(page, *built, built_range);
  if (const Node* odometer = map.optional("odometer")) {
    car.odometer_km = distance_km(page, *odometer);
    if (car.odometer_km) car.odometer = odometer->text;
  }
  if (const Node* colour = map.optional("colour")) car.colour = name_of(page, *colour, "a colour");
  if (const Node* chassis = map.optional("chassis-number"))
    car.chassis_number = name_of(page, *chassis, "a chassis number");
  if (const Node* engine = map.optional("engine-number"))
    car.engine_number = name_of(page, *engine, "an engine number");
  if (const Node* registration = map.optional("registration"))
    car.registration = name_of(page, *registration, "a registration");
  if (const Node* owner = map.optional("owner"))
    car.owner = name_of(page, *owner, "the owner's name");
  map.finish();
  page.built = car.built;
  return car;
}

namespace {

std::vector<std::string> read_leave(Page& page, const Node& node) {
  std::vector<std::string> leave;
  if (node.kind != Node::Kind::sequence) return {name_of(page, node, "what the owner agreed to")};
  for (const Node& item : node.items)
    leave.push_back(name_of(page, item, "what the owner agreed to"));
  return leave;
}

}  // namespace

Visit read_visit(Page& page, const Node& node) {
  Visit visit;
  yaml::MapReader map(node, page.problems, "\"visit\"");
  if (const Node* day = map.required("date")) {
    page.visited = date(page, *day, "the date of the visit");
    visit.date = page.visited.value_or(PartialDate{});
    if (page.visited && page.built && page.visited->year < *page.built)
      page.add({day->place, "the visit lies before the car was built", day->text,
                fmt::format("from {}", *page.built),
                "one of the two years is wrong: look at `built` too"});
  }
  if (const Node* reason = map.optional("reason"))
    visit.reason = word_of<Reason>(page, *reason, "the reason of a visit");
  if (const Node* by = map.optional("by")) visit.by = name_of(page, *by, "the surveyor's name");
  if (const Node* interest = map.optional("interest"))
    visit.interest = text_of(page, *interest, "the surveyor's interest");
  if (const Node* place = map.optional("place"))
    visit.place = text_of(page, *place, "the place of the visit");
  if (const Node* leave = map.optional("leave")) visit.leave = read_leave(page, *leave);
  if (const Node* weather = map.optional("weather"))
    visit.weather = word_of<Weather>(page, *weather, "the weather");
  map.finish();
  return visit;
}

Kept read_kept(Page& page, const Node& node) {
  Kept kept;
  yaml::MapReader map(node, page.problems, "\"kept\"");
  if (const Node* use = map.optional("use"))
    kept.use = word_of<Use>(page, *use, "how the car is used");
  if (const Node* air = map.optional("air"))
    kept.air = word_of<Air>(page, *air, "the air it is kept in");
  if (const Node* waxed = map.optional("waxed"))
    kept.waxed = past_date(page, *waxed, "the date of waxing");
  map.finish();
  return kept;
}

std::string read_summary(Page& page, const Node& node) {
  const std::string summary = needed_text_of(page, node, "the summary");
  if (characters(summary) > summary_characters)
    page.add({node.place, "the summary is too long for the first page",
              fmt::format("{} characters", characters(summary)),
              fmt::format("{} characters", summary_characters), "shorten it"});
  return summary;
}

std::vector<Tool> read_tools(Page& page, const Node& node) {
  return words_of_list<Tool>(page, node, "a tool");
}

std::map<std::string, std::string> read_fitted(Page& page, const Node& node) {
  std::map<std::string, std::string> fitted;
  const yaml::MapReader map(node, page.problems, "\"fitted\"");
  for (const yaml::Entry& entry : node.entries) {
    const auto choice = scalar(page, entry.value, "what is fitted");
    if (!page.body || !choice) continue;
    std::vector<std::string> names;
    for (const body::Option& option : page.body->options) names.push_back(option.name);
    const body::Option* option = page.body->option(entry.key);
    if (option == nullptr)
      page.add({entry.key_place, "the body has no such option", entry.key,
                fmt::format("{}", fmt::join(names, ", ")), yaml::did_you_mean(entry.key, names)});
    else if (std::ranges::find(option->choices, *choice) == option->choices.end())
      unknown_word(page, entry.value, entry.key, option->choices);
    else
      fitted[entry.key] = *choice;
  }
  return fitted;
}

}  // namespace tinworm::survey
