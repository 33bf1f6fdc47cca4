#include "survey/reader.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "body/option.hpp"
#include "survey/car.hpp"
#include "survey/page.hpp"
#include "survey/photo.hpp"
#include "survey/quoted_remark.hpp"
#include "survey/remark.hpp"
#include "survey/seen.hpp"
#include "survey/sense.hpp"
#include "survey/value.hpp"
#include "survey/zone.hpp"

namespace tinworm::survey {
namespace {

using yaml::Entry;
using yaml::MapReader;
using yaml::Node;

void check_format(Page& page, const Node& node) {
  if (node.kind == Node::Kind::scalar && !node.quoted && node.text == "1") return;
  page.add({node.place, "the survey is written in a format this reader doesn't know", node.text,
            "survey: 1",
            node.quoted ? "leave out the quotes" : "a newer tinworm may read it; else write 1"});
}

quantity::Units units_of(Page& page, const Node& node) {
  const auto text = scalar(page, node, "units");
  if (!text || *text == "mm") return quantity::Units::mm;
  if (*text == "inch") return quantity::Units::inch;
  unknown_word(page, node, "units", {"mm", "inch"});
  return quantity::Units::mm;
}

std::string read_body(Page& page, const Node& node, const FindBody& find_body) {
  const std::string name = needed_text_of(page, node, "the body plan");
  if (name.empty()) return name;
  auto plan = find_body(name);
  if (plan) {
    page.body = *plan;
    return name;
  }
  yaml::Problem problem = plan.error();
  problem.place = node.place;
  if (problem.found.empty()) problem.found = name;
  page.add(std::move(problem));
  return name;
}

// A zone of the plan: how it was seen is said in one place only.
void add_plan_zone(Page& page, Survey& survey, const Entry& entry) {
  const auto number = zone_number(page, entry.key_place, entry.key);
  ZoneReading read = read_zone(page, entry, number ? plan_zone(page, *number) : nullptr);
  if (!number) return;
  if (read.seen && read.seen->word) {
    const auto [before, is_new] = survey.seen.emplace(*number, *read.seen);
    if (!is_new)
      page.add({read.seen->place, fmt::format("zone {} says twice how it was seen", *number), "",
                "",
                fmt::format("\"seen\" names it on line {}: keep one", before->second.place.line)});
  }
  if (!survey.zones.emplace(*number, std::move(read.zone)).second)
    page.add({entry.key_place, fmt::format("zone {} stands twice", *number), entry.key, "",
              "it may be named and numbered: keep one entry"});
  survey.zone_order.push_back(*number);
}

void read_zones(Page& page, Survey& survey, const Node& node) {
  const MapReader map(node, page.problems, "\"zones\"");  // says so if it is no map
  for (const Entry& entry : node.entries) {
    if (is_own_zone(entry.key))
      survey.own.push_back(read_own_zone(page, entry));
    else if (entry.key.starts_with("own"))
      page.add({entry.key_place, "a zone of the survey's own has a letter", entry.key,
                "own-a to own-z", ""});
    else
      add_plan_zone(page, survey, entry);
  }
}

void check_seen(Page& page, const Survey& survey) {
  for (const auto& [number, zone] : survey.zones) {
    const auto seen = survey.seen.find(number);
    check_findings_were_seen(page, fmt::format("zone {}", number),
                             seen == survey.seen.end() ? Seen{} : seen->second, zone);
  }
  for (const OwnZone& own : survey.own)
    check_findings_were_seen(page, fmt::format("zone {}", own.key), own.seen, own.zone);
}

Survey read_root(Page& page, const Node& root, const FindBody& find_body) {
  Survey survey;
  MapReader map(root, page.problems, "the survey");
  if (const Node* format = map.required("survey")) check_format(page, *format);
  if (const Node* body = map.required("body")) survey.body_text = read_body(page, *body, find_body);
  if (const Node* units = map.optional("units")) page.units = units_of(page, *units);
  if (const Node* car = map.required("car")) survey.car = read_car(page, *car);
  if (const Node* visit = map.required("visit")) survey.visit = read_visit(page, *visit);
  if (const Node* kept = map.optional("kept")) survey.kept = read_kept(page, *kept);
  if (const Node* gauges = map.optional("gauges")) survey.gauge = read_gauges(page, *gauges);
  if (const Node* photos = map.optional("photos")) page.photos = read_photo_folder(page, *photos);
  if (const Node* summary = map.optional("summary")) survey.summary = read_summary(page, *summary);
  if (const Node* tools = map.optional("tools")) survey.tools = read_tools(page, *tools);
  if (const Node* fitted = map.optional("fitted")) survey.fitted = read_fitted(page, *fitted);
  if (const Node* gaps = map.optional("gaps")) survey.gaps = read_gaps(page, *gaps);
  if (const Node* seen = map.may_be_blank("seen")) survey.seen = read_seen(page, *seen);
  if (const Node* zones = map.may_be_blank("zones")) read_zones(page, survey, *zones);
  if (const Node* also = map.optional("also")) survey.also = read_also(page, *also);
  if (const Node* opened = map.optional("opened"))
    survey.opened = read_opened(page, *opened, survey);
  if (const Node* price = map.optional("price")) survey.price = read_price(page, *price);
  map.finish();
  check_seen(page, survey);
  check_sense(page, survey);
  survey.body = page.body ? body::with_options(page.body, survey.fitted) : nullptr;
  survey.units = page.units;
  survey.photos = page.photos;
  return survey;
}

struct Parsed {
  tl::expected<Node, yaml::Problems> root;
  yaml::Problems problems;  // that don't keep it from being read
};

// What is YAML is read as such; lines that are none for their remarks in quotes, as they are meant.
Parsed parsed(std::string_view source) {
  auto root = yaml::parse(source);
  if (root) return {std::move(root), {}};
  Requoted meant = requoted(source);
  auto again = meant.places.empty() ? root : yaml::parse(meant.text);
  if (!again && meant.problems.empty()) return {std::move(again), {}};
  if (!again) return {std::move(root), {}};
  unquote(*again, meant.places);
  return {std::move(again), std::move(meant.problems)};
}

}  // namespace

Reading read_survey(std::string_view yaml, const FindBody& find_body) {
  Parsed read = parsed(yaml);
  if (!read.root) return {std::nullopt, read.root.error()};
  Page page(yaml);
  page.problems = std::move(read.problems);
  Survey survey = read_root(page, *read.root, find_body);
  std::stable_sort(page.problems.begin(), page.problems.end(),
                   [](const auto& a, const auto& b) { return a.place < b.place; });
  if (!page.problems.empty()) return {std::nullopt, std::move(page.problems)};
  return {std::move(survey), {}};
}

}  // namespace tinworm::survey
