#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <fmt/format.h>

#include "verbs/program.hpp"

namespace tinworm::verbs {
namespace {

using nlohmann::json;
using testing::HasSubstr;
using testing::Not;

constexpr const char* on_the_day = "export SOURCE_DATE_EPOCH=1748736000";  // 2025-06-01

std::string survey(const std::string& car, const std::string& date, const std::string& readings) {
  return fmt::format(
      "survey: 1\nbody: small-body 2\ncar: {{{}}}\nvisit: {{date: {}}}\n"
      "gauges: {{metal: {{name: probe, uncertainty: 0.05 mm, coating: removed}}}}\n"
      "seen: {{bare: 11 51 52}}\nzones:\n  51:\n    reference: 1.00 1.00\n    found:\n"
      "      - rear end: none, metal {}\n",
      car, date, readings);
}

// The Wherry twice, in folders of their own; a Coble; rules that an archive may hold too.
void fill(const Workshop& workshop) {
  const std::string wherry = "name: Wherry, built: 1967, chassis-number: W12-004417";
  workshop.run("--version", "mkdir -p shelf/wherry");
  workshop.put("shelf/wherry/2024.yaml", survey(wherry, "2024-04-12", "1.00 1.00 1.00"));
  workshop.put("shelf/wherry/2025.yaml", survey(wherry, "2025-04-12", ".97 .97 .97"));
  workshop.put("shelf/coble.yaml",
               survey("name: Coble, owner: Private Person", "2023-03-01", "1.00 1.00 1.00"));
  workshop.put("shelf/salted.yaml", "rules: 1\nnear-radius: 400 mm\n");
}

TEST(DueVerb, ListsEachCarOnceByDate) {
  const Workshop workshop;
  fill(workshop);
  const Ended ended = workshop.run("due shelf --panels panels --format json", on_the_day);
  EXPECT_EQ(ended.status, 0);
  EXPECT_THAT(ended.messages, HasSubstr("shelf/salted.yaml: no survey, passed over\n"));
  const json list = json::parse(ended.results);
  EXPECT_EQ(list["kind"], "due");
  EXPECT_EQ(list["today"], "2025-06-01");
  ASSERT_EQ(list["cars"].size(), 2u);
  EXPECT_EQ(list["cars"][0]["car"]["name"], "Coble");
  EXPECT_EQ(list["cars"][0]["next_survey"]["date"], "2024-03");
  EXPECT_EQ(list["cars"][0]["next_survey"]["overdue"], true);
  EXPECT_EQ(list["cars"][1]["car"]["name"], "Wherry");
  EXPECT_EQ(list["cars"][1]["surveys"], 2);
  EXPECT_EQ(list["cars"][1]["file"], "2025.yaml");
  EXPECT_EQ(list["cars"][1]["next_survey"]["overdue"], false);
  EXPECT_THAT(std::string(list["caution"]), HasSubstr("inspection decide"));
}

TEST(DueVerb, TellsNothingPrivateInAnyKind) {
  const Workshop workshop;
  fill(workshop);
  for (const std::string kind : {"text", "json", "csv"}) {
    const Ended ended = workshop.run("due shelf --panels panels --format " + kind, on_the_day);
    EXPECT_EQ(ended.status, 0);
    EXPECT_THAT(ended.results, HasSubstr("Wherry")) << kind;
    EXPECT_THAT(ended.results, Not(HasSubstr("004417"))) << kind;
    EXPECT_THAT(ended.results, Not(HasSubstr("Private"))) << kind;
    EXPECT_THAT(ended.results, Not(HasSubstr("shelf"))) << kind;
  }
}

// Were the newest survey of a car left out without a word, its older one would pass for it.
TEST(DueVerb, NamesWhatItCouldNotRead) {
  const Workshop workshop;
  fill(workshop);
  workshop.put("shelf/wherry/2026.yaml", "survey: 1\nbody: small-body 2\n");
  const Ended ended = workshop.run("due shelf --panels panels", on_the_day);
  EXPECT_EQ(ended.status, 1);
  EXPECT_THAT(ended.results, HasSubstr("The list lacks one survey that couldn't be read, so a car "
                                       "may be due sooner than it says:"));
  EXPECT_THAT(ended.results, HasSubstr("2026.yaml"));
  EXPECT_THAT(ended.messages, HasSubstr("shelf/wherry/2026.yaml:"));
}

TEST(DueVerb, Refuses) {
  const Workshop workshop;
  workshop.run("--version", "mkdir empty");
  const Ended empty = workshop.run("due empty --panels panels");
  EXPECT_EQ(empty.status, 3);
  EXPECT_EQ(empty.messages, "tinworm: empty: a folder without surveys (surveys end in .yaml)\n");
  EXPECT_EQ(workshop.run("due").status, 2);
}

}  // namespace
}  // namespace tinworm::verbs
