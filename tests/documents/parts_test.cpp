// Parts by their numbers, and own ones by their keys.
#include "documents/parts.hpp"

#include <gtest/gtest.h>

#include "scene/fixture.hpp"

namespace tinworm::documents {
namespace {

TEST(Parts, AreFoundByNumberOrByTheirOwnKey) {
  survey::Survey survey = scene::fixture::clean_survey(scene::fixture::plan());
  survey.zones[51].note = "of the sill";
  for (const char* key : {"own-a", "own-b"}) {
    survey::OwnZone own;
    own.key = key;
    own.name = std::string("tray ") + key;
    own.seen.word = survey::SeenWord::bare;
    own.zone.note = key;
    survey.own.push_back(own);
  }
  const weighing::Result result = scene::fixture::weighed(survey);
  const struct {
    int number;
    const char *own, *title, *note, *sheet;
  } cases[] = {{51, "", "outer sill, left (51)", "of the sill", "zone-51"},
               {0, "own-a", "tray own-a (own-a)", "own-a", ""},
               {0, "own-b", "tray own-b (own-b)", "own-b", ""}};
  for (const auto& each : cases) {
    ASSERT_NE(part(result, each.number, each.own), nullptr) << each.title;
    EXPECT_EQ(title_of(result, each.number, each.own), each.title);
    ASSERT_NE(result.survey.zone(each.number, each.own), nullptr) << each.title;
    EXPECT_EQ(result.survey.zone(each.number, each.own)->note, each.note);
    EXPECT_EQ(on_sheet(each.number), each.sheet);
  }
}

TEST(Parts, ThatAreNotThereAreNull) {
  survey::Survey survey = scene::fixture::clean_survey(scene::fixture::plan());
  survey.zones.erase(51);
  const weighing::Result result = scene::fixture::weighed(survey);
  EXPECT_EQ(part(result, 99, ""), nullptr);
  EXPECT_EQ(part(result, 0, "own-a"), nullptr);
  EXPECT_EQ(result.survey.zone(51, ""), nullptr);
  EXPECT_EQ(result.survey.zone(0, "own-a"), nullptr);
  EXPECT_EQ(title_of(result, 0, "own-a"), "own-a");
}

}  // namespace
}  // namespace tinworm::documents
