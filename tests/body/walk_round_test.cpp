// Every zone once, and the built-in bodies walked as a person would.
#include "body/walk_round.hpp"
#include "paths.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>

#include "bad_cases.hpp"
#include "body/reader.hpp"

namespace tinworm::body {
namespace {

namespace fs = std::filesystem;

std::vector<Plan> built_in() {
  std::vector<Plan> plans;
  for (const auto& entry : fs::directory_iterator(fs::path(source_folder()) / "panels"))
    if (entry.path().extension() == ".yaml") {
      const auto reading = read_plan(file_text(entry.path()));
      EXPECT_TRUE(reading.plan) << entry.path();
      if (reading.plan) plans.push_back(*reading.plan);
    }
  EXPECT_FALSE(plans.empty());
  return plans;
}

TEST(WalkRound, ComesToEveryZoneOnce) {
  for (const Plan& plan : built_in()) {
    std::vector<int> walked, all;
    for (const Leg& leg : walk_round(plan)) {
      EXPECT_FALSE(leg.zones.empty()) << leg.title;
      walked.insert(walked.end(), leg.zones.begin(), leg.zones.end());
    }
    for (const Zone& zone : plan.zones) all.push_back(zone.number);
    std::sort(walked.begin(), walked.end());
    EXPECT_EQ(walked, all) << plan.name;
  }
}

TEST(WalkRound, SidesAreWalkedInOppositeDirections) {
  for (const Plan& plan : built_in()) {
    const auto legs = walk_round(plan);
    const auto left = std::find_if(legs.begin(), legs.end(), [](const Leg& leg) {
      return leg.title == "Outside, left side: front to rear";
    });
    const auto right = std::find_if(legs.begin(), legs.end(), [](const Leg& leg) {
      return leg.title == "Outside, right side: rear to front";
    });
    ASSERT_NE(left, legs.end());
    ASSERT_NE(right, legs.end());
    EXPECT_LT(left, right);
    std::vector<double> rearward, forward;
    for (const int number : left->zones) rearward.push_back(plan.zone(number)->extent.x.middle());
    for (const int number : right->zones) forward.push_back(-plan.zone(number)->extent.x.middle());
    EXPECT_TRUE(std::is_sorted(rearward.begin(), rearward.end()));
    EXPECT_TRUE(std::is_sorted(forward.begin(), forward.end()));
    EXPECT_EQ(left->zones.size(), right->zones.size());
  }
}

TEST(WalkRound, WhatTheSkinHidesComesLast) {
  Plan plan;
  plan.size = {3950, 1560, 1390, 2400};
  plan.x = {-700, 3250};
  const auto add = [&](int number, Layer layer, geometry::Box3 extent) {
    Zone zone;
    zone.number = number;
    zone.extent = extent;
    zone.drawn.push_back({layer, View::left, "", {}, {}});
    plan.zones.push_back(zone);
  };
  add(11, Layer::skin, {{-690, -600}, {}, {300, 500}});
  add(14, Layer::structure, {{-100, 100}, {}, {150, 300}});
  add(16, Layer::structure, {{500, 520}, {}, {420, 900}});
  add(19, Layer::skin, {{900, 2200}, {}, {1200, 1390}});
  add(30, Layer::skin, {{3150, 3250}, {}, {300, 800}});
  add(51, Layer::skin, {{600, 2000}, {}, {200, 300}});
  add(52, Layer::skin, {{600, 2000}, {}, {200, 300}});
  std::string order;
  for (const Leg& leg : walk_round(plan)) {
    order += leg.title + ":";
    for (const int number : leg.zones) order += " " + std::to_string(number);
    order += "\n";
  }
  EXPECT_EQ(order,
            "Outside, front: 11\n"
            "Outside, left side: front to rear: 51\n"
            "Outside, rear: 30\n"
            "Outside, right side: rear to front: 52\n"
            "Outside, top: front to rear: 19\n"
            "Inside and under the lids: front to rear: 16\n"
            "Underneath, on the lift: front to rear: 14\n");
}

}  // namespace
}  // namespace tinworm::body
