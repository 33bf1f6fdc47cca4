// Advice on readings and their gauge: every text word for word, and where it is silent.
#include <gtest/gtest.h>

#include "weighing/advice_case.hpp"

namespace tinworm::weighing {
namespace {

using namespace fixture;
using survey::Hand;
using survey::Rust;
using survey::SeenWord;
using survey::Tap;

TEST(Advice, OnReadings) {
  const auto metal = [](std::vector<double> metal_mm) {
    return spot(11, [=](survey::Spot& spot) { spot.metal_mm = metal_mm; });
  };
  const auto pit = [](double depth_mm, std::optional<Rust> rust) {
    return spot(11, [=](survey::Spot& spot) {
      spot.metal_mm = {.80, .80};
      spot.pit_mm = {.1, depth_mm};
      spot.rust = rust;
    });
  };
  const auto felt = [](double metal_mm, std::optional<Hand> hand, std::optional<Tap> tap) {
    return spot(11, [=](survey::Spot& spot) {
      spot.metal_mm = {metal_mm, metal_mm};
      spot.hand = hand;
      spot.tap = tap;
    });
  };
  expect({
      {"thick-reading",
       "tunnel (11), station: what was measured with 1.40 mm, where the sheet is 1.00 mm? Look for "
       "a plate, a second skin, scale or paint. Over 1.25 times the sheet it isn't one sheet: the "
       "reading isn't used, and the metal beneath isn't known.",
       metal({1.0, 1.4}), metal({1.0, 1.25})},
      {"pit-through",
       "tunnel (11), station: is the pit of 0.80 mm right, in metal of 0.80 mm? If it goes "
       "through, record the hole with its size. A pit through the metal counts as weak, a hole as "
       "no metal at all.",
       pit(.8, Rust::pitting), pit(.7, Rust::pitting)},
      {"pit-through",
       "wing, left (41), lip: is the pit of 1.20 mm right, in metal of 0.90 mm? If it goes "
       "through, record the hole with its size. A pit through the metal counts as weak, a hole as "
       "no metal at all.",
       [](Survey& s) {
         survey::Spot& spot = add_spot(s, 41, "lip", Rust::pitting);
         spot.pits = survey::PitPatches{{50, 50}, {.2, 1.2, .3}};
       },
       pit(1.2, Rust::hole)},
      {"hand-against-gauge",
       "tunnel (11), station: can it be pressed and measured again? It is firm under the thumb, "
       "yet 45 % of its sheet was measured. Metal under half of its sheet is weak; one of the two "
       "was taken beside it.",
       felt(.45, Hand::firm, {}), felt(.55, Hand::firm, {})},
      {"hand-against-gauge",
       "tunnel (11), station: was the gauge held where the metal gives way? It measured 95 % of "
       "the sheet. One place can't do both; the hand counts, and the reading speaks for metal "
       "beside it.",
       felt(.95, Hand::gives, {}), felt(.80, Hand::gives, {})},
      {"hand-against-gauge",
       "tunnel (11), station: was the gauge held where the metal gives way? It measured 95 % of "
       "the sheet. One place can't do both; the hand counts, and the reading speaks for metal "
       "beside it.",
       felt(.95, {}, Tap::crunches), felt(.95, {}, Tap::rings)},
      {"dull-yet-measures",
       "tunnel (11), station: why does it sound dull, yet measure well? Look for filler, a second "
       "skin or wax. A gauge reads one sheet under its probe; a dull note speaks of rust or filler "
       "round it.",
       felt(.98, {}, Tap::dull), felt(.80, {}, Tap::dull)},
      {"wide-readings",
       "tunnel (11), station: is it one sheet, and was it clean? Its readings differ by 0.40 mm. "
       "They are no repeats of one figure, and leave the metal there known only roughly.",
       metal({.5, .9}), metal({.6, .9})},
      {"wide-readings",
       "tunnel (11), reference: is it one sheet, and was it clean? Its readings differ by 0.40 mm. "
       "They are no repeats of one figure, and leave the metal there known only roughly.",
       [](Survey& s) {
         s.zones[11].reference_mm = {.8, 1.2};
       },
       nothing},
      {"same-reading",
       "was the gauge lifted between readings, and does it show hundredths? The same figure stands "
       "for tunnel (11), station, 4 times 0.90 mm. Readings that never differ hide their scatter, "
       "and make a result look surer than it is.",
       metal({.9, .9, .9, .9}), metal({.9, .9, .9})},
      {"same-reading",
       "was the gauge lifted between readings, and does it show hundredths? The same figure stands "
       "for tunnel (11), station, 4 times 0.90 mm. Readings that never differ hide their scatter, "
       "and make a result look surer than it is.",
       metal({.9, .9, .9, .9}), metal({.9, .9, .9, .91})},
      {"plan-sheet-read",
       "were the readings measured, or copied? Each is the body plan's sheet to the last figure. "
       "The plan tells what such a body usually has; only a gauge tells what this car has left.",
       [](Survey& s) {
         for (auto& [number, zone] : s.zones)
           for (survey::Spot& found : zone.found) found.metal_mm = {s.body->zone(number)->sheet_mm};
       },
       metal({1.0, 1.0})},
  });
}

TEST(Advice, OnTheGauge) {
  const auto own_zone = [](std::vector<double> reference_mm) {
    return [=](Survey& s) {
      survey::OwnZone own;
      own.key = "own-a";
      own.name = "tow bracket";
      own.seen.word = SeenWord::bare;
      own.zone.reference_mm = reference_mm;
      own.zone.found = {fixture::spot("end", Rust::none)};
      own.zone.found.front().metal_mm = {3.0, 3.1};
      s.own = {own};
    };
  };
  const auto reference = [](int zone, std::vector<double> metal_mm) {
    return [=](Survey& s) { s.zones[zone].reference_mm = metal_mm; };
  };
  const auto left_on = [](std::vector<double> film_um) {
    return [=](Survey& s) {
      s.gauge.coating = survey::Coating::left_on;
      for (auto& [number, zone] : s.zones) zone.film_um = film_um;
    };
  };
  expect({
      {"no-baseline",
       "what was the sheet of tow bracket (own-a)? Give `reference` readings of sound metal, or "
       "`sheet`. With nothing to hold them against, readings say nothing of loss.",
       own_zone({}), own_zone({3.1})},
      {"assumed-sheet",
       "can sound metal be measured as a `reference` for tunnel (11)? The readings stand against "
       "the body plan's sheet. That sheet is known within 20 % only, and may be another than this "
       "car's.",
       reference(11, {}), reference(51, {})},  // 52 has the same sheet
      {"film-not-read",
       "can the coat be measured or taken off on tunnel (11); outer sill, both sides (51 52); "
       "spring hanger, both sides (61 62)? The gauge read through it, and no film that could be "
       "paint is recorded. As they stand the readings only say that the sheet is no thicker.",
       left_on({}), left_on({150, 160})},
      {"gauge-not-said",
       "how sure is the gauge? Give its standard uncertainty under `gauges: metal: uncertainty`. "
       "Until then 0.05 mm is assumed, and goes into every interval.",
       [](Survey& s) { s.gauge.uncertainty_mm.reset(); },
       [](Survey& s) {
         s.gauge = {};
         forget_readings(s, {11, 51, 52, 61, 62});
       }},
      {"gauge-not-said",
       "was the coat taken off under the gauge? Say so under `gauges: metal: coating`. Until then "
       "bare metal is assumed; paint read with the sheet makes thin metal look thick.",
       [](Survey& s) { s.gauge.coating_assumed = true; }, nothing},
  });
}

}  // namespace
}  // namespace tinworm::weighing
