// Which words of hand, tap and probe say that metal gives or breaks, one by one: a new word must be
// put on one side.
#include "survey/signs.hpp"

#include <gtest/gtest.h>

namespace tinworm::survey {
namespace {

template <class Word>
void expect(std::optional<Word> Spot::*member, const std::vector<std::string>& giving,
            const std::vector<std::string>& breaking) {
  for (const std::string& text : words<Word>()) {
    Spot spot;
    spot.*member = of<Word>(text);
    const bool give = std::ranges::find(giving, text) != giving.end();
    const bool broken = std::ranges::find(breaking, text) != breaking.end();
    EXPECT_EQ(gives(spot), give) << text;
    EXPECT_EQ(breaks(spot), broken) << text;
    EXPECT_EQ(gives_way(spot), give || broken) << text;
  }
}

TEST(Signs, WhatGivesAndWhatBreaks) {
  expect(&Spot::hand, {"gives"}, {"breaks"});
  expect(&Spot::tap, {"crunches"}, {});
  expect(&Spot::probe, {}, {"goes-in"});
  expect(&Spot::rust, {}, {});
  expect(&Spot::magnet, {}, {});
  EXPECT_FALSE(gives_way(Spot{}));
}

TEST(Signs, AHoleByItsSizeOrItsWord) {
  Spot sized, named;
  sized.hole = Size{14, 9};
  named.rust = Rust::hole;
  EXPECT_TRUE(holed(sized));
  EXPECT_TRUE(holed(named));
  EXPECT_FALSE(holed(Spot{}));
}

}  // namespace
}  // namespace tinworm::survey
