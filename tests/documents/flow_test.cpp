// Text that runs down pages: what stays together, what is repeated, what never stands alone.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fmt/format.h>

#include "documents/fixture.hpp"
#include "documents/flow.hpp"

namespace tinworm::documents {
namespace {

const Paper paper{100, 100, {10, 10, 80, 80}};
const scene::Measure measure = fixture::plain_measure;
const double line_mm = scene::line_height_mm(text_style);

// So that what follows starts that far down.
void fill(Flow& flow, double height_mm) {
  flow.block(height_mm, [](scene::Page&, const scene::Area&) {});
}

std::vector<std::string> lines_of(const scene::Page& page) {
  std::vector<std::string> lines;
  for (const scene::Text* text : fixture::running_text(page)) lines.push_back(text->text);
  return lines;
}

TEST(Flow, NoHeadingStandsAloneAtAFootWhereverItFalls) {
  for (double down = 1; down < 80; down += 0.5) {
    Flow flow(paper, measure);
    fill(flow, down);
    flow.section("Section", "there", "what it is about");
    flow.heading("Heading", "what stands under it");
    flow.paragraph("one line");
    const auto pages = std::move(flow).pages();
    const auto lines = lines_of(pages.back());
    ASSERT_THAT(lines, testing::ElementsAre("Section", "what it is about", "Heading",
                                            "what stands under it", "one line"))
        << down;
    ASSERT_EQ(pages.back().places.size(), 1U);
    ASSERT_EQ(pages.back().outline.size(), 1U);
  }
}

TEST(Flow, AHeadingWithNothingUnderItIsNotWritten) {
  Flow flow(paper, measure);
  flow.paragraph("text");
  flow.section("Empty");
  EXPECT_THAT(lines_of(std::move(flow).pages().back()), testing::ElementsAre("text"));
}

TEST(Flow, NoLineOfAParagraphStandsAlone) {
  std::string long_text;
  for (int i = 0; i < 200; ++i) long_text += fmt::format("word{:03} ", i);
  for (double down = 1; down < 80; down += 0.5) {
    Flow flow(paper, measure);
    fill(flow, down);
    flow.paragraph(long_text);
    std::string read;
    for (const scene::Page& page : std::move(flow).pages()) {
      const auto lines = lines_of(page);
      ASSERT_NE(lines.size(), 1U) << down;
      for (const std::string& line : lines) read += line + " ";
    }
    ASSERT_EQ(read, long_text) << down;
  }
}

TEST(Flow, TablesRepeatTheirHeadAndLoseNoRow) {
  const std::vector<Column> columns{{"no", 1, scene::Align::right}, {"what", 3}};
  std::vector<Row> rows;
  for (int i = 1; i <= 100; ++i)
    rows.push_back({{fmt::format("{}", i), "some words"}, "", fmt::format("row-{}", i), false});
  for (double down = 1; down < 80; down += 1.5) {
    Flow flow(paper, measure);
    fill(flow, down);
    flow.heading("Table");
    flow.table(columns, rows);
    int next = 1;
    const auto pages = std::move(flow).pages();
    for (const scene::Page& page : pages) {
      std::vector<std::string> lines = lines_of(page);
      if (lines.empty()) continue;
      if (lines.front() == "Table") lines.erase(lines.begin());
      ASSERT_EQ(lines[0], "no");
      ASSERT_EQ(lines[1], "what");
      ASSERT_GE(lines.size(), 6U) << "a row alone, " << down;
      for (std::size_t i = 2; i < lines.size(); i += 2)
        ASSERT_EQ(lines[i], fmt::format("{}", next++));
    }
    ASSERT_EQ(next, 101);
  }
}

TEST(Flow, ARowThatNoPageHoldsGoesOnAndLosesNoWord) {
  std::string long_text;
  for (int i = 0; i < 300; ++i) long_text += fmt::format("word{:03} ", i);
  for (double down = 1; down < 80; down += 2.5) {
    Flow flow(paper, measure);
    fill(flow, down);
    flow.section("Section", "there", "what it is about");
    flow.table({{"what", 1}, {"long", 1}}, {{{"short", "row"}, "", "", false},
                                            {{"one", long_text}, "place", "link", false},
                                            {{"last", "row"}, "", "", false}});
    std::string read;
    std::size_t places = 0, links = 0;
    for (const scene::Page& page : std::move(flow).pages()) {
      places += page.places.size();
      links += page.links.size();
      for (const scene::Text* text : fixture::running_text(page)) {
        EXPECT_LE(text->area.bottom(), paper.text.bottom() + 1e-6) << down << ": " << text->text;
        if (text->text.starts_with("word")) read += text->text + " ";
      }
    }
    EXPECT_EQ(read, long_text) << down;
    EXPECT_EQ(places, 2U) << down;  // the section's and the row's
    EXPECT_EQ(links, 1U) << down;
  }
}

TEST(Flow, LowTablesAreNotTorn) {
  for (double down = 1; down < 80; down += 0.5) {
    Flow flow(paper, measure);
    fill(flow, down);
    flow.table({{"head"}}, {{{"a"}, "", "", false}, {{"b"}, "", "", false}, {{"c"}, "", "", true}});
    ASSERT_THAT(lines_of(std::move(flow).pages().back()),
                testing::ElementsAre("head", "a", "b", "c"))
        << down;
  }
}

TEST(Flow, NothingLeavesTheTextArea) {
  Flow flow(paper, measure);
  flow.section("A section whose title is so long that it has to be broken into several lines");
  for (int i = 0; i < 40; ++i) {
    flow.heading(fmt::format("Heading {}", i), "a note");
    flow.paragraph("Some words that fill more than a line of this narrow paper, as words do.");
    flow.item("An item whose words fill more than one line of this narrow paper as well.", "there");
    flow.table({{"left"}, {"right", 1, scene::Align::right}},
               {{{"a cell whose words don't fit on one line", "1.23"}, "there", "", false}});
  }
  for (const scene::Page& page : std::move(flow).pages()) {
    for (const scene::Text* text : fixture::running_text(page))
      EXPECT_TRUE(paper.text.grown(1e-6).contains(text->area)) << text->text;
    for (const scene::Link& link : page.links)
      EXPECT_TRUE(paper.text.grown(1e-6).contains(link.area));
  }
}

TEST(Flow, FiguresStandUnderEachOtherAtTheRight) {
  Flow flow(paper, measure);
  flow.table({{"what"}, {"EUR", 1, scene::Align::right}},
             {{{"a", "9"}, "", "", false}, {{"b", "12 345"}, "", "", false}});
  std::vector<double> ends;
  const auto pages = std::move(flow).pages();
  for (const scene::Text* text : fixture::running_text(pages.front()))
    if (text->align == scene::Align::right) ends.push_back(text->area.right());
  ASSERT_EQ(ends.size(), 3U);
  EXPECT_NEAR(ends[0], ends[1], 1e-9);
  EXPECT_NEAR(ends[1], ends[2], 1e-9);
}

TEST(Flow, BlocksAreKeptWhole) {
  Flow flow(paper, measure);
  fill(flow, 50);
  std::vector<double> tops;
  for (int i = 0; i < 3; ++i)
    flow.block(30, [&](scene::Page&, const scene::Area& area) { tops.push_back(area.y_mm); });
  EXPECT_THAT(tops, testing::ElementsAre(60, 10, 40));
}

TEST(PaperFoot, HoldsCautionFingerprintAndNumber) {
  scene::Page page = blank_page(paper);
  write_foot(page, paper, {"Wherry, fingerprint 47a2feba572e", "A caution."}, 3, 12, measure);
  EXPECT_EQ(page.label, "3");
  const std::string words = fixture::words(page);
  EXPECT_THAT(words, testing::HasSubstr("A caution."));
  EXPECT_THAT(words, testing::HasSubstr("page 3 of 12"));
  EXPECT_THAT(words, testing::HasSubstr("fingerprint 47a2feba572e"));
  for (const scene::Text* text : scene::texts(page)) EXPECT_GT(text->area.y_mm, line_mm);
}

}  // namespace
}  // namespace tinworm::documents
