#include "verbs/budget.hpp"

#include <atomic>
#include <thread>
#include <vector>

#include <gtest/gtest.h>

namespace tinworm::verbs {
namespace {

TEST(Budget, ThreadsTogetherNeverHoldMoreThanTheWhole) {
  Budget budget(100);
  std::atomic<int> held = 0, most = 0;
  std::vector<std::jthread> threads;
  for (int t = 0; t < 8; ++t) {
    threads.emplace_back([&, bytes = 20 + 10 * t] {
      for (int i = 0; i < 50; ++i) {
        const Budget::Share share(budget, bytes);
        const int now = held += bytes;
        for (int seen = most; seen < now && !most.compare_exchange_weak(seen, now);) continue;
        std::this_thread::yield();
        held -= bytes;
      }
    });
  }
  threads.clear();
  EXPECT_LE(most, 100);
  EXPECT_GE(most, 90) << "the largest alone";
}

TEST(Budget, MoreThanTheWholeIsAllOfIt) {
  Budget budget(100);
  { const Budget::Share all(budget, 1'000); }
  const Budget::Share half(budget, 50), other(budget, 50);  // as all of it was given back
}

}  // namespace
}  // namespace tinworm::verbs
