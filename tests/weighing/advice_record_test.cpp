// Questions about what makes a survey of use the next time, and about facts that don't go together.
#include "weighing/advice_case.hpp"

namespace tinworm::weighing {
namespace {

using fixture::asked;
using survey::Survey;

using Texts = std::vector<std::string>;

TEST(AdviceRecord, MeasuredPlacesOfTheMainStructureNeedAMark) {
  Survey survey = fixture::thorough();
  EXPECT_EQ(asked(survey, "place-not-marked"), Texts{});
  survey.zones[51].marks.clear();
  EXPECT_EQ(asked(survey, "place-not-marked"),
            Texts{"how is the next surveyor to find the point that was measured again: outer sill, "
                  "left (51), station? Say under `mark` what it lies from. A few millimetres aside "
                  "sheet rusts otherwise: then worse or better between two visits rests on luck."});
}

TEST(AdviceRecord, OptionsOfTheBodyAreToBeTold) {
  Survey survey = fixture::thorough();
  EXPECT_EQ(asked(survey, "option-not-told"), Texts{});  // the plan has none
  fixture::change_plan(survey, [](body::Plan& plan) {
    plan.options = {{"steering", {"left", "right"}}};
  });
  EXPECT_EQ(asked(survey, "option-not-told"),
            Texts{"what has this car: steering (left or right)? Say it under `fitted`. Until it is "
                  "told, the mountings of every choice count."});
  survey.fitted["steering"] = "right";
  EXPECT_EQ(asked(survey, "option-not-told"), Texts{});
}

TEST(AdviceRecord, ABentSillIsAskedAbout) {
  Survey survey = fixture::thorough();
  fixture::change_plan(survey, [](body::Plan& plan) { plan.sills[body::Side::left] = {51}; });
  survey::Spot& spot = survey.zones[51].found.front();
  spot.shapes = {survey::Shape::dent};
  EXPECT_EQ(
      asked(survey, "sill-bent"),
      Texts{"outer sill, left (51), station: what pushed the sill out of shape, and what lies "
            "behind it? A sill out of shape was struck, jacked in the wrong place, or is a "
            "cover over another; one that is bent carries less."});
  spot.size = survey::Size{25, 20};
  EXPECT_EQ(asked(survey, "sill-bent"), Texts{});
}

TEST(AdviceRecord, AcidStandsWhereTheBatteryDoes) {
  Survey survey = fixture::thorough();
  survey.zones[51].found.front().rust = survey::Rust::acid;
  survey.fitted["battery"] = "left";
  EXPECT_EQ(asked(survey, "acid-elsewhere"), Texts{});
  survey.fitted["battery"] = "right";
  EXPECT_EQ(asked(survey, "acid-elsewhere"),
            Texts{"outer sill, left (51), station: acid, yet the battery stands right; is the side "
                  "right? One of the two is on the wrong side."});
}

}  // namespace
}  // namespace tinworm::weighing
