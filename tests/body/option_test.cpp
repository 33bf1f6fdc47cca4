// Options of a body, and what a car has of them.
#include "body/option.hpp"

#include <gtest/gtest.h>

namespace tinworm::body {
namespace {

PlanPtr with_two_columns() {
  auto plan = std::make_shared<Plan>();
  plan->options = {{"steering", {"left", "right"}}};
  for (const char* side : {"left", "right"}) {
    Mount mount;
    mount.what = std::string("column, ") + side;
    mount.when = Condition{"steering", side, {}};
    plan->mounts.push_back(mount);
  }
  plan->mounts.push_back({});
  Line line;
  line.when = Condition{"steering", "left", {}};
  plan->lines[View::top] = {line, {}};
  return plan;
}

TEST(Options, WhatBelongsToAnotherChoiceIsLeftOut) {
  const PlanPtr plan = with_options(with_two_columns(), {{"steering", "right"}});
  ASSERT_EQ(plan->mounts.size(), 2u);
  EXPECT_EQ(plan->mounts[0].what, "column, right");
  EXPECT_EQ(plan->lines.at(View::top).size(), 1u);
}

TEST(Options, OfAnOptionThatIsNotToldAllChoicesCount) {
  const PlanPtr whole = with_two_columns();
  EXPECT_EQ(with_options(whole, {}), whole);
  EXPECT_EQ(with_options(whole, {{"battery", "left"}})->mounts.size(), 3u);
}

}  // namespace
}  // namespace tinworm::body
