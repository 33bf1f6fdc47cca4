#include <fmt/format.h>

#include <algorithm>

#include "survey/free_words.hpp"
#include "weighing/asking.hpp"

namespace tinworm::weighing {
namespace {

bool leave_to_probe(const survey::Visit& visit) {
  return std::ranges::any_of(visit.leave, [](const std::string& leave) {
    return std::ranges::any_of(survey::words_in(leave),
                               [](const std::string& word) { return word.starts_with("prob"); });
  });
}

void ask_about_leave(Asking& asking) {
  if (leave_to_probe(asking.result.survey.visit)) return;
  Finds probed;
  for (const Find& find : asking.finds)
    if (find.recorded->probe) probed.push_back(&find);
  if (probed.empty()) return;
  asking.of_spot(
      *probed.front(), "leave-not-said",
      fmt::format("did the owner give leave to probe {}? `leave` doesn't name it.", list(probed)),
      "A probe leaves its mark on another's car.");
}

void ask_about_interest(Asking& asking) {
  const survey::Visit& visit = asking.result.survey.visit;
  const bool for_sale =
      visit.reason == survey::Reason::purchase || visit.reason == survey::Reason::sale;
  if (!for_sale || !visit.interest.empty()) return;
  asking.of_car("interest-not-said",
                "has the surveyor any interest in the sale? Say it under `visit: interest`, be it "
                "`none`.",
                "A buyer weighs a survey by who made it, and what for.");
}

// The load-bearing places past the limit that no photo shows, worst first.
void ask_for_photos(Asking& asking) {
  Finds unseen;
  for (const Find& find : asking.finds) {
    if (!find.look->facts.load_bearing() || !find.weighed->found) continue;
    if (find.weighed->step < Step::thin) continue;
    if (find.recorded->photos.empty() && find.look->facts.entry->photos.empty())
      unseen.push_back(&find);
  }
  if (unseen.empty()) return;
  std::ranges::stable_sort(unseen, {}, [](const Find* find) { return find->weighed->rank; });
  std::vector<std::string> entries;
  for (const Find* find : unseen) entries.push_back(title(*find));
  constexpr std::size_t worst = 3;
  asking.of_spot(*unseen.front(), "no-photo",
                 fmt::format("is there a photo of {}? Take one from near with a scale and one from "
                             "further off.",
                             list(entries, worst)),
                 "Who didn't lie under the car can judge by it, and the next survey can compare.");
}

}  // namespace

void ask_about_papers(Asking& asking) {
  ask_about_leave(asking);
  ask_about_interest(asking);
  ask_for_photos(asking);
}

}  // namespace tinworm::weighing
