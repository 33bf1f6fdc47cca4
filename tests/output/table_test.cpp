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

TEST(Table, WrapsTheWidestWordsFirstAndFiguresNever) {
  EXPECT_EQ(table({{"name"}, {"metal left", Align::right}, {"near"}},
                  {{"radiator support and slam panel", "95–98–100 %", "steering column"}}, 50, ""),
            "name                   metal left  near\n"
            "radiator support and  95–98–100 %  steering column\n"
            "slam panel\n");
  EXPECT_EQ(table({{"figures", Align::right}}, {{"1234567890 1234567890"}}, 10, ""),
            "              figures\n1234567890 1234567890\n");
}

TEST(Table, LeavesOutWhatNoRowUses) {
  EXPECT_EQ(table({{"zone"}, {"near"}, {"step"}}, {{"51", "", "thin"}, {"52", "", ""}}, 80),
            "  zone  step\n  51    thin\n  52\n");
  EXPECT_EQ(table({{"zone"}}, {}, 80), "");
}

}  // namespace
}  // namespace tinworm::output
