// The plan of work of output-samples/wherry-2025.yaml by hand, every task and the totals.
//
// Steps of its places as worked in tests/weighing/wherry_test.cpp and shown by `weigh`; parts'
// outlines and stations as drawn in panels/two-door-saloon.yaml (53 dips to 194.8735 between its
// points, 97 is the arc of 356 mm about (2400, 300), 656 at its top). Defaults of
// src/rates: margin 25, 35, 50 mm; to the edge within 30 mm; weld .15, .25, .40 m/h, the fast one
// for the low figure; a piece takes .4, .5, .6 h in single sheet, 2, 2.5, 3.3 h with a fold or
// second skin; 65 EUR/h with 8, 11.5, 15 % of consumables; sheet 5 EUR/kg, 25 % over, 7850 kg/m3.
// Lengths mm.
//
// 73 rear corner: part 1180 to 1930 along its run, -605 to -142 across; middle 1890, -560; 150 x
//   90. Sure; high x 1.15.
//   low: 1780 to 1930 and -605 to -515; with 25 mm 1755 to 1930 and -605 to -490: 175 x 115, weld
//     0.58 m; 0.4 + 0.58/0.4 = 1.85 h; sheet 175 x 115 x 1.25 = 0.0252 m2, x 0.9 x 7.85 = 0.1777
//     kg; 1.85 x 65 x 1.08 + 5 x 0.1777 = 130.76
//   likely: 1780 to 1930 and -605 to -515; with 35 mm 1745 to 1930 and -605 to -480: 185 x 125,
//     weld 0.62 m; 0.5 + 0.62/0.25 = 2.98 h; sheet 185 x 125 x 1.25 = 0.0289 m2, x 0.9 x 7.85 =
//     0.2042 kg; 2.98 x 65 x 1.115 + 5 x 0.2042 = 217.00
//   high: 1780 to 1930 and -605 to -515; with 50 mm 1730 to 1930 and -605 to -465: 200 x 140, weld
//     0.68 m; 0.6 + 0.68/0.15 = 5.1333 h, x 1.15 = 5.9033; sheet 200 x 140 x 1.25 x 1.15 = 0.0403
//     m2, x 0.9 x 7.85 = 0.2844 kg; 5.9033 x 65 x 1.15 + 5 x 0.2844 = 442.70
// 59 foot: part 325 to 897 along its run, 430 to 624 across; middle 370, 520; 120 x 70. Only
//   judged; high x 1.6.
//   low: may be not cut at all: treated, .3 h.
//   likely: 325 to 445 and 485 to 555; with 35 mm 325 to 480 and 430 to 590: 155 x 160, weld 0.63
//     m; 2.5 + 0.63/0.25 = 5.02 h; sheet 155 x 160 x 1.25 = 0.031 m2, x 0.9 x 7.85 = 0.219 kg;
//     5.02 x 65 x 1.115 + 5 x 0.219 = 364.92
//   high: 325 to 445 and 485 to 555; with 50 mm 325 to 495 and 430 to 624: 170 x 194, weld 0.728
//     m; 3.3 + 0.728/0.15 = 8.1533 h, x 1.6 = 13.0453; sheet 170 x 194 x 1.25 x 1.6 = 0.066 m2, x
//     0.9 x 7.85 = 0.466 kg; 13.0453 x 65 x 1.15 + 5 x 0.466 = 977.47
// 71 foot: part 325 to 1307 along its run, -780 to -590 across; middle 380, -700; 50 x 40. Only
//   judged; high x 1.6.
//   low: may be not cut at all: treated, .3 h.
//   likely: 355 to 405 and -720 to -680; with 35 mm 325 to 440 and -780 to -645: 115 x 135, weld
//     0.5 m; 2.5 + 0.5/0.25 = 4.5 h; sheet 115 x 135 x 1.25 = 0.0194 m2, x 1.2 x 7.85 = 0.1828 kg;
//     4.5 x 65 x 1.115 + 5 x 0.1828 = 327.05
//   high: 355 to 405 and -720 to -680; with 50 mm 325 to 455 and -780 to -630: 130 x 150, weld
//     0.56 m; 3.3 + 0.56/0.15 = 7.0333 h, x 1.6 = 11.2533; sheet 130 x 150 x 1.25 x 1.6 = 0.039
//     m2, x 1.2 x 7.85 = 0.3674 kg; 11.2533 x 65 x 1.15 + 5 x 0.3674 = 843.02
// 75 lower end: part 325 to 640 along its run, 1782 to 2153 across; middle 360, 1900; 70 x 50.
//   Only judged; high x 1.6.
//   low: may be not cut at all: treated, .3 h.
//   likely: 325 to 395 and 1875 to 1925; with 35 mm 325 to 430 and 1840 to 1960: 105 x 120, weld
//     0.45 m; 2.5 + 0.45/0.25 = 4.3 h; sheet 105 x 120 x 1.25 = 0.0158 m2, x 1.0 x 7.85 = 0.1236
//     kg; 4.3 x 65 x 1.115 + 5 x 0.1236 = 312.26
//   high: 325 to 395 and 1875 to 1925; with 50 mm 325 to 445 and 1825 to 1975: 120 x 150, weld
//     0.54 m; 3.3 + 0.54/0.15 = 6.9 h, x 1.6 = 11.04; sheet 120 x 150 x 1.25 x 1.6 = 0.036 m2, x
//     1.0 x 7.85 = 0.2826 kg; 11.04 x 65 x 1.15 + 5 x 0.2826 = 826.65
// 53 rear end: part 430 to 2004 along its run, 194.8735 to 325 across; middle 1950, 225; 150 x 50.
//   Sure; high x 1.15.
//   low: 1854 to 2004 and 200 to 250; with 25 mm 1829 to 2004 and 194.8735 to 275: 175 x 80.1265,
//     weld 0.5103 m; 2 + 0.5103/0.4 = 3.2756 h; sheet 175 x 80.1265 x 1.25 = 0.0175 m2, x 1.2 x
//     7.85 = 0.1651 kg; 3.2756 x 65 x 1.08 + 5 x 0.1651 = 230.77
//   likely: 1854 to 2004 and 200 to 250; with 35 mm 1819 to 2004 and 194.8735 to 285: 185 x
//     90.1265, weld 0.5503 m; 2.5 + 0.5503/0.25 = 4.701 h; sheet 185 x 90.1265 x 1.25 = 0.0208 m2,
//     x 1.2 x 7.85 = 0.1963 kg; 4.701 x 65 x 1.115 + 5 x 0.1963 = 341.69
//   high: 1854 to 2004 and 200 to 250; with 50 mm 1804 to 2004 and 194.8735 to 325: 200 x
//     130.1265, weld 0.6603 m; 3.3 + 0.6603/0.15 = 7.7017 h, x 1.15 = 8.8569; sheet 200 x 130.1265
//     x 1.25 x 1.15 = 0.0374 m2, x 1.2 x 7.85 = 0.3524 kg; 8.8569 x 65 x 1.15 + 5 x 0.3524 =
//     663.82
// 51 rear end: part 430 to 2080 along its run, 192 to 350 across; middle 1960, 220; 180 x 60.
//   Sure; high x 1.6.
//   low: 1870 to 2050 and 192 to 252; with 25 mm 1845 to 2080 and 192 to 277: 235 x 85, weld 0.64
//     m; 2 + 0.64/0.4 = 3.6 h + 1 x 0.3; sheet 235 x 85 x 1.25 = 0.025 m2, x 1.2 x 7.85 = 0.2352
//     kg; 3.9 x 65 x 1.08 + 5 x 0.2352 = 274.96
//   likely: 1870 to 2050 and 192 to 252; with 35 mm 1835 to 2080 and 192 to 287: 245 x 95, weld
//     0.68 m; 2.5 + 0.68/0.25 = 5.22 h + 1 x 0.5; sheet 245 x 95 x 1.25 = 0.0291 m2, x 1.2 x 7.85
//     = 0.2741 kg; 5.72 x 65 x 1.115 + 5 x 0.2741 = 415.93
//   high: 1870 to 2050 and 192 to 252; with 50 mm 1820 to 2080 and 192 to 302: 260 x 110, weld
//     0.74 m; 3.3 + 0.74/0.15 = 8.2333 h + 1 x 1.0, x 1.6 = 14.7733; sheet 260 x 110 x 1.25 x 1.6
//     = 0.0572 m2, x 1.2 x 7.85 = 0.5388 kg; 14.7733 x 65 x 1.15 + 5 x 0.5388 = 1107.00
// 96 ahead of the wheel: part 1668 to 3278 along its run, 270 to 1330 across; middle 1900, 330; 50
//   x 40. Only judged; high x 1.6.
//   low: may be not cut at all: treated, .3 h.
//   likely: 1875 to 1925 and 310 to 350; with 35 mm 1840 to 1960 and 270 to 385: 120 x 115, weld
//     0.47 m; 0.5 + 0.47/0.25 = 2.38 h; sheet 120 x 115 x 1.25 = 0.0173 m2, x 0.9 x 7.85 = 0.1219
//     kg; 2.38 x 65 x 1.115 + 5 x 0.1219 = 173.10
//   high: 1875 to 1925 and 310 to 350; with 50 mm 1825 to 1975 and 270 to 400: 150 x 130, weld
//     0.56 m; 0.6 + 0.56/0.15 = 4.3333 h, x 1.6 = 6.9333; sheet 150 x 130 x 1.25 x 1.6 = 0.039 m2,
//     x 0.9 x 7.85 = 0.2755 kg; 6.9333 x 65 x 1.15 + 5 x 0.2755 = 519.64
// 95 ahead of the wheel: part 1668 to 3278 along its run, 270 to 1330 across; middle 1900, 330;
//   110 x 70. Only judged; high x 1.6.
//   low: may be not cut at all: treated, .3 h.
//   likely: 1845 to 1955 and 295 to 365; with 35 mm 1810 to 1990 and 270 to 400: 180 x 130, weld
//     0.62 m; 0.5 + 0.62/0.25 = 2.98 h; sheet 180 x 130 x 1.25 = 0.0293 m2, x 0.9 x 7.85
//     = 0.2067 kg; 2.98 x 65 x 1.115 + 5 x 0.2067 = 217.01
//   high: 1845 to 1955 and 295 to 365; with 50 mm 1795 to 2005 and 270 to 415: 210 x 145, weld
//     0.71 m; 0.6 + 0.71/0.15 = 5.3333 h, x 1.6 = 8.5333; sheet 210 x 145 x 1.25 x 1.6
//     = 0.0609 m2, x 0.9 x 7.85 = 0.4303 kg; 8.5333 x 65 x 1.15 + 5 x 0.4303 = 640.02
// 17 left end: part -690 to 690 along its run, 470 to 748 across; middle -630, 640; 200 x 60. Only
//   judged; high x 1.6.
//   low: may be not cut at all: treated, .3 h.
//   likely: -690 to -490 and 610 to 670; with 35 mm -690 to -455 and 575 to 705: 235 x 130, weld
//     0.73 m; 2.5 + 0.73/0.25 = 5.42 h; sheet 235 x 130 x 1.25 = 0.0382 m2, x 0.9 x 7.85 = 0.2698
//     kg; 5.42 x 65 x 1.115 + 5 x 0.2698 = 394.16
//   high: -690 to -490 and 610 to 670; with 50 mm -690 to -440 and 560 to 748: 250 x 188, weld
//     0.876 m; 3.3 + 0.876/0.15 = 9.14 h, x 1.6 = 14.624; sheet 250 x 188 x 1.25 x 1.6 = 0.094 m2,
//     x 0.9 x 7.85 = 0.6641 kg; 14.624 x 65 x 1.15 + 5 x 0.6641 = 1096.46
// 18 left lower corner: part -694 to 694 along its run, 850 to 1358 across; middle -640, 925; no
//   size: 50, 100, 200 square. Only judged; high x 1.6.
//   low: may be not cut at all: treated, .3 h.
//   likely: -690 to -590 and 875 to 975; with 35 mm -694 to -555 and 850 to 1010: 139 x 160, weld
//     0.598 m; 2.5 + 0.598/0.25 = 4.892 h; sheet 139 x 160 x 1.25 = 0.0278 m2, x 1.0 x 7.85 =
//     0.2182 kg; 4.892 x 65 x 1.115 + 5 x 0.2182 = 355.64
//   high: -694 to -494 and 850 to 1050; with 50 mm -694 to -444 and 850 to 1100: 250 x 250, weld 1
//     m; 3.3 + 1/0.15 = 9.9667 h, x 1.6 = 15.9467; sheet 250 x 250 x 1.25 x 1.6 = 0.125 m2, x 1.0
//     x 7.85 = 0.9813 kg; 15.9467 x 65 x 1.15 + 5 x 0.9813 = 1196.92
// 97 top: part 2044 to 2756 along its run, 270 to 656 across; middle 2400, 640; 60 x 20. Sure;
//   high x 1.6.
//   low: 2370 to 2430 and 630 to 650; with 25 mm 2345 to 2455 and 605 to 656: 110 x 51, weld 0.322
//     m; 2 + 0.322/0.4 = 2.805 h; sheet 110 x 51 x 1.25 = 0.007 m2, x 0.9 x 7.85 = 0.0495 kg;
//     2.805 x 65 x 1.08 + 5 x 0.0495 = 197.16
//   likely: 2370 to 2430 and 630 to 650; with 35 mm 2335 to 2465 and 595 to 656: 130 x 61, weld
//     0.382 m; 2.5 + 0.382/0.25 = 4.028 h; sheet 130 x 61 x 1.25 = 0.0099 m2, x 0.9 x 7.85 = 0.07
//     kg; 4.028 x 65 x 1.115 + 5 x 0.07 = 292.28
//   high: 2370 to 2430 and 630 to 650; with 50 mm 2320 to 2480 and 580 to 656: 160 x 76, weld
//     0.472 m; 3.3 + 0.472/0.15 = 6.4467 h, x 1.6 = 10.3147; sheet 160 x 76 x 1.25 x 1.6 = 0.0243
//     m2, x 0.9 x 7.85 = 0.1718 kg; 10.3147 x 65 x 1.15 + 5 x 0.1718 = 771.88
//
// Treated, .3, .5, 1.0 h a place, high x 1.15 where seen bare and the inside with it, x 1.6 else:
// 18 parts with one place at x 1.15 (.3, .5, 1.15 h; 21.06, 36.2375, 85.9625 EUR), 10 at x 1.6
// (.3, .5, 1.6 h; 21.06, 36.2375, 119.6 EUR), the boot floor with two (.6, 1, 3.2 h; 42.12, 72.475,
// 239.2 EUR). Two parts whose drains are shut: .3, .5, 1 h; 21.06, 36.2375, 74.75 EUR. Bracing 3,
// 5.5, 8 h: 210.6, 398.6125, 598 EUR. Protection 6, 9, 12 h: 421.2, 652.275, 897 EUR.
//
// Of 95 the rest is treated for sure, so by a task of its own.
//
// Totals of the 44 tasks. Hours: sums 32.5306, 77.4210, 183.1243; mean
// (32.5306 + 4 x 77.4210 + 183.1243)/6 = 87.5565; the sum of (h - l)/6 is
// (183.1243 - 32.5306)/6 = 25.0989, that of their squares 35.5667; variance
// .5 x 35.5667 + .5 x 25.0989^2, its root 18.2418; 87.5565 + .841621 x 18.2418 =
// 102.9091. Money: sums 2286.79, 5621.52, 13712.61; mean 6414.25; sum
// of (h - l)/6 1904.304, of squares 203099.6; root 1383.740; 6414.25 + .841621 x
// 1383.740 = 7578.83. Contingency, coated: 30, 45, 60 % of the mean 6414.25.
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "paths.hpp"
#include "verbs/plan_shelf.hpp"
#include "verbs/surveys.hpp"
#include "weighing/weigh.hpp"
#include "work/plan.hpp"
#include "work/price.hpp"

