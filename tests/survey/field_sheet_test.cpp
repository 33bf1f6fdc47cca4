// Spreadsheets as people save them, and every mistake told by row and column.
#include "survey/field_sheet.hpp"

#include <gtest/gtest.h>

#include "survey/small_plan.hpp"

namespace tinworm::survey {
namespace {

struct Typed {
  std::optional<Survey> survey;
  std::string mistakes;
};

Typed typed(const std::string& csv) {
  const auto records = csv_records(csv);
  if (!records)
    return {std::nullopt, fmt::format("row {}: {} ({})\n", records.error().row,
                                      records.error().what, records.error().cure)};
  FieldSheet sheet = read_field_sheet(*records, *small_plan());
  Form form;
  form.car = "Wherry 1200";
  form.date = {2025, 4, 12};
  form.filled = sheet.zones;
  const FormLines lines = form_lines(*small_plan(), form);
  Reading reading = read_with_small_plan(text_of(lines));
  const auto more = of_sheet(reading.problems, lines);
  sheet.problems.insert(sheet.problems.end(), more.begin(), more.end());
  return {std::move(reading.survey), to_text(std::move(sheet.problems), "sheet.csv")};
}

const std::string all_headings =
    "zone, hint, station, kind, seen, inside, reference, reference-coating, sheet, film, drains, "
    "at, rust, hand, tap, "
    "probe, magnet, stuffed, shape, hole, crack, size, readings, coating, pit, photo, note, "
    "repair, joint, "
    "sides, layers, date, beneath, now, mark";
const std::string headings = "zone,station,seen,rust,hand,tap,readings,size,photo,note\n";

void expect_sill(const Typed& one) {
  EXPECT_EQ(one.mistakes, "");
  ASSERT_TRUE(one.survey);
  EXPECT_EQ(one.survey->seen.at(51).word, SeenWord::bare);
  EXPECT_EQ(one.survey->seen.at(71).reason, "carpet, glued down");
  EXPECT_DOUBLE_EQ(one.survey->seen.at(13).share, 0.6);
  const auto& found = one.survey->zones.at(51).found;
  ASSERT_EQ(found.size(), 2u);
  EXPECT_EQ(found[0].name, "rear end");
  EXPECT_TRUE(found[0].at_station);
  EXPECT_EQ(found[0].rust, Rust::pitting);
  EXPECT_EQ(found[0].hand, Hand::firm);
  EXPECT_EQ(found[0].tap, Tap::dull);
  EXPECT_EQ(found[0].metal_mm, (std::vector<double>{.81, .78}));
  EXPECT_EQ(found[0].size, (Size{180, 60}));
  ASSERT_EQ(found[0].photos.size(), 1u);
  EXPECT_EQ(found[0].note, "behind the splash plate, wet");
  EXPECT_EQ(found[1].rust, Rust::none);
  EXPECT_EQ(one.survey->zones.at(13).note, "dent");
}

const std::string sill =
    headings +
    "51,rear end,bare,pitting,firm,dull,.81 .78,180x60,p/14.jpg,\"behind the splash plate, wet\"\n"
    "51,middle,,none,,rings,1.02,,,\n"
    "51,front end,,,,,,,,\n"
    "13,,part 60 %,,,,,,,dent\n"
    "71,,\"hidden, carpet, glued down\",,,,,,,\n";

std::string replaced(std::string text, const std::string& from, const std::string& to) {
  for (std::size_t at = 0; (at = text.find(from, at)) != std::string::npos; at += to.size())
    text.replace(at, from.size(), to);
  return text;
}

TEST(FieldSheet, IsReadWhateverPartsTheCells) {
  expect_sill(typed(sill));
  expect_sill(typed("\xEF\xBB\xBF" + replaced(sill, "\n", "\r\n")));
  expect_sill(typed(replaced(replaced(replaced(sill, ", ", "@"), ",", ";"), "@", ", ")));
  expect_sill(typed(replaced(replaced(replaced(sill, ", ", "@"), ",", "\t"), "@", ", ")));
  expect_sill(typed(replaced(sill, "zone,station", "Zone, Station ")));
}

TEST(FieldSheet, MistakesNameRowAndColumn) {
  const struct {
    std::string csv;
    std::string mistakes;
  } cases[] = {
      {"", "sheet.csv: row 1: the sheet is empty (allowed: " + all_headings + ")\n"},
      {"zone,staton\n51,x\n",
       "sheet.csv: row 1: no column is called that (found \"staton\"; allowed: " + all_headings +
           "; did you mean \"station\"?)\n"},
      {"station,seen\nrear end,bare\n",
       "sheet.csv: row 1: the first row has no heading \"zone\" (allowed: " + all_headings + ")\n"},
      {"zone,seen,seen\n51,bare,bare\n",
       "sheet.csv: row 1, column \"seen\": two columns have the same heading (found \"seen\")\n"},
      {headings + "\n5,,bare,,,,,,,\n,,bare,,,,,,,\n99,,bare,,,,,,,\n",
       "sheet.csv: row 3, column \"zone\": a zone is a number of two digits (found \"5\"; allowed: "
       "10 to 98; write it in each row, also where the row above has the same)\n"
       "sheet.csv: row 4, column \"zone\": a zone is a number of two digits (allowed: 10 to 98; "
       "write it in each row, also where the row above has the same)\n"
       "sheet.csv: row 5, column \"zone\": the body has no zone 99 (`tinworm bodies "
       "two-door-saloon` lists its zones)\n"},
      {headings + "51,rear end,bare,piting,firm,dull,\"0,81\",180x60,,\n",
       "sheet.csv: row 2, column \"rust\": unknown word for rust (found \"piting\"; allowed: none, "
       "surface, blister, pitting, scale, seam, poultice, edge, contact, acid, bleed, hole; did "
       "you mean \"pitting\"?)\n"
       "sheet.csv: row 2, column \"readings\": a number has a point, never a comma (found "
       "\"0,81\"; allowed: plain decimals: 3, 0.82, .82; write 0.81)\n"},
      {headings + "51,,bare,pitting,,,,,,\n",
       "sheet.csv: row 2, column \"rust\": what was found needs the name of its place (found "
       "\"pitting\"; write it under \"station\")\n"},
      {headings + "51,rear end,bare,pitting,,,,,,\n51,middle,coated,none,,,,,,\n",
       "sheet.csv: row 3, column \"seen\": a zone has one value for this (found \"coated\"; row 2 "
       "has another: keep one)\n"},
      {headings + "51,rear end,bare,pitting,,,,,,\n51,rear end,,scale,,,,,,\n",
       "sheet.csv: row 3, column \"station\": two findings of one zone have the same name (found "
       "\"rear end\"; the first is on row 2: name each spot apart)\n"},
      {headings + "51,rear end,,pitting,,,,,,\n",
       "sheet.csv: row 2, column \"station\": zone 51 was not seen, yet something was found in it "
       "(allowed: bare, coated, part, scope or tap; say under \"seen\" how the zone was seen)\n"},
      {headings + "51,rear end,bare,pitting,,,,,,,extra\n",
       "sheet.csv: row 2: a cell stands under no heading (found \"extra\")\n"},
      {headings + "51,rear end,bare,pit\"ting,,,,,,\n",
       "row 2: a quote stands where CSV allows none, or is not closed (a cell that holds a quote "
       "is quoted, and the quote is doubled: \"\")\n"},
      {headings + "51,rear end,bare,\"pitting\n",
       "row 2: a quote stands where CSV allows none, or is not closed (a cell that holds a quote "
       "is quoted, and the quote is doubled: \"\")\n"},
      {headings + "51,rear end,bare,pitting,,,,,,gr\xFC"
                  "n\n",
       "row 2: the byte 0xFC is not UTF-8 text (save the sheet as \"CSV UTF-8\")\n"},
  };
  for (const auto& [csv, mistakes] : cases) EXPECT_EQ(typed(csv).mistakes, mistakes) << csv;
}

TEST(FieldSheet, ARowThatNobodyFilledInSaysNothing) {
  const Typed one = typed(headings + "51,rear end,,,,,,,,\n52,,bare,,,,,,,\n");
  EXPECT_EQ(one.mistakes, "");
  ASSERT_TRUE(one.survey);
  EXPECT_FALSE(one.survey->zones.contains(51));
}

TEST(FieldSheet, PhotosMayBeNumbers) {
  const auto records = csv_records(headings + "51,rear end,bare,pitting,,,,,14 15,\n");
  ASSERT_TRUE(records);
  EXPECT_TRUE(read_field_sheet(*records, *small_plan()).numbered_photos);
}

TEST(FieldSheet, ManyMistakesAreCutShort) {
  std::string csv = headings;
  for (int i = 0; i < 60; ++i) csv += "7,,bare,,,,,,,\n";
  const std::string mistakes = typed(csv).mistakes;
  EXPECT_EQ(std::count(mistakes.begin(), mistakes.end(), '\n'), 51);
  EXPECT_TRUE(mistakes.ends_with("sheet.csv: and 10 more: --all lists them\n"));
}

TEST(FieldSheet, CellsCannotBreakOutOfTheirLine) {
  for (const std::string cell : {"\"x\n  52: {}\"", "\"a: b # c\"", "[1", "{", "\"\"\"q\"\"\"",
                                 "*a", "&a b", "!t", "%", "- x", "|"}) {
    const Typed one = typed(headings + "51,rear end,bare,pitting,,,,,," + cell + "\n");
    EXPECT_EQ(one.mistakes, "") << cell;
    ASSERT_TRUE(one.survey) << cell;
    EXPECT_EQ(one.survey->zones.size(), 1u) << cell;
  }
  for (const std::string cell : {"\"firm\n  52: {}\"", "[firm", "{firm: x}", "*firm", "firm #"}) {
    const Typed one = typed(headings + "51,rear end,bare,pitting," + cell + ",,,,,\n");
    EXPECT_TRUE(one.mistakes.starts_with("sheet.csv: row 2, column \"hand\": ")) << one.mistakes;
  }
}

TEST(FieldSheet, ARowMayBeARepairAReferenceOrHowAZoneWasSeen) {
  const Typed one = typed(
      "zone;station;kind;seen;readings;repair;joint;sides;size;sheet;now;mark;note\n"
      "51;;seen;bare;;;;;;;;;\n"
      "51;;reference;;1,02 1,00;;;;;;;;\n"
      "51;rear end;repair;;1,18;let-in;seam-weld stitch;open-side;300x120;1,2;sound;25 up;gas\n"
      "51;;;;;lapped;;;;;;;\n");
  EXPECT_EQ(one.mistakes, "");
  ASSERT_TRUE(one.survey);
  const Zone& zone = one.survey->zones.at(51);
  EXPECT_EQ(zone.reference_mm, (std::vector{1.02, 1.00}));
  ASSERT_EQ(zone.repairs.size(), 2u);
  const Repair& repair = zone.repairs[0];
  EXPECT_EQ(repair.name, "rear end");
  EXPECT_TRUE(repair.at_station);
  EXPECT_EQ(repair.other_joints, std::vector{Joint::stitch});
  EXPECT_EQ(repair.sides, Sides::open_side);
  EXPECT_EQ(repair.sheet_mm, 1.2);
  EXPECT_EQ(repair.metal_mm, std::vector{1.18});
  EXPECT_EQ(repair.note, "gas");
  EXPECT_EQ(zone.marks, (std::vector<Mark>{{"rear end", "25 up"}}));
  EXPECT_EQ(zone.repairs[1].kind, RepairKind::lapped);
}

TEST(FieldSheet, WhatARowCannotHoldIsRefused) {
  EXPECT_EQ(typed("zone,station,kind,seen,rust,repair,hint,mark\n"
                  "51,rear end,repair,bare,scale,lapped,,\n"
                  "52,,repiar,bare,,,,\n"
                  "61,,seen,bare,,,thin here,\n"
                  "62,,seen,bare,,,,25 up\n")
                .mistakes,
            "sheet.csv: row 2, column \"rust\": a row of a repair has no such cell (found "
            "\"scale\"; give it a row of its own)\n"
            "sheet.csv: row 3, column \"kind\": unknown word for what a row is about (found "
            "\"repiar\"; allowed: finding, repair, reference, seen; did you mean \"repair\"?)\n"
            "sheet.csv: row 4, column \"hint\": nothing is read from the hints (found \"thin "
            "here\"; write it under \"note\")\n"
            "sheet.csv: row 5, column \"mark\": a mark needs the name of its place (found \"25 "
            "up\"; write it under \"station\")\n");
}

TEST(FieldSheet, ABlankSheetRecordsNothing) {
  std::string csv;
  for (const auto& row : blank_rows(*small_plan()))
    for (std::size_t i = 0; i < row.size(); ++i)
      csv += "\"" + row[i] + (i + 1 == row.size() ? "\"\n" : "\",");
  EXPECT_NE(csv.find("\"51\",\"\",\"rear end\",\"finding\""), std::string::npos);
  const Typed one = typed(csv);
  EXPECT_EQ(one.mistakes, "");
  ASSERT_TRUE(one.survey);
  EXPECT_TRUE(one.survey->zones.empty());
  EXPECT_TRUE(one.survey->seen.empty());
}

}  // namespace
}  // namespace tinworm::survey
