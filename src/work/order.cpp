#include "work/order.hpp"

#include <algorithm>
#include <tuple>
#include <utility>

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
    }
    waits_for_.resize(tasks_.size());
  }

  void order() {
    first_side_ = sounder_side();
    for (std::size_t late = 0; late < tasks_.size(); ++late)
      for (std::size_t early = 0; early < tasks_.size(); ++early)
        if (early != late && waits(late, early)) waits_for_[late].push_back(early);
    inherit_urgency();
    number();
  }

 private:
  bool is_sill_cut(std::size_t i) const {
    return tasks_[i].kind == Kind::cut && is_sill(tasks_[i].job);
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

  int stage_of(std::size_t i) const { return facts_[i] ? stage(*facts_[i]) : 0; }

  bool hides(std::size_t outer, std::size_t inner) const {
    if (!facts_[outer] || !facts_[outer]->plan || tasks_[inner].zone == 0) return false;
    const std::vector<int>& behind = facts_[outer]->plan->hides;
    return std::ranges::find(behind, tasks_[inner].zone) != behind.end();
  }

  bool waits(std::size_t late, std::size_t early) const {
    const Task &a = tasks_[late], &b = tasks_[early];
    if (a.kind == Kind::protect) return b.kind == Kind::cut;
    if (b.kind == Kind::brace) return is_sill_cut(late);
    if (b.kind == Kind::drains) return a.kind == Kind::cut && a.zone == b.zone && a.own == b.own;
    if (a.kind != Kind::cut || b.kind != Kind::cut) return false;
    const bool sills = is_sill_cut(late) && is_sill_cut(early);
    if (sills && a.side != b.side) return b.side == first_side_;
    const bool together = hides(late, early) || hides(early, late) || sills;
    if (!together) return false;
    if (stage_of(late) != stage_of(early)) return stage_of(early) < stage_of(late);
    return hides(late, early) && !hides(early, late);
  }

  void inherit_urgency() {
    for (const Task& task : tasks_) urgency_.push_back(task.urgency);
    for (std::size_t round = 0; round < tasks_.size(); ++round)
      for (std::size_t late = 0; late < tasks_.size(); ++late)
        for (const std::size_t early : waits_for_[late])
          urgency_[early] = std::min(urgency_[early], urgency_[late]);
  }

  // Heat burns a fresh coat: whatever is welded comes before whatever is coated.
  static int coats(Kind kind) { return kind == Kind::protect ? 2 : kind == Kind::treat ? 1 : 0; }

  auto turn(std::size_t i) const {
    const Task& task = tasks_[i];
    return std::tuple(coats(task.kind), urgency_[i], task.kind != Kind::drains, stage_of(i),
                      task.kind, task.side != first_side_, task.zone, task.own);
  }

  void number() {
    std::vector<Task> ordered;
    std::vector<int> numbers(tasks_.size(), 0);
    while (ordered.size() < tasks_.size()) {
      const std::size_t next = next_of(numbers);
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
  std::vector<Urgency> urgency_;                     // with that of what waits for it
  body::Side first_side_ = body::Side::left;
};

}  // namespace

void put_in_order(std::vector<Task>& tasks, const std::vector<ZoneFacts>& facts) {
  Orderer(tasks, facts).order();
}

}  // namespace tinworm::work
