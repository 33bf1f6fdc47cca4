// Each kind of advice: what it says, word for word, and where it must be silent.
#include "weighing/advice.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <set>

#include "weighing/fixture.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::weighing {
namespace {

using survey::Beneath;
using survey::Drains;
using survey::Hand;
using survey::Inside;
using survey::Joint;
using survey::RepairKind;
using survey::Rust;
using survey::SeenWord;
using survey::Survey;
using survey::Tap;

survey::Spot& add_spot(Survey& survey, int zone, const std::string& name,
                       std::optional<Rust> rust = Rust::none, std::vector<double> metal_mm = {}) {
  survey::Spot spot = fixture::spot(name, rust);
  const geometry::Box3& extent = survey.body->zone(zone)->extent;
  spot.at = {extent.x.middle(), extent.y.middle(), extent.z.middle()};
  spot.size = survey::Size{60, 40};
  spot.metal_mm = std::move(metal_mm);
  spot.place = {100 + zone, 9};
  survey.zones[zone].found.push_back(spot);
  return survey.zones[zone].found.back();
}

// A survey of which nobody would ask anything.
Survey thorough() {
  Survey survey = fixture::sound_survey();
  survey.gauge.coating_assumed = false;
  for (auto& [number, seen] : survey.seen) seen.place = {number, 3};
  for (const int zone : {11, 51, 52, 61, 62}) {
    const double sheet_mm = survey.body->zone(zone)->sheet_mm;
    survey.zones[zone].reference_mm = {sheet_mm, sheet_mm + .01};
    add_spot(survey, zone, "station", Rust::none, {sheet_mm - .01, sheet_mm + .01});
  }
  return survey;
}

survey::Repair& add_repair(Survey& survey, int zone, RepairKind kind) {
  survey::Repair repair;
  repair.kind = kind;
  repair.joint = Joint::seam_weld;
  repair.date = survey::PartialDate{2021, 5, 0};
  repair.now_assumed = false;
  survey.zones[zone].repairs.push_back(repair);
  return survey.zones[zone].repairs.back();
}

void change_plan(Survey& survey, const std::function<void(body::Plan&)>& change) {
  body::Plan plan = *survey.body;
  change(plan);
  survey.body = std::make_shared<const body::Plan>(std::move(plan));
}

void read_film(Survey& survey, const std::vector<std::pair<int, std::vector<double>>>& films) {
  for (const auto& [zone, film_um] : films) {
    survey.zones[zone].film_um = film_um;
    survey.seen[zone].word = SeenWord::coated;
  }
}

void forget_readings(Survey& survey, const std::vector<int>& zones) {
  for (const int zone : zones) survey.zones[zone].found.clear();
}

using Change = std::function<void(Survey&)>;

struct Case {
  std::string kind, asked;
  Change asks, silent;
};

std::vector<std::string> asked(const Survey& survey, const std::string& kind) {
  std::vector<std::string> texts;
  for (const Advice& each : weigh(survey, {}).advice)
    if (each.kind == kind) texts.push_back(text(each));
  return texts;
}

void nothing(Survey&) {}

// Changes of one spot, repair or zone, to keep the tables short.
Change spot(int zone, const std::function<void(survey::Spot&)>& change) {
  return [=](Survey& survey) { change(survey.zones[zone].found.front()); };
}
Change repair(int zone, RepairKind kind, const std::function<void(survey::Repair&)>& change) {
  return [=](Survey& survey) { change(add_repair(survey, zone, kind)); };
}

void expect(const std::vector<Case>& cases) {
  for (const Case& c : cases) {
    SCOPED_TRACE(c.kind + ": " + c.asked);
    Survey asks = thorough(), silent = thorough();
    c.asks(asks);
    c.silent(silent);
    EXPECT_EQ(asked(asks, c.kind), std::vector<std::string>{c.asked});
    EXPECT_EQ(asked(silent, c.kind), std::vector<std::string>{});
  }
}

TEST(Advice, AThoroughSurveyRaisesNone) {
  for (const Advice& each : weigh(thorough(), {}).advice) ADD_FAILURE() << text(each);
}

TEST(Advice, OnWhatWasSeenAndMeasured) {
  expect({
      {"nothing-measured", "@", [](Survey& s) { forget_readings(s, {11, 51, 52, 61, 62}); },
       [](Survey& s) { forget_readings(s, {11, 51, 52, 61}); }},
      {"few-readings", "@", [](Survey& s) { forget_readings(s, {51, 52, 61}); },
       [](Survey& s) {
         forget_readings(s, {51, 52, 61});
         s.zones[11].found.front().metal_mm = {1.0, 1.0, 1.01};
       }},
      {"few-readings", "@",
       [](Survey& s) {
         forget_readings(s, {11, 51, 52, 61});
         s.zones[62].found.front().metal_mm = {2};
       },
       [](Survey& s) { forget_readings(s, {11, 51, 52, 61, 62}); }},  // nothing-measured says it
      {"coverage", "@",
       [](Survey& s) {
         s.seen[51] = {SeenWord::hidden, 0, "mud"};
         s.seen[11] = {SeenWord::part, .3};
       },
       [](Survey& s) { s.seen[61] = {SeenWord::hidden, 0, "mud"}; }},
      {"mount-not-measured", "@", [](Survey& s) { forget_readings(s, {61}); },
       [](Survey& s) {
         forget_readings(s, {61});
         add_spot(s, 61, "eye", Rust::scale).hand = Hand::gives;  // the verdict has it
       }},
      {"mount-not-measured", "@",
       [](Survey& s) {
         change_plan(s, [](body::Plan& plan) {
           plan.mounts.push_back(
               fixture::mount("bump stop", body::Carries::suspension, {1500, 600, 300}, {62}));
           plan.mounts.push_back(
               fixture::mount("jack", body::Carries::jack, {1500, 600, 300}, {62}));
         });
         forget_readings(s, {61, 62});
       },
       [](Survey& s) { s.seen[61] = {SeenWord::hidden, 0, "mud"}; }},
      {"inside-not-seen", "@",
       [](Survey& s) {
         s.zones[51].inside = Inside::not_seen;
         s.zones[52].inside = std::nullopt;
       },
       [](Survey& s) {
         s.zones[51].inside = Inside::not_seen;
         add_spot(s, 51, "end", Rust::scale);  // bad enough to be opened anyway
       }},
      {"blocked-drain", "@",
       [](Survey& s) {
         s.zones[51].inside = Inside::not_seen;
         s.zones[51].drains = Drains::blocked;
       },
       [](Survey& s) { s.zones[51].drains = Drains::blocked; }},
      {"inside-of-none", "@", [](Survey& s) { s.zones[61].inside = Inside::scoped; }, nothing},
      {"zone-not-named", "@",
       [](Survey& s) {
         s.seen.erase(61);
         s.seen.erase(71);
       },
       [](Survey& s) { s.seen[71] = {SeenWord::not_fitted, 0}; }},
      {"gap-moves", "@", [](Survey& s) { s.gaps = {{"left door rear edge", 4.5, 2.5, {9, 5}}}; },
       [](Survey& s) {
         s.gaps = {{"left door rear edge", 4.5, 2.6, {}}, {"right door", 4.5, {}, {}}};
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
      s.also = {{"underbody", "", say, {}, {20, 5}}};
    };
  };
  expect({
      {"fresh-coat", "@", noted("Undersealed, no rust"), noted("underseal scraped off")},
      {"fresh-coat", "@", noted("mud cleaned off, thick wax"), noted("no wax; worn underseal")},
      {"fresh-coat", "@", waxed({2024, 6, 0}), waxed({2024, 3, 0})},
      {"fresh-coat", "@", said("fresh underseal"), said("rusty underneath")},
      {"filler-likely", "@", [](Survey& s) { read_film(s, {{41, {1100}}, {71, {300, 1600}}}); },
       [](Survey& s) { read_film(s, {{41, {1000}}, {71, {300, 400}}}); }},
      {"thick-patch", "@", [](Survey& s) { read_film(s, {{41, {150, 160, 700}}}); },
       [](Survey& s) { read_film(s, {{41, {150, 160, 490}}, {71, {300, 320, 700}}}); }},
      {"film-unlike", "@",
       [](Survey& s) { read_film(s, {{41, {150}}, {51, {150}}, {52, {140}}, {71, {400}}}); },
       [](Survey& s) { read_film(s, {{51, {150}}, {52, {140}}, {71, {400}}}); }},
      {"film-unlike", "@",
       [](Survey& s) { read_film(s, {{41, {90}}, {51, {300}}, {52, {310}}, {71, {280}}}); },
       [](Survey& s) { read_film(s, {{41, {150}}, {51, {300}}, {52, {300}}, {71, {300}}}); }},
      {"bare-with-film", "@", [](Survey& s) { s.zones[41].film_um = {150}; },
       [](Survey& s) { read_film(s, {{41, {150}}}); }},
  });
}

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
      {"thick-reading", "@", metal({1.0, 1.4}), metal({1.0, 1.25})},
      {"pit-through", "@", pit(.8, Rust::pitting), pit(.7, Rust::pitting)},
      {"pit-through", "@",
       [](Survey& s) {
         survey::Spot& spot = add_spot(s, 41, "lip", Rust::pitting);
         spot.pits = survey::PitPatches{{50, 50}, {.2, 1.2, .3}};
       },
       pit(1.2, Rust::hole)},
      {"hand-against-gauge", "@", felt(.45, Hand::firm, {}), felt(.55, Hand::firm, {})},
      {"hand-against-gauge", "@", felt(.95, Hand::gives, {}), felt(.80, Hand::gives, {})},
      {"hand-against-gauge", "@", felt(.95, {}, Tap::crunches), felt(.95, {}, Tap::rings)},
      {"dull-yet-measures", "@", felt(.98, {}, Tap::dull), felt(.80, {}, Tap::dull)},
      {"wide-readings", "@", metal({.5, .9}), metal({.6, .9})},
      {"wide-readings", "@", [](Survey& s) { s.zones[11].reference_mm = {.8, 1.2}; }, nothing},
      {"same-reading", "@", metal({.9, .9, .9, .9}), metal({.9, .9, .9})},
      {"same-reading", "@", metal({.9, .9, .9, .9}), metal({.9, .9, .9, .91})},
      {"plan-sheet-read", "@",
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
      {"no-baseline", "@", own_zone({}), own_zone({3.1})},
      {"assumed-sheet", "@", reference(11, {}), reference(51, {})},  // 52 has the same sheet
      {"film-not-read", "@", left_on({}), left_on({150, 160})},
      {"gauge-not-said", "@", [](Survey& s) { s.gauge.uncertainty_mm.reset(); },
       [](Survey& s) {
         s.gauge = {};
         forget_readings(s, {11, 51, 52, 61, 62});
       }},
      {"gauge-not-said", "@", [](Survey& s) { s.gauge.coating_assumed = true; }, nothing},
  });
}

TEST(Advice, OnPlaces) {
  const auto at = [](survey::Position position) {
    return spot(51, [=](survey::Spot& found) { found.at = position; });
  };
  const auto rusty = [](survey::Position position) {
    return [=](Survey& s) { add_spot(s, 71, "seam", Rust::surface).at = position; };
  };
  const auto size = [](int zone, std::optional<survey::Size> of) {
    return [=](Survey& s) { add_spot(s, zone, "seam", Rust::surface).size = of; };
  };
  const auto named = [](const std::string& name, double x_mm) {
    return [=](Survey& s) {
      change_plan(s, [](body::Plan& plan) {
        for (body::Zone& zone : plan.zones)
          if (zone.number == 51)
            zone.stations = {{"rear end", {1390, -700, 200}, {}}, {"middle", {900, -700, 200}, {}}};
      });
      survey::Spot& found = s.zones[51].found.front();
      found.name = name;
      found.at = {};
      if (x_mm > 0) found.at.x_mm = x_mm;
    };
  };
  const auto called = [](const std::string& name) {
    return spot(51, [=](survey::Spot& found) { found.name = name; });
  };
  expect({
      {"place-not-recorded", "@", rusty({}), rusty({2500, {}, {}})},
      {"size-not-recorded", "@", size(71, std::nullopt), size(71, survey::Size{20, 20})},
      {"size-not-recorded", "@", size(71, std::nullopt), size(41, std::nullopt)},
      {"far-from-zone", "@", at({1600, {}, 200}), at({1500, {}, 200})},
      {"far-from-zone", "@", at({{}, 700, 200}), at({{}, -700, {}})},
      {"other-side", "@", called("right end"), called("right of the jack")},
      {"other-side", "@", called("right of left end, right"), called("left and right drain")},
      {"spot-name", "@", named("Rear-end", 0), named("rear end", 0)},
      {"spot-name", "@", named("midle", 950), named("midle", 1300)},
      {"spot-name", "@", named("midle", 0), named("front end", 0)},
  });
}

TEST(Advice, OnRepairs) {
  const auto joint = [](RepairKind kind, int zone) {
    return repair(zone, kind, [](survey::Repair& repair) { repair.joint.reset(); });
  };
  const auto beneath = [](RepairKind kind, std::optional<Beneath> what) {
    return [=](Survey& s) {
      forget_readings(s, {51});
      add_repair(s, 51, kind).beneath = what;
    };
  };
  const auto undated = [](Survey& s) {
    add_repair(s, 41, RepairKind::filled).date.reset();
    add_repair(s, 51, RepairKind::let_in).date.reset();
  };
  expect({
      {"repair-joint", "@", joint(RepairKind::lapped, 51), joint(RepairKind::lapped, 41)},
      {"repair-joint", "@", joint(RepairKind::lapped, 51), joint(RepairKind::treated, 51)},
      {"repair-beneath", "@", beneath(RepairKind::lapped, Beneath::unknown),
       beneath(RepairKind::lapped, Beneath::cut_out)},
      {"repair-beneath", "@", beneath(RepairKind::plated_over, {}),
       beneath(RepairKind::lapped, {})},
      {"repair-beneath", "@", beneath(RepairKind::lapped, Beneath::over_rust),
       repair(51, RepairKind::lapped,
              [](survey::Repair& repair) { repair.beneath = Beneath::over_rust; })},
      {"repair-now", "@",
       repair(51, RepairKind::let_in, [](survey::Repair& repair) { repair.now_assumed = true; }),
       repair(51, RepairKind::brazed, [](survey::Repair& repair) { repair.now_assumed = true; })},
      {"repair-undated", "@", undated, repair(51, RepairKind::let_in, [](survey::Repair&) {})},
  });
}

TEST(Advice, OnPapers) {
  const auto probed = [](std::vector<std::string> leave) {
    return [=](Survey& s) {
      s.visit.leave = leave;
      s.zones[11].found.front().probe = survey::Probe::stops;
    };
  };
  const auto reason = [](survey::Reason why, const std::string& interest) {
    return [=](Survey& s) {
      s.visit.reason = why;
      s.visit.interest = interest;
    };
  };
  const auto thin = [](std::vector<survey::Photo> photos, int zone) {
    return [=](Survey& s) {
      add_spot(s, zone, "seam", Rust::scale).photos = photos;
      add_spot(s, 11, "edge", Rust::hole).photos = photos;
    };
  };
  expect({
      {"leave-not-said", "@", probed({"carpets"}), probed({"carpets", "Probing with a point"})},
      {"interest-not-said", "@", reason(survey::Reason::sale, ""),
       reason(survey::Reason::periodic, "")},
      {"interest-not-said", "@", reason(survey::Reason::purchase, ""),
       reason(survey::Reason::purchase, "none")},
      {"no-photo", "@", thin({}, 51), thin({{"14.jpg", {}}}, 51)},
      {"no-photo", "@", [](Survey& s) { add_spot(s, 71, "seam", Rust::scale); },
       [](Survey& s) { add_spot(s, 41, "seam", Rust::scale); }},
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
  EXPECT_EQ(asked(survey, "size-not-recorded"), std::vector<std::string>{"@"});
}

}  // namespace
}  // namespace tinworm::weighing
