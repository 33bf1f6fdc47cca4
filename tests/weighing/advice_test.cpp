// Advice on what was seen and how it is ordered: every text word for word, and where it is silent.
#include <gtest/gtest.h>

#include <set>
#include <string_view>

#include "weighing/advice_case.hpp"

namespace tinworm::weighing {
namespace {

using namespace fixture;
using survey::Drains;
using survey::Hand;
using survey::Inside;
using survey::Rust;
using survey::SeenWord;
using survey::Tap;

TEST(Advice, AThoroughSurveyRaisesNone) {
  for (const Advice& each : weigh(thorough(), {}).advice) ADD_FAILURE() << text(each);
}

TEST(Advice, OnWhatWasSeenAndMeasured) {
  expect({
      {"nothing-measured",
       "was nothing measured? Not one reading of the main structure is recorded; begin with the "
       "stations of sills, legs and hangers. Load-bearing metal is to keep 85 % of its sheet, "
       "which neither eye nor hand can tell.",
       [](Survey& s) {
         forget_readings(s, {11, 51, 52, 61, 62});
       },
       [](Survey& s) {
         forget_readings(s, {11, 51, 52, 61});
       }},
      {"few-readings",
       "can more be measured? Of the main structure 4 readings are recorded. Load-bearing metal is "
       "to keep 85 % of its sheet, which neither eye nor hand can tell.",
       [](Survey& s) {
         forget_readings(s, {51, 52, 61});
       },
       [](Survey& s) {
         forget_readings(s, {51, 52, 61});
         s.zones[11].found.front().metal_mm = {1.0, 1.0, 1.01};
       }},
      {"few-readings",
       "can more be measured? Of the main structure 1 reading is recorded. Load-bearing metal is "
       "to keep 85 % of its sheet, which neither eye nor hand can tell.",
       [](Survey& s) {
         forget_readings(s, {11, 51, 52, 61});
         s.zones[62].found.front().metal_mm = {2};
       },
       [](Survey& s) {
         forget_readings(s, {11, 51, 52, 61, 62});
       }},  // nothing-measured says it
      {"coverage",
       "can more of the main structure be seen? 47 % of its area was, and 80 % is the least to "
       "judge by; the largest that wasn't: tunnel (11); outer sill, left (51). What wasn't seen is "
       "not known and never counts as sound: until then the verdict stays open.",
       [](Survey& s) {
         s.seen[51] = {SeenWord::hidden, 0, "mud"};
         s.seen[11] = {SeenWord::part, .3};
       },
       [](Survey& s) {
         s.seen[61] = {SeenWord::hidden, 0, "mud"};
       }},
      {"mount-not-measured",
       "can a reading be taken on spring hanger, left (61)? What stands there: front spring "
       "hanger. Weak metal under such a mounting decides whether the car may be driven, and no "
       "figure says how much is left.",
       [](Survey& s) { forget_readings(s, {61}); },
       [](Survey& s) {
         forget_readings(s, {61});
         add_spot(s, 61, "eye", Rust::scale).hand = Hand::gives;  // the verdict has it
       }},
      {"mount-not-measured",
       "can a reading be taken on spring hanger, both sides (61 62)? What stands there: front "
       "spring hanger; bump stop. Weak metal under such a mounting decides whether the car may be "
       "driven, and no figure says how much is left.",
       [](Survey& s) {
         change_plan(s, [](body::Plan& plan) {
           plan.mounts.push_back(
               fixture::mount("bump stop", body::Carries::suspension, {1500, 600, 300}, {62}));
           plan.mounts.push_back(
               fixture::mount("jack", body::Carries::jack, {1500, 600, 300}, {62}));
         });
         forget_readings(s, {61, 62});
       },
       [](Survey& s) {
         s.seen[61] = {SeenWord::hidden, 0, "mud"};
       }},
      {"inside-not-seen",
       "can a scope be led into outer sill, both sides (51 52)? Outside nothing worse than a film "
       "of rust was found; inside nobody looked. Boxes and layers rust from inside, and metal can "
       "be gone behind a sound face.",
       [](Survey& s) {
         s.zones[51].inside = Inside::not_seen;
         s.zones[52].inside = std::nullopt;
       },
       [](Survey& s) {
         s.zones[51].inside = Inside::not_seen;
         add_spot(s, 51, "end", Rust::scale);  // bad enough to be opened anyway
       }},
      {"blocked-drain",
       "outer sill, left (51): can its drains, which are blocked, be cleared and its inside be "
       "looked at? Water stands behind a drain that is shut, and there nobody looked.",
       [](Survey& s) {
         s.zones[51].inside = Inside::not_seen;
         s.zones[51].drains = Drains::blocked;
       },
       [](Survey& s) { s.zones[51].drains = Drains::blocked; }},
      {"inside-of-none",
       "spring hanger, left (61): was `inside` meant for another zone? The body plan knows a "
       "single sheet here, which has none. The box that was looked into still counts as not seen "
       "inside.",
       [](Survey& s) { s.zones[61].inside = Inside::scoped; }, nothing},
      {"zone-not-named",
       "how was it seen: spring hanger, left (61); boot side, left (71)? The survey doesn't say. A "
       "zone that is named nowhere counts as not seen.",
       [](Survey& s) {
         s.seen.erase(61);
         s.seen.erase(71);
       },
       [](Survey& s) {
         s.seen[71] = {SeenWord::not_fitted, 0};
       }},
      {"gap-moves",
       "why does the gap at the left door rear edge change by 2.0 mm between wheels and lift? Look "
       "again at sills, posts and floor. A gap that moves as the car is lifted speaks of a weak "
       "middle.",
       [](Survey& s) {
         s.gaps = {
             {.where = "left door rear edge", .wheels_mm = 4.5, .lift_mm = 2.5, .place = {9, 5}}};
       },
       [](Survey& s) {
         s.gaps = {{.where = "left door rear edge", .wheels_mm = 4.5, .lift_mm = 2.6},
                   {.where = "right door", .wheels_mm = 4.5}};
       }},
  });
}

TEST(Advice, OnCoats) {
  const Change coated = [](Survey& s) { s.seen[51].word = SeenWord::coated; };
  const auto noted = [coated](const std::string& note) {
    return [=](Survey& s) {
      coated(s);
      s.zones[51].found.front().note = note;
    };
  };
  const auto waxed = [coated](survey::PartialDate date) {
    return [=](Survey& s) {
      coated(s);
      s.kept.waxed = date;
    };
  };
  const auto said = [coated](const std::string& say) {
    return [=](Survey& s) {
      coated(s);
      s.also = {{.what = "underbody", .say = say, .place = {20, 5}}};
    };
  };
  expect({
      {"fresh-coat",
       "outer sill, left (51): was metal seen there through sound paint? The note \"Undersealed, "
       "no rust\" speaks of underseal; where that is fresh or thick, write `hidden`. Under fresh "
       "or thick underseal or wax nothing was seen, and rust goes on below it for years.",
       noted("Undersealed, no rust"), noted("underseal scraped off")},
      {"fresh-coat",
       "outer sill, left (51): was metal seen there through sound paint? The note \"mud cleaned "
       "off, thick wax\" speaks of wax; where that is fresh or thick, write `hidden`. Under fresh "
       "or thick underseal or wax nothing was seen, and rust goes on below it for years.",
       noted("mud cleaned off, thick wax"), noted("no wax; worn underseal")},
      {"fresh-coat",
       "waxed 2024-06: was metal seen through the coat of outer sill, left (51)? Where the wax is "
       "fresh or thick, write `hidden`. Under fresh or thick underseal or wax nothing was seen, "
       "and rust goes on below it for years.",
       waxed({2024, 6, 0}), waxed({2024, 3, 0})},
      {"fresh-coat",
       "which zones does \"fresh underseal\" mean? Where the underseal is fresh or thick, write "
       "`hidden`. Under fresh or thick underseal or wax nothing was seen, and rust goes on below "
       "it for years.",
       said("fresh underseal"), said("rusty underneath")},
      {"filler-likely",
       "what lies under the thick coat of wing, left (41), 1100 um; boot side, left (71), 1600 um? "
       "Try a magnet and a tap; with leave, scrape a test patch. Over 1000 um it is filler, or "
       "lead in a factory seam, rather than paint, and may cover a repair or rust.",
       [](Survey& s) {
         read_film(s, {{41, {1100}}, {71, {300, 1600}}});
       },
       [](Survey& s) {
         read_film(s, {{41, {1000}}, {71, {300, 400}}});
       }},
      {"thick-patch",
       "wing, left (41): what is the place of 700 um, where half of the readings are 160 um or "
       "less? Try a magnet and a tap there. Filler over rust or a dent takes up a small part of a "
       "panel; lead in a factory seam reads thick too.",
       [](Survey& s) {
         read_film(s, {{41, {150, 160, 700}}});
       },
       [](Survey& s) {
         read_film(s, {{41, {150, 160, 490}}, {71, {300, 320, 700}}});
       }},
      {"film-unlike",
       "why is the paint of boot side, left (71), 400 um unlike the rest of the car, about 150 um? "
       "Look at it from behind too. A panel painted apart was mended or changed apart.",
       [](Survey& s) {
         read_film(s, {{11, {155}}, {41, {150}}, {51, {150}}, {52, {140}}, {71, {400}}});
       },
       [](Survey& s) {
         read_film(s, {{41, {150}}, {51, {150}}, {52, {140}}, {71, {400}}});
       }},
      {"film-unlike",
       "why is the paint of wing, left (41), 90 um unlike the rest of the car, about 290 um? Look "
       "at it from behind too. A panel painted apart was mended or changed apart.",
       [](Survey& s) {
         read_film(s, {{11, {290}}, {41, {90}}, {51, {300}}, {52, {310}}, {71, {280}}});
       },
       [](Survey& s) {
         read_film(s, {{11, {300}}, {41, {150}}, {51, {300}}, {52, {300}}, {71, {300}}});
       }},
      {"bare-with-film",
       "was it bare metal, or `coated`: wing, left (41)? A coat was measured there. Through paint "
       "a look is worth less than on bare metal.",
       [](Survey& s) { s.zones[41].film_um = {150}; },
       [](Survey& s) {
         read_film(s, {{41, {150}}});
       }},
  });
}

TEST(Advice, KnowsItsZoneSpotAndPlace) {
  Survey survey = thorough();
  survey.zones[61].place = {61, 3};
  forget_readings(survey, {61});
  survey.zones[11].found.front().tap = Tap::dull;
  const std::vector<Advice> advice = weigh(survey, {}).advice;
  ASSERT_EQ(advice.size(), 2u);
  EXPECT_EQ(advice[0].zone, 61);
  EXPECT_EQ(advice[0].spot, "");
  EXPECT_EQ(advice[0].place, (survey::Place{61, 3}));
  EXPECT_EQ(advice[1].zone, 11);
  EXPECT_EQ(advice[1].spot, "station");
  EXPECT_EQ(advice[1].place, (survey::Place{111, 9}));
}

TEST(Advice, GoesByTheRulesInForce) {
  rules::Rules strict;
  strict.ask_readings = 11;  // the thorough survey has 10
  strict.ask_gap_mm = 1;
  Survey survey = thorough();
  survey.gaps = {{.where = "left door rear edge", .wheels_mm = 4.5, .lift_mm = 3.0}};
  const std::vector<Advice> advice = weigh(survey, strict).advice;
  ASSERT_EQ(advice.size(), 2u);
  EXPECT_EQ(advice[0].kind, "few-readings");
  EXPECT_EQ(advice[1].kind, "gap-moves");
}

TEST(Advice, StandsByWhatItCanChange) {
  const auto& kinds = advice_kinds();
  EXPECT_EQ(std::set<std::string_view>(kinds.begin(), kinds.end()).size(), kinds.size());
  std::vector<Advice> advice(3);
  advice[0].kind = "no-photo";
  advice[1] = {0, "", "", {9, 1}, "coverage", "", ""};
  advice[2] = {0, "", "", {8, 1}, "coverage", "", ""};
  sort(advice);
  EXPECT_EQ(advice[0].place.line, 8);
  EXPECT_EQ(advice[1].place.line, 9);
  EXPECT_EQ(advice[2].kind, "no-photo");
}

TEST(Advice, CutsALongListShort) {
  Survey survey = thorough();
  for (int i = 10; i < 22; ++i)
    add_spot(survey, 71, "place " + std::to_string(i), Rust::surface).size.reset();
  EXPECT_EQ(asked(survey, "size-not-recorded"),
            std::vector<std::string>{
                "how long and wide are they: boot side, left (71), place 10; boot side, left (71), "
                "place 11; boot side, left (71), place 12; boot side, left (71), place 13; boot "
                "side, left (71), place 14; boot side, left (71), place 15; boot side, left (71), "
                "place 16; boot side, left (71), place 17; and 4 more? Until then 25 % of the "
                "zone's length is assumed to be rusted."});
}

}  // namespace
}  // namespace tinworm::weighing
