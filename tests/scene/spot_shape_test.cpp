// That ink means area: at its place, of its size, and never where either isn't known.
#include "scene/spot_shape.hpp"

#include <random>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "geometry/area.hpp"
#include "scene/body_view.hpp"
#include "scene/fixture.hpp"
#include "scene/spot_mark.hpp"

namespace tinworm::scene {
namespace {

using survey::Rust;
using testing::HasSubstr;

TEST(Ink, ASpotStandsAtItsPlaceAndSize) {
  survey::Survey survey = fixture::clean_survey(fixture::plan());
  survey.zones[20].found = {
      fixture::spot("by the gearbox", survey::Rust::scale, {1200, 20, 300}, {150, 90})};
  const auto result = fixture::weighed(survey);
  const auto pages = fixture::drawn(result);
  const Sheet sheet = lay_out(SheetKind::structure, *result.body, Paper::a4)[0];
  for (const PlacedView& view : sheet.views) {
    if (view.projection.view != body::View::underneath) continue;
    const At place = view.projection.paper({1200, 20});
    int marks = 0;
    for (const Item& item : fixture::layer(pages[0], "spots")->items) {
      const auto* clipped = std::get_if<Clipped>(&item);
      if (clipped == nullptr) continue;
      ++marks;
      const Area area = bounds(clipped->clip);
      EXPECT_NEAR(area.middle().x_mm, place.x_mm, 0.01);
      EXPECT_NEAR(area.middle().y_mm, place.y_mm, 0.01);
      EXPECT_NEAR(area.width_mm, 150.0 / sheet.scale, 0.01);
      EXPECT_NEAR(area.height_mm, 90.0 / sheet.scale, 0.01);
    }
    EXPECT_EQ(marks, 1);
  }
}

// A triangle, which no patch is, and the key says that it isn't to scale.
TEST(Ink, AnAreaTooSmallToDrawIsASymbol) {
  survey::Survey survey = fixture::clean_survey(fixture::plan());
  survey.zones[20].found = {fixture::spot("pin hole", survey::Rust::hole, {1200, 20, 300}, {6, 4})};
  const auto pages = fixture::drawn(fixture::weighed(survey));
  int symbols = 0;
  for (const Item& item : fixture::layer(pages[0], "spots")->items) {
    if (const auto* clipped = std::get_if<Clipped>(&item)) {
      EXPECT_EQ(clipped->clip[0].points.size(), 3U);
      ++symbols;
    }
  }
  EXPECT_GT(symbols, 0);
  EXPECT_THAT(fixture::said(pages[0], Says::legend),
              HasSubstr("triangle: too small to draw, not to scale"));
}

TEST(Ink, APlaceWithoutSizeOrPositionIsNeverAFilledArea) {
  for (const bool sized : {false, true}) {
    survey::Survey survey = fixture::clean_survey(fixture::plan());
    survey::Spot place = fixture::spot("", survey::Rust::scale, {}, {150, 90});
    if (!sized) place = fixture::spot("", survey::Rust::scale, {1200, 20, 300}, {});
    if (!sized) place.size.reset();
    survey.zones[20].found = {place};
    const auto pages = fixture::drawn(fixture::weighed(survey));
    const Layer* spots = fixture::layer(pages[0], "spots");
    ASSERT_FALSE(spots->items.empty());
    for (const Item& item : spots->items) {
      const auto* shape = std::get_if<Shape>(&item);
      ASSERT_NE(shape, nullptr);
      EXPECT_FALSE(shape->fill) << sized;
    }
    EXPECT_THAT(fixture::said(pages[0], Says::legend),
                HasSubstr("open circle: size or place not recorded"));
  }
}

// What a zone's ground is tells how it was seen, whatever was found in it.
TEST(Ink, AHoleDoesNotPaintItsZone) {
  survey::Survey survey = fixture::clean_survey(fixture::plan());
  const auto zones = [](const survey::Survey& each) {
    std::vector<Colour> colours;
    const auto pages = fixture::drawn(fixture::weighed(each));
    for (const Item& item : fixture::layer(pages[0], "zones")->items)
      colours.push_back(*std::get<Shape>(item).fill);
    return colours;
  };
  const auto clean = zones(survey);
  survey.zones[20].found = {fixture::spot("hole", survey::Rust::hole, {1200, 20, 300}, {20, 20})};
  EXPECT_EQ(zones(survey), clean);
}

// Something of a random size at every station of a random choice of zones.
survey::Survey random_survey(const body::PlanPtr& plan, unsigned seed) {
  std::mt19937 random(seed);
  const auto upto = [&](int most) { return static_cast<int>(random() % unsigned(most)); };
  survey::Survey survey = fixture::clean_survey(plan);
  for (const body::Zone& zone : plan->zones) {
    if (upto(3) == 0) continue;
    for (const body::Station& station : zone.stations) {
      survey.zones[zone.number].found.push_back(
          fixture::spot(station.name, upto(2) == 0 ? Rust::scale : Rust::hole, fixture::at(station),
                        {10.0 + upto(290), 5.0 + upto(145)}));
    }
  }
  return survey;
}

double inked_mm2(const SpotMark& mark) {
  geometry::Outline outline;
  for (const Polyline& line : mark.shape) {
    geometry::Ring ring;
    for (const At at : line.points) ring.push_back({at.x_mm, at.y_mm});
    outline.rings.push_back(std::move(ring));
  }
  return geometry::area(outline);
}

// Of patches in the views that show both their length and their breadth.
TEST(Ink, AreaOnPaperIsTheAreaFoundWithinAFactorOfTwo) {
  int compared = 0;
  for (const body::BuiltIn& each : body::built_in_plans()) {
    const body::PlanPtr plan = fixture::plan(each.name);
    for (unsigned seed = 1; seed <= 20; ++seed) {
      const auto result = fixture::weighed(random_survey(plan, seed));
      const DiagramOptions options;
      for (const Sheet& sheet : lay_out(SheetKind::structure, *plan, options.paper)) {
        Page page;
        Drafting drafting{page, sheet, result, options, fixture::measured, FreeSpace(sheet.drawing),
                          {},   {},    {},     {}};
        draw_body(drafting);
        draw_spots(drafting);
        for (const SpotMark& mark : drafting.spots) {
          const double scale = sheet.views[mark.view].projection.scale;
          const survey::Size size = mark.spot->size.value_or(survey::Size{});
          const Area drawn = bounds(mark.shape);
          const double least = std::min(size.along_mm, size.across_mm) * scale;
          const bool edge_on = std::min(drawn.width_mm, drawn.height_mm) < 0.95 * least ||
                               std::min(drawn.width_mm, drawn.height_mm) < 0.71;
          if (mark.kind != MarkKind::patch || edge_on) continue;
          const double found_mm2 = size.along_mm * size.across_mm * scale * scale;
          EXPECT_GT(inked_mm2(mark), found_mm2 / 2)
              << each.name << " " << mark.spot->zone << " " << mark.spot->name;
          EXPECT_LT(inked_mm2(mark), found_mm2 * 2)
              << each.name << " " << mark.spot->zone << " " << mark.spot->name;
          ++compared;
        }
      }
    }
  }
  EXPECT_GT(compared, 500);
}

}  // namespace
}  // namespace tinworm::scene
