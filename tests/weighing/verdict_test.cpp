#include "weighing/verdict.hpp"

#include <gtest/gtest.h>

#include <functional>

#include "weighing/fixture.hpp"
#include "weighing/repair.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::weighing {
namespace {

using fixture::placed;
using fixture::spot;
using survey::Beneath;
using survey::Hand;
using survey::Joint;
using survey::Now;
using survey::RepairKind;
using survey::Rust;
using survey::SeenWord;

using Change = std::function<void(survey::Survey&)>;

Result weighed(const Change& change) {
  survey::Survey survey = fixture::sound_survey();
  change(survey);
  return weigh(survey, {});
}

std::vector<std::string> rules_of(const Result& result) {
  std::vector<std::string> rules;
  for (const auto* reasons : {&result.reasons, &result.open_reasons})
    for (const Reason& each : *reasons) rules.push_back(each.rule);
  return rules;
}

survey::Spot gives(std::string name) {
  survey::Spot made = spot(std::move(name), Rust::scale);
  made.hand = Hand::gives;
  return made;
}

survey::Spot stuffed(std::string name, std::optional<Rust> rust) {
  survey::Spot made = spot(std::move(name), rust);
  made.stuffed = survey::Stuffed::mesh;
  return made;
}

survey::Spot measured(std::string name, double metal_mm) {
  survey::Spot made = spot(std::move(name), Rust::pitting);
  made.metal_mm = {metal_mm, metal_mm, metal_mm};
  return made;
}

survey::Repair repair(RepairKind kind, std::optional<Joint> joint = {},
                      std::optional<Beneath> beneath = {}, Now now = Now::sound) {
  survey::Repair made;
  made.kind = kind;
  made.joint = joint;
  made.beneath = beneath;
  made.now = now;
  made.now_assumed = false;
  return made;
}

TEST(Verdict, ByRule) {
  using Rules = std::vector<std::string>;
  const struct {
    const char* what;
    Change change;
    Verdict verdict, could_be;
    bool open_up;
    Rules rules;
  } cases[] = {
      {"nothing found",
       [](auto&) {},
       Verdict::leave_alone,
       Verdict::leave_alone,
       false,
       {"nothing-found"}},
      {"nothing found, too little seen",
       [](auto& s) { s.seen[11].word = SeenWord::hidden; },
       Verdict::not_known,
       Verdict::mend,
       true,
       {"coverage", "coverage", "main-not-seen"}},
      {"surface rust",
       [](auto& s) { s.zones[11].found = {spot("a", Rust::surface)}; },
       Verdict::treat,
       Verdict::treat,
       false,
       {"rusted"}},
      {"holed skin",
       [](auto& s) { s.zones[41].found = {spot("a", Rust::hole)}; },
       Verdict::treat,
       Verdict::treat,
       false,
       {"skin-holed"}},
      {"judged thin",
       [](auto& s) { s.zones[11].found = {spot("a", Rust::scale)}; },
       Verdict::treat,
       Verdict::mend,
       true,
       {"rusted", "judged-by-eye"}},
      {"judged pitted, thin at its low end",
       [](auto& s) { s.zones[11].found = {spot("a", Rust::pitting)}; },
       Verdict::treat,
       Verdict::mend,
       true,
       {"rusted", "judged-by-eye"}},
      {"measured thin",
       [](auto& s) {
         s.zones[11].reference_mm = {1, 1, 1};
         s.zones[11].found = {measured("a", .80)};
       },
       Verdict::mend,
       Verdict::mend,
       false,
       {"past-limit"}},
      {"measured on the limit",
       [](auto& s) {
         s.zones[11].reference_mm = {1, 1, 1};
         s.zones[11].found = {measured("a", .85)};
       },
       Verdict::treat,
       Verdict::mend,
       true,
       {"rusted", "interval-reaches"}},
      {"gives, far from a mount",
       [](auto& s) { s.zones[11].found = {gives("a")}; },
       Verdict::mend,
       Verdict::mend,
       false,
       {"weak"}},
      {"hole on a local zone",
       [](auto& s) {
         s.zones[71].found = {placed("a", Rust::hole, {2300, -600, 300}, {20, 20})};
       },
       Verdict::mend,
       Verdict::mend,
       false,
       {"weak"}},
      {"hole on a local zone near the hanger",
       [](auto& s) {
         s.zones[71].found = {placed("a", Rust::hole, {1700, -600, 300}, {20, 20})};
       },
       Verdict::mend,
       Verdict::mend,
       false,
       {"weak"}},
      {"hole on a local zone, place not recorded",
       [](auto& s) { s.zones[71].found = {spot("a", Rust::hole)}; },
       Verdict::mend,
       Verdict::mend,
       false,
       {"weak"}},
      {"gives where the hanger stands",
       [](auto& s) { s.zones[61].found = {gives("a")}; },
       Verdict::keep_parked,
       Verdict::keep_parked,
       false,
       {"on-mount"}},
      {"judged thin where the hanger stands",
       [](auto& s) { s.zones[61].found = {spot("a", Rust::scale)}; },
       Verdict::mend,
       Verdict::keep_parked,
       true,
       {"likely-past-limit", "judged-by-eye"}},
      {"judged, could be weak where the hanger stands",
       [](auto& s) { s.zones[61].found = {spot("a", Rust::acid)}; },
       Verdict::mend,
       Verdict::keep_parked,
       true,
       {"likely-past-limit", "judged-by-eye"}},
      {"crack where the hanger stands",
       [](auto& s) {
         s.zones[61].found = {spot("a", {})};
         s.zones[61].found[0].crack_mm = 20;
       },
       Verdict::keep_parked,
       Verdict::keep_parked,
       false,
       {"on-mount"}},
      {"good repair",
       [](auto& s) { s.zones[61].repairs = {repair(RepairKind::let_in, Joint::seam_weld)}; },
       Verdict::leave_alone,
       Verdict::leave_alone,
       false,
       {"nothing-found"}},
      {"bad repair",
       [](auto& s) { s.zones[11].repairs = {repair(RepairKind::filled)}; },
       Verdict::mend,
       Verdict::mend,
       false,
       {"repair-not-relied-on"}},
      {"bad repair where the hanger stands",
       [](auto& s) { s.zones[61].repairs = {repair(RepairKind::brazed)}; },
       Verdict::keep_parked,
       Verdict::keep_parked,
       false,
       {"repair-on-mount"}},
      {"repair whose joint isn't known",
       [](auto& s) { s.zones[11].repairs = {repair(RepairKind::let_in)}; },
       Verdict::leave_alone,
       Verdict::mend,
       true,
       {"nothing-found", "repair-not-known"}},
      {"the same where the hanger stands",
       [](auto& s) { s.zones[61].repairs = {repair(RepairKind::let_in)}; },
       Verdict::leave_alone,
       Verdict::keep_parked,
       true,
       {"nothing-found", "repair-not-known"}},
      {"filled skin",
       [](auto& s) { s.zones[41].repairs = {repair(RepairKind::filled)}; },
       Verdict::leave_alone,
       Verdict::leave_alone,
       false,
       {"nothing-found"}},
      {"treatment that rusts again",
       [](auto& s) { s.zones[41].repairs = {repair(RepairKind::treated, {}, {}, Now::rusting)}; },
       Verdict::treat,
       Verdict::treat,
       false,
       {"rusted"}},
      {"main zone under a mount not seen",
       [](auto& s) { s.seen[61].word = SeenWord::hidden; },
       Verdict::not_known,
       Verdict::keep_parked,
       true,
       {"coverage", "mount-not-seen"}},
      {"inside of a main box not seen",
       [](auto& s) { s.zones[51].inside = survey::Inside::not_seen; },
       Verdict::leave_alone,
       Verdict::leave_alone,
       false,
       {"nothing-found"}},
      {"stuffed box",
       [](auto& s) {
         s.zones[51].found = {spot("a", Rust::none)};
         s.zones[51].found[0].stuffed = survey::Stuffed::foam;
       },
       Verdict::mend,
       Verdict::mend,
       true,
       {"stuffed", "stuffed", "inside-not-seen"}},
      {"hidden behind a weak place",
       [](auto& s) {
         s.zones[51].found = {gives("a")};
         s.zones[51].found[0].at = {450, -690, 200};
         s.seen[61].word = SeenWord::hidden;
       },
       Verdict::mend,
       Verdict::keep_parked,
       true,
       {"weak", "hidden-neighbour", "mount-not-seen"}},
      {"thick coat on structure",
       [](auto& s) {
         s.zones[11].film_um = {150, 1001};
       },
       Verdict::leave_alone,
       Verdict::mend,
       true,
       {"nothing-found", "thick-coat"}},
      {"thick coat on skin",
       [](auto& s) {
         s.zones[41].film_um = {150, 1500};
       },
       Verdict::leave_alone,
       Verdict::leave_alone,
       false,
       {"nothing-found"}},
      {"magnet falls off structure",
       [](auto& s) {
         s.zones[11].found = {spot("a", Rust::none)};
         s.zones[11].found[0].magnet = survey::Magnet::none;
       },
       Verdict::mend,
       Verdict::mend,
       true,
       {"likely-past-limit", "judged-by-eye", "thick-coat"}},
      {"two sheets on structure",
       [](auto& s) {
         s.zones[11].reference_mm = {1, 1};
         s.zones[11].found = {spot("a", Rust::none)};
         s.zones[11].found[0].metal_mm = {1.5, 1.5};
       },
       Verdict::leave_alone,
       Verdict::mend,
       true,
       {"nothing-found", "too-thick"}},
      {"stuffed, far from a mount",
       [](auto& s) { s.zones[11].found = {stuffed("a", Rust::none)}; },
       Verdict::mend,
       Verdict::mend,
       true,
       {"stuffed", "stuffed"}},
      {"stuffed on a mount: holed, for all anybody knows",
       [](auto& s) { s.zones[61].found = {stuffed("a", {})}; },
       Verdict::mend,
       Verdict::keep_parked,
       true,
       {"stuffed", "stuffed", "interval-reaches"}},
      {"stuffed, and it breaks",
       [](auto& s) {
         s.zones[61].found = {stuffed("a", {})};
         s.zones[61].found[0].hand = Hand::breaks;
       },
       Verdict::keep_parked,
       Verdict::keep_parked,
       true,
       {"on-mount", "stuffed"}},
      {"stuffed skin",
       [](auto& s) { s.zones[41].found = {stuffed("a", {})}; },
       Verdict::treat,
       Verdict::treat,
       false,
       {"rusted"}},
      {"crunches in a zone known by tapping",
       [](auto& s) {
         s.seen[61].word = SeenWord::tap;
         s.zones[61].found = {spot("a", {})};
         s.zones[61].found[0].tap = survey::Tap::crunches;
       },
       Verdict::keep_parked,
       Verdict::keep_parked,
       true,
       {"on-mount", "mount-not-seen", "found-by-tap"}},
  };
  for (const auto& c : cases) {
    SCOPED_TRACE(c.what);
    const Result got = weighed(c.change);
    EXPECT_EQ(sentence(got.verdict), sentence(c.verdict));
    EXPECT_EQ(sentence(got.could_be), sentence(c.could_be));
    EXPECT_EQ(got.open_up_first, c.open_up);
    EXPECT_EQ(rules_of(got), c.rules);
    for (const Reason& each : got.reasons) EXPECT_FALSE(each.source.empty());
  }
}

TEST(Verdict, GivesReasonsWithTheirFigures) {
  const Result got = weighed([](survey::Survey& s) {
    s.zones[11].reference_mm = {1, 1, 1};
    s.zones[11].found = {measured("middle", .80)};
    s.zones[51].found = {spot("rear end", Rust::scale)};
    s.zones[51].found[0].at = {450, -690, 200};
    s.zones[62].repairs = {repair(RepairKind::plated_over, Joint::stitch, Beneath::over_rust)};
  });
  std::vector<std::string> texts;
  for (const Reason& each : got.reasons) texts.push_back(each.text);
  EXPECT_EQ(texts,
            (std::vector<std::string>{
                "spring hanger, right (62): repair (plated-over, stitch, beneath over-rust, now "
                "sound) can't be relied on: a plate over rust",
                "tunnel (11), middle: thin, 80 % of the sheet left (75 to 85 %), measured; "
                "load-bearing metal is to keep 85 %",
            }));
}

TEST(Verdict, TellsWhatAHiddenPlaceCouldBecome) {
  const Result got = weighed([](survey::Survey& s) {
    s.seen[11].word = SeenWord::hidden;
    s.seen[61].word = SeenWord::hidden;
  });
  ASSERT_EQ(got.open_up.size(), 2);
  EXPECT_EQ(got.open_up[0].zone, 61);
  EXPECT_EQ(got.open_up[0].could_become, Verdict::keep_parked);
  EXPECT_EQ(got.open_up[0].why, "the front spring hanger stands on it");
  EXPECT_EQ(got.open_up[1].zone, 11);
  EXPECT_EQ(got.open_up[1].could_become, Verdict::mend);
}

TEST(Rank, WorstFirst) {
  const Result got = weighed([](survey::Survey& s) {
    s.zones[41].found = {spot("skin hole", Rust::hole)};
    s.zones[71].found = {placed("local hole", Rust::hole, {2300, -600, 300}, {20, 20})};
    s.zones[11].found = {spot("film", Rust::surface), gives("weak"), spot("station", Rust::none)};
    s.zones[61].found = {gives("hanger"), spot("hanger film", Rust::surface)};
  });
  std::vector<std::string> names;
  for (const Spot* each : got.ranked()) names.push_back(each->name);
  EXPECT_EQ(names, (std::vector<std::string>{"hanger", "weak", "local hole", "hanger film", "film",
                                             "skin hole"}));
}

// Two boxes alike: which of their places is the larger ranks them, not which box the plan names
// first; number and name break a full tie alone.
TEST(Rank, TiesOfTwoBoxesGoByAreaThenByNumber) {
  const auto first = [](bool right_first, double left_mm, double right_mm) {
    body::Plan plan = fixture::plan();
    body::Box left;
    left.name = "left";
    left.from_mm = 400;
    left.to_mm = 1400;
    left.points = {{"a", {-720, 130}}, {"b", {-720, 300}}, {"c", {-650, 300}}, {"d", {-650, 130}}};
    left.walls = {{"a b c d a", 51, {}}};
    body::Box right = left;
    right.name = "right";
    for (auto& [name, point] : right.points) point.u = -point.u;
    right.walls = {{"a b c d a", 52, {}}};
    plan.boxes = right_first ? std::vector{right, left} : std::vector{left, right};
    survey::Survey survey = fixture::sound_survey(std::move(plan));
    const auto gives_at = [](double y, double size_mm) {
      survey::Spot spot = placed("end", Rust::scale, {700, y, 200}, {60, size_mm});
      spot.hand = Hand::gives;
      return spot;
    };
    survey.zones[51].found = {gives_at(-720, left_mm)};
    survey.zones[52].found = {gives_at(720, right_mm)};
    return weigh(survey, {}).ranked().front()->zone;
  };
  for (const bool right_first : {false, true}) {
    EXPECT_EQ(first(right_first, 40, 41), 52);
    EXPECT_EQ(first(right_first, 41, 40), 51);
    EXPECT_EQ(first(right_first, 40, 40), 51);
  }
}

TEST(Repair, IsReliedOnByKindJointAndState) {
  const struct {
    survey::Repair repair;
    std::optional<bool> reliable;
  } cases[] = {
      {repair(RepairKind::new_panel, Joint::seam_weld), true},
      {repair(RepairKind::new_panel, Joint::plug_weld), true},
      {repair(RepairKind::new_panel, Joint::spot_weld), true},
      {repair(RepairKind::new_panel, Joint::stitch), false},
      {repair(RepairKind::new_panel), std::nullopt},
      {repair(RepairKind::let_in, Joint::seam_weld), true},
      {repair(RepairKind::let_in, Joint::plug_weld), false},
      {repair(RepairKind::let_in), std::nullopt},
      {repair(RepairKind::let_in, Joint::seam_weld, Beneath::over_rust), false},
      {repair(RepairKind::lapped, Joint::seam_weld), true},
      {repair(RepairKind::lapped, Joint::spot_weld), false},
      {repair(RepairKind::lapped, Joint::no_weld), false},
      {repair(RepairKind::plated_over, Joint::seam_weld, Beneath::cut_out), true},
      {repair(RepairKind::plated_over, Joint::seam_weld, Beneath::unknown), false},
      {repair(RepairKind::plated_over, Joint::seam_weld), false},
      {repair(RepairKind::plated_over, Joint::seam_weld, Beneath::over_rust), false},
      {repair(RepairKind::plated_over, {}, Beneath::cut_out), false},
      {repair(RepairKind::brazed), false},
      {repair(RepairKind::bonded), false},
      {repair(RepairKind::riveted), false},
      {repair(RepairKind::filled), false},
      {repair(RepairKind::treated), std::nullopt},
      {repair(RepairKind::let_in, Joint::seam_weld, {}, Now::poor_weld), false},
      {repair(RepairKind::let_in, Joint::seam_weld, {}, Now::rusting), false},
      {repair(RepairKind::new_panel, Joint::seam_weld, {}, Now::lifting), false},
      {repair(RepairKind::new_panel, Joint::seam_weld, {}, Now::cracked), false},
      {repair(RepairKind::let_in, {}, {}, Now::cracked), false},
  };
  int row = 0;
  for (const auto& c : cases)
    EXPECT_EQ(judge(c.repair, body::Role::main).reliable, c.reliable) << "row " << row++;
}

TEST(Gap, IsOnTheSideItTells) {
  using body::Side;
  const struct {
    survey::Gap gap;
    std::vector<Side> sides;
  } cases[] = {
      {{.where = "door, rear edge", .side = Side::left}, {Side::left}},
      {{.where = "left door", .side = Side::right}, {Side::right}},  // what is told counts
      {{.where = "left door, rear edge"}, {Side::left}},
      {{.where = "right and left door"}, {Side::left, Side::right}},
      {{.where = "door, rear edge"}, {Side::left, Side::right}},
  };
  for (const auto& each : cases) EXPECT_EQ(sides_of(each.gap), each.sides) << each.gap.where;
}

}  // namespace
}  // namespace tinworm::weighing
