// Advice that needs other files beside the survey: photos, an earlier survey.
#include <gtest/gtest.h>

#include <set>

#include "weighing/advice.hpp"
#include "weighing/fixture.hpp"

namespace tinworm::weighing {
namespace {

using survey::Rust;
using survey::Survey;

Survey with_photos() {
  Survey survey = fixture::sound_survey();
  survey.photos.folder = "photos";
  survey.zones[51].photos = {{"photos/1.jpg", {12, 3}}, {"photos/2.jpg", {13, 3}}};
  survey.zones[41].photos = {{"wing.jpg", {8, 3}}, {"photos/2.jpg", {9, 3}}};
  return survey;
}

std::vector<std::string> asked(const Survey& survey, const Beside& beside) {
  std::vector<std::string> texts;
  for (const Advice& each : advice_beside(survey, beside))
    texts.push_back(std::to_string(each.place.line) + " " + each.kind + ": " + text(each));
  return texts;
}

Beside holding(std::set<std::string> files) {
  return {[files](const std::string& path) { return files.contains(path); }, nullptr};
}

TEST(AdviceBeside, AsksForPhotosThatArentThere) {
  const Survey survey = with_photos();
  const struct {
    std::set<std::string> there;
    std::vector<std::string> asked;
  } cases[] = {
      {{"photos", "photos/1.jpg", "photos/2.jpg", "wing.jpg"}, {}},
      {{"photos", "photos/1.jpg", "wing.jpg"},
       {"9 photo-missing: where is the photo photos/2.jpg? It is named but not there. What can't "
        "be shown carries less weight."}},
      {{"photos", "photos/2.jpg"},
       {"8 photo-missing: where are the photos wing.jpg; photos/1.jpg? They are named but not "
        "there. What can't be shown carries less weight."}},
      {{"wing.jpg"},
       {"0 photo-folder: where is the folder of photos, \"photos\"? It isn't beside the survey. "
        "What can't be shown carries less weight."}},
      {{},
       {"0 photo-folder: where is the folder of photos, \"photos\"? It isn't beside the survey. "
        "What can't be shown carries less weight.",
        "8 photo-missing: where is the photo wing.jpg? It is named but not there. What can't be "
        "shown carries less weight."}},
  };
  for (const auto& c : cases) EXPECT_EQ(asked(survey, holding(c.there)), c.asked);
  EXPECT_TRUE(asked(survey, {}).empty()) << "nobody looked";
  EXPECT_TRUE(asked(fixture::sound_survey(), holding({})).empty()) << "no photo is named";
}

Survey measured(const std::vector<std::string>& names, survey::PartialDate date) {
  Survey survey = fixture::sound_survey();
  survey.visit.date = date;
  survey.car.name = "Wherry 1200";
  for (const std::string& name : names) {
    survey::Spot spot = fixture::spot(name, Rust::none);
    spot.metal_mm = {1.0};
    spot.place = {30, 9};
    survey.zones[51].found.push_back(spot);
  }
  survey.zones[51].place = {29, 3};
  return survey;
}

std::vector<std::string> asked(const Survey& now, const Survey& before) {
  return asked(now, {{}, &before});
}

TEST(AdviceBeside, AsksForTheStationsOfLastTime) {
  const survey::PartialDate then{2022, 5, 0}, now{2025, 4, 12};
  const struct {
    std::vector<std::string> before, now, asked;
  } cases[] = {
      {{"middle"}, {"middle", "jack"}, {}},
      {{"middle", "jack"},
       {"middle"},
       {"29 not-measured-again: can it be measured again, as in 2022-05: outer sill, left (51), "
        "jack? Only the same place measured twice shows how fast it rusts."}},
      {{"middle"},
       {"midle"},
       {"30 spot-name: outer sill, left (51), midle: is it what the survey of 2022-05 calls "
        "\"middle\"? Only a place of the same name is compared over the years."}},
      {{"upper end", "hole 1"},
       {"lower end", "hole 2"},
       {"29 not-measured-again: can it be measured again, as in 2022-05: outer sill, left (51), "
        "upper end; outer sill, left (51), hole 1? Only the same place measured twice shows how "
        "fast it rusts."}},
  };
  for (const auto& c : cases)
    EXPECT_EQ(asked(measured(c.now, now), measured(c.before, then)), c.asked);
}

TEST(AdviceBeside, AsksForWhatWasNamedButNotMeasured) {
  Survey now = measured({"middle"}, {2025, 4, 12});
  now.zones[51].found.front().metal_mm.clear();
  EXPECT_EQ(asked(now, measured({"middle"}, {2022, 5, 0})).size(), 1u);
  Survey before = measured({"middle"}, {2022, 5, 0});
  before.zones[51].found.front().metal_mm.clear();
  EXPECT_TRUE(asked(now, before).empty()) << "it wasn't measured then either";
}

TEST(AdviceBeside, AsksWhetherItIsTheSameCar) {
  const Survey now = measured({}, {2025, 4, 12});
  const auto changed = [&](auto change) {
    Survey before = measured({}, {2022, 5, 0});
    change(before.car);
    Survey after = now;
    after.car.built = 1967;
    after.car.chassis_number = "W12-004417";
    return asked(after, before);
  };
  const std::vector<std::string> same_car = {
      "0 another-car: is it the same car? Name, year or chassis number differ from those of "
      "2022-05. Metal of two cars compared says nothing of either."};
  EXPECT_EQ(changed([](survey::Car& car) { car.name = "Coble 950"; }), same_car);
  EXPECT_EQ(changed([](survey::Car& car) { car.built = 1968; }), same_car);
  EXPECT_EQ(changed([](survey::Car& car) { car.chassis_number = "W12-004418"; }), same_car);
  EXPECT_TRUE(changed([](survey::Car&) {}).empty()) << "not recorded isn't different";
}

}  // namespace
}  // namespace tinworm::weighing
