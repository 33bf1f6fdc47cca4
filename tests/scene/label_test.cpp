// Numbers beside the drawing, where there is room and where there is none.
#include "scene/label.hpp"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "scene/body_view.hpp"
#include "scene/fixture.hpp"
#include "scene/legend.hpp"
#include "scene/sheet.hpp"

namespace tinworm::scene {
namespace {

// A sheet with its body drawn and no number yet.
struct Board {
  weighing::Result result = fixture::weighed(fixture::busy_survey(fixture::plan()));
  DiagramOptions options;
  Sheet sheet = lay_out(SheetKind::structure, *result.body, options.paper).front();
  Page page;
  Drafting drafting{page, sheet, result, options, fixture::measured, FreeSpace(sheet.drawing),
                    {},   {},    {},     {}};
  Board() { draw_body(drafting); }
  std::vector<const DrawnZone*> zones() const {
    std::vector<const DrawnZone*> all;
    for (const DrawnZone& drawn : drafting.zones) all.push_back(&drawn);
    return all;
  }
};

TEST(Label, OutsideStandsWithinTheDrawingWithALeader) {
  Board board;
  label_outside(board.drafting, board.zones());
  ASSERT_EQ(board.page.labels.size(), board.drafting.zones.size());
  for (const Label& label : board.page.labels) {
    EXPECT_TRUE(board.sheet.drawing.contains(label.plate)) << label.zone;
    EXPECT_TRUE(label.led) << label.zone;
  }
  EXPECT_TRUE(board.drafting.used.unnumbered.empty());
}

// Nothing is drawn for it, least of all at the corner of the paper, and the key says so.
TEST(Label, WithoutARoomIsLeftOutAndToldInTheKey) {
  Board board;
  board.drafting.space.write(board.sheet.drawing);
  const auto zones = board.zones();
  label_outside(board.drafting, {zones[1], zones[0]});
  EXPECT_TRUE(board.page.labels.empty());
  EXPECT_EQ(fixture::layer(board.page, "numbers"), nullptr);
  EXPECT_EQ(fixture::layer(board.page, "leaders"), nullptr);
  const int first = zones[0]->zone->number, second = zones[1]->zone->number;
  EXPECT_EQ(board.drafting.used.unnumbered, (std::set<int>{first, second}));
  const auto key = legend_of(board.drafting.used, {});
  ASSERT_FALSE(key.empty());
  EXPECT_EQ(key.back().words, "no number");
  EXPECT_EQ(key.back().meaning,
            fmt::format("no room for it in every view: {:02}, {:02}", first, second));
}

}  // namespace
}  // namespace tinworm::scene
