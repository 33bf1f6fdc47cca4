#include "schema/zone_schema.hpp"

#include <fmt/format.h>

#include "body/fields.hpp"
#include "schema/finding_schema.hpp"
#include "schema/pattern.hpp"
#include "survey/field.hpp"

namespace tinworm::schema {
namespace {

using survey::SeenWord;

constexpr std::string_view zones_how =
    "zones between spaces, a range with a hyphen: 51-58 61; or the name of one";

Json share() {
  return titled("share", "How much of the zone was seen.",
                matching(pattern::share(), "per cent: 60 %"), {"60 %"});
}

Json reason() {
  return titled("reason", "What hid it.", text(), {"carpet glued down"});
}

std::string zones_or_name() {
  return fmt::format("{}|{}", pattern::zones(), pattern::zone_name());
}

Json zone_list() {
  Json one = matching(zones_or_name(), zones_how);
  one.update(zone_number());
  one["type"] = {"integer", "string"};
  Json value = one;
  value["type"] = {"integer", "string", "array"};
  value["items"] = one;
  value["examples"] = {"51-58 61", "left outer sill"};
  return value;
}

// `{71 72: carpet glued down}`
Json zones_with(Json detail) {
  Json zones = {{"type", "object"},
                {"propertyNames", {{"maxLength", survey::text_characters}}},
                {"patternProperties", {{pattern::whole(zones_or_name()), std::move(detail)}}},
                {"additionalProperties", false}};
  return zones;
}

Json seen_in_zone() {
  const std::vector<std::string> words = survey::words<SeenWord>();
  std::vector<std::string_view> alone;
  for (const std::string& each : words)
    if (each != survey::word(SeenWord::part) && each != survey::word(SeenWord::hidden))
      alone.push_back(each);
  const std::string part(survey::word(SeenWord::part)), hidden(survey::word(SeenWord::hidden));
  Json value = map_of({{part, share()}, {hidden, reason()}});
  value["minProperties"] = 1;
  value["maxProperties"] = 1;
  value.update(
      matching(fmt::format("{}[ ,]*|{}[ ,]+{}|{}[ ,]+[^ ,].*", pattern::one_of(alone), part,
                           pattern::share(), hidden),
               "bare, coated, scope, tap or not-fitted; part 60 %; hidden, and what hid it"));
  value["type"] = {"string", "object"};
  return titled("seen", "How this zone was seen, where `seen:` above doesn't name it.", value,
                {"bare", "part 60 %", "hidden, carpet glued down"});
}

std::vector<Key> zone_keys() {
  const auto each = [](std::string_view what) {
    return list_of({{"$ref", fmt::format("#/$defs/{}", what)}});
  };
  std::vector<Key> keys = {{"seen", seen_in_zone()}};
  for (const survey::Field<survey::Zone>& field : survey::zone_fields())
    keys.push_back(key_of(field.facts));
  keys.push_back(
      {"found", titled("found", "One line for each spot where something was found or measured.",
                       each("finding"))});
  keys.push_back({"repairs", titled("repairs", "One line for each repair.", each("repair"))});
  return keys;
}

Json own_zone() {
  std::vector<Key> keys = {
      {"name", titled("name", "What it is called.", name(), {"sunroof tray"}), Need::required},
      {"role", titled("role", "What it does for the car.", words(body::role_words())),
       Need::required},
      {"side", titled("side", "Where it is.", words(body::side_words())), Need::required}};
  keys.push_back(
      {"view", titled("view", "The view that it is drawn in.", words(body::view_words()))});
  keys.push_back({"at", position()});
  keys.push_back({"carries", titled("carries", "What it holds: a mount of its own.",
                                    words(body::carries_words()))});
  for (Key& key : zone_keys()) keys.push_back(std::move(key));
  return titled("zone of the survey's own", "A part that the body plan doesn't know.",
                map_of(keys));
}

}  // namespace

Json seen() {
  std::vector<Key> keys;
  for (const std::string& word : survey::words<SeenWord>()) {
    const SeenWord kind = *survey::of<SeenWord>(word);
    Json value = zone_list();
    if (kind == SeenWord::part) value = zones_with(share());
    if (kind == SeenWord::hidden) value = zones_with(reason());
    const std::string example = kind == SeenWord::part     ? " `{13: 60 %}`"
                                : kind == SeenWord::hidden ? " `{71 72: carpet glued down}`"
                                                           : " `51-58 61`";
    keys.push_back({word, titled(word, fmt::format("Zones {}.{}", meaning(kind), example), value)});
  }
  return titled(
      "seen",
      "How each zone was seen, in ranges. A zone that stands nowhere is not seen, and that "
      "is said.",
      map_of(keys));
}

Json zones() {
  return titled(
      "zones", "What was found, by zone. `tinworm bodies NAME` lists the zones of a body.",
      {{"type", "object"},
       {"patternProperties",
        {{"^" + pattern::zone_number() + "$",
          titled("zone", "What was found in it.", map_of(zone_keys()))},
         {"^own-[a-z]$", own_zone()},
         {pattern::whole(pattern::zone_name()),
          titled("zone", "What was found in the zone of this name.", map_of(zone_keys()))}}},
       {"additionalProperties", false}});
}

}  // namespace tinworm::schema
