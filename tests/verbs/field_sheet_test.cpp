// `tinworm field-sheet` as a user runs it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "verbs/program.hpp"

namespace tinworm::verbs {
namespace {

using testing::HasSubstr;
using testing::StartsWith;

class FieldSheetVerb : public testing::Test {
 protected:
  Ended run(const std::string& arguments) const {
    return workshop.run("field-sheet " + arguments + " --panels panels");
  }
  // Its text as it is read back, spaces and line ends as one.
  std::string read(const std::string& file) const {
    workshop.run("--version", "(pdftotext -layout " + file + " - | tr -s ' \\n' ' ') > read.txt");
    return workshop.text("read.txt");
  }
  Workshop workshop;
};

TEST_F(FieldSheetVerb, IsOfABody) {
  const Ended ended = run("small-body -o sheet.pdf");
  EXPECT_EQ(ended.status, 0);
  EXPECT_THAT(ended.messages, StartsWith("wrote sheet.pdf, "));
  EXPECT_THAT(read("sheet.pdf"), HasSubstr("\"tinworm start small-body -o new.yaml\""));
}

TEST_F(FieldSheetVerb, IsOfASurveyAndOfAPaperThatCarriesIt) {
  EXPECT_EQ(run("good.yaml -o sheet.pdf").status, 0);
  EXPECT_THAT(read("sheet.pdf"), HasSubstr("\"tinworm start --from good.yaml -o new.yaml\""));
  EXPECT_EQ(workshop.run("report good.yaml -o report.pdf --panels panels").status, 0);
  EXPECT_EQ(run("report.pdf -o again.pdf").status, 0);
  EXPECT_THAT(read("again.pdf"), HasSubstr("In grey: what the survey of"));
}

TEST_F(FieldSheetVerb, GivesTheSameBytes) {
  EXPECT_EQ(run("small-body -o a.pdf").status, 0);
  EXPECT_EQ(run("small-body -o b.pdf").status, 0);
  EXPECT_EQ(workshop.text("a.pdf"), workshop.text("b.pdf"));
}

TEST_F(FieldSheetVerb, SaysWhatIsWrong) {
  struct {
    const char* arguments;
    int status;
    const char* messages;
  } const cases[] = {
      {"", 2,
       "tinworm field-sheet: a body or a survey is missing\n"
       "tinworm field-sheet two-door-saloon -o sheet.pdf\n"},
      {"small-body", 2,
       "tinworm field-sheet: where to write is missing\n"
       "tinworm field-sheet small-body -o sheet.pdf\n"},
      {"small-body good.yaml -o sheet.pdf", 2,
       "tinworm field-sheet: takes one body or survey, not 2\n"
       "tinworm field-sheet two-door-saloon -o sheet.pdf\n"},
      {"small-bdy -o sheet.pdf", 2,
       "tinworm field-sheet: there is no such body plan: \"small-bdy\"\n"
       "Did you mean small-body?\n"},
      {"small-body -o sheet.pdf --paper a3", 2,
       "tinworm field-sheet: --paper takes a4 or letter, not \"a3\"\n"},
      {"nowhere.yaml -o sheet.pdf", 3, "tinworm: nowhere.yaml: no such file\n"},
  };
  for (const auto& each : cases) {
    const Ended ended = run(each.arguments);
    EXPECT_EQ(ended.status, each.status) << each.arguments;
    EXPECT_EQ(ended.messages, each.messages);
    EXPECT_FALSE(workshop.has("sheet.pdf"));
  }
}

}  // namespace
}  // namespace tinworm::verbs
