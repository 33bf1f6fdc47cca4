// --rules: every output of every verb says which rules were changed, and from what.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "verbs/program.hpp"

namespace tinworm::verbs {
namespace {

using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

const std::string strict = "rules: 1\nname: Stricter\nnear-radius: 250 mm\nrepair-limit: 90 %\n";
const std::string changes =
    "Rules changed (strict.yaml, Stricter): repair-limit 90 % of the sheet (default 85 %); "
    "near-radius 250 mm (default 300 mm).";

struct Strict : Workshop {
  Strict() {
    put("strict.yaml", strict);
    put("default.yaml", "rules: 1\nname: Nothing new\nnear-radius: 30 cm\nrepair-limit: 85 %\n");
  }
  Ended by(const std::string& verb, const std::string& rules = "strict.yaml") const {
    return run(verb + " --panels panels --rules " + rules);
  }
};

// Lines run on, for text that was wrapped.
std::string unwrapped(std::string text) {
  for (std::size_t at = 0; (at = text.find("\n  ", at)) != text.npos;) text.replace(at, 3, " ");
  return text;
}

TEST(RulesOption, IsToldByEveryTextOutput) {
  const Strict here;
  for (const char* verb :
       {"weigh good.yaml", "weigh good.yaml --explain 51", "weigh good.yaml good.yaml"}) {
    const Ended ended = here.by(verb);
    EXPECT_EQ(ended.status, 0) << ended.messages;
    EXPECT_THAT(unwrapped(ended.results), HasSubstr(changes)) << verb;
  }
  EXPECT_THAT(here.by("weigh good.yaml").results, HasSubstr(", changed rules, "));
  EXPECT_THAT(here.by("check good.yaml").results,
              HasSubstr("good.yaml: rule changed by strict.yaml: near-radius 250 mm (default 300 "
                        "mm)\n"));
}

TEST(RulesOption, IsToldByEveryMachineOutput) {
  const Strict here;
  for (const char* verb : {"weigh good.yaml --format json", "check good.yaml --format json"}) {
    const auto json = nlohmann::json::parse(here.by(verb).results);
    EXPECT_EQ(json["rules"], "strict.yaml") << verb;
    ASSERT_EQ(json["rules_changed"].size(), 2u) << verb;
    EXPECT_EQ(json["rules_changed"][1], "near-radius 250 mm (default 300 mm)") << verb;
  }
  const std::string csv = here.by("weigh good.yaml --format csv").results;
  std::size_t rows = 0, told = 0;
  for (std::size_t at = 0; (at = csv.find("\r\n", at)) != csv.npos; at += 2) ++rows;
  for (std::size_t at = 0; (at = csv.find(changes, at)) != csv.npos; ++at) ++told;
  EXPECT_GE(rows, 4u);
  EXPECT_EQ(told, rows - 1);  // each but the heading
}

TEST(RulesOption, IsToldByEveryPicture) {
  const Strict here;
  for (const char* name : {"map.pdf", "map.svg", "map.png"}) {
    const Ended ended = here.by(std::string("map good.yaml -o ") + name);
    EXPECT_EQ(ended.status, 0) << ended.messages;
    EXPECT_TRUE(here.has(name));
  }
  EXPECT_THAT(here.text("map.svg"), HasSubstr("near-radius 250 mm (default 300 mm)"));
  EXPECT_THAT(here.text("map.png"), HasSubstr("near-radius 250 mm (default 300 mm)"));  // metadata
}

TEST(RulesOption, ThatChangesNothingIsTheDefault) {
  const Strict here;
  const std::string plain = "weigh good.yaml --panels panels";
  for (const char* format : {" --format json", " --format csv", ""}) {
    EXPECT_EQ(here.by("weigh good.yaml" + std::string(format), "default.yaml").results,
              here.run(plain + format).results);
  }
}

TEST(RulesOption, WithMistakesStopsBeforeAnySurvey) {
  const Strict here;
  here.put("bad-rules.yaml", "rules: 1\nnear-raduis: 300 mm\nexponent: 60\n");
  for (const char* verb : {"weigh good.yaml", "check good.yaml", "map good.yaml -o map.pdf"}) {
    const Ended ended = here.by(verb, "bad-rules.yaml");
    EXPECT_EQ(ended.status, 1);
    EXPECT_EQ(ended.results, "");
    EXPECT_EQ(ended.messages,
              "bad-rules.yaml:2:1: there is no such rule (found \"near-raduis\"; did you mean "
              "\"near-radius\"?)\n"
              "near-raduis: 300 mm\n"
              "^\n"
              "bad-rules.yaml:3:11: \"exponent\", how near the weakest link the structure is "
              "judged, is out of bounds (found \"60\"; allowed: 1 to 50; the default, 6, is from "
              "memory: this method's own weighing)\n"
              "exponent: 60\n"
              "          ^\n");
  }
  EXPECT_FALSE(here.has("map.pdf"));
}

TEST(RulesOption, ThatCannotBeReadIsFileTrouble) {
  const Ended ended = Strict().by("weigh good.yaml", "absent.yaml");
  EXPECT_EQ(ended.status, 3);
  EXPECT_THAT(ended.messages, StartsWith("tinworm: absent.yaml"));
}

TEST(RulesOption, IsNeverWrittenOver) {
  const Strict here;
  const Ended ended = here.by("weigh good.yaml --as json -o strict.yaml");
  EXPECT_NE(ended.status, 0);
  EXPECT_EQ(here.text("strict.yaml"), strict);
}

}  // namespace
}  // namespace tinworm::verbs
