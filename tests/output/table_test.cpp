#include "output/table.hpp"

#include <gtest/gtest.h>

namespace tinworm::output {
namespace {

TEST(Table, AlignsByWhatIsSeen) {
  EXPECT_EQ(table({{"zone"}, {"sheet", Align::right}, {"name"}},
                  {{"51", "1.1", "Schweller außen"}, {"é9", "10.25", "x"}}, 80),
            "  zone  sheet  name\n"
            "  51      1.1  Schweller außen\n"
            "  é9    10.25  x\n");
}

TEST(Table, WrapsItsLastColumn) {
  EXPECT_EQ(
      table({{"zone"}, {"starts"}}, {{"51", "bottom seam and both ends, from inside"}}, 34, ""),
      "zone  starts\n"
      "51    bottom seam and both ends,\n"
      "      from inside\n");
}

TEST(Table, LeavesOutWhatNoRowUses) {
  EXPECT_EQ(table({{"zone"}, {"near"}, {"step"}}, {{"51", "", "thin"}, {"52", "", ""}}, 80),
            "  zone  step\n  51    thin\n  52\n");
  EXPECT_EQ(table({{"zone"}}, {}, 80), "");
}

}  // namespace
}  // namespace tinworm::output
