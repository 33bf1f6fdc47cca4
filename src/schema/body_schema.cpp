#include "schema/body_schema.hpp"

#include <fmt/format.h>

#include "body/fields.hpp"
#include "body/mirror.hpp"
#include "schema/drawing_schema.hpp"
#include "schema/pattern.hpp"

namespace tinworm::schema {
namespace {

using body::Construction;
using body::Side;

Json zone_of(std::string_view description) {
  Json value = matching(pattern::zone_number(), "the number of a zone");
  value.update(zone_number());
  value["type"] = {"integer", "string"};
  return titled("zone", description, value);
}

Json size() {
  const Json length = plan_length(body::size_range_mm.low, body::size_range_mm.high);
  return titled("size", "Of the whole body, mm.",
                map_of({{"length", length, Need::required},
                        {"width", length, Need::required},
                        {"height", length, Need::required},
                        {"wheelbase", length, Need::required}}));
}

Json stations() {
  return titled("stations", "Named places where one measures again years later.",
                {{"type", "object"},
                 {"propertyNames", {{"pattern", "^[^,:]*$"}}},
                 {"additionalProperties", coordinates(3, "[x, y, z] in mm.")}},
                {{{"rear end", {1610, -715, 210}}}});
}

Json area() {
  Json value = matching(pattern::area(), "an area with its unit: 0.31 m2");
  return titled("area", "Developed; the largest outline's if left out.", value, {"0.31 m2"});
}

Json options() {
  Json choices = list_of(plan_text());
  choices["minItems"] = 2;
  return titled("options", "What one car of this body has and another hasn't.",
                {{"type", "object"}, {"additionalProperties", choices}},
                {{{"steering", {"left", "right"}}}});
}

Json openings() {
  const Json opening =
      map_of({{"how", titled("how", "What is done.", plan_text(), {"carpet up"}), Need::required},
              {"minutes",
               titled("minutes", "For one person.",
                      {{"type", "integer"}, {"minimum", 1}, {"maximum", 960}}, {20}),
               Need::required}});
  return titled("openings", "What is lifted or taken off to look behind it, by name.",
                {{"type", "object"}, {"additionalProperties", opening}});
}

Json zone() {
  Json value = map_of(
      {{"name",
        titled("name", "In plain words; the number tells the side.", plan_text(), {"outer sill"}),
        Need::required},
       {"also", titled("also", "The other word for it.", plan_text(), {"rocker"})},
       {"role", titled("role", "What it does for the car.", words(body::role_words())),
        Need::required},
       {"joined", titled("joined", "How it is fixed.", words(body::joined_words())),
        Need::required},
       {"build", titled("build", "What it is made of.", words(body::build_words())),
        Need::required},
       {"runs",
        titled("runs", "The direction in which rust counts most.", words(body::axis_words())),
        Need::required},
       {"job", titled("job", "The kind of part it is to whoever mends it: other-part if left out.",
                      words(body::job_words()))},
       {"sheet",
        titled("sheet", "Thickness of the sheet when new.",
               quantity(body::sheet_range_mm.low, body::sheet_range_mm.high, pattern::sheet(),
                        "a thickness, or a gauge with its scale: 1.1, 20 SWG, 20 US"),
               {1.1, "20 SWG"}),
        Need::required},
       {"area", area()},
       {"drawn", drawn(), Need::required},
       {"span", span()},
       {"stations", stations()},
       {"starts", titled("starts", "Where rust starts, in words.", plan_text(),
                         {"bottom seam and both ends, from inside"})},
       {"hides", titled("hides", "Zones usually worse than this one looks.",
                        list_of(zone_of("One of them.")))},
       {"joins",
        titled("joins", "Zones it is welded or bolted to.", list_of(zone_of("One of them.")))},
       {"open",
        titled("open", "The opening by which one looks behind it.", plan_text(), {"carpet-left"})},
       {"doubler", titled("doubler", "A second sheet that spreads a mount's load.",
                          {{"enum", {true, "true"}}})}});
  value["allOf"] = spans_where_needed();
  return value;
}

// A right-hand zone may mirror its pair, and then has no other key and needs the pair.
Json zones() {
  const auto number_if = [](auto fits) {
    return "^(?:" +
           pattern::digits(2,
                           [&](const std::string& text) {
                             const auto number = body::zone_number(text);
                             return number && fits(*number);
                           }) +
           ")$";
  };
  const auto is_right = [](int number) { return body::side_of(number) == Side::right; };
  const Json ref = {{"$ref", "#/$defs/zone"}};
  Json pairs = Json::object(), needs = Json::object();
  for (int number = 10; number < 100; ++number) {
    if (!body::zone_number(std::to_string(number)) || !is_right(number)) continue;
    const int pair = body::mirrored_number(number);
    const std::string right = std::to_string(number), left = std::to_string(pair);
    pairs[right] = {{"properties", {{"mirror", {{"enum", {pair, left}}}}}}};
    needs[right] = {{"if", {{"properties", {{right, {{"required", {"mirror"}}}}}}}},
                    {"then", {{"required", {left}}}}};
  }
  const Json mirror =
      titled("mirror", "The other side's number: the zone is its mirror image.", Json::object());
  return titled("zones",
                "By number: 10 to 39 on the centre line and singles, front to rear; 41 to 98 "
                "pairs, odd left, the next even right.",
                {{"type", "object"},
                 {"minProperties", 1},
                 {"properties", pairs},
                 {"patternProperties",
                  {{number_if([&](int number) { return !is_right(number); }), ref},
                   {number_if(is_right),
                    {{"if", {{"type", "object"}, {"required", {"mirror"}}}},
                     {"then", map_of({{"mirror", mirror}})},
                     {"else", ref}}}}},
                 {"additionalProperties", false},
                 {"dependentSchemas", needs}});
}

Json mounts() {
  Json mount =
      map_of({{"what", titled("what", "What it is.", plan_text(), {"front spring hanger"}),
               Need::required},
              {"carries", titled("carries", "What holds on to it.", words(body::carries_words())),
               Need::required},
              {"at", coordinates(3, "[x, y, z] in mm."), Need::required},
              {"on", titled("on", "The zones it stands on.", list_of(zone_of("One of them."))),
               Need::required},
              {"into", titled("into", "Zones welded to those, which take its load on.",
                              list_of(zone_of("One of them.")))},
              {"when", condition()},
              {"mirrored",
               titled("mirrored", "The other side has the same.", {{"enum", {true, "true"}}})}});
  mount["if"] = {{"required", {"mirrored"}}};
  mount["then"] = {{"properties", {{"at", {{"prefixItems", {true, {{"not", {{"const", 0}}}}}}}}}}};
  return titled("mounts", "Where suspension, steering, belts and the like hold on.",
                list_of(mount));
}

Json box() {
  const Json at = coordinate();
  Json points = {{"type", "object"},
                 {"maxProperties", body::most_points_of_box},
                 {"propertyNames", {{"pattern", "^[^ ]*$"}}},
                 {"additionalProperties",
                  coordinates(2, "[first, second] in mm, in the plane across the axis.")}};
  Json wall = map_of({{"path",
                       titled("path", "Names of its points, in order.",
                              matching("[^ ]+(?: +[^ ]+)+", "two points or more: a b c")),
                       Need::required},
                      {"zone", zone_of("The zone it is the metal of."), Need::required}});
  return map_of(
      {{"name", titled("name", "Of the box.", plan_text(), {"left sill"}), Need::required},
       {"axis", titled("axis", "The way it runs.", words(body::axis_words())), Need::required},
       {"from", titled("from", "Where it begins, along its axis.", at), Need::required},
       {"to", titled("to", "Where it ends.", at), Need::required},
       {"points", titled("points", "Of its section.", points), Need::required},
       {"walls", titled("walls", "Sheets between the points.", list_of(wall)), Need::required}});
}

Json boxes() {
  const Json mirrored =
      map_of({{"name", titled("name", "Of the box.", plan_text()), Need::required},
              {"mirror", titled("mirror", "The name of the box on the other side.", plan_text()),
               Need::required}});
  Json list = list_of({{"type", "object"},
                       {"if", {{"required", {"mirror"}}}},
                       {"then", mirrored},
                       {"else", box()}});
  list["maxItems"] = body::most_boxes;
  return titled("boxes", "Thin-walled sections that carry load.", list);
}

Json sills() {
  const auto side = [](const char* name) {
    return titled(name, "From the outer wall inwards.", list_of(zone_of("One of them.")));
  };
  return titled("sills", "Zones of the sill below the door openings.",
                map_of({{"left", side("left")}, {"right", side("right")}}));
}

}  // namespace

Json body_schema() {
  Json body_name = matching("[a-z0-9-]+", "lower-case letters and digits joined by hyphens");
  Json root = map_of(
      {{"plan", titled("plan", "The format: always 1.", {{"const", body::format_version}}),
        Need::required},
       {"body",
        titled("body", "The name of the plan and of its file.", body_name, {"two-door-saloon"}),
        Need::required},
       {"version",
        titled("version", "Of this plan: one more whenever zones or stations change.",
               {{"type", "integer"}, {"minimum", 1}, {"maximum", body::highest_version}}),
        Need::required},
       {"title",
        titled("title", "What the body is called.", plan_text(), {"Two-door saloon, unitary body"}),
        Need::required},
       {"construction",
        titled("construction", "What carries the car.", words(body::construction_words())),
        Need::required},
       {"size", size(), Need::required},
       {"lines", lines()},
       {"zones", zones(), Need::required},
       {"mounts", mounts()},
       {"boxes", boxes()},
       {"sills", sills()},
       {"options", options()},
       {"openings", openings()}});
  root["if"] = {{"properties", {{"construction", {{"const", body::word(Construction::unitary)}}}}}};
  root["then"] = without_frame();
  Json schema = {{"$schema", dialect}, {"$id", "urn:tinworm:body:1"}};
  schema.update(titled("body plan", "The drawing and the knowledge of one kind of body.", root));
  schema["$defs"] = {{"zone", zone()}, {"line", line()}};
  return schema;
}

}  // namespace tinworm::schema
