#include "verbs/in_order.hpp"

#include <stdexcept>

#include <gtest/gtest.h>

namespace tinworm::verbs {
namespace {

TEST(InOrder, TakesInTheOrderOfTheWork) {
  std::vector<std::size_t> taken;
  in_order(
      500, 8, [](std::size_t i) { return i; }, [&](std::size_t i) { taken.push_back(i); });
  ASSERT_EQ(taken.size(), 500u);
  for (std::size_t i = 0; i < taken.size(); ++i) EXPECT_EQ(taken[i], i);
}

// Else outcomes heap up in memory where the taking, onto a slow disk, is slower than the work.
TEST(InOrder, RunsNoFurtherAheadThanSaid) {
  std::atomic<std::size_t> begun = 0;
  std::size_t taken = 0, most = 0;
  in_order(
      2'000, 4,
      [&](std::size_t i) {
        ++begun;
        return i;
      },
      [&](std::size_t) {
        if (taken % 100 == 0) std::this_thread::sleep_for(std::chrono::milliseconds(2));
        most = std::max(most, begun - taken);
        ++taken;
      });
  EXPECT_EQ(begun, 2'000u);
  EXPECT_LE(most, 4 * ahead_of_each_thread + 4);
}

TEST(InOrder, WhatEitherThrowsComesOut) {
  const auto same = [](std::size_t i) { return i; };
  EXPECT_THROW(in_order(
                   1'000, 4,
                   [](std::size_t i) {
                     if (i == 7) throw std::runtime_error("work");
                     return i;
                   },
                   [](std::size_t) {}),
               std::runtime_error);
  EXPECT_THROW(in_order(1'000, 4, same,
                        [](std::size_t i) {
                          if (i == 3) throw std::runtime_error("take");
                        }),
               std::runtime_error);
}

}  // namespace
}  // namespace tinworm::verbs
