#include "work/order.hpp"

#include <algorithm>
#include <tuple>
#include <utility>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "work/job.hpp"

namespace tinworm::work {
namespace {

using weighing::ZoneFacts;

class Orderer {
 public:
  Orderer(std::vector<Task>& tasks, const std::vector<ZoneFacts>& facts) : tasks_(tasks) {
    for (const Task& task : tasks_) {
      const auto found = std::ranges::find_if(facts, [&](const ZoneFacts& zone) {
        return !task.name.empty() && zone.number == task.zone && zone.own == task.own;
      });
      facts_.push_back(found == facts.end() ? nullptr : &*found);
      stages_.push_back(found == facts.end() ? 0 : stage(*found, facts));
    }
    waits_for_.resize(tasks_.size());
  }

  std::vector<std::string> order() {
    first_side_ = sounder_side();
    for (std::size_t late = 0; late < tasks_.size(); ++late)
      for (std::size_t early = 0; early < tasks_.size(); ++early)
        if (early != late && waits(late, early)) waits_for_[late].push_back(early);
    inherit();
    number();
    return std::move(notes_);
  }

 private:
  bool is_sill_cut(std::size_t i) const {
    const Task& task = tasks_[i];
    return (task.kind == Kind::cut || task.kind == Kind::access) && is_sill(task.job);
  }

  body::Side sounder_side() const {
    double left = 0, right = 0;
    for (std::size_t i = 0; i < tasks_.size(); ++i) {
      if (!is_sill_cut(i)) continue;
      if (tasks_[i].side == body::Side::left) left += tasks_[i].hours.likely;
      if (tasks_[i].side == body::Side::right) right += tasks_[i].hours.likely;
    }
    return right < left ? body::Side::right : body::Side::left;
  }

  bool hides(std::size_t outer, std::size_t inner) const {
    if (!facts_[outer] || !facts_[outer]->plan || tasks_[inner].zone == 0) return false;
    const std::vector<int>& behind = facts_[outer]->plan->hides;
    return std::ranges::find(behind, tasks_[inner].zone) != behind.end();
  }

  bool waits(std::size_t late, std::size_t early) const {
    const Task &a = tasks_[late], &b = tasks_[early];
    if (a.kind == Kind::protect) return b.kind == Kind::cut || b.kind == Kind::access;
    if (b.kind == Kind::brace) return is_sill_cut(late);
    if (b.kind == Kind::drains) return a.kind == Kind::cut && a.zone == b.zone && a.own == b.own;
    const bool sills = is_sill_cut(late) && is_sill_cut(early);
    if (sills && a.side != b.side) return b.side == first_side_;
    if (b.kind == Kind::access)
      return a.kind == Kind::cut && a.zone == b.reaches && a.judged == b.judged;
    return a.kind == Kind::cut && b.kind == Kind::cut && stands_on(late, early, sills);
  }

  bool stands_on(std::size_t late, std::size_t early, bool sills) const {
    const bool joined = facts_[late] && facts_[early] && are_joined(*facts_[late], *facts_[early]);
    const bool together = joined || hides(late, early) || hides(early, late) || sills;
    if (!together) return false;
    if (stages_[late] != stages_[early]) return stages_[early] < stages_[late];
    return hides(late, early) && !hides(early, late);
  }

  // What others wait for takes over how urgent and how sure they are; not from protection, which
  // waits for every cut.
  void inherit() {
    for (const Task& task : tasks_) {
      urgency_.push_back(task.urgency);
      judged_.push_back(task.judged);
    }
    for (std::size_t round = 0; round < tasks_.size(); ++round)
      for (std::size_t late = 0; late < tasks_.size(); ++late) {
        if (tasks_[late].kind == Kind::protect) continue;
        for (const std::size_t early : waits_for_[late]) {
          urgency_[early] = std::min(urgency_[early], urgency_[late]);
          judged_[early] = judged_[early] && judged_[late];
        }
      }
  }

  // Heat burns a fresh coat: whatever is welded comes before whatever is coated.
  static int coats(Kind kind) { return kind == Kind::protect ? 2 : kind == Kind::treat ? 1 : 0; }

  auto turn(std::size_t i) const {
    const Task& task = tasks_[i];
    return std::tuple(coats(task.kind), bool{judged_[i]}, urgency_[i], task.kind != Kind::drains,
                      stages_[i], task.kind, task.side != first_side_, task.zone, task.own);
  }

  void number() {
    std::vector<Task> ordered;
    std::vector<int> numbers(tasks_.size(), 0);
    while (ordered.size() < tasks_.size()) {
      const std::size_t next = next_of(numbers);
      note_ring(next, numbers);
      numbers[next] = static_cast<int>(ordered.size()) + 1;
      Task task = tasks_[next];
      task.number = numbers[next];
      for (const std::size_t early : waits_for_[next])
        if (numbers[early] != 0) task.after.push_back(numbers[early]);
      std::ranges::sort(task.after);
      ordered.push_back(std::move(task));
    }
    tasks_ = std::move(ordered);
  }

  void note_ring(std::size_t next, const std::vector<int>& numbers) {
    std::vector<std::string> waited;
    for (const std::size_t early : waits_for_[next])
      if (numbers[early] == 0)
        waited.push_back(fmt::format("{} {}", tasks_[early].zone, tasks_[early].name));
    if (waited.empty()) return;
    notes_.push_back(fmt::format(
        "by the body plan {} {} waits for {}, and that for it in turn: this order begins with the "
        "former; look which lies behind",
        tasks_[next].zone, tasks_[next].name, fmt::join(waited, ", ")));
  }

  // The first in turn of those that wait for nothing; of all where each waits.
  std::size_t next_of(const std::vector<int>& numbers) const {
    std::size_t best = tasks_.size();
    bool best_free = false;
    for (std::size_t i = 0; i < tasks_.size(); ++i) {
      if (numbers[i] != 0) continue;
      const bool free = std::ranges::all_of(waits_for_[i],
                                            [&](std::size_t early) { return numbers[early] != 0; });
      if (best == tasks_.size() || (free && !best_free) ||
          (free == best_free && turn(i) < turn(best))) {
        best = i;
        best_free = free;
      }
    }
    return best;
  }

  std::vector<Task>& tasks_;
  std::vector<const ZoneFacts*> facts_;              // of each task's zone; null: the whole car
  std::vector<std::vector<std::size_t>> waits_for_;  // of each task
  std::vector<int> stages_;                          // of each task's zone
  std::vector<Urgency> urgency_;                     // with that of what waits for it
  std::vector<bool> judged_;                         // and of nothing sure that waits for it
  std::vector<std::string> notes_;
  body::Side first_side_ = body::Side::left;
};

}  // namespace

std::vector<std::string> put_in_order(std::vector<Task>& tasks,
                                      const std::vector<ZoneFacts>& facts) {
  return Orderer(tasks, facts).order();
}

}  // namespace tinworm::work
