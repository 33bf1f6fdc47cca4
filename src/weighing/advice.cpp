#include "weighing/advice.hpp"

#include <algorithm>
#include <stdexcept>
#include <tuple>

#include "weighing/asking.hpp"

namespace tinworm::weighing {
namespace {

std::size_t rank(const Advice& advice) {
  const auto& kinds = advice_kinds();
  const auto found = std::ranges::find(kinds, advice.kind);
  if (found == kinds.end()) throw std::logic_error("no kind of advice \"" + advice.kind + "\"");
  return static_cast<std::size_t>(found - kinds.begin());
}

}  // namespace

const std::vector<std::string_view>& advice_kinds() {
  static const std::vector<std::string_view> kinds = {
      // The verdict
      "nothing-measured", "coverage", "said-not-recorded", "mount-not-measured", "few-readings",
      "pits-over-place", "inside-not-seen", "blocked-drain", "fresh-coat", "zone-not-named",
      "pit-through", "thick-reading", "hand-against-gauge", "dull-yet-measures", "repair-joint",
      "repair-beneath", "repair-now", "place-not-recorded", "far-from-zone", "other-side",
      "filler-likely", "thick-patch", "gap-moves", "option-not-told", "sill-bent", "acid-elsewhere",
      // A figure
      "no-baseline", "assumed-sheet", "repair-sheet", "film-not-read", "gauge-not-said",
      "wide-readings", "plan-sheet-read", "same-reading", "bare-with-film", "inside-of-none",
      "size-not-recorded", "size-over-part", "film-unlike",
      // The years, and paper
      "visit-to-come", "another-car", "not-measured-again", "place-not-marked", "spot-name",
      "repair-undated", "leave-not-said", "interest-not-said", "photo-folder", "photo-missing",
      "no-photo"};
  return kinds;
}

std::string text(const Advice& advice) {
  return advice.question + " " + advice.why;
}

bool same_reason_follows(const std::vector<Advice>& advice, std::size_t place) {
  return place + 1 < advice.size() && advice[place].kind == advice[place + 1].kind &&
         advice[place].why == advice[place + 1].why;
}

void sort(std::vector<Advice>& advice) {
  std::ranges::stable_sort(advice, {},
                           [](const Advice& each) { return std::tuple(rank(each), each.place); });
}

std::vector<Advice> advice(const Result& result, const rules::Rules& rules) {
  Asking asking(result, rules);
  ask_about_looks(asking);
  ask_about_coats(asking);
  ask_about_readings(asking);
  ask_about_gauge(asking);
  ask_about_places(asking);
  ask_about_repairs(asking);
  ask_about_words(asking);
  ask_about_records(asking);
  ask_about_papers(asking);
  sort(asking.pieces);
  return std::move(asking.pieces);
}

}  // namespace tinworm::weighing
