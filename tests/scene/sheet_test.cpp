#include "scene/sheet.hpp"

#include <gtest/gtest.h>

#include "scene/fixture.hpp"

namespace tinworm::scene {
namespace {

TEST(Sheet, TheLargestStandardScaleThatFits) {
  struct Case {
    Paper paper;
    double stretched;  // of the car
    std::size_t sheets;
    int scale;
  };
  const Case cases[] = {{Paper::a4, 1, 1, 30},    {Paper::letter, 1, 1, 30}, {Paper::a3, 1, 1, 20},
                        {Paper::a4, 1.25, 4, 25}, {Paper::a3, 1.25, 1, 25},  {Paper::a4, 3, 4, 50}};
  for (const Case& each : cases) {
    body::Plan plan = *fixture::plan();
    const auto stretch = [&](geometry::Outline& outline) {
      for (auto& ring : outline.rings)
        for (auto& point : ring) point.u *= each.stretched, point.v *= each.stretched;
      for (auto& open : outline.open)
        for (auto& point : open) point.u *= each.stretched, point.v *= each.stretched;
    };
    for (body::Zone& zone : plan.zones)
      for (body::Drawing& drawing : zone.drawn) stretch(drawing.outline);
    for (auto& [view, lines] : plan.lines)
      for (body::Line& line : lines)
        for (geometry::Outline& shape : line.shapes) stretch(shape);
    const auto sheets = lay_out(SheetKind::structure, plan, each.paper);
    ASSERT_EQ(sheets.size(), each.sheets) << each.stretched;
    EXPECT_EQ(sheets[0].scale, each.scale) << each.stretched;
  }
}

TEST(Sheet, ViewsStandApartInsideTheDrawing) {
  for (const body::BuiltIn& body : body::built_in_plans()) {
    const auto plan = fixture::plan(body.name);
    for (const SheetKind kind : {SheetKind::structure, SheetKind::skin, SheetKind::frame}) {
      for (const Paper paper : {Paper::a4, Paper::a3, Paper::letter}) {
        for (const Sheet& sheet : lay_out(kind, *plan, paper)) {
          EXPECT_FALSE(sheet.drawing.overlaps(sheet.column));
          EXPECT_FALSE(sheet.drawing.overlaps(sheet.strip));
          EXPECT_GE(sheet.column.width_mm, 48);
          for (std::size_t i = 0; i < sheet.views.size(); ++i) {
            EXPECT_TRUE(sheet.drawing.contains(sheet.views[i].area)) << name_of(kind);
            for (std::size_t j = 0; j < i; ++j) {
              EXPECT_FALSE(sheet.views[i].area.overlaps(sheet.views[j].area)) << name_of(kind);
            }
          }
        }
      }
    }
  }
}

TEST(Sheet, NoSheetWhereNothingIsDrawn) {
  const body::Plan empty;
  for (const SheetKind kind : {SheetKind::structure, SheetKind::skin, SheetKind::frame}) {
    EXPECT_TRUE(lay_out(kind, empty, Paper::a4).empty());
  }
}

TEST(Sheet, FrameLeavesRoomToFileBy) {
  EXPECT_EQ(frame_of(Paper::a4), (Area{20, 10, 267, 190}));
  EXPECT_EQ(frame_of(Paper::a3), (Area{20, 10, 390, 277}));
}

}  // namespace
}  // namespace tinworm::scene
