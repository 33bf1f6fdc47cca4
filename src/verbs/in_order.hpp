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

// How far the work may be ahead of the taking: outcomes wait in memory.
constexpr std::size_t ahead_of_each_thread = 16;

// Lets work wait until the taking has come near it.
class Lead {
 public:
  explicit Lead(std::size_t most) : most_(most) {}
  bool wait_for(std::size_t i) {  // false once it has stopped
    std::unique_lock lock(guard_);
    moved_.wait(lock, [&] { return stopped_ || i < taken_ + most_; });
    return !stopped_;
  }
  void take() {
    const std::lock_guard lock(guard_);
    ++taken_;
    moved_.notify_all();
  }
  void stop() {
    const std::lock_guard lock(guard_);
    stopped_ = true;
    moved_.notify_all();
  }

 private:
  std::mutex guard_;  // of the last two
  std::condition_variable moved_;
  const std::size_t most_;
  std::size_t taken_ = 0;
  bool stopped_ = false;
};

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
  if (jobs == 0) jobs = std::max(1u, std::thread::hardware_concurrency());
  std::vector<Slot> slots(count);
  std::mutex guard;  // of slots
  std::condition_variable ready;
  std::atomic<std::size_t> next = 0;
  Lead lead(jobs * ahead_of_each_thread);

  const auto labour = [&] {
    for (std::size_t i = next++; i < count && lead.wait_for(i); i = next++) {
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
    Lead& lead;
    ~Stop() { lead.stop(); }
  };

  std::vector<std::jthread> threads;
  const Stop stop{lead};
  for (std::size_t t = 0; t < std::min<std::size_t>(jobs, count); ++t) threads.emplace_back(labour);
  for (Slot& slot : slots) {
    std::unique_lock lock(guard);
    ready.wait(lock, [&slot] { return slot.outcome || slot.error; });
    Slot taken = std::move(slot);
    lock.unlock();
    lead.take();
    if (taken.error) std::rethrow_exception(taken.error);
    take(*taken.outcome);
  }
}

}  // namespace tinworm::verbs
