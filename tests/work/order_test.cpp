// The order of work on the small body: which task waits for which.
#include <gtest/gtest.h>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "work/fixture.hpp"
#include "work/job.hpp"

namespace tinworm::work {
namespace {

using fixture::hole;
using fixture::planned;

// "brace 0, cut 51 after 1": tasks in order.
std::string text(const Plan& plan) {
  std::vector<std::string> all;
  for (const Task& task : plan.tasks)
    all.push_back(fmt::format("{} {}{}{}", word(task.kind), task.zone,
                              task.after.empty() ? "" : " after ", fmt::join(task.after, "+")));
  return fmt::format("{}", fmt::join(all, ", "));
}

survey::Survey with_holes(const std::vector<int>& zones) {
  survey::Survey survey = fixture::sound_survey();
  for (const int number : zones) {
    const geometry::Box3& extent = survey.body->zone(number)->extent;
    survey.zones[number].found = {
        hole("spot", {extent.x.middle(), extent.y.middle(), extent.z.middle()}, {60, 40})};
  }
  return survey;
}

TEST(Order, OfTasks) {
  const struct {
    const char* what;
    std::vector<int> holed;
    const char* tasks;
  } cases[] = {
      {"nothing", {}, ""},
      {"one part, then its protection", {11}, "cut 11, protect 0 after 1"},
      {"a mounting before stiffness before spread",
       {71, 11, 61},
       "cut 61, cut 11, cut 71, protect 0 after 1+2+3"},
      {"a sill is braced first", {51}, "brace 0, cut 51 after 1, protect 0 after 2"},
      {"one side at a time, left where both are alike",
       {51, 52},
       "brace 0, cut 51 after 1, cut 52 after 1+2, protect 0 after 2+3"},
      {"a hanger behind the sill before it",
       {51, 61},
       "cut 61, brace 0, cut 51 after 1+2, protect 0 after 1+3"},
      {"skin last", {41, 11}, "cut 11, cut 41, protect 0 after 1+2"},
  };
  for (const auto& each : cases)
    EXPECT_EQ(text(planned(with_holes(each.holed))), each.tasks) << each.what;
}

TEST(Order, BeginsWithTheSounderSide) {
  survey::Survey survey = with_holes({51, 52});
  survey.zones[51].found[0].size = survey::Size{300, 40};
  EXPECT_EQ(text(planned(survey)),
            "brace 0, cut 52 after 1, cut 51 after 1+2, protect 0 after 2+3");
}

TEST(Order, OpensThePartsDrainsFirst) {
  survey::Survey survey = with_holes({11});
  survey.zones[11].drains = survey::Drains::blocked;
  survey.zones[71].drains = survey::Drains::open;
  EXPECT_EQ(text(planned(survey)), "drains 11, cut 11 after 1, protect 0 after 2");
}

// Two parts that hide each other, and a ring of three: the plan is made all the same.
// The skin is the least urgent of all cuts, and yet cut before the frame's film of rust is coated.
TEST(Order, WeldsBeforeItCoats) {
  survey::Survey survey = with_holes({41});
  survey.zones[11].found = {fixture::car::spot("film", survey::Rust::surface)};
  EXPECT_EQ(text(planned(survey)), "cut 41, treat 11, protect 0 after 1");
}

TEST(Order, OutlivesPartsThatHideEachOther) {
  body::Plan ring = fixture::body_plan();
  for (body::Zone& zone : ring.zones) {
    if (zone.number == 11) zone.hides = {61};
    if (zone.number == 61) zone.hides = {62};
    if (zone.number == 62) zone.hides = {11};
  }
  survey::Survey survey = with_holes({11, 61, 62});
  survey.body = std::make_shared<const body::Plan>(ring);
  const Plan made = planned(survey);
  ASSERT_EQ(made.tasks.size(), 4u);
  EXPECT_EQ(made.tasks[0].zone, 61) << "a mounting stands on it";
  EXPECT_TRUE(made.tasks[0].after.empty());
}

TEST(Order, SaysWhereItBreaksARing) {
  body::Plan ring = fixture::body_plan();
  for (body::Zone& zone : ring.zones) {
    if (zone.number == 61) zone.hides = {62};
    if (zone.number == 62) zone.hides = {71};
    if (zone.number == 71) zone.hides = {61};
    if (zone.number == 71) zone.job = body::Job::spring_hanger_rear;
  }
  survey::Survey survey = with_holes({61, 62, 71});
  EXPECT_TRUE(planned(survey).order_notes.empty());
  survey.body = std::make_shared<const body::Plan>(ring);
  const Plan made = planned(survey);
  ASSERT_EQ(made.tasks.size(), 4u);
  ASSERT_EQ(made.order_notes.size(), 1u);
  EXPECT_EQ(made.order_notes[0],
            "by the body plan 61 spring hanger waits for 62 spring hanger, and that for it in "
            "turn: this order begins with the former; look which lies behind");
}

// Joined parts by what they stand on, whatever their names: pan before inner sill, jacking point
// and outrigger after it, membrane before the outer sill.
TEST(Order, FollowsWhatIsJoinedToWhat) {
  const struct {
    const char* what;
    std::vector<int> holed;
    const char* tasks;
  } cases[] = {
      {"jacking point and outrigger after the inner sill",
       {57, 63, 55},
       "brace 0, cut 55 after 1, cut 57 after 2, cut 63 after 2, protect 0 after 2+3+4"},
      {"floor before the inner sill, and before the outrigger",
       {63, 55, 65},
       "brace 0, cut 65, cut 55 after 1+2, cut 63 after 2+3, protect 0 after 2+3+4"},
      {"inner, membrane, outer; the outer goes anyway, so no access",
       {51, 53, 55},
       "brace 0, cut 55 after 1, cut 53 after 1+2, cut 51 after 1+2+3, protect 0 after 2+3+4"},
      {"a membrane alone: its access first",
       {53},
       "brace 0, access 51 after 1, cut 53 after 1+2, protect 0 after 2+3"},
      {"both sides: the sounder first, never both open",
       {52, 53, 55},
       "brace 0, cut 52 after 1, cut 55 after 1+2, access 51 after 1+2, cut 53 after 1+2+3+4, "
       "protect 0 after 2+3+4+5"},
  };
  for (const auto& each : cases) {
    survey::Survey survey = fixture::car::sound_survey(fixture::layered_plan());
    fixture::add_holes(survey, each.holed);
    EXPECT_EQ(text(planned(survey)), each.tasks) << each.what;
  }
}

// Only judged, so it waits for what is holed; but not where something sure stands on it.
TEST(Order, DoesWhatIsHoledBeforeItMeasures) {
  survey::Survey survey = fixture::car::sound_survey(fixture::layered_plan());
  survey.zones[61].found = {
      fixture::car::placed("spot", survey::Rust::scale, {1500, -600, 300}, {60, 40})};
  fixture::add_holes(survey, {11});
  EXPECT_EQ(text(planned(survey)), "cut 11, cut 61, protect 0 after 1+2");
}

TEST(Jobs, AreToldByTheBodyPlanNotByNames) {
  using body::Job;
  const struct {
    Job part;
    rates::Job job;
  } cases[] = {
      {Job::outer_sill, rates::Job::outer_sill},
      {Job::inner_sill, rates::Job::inner_sill},
      {Job::sill_membrane, rates::Job::inner_sill},
      {Job::cross_member, rates::Job::cross_member},
      {Job::floor, rates::Job::floor},
      {Job::spring_hanger_front, rates::Job::spring_hanger_front},
      {Job::outer_arch, rates::Job::outer_arch},
      {Job::post_foot, rates::Job::post_foot},
      {Job::roof, rates::Job::other_part},
      {Job::other_part, rates::Job::other_part},
  };
  for (const auto& each : cases) EXPECT_EQ(job_of(each.part), each.job) << body::word(each.part);
  weighing::ZoneFacts own;
  own.name = "outer sill";
  EXPECT_EQ(kind_of_part(own), Job::other_part) << "a name alone says nothing";
}

// Every kind that the rates know has the same word in the body plan.
TEST(Jobs, HaveTheSameWordsAsTheRates) {
  for (std::size_t i = 0; i <= static_cast<std::size_t>(body::Job::other_part); ++i) {
    const auto part = static_cast<body::Job>(i);
    if (part == body::Job::sill_membrane || part == body::Job::roof) continue;
    EXPECT_EQ(body::word(part), rates::key(job_of(part)));
  }
}

}  // namespace
}  // namespace tinworm::work
