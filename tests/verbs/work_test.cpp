// `tinworm work` as a user runs it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "verbs/program.hpp"

namespace tinworm::verbs {
namespace {

using testing::EndsWith;
using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

const std::string work = "work good.yaml --panels panels";

// The one cut of good.yaml: 60 x 40 at x 1450, z 200, 50 from the part's rear end and its lower
// edge, so to both: with 35 mm 1385 to 1500 and 150 to 255, weld .44 m, .5 + .44/.25 = 2.26 h;
// with 25 mm .4 m, 1.4 h; with 50 mm 130 x 150, the upper side 30 from its edge and so at it: .56
// m, (.6 + .56/.15) x 1.15 = 4.983 h.
TEST(WorkVerb, SaysWhatToDoWithRangesAndCautions) {
  const Ended ended = Workshop().run(work);
  EXPECT_EQ(ended.status, 0);
  EXPECT_EQ(ended.messages, "");
  EXPECT_THAT(ended.results, StartsWith("Plan of work: about "));
  EXPECT_THAT(
      ended.results,
      HasSubstr("  2. 51 outer sill, left [danger: on or near a mounting]\n"
                "     cut out to sound metal, let in new sheet, seam-welded all round: rear "
                "end\n"
                "     cut about 115 mm x 105 mm (rear end), to the rear and lower edges of "
                "the part\n"
                "     1.5–2.5–5 h, "));
  EXPECT_THAT(ended.results, HasSubstr("They are no quote and no promise"));
  EXPECT_THAT(ended.results, HasSubstr("Contingency, apart: "));
  EXPECT_THAT(ended.results, HasSubstr("watch for fire"));
  EXPECT_THAT(ended.results, HasSubstr("all of them assumptions"));
  EXPECT_THAT(ended.results, HasSubstr("What wasn't seen is not known.\nRecord: [tinworm "));
  EXPECT_THAT(ended.results, Not(HasSubstr("Private Person")));
}

TEST(WorkVerb, TakesInches) {
  const Ended ended = Workshop().run(work + " --units inch");
  EXPECT_THAT(ended.results, HasSubstr("cut about 4.5 in x 4.1 in"));
  EXPECT_THAT(ended.results, HasSubstr("sheet 39 thou"));
  EXPECT_THAT(ended.results, HasSubstr(" ft²"));
}

TEST(WorkVerb, GivesJson) {
  const Workshop workshop;
  const std::string one = workshop.run(work + " --format json").results;
  const auto json = nlohmann::json::parse(one);
  EXPECT_EQ(json["kind"], "work");
  EXPECT_EQ(json["rates"], "default");
  EXPECT_EQ(json["currency"], "EUR");
  ASSERT_EQ(json["tasks"].size(), 3u);
  const auto& cut = json["tasks"][1];
  EXPECT_EQ(cut["zone"], 51);
  EXPECT_EQ(cut["after"], nlohmann::json({1}));
  EXPECT_DOUBLE_EQ(cut["hours"]["likely"], 2.26);
  EXPECT_DOUBLE_EQ(cut["weld_m"]["likely"], .44);
  EXPECT_DOUBLE_EQ(cut["sheet"]["thickness_mm"], 1.0);
  for (const char* key : {"hours", "cost"})
    EXPECT_LT(json["totals"][key]["mean"], json["totals"][key]["in_80_of_100"]);
  for (const auto& rate : json["assumptions"]) EXPECT_TRUE(rate["assumption"]) << rate;
  EXPECT_EQ(workshop.run(work + " -o - --as json").results, one);
  const std::string two =
      workshop.run("work good.yaml ./good.yaml --panels panels --format json").results;
  EXPECT_EQ(std::count(two.begin(), two.end(), '\n'), 2);
}

TEST(WorkVerb, GivesCsvAndWritesFiles) {
  const Workshop workshop;
  const std::string csv = workshop.run(work + " --format csv").results;
  EXPECT_THAT(csv, StartsWith("file,date,row,task,zone,name,"));
  EXPECT_THAT(csv, HasSubstr("\r\ngood.yaml,2025-04-12,task,2,51,outer sill,left,cut,danger,"));
  EXPECT_THAT(csv, HasSubstr(",not exceeded in 80 of 100,"));
  const auto fields = [](const std::string& line) {
    bool quoted = false;
    long count = 1;
    for (const char c : line) {
      if (c == '"') quoted = !quoted;
      if (c == ',' && !quoted) ++count;
    }
    return count;
  };
  std::size_t start = 0;
  for (std::size_t end; (end = csv.find("\r\n", start)) != csv.npos; start = end + 2)
    EXPECT_EQ(fields(csv.substr(start, end - start)), 30) << csv.substr(start, end - start);
  EXPECT_EQ(workshop.run(work + " -o plan.csv").messages, "wrote plan.csv\n");
  EXPECT_EQ(workshop.text("plan.csv"), csv);
}

TEST(WorkVerb, GivesALineForEachOfSeveral) {
  const Workshop workshop;
  const Ended ended = workshop.run("work good.yaml bad.yaml --panels panels --jobs 1");
  EXPECT_EQ(ended.status, 1);
  EXPECT_THAT(ended.results, StartsWith("Rates: defaults, "));
  EXPECT_THAT(ended.results, HasSubstr("\ngood.yaml  2025-04-12      3  "));
  EXPECT_THAT(ended.messages, HasSubstr("1 of 2 surveys have mistakes"));
}

TEST(WorkVerb, NamesEveryRateThatAFileChanges) {
  const Workshop workshop;
  workshop.put("mine.yaml", "rates: 1\nname: Island\nhour: 80\nflat-cut: .5 .6 .7\n");
  const std::string with = work + " --rates mine.yaml";
  EXPECT_THAT(workshop.run(with).results,
              HasSubstr("Rates (mine.yaml, Island): hour 80 EUR per hour (default 65); flat-cut "
                        "0.5–0.6–0.7 h (default\n  0.4–0.5–0.6). All others are assumptions.\n"));
  const auto json = nlohmann::json::parse(workshop.run(with + " --format json").results);
  EXPECT_EQ(json["rates"], "mine.yaml");
  EXPECT_EQ(json["rates_changed"].size(), 2u);
  EXPECT_DOUBLE_EQ(json["tasks"][1]["hours"]["likely"], 2.36);
  EXPECT_THAT(workshop.run(with + " --format csv").results, HasSubstr("Rates (mine.yaml, Island)"));
  workshop.put("same.yaml", "rates: 1\nhour: 65 EUR\n");
  EXPECT_EQ(workshop.run(work + " --rates same.yaml").results, workshop.run(work).results);
}

TEST(WorkVerb, StopsAtMistakesInTheRates) {
  const Workshop workshop;
  workshop.put("mine.yaml", "rates: 1\nhuor: 80\n");
  const Ended ended = workshop.run(work + " --rates mine.yaml");
  EXPECT_EQ(ended.status, 1);
  EXPECT_EQ(ended.results, "");
  EXPECT_EQ(ended.messages,
            "mine.yaml:2:1: there is no such rate (found \"huor\"; did you mean \"hour\"?)\n"
            "huor: 80\n"
            "^\n");
  const Ended none = workshop.run(work + " --rates nowhere.yaml");
  EXPECT_EQ(none.status, 3);
  EXPECT_EQ(none.messages, "tinworm: nowhere.yaml: no such file\n");
}

TEST(WorkVerb, NeverWritesOverTheRates) {
  const Workshop workshop;
  workshop.put("rates.txt", "rates: 1\n");
  const Ended ended = workshop.run(work + " --rates rates.txt -o rates.txt");
  EXPECT_EQ(ended.status, 2);
  EXPECT_EQ(ended.messages,
            "tinworm work: rates.txt is itself to be read; it is never written\n"
            "Give the output another name.\n");
  EXPECT_EQ(workshop.text("rates.txt"), "rates: 1\n");
}

}  // namespace
}  // namespace tinworm::verbs
