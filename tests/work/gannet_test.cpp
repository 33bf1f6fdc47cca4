// The plan of work of gannet.yaml, a saloon whose left sill is gone through, by hand before it was
// run.
//
// As a welder would: brace, doors hung. The spring eye's box first, from which that end of the sill
// hangs; its pinhole is welded up. Then the sounder side whole: the right sill's membrane is
// reached by a cut in its sound outer sill, mended, the piece welded in again; only then the left
// is opened. There from the inside out: inner sill, membrane, outer sill, both of the latter end to
// end since they are holed near an end. Jacking point and outrigger are welded to the inner sill,
// so after it.
//
// Outlines from panels/two-door-saloon.yaml, rates by default (wherry_test.cpp has them). Lengths
// mm. Every part here is a box: 2, 2.5, 3.3 h a piece. Seen by scope x 1.3, coated x 1.6, else
// x 1.15.
//
// 79 pinhole of 5: .3 and .5 h, weld pi x 5; at worst a piece, middle -490, 240: with 50 mm -542.5
// to
//   -430 (its edge) by 225 (edge) to 292.5: 112.5 x 67.5, weld .36 m, 3.3 + .36/.15 = 5.7 h x 1.15.
// 54 80 x 40 at 480, 225, part 430 to 2004 and 194.8735 to 325: with 25 mm 430 to 545, to 270; with
//   35 mm to 555, 280; with 50 mm to 570, 325: weld .380253, .420253, .540253 m; 2 + .380253/.4,
//   2.5 + .420253/.25, (3.3 + .540253/.15) x 1.3 h.
// 52 access, margins wider: 165 x 125.1265, 195 x 155.1265, 240 x 158 (the sill's own): weld
//   .580253, .700253, .796 m; 2 + .580253/.4, 2.5 + .700253/.25, (3.3 + .796/.15) x 1.3 h.
// 55 200 x 80 at 1940, 200, moved into 430 to 2006, 192 to 335: 1806 to 2006, 192 to 272; with 25
// mm
//   225 x 105, 35 mm 235 x 143 (28 from the upper edge), 50 mm 250 x 143: weld .66, .756, .786 m.
// 53 whole, 1574 x 130.1265: weld 3.408253 m, 10.5 h and more, so the job's 6, 10, 14 h, x 1.3.
// 51 whole, 1650 x 158: weld 3.616 m, 11 h and more, so the job's 8, 12, 16 h, x 1.6.
// 57 40 x 30 at -590, 1235: every side within 30 of the edge, 85 x 130, weld .43 m; 3.075, 4.22,
//   6.167 h, at most the job's 3 and 6; 6 x 1.15.
// 63 50 x 40 at -570, 200, moved to -595 to -545 and 190 to 230: 85 x 65, 95 x 75, 110 x 110: weld
//   .3, .34, .44 m.
// All within what the trade takes: a full sill of a saloon, one side, 14 to 30 h; here 9.65 and
// 27.52 h likely, jacking point 3 to 6, outrigger 4 to 8 whole.
#include <gtest/gtest.h>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "paths.hpp"
#include "verbs/plan_shelf.hpp"
#include "verbs/surveys.hpp"
#include "weighing/weigh.hpp"
#include "work/plan.hpp"

namespace tinworm::work {
namespace {

const Plan& gannet() {
  static const Plan made = [] {
    verbs::PlanShelf plans("");
    const auto loaded = verbs::load_survey(source_folder() + "/tests/work/gannet.yaml", plans);
    if (!loaded.survey) throw std::runtime_error("the survey can't be read");
    return plan(weighing::weigh(*loaded.survey, {}), {});
  }();
  return made;
}

TEST(GannetWork, IsOrderedAsAWelderWould) {
  std::vector<std::string> tasks;
  for (const Task& task : gannet().tasks)
    tasks.push_back(fmt::format("{} {}{}{}", word(task.kind), task.zone,
                                task.after.empty() ? "" : " after ", fmt::join(task.after, "+")));
  EXPECT_EQ(fmt::format("{}", fmt::join(tasks, ", ")),
            "brace 0, cut 79, access 52 after 1, cut 54 after 1+3, cut 55 after 1+2+3+4, cut 53 "
            "after 1+3+4+5, cut 51 after 1+3+4+5+6, cut 57 after 5, cut 63 after 5, protect 0 "
            "after 2+3+4+5+6+7+8+9");
  EXPECT_TRUE(gannet().order_notes.empty());
}

TEST(GannetWork, CutsWeldAndHours) {
  const struct {
    int zone;
    double along_mm, across_mm;  // likely
    Range hours, weld_m;
  } worked[] = {
      {79, 5, 5, {.3, .5, 6.555}, {.015708, .015708, .414}},
      {52, 195, 155.1265, {3.4506325, 5.301012, 11.188667}, {.580253, .700253, 1.0348}},
      {54, 125, 85.1265, {2.9506325, 4.181012, 8.972193}, {.380253, .420253, .702329}},
      {55, 235, 143, {3.65, 5.524, 9.821}, {.66, .756, .9039}},
      {53, 1574, 130.1265, {6, 10, 18.2}, {3.408253, 3.408253, 4.430729}},
      {51, 1650, 158, {8, 12, 25.6}, {3.616, 3.616, 5.7856}},
      {57, 85, 130, {3, 4.22, 6.9}, {.43, .43, .4945}},
      {63, 95, 75, {2.75, 3.86, 7.168333}, {.3, .34, .506}},
  };
  for (const auto& each : worked) {
    SCOPED_TRACE(each.zone);
    const auto task = std::ranges::find(gannet().tasks, each.zone, &Task::zone);
    ASSERT_NE(task, gannet().tasks.end());
    ASSERT_EQ(task->cuts.size(), 1u);
    EXPECT_NEAR(task->cuts[0].along_mm.likely, each.along_mm, 1e-3);
    EXPECT_NEAR(task->cuts[0].across_mm.likely, each.across_mm, 1e-3);
    for (const auto figure : {&Range::low, &Range::likely, &Range::high}) {
      EXPECT_NEAR(task->hours.*figure, each.hours.*figure, 2e-5);
      EXPECT_NEAR(task->weld_m.*figure, each.weld_m.*figure, 2e-5);
    }
  }
}

// 54's piece is 125 long. 63's is 95, and 87 from the arm's other end. 57 goes from edge to edge.
TEST(GannetWork, AsksOfSeamsByTheirSource) {
  const std::string source =
      "US Army TM 55-8115-203-23, 3-19 to 3-28, has pieces of 150 mm or more, their ends 150 mm or "
      "more from other seams (containers: an analogy)";
  std::vector<std::string> asked;
  for (const Task& task : gannet().tasks)
    for (const std::string& question : task.questions)
      asked.push_back(fmt::format("{} {}", task.zone, question));
  EXPECT_EQ(asked, (std::vector<std::string>{
                       "54 front end: should the piece be longer than 125 mm? " + source,
                       "63 outer end: should the piece be longer than 95 mm? " + source,
                       "63 outer end: a new seam comes 87 mm from another: should the piece go on "
                       "to it? " +
                           source}));
}

TEST(GannetWork, IsAllSure) {
  EXPECT_EQ(gannet().sure.cost.mean, gannet().cost.mean);
  EXPECT_EQ(gannet().if_opening_shows.cost.mean, 0);
}

}  // namespace
}  // namespace tinworm::work
