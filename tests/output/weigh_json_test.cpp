#include "output/weigh_json.hpp"

#include <nlohmann/json.hpp>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "output/fixture.hpp"

namespace tinworm::output {
namespace {

using nlohmann::ordered_json;
using testing::HasSubstr;
using testing::Not;

std::vector<std::string> keys(const ordered_json& json) {
  std::vector<std::string> names;
  for (const auto& [key, value] : json.items()) names.push_back(key);
  return names;
}

void expect_keys(const ordered_json& json, const std::vector<std::string>& promised) {
  for (const std::string& key : promised) EXPECT_TRUE(json.contains(key)) << key;
}

TEST(WeighJson, HasEveryKeyThatWasPromised) {
  const ordered_json json = weigh_json(weighed_car());
  EXPECT_THAT(keys(json), testing::ElementsAre("tinworm", "kind", "file", "sha256", "body", "rules",
                                               "date", "car", "told", "verdict", "burden", "seen",
                                               "zones", "boxes", "open_up", "looks", "not_seen",
                                               "questions", "gaps", "opened", "also", "caution"));
  expect_keys(json["body"], {"name", "version"});
  expect_keys(json["car"], {"name", "built", "odometer_km", "odometer"});
  expect_keys(json["verdict"], {"word", "could_be", "open_up_first", "reasons"});
  expect_keys(json["verdict"]["reasons"][0], {"zone", "spot", "text", "rule", "source"});
  for (const char* of : {"structure", "skin", "shell"}) {
    expect_keys(json["burden"][of], {"value", "low", "high"});
  }
  for (const char* of : {"main", "local", "skin"}) {
    expect_keys(json["seen"][of], {"area_share", "measured_share"});
  }
  const ordered_json& zone = json["zones"][0];
  expect_keys(zone, {"zone",         "name",      "side",      "role",      "seen",  "inside",
                     "evidence",     "step",      "step_low",  "step_high", "near",  "metal_left",
                     "rusted_share", "iso4628_3", "astm_d610", "damage",    "share", "film",
                     "spots",        "repairs",   "told"});
  expect_keys(zone["metal_left"], {"value", "low", "high", "kind", "baseline_mm", "baseline_from"});
  expect_keys(zone["film"], {"median_um", "reading"});
  expect_keys(zone["spots"][0],
              {"spot", "rank", "rust", "near", "metal_left", "pit_left", "pit_left_low"});
  expect_keys(zone["repairs"][0], {"kind", "reliable", "spot"});
  expect_keys(json["boxes"][0], {"name", "twist_kept", "bending_kept", "withheld"});
  expect_keys(json["open_up"][0], {"zone", "why", "could_become", "opening", "minutes"});
  expect_keys(json["looks"][0], {"opening", "minutes", "zones", "could_become"});
  expect_keys(json["not_seen"][0], {"zone", "why"});
}

TEST(WeighJson, AnOwnPartThatNobodySawHasItsKey) {
  weighing::Result result = weighed_car();
  result.not_seen.push_back({0, "headlining", "own-a"});
  const ordered_json json = weigh_json(result);
  EXPECT_EQ(json["not_seen"][0]["zone"], 71);
  EXPECT_EQ(json["not_seen"][1]["zone"], "own-a");
}

TEST(WeighJson, AShareNeedsAShellValue) {
  weighing::Result result = weighed_car();
  EXPECT_TRUE(weigh_json(result)["zones"][0]["share"].is_null());
  result.shell.value = .4;
  EXPECT_NEAR(weigh_json(result)["zones"][0]["share"].get<double>(), 1.0 / 3, 1e-6);
}

TEST(WeighJson, OneLookForAllThatAnOpeningShows) {
  weighing::Result result = weighed_car();
  result.open_up.push_back({73, "", "main-not-seen", "not seen", weighing::Verdict::mend});
  for (weighing::OpenUp& open : result.open_up) {
    open.opening = "left carpet up";
    open.minutes = 20;
  }
  const ordered_json json = weigh_json(result);
  EXPECT_EQ(json["open_up"].size(), 2u);
  EXPECT_EQ(json["open_up"][1]["opening"], "left carpet up");
  ASSERT_EQ(json["looks"].size(), 1u);
  EXPECT_EQ(json["looks"][0]["zones"], ordered_json({71, 73}));
  EXPECT_EQ(json["looks"][0]["minutes"], 20);
  EXPECT_EQ(json["looks"][0]["could_become"], "keep-parked");
}

TEST(WeighJson, HasTheValues) {
  const ordered_json json = weigh_json(weighed_car());
  EXPECT_EQ(json["date"], "2025-04-12");
  EXPECT_EQ(json["verdict"]["word"], "mend");
  EXPECT_EQ(json["verdict"]["could_be"], "keep-parked");
  EXPECT_EQ(json["verdict"]["open_up_first"], true);
  EXPECT_EQ(json["zones"][0]["zone"], 51);
  EXPECT_EQ(json["zones"][0]["side"], "left");
  EXPECT_EQ(json["zones"][0]["seen"], "bare");
  EXPECT_EQ(json["zones"][0]["step_low"], "thin") << "at the low end of the metal left";
  EXPECT_EQ(json["zones"][0]["step_high"], "pitted");
  EXPECT_EQ(json["zones"][0]["metal_left"]["low"], 0.72);
  EXPECT_EQ(json["zones"][0]["metal_left"]["kind"], "interval");
  EXPECT_EQ(json["zones"][0]["metal_left"]["baseline_from"], "reference");
  EXPECT_EQ(json["zones"][0]["repairs"][0]["kind"], "let-in");
  EXPECT_EQ(json["zones"][0]["repairs"][0]["reliable"], true);
  EXPECT_EQ(json["also"][0]["when"], "next-survey");
}

TEST(WeighJson, GivesNullWithTheReasonBesideIt) {
  const ordered_json json = weigh_json(weighed_car());
  EXPECT_TRUE(json["burden"]["structure"]["value"].is_null());
  EXPECT_EQ(json["burden"]["structure"]["why"], "under 80 % of the main structure was seen");
  EXPECT_FALSE(json["burden"]["skin"].contains("why"));
  EXPECT_TRUE(json["zones"][1]["metal_left"].is_null());
  EXPECT_EQ(json["zones"][1]["why"], "not seen: carpet glued down");
  EXPECT_TRUE(json["boxes"][0]["withheld"].is_null());
  EXPECT_TRUE(json["boxes"][1]["twist_kept"].is_null());
  EXPECT_EQ(json["boxes"][1]["withheld"], "no wall was seen");
}

TEST(WeighJson, RoundsToAMillionth) {
  weighing::Result car = weighed_car();
  car.shell.value = 0.5;
  const std::string text = json_text(weigh_json(car), Lines::one);
  EXPECT_THAT(text, HasSubstr("\"skin\":{\"value\":0.3,\"low\":0.04,\"high\":0.31}"));
  EXPECT_THAT(text, HasSubstr("\"share\":0.333333,"));
  // There is no share of what has no value.
  car.shell.value.reset();
  EXPECT_THAT(json_text(weigh_json(car), Lines::one), HasSubstr("\"share\":null,"));
}

TEST(WeighJson, HasNothingPrivate) {
  const std::string text = json_text(weigh_json(weighed_car()), Lines::many);
  EXPECT_THAT(text, Not(HasSubstr("Private")));
  EXPECT_THAT(text, Not(HasSubstr("W12-004417")));
}

TEST(JsonText, IsOneLineWhereAskedAndSurvivesBadBytes) {
  EXPECT_EQ(json_text({{"file", "a\xff.yaml"}}, Lines::one), "{\"file\":\"a\uFFFD.yaml\"}\n");
  EXPECT_EQ(json_text({{"a", 1}}, Lines::many), "{\n  \"a\": 1\n}\n");
}

}  // namespace
}  // namespace tinworm::output
