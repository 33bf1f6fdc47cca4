// What a plan asks about seams, and where it is silent: no figure without a published source.
#include "work/splices.hpp"

#include <gtest/gtest.h>

#include "work/fixture.hpp"

namespace tinworm::work {
namespace {

struct Case {
  const char* what;
  body::Job part;
  body::Build build;
  geometry::Interval at;  // of a part from 400 to 1400
  std::vector<const char*> asked;
};

Cut piece(const geometry::Interval& at) {
  Cut cut;
  cut.places = {"spot"};
  cut.along_at = at;
  return cut;
}

// Asks on a part of that kind, main structure.
std::vector<std::string> asked(body::Job part, body::Build build, const std::vector<Cut>& cuts) {
  body::Plan plan = fixture::body_plan();
  for (body::Zone& zone : plan.zones)
    if (zone.number == 11) zone.job = part, zone.build = build;
  const survey::Survey survey = fixture::car::sound_survey(plan);
  for (const auto& zone : weighing::zone_facts(survey))
    if (zone.number == 11) return splice_questions(cuts, zone);
  return {};
}

TEST(Splices, AreAskedAboutByTheirSource) {
  using body::Build, body::Job;
  const char* frames = "TM 9-3990-260-14&P, 5-6";
  const char* containers = "TM 55-8115-203-23, 3-19 to 3-28";
  const Case cases[] = {
      {"a leg, 299 from its end", Job::chassis_leg, Build::box, {699, 900}, {frames}},
      {"a leg, 300 from both ends", Job::chassis_leg, Build::box, {700, 1100}, {}},
      {"a rail, 149 long", Job::main_rail, Build::box, {800, 949}, {frames}},
      {"a rail, 150 long", Job::main_rail, Build::box, {800, 950}, {}},
      {"another box, 299 from its end", Job::cross_member, Build::box, {699, 900}, {}},
      {"another box, 149 from its end", Job::cross_member, Build::box, {549, 900}, {containers}},
      {"to the end, and 200 long", Job::cross_member, Build::box, {400, 600}, {}},
      {"from end to end", Job::chassis_leg, Build::box, {400, 1400}, {}},
      {"single sheet: no source", Job::floor, Build::single, {410, 440}, {}},
  };
  for (const Case& each : cases) {
    const auto questions = asked(each.part, each.build, {piece(each.at)});
    ASSERT_EQ(questions.size(), each.asked.size()) << each.what;
    for (std::size_t i = 0; i < questions.size(); ++i)
      EXPECT_NE(questions[i].find(each.asked[i]), std::string::npos) << questions[i];
  }
}

TEST(Splices, AreNotAskedAboutWhereNothingIsSure) {
  Cut judged = piece({410, 440});
  judged.certain = false;
  EXPECT_TRUE(asked(body::Job::chassis_leg, body::Build::box, {judged}).empty());
  Cut nowhere = piece({410, 440});
  nowhere.along_at.reset();
  EXPECT_TRUE(asked(body::Job::chassis_leg, body::Build::box, {nowhere}).empty());
}

TEST(Splices, AskWhetherAShortCrackNeedsItsPlate) {
  Cut crack = piece({800, 900});
  crack.way = Way::crack;
  crack.plated = true;
  for (const auto& [length_mm, questions] : {std::pair(49.0, 1u), std::pair(50.0, 0u)}) {
    crack.crack_mm = length_mm;
    EXPECT_EQ(asked(body::Job::floor, body::Build::single, {crack}).size(), questions) << length_mm;
  }
}

}  // namespace
}  // namespace tinworm::work
