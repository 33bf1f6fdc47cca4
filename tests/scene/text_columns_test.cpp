// Columns of text: nothing lost, nothing parted that belongs together, ends at about one height.
#include "scene/text_columns.hpp"

#include <gtest/gtest.h>

#include "painting/measure.hpp"

namespace tinworm::scene {
namespace {

std::vector<Paragraph> chapters(int count, int words) {
  std::vector<Paragraph> paragraphs;
  for (int i = 0; i < count; ++i) {
    paragraphs.push_back({"Chapter", "", true});
    std::string text;
    for (int k = 0; k < words; ++k) text += "word ";
    paragraphs.push_back({text, "zone-51"});
  }
  return paragraphs;
}

std::vector<ColumnLine> lines_of(int count, int words) {
  return column_lines(chapters(count, words), 60, painting::measure());
}

// Lines in each column.
std::vector<int> filled(const std::vector<ColumnPlace>& places, std::size_t columns) {
  std::vector<int> lines(columns);
  for (const ColumnPlace& place : places) ++lines.at(place.column);
  return lines;
}

TEST(TextColumns, HoldEveryLineInOrderWithinTheirHeight) {
  const auto lines = lines_of(8, 40);
  const auto places = set_in_columns(lines, 0, 2, 200);
  ASSERT_EQ(places.size(), lines.size());
  for (std::size_t i = 1; i < places.size(); ++i) {
    const ColumnPlace &before = places[i - 1], &now = places[i];
    EXPECT_TRUE(now.column == before.column + 1 ? now.y_mm == 0 : now.y_mm > before.y_mm) << i;
  }
}

TEST(TextColumns, EndAtAboutOneHeight) {
  const auto lines = lines_of(8, 40);
  const auto filling = filled(set_in_columns(lines, 0, 2, 200), 2);
  EXPECT_LE(std::abs(filling[0] - filling[1]), 6);
}

TEST(TextColumns, AHeadingStaysWithItsText) {
  for (int words = 1; words < 60; ++words) {
    const auto lines = lines_of(6, words);
    const auto places = set_in_columns(lines, 0, 2, 200);
    ASSERT_EQ(places.size(), lines.size());
    for (std::size_t i = 0; i + 1 < lines.size(); ++i) {
      if (lines[i].with_next) {
        EXPECT_EQ(places[i].column, places[i + 1].column) << words << ", line " << i;
      }
    }
    EXPECT_TRUE(lines[0].with_next);
    EXPECT_FALSE(lines.back().with_next);
  }
}

TEST(TextColumns, WhatFindsNoRoomIsLeftForTheNextPage) {
  const auto lines = lines_of(8, 40);
  const auto first = set_in_columns(lines, 0, 2, 30);
  ASSERT_LT(first.size(), lines.size());
  ASSERT_GT(first.size(), 0u);
  EXPECT_FALSE(lines[first.size() - 1].with_next);
  std::size_t done = 0;
  for (int pages = 0; done < lines.size() && pages < 100; ++pages)
    done += set_in_columns(lines, done, 2, 30).size();
  EXPECT_EQ(done, lines.size());
}

// Columns lower than a run that mustn't be parted still take it: pages come to an end.
TEST(TextColumns, AreNeverEmpty) {
  EXPECT_GT(set_in_columns(lines_of(1, 40), 0, 2, 1).size(), 0u);
  EXPECT_TRUE(set_in_columns({}, 0, 2, 30).empty());
}

TEST(TextColumns, TheFirstLineAloneIsLinked) {
  const auto lines = lines_of(1, 40);
  EXPECT_EQ(lines[0].link, "");
  EXPECT_EQ(lines[1].link, "zone-51");
  EXPECT_EQ(lines[2].link, "");
}

}  // namespace
}  // namespace tinworm::scene
