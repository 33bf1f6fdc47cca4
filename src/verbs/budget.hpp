// Memory that threads share, so that many that need much take turns.
#pragma once

#include <algorithm>
#include <condition_variable>
#include <cstdint>
#include <mutex>

namespace tinworm::verbs {

class Budget {
 public:
  explicit Budget(std::int64_t bytes) : whole_(bytes), left_(bytes) {}

  class Share {  // given back with the object; the budget outlives it
   public:
    // Waits until so much is left. Who wants more than the whole gets all of it, alone.
    Share(Budget& budget, std::int64_t bytes)
        : budget_(budget), bytes_(std::clamp<std::int64_t>(bytes, 0, budget.whole_)) {
      std::unique_lock lock(budget_.guard_);
      budget_.given_back_.wait(lock, [this] { return budget_.left_ >= bytes_; });
      budget_.left_ -= bytes_;
    }
    Share(const Share&) = delete;
    Share& operator=(const Share&) = delete;
    ~Share() {
      const std::lock_guard lock(budget_.guard_);
      budget_.left_ += bytes_;
      budget_.given_back_.notify_all();
    }

   private:
    Budget& budget_;
    std::int64_t bytes_;
  };

 private:
  const std::int64_t whole_;
  std::mutex guard_;  // of left_
  std::condition_variable given_back_;
  std::int64_t left_;
};

}  // namespace tinworm::verbs
