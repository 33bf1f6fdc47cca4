// The picture for a telephone: readable there, and everything in it that travels with a picture.
#include "scene/phone.hpp"

#include <algorithm>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "painting/measure.hpp"
#include "scene/fixture.hpp"

namespace tinworm::scene {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::Not;

struct Shown {
  weighing::Result result;
  SheetKind kind;
  Page page;
};

const std::vector<Shown>& all_shown() {
  static std::vector<Shown> all;
  if (!all.empty()) return all;
  for (const body::BuiltIn& each : body::built_in_plans()) {
    const auto result = fixture::weighed(fixture::busy_survey(fixture::plan(each.name)));
    for (const SheetKind kind : {SheetKind::structure, SheetKind::skin, SheetKind::frame}) {
      const auto page = phone_page(result, kind, {}, painting::measure());
      if (page) all.push_back({result, kind, *page});
    }
  }
  return all;
}

std::string said(const Page& page) {
  std::string all;
  for (const Text* text : texts(page)) all += text->text + " ";
  return all;
}

TEST(Phone, LettersAreLargeEnoughAndNothingIsCutOff) {
  constexpr double px_per_mm = 1080 / phone_width_mm, least_px = 28;
  for (const Shown& shown : all_shown()) {
    for (const Text* text : texts(shown.page)) {
      EXPECT_GE(text->size_pt * mm_per_pt * px_per_mm, least_px) << text->text;
      EXPECT_TRUE(shown.page.frame.contains(text->area)) << text->text;
    }
  }
}

TEST(Phone, NoTwoTextsOverlap) {
  for (const Shown& shown : all_shown()) {
    const auto all = texts(shown.page);
    for (std::size_t i = 0; i < all.size(); ++i) {
      for (std::size_t j = 0; j < i; ++j) {
        EXPECT_FALSE(all[i]->area.grown(-0.1).overlaps(all[j]->area.grown(-0.1)))
            << all[i]->text << " and " << all[j]->text;
      }
    }
  }
}

TEST(Phone, ViewsStandOneBelowTheOther) {
  const auto plan = fixture::plan("two-door-saloon");
  const auto sheet = lay_out_stacked(SheetKind::structure, *plan, {3, 20, 80, 1000});
  ASSERT_TRUE(sheet);
  ASSERT_EQ(sheet->views.size(), 5u);
  EXPECT_EQ(sheet->scale, 50);
  for (std::size_t i = 1; i < 4; ++i)
    EXPECT_GT(sheet->views[i].area.y_mm, sheet->views[i - 1].area.bottom());
  EXPECT_GT(sheet->views[4].area.x_mm, sheet->views[3].area.right());
  EXPECT_FALSE(lay_out_stacked(SheetKind::frame, *plan, {3, 20, 80, 1000}));
}

TEST(Phone, NumbersStandOnlyWhereSomethingWasFound) {
  for (const Shown& shown : all_shown()) {
    EXPECT_FALSE(shown.page.labels.empty());
    for (const Label& label : shown.page.labels) {
      const weighing::Zone* zone = shown.result.zone(label.zone);
      EXPECT_TRUE(zone->step != weighing::Step::sound || !zone->repairs.empty()) << label.zone;
    }
  }
}

TEST(Phone, CarriesWhatTravelsWithEveryPicture) {
  for (const Shown& shown : all_shown()) {
    const std::string all = said(shown.page);
    EXPECT_THAT(all, HasSubstr(shown.result.survey.visit.date.text()));
    EXPECT_THAT(all, HasSubstr("Not seen, so not known"));
    EXPECT_THAT(all, HasSubstr("An aid to judgement"));
    EXPECT_THAT(all, HasSubstr(shown.result.sha256.substr(0, 12)));
    EXPECT_THAT(all, HasSubstr("Worst first"));
  }
}

TEST(Phone, HoldsNothingPrivateUnlessAsked) {
  for (const Shown& shown : all_shown()) {
    const survey::Car& car = shown.result.survey.car;
    const std::string all = said(shown.page);
    for (const std::string& secret :
         {car.owner, car.registration, car.chassis_number, shown.result.survey.visit.place}) {
      ASSERT_FALSE(secret.empty());
      EXPECT_THAT(all, Not(HasSubstr(secret)));
    }
    DiagramOptions options;
    options.private_too = true;
    const auto page = phone_page(shown.result, shown.kind, options, painting::measure());
    EXPECT_THAT(said(*page), HasSubstr(car.owner));
  }
}

}  // namespace
}  // namespace tinworm::scene
