#include "schema/survey_schema.hpp"

#include "body/built_in.hpp"
#include "schema/finding_schema.hpp"
#include "schema/pattern.hpp"
#include "schema/zone_schema.hpp"

namespace tinworm::schema {
namespace {

Json body_plan() {
  std::vector<Json> names;
  for (const body::BuiltIn& plan : body::built_in_plans()) names.push_back(plan.name);
  Json plan = text();
  plan["type"] = "string";
  return titled("body plan",
                "The kind of body, and the version of its plan, as `tinworm bodies` lists them: "
                "two-door-saloon 1. Or the path of a plan's file.",
                plan, names);
}

Json car() {
  return titled("car", "Which car it is.",
                map_of({{"name", titled("name", "What the car is called.", name(), {"Wherry 1200"}),
                         Need::required},
                        {"built", titled("built", "The year in which it was built.",
                                         {{"type", "integer"},
                                          {"minimum", figure(survey::built_range.least)},
                                          {"maximum", figure(survey::built_range.most)}},
                                         {1967})},
                        {"odometer",
                         titled("odometer", "What the odometer shows, with its unit.",
                                matching(pattern::distance(), "a distance with its unit: 61200 mi"),
                                {"61200 mi", "98500 km"})},
                        {"colour", titled("colour", "Of the body.", name(), {"green"})},
                        {"chassis-number", titled("chassis number", "Private.", name())},
                        {"engine-number", titled("engine number", "Private.", name())},
                        {"registration", titled("registration", "Private.", name())},
                        {"owner", titled("owner", "Private.", name())}}));
}

Json visit() {
  const Json agreed = name();
  Json leave = agreed;
  leave["type"] = {"string", "number", "array"};
  leave["items"] = agreed;
  return titled(
      "visit", "This look at the car.",
      map_of(
          {{"date", titled("date", "The day of the visit.", date()), Need::required},
           {"reason", titled("reason", "Why the car was looked at.", words<survey::Reason>())},
           {"by", titled("by", "The surveyor; printed on the owner's papers only, unless signed.",
                         name())},
           {"interest", titled("interest", "Any interest of the surveyor in a sale of this car.",
                               text(), {"none"})},
           {"place", titled("place", "Where it was. Private.", text())},
           {"leave", titled("leave", "What the owner agreed to have lifted, scraped, probed.",
                            leave, {Json::array({"carpets", "underseal", "probe"})})},
           {"weather", titled("weather", "Whether the car was dry.", words<survey::Weather>())}}));
}

Json kept() {
  return titled("kept", "How the car is kept.",
                map_of({{"use", titled("use", "How it is used.", words<survey::Use>())},
                        {"air", titled("air", "How hard on steel the air is, by ISO 9223.",
                                       words<survey::Air>())},
                        {"waxed", titled("waxed", "When its hollows were last waxed.", date())}}));
}

Json gauges() {
  return titled(
      "gauges", "What was measured with.",
      map_of({{"metal",
               titled("metal gauge", "The gauge that read the metal.",
                      map_of({{"name", titled("name",
                                              "What tells it from other gauges, so that "
                                              "years can be compared.",
                                              name(), {"thin probe 2"})},
                              {"uncertainty",
                               titled("uncertainty", "Standard uncertainty of one reading (k = 1).",
                                      length(survey::uncertainty_range), {"0.05 mm"})},
                              {"coating", titled("coating", "What was done about paint under it.",
                                                 words<survey::Coating>())}}))}}));
}

Json photo_folder() {
  Json folder = name();
  folder["pattern"] = pattern::whole(pattern::photo_folder());
  Json pattern = name();
  pattern["type"] = "string";
  pattern["pattern"] = pattern::whole(pattern::photo_name());
  return titled(
      "photos", "With these a photo is just its number.",
      map_of({{"folder", titled("folder", "A folder beside the survey.", folder, {"photos"})},
              {"name", titled("name", "The name of a photo, {} where its number goes.", pattern,
                              {"IMG_{}.jpg"})}}));
}

Json gaps() {
  Json gap = map_of(
      {{"where", titled("where", "Which gap.", name(), {"left door rear edge"}), Need::required},
       {"side", titled("side", "Of the car.", {{"enum", {"left", "right"}}})},
       {"kind", titled("kind", "What was measured; a gap if left out.", words<survey::GapKind>())},
       {"wheels", titled("wheels", "Its width with the car on its wheels.",
                         length(survey::gap_range), {"4.5 mm"})},
       {"lift", titled("lift", "Its width with the car on the lift.", length(survey::gap_range),
                       {"3.0 mm"})}});
  gap["anyOf"] = {{{"required", {"wheels"}}}, {{"required", {"lift"}}}};
  return titled("gaps", "Gaps of doors and lids, the best single sign of a weak middle.",
                list_of(gap));
}

Json also() {
  Json when = date();
  Json words_of_when = words<survey::When>();
  when.erase("description");
  const std::string how = words_of_when["description"];
  const Json driven = matching(pattern::distance(), "");
  return titled(
      "also", "What else the owner must know.",
      list_of(
          map_of({{"what", titled("what", "What it is about.", name(), {"tyres"}), Need::required},
                  {"code", titled("code", "A tyre's date code, in quotes: week, then year.",
                                  matching(pattern::tyre_code(),
                                           "the last three or four digits, in quotes: \"0301\""),
                                  {"0301"})},
                  {"say", titled("say", "What is to be said.", text())},
                  {"when", titled("when",
                                  "When it must be seen to: a date, what the odometer will show "
                                  "(65000 mi), or" +
                                      how,
                                  {{"anyOf",
                                    {{{"enum", words_of_when["enum"]}},
                                     when,
                                     {{"type", "string"}, {"pattern", driven["pattern"]}}}}})}})));
}

Json summary() {
  Json words = text();
  words["maxLength"] = survey::summary_characters;
  return titled("summary", "Your own words for the first page; on the owner's papers only.", words);
}

Json tools() {
  return titled("tools", "What was used.", several_words(words<survey::Tool>()),
                {Json::array({"gauge", "scope", "tap"})});
}

// Which options there are the body plan says; its reader weighs them.
Json fitted() {
  return titled("fitted", "The body plan's options of this car: `tinworm bodies NAME` lists them.",
                {{"type", "object"}, {"additionalProperties", name()}}, {{{"steering", "right"}}});
}

Json opened() {
  Json cut =
      map_of({{"date", titled("date", "Of the cut.", date())},
              {"metal", titled("metal", "Readings at the cut.", lengths(survey::metal_range))},
              {"say", titled("say", "What it showed.", text(), {"membrane gone"})}});
  cut["anyOf"] = {{{"required", {"metal"}}}, {{"required", {"say"}}}};
  const Json places = {{"type", "object"}, {"additionalProperties", cut}};
  return titled("opened", "After work: what the cut showed, by zone and place.",
                {{"type", "object"},
                 {"patternProperties",
                  {{"^" + pattern::zone_number() + "$", places},
                   {"^own-[a-z]$", places},
                   {pattern::whole(pattern::zone_name()), places}}},
                 {"additionalProperties", false}});
}

Json price() {
  const Json money =
      matching(pattern::price(), "a price and its currency in three capitals: 9500 EUR");
  return titled(
      "price", "Private; for the plan of work.",
      map_of({{"asked", titled("asked", "What is asked for the car.", money, {"9500 EUR"})},
              {"sound", titled("sound", "What a sound one is worth.", money, {"14000 EUR"})}}));
}

}  // namespace

Json survey_schema() {
  Json root =
      map_of({{"survey", titled("survey", "The format: always 1.", {{"const", 1}}), Need::required},
              {"body", body_plan(), Need::required},
              {"units", titled("units", "Of lengths without a unit; mm if left out.",
                               {{"enum", {"mm", "inch"}}})},
              {"car", car(), Need::required},
              {"visit", visit(), Need::required},
              {"kept", kept()},
              {"gauges", gauges()},
              {"photos", photo_folder()},
              {"summary", summary()},
              {"tools", tools()},
              {"fitted", fitted()},
              {"gaps", gaps()},
              {"seen", seen()},
              {"zones", zones()},
              {"also", also()},
              {"opened", opened()},
              {"price", price()}});
  Json schema = {{"$schema", dialect}, {"$id", "urn:tinworm:survey:1"}};
  schema.update(
      titled("survey", "One look at one car: rust, depth and repair by zone of the body.", root));
  schema["$defs"] = {{"finding", finding()}, {"repair", repair()}};
  return schema;
}

}  // namespace tinworm::schema
