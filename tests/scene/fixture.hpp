// Surveys of the built-in bodies in code, weighed, to be drawn.
#pragma once

#include <memory>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

#include <gtest/gtest.h>

#include "body/built_in.hpp"
#include "body/reader.hpp"
#include "rules/rules.hpp"
#include "scene/diagram.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::scene::fixture {

inline body::PlanPtr plan(std::string_view name = "two-door-saloon") {
  for (const body::BuiltIn& each : body::built_in_plans()) {
    if (each.name != name) continue;
    body::Reading reading = body::read_plan(each.yaml);
    if (!reading.plan) throw std::runtime_error("a built-in plan can't be read");
    return std::make_shared<const body::Plan>(std::move(*reading.plan));
  }
  throw std::runtime_error("no such built-in plan");
}

inline survey::Position at(const body::Station& station) {
  return {station.at.x_mm, station.at.y_mm, station.at.z_mm};
}

// Every zone seen bare and nothing found.
inline survey::Survey clean_survey(body::PlanPtr body) {
  survey::Survey survey;
  survey.body = body;
  survey.car.name = "Wherry 1200";
  survey.car.built = 1967;
  survey.car.owner = "Owner Private";
  survey.car.registration = "PRIVATE 1";
  survey.car.chassis_number = "W12-PRIVATE";
  survey.visit.place = "Private Lane";
  survey.visit.by = "S. Urveyor";
  survey.visit.date = {2025, 4, 12};
  survey.price.asked = survey::Money{9512, "EUR"};
  for (const body::Zone& zone : body->zones) {
    survey.seen[zone.number].word = survey::SeenWord::bare;
    survey.zone_order.push_back(zone.number);
    if (zone.build == body::Build::box || zone.build == body::Build::layered) {
      survey.zones[zone.number].inside = survey::Inside::scoped;
    }
  }
  return survey;
}

inline survey::Spot spot(std::string name, survey::Rust rust, survey::Position position,
                         survey::Size size) {
  survey::Spot found;
  found.name = std::move(name);
  found.rust = rust;
  found.at = position;
  found.size = size;
  found.note = "a private note";
  return found;
}

// Something on every third zone that has a station, without a place on every sixth; every seventh
// zone hidden, every eleventh seen in part; a repair of each kind; all by the order of the zones,
// so that it serves every body.
inline survey::Survey busy_survey(body::PlanPtr body) {
  using survey::Rust;
  survey::Survey survey = clean_survey(body);
  const Rust words[] = {Rust::surface, Rust::pitting, Rust::scale, Rust::hole, Rust::seam};
  int index = 0, found = 0, repairs = 0;
  for (const body::Zone& zone : body->zones) {
    ++index;
    if (index % 7 == 0) {
      survey.seen[zone.number] = {survey::SeenWord::hidden, 0, "carpet glued down", {}};
      survey.zones.erase(zone.number);
      continue;
    }
    if (index % 11 == 0) survey.seen[zone.number] = {survey::SeenWord::part, 0.6, "", {}};
    if (index % 3 == 0 && !zone.stations.empty()) {
      const body::Station& station = zone.stations.front();
      const auto position = index % 6 == 0 ? survey::Position{} : at(station);
      survey::Spot each = spot(station.name, words[found % 5], position, {160, 70});
      if (found % 4 == 1) each.hand = survey::Hand::gives;
      survey.zones[zone.number].found.push_back(each);
      ++found;
    }
    if (index % 13 == 0) {
      survey::Repair repair;
      repair.kind = survey::RepairKind::let_in;
      if (repairs % 3 != 1) repair.joint = survey::Joint::seam_weld;
      if (repairs % 3 == 2) repair.now = survey::Now::rusting;
      repair.note = "a private note";
      survey.zones[zone.number].repairs.push_back(repair);
      ++repairs;
    }
  }
  return survey;
}

inline weighing::Result weighed(const survey::Survey& survey) {
  weighing::Result result = weighing::weigh(survey, rules::Rules{});
  result.sha256 = "3f9a0c1be27d4415a8c03f9a0c1be27d4415a8c03f9a0c1be27d4415a8c03f9a";
  return result;
}

// Letters of one width, a little wider than DejaVu Sans has on average.
inline Extent measured(std::string_view text, Font font, double size_pt) {
  int letters = 0;
  for (const char byte : text) letters += (static_cast<unsigned char>(byte) & 0xC0) != 0x80;
  const double em = size_pt * mm_per_pt;
  return {letters * em * (font == Font::bold ? 0.69 : 0.62), 0.93 * em, 0.24 * em};
}

inline std::vector<Page> drawn(const weighing::Result& result, const DiagramOptions& options = {}) {
  return diagram(result, options, measured);
}

inline std::string said(const Page& page, Says says) {
  std::string all;
  for (const Text* text : texts(page)) {
    if (text->says == says) all += (all.empty() ? "" : " ") + text->text;
  }
  return all;
}

inline std::string all_said(const std::vector<Page>& pages) {
  std::string all;
  for (const Page& page : pages) {
    for (const Text* text : texts(page)) all += text->text + "\n";
  }
  return all;
}

inline const Layer* layer(const Page& page, std::string_view name) {
  for (const Layer& each : page.layers) {
    if (each.name == name) return &each;
  }
  return nullptr;
}

}  // namespace tinworm::scene::fixture
