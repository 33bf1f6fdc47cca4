#include "geometry/path.hpp"

#include <gtest/gtest.h>

#include "geometry/path_text.hpp"

namespace tinworm::geometry {
namespace {

struct Case {
  std::string_view data;
  std::string_view expected;
};

TEST(Path, ReadsEveryCommand) {
  const Case cases[] = {
      {"M1 2", "M1,2"},
      {"M1 2L3 4", "M1,2 L3,4"},
      {"M1 2l3 4", "M1,2 L4,6"},
      {"M1 2H9", "M1,2 L9,2"},
      {"M1 2h9", "M1,2 L10,2"},
      {"M1 2V9", "M1,2 L1,9"},
      {"M1 2v9", "M1,2 L1,11"},
      {"M1 2C3 4 5 6 7 8", "M1,2 C3,4 5,6 7,8"},
      {"M1 2c3 4 5 6 7 8", "M1,2 C4,6 6,8 8,10"},
      {"M0 0C0 3 6 3 6 0S12-3 12 0", "M0,0 C0,3 6,3 6,0 C6,-3 12,-3 12,0"},
      {"M0 0C0 3 6 3 6 0s6-3 6 0", "M0,0 C0,3 6,3 6,0 C6,-3 12,-3 12,0"},
      {"M0 0Q3 3 6 0", "M0,0 C2,2 4,2 6,0"},
      {"M1 1q3 3 6 0", "M1,1 C3,3 5,3 7,1"},
      {"M0 0Q3 3 6 0T12 0", "M0,0 C2,2 4,2 6,0 C8,-2 10,-2 12,0"},
      {"M0 0Q3 3 6 0t6 0t6 0", "M0,0 C2,2 4,2 6,0 C8,-2 10,-2 12,0 C14,2 16,2 18,0"},
      {"M1 1A2 3 30 0 1 5 5", "M1,1 A2,3 30 01 5,5"},
      {"M1 1a2 3 30 1 0 5 5", "M1,1 A2,3 30 10 6,6"},
      {"M1 1L2 2Z", "M1,1 L2,2 Z"},
      {"m1 1l2 2z", "M1,1 L3,3 Z"},
  };
  for (const Case& c : cases) EXPECT_EQ(read(c.data), c.expected) << c.data;
}

TEST(Path, PacksNumbers) {
  const Case cases[] = {
      {"M1.5.5-3-4", "M1.5,0.5 L-3,-4"},
      {"M.5.5.5.5", "M0.5,0.5 L0.5,0.5"},
      {"M1-2", "M1,-2"},
      {"M+1+2", "M1,2"},
      {"M1e1.5", "M10,0.5"},
      {"M1e1-5", "M10,-5"},
      {"M15E-1,2e+1", "M1.5,20"},
      {"M1.e1 2.", "M10,2"},
      {"M1,2", "M1,2"},
      {"M 1 , 2", "M1,2"},
      {" \t\r\n\fM1\t2\n3\f4\r", "M1,2 L3,4"},
      {"M0 0a1 1 0 01 1 1", "M0,0 A1,1 0 01 1,1"},
      {"M0 0a1 1 0 111 1", "M0,0 A1,1 0 11 1,1"},
      {"M0 0a1,1,0,1,1,1,1", "M0,0 A1,1 0 11 1,1"},
      {"M0 0a1 1 0 01.5.5", "M0,0 A1,1 0 01 0.5,0.5"},
      {"M0 0a1 1 0 10-1-1 1 1 0 01 1 1", "M0,0 A1,1 0 10 -1,-1 A1,1 0 01 0,0"},
  };
  for (const Case& c : cases) {
    EXPECT_EQ(read(c.data), c.expected) << c.data;
  }
}

TEST(Path, RepeatsACommandLeftOut) {
  const Case cases[] = {
      {"M1 1 2 2 3 3", "M1,1 L2,2 L3,3"},
      {"m1 1 2 2 3 3", "M1,1 L3,3 L6,6"},
      {"M1 1H2 3", "M1,1 L2,1 L3,1"},
      {"M1 1v2,3", "M1,1 L1,3 L1,6"},
      {"M0 0L1 1,2 2", "M0,0 L1,1 L2,2"},
      {"M0 0c1 1 2 2 3 3 1 1 2 2 3 3", "M0,0 C1,1 2,2 3,3 C4,4 5,5 6,6"},
      {"M9 9L1 1m1 1 1 1", "M9,9 L1,1 M2,2 L3,3"},
  };
  for (const Case& c : cases) EXPECT_EQ(read(c.data), c.expected) << c.data;
}

TEST(Path, SmoothCommandsAfterOthersStartStraight) {
  const Case cases[] = {
      {"M1 1S2 3 4 5", "M1,1 C1,1 2,3 4,5"},
      {"M1 1L5 5S6 6 7 7", "M1,1 L5,5 C5,5 6,6 7,7"},
      {"M0 0Q3 3 6 0S7 7 8 8", "M0,0 C2,2 4,2 6,0 C6,0 7,7 8,8"},
      {"M0 0C0 3 6 3 6 0T12 0", "M0,0 C0,3 6,3 6,0 C6,0 8,0 12,0"},
      {"M3 0T6 0T9 3", "M3,0 C3,0 4,0 6,0 C8,0 9,1 9,3"},
      {"M0 0Q3 3 6 0A1 1 0 0 1 7 1T9 9",
       "M0,0 C2,2 4,2 6,0 A1,1 0 01 7,1 C7,1 7.666667,3.666667 9,9"},
      {"M0 0C0 3 6 3 6 0zS1 1 2 2", "M0,0 C0,3 6,3 6,0 Z C0,0 1,1 2,2"},
  };
  for (const Case& c : cases) EXPECT_EQ(read(c.data), c.expected) << c.data;
}

TEST(Path, AfterCloseTheStartIsTheCurrentPoint) {
  const Case cases[] = {
      {"M5 5l1 0l0 1zl-1-1", "M5,5 L6,5 L6,6 Z L4,4"},
      {"M5 5l1 0l0 1zm-1-1l2 0", "M5,5 L6,5 L6,6 Z M4,4 L6,4"},
      {"M5 5h1zM1 1h1zh2", "M5,5 L6,5 Z M1,1 L2,1 Z L3,1"},
      {"M5 5h1zz", "M5,5 L6,5 Z Z"},
  };
  for (const Case& c : cases) EXPECT_EQ(read(c.data), c.expected) << c.data;
}

TEST(Path, ArcsThatAreNone) {
  const Case cases[] = {
      {"M1 1A5 5 0 0 1 1 1L2 2", "M1,1 L2,2"},       {"M1 1a5 5 0 1 1 0 0", "M1,1"},
      {"M1 1A0 5 0 0 1 3 3", "M1,1 L3,3"},           {"M1 1A5 0 0 0 1 3 3", "M1,1 L3,3"},
      {"M1 1A-5-6 0 0 1 3 3", "M1,1 A5,6 0 01 3,3"},
  };
  for (const Case& c : cases) EXPECT_EQ(read(c.data), c.expected) << c.data;
}

TEST(Path, NamesTheByteOfEveryMistake) {
  const std::string commands = "; MLHVCSQTAZ, upper or lower case";
  const std::string range = "; 0, or a figure from 1e-300 to 1e6 in size";
  const struct {
    std::string_view data;
    std::string expected;
  } cases[] = {
      {"", "0: the path is empty; path data, M first"},
      {" \n", "0: the path is empty; path data, M first"},
      {"none", "0: \"none\" draws nothing; M first"},
      {" none", "1: \"none\" draws nothing; M first"},
      {"L1 1", "0: the path begins with \"L\"; M first"},
      {" 1 1", "1: the path begins with \"1\"; M first"},
      {"é", "0: the path begins with \"é\"; M first"},
      {"M", "1: a number is missing after M (0 of 2 read); a number"},
      {"M1", "2: a number is missing after M (1 of 2 read); a number"},
      {"M1 1 2", "6: a number is missing after L (1 of 2 read); a number"},
      {"M1 1 L", "6: a number is missing after L (0 of 2 read); a number"},
      {"M1 1 L2 z", "8: a number is missing after L (1 of 2 read); a number"},
      {"M1 1c1 2 3 4 5 L6 6", "15: a number is missing after c (5 of 6 read); a number"},
      {"M1 1h", "5: a number is missing after h (0 of 1 read); a number"},
      {"M1 1A1 1 0 0", "12: the path ends before an arc flag; 0 or 1"},
      {"M1 1A1 1 0 2 1 3 3", "11: \"2\" is no arc flag; 0 or 1"},
      {"M1 1A1 1 0 1.0 1 3 3", "12: \".\" is no arc flag; 0 or 1"},
      {"M1 1A1 1 0 -1 1 3 3", "11: \"-\" is no arc flag; 0 or 1"},
      {"M0 0a1 1 0 0011", "15: a number is missing after a (6 of 7 read); a number"},
      {"M,1 1", "1: \",\" is no number; a number"},
      {"M1,,1", "3: \",\" is no number; a number"},
      {"M1 x", "3: \"x\" is no number; a number"},
      {"M1 -", "3: \"-\" is no number; a number"},
      {"M1 .", "3: \".\" is no number; a number"},
      {"M1 +-1", "3: \"+\" is no number; a number"},
      {"M1 --1", "3: \"-\" is no number; a number"},
      {"M1 nan", "3: \"n\" is no number; a number"},
      {"M1 inf", "3: \"i\" is no number; a number"},
      {"M1 1e", "3: the exponent of \"1e\" has no digits; a number such as 1.5e3"},
      {"M1 1e+L", "3: the exponent of \"1e+\" has no digits; a number such as 1.5e3"},
      {"M1 1em", "3: the exponent of \"1e\" has no digits; a number such as 1.5e3"},
      {"M1 1e7", "3: \"1e7\" is out of range" + range},
      {"M1 -1000000.1", "3: \"-1000000.1\" is out of range" + range},
      {"M1 1e400", "3: \"1e400\" is out of range" + range},
      {"M1 1e-400", "3: \"1e-400\" is out of range" + range},
      {"M1 1e99999999999999999999", "3: \"1e999999999999999999…\" is out of range" + range},
      {"M1e6 0l1 0", "7: l leads to 1000001,0; points within 1e6 of 0,0"},
      {"M1 1,", "5: a number is missing after the comma; a number, or no comma"},
      {"M1 1, L2 2", "6: a number is missing after the comma; a number, or no comma"},
      {"M1 1L2 2,,3 3", "9: a number is missing after the comma; a number, or no comma"},
      {"M1 1L2 2z3 3", "9: a number after Z, which takes none" + commands},
      {"M1 1L2 2z,", "9: \",\" is no command" + commands},
      {"M1 1B2 2", "4: \"B\" is no command" + commands},
      {"M1 1é", "4: \"é\" is no command" + commands},
      {"M1 1mm", "5: a number is missing after m (0 of 2 read); a number"},
      {std::string_view("M1 1\0", 5), "4: byte 0x00 is no command" + commands},
      {"M1 \x07", "3: byte 0x07 is no number; a number"},
      {"M1 1\vL2 2", "4: byte 0x0b is no command" + commands},
      {"M0x10 1", "2: \"x\" is no number; a number"},
      {"M1_0 1", "2: \"_\" is no number; a number"},
      {"M1;1", "2: \";\" is no number; a number"},
  };
  for (const auto& c : cases) EXPECT_EQ(read(c.data), c.expected) << c.data;
}

// Every beginning of a sound path is either a path or a mistake within it: never a crash.
TEST(Path, AnyCutOfAPathIsAnswered) {
  const std::string_view whole =
      "M1.5.5-3e1 4L1 1h1v1c1 1 2 2 3 3s1 1 2 2q1 1 2 2t1 1a1 1 0 01 1 1z";
  ASSERT_TRUE(parse_path(whole));
  for (std::size_t size = 0; size < whole.size(); ++size) {
    const auto path = parse_path(whole.substr(0, size));
    if (!path) {
      EXPECT_LE(path.error().offset, static_cast<int>(size));
      EXPECT_FALSE(path.error().what.empty());
      EXPECT_FALSE(path.error().allowed.empty());
    }
  }
}

}  // namespace
}  // namespace tinworm::geometry
