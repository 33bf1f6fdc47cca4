// Marks that spreadsheets leave in cells, each told by row, column and cure.
#include "survey/sheet_marks.hpp"

#include <gtest/gtest.h>

namespace tinworm::survey {
namespace {

std::string told(const std::string& csv) {
  auto records = csv_records(csv);
  if (!records) return records.error().what;
  return to_text(take_out_marks(*records), "s.csv");
}

TEST(SheetMarks, AreToldWithTheirCure) {
  const std::string headings = "zone,station,seen,rust,readings,note\n";
  const struct {
    std::string row, told;
  } cases[] = {
      {"51,rear end,bare,pitting,.81 .78,wet", ""},
      {"51,rear end,bare,pitting,.81 .78,-wet", ""},
      {"51,rear end,bare,pitting,.81 .78,'twas wet", ""},
      {"51,rear end,bare,pitting,.81 .78,\"\"\"as new\"\"\"", ""},
      {"51,rear end,bare,pitting,.81 .78,@ the seam + lip: # 3", ""},
      {"51,rear end,bare,pitting,=.8+.1,wet",
       "row 2, column \"readings\": a formula stands here, not what it comes to (found "
       "\"=.8+.1\"; type what it comes to, without the =)"},
      {"51,rear end,bare,pitting,.81,=1+1",
       "row 2, column \"note\": a formula stands here, not what it comes to (found \"=1+1\"; type "
       "what it comes to, without the =)"},
      {"\"=\"\"51\"\"\",rear end,bare,pitting,.81,wet",
       "row 2, column \"zone\": a formula stands here, not what it comes to (found \"=\"51\"\"; "
       "write 51)"},
      {"51,rear end,bare,pitting,#REF!,wet",
       "row 2, column \"readings\": the spreadsheet couldn't work this cell out (found \"#REF!\"; "
       "type what was read)"},
      {"51,#NAME?,bare,pitting,.81,wet",
       "row 2, column \"station\": the spreadsheet couldn't work this cell out (found \"#NAME?\"; "
       "type what was read)"},
      {"51,rear end,bare,pitting,Err:502,wet",
       "row 2, column \"readings\": the spreadsheet couldn't work this cell out (found "
       "\"Err:502\"; type what was read)"},
      {"51,rear end,bare,pitting,####,wet",
       "row 2, column \"readings\": the column was too narrow for its cell (found \"####\"; widen "
       "it and save again)"},
      {"51,rear end,bare,\"\"\"pitting\"\"\",.81,wet",
       "row 2, column \"rust\": quotes stand round this cell (found \"\"pitting\"\"; write "
       "pitting)"},
      {"'51',rear end,bare,pitting,.81,wet",
       "row 2, column \"zone\": quotes stand round this cell (found \"'51'\"; write 51)"},
      {"51,rear end,bare,pitting,“.81”,wet",
       "row 2, column \"readings\": quotes stand round this cell (found \"“.81”\"; write .81)"},
      {"51,'=rear,bare,pitting,.81,wet",
       "row 2, column \"station\": an apostrophe stands first, as spreadsheets mark text (found "
       "\"'=rear\"; take it out)"},
      {"51,rear end,bare,pitting,.81,'-wet",
       "row 2, column \"note\": an apostrophe stands first, as spreadsheets mark text (found "
       "\"'-wet\"; take it out)"},
      {"51,rear end,bare,pitting,-,wet",
       "row 2, column \"readings\": a mark alone says nothing (found \"-\"; leave the cell empty "
       "where nothing was read, and say why under \"note\")"},
      {"51,rear end,bare,?,.81,wet",
       "row 2, column \"rust\": a mark alone says nothing (found \"?\"; leave the cell empty where "
       "nothing was read, and say why under \"note\")"},
      {"51,rear end,bare,pitting,.81 # scaled,wet",
       "row 2, column \"readings\": this cell holds more than figures (found \".81 # scaled\"; "
       "allowed: .81 .78 .84, or 180x60; words go under \"note\")"},
      {"51,rear end,bare,pitting,\".81\n.78\",wet",
       "row 2, column \"readings\": this cell holds more than figures (found \".81\uFFFD.78\"; "
       "allowed: .81 .78 .84, or 180x60; words go under \"note\")"},
      {"51,rear end,bare,pitting,.81,built \u202E7691",
       "row 2, column \"note\": an invisible mark that turns the direction of writing (U+202E) "
       "stands here (delete it, or type the cell anew)"},
      {"51,rear\u200B end,bare,pitting,.81,wet",
       "row 2, column \"station\": an invisible character without width (U+200B) stands here "
       "(delete it, or type the cell anew)"},
  };
  for (const auto& [row, expected] : cases)
    EXPECT_EQ(told(headings + row + "\n"), expected.empty() ? "" : "s.csv: " + expected + "\n");
}

TEST(SheetMarks, OfHeadingsAreToldFirst) {
  const auto records = csv_records("'zone',=station,se\u200Ben,rust\n");
  ASSERT_TRUE(records);
  EXPECT_EQ(to_text(marks_in_headings(records->front()), "s.csv"),
            "s.csv: row 1: quotes stand round this cell (found \"'zone'\"; write zone)\n"
            "s.csv: row 1: a formula stands here, not what it comes to (found \"=station\"; type "
            "what it comes to, without the =)\n"
            "s.csv: row 1: an invisible character without width (U+200B) stands here (delete it, "
            "or type the cell anew)\n");
}

TEST(SheetMarks, LeaveTheRestOfTheSheetToBeChecked) {
  auto records = csv_records(
      "zone,station,rust,readings,note\n"
      "51,rear end,pitting,#REF!,wet\n"  // keeps its rust
      "51,middle,,-,dry\n"               // says nothing without
      "51,=front,pitting,.81,\n"         // nobody knows where
      "52,rear end,pitting,.81,\n");
  ASSERT_TRUE(records);
  EXPECT_EQ(take_out_marks(*records).size(), 3u);
  ASSERT_EQ(records->size(), 3u);
  EXPECT_EQ((*records)[1].cells,
            (std::vector<std::string>{"51", "rear end", "pitting", "", "wet"}));
  EXPECT_EQ((*records)[2].cells[0], "52");
}

TEST(SheetMarks, FilesThatAreNoCsvAreNamed) {
  using namespace std::string_literals;
  const struct {
    std::string file, what;
  } cases[] = {
      {"PK\x03\x04 and so on", "this is a spreadsheet's own file, not CSV"},
      {"\xD0\xCF\x11\xE0 and so on", "this is a spreadsheet's own file, not CSV"},
      {"\xFF\xFEz\0o\0"s, "the file is UTF-16, which is not read"},
      {"\xFF\xFE\0\0z\0\0\0"s, "the file is UTF-32, which is not read"},
      {"zone,seen\n=\"51\",bare\n", "a quote stands after =, as in =\"51\""},
      {"zone,seen\n5\"1,bare\n", "a quote stands where CSV allows none, or is not closed"},
      {"zone\n51\0\n"s, "a NUL byte stands here, so this is no text file"},
      {"zone\n\xE9t\xE9\n"s, "the byte 0xE9 is not UTF-8 text"},
  };
  for (const auto& [file, what] : cases) EXPECT_EQ(told(file), what);
}

}  // namespace
}  // namespace tinworm::survey
