// `start` through the program.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "paths.hpp"
#include "verbs/program.hpp"

namespace tinworm::verbs {
namespace {

using testing::HasSubstr;
using testing::StartsWith;

TEST(Start, WritesAFormThatCheckTakes) {
  const Workshop workshop;
  const Ended ended =
      workshop.run("start small-body --panels panels --car 'Wherry 1200' -o new.yaml");
  EXPECT_EQ(ended.status, 0);
  EXPECT_EQ(ended.results, "");
  EXPECT_EQ(ended.messages, "wrote new.yaml: fill it in, then `tinworm check new.yaml`\n");
  const Ended checked = workshop.run("check new.yaml --panels panels");
  EXPECT_EQ(checked.status, 0);
  EXPECT_THAT(
      checked.results,
      HasSubstr("new.yaml: no mistakes; 3 questions; small-body 2, 0 zones named, 0 spots\n"));
}

TEST(Start, DatesTheVisitTodayUnlessTold) {
  const Workshop workshop;
  const std::string epoch = "export SOURCE_DATE_EPOCH=1744416000";
  EXPECT_THAT(workshop.run("start small-body --panels panels", epoch).results,
              HasSubstr("\n  date: 2025-04-12 "));
  EXPECT_THAT(workshop.run("start small-body --panels panels --date 2025-03", epoch).results,
              HasSubstr("\n  date: 2025-03 "));
  const Ended wrong = workshop.run("start small-body --panels panels --date 2025-02-30");
  EXPECT_EQ(wrong.status, 2);
  EXPECT_EQ(wrong.messages,
            "tinworm start: --date: February 2025 has days 01 to 28, not \"2025-02-30\"\n"
            "Write 2025-04-12, 2025-04 or 2025.\n");
}

TEST(Start, NeverReplacesAFile) {
  const Workshop workshop;
  workshop.put("mine.yaml", "precious\n");
  const Ended ended = workshop.run("start small-body --panels panels -o mine.yaml");
  EXPECT_EQ(ended.status, 3);
  EXPECT_EQ(ended.messages,
            "tinworm: mine.yaml: this file is there already, and start never replaces one (give "
            "another name, or take it away yourself)\n");
  EXPECT_EQ(workshop.text("mine.yaml"), "precious\n");
}

// Two at once: one writes, the other says that it is there, whichever comes first.
TEST(Start, NeverReplacesAFileThatCameMeanwhile) {
  for (int round = 0; round < 10; ++round) {
    const Workshop workshop;
    const std::string both =
        "(for car in one two; do " + program_file() +
        " start small-body --panels panels --car $car -o new.yaml >/dev/null 2>$car.messages; "
        "echo $? >>statuses & done; wait)";
    workshop.run("--version", both);
    EXPECT_THAT(workshop.text("statuses"), testing::AnyOf("0\n3\n", "3\n0\n"));
    const std::string messages = workshop.text("one.messages") + workshop.text("two.messages");
    EXPECT_THAT(messages, HasSubstr("start never replaces one"));
    const bool one_was_told = workshop.text("two.messages").find("wrote") == std::string::npos;
    EXPECT_THAT(workshop.text("new.yaml"),
                HasSubstr(one_was_told ? "  name: one\n" : "  name: two\n"));
  }
}

TEST(Start, WritesNothingButSurveys) {
  const Workshop workshop;
  const struct {
    std::string path, message;
  } cases[] = {
      {"form.pdf",
       "tinworm start: writes a survey, which ends in .yaml or .yml, not form.pdf\n"
       "Name it so: -o form.yaml\n"},
      {"form.txt",
       "tinworm start: writes a survey, which ends in .yaml or .yml, not form.txt\n"
       "Name it so: -o form.yaml\n"},
      {"form",
       "tinworm start: writes a survey, which ends in .yaml or .yml, not form\n"
       "Name it so: -o form.yaml\n"},
      {"panels", "tinworm start: panels is a folder\nName the file too: -o panels/survey.yaml\n"},
      {"panels/", "tinworm start: panels/ is a folder\nName the file too: -o panels/survey.yaml\n"},
      {"none/", "tinworm start: none/ is a folder\nName the file too: -o none/survey.yaml\n"},
  };
  for (const auto& [path, message] : cases) {
    const Ended ended = workshop.run("start small-body --panels panels -o " + path);
    EXPECT_EQ(ended.status, 2) << path;
    EXPECT_EQ(ended.messages, message);
    EXPECT_EQ(ended.results, "");
    EXPECT_FALSE(workshop.has("form.pdf") || workshop.has("form")) << path;
  }
  for (const std::string path : {"a.yaml", "b.yml", "C.YAML"}) {
    EXPECT_EQ(workshop.run("start small-body --panels panels -o " + path).status, 0) << path;
    EXPECT_TRUE(workshop.has(path));
  }
  EXPECT_EQ(workshop.run("start small-body --panels panels -o -").status, 0);
}

TEST(Start, FromAnEarlierSurvey) {
  const Workshop workshop;
  const Ended ended = workshop.run("start --from good.yaml --panels panels -o new.yaml");
  EXPECT_EQ(ended.status, 0) << ended.messages;
  const std::string form = workshop.text("new.yaml");
  EXPECT_THAT(form, HasSubstr("  name: Wherry 1200\n"));
  EXPECT_THAT(form, HasSubstr("#    reference: 1.00 1.00 1.00  # kept from last time\n"));
  EXPECT_THAT(form, HasSubstr("#      - rear end:              # last time: pitting, firm, 60x40, "
                              "metal 0.80 0.80 0.80\n"));
  EXPECT_EQ(workshop.run("check new.yaml --panels panels").status, 0);
}

TEST(Start, FromAnEarlierSurveyWithMistakesWritesNothing) {
  const Workshop workshop;
  const Ended ended = workshop.run("start --from bad.yaml --panels panels -o new.yaml");
  EXPECT_EQ(ended.status, 1);
  EXPECT_THAT(ended.messages, StartsWith("bad.yaml:4:23: February 2025 has days 01 to 28"));
  EXPECT_FALSE(workshop.has("new.yaml"));
}

TEST(Start, FromASpreadsheet) {
  const Workshop workshop;
  workshop.put("sheet.csv",
               "zone;station;seen;rust;readings;note\n"
               "51;rear end;bare;pitting;.80 .81;\n"
               "52;;bare;;;new last year\n");
  const Ended ended =
      workshop.run("start small-body --from-csv sheet.csv --panels panels -o new.yaml");
  EXPECT_EQ(ended.status, 0) << ended.messages;
  EXPECT_THAT(workshop.run("check new.yaml --panels panels").results,
              testing::ContainsRegex(
                  "new.yaml: no mistakes; [0-9]+ questions; small-body 2, 2 zones named, 1 spot"));
}

TEST(Start, ASpreadsheetWithMistakesWritesNothing) {
  const Workshop workshop;
  workshop.put("sheet.csv", "zone,station,seen,rust\n51,rear end,bar,pitting\n53,,bare,\n");
  const Ended ended =
      workshop.run("start small-body --from-csv sheet.csv --panels panels -o new.yaml");
  EXPECT_EQ(ended.status, 1);
  EXPECT_EQ(ended.messages,
            "sheet.csv: row 2, column \"seen\": unknown word for how a zone was seen (found "
            "\"bar\"; allowed: bare, coated, part, scope, tap, hidden, not-fitted; did you mean "
            "\"bare\"?)\n"
            "sheet.csv: row 3, column \"zone\": the body has no zone 53 (`tinworm bodies "
            "small-body` lists its zones)\n");
  EXPECT_FALSE(workshop.has("new.yaml"));
}

TEST(Start, ASpreadsheetsMarksAreToldBesideOtherMistakes) {
  const Workshop workshop;
  workshop.put("sheet.csv",
               "zone,station,seen,rust,readings\n51,rear end,bare,pitting,#REF!\n"
               "51,middle,bare,pittng,.81\n");
  const Ended ended =
      workshop.run("start small-body --from-csv sheet.csv --panels panels -o new.yaml");
  EXPECT_EQ(ended.status, 1);
  EXPECT_EQ(ended.messages,
            "sheet.csv: row 2, column \"readings\": the spreadsheet couldn't work this cell out "
            "(found \"#REF!\"; type what was read)\n"
            "sheet.csv: row 3, column \"rust\": unknown word for rust (found \"pittng\"; allowed: "
            "none, surface, blister, pitting, scale, seam, poultice, edge, contact, acid, bleed, "
            "hole; did you mean \"pitting\"?)\n");
  workshop.put("sheet.csv", "'zone',station\n");
  EXPECT_EQ(workshop.run("start small-body --from-csv sheet.csv --panels panels").messages,
            "sheet.csv: row 1: quotes stand round this cell (found \"'zone'\"; write zone)\n");
  workshop.put("sheet.csv", "PK\x03\x04");
  EXPECT_EQ(workshop.run("start small-body --from-csv sheet.csv --panels panels").messages,
            "sheet.csv: this is a spreadsheet's own file, not CSV (save the sheet as \"CSV "
            "UTF-8\")\n");
  EXPECT_FALSE(workshop.has("new.yaml"));
}

TEST(Start, TakesNoNameThatASurveyWouldNot) {
  const Workshop workshop;
  for (const std::string name : {"'   '", "\"$(printf 'a\\nb')\"", "\"$(printf '\\377')\"",
                                 "\"$(printf '\\033')\"", "\"$(printf '%0100d' 1)\""}) {
    const Ended ended = workshop.run("start small-body --panels panels -o new.yaml --car " + name);
    EXPECT_EQ(ended.status, 2) << name << ended.messages;
    EXPECT_THAT(ended.messages, StartsWith("tinworm start: --car or --date: ")) << name;
    EXPECT_FALSE(workshop.has("new.yaml"));
  }
  const struct {
    std::string name, message;
  } told[] = {
      {R"sh("$(printf 'a\nb')")sh",
       "tinworm start: --car or --date: the car's name stands on one line\n"
       "Write it without a line break.\n"},
      {R"sh("$(printf 'a\342\200\256b')")sh",
       "tinworm start: --car or --date: an invisible mark that turns the direction of writing "
       "(U+202E) stands here\nDelete it, or type the line anew.\n"},
  };
  for (const auto& [name, message] : told)
    EXPECT_EQ(workshop.run("start small-body --panels panels --car " + name).messages, message);
  const Ended earlier = workshop.run("start --from good.yaml --panels panels --date 2020-01-01");
  EXPECT_EQ(earlier.status, 2);
  EXPECT_EQ(earlier.messages,
            "tinworm start: good.yaml is of 2025-04-12, after 2020-01-01\n"
            "A later visit has a later --date.\n");
}

TEST(Start, SaysWhatTheCommandLineLacks) {
  const struct {
    const char* arguments;
    const char* message;
  } cases[] = {
      {"start",
       "tinworm start: the body is missing\n"
       "tinworm bodies lists them: tinworm start two-door-saloon -o survey.yaml\n"},
      {"start smal-body --panels panels",
       "tinworm start: there is no such body plan: \"smal-body\"\nDid you mean small-body?\n"},
      {"start small-body --from good.yaml --from-csv a.csv",
       "tinworm start: --from and --from-csv don't go together\nLeave one out.\n"},
      {"start --from good.yaml --units inch",
       "tinworm start: --units doesn't go with --from, which keeps the survey's\nLeave one "
       "out.\n"},
      {"start two-door-saloon --from good.yaml --panels panels",
       "tinworm start: good.yaml is of the body small-body 2, not two-door-saloon\n"
       "Leave the body out, or start from a survey of the same body.\n"},
  };
  for (const auto& [arguments, message] : cases) {
    const Ended ended = Workshop().run(arguments);
    EXPECT_EQ(ended.status, 2) << arguments;
    EXPECT_EQ(ended.messages, message);
  }
}

}  // namespace
}  // namespace tinworm::verbs