namespace tinworm::work {
namespace {

const Plan& wherry() {
  static const Plan made = [] {
    verbs::PlanShelf plans("");
    const auto loaded =
        verbs::load_survey(source_folder() + "/output-samples/wherry-2025.yaml", plans);
    if (!loaded.survey) throw std::runtime_error("the sample can't be read");
    return plan(weighing::weigh(*loaded.survey, {}), {});
  }();
  return made;
}

// The arcs of 97 are drawn as chords, which miss the arc's top by some 1e-5 mm.
constexpr double tiny = 2e-5;

void expect_range(const Range& is, const Range& worked, const char* what) {
  EXPECT_NEAR(is.low, worked.low, tiny) << what;
  EXPECT_NEAR(is.likely, worked.likely, tiny) << what;
  EXPECT_NEAR(is.high, worked.high, tiny) << what;
}

struct Worked {
  int zone;
  Range hours, cost, weld_m, area_m2;
};

const Worked cut_tasks[] = {
    {73,
     {1.850000, 2.980000, 5.903333},
     {130.758645, 216.996613, 442.695998},
     {0.580000, 0.620000, 0.782000},
     {0.025156, 0.028906, 0.040250}},
    {59,
     {0.300000, 5.020000, 13.045333},
     {21.060000, 364.919575, 977.468704},
     {0.000000, 0.630000, 1.164800},
     {0.000000, 0.031000, 0.065960}},
    {71,
     {0.300000, 4.500000, 11.253333},
     {21.060000, 327.051534, 843.023567},
     {0.000000, 0.500000, 0.896000},
     {0.000000, 0.019406, 0.039000}},
    {75,
     {0.300000, 4.300000, 11.040000},
     {21.060000, 312.260687, 826.653000},
     {0.000000, 0.450000, 0.864000},
     {0.000000, 0.015750, 0.036000}},
    {53,
     {3.275632, 4.701012, 8.856940},
     {230.774953, 341.687489, 663.818310},
     {0.510253, 0.550253, 0.759291},
     {0.017528, 0.020842, 0.037411}},
    {51,
     {3.900000, 5.720000, 14.773333},
     {274.956028, 415.927316, 1107.000787},
     {0.640000, 0.680000, 1.184000},
     {0.024969, 0.029094, 0.057200}},
    {96,
     {0.300000, 2.380000, 6.933333},
     {21.060000, 173.099856, 519.644342},
     {0.000000, 0.470000, 0.896000},
     {0.000000, 0.017250, 0.039000}},
    {95,
     {0.300000, 2.980000, 8.533333},
     {21.060000, 217.008756, 640.017959},
     {0.000000, 0.620000, 1.136000},
     {0.000000, 0.029250, 0.060900}},
    {17,
     {0.300000, 5.420000, 14.624000},
     {21.060000, 394.163473, 1096.464550},
     {0.000000, 0.730000, 1.401600},
     {0.000000, 0.038187, 0.094000}},
    {18,
     {0.300000, 4.892000, 15.946667},
     {21.060000, 355.638850, 1196.919583},
     {0.000000, 0.598000, 1.600000},
     {0.000000, 0.027800, 0.125000}},
    {97,
     {2.805000, 4.028000, 10.314667},
     {197.158717, 292.279459, 771.880437},
     {0.322000, 0.382000, 0.755200},
     {0.007013, 0.009912, 0.024320}},
};

TEST(WherryWork, CutsToTheLastFigure) {
  std::size_t cuts = 0;
  for (const Task& task : wherry().tasks) cuts += task.kind == Kind::cut;
  EXPECT_EQ(cuts, std::size(cut_tasks));
  for (const Worked& worked : cut_tasks) {
    SCOPED_TRACE(worked.zone);
    const auto task = std::ranges::find_if(wherry().tasks, [&](const Task& each) {
      return each.kind == Kind::cut && each.zone == worked.zone;
    });
    ASSERT_NE(task, wherry().tasks.end());
    expect_range(task->hours, worked.hours, "hours");
    expect_range(task->cost, worked.cost, "cost");
    expect_range(task->weld_m, worked.weld_m, "weld");
    ASSERT_TRUE(task->sheet);
    expect_range(task->sheet->area_m2, worked.area_m2, "sheet");
  }
}

TEST(WherryWork, LightTasksToTheLastFigure) {
  const std::set<int> bare = {21, 45, 47, 49, 50, 54, 55, 57, 61,
                              62, 63, 65, 66, 79, 80, 81, 82, 85};
  const std::set<int> coated = {12, 16, 20, 28, 30, 41, 52, 77, 91, 95};
  std::set<int> found_bare, found_coated, drains;
  for (const Task& task : wherry().tasks) {
    SCOPED_TRACE(task.number);
    if (task.kind == Kind::drains) {
      drains.insert(task.zone);
      expect_range(task.hours, {.3, .5, 1}, "drains");
      expect_range(task.cost, {21.06, 36.2375, 74.75}, "drains");
    } else if (task.kind == Kind::brace) {
      expect_range(task.cost, {210.6, 398.6125, 598}, "brace");
    } else if (task.kind == Kind::protect) {
      expect_range(task.cost, {421.2, 652.275, 897}, "protect");
    } else if (task.kind == Kind::treat && task.zone == 26) {
      expect_range(task.hours, {.6, 1, 3.2}, "boot floor");
      expect_range(task.cost, {42.12, 72.475, 239.2}, "boot floor");
    } else if (task.kind == Kind::treat && task.hidden_by == Hidden::bare) {
      found_bare.insert(task.zone);
      expect_range(task.hours, {.3, .5, 1.15}, "bare");
      expect_range(task.cost, {21.06, 36.2375, 85.9625}, "bare");
    } else if (task.kind == Kind::treat) {
      found_coated.insert(task.zone);
      expect_range(task.hours, {.3, .5, 1.6}, "coated");
      expect_range(task.cost, {21.06, 36.2375, 119.6}, "coated");
    }
  }
  EXPECT_EQ(found_bare, bare);
  EXPECT_EQ(found_coated, coated);
  EXPECT_EQ(drains, (std::set<int>{17, 28}));
}

void expect_total(const Total& is, const Range& sum, double mean, double deviation, double in_80) {
  expect_range(is.sum, sum, "sum");
  EXPECT_NEAR(is.mean, mean, tiny);
  EXPECT_NEAR(is.standard_deviation, deviation, tiny);
  EXPECT_NEAR(is.in_80_of_100, in_80, tiny);
}

TEST(WherryWork, TotalsToTheLastFigure) {
  EXPECT_EQ(wherry().tasks.size(), 44u);
  expect_total(wherry().hours, {32.530632, 77.421012, 183.124273}, 87.556492, 18.241758,
               102.909143);
  expect_total(wherry().cost, {2286.788342, 5621.521109, 13712.612237}, 6414.247503, 1383.740090,
               7578.832544);
  ASSERT_TRUE(wherry().contingency);
  EXPECT_EQ(wherry().contingency->rate, "contingency-coated");
  expect_range(wherry().contingency->cost, {1924.274251, 2886.411376, 3848.548502}, "apart");
}

// Floor, then the feet that stand on the sill and may be open anyway, then the sill from the inside
// out: membrane through the end of the outer sill that goes anyway (its cut 1835 to 2080 falls 16
// mm short of the membrane's 1819, within a margin, so no access). Drains before what they wet; the
// arch lip; then what was only judged and nothing sure waits for. Bracing first.
TEST(WherryWork, IsOrderedAsAWelderWould) {
  std::string order;
  for (const Task& task : wherry().tasks)
    if (task.kind != Kind::treat)
      order += std::string(order.empty() ? "" : ", ") + std::string(word(task.kind)) + " " +
               std::to_string(task.zone) + (task.judged ? " if opening shows it" : "");
  EXPECT_EQ(order,
            "brace 0, cut 73, cut 59 if opening shows it, cut 71 if opening shows it, cut 75 if "
            "opening shows it, cut 53, cut 51, drains 17, drains 28, cut 97, cut 96 if opening "
            "shows it, cut 95 if opening shows it, cut 17 if opening shows it, cut 18 if opening "
            "shows it, protect 0");
}

// Of the seven judged tasks: likely hours 5.02 + 4.5 + 4.3 + 2.38 + 2.98 + 5.42 + 4.892 = 29.492,
// low 7 x .3; the sure ones have the rest.
TEST(WherryWork, HasTheMoneyOfJudgedPlacesApart) {
  EXPECT_NEAR(wherry().if_opening_shows.hours.sum.likely, 29.492, tiny);
  EXPECT_NEAR(wherry().if_opening_shows.hours.sum.low, 2.1, tiny);
  EXPECT_NEAR(wherry().sure.cost.mean + wherry().if_opening_shows.cost.mean, wherry().cost.mean,
              tiny);
  EXPECT_NEAR(wherry().if_opening_shows.cost.mean, 2470.6971, 1e-3);
}

// The tasks' sheets by thickness: .9 for 73, 59, 96, 95, 17, 97; 1.0 for 75, 18; 1.2 for 71,
// 53, 51.
TEST(WherryWork, SheetToBuy) {
  const struct {
    double thickness_mm;
    Range area_m2;
  } worked[] = {
      {0.9, {0.032169, 0.154506, 0.324430}},
      {1.0, {0.000000, 0.043550, 0.161000}},
      {1.2, {0.042496, 0.069342, 0.133611}},
  };
  ASSERT_EQ(wherry().sheets.size(), std::size(worked));
  for (std::size_t i = 0; i < std::size(worked); ++i) {
    EXPECT_EQ(wherry().sheets[i].thickness_mm, worked[i].thickness_mm);
    expect_range(wherry().sheets[i].area_m2, worked[i].area_m2, "sheet");
  }
}

// 14000 worth, 9500 asked: 4500 before the work. Likely -1914.25 = 4500 - 6414.25; at best
// 4500 - 2286.79; at worst 4500 - 7578.83 - 3848.55 of contingency.
TEST(WherryWork, PriceArithmetic) {
  const survey::Price price = {survey::Money{9500, "EUR"}, survey::Money{14000, "EUR"}};
  const auto left = left_over(wherry(), price);
  ASSERT_TRUE(left);
  expect_range(*left, {-6927.381046, -1914.247503, 2213.211658}, "left over");
  EXPECT_FALSE(left_over(wherry(), {price.asked, std::nullopt}));
  EXPECT_FALSE(left_over(wherry(), {price.asked, survey::Money{14000, "GBP"}}));
}

}  // namespace
}  // namespace tinworm::work
