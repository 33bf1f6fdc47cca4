// What must hold for any survey, tried on random ones with a fixed seed.
#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>
#include <random>

#include "weighing/fixture.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::weighing {
namespace {

using survey::Rust;
using survey::SeenWord;

constexpr int surveys = 1000;

class Dice {
 public:
  explicit Dice(unsigned seed) : engine_(seed) {}
  int below(int n) { return static_cast<int>(engine_() % static_cast<unsigned>(n)); }
  bool one_in(int n) { return below(n) == 0; }
  double between(double low, double high) { return low + (high - low) * below(10001) / 10000.0; }

 private:
  std::mt19937 engine_;
};

survey::Spot random_spot(const body::Zone& zone, int index, Dice& dice) {
  survey::Spot spot =
      fixture::spot("spot " + std::to_string(index), static_cast<Rust>(dice.below(12)));
  if (!dice.one_in(4)) {
    spot.at.x_mm = dice.between(zone.extent.x.low, zone.extent.x.high);
    spot.at.y_mm = dice.between(zone.extent.y.low, zone.extent.y.high);
    spot.at.z_mm = dice.between(zone.extent.z.low, zone.extent.z.high);
  }
  if (!dice.one_in(4)) spot.size = survey::Size{dice.between(5, 300), dice.between(5, 100)};
  if (dice.one_in(2))
    for (int n = 1 + dice.below(4); n > 0; --n)
      spot.metal_mm.push_back(zone.sheet_mm * dice.between(.3, 1.0));
  if (dice.one_in(4)) spot.hand = static_cast<survey::Hand>(dice.below(3));
  if (dice.one_in(4)) spot.tap = static_cast<survey::Tap>(dice.below(3));
  if (dice.one_in(8)) spot.pit_mm = {zone.sheet_mm * dice.between(.1, 1.1)};
  return spot;
}

survey::Seen random_seen(Dice& dice) {
  const SeenWord words[] = {SeenWord::bare, SeenWord::bare, SeenWord::coated, SeenWord::part,
                            SeenWord::scope};
  survey::Seen seen{words[dice.below(5)]};
  if (seen.word == SeenWord::part) seen.share = dice.between(.1, .9);
  if (dice.one_in(8)) seen.word = SeenWord::hidden;
  return seen;
}

survey::Survey random_survey(unsigned seed) {
  Dice dice(seed);
  survey::Survey survey = fixture::sound_survey();
  for (const body::Zone& zone : survey.body->zones) {
    survey.seen[zone.number] = random_seen(dice);
    if (survey.seen[zone.number].word == SeenWord::hidden) continue;
    survey::Zone& entry = survey.zones[zone.number];
    if (dice.one_in(2)) entry.reference_mm = {zone.sheet_mm, zone.sheet_mm * .99};
    for (int n = dice.below(4); n > 0; --n) entry.found.push_back(random_spot(zone, n, dice));
    if (dice.one_in(6)) {
      survey::Repair repair;
      repair.kind = static_cast<survey::RepairKind>(dice.below(9));
      if (dice.one_in(2)) repair.joint = static_cast<survey::Joint>(dice.below(5));
      entry.repairs.push_back(repair);
    }
  }
  return survey;
}

void add_damage(survey::Spot& spot, int kind) {
  switch (kind) {
    case 0:
      spot.hole = survey::Size{40, 25};
      break;
    case 1:
      spot.crack_mm = 35;
      break;
    case 2:
      spot.hand = survey::Hand::gives;
      break;
    case 3:
      spot.hand = survey::Hand::breaks;
      break;
    case 4:
      spot.tap = survey::Tap::crunches;
      break;
    case 5:
      spot.probe = survey::Probe::goes_in;
      break;
    case 6:
      spot.pit_mm = {.2};
      break;
    case 7:
      spot.stuffed = survey::Stuffed::paper;
      break;
    default:
      spot.metal_mm = {.1, .1};
  }
}

constexpr int kinds_of_damage = 9;

// As above, with zones known by tap alone and with damage whatever the rust word, "none" among
// them.
survey::Survey damaged_survey(unsigned seed) {
  survey::Survey survey = random_survey(seed);
  Dice dice(seed + surveys);
  for (const body::Zone& zone : survey.body->zones) {
    survey::Seen& seen = survey.seen[zone.number];
    if (seen.word == SeenWord::hidden) continue;
    if (dice.one_in(3)) seen = {SeenWord::tap, 0, "", {}};
    survey::Zone& entry = survey.zones[zone.number];
    if (dice.one_in(2)) entry = {.inside = survey::Inside::scoped};
    if (dice.one_in(3)) entry.found.push_back(fixture::spot("sound", Rust::none));
    if (!dice.one_in(4)) continue;
    survey::Spot spot = random_spot(zone, 9, dice);
    spot.rust = dice.one_in(2) ? std::optional(Rust::none) : std::nullopt;
    add_damage(spot, dice.below(kinds_of_damage));
    entry.found.push_back(std::move(spot));
  }
  return survey;
}

bool is_damaged(const survey::Spot& spot, const Spot& weighed, const rules::Rules& rules) {
  return spot.hole || spot.crack_mm || spot.hand == survey::Hand::gives ||
         spot.hand == survey::Hand::breaks || spot.tap == survey::Tap::crunches ||
         spot.probe == survey::Probe::goes_in || !spot.pit_mm.empty() || spot.stuffed ||
         weighed.metal.weighed.value < rules.repair_limit;
}

void expect_ordered(const Burden& burden, const char* what, unsigned seed) {
  EXPECT_LE(burden.low, burden.high) << what << ", survey " << seed;
  EXPECT_GE(burden.low, 0);
  EXPECT_LE(burden.high, 1);
  if (!burden.value) return;
  EXPECT_LE(burden.low, *burden.value + 1e-12) << what << ", survey " << seed;
  EXPECT_LE(*burden.value, burden.high + 1e-12) << what << ", survey " << seed;
}

TEST(Properties, LowIsNeverOverValueNorValueOverHigh) {
  for (unsigned seed = 0; seed < surveys; ++seed) {
    const Result result = weigh(random_survey(seed), {});
    expect_ordered(result.structure, "structure", seed);
    expect_ordered(result.skin, "skin", seed);
    expect_ordered(result.shell, "shell", seed);
    EXPECT_GE(result.could_be, result.verdict) << "survey " << seed;
    for (const Zone& zone : result.zones)
      for (const Spot& spot : zone.spots) {
        EXPECT_LE(spot.metal.weighed.low, spot.metal.weighed.value);
        EXPECT_LE(spot.metal.weighed.value, spot.metal.weighed.high);
        EXPECT_GE(spot.step_low, spot.step);
        EXPECT_GE(spot.step, spot.step_high);
      }
  }
}

// Whatever the rust word and however the zone was seen.
TEST(Properties, DamageIsNeverLost) {
  int without = 0;
  for (unsigned seed = 0; seed < surveys; ++seed) {
    const survey::Survey survey = damaged_survey(seed);
    const Result result = weigh(survey, {});
    expect_ordered(result.structure, "structure", seed);
    expect_ordered(result.skin, "skin", seed);
    expect_ordered(result.shell, "shell", seed);
    bool any = false;
    for (const auto& [number, entry] : survey.zones)
      for (std::size_t i = 0; i < entry.found.size(); ++i) {
        const Zone& zone = *result.zone(number);
        if (!is_damaged(entry.found[i], zone.spots[i], {})) continue;
        any = true;
        EXPECT_GT(zone.step, Step::sound) << "zone " << number << ", survey " << seed;
        EXPECT_GT(zone.spots[i].rank, 0) << "zone " << number << ", survey " << seed;
      }
    without += !any;
    if (!any) continue;
    EXPECT_NE(result.verdict, Verdict::leave_alone) << "survey " << seed;
    EXPECT_NE(result.verdict, Verdict::not_known) << "survey " << seed;
  }
  EXPECT_LT(without, surveys / 4);
}

TEST(Properties, SharesAddToOne) {
  for (unsigned seed = 0; seed < surveys; ++seed) {
    const Result result = weigh(seed % 2 == 0 ? random_survey(seed) : damaged_survey(seed), {});
    double sum = 0;
    for (const Zone& zone : result.zones) sum += zone.share;
    // A crack or a shallow pit in whole metal asks for work and weighs nothing.
    if (std::ranges::none_of(result.zones, [](const Zone& zone) { return zone.weight.value > 0; }))
      continue;
    EXPECT_NEAR(sum, 1, 1e-9) << "survey " << seed;
  }
}

// One change for the worse at a random spot of a seen zone.
const char* worsen(survey::Survey& survey, Dice& dice) {
  std::vector<survey::Spot*> spots;
  for (auto& [number, zone] : survey.zones)
    for (survey::Spot& spot : zone.found) spots.push_back(&spot);
  if (spots.empty()) return nullptr;
  survey::Spot& spot = *spots[dice.below(static_cast<int>(spots.size()))];
  switch (dice.below(5)) {
    case 0:
      if (spot.hand == survey::Hand::breaks) return nullptr;
      spot.hand = survey::Hand::gives;
      return "gives under the hand";
    case 1:
      spot.probe = survey::Probe::goes_in;
      return "the probe goes in";
    case 2:
      if (!spot.size) return nullptr;
      spot.size->along_mm *= 1.5;
      spot.size->across_mm *= 1.5;
      return "a bigger spot";
    case 3:
      if (spot.metal_mm.empty()) return nullptr;
      for (double& t : spot.metal_mm) t *= .9;
      return "thinner readings";
    default:
      spot.rust = Rust::hole;
      return "a hole";
  }
}

TEST(Properties, TurningBadNeverLowersBurdenStepOrVerdict) {
  int tried = 0;
  for (unsigned seed = 0; seed < surveys; ++seed) {
    Dice dice(seed + 100000);
    survey::Survey survey = random_survey(seed);
    const Result before = weigh(survey, {});
    const char* what = worsen(survey, dice);
    if (!what) continue;
    ++tried;
    const Result after = weigh(survey, {});
    SCOPED_TRACE("survey " + std::to_string(seed) + ": " + what);
    if (before.structure.value) {
      EXPECT_GE(*after.structure.value, *before.structure.value - 1e-12);
    }
    if (before.skin.value) {
      EXPECT_GE(*after.skin.value, *before.skin.value - 1e-12);
    }
    EXPECT_GE(after.verdict, before.verdict);
    for (std::size_t i = 0; i < before.zones.size(); ++i)
      EXPECT_GE(after.zones[i].step, before.zones[i].step);
  }
  EXPECT_GT(tried, surveys / 2);
}

TEST(Properties, AMountNearerNeverLowersABurden) {
  for (unsigned seed = 0; seed < surveys; ++seed) {
    const survey::Survey far = random_survey(seed);
    body::Plan plan = *far.body;
    plan.mounts.push_back(
        fixture::mount("damper", body::Carries::suspension, {2000, -600, 300}, {}));
    survey::Survey close = far;
    close.body = std::make_shared<const body::Plan>(plan);
    const Result before = weigh(far, {}), after = weigh(close, {});
    if (!before.structure.value) continue;
    EXPECT_GE(*after.structure.value, *before.structure.value - 1e-12) << "survey " << seed;
    EXPECT_GE(after.verdict, before.verdict) << "survey " << seed;
  }
}

void expect_same(const Result& a, const Result& b, unsigned seed) {
  SCOPED_TRACE("survey " + std::to_string(seed));
  EXPECT_EQ(a.verdict, b.verdict);
  EXPECT_EQ(a.could_be, b.could_be);
  for (const auto of : {&Result::structure, &Result::skin, &Result::shell}) {
    EXPECT_NEAR((a.*of).low, (b.*of).low, 1e-9);
    EXPECT_NEAR((a.*of).value.value_or(-1), (b.*of).value.value_or(-1), 1e-9);
    EXPECT_NEAR((a.*of).high, (b.*of).high, 1e-9);
  }
}

// The body and the survey as a mirror shows them: Y changes sign, left and right numbers trade
// places.
int twin(int number) {
  return number < 41 ? number : number % 2 ? number + 1 : number - 1;
}

body::Plan mirrored(body::Plan plan) {
  const auto flip = [](geometry::Interval& y) { y = {-y.high, -y.low}; };
  for (body::Zone& zone : plan.zones) {
    zone.number = twin(zone.number);
    flip(zone.extent.y);
    for (int& hidden : zone.hides) hidden = twin(hidden);
  }
  std::ranges::sort(plan.zones, {}, &body::Zone::number);
  for (body::Mount& mount : plan.mounts) {
    mount.at.y_mm = -mount.at.y_mm;
    for (int& on : mount.on) on = twin(on);
  }
  return plan;
}

TEST(Properties, AMirrorChangesNothing) {
  for (unsigned seed = 0; seed < surveys; ++seed) {
    const survey::Survey left = random_survey(seed);
    survey::Survey right = left;
    right.body = std::make_shared<const body::Plan>(mirrored(*left.body));
    right.seen.clear();
    right.zones.clear();
    for (const auto& [number, seen] : left.seen) right.seen[twin(number)] = seen;
    for (const auto& [number, zone] : left.zones) {
      right.zones[twin(number)] = zone;
      for (survey::Spot& spot : right.zones[twin(number)].found)
        if (spot.at.y_mm) spot.at.y_mm = -*spot.at.y_mm;
    }
    expect_same(weigh(left, {}), weigh(right, {}), seed);
  }
}

TEST(Properties, TheOrderOfZonesSpotsAndReadingsChangesNothing) {
  for (unsigned seed = 0; seed < surveys; ++seed) {
    const survey::Survey forward = random_survey(seed);
    survey::Survey back = forward;
    for (auto& [number, zone] : back.zones) {
      std::ranges::reverse(zone.found);
      std::ranges::reverse(zone.reference_mm);
      for (survey::Spot& spot : zone.found) std::ranges::reverse(spot.metal_mm);
    }
    expect_same(weigh(forward, {}), weigh(back, {}), seed);
  }
}

TEST(Properties, AReadingEqualToTheMeanNeverWidensAnInterval) {
  for (unsigned seed = 0; seed < surveys; ++seed) {
    survey::Survey survey = fixture::sound_survey();
    Dice dice(seed);
    survey.zones[11].reference_mm = {1.0, 1.01};
    survey::Spot spot = fixture::spot("a", Rust::pitting);
    for (int n = 1 + dice.below(5); n > 0; --n) spot.metal_mm.push_back(dice.between(.7, .95));
    survey.zones[11].found = {spot};
    const Span before = weigh(survey, {}).zone(11)->spots.front().metal.shown;
    const double mean = std::accumulate(spot.metal_mm.begin(), spot.metal_mm.end(), 0.0) /
                        static_cast<double>(spot.metal_mm.size());
    survey.zones[11].found.front().metal_mm.push_back(mean);
    const Span after = weigh(survey, {}).zone(11)->spots.front().metal.shown;
    EXPECT_LE(after.high - after.low, before.high - before.low + 1e-12) << "survey " << seed;
  }
}

TEST(Properties, CouldBeIsNeverMilderThanAnyCandidate) {
  for (unsigned seed = 0; seed < surveys; ++seed) {
    const Result result = weigh(damaged_survey(seed), {});
    EXPECT_GE(result.could_be, result.verdict) << "survey " << seed;
    for (const OpenUp& each : result.open_up)
      EXPECT_GE(result.could_be, each.could_become) << "survey " << seed << ", " << each.why;
  }
}

// Without readings, whose scatter is pooled.
TEST(Properties, RecordingDamageNeverRaisesALowEndNorLowersAHighOne) {
  for (unsigned seed = 0; seed < surveys; ++seed) {
    Dice dice(seed + 200000);
    survey::Survey survey = random_survey(seed);
    const Result before = weigh(survey, {});
    const body::Zone& zone = survey.body->zones[dice.below(7)];
    if (survey.seen[zone.number].word == SeenWord::hidden) continue;
    survey::Spot spot = random_spot(zone, 9, dice);
    spot.metal_mm.clear();
    add_damage(spot, dice.below(6));
    survey.zones[zone.number].found.push_back(spot);
    const Result after = weigh(survey, {});
    SCOPED_TRACE("survey " + std::to_string(seed));
    EXPECT_LE(after.zone(zone.number)->metal->weighed.low,
              before.zone(zone.number)->metal->weighed.low + 1e-12);
    EXPECT_GE(after.structure.high, before.structure.high - 1e-12);
    EXPECT_GE(after.structure.low, before.structure.low - 1e-12);
    EXPECT_GE(after.could_be, before.could_be);
  }
}

}  // namespace
}  // namespace tinworm::weighing
