// The same work on many files at once, the outcomes taken in the order of the files.
#pragma once

#include <algorithm>
#include <atomic>
#include <condition_variable>
#include <cstddef>
#include <exception>
#include <mutex>
#include <optional>
#include <thread>
#include <utility>
#include <vector>

namespace tinworm::verbs {

// Calls `work(i)` for 0 <= i < count on up to `jobs` threads (0: as many as there are processors)
// and `take(outcome)` for each on the calling thread, in order, as soon as it can. What either
// throws comes out of here once every thread has ended; work not yet begun is then left.
template <class Work, class Take>
void in_order(std::size_t count, unsigned jobs, const Work& work, const Take& take) {
  using Result = decltype(work(std::size_t{}));
  struct Slot {
    std::optional<Result> outcome;
    std::exception_ptr error;
  };
  std::vector<Slot> slots(count);
  std::mutex guard;  // of slots
  std::condition_variable ready;
  std::atomic<std::size_t> next = 0;

  const auto labour = [&] {
    for (std::size_t i = next++; i < count; i = next++) {
      Slot slot;
      try {
        slot.outcome.emplace(work(i));
      } catch (...) {
        slot.error = std::current_exception();
      }
      const std::lock_guard lock(guard);
      slots[i] = std::move(slot);
      ready.notify_one();
    }
  };
  struct Stop {  // before the threads are joined
    std::atomic<std::size_t>& next;
    std::size_t count;
    ~Stop() { next = count; }
  };

  if (jobs == 0) jobs = std::max(1u, std::thread::hardware_concurrency());
  std::vector<std::jthread> threads;
  const Stop stop{next, count};
  for (std::size_t t = 0; t < std::min<std::size_t>(jobs, count); ++t) threads.emplace_back(labour);
  for (Slot& slot : slots) {
    std::unique_lock lock(guard);
    ready.wait(lock, [&slot] { return slot.outcome || slot.error; });
    Slot taken = std::move(slot);
    lock.unlock();
    if (taken.error) std::rethrow_exception(taken.error);
    take(*taken.outcome);
  }
}

}  // namespace tinworm::verbs
