// `weigh --explain` of a sill that is gone through, whole, as a welder reads it. The section by
// hand from panels/two-door-saloon.yaml, all sheets 1.1 mm: outer sill 67.1 + 68.1 + 75.5 = 210.7
// mm, membrane 138.0, inner sill 85.1 + 135.0 + 85.4 = 305.5; 231.7 + 151.8 + 336.1 = 719.6 mm2.
// Gone at the rear end: outer sill and membrane break over 60 mm, 25 of it a hole nobody measured,
// the rest at .10: (60 - 25) x .10 / 60 = 5.8 % left there, 231.7 - 62.1 = 169.6 and 151.8 - 62.1
// = 89.7; the inner sill gives over 80 mm, at .35: 336.1 - 57.2 = 278.9. 538.1 of 719.6: 74.8 %. At
// worst 0, 0 and .15: 231.7 - 66 + 151.8 - 66 + 336.1 - 74.8 = 512.8: 71.3 %.
#include "output/explain.hpp"

#include <gtest/gtest.h>

#include "output/weigh_text.hpp"
#include "paths.hpp"
#include "verbs/plan_shelf.hpp"
#include "verbs/surveys.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::output {
namespace {

weighing::Result gannet() {
  verbs::PlanShelf plans("");
  const auto loaded = verbs::load_survey(source_folder() + "/tests/work/gannet.yaml", plans);
  return weighing::weigh(loaded.survey.value(), {});
}

std::string part(const std::string& text, const std::string& from, const std::string& to) {
  const std::size_t start = text.find(from);
  return text.substr(start, text.find(to, start) - start);
}

TEST(Explain, ASillSectionThatAWelderCanFollow) {
  const weighing::Result result = gannet();
  const std::string text = explain_zone(result, *result.zone(51), {});
  EXPECT_EQ(
      part(text, "Section left", "In the verdict"),
      "Section left\n"
      "  left sill, cut through where least of it is left, between x 1948 and 1962 mm:\n"
      "  51 outer sill, left: 211 mm round x 1.1 mm sheet = 232 mm2; weak or holed over 60 of the "
      "211 mm,\n"
      "    with 6 % of its sheet left there: so 170 mm2 left\n"
      "  53 sill membrane, left: 138 mm round x 1.1 mm sheet = 152 mm2; weak or holed over 60 of "
      "the "
      "138\n"
      "    mm, with 6 % of its sheet left there: so 90 mm2 left\n"
      "  55 inner sill, left: 306 mm round x 1.1 mm sheet = 336 mm2; weak or holed over 80 of the "
      "306 mm,\n"
      "    with 35 % of its sheet left there: so 279 mm2 left\n"
      "  together 538 of 720 mm2: 74.8 % of the wall metal (at worst 71.3 %); under 75 % a section "
      "counts\n"
      "    as gone\n"
      "  every layer is weak or holed at one place: none is left to carry for the others\n"
      "  so its section is gone there: it no longer carries\n"
      "\n");
}

TEST(Explain, SaysWhatOfItIsInTheVerdict) {
  const weighing::Result result = gannet();
  const std::string text = explain_zone(result, *result.zone(51), {});
  EXPECT_EQ(part(text, "In the verdict", "Burdens"),
            "In the verdict\n"
            "  outer sill, left (51), rear end: holed, no metal left; 185 mm from the lower belt "
            "anchorage,\n"
            "    whose load it takes; of a section that is gone [section-gone: is there still a "
            "sill? Under three\n"
            "    quarters of its wall metal, or every layer gone at one place, the shell can fold "
            "(memory; common\n"
            "    practice)]\n"
            "\n");
}

// A zone that is a wall of no box has no section.
TEST(Explain, HasNoSectionOfAPartThatIsNoWall) {
  const weighing::Result result = gannet();
  EXPECT_EQ(explain_zone(result, *result.zone(63), {}).find("Section left"), std::string::npos);
}

}  // namespace
}  // namespace tinworm::output
