#include "survey/remark.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "quantity/figure.hpp"
#include "quantity/tyre.hpp"
#include "survey/free_words.hpp"
#include "survey/seen.hpp"
#include "survey/value.hpp"
#include "survey/zone.hpp"

namespace tinworm::survey {
namespace {

using yaml::Entry;
using yaml::MapReader;
using yaml::Node;

bool is_list(Page& page, const Node& node, std::string_view key) {
  if (node.kind == Node::Kind::sequence) return true;
  page.add({node.place, fmt::format("\"{}\" is a list", key), node.text, "",
            "start each line of it with `- `"});
  return false;
}

std::string tyre_code(Page& page, const Node& node) {
  if (!node.quoted) {
    page.add(
        {node.place, "a tyre date code stands in quotes", node.text, "",
         fmt::format("write code: \"{}\", or other YAML readers take it as a number", node.text)});
    return "";
  }
  const auto made = quantity::parse_tyre_code(node.text);
  if (!made) {
    page.refuse(node, made.error());
    return "";
  }
  if (made->year && page.visited && *made->year > page.visited->year)
    page.add({node.place, "a tyre was not made after the visit", node.text,
              fmt::format("up to {}", page.visited->year),
              "the first two figures are the week, the last two the year"});
  return node.text;
}

std::optional<std::variant<When, PartialDate, Mileage>> when_of(Page& page, const Node& node) {
  const auto text = scalar(page, node, "when");
  if (!text) return std::nullopt;
  if (const auto word = of<When>(*text)) return *word;
  if (quantity::parse_distance_km(*text).has_value()) {
    const auto driven_km = distance_km(page, node);
    if (!driven_km) return std::nullopt;
    return Mileage{*driven_km, std::string(*text)};
  }
  if (!text->empty() && text->front() >= '0' && text->front() <= '9') {
    const auto day = date(page, node, "when");
    if (!day) return std::nullopt;
    return *day;
  }
  page.add({node.place, "unknown word for when", node.text,
            "at-once, before-use, next-survey, a date, 65000 mi",
            yaml::did_you_mean(*text, words<When>())});
  return std::nullopt;
}

// What it is about, by the first of the words that stands in it: "front tyres", "a brake hose".
Matter matter_of(std::string_view what) {
  const std::vector<std::string> spoken = words_in(what);
  for (const std::string& each : spoken)
    for (const std::string& known : words<Matter>()) {
      const bool plural = known.ends_with('s') && known.size() == each.size() + 1;
      if (each == known || (plural && known.starts_with(each))) return *of<Matter>(known);
    }
  return Matter::other;
}

std::optional<Money> money(Page& page, const Node& node) {
  const auto text = unquoted(page, node, money_range.what);
  if (!text) return std::nullopt;
  const auto figure = quantity::leading_figure(*text, *text);
  if (!figure) {
    page.refuse(node, figure.error());
    return std::nullopt;
  }
  const std::string_view currency = figure->rest;
  const bool three_capitals =
      currency.size() == 3 &&
      std::all_of(currency.begin(), currency.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
  if (!three_capitals) {
    page.add({node.place, "a price is a number and its currency in three capitals", node.text,
              "9500 EUR", "ISO 4217 has the letters of each currency"});
    return std::nullopt;
  }
  if (!within(page, node, money_range, figure->value)) return std::nullopt;
  return Money{figure->value, std::string(currency)};
}

std::optional<body::Side> gap_side(Page& page, const Node& node) {
  const auto text = scalar(page, node, "a gap's side");
  if (!text) return std::nullopt;
  for (const body::Side side : {body::Side::left, body::Side::right})
    if (*text == body::word(side)) return side;
  unknown_word(page, node, "a gap's side", {"left", "right"});
  return std::nullopt;
}

Opened read_opening(Page& page, const Entry& entry) {
  Opened opened;
  opened.where = entry.key;
  opened.place = entry.key_place;
  MapReader map(entry.value, page.problems, "what the cut showed");
  if (const Node* day = map.optional("date")) opened.date = date(page, *day, "the date of a cut");
  if (const Node* metal = map.optional("metal"))
    opened.metal_mm = readings_mm(page, *metal, metal_range);
  if (const Node* say = map.optional("say")) opened.say = text_of(page, *say, "what is said");
  if (map.is_map() && !entry.value.find("metal") && !entry.value.find("say"))
    page.add({entry.key_place, "what the cut showed is not said", entry.key,
              "metal: .40, say: membrane gone", "give what was read or seen"});
  map.finish();
  return opened;
}

}  // namespace

MetalGauge read_gauges(Page& page, const Node& node) {
  MetalGauge gauge;
  MapReader gauges(node, page.problems, "\"gauges\"");
  if (const Node* metal = gauges.optional("metal")) {
    MapReader map(*metal, page.problems, "the metal gauge");
    if (const Node* name = map.optional("name"))
      gauge.name = name_of(page, *name, "the name of a gauge");
    if (const Node* uncertainty = map.optional("uncertainty"))
      gauge.uncertainty_mm = length_mm(page, *uncertainty, uncertainty_range);
    if (const Node* coating = map.optional("coating")) {
      gauge.coating = word_of<Coating>(page, *coating, "the coating under the gauge")
                          .value_or(Coating::removed);
      gauge.coating_assumed = false;
    }
    map.finish();
  }
  gauges.finish();
  return gauge;
}

std::vector<Gap> read_gaps(Page& page, const Node& node) {
  std::vector<Gap> gaps;
  if (!is_list(page, node, "gaps")) return gaps;
  for (const Node& item : node.items) {
    Gap gap;
    gap.place = item.place;
    MapReader map(item, page.problems, "a gap");
    if (const Node* where = map.required("where"))
      gap.where = name_of(page, *where, "where a gap is");
    if (const Node* side = map.optional("side")) gap.side = gap_side(page, *side);
    if (const Node* kind = map.optional("kind"))
      gap.kind = word_of<GapKind>(page, *kind, "a kind of gap").value_or(GapKind::gap);
    const Node* wheels = map.optional("wheels");
    const Node* lift = map.optional("lift");
    if (wheels) gap.wheels_mm = length_mm(page, *wheels, gap_range);
    if (lift) gap.lift_mm = length_mm(page, *lift, gap_range);
    if (map.is_map() && !item.find("wheels") && !item.find("lift"))
      page.add({item.place, "a gap has no measure", "", "wheels: 4.5 mm, lift: 3.0 mm",
                "give its width on the wheels, on the lift or both"});
    map.finish();
    gaps.push_back(std::move(gap));
  }
  return gaps;
}

std::vector<Also> read_also(Page& page, const Node& node) {
  std::vector<Also> all;
  if (!is_list(page, node, "also")) return all;
  for (const Node& item : node.items) {
    Also also;
    also.place = item.place;
    MapReader map(item, page.problems, "a line of \"also\"");
    if (const Node* what = map.required("what"))
      also.what = name_of(page, *what, "what it is about");
    also.matter = matter_of(also.what);
    if (const Node* code = map.optional("code"))
      if (scalar(page, *code, "a tyre date code")) also.code = tyre_code(page, *code);
    if (const Node* say = map.optional("say")) also.say = text_of(page, *say, "what is said");
    if (const Node* when = map.optional("when")) also.when = when_of(page, *when);
    map.finish();
    all.push_back(std::move(also));
  }
  return all;
}

std::vector<Opened> read_opened(Page& page, const Node& node, const Survey& survey) {
  std::vector<Opened> all;
  const MapReader zones(node, page.problems, "\"opened\"");
  for (const Entry& zone : node.entries) {
    const bool own = is_own_zone(zone.key);
    const auto number = own ? std::optional(0) : zone_number(page, zone.key_place, zone.key);
    if (!number) continue;
    if (own && !survey.own_zone(zone.key))
      page.add({zone.key_place, "the survey has no such zone of its own", zone.key, "", ""});
    const std::string key = own ? zone.key : std::to_string(*number);
    const MapReader places(zone.value, page.problems, fmt::format("what was opened in {}", key));
    if (!places.is_map()) continue;
    for (const Entry& place : zone.value.entries) {
      all.push_back(read_opening(page, place));
      all.back().zone = *number;
      if (own) all.back().own = zone.key;
    }
  }
  return all;
}

Price read_price(Page& page, const Node& node) {
  Price price;
  MapReader map(node, page.problems, "\"price\"");
  if (const Node* asked = map.optional("asked")) price.asked = money(page, *asked);
  if (const Node* sound = map.optional("sound")) {
    price.sound = money(page, *sound);
    if (price.asked && price.sound && price.asked->currency != price.sound->currency)
      page.add({sound->place, "both prices are in one currency", sound->text, price.asked->currency,
                "reckon one of the two over"});
  }
  map.finish();
  return price;
}

}  // namespace tinworm::survey
