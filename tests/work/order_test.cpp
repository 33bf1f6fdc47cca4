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
  survey::Survey survey = fixture::car::sound_survey();
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
  body::Plan ring = fixture::car::plan();
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

TEST(Jobs, AreToldByTheNameOfAPart) {
  using rates::Job;
  const struct {
    const char* name;
    Job job;
  } cases[] = {
      {"outer sill", Job::outer_sill},
      {"inner sill", Job::inner_sill},
      {"sill membrane", Job::inner_sill},
      {"floor cross-member", Job::cross_member},
      {"front floor", Job::floor},
      {"boot floor", Job::boot_floor},
      {"front spring hanger", Job::spring_hanger_front},
      {"rear spring hanger", Job::spring_hanger_rear},
      {"inner rear wheel arch", Job::inner_arch},
      {"rear arch lip", Job::outer_arch},
      {"A-post and foot", Job::post_foot},
      {"windscreen frame", Job::screen_corner},
      {"rear wing", Job::rear_wing},
      {"heel board and seat pan", Job::other_part},
  };
  for (const auto& each : cases) EXPECT_EQ(job_of(each.name), each.job) << each.name;
}

}  // namespace
}  // namespace tinworm::work
