#include "survey/words.hpp"

#include <algorithm>
#include <array>

namespace tinworm::survey {
namespace {

// The one table: the words of each kind in the order of its enum. What they mean is common practice
// of the trade. The air: names of ISO 9223:2012, places from memory.
template <class Word>
constexpr std::array<Term, 0> table{};
template <>
constexpr std::array<Term, 12> table<Rust>{{
    {"none", "looked at or measured here, and no rust"},
    {"surface", "a brown film without pits"},
    {"blister", "paint lifted by rust beneath"},
    {"pitting", "small deep craters in the face of the metal"},
    {"scale", "rust in layers that lift and flake"},
    {"seam", "rust between two flanges, pushing the seam open"},
    {"poultice", "under mud, felt or carpet that holds salt and water"},
    {"edge", "a folded or cut edge eaten back"},
    {"contact", "where another metal touches: clips, trim, alloy"},
    {"acid", "eaten by battery acid"},
    {"bleed", "a brown stain from a place that can't be seen"},
    {"hole", "rusted through"},
}};
template <>
constexpr std::array<Term, 3> table<Hand>{{
    {"firm", "doesn't move under a hard thumb"},
    {"gives", "bends or dents under the thumb"},
    {"breaks", "cracks or falls away"},
}};
template <>
constexpr std::array<Term, 3> table<Tap>{{
    {"rings", "a clear note"},
    {"dull", "a dead note"},
    {"crunches", "flakes or crushes under a light tap"},
}};
template <>
constexpr std::array<Term, 3> table<Probe>{{
    {"stops", "the point stops on metal and leaves no mark"},
    {"dents", "the point leaves a dent"},
    {"goes-in", "the point goes into the metal"},
}};
template <>
constexpr std::array<Term, 3> table<Magnet>{{
    {"holds", "as on bare sheet"},
    {"weak", "less than beside it: thick filler, or little metal"},
    {"none", "not at all: filler or no steel"},
}};
template <>
constexpr std::array<Term, 5> table<Stuffed>{{
    {"foam", "filled with foam"},
    {"paper", "filled with paper"},
    {"board", "filled with board"},
    {"mesh", "bridged with mesh"},
    {"cement", "filled with cement"},
}};
template <>
constexpr std::array<Term, 9> table<RepairKind>{{
    {"let-in", "a piece cut to shape and set in edge to edge"},
    {"lapped", "a piece set over the edge of the old metal"},
    {"plated-over", "a plate over what was there"},
    {"new-panel", "a whole new panel"},
    {"brazed", "joined with brass"},
    {"bonded", "glued"},
    {"riveted", "riveted or screwed"},
    {"filled", "made good with filler, no metal"},
    {"treated", "rust converted, painted or waxed; no metal"},
}};
template <>
constexpr std::array<Term, 5> table<Joint>{{
    {"seam-weld", "welded all along"},
    {"plug-weld", "welded through drilled holes"},
    {"spot-weld", "welded in spots, as when it was built"},
    {"stitch", "short runs of weld with gaps between"},
    {"no-weld", "not welded"},
}};
template <>
constexpr std::array<Term, 1> table<Sides>{{
    {"open-side", "a side of it isn't welded"},
}};
template <>
constexpr std::array<Term, 3> table<Shape>{{
    {"dent", "pushed in or out of shape"},
    {"wavy", "not true to the eye along it"},
    {"filler", "filler on the metal: what lies beneath isn't seen"},
}};
template <>
constexpr std::array<Term, 3> table<Beneath>{{
    {"cut-out", "the rusted metal was cut out first"},
    {"over-rust", "put over rusted metal"},
    {"unknown", "can't be told"},
}};
template <>
constexpr std::array<Term, 5> table<Now>{{
    {"sound", "nothing wrong to see or feel"},
    {"poor-weld", "the weld has gaps, pores or no hold"},
    {"rusting", "rust in it or at its edge"},
    {"lifting", "coming away"},
    {"cracked", "a crack in it or beside it"},
}};
template <>
constexpr std::array<Term, 7> table<SeenWord>{{
    {"bare", "seen as bare metal"},
    {"coated", "seen through sound paint"},
    {"part", "seen in part, with its share"},
    {"scope", "seen through a scope only, not measured"},
    {"tap", "felt and tapped, not seen"},
    {"hidden", "not seen, with the reason; thick or fresh underseal hides too"},
    {"not-fitted", "this car doesn't have it"},
}};
template <>
constexpr std::array<Term, 3> table<Drains>{{
    {"open", "water runs out"},
    {"blocked", "dirt stands in them"},
    {"plugged", "closed with plugs"},
}};
template <>
constexpr std::array<Term, 4> table<Inside>{{
    {"scoped", "looked into through a scope"},
    {"part", "looked into in part, with its share"},
    {"not-seen", "not looked into"},
    {"hidden", "could not be looked into"},
}};
template <>
constexpr std::array<Term, 11> table<HiddenBy>{{
    {"carpet", "under carpet or mats"},
    {"trim", "behind trim"},
    {"coating", "under underseal, wax or paint laid on thick"},
    {"seat", "under or behind a seat"},
    {"tank", "behind the tank"},
    {"load", "under what the car carries"},
    {"part", "behind a part that wasn't taken off"},
    {"closed", "a box or lid that doesn't open"},
    {"not-agreed", "the owner did not agree"},
    {"unsafe", "it could not be reached safely"},
    {"dirty", "under mud or dirt"},
}};
template <>
constexpr std::array<Term, 5> table<Reason>{{
    {"purchase", "the car was or is to be bought"},
    {"periodic", "looked at every so often"},
    {"after-repair", "to see what was mended"},
    {"sale", "the car is to be sold"},
    {"other", "anything else"},
}};
template <>
constexpr std::array<Term, 4> table<Use>{{
    {"stored", "stands indoors, hardly driven"},
    {"dry-season", "driven in the dry season only"},
    {"all-weather", "driven all year"},
    {"salted", "driven on salted roads"},
}};
template <>
constexpr std::array<Term, 6> table<Air>{{
    {"C1", "very low: heated rooms"},
    {"C2", "low: dry or cold country"},
    {"C3", "medium: towns, coast with little salt"},
    {"C4", "high: industry, salty coast"},
    {"C5", "very high: heavy industry, shore"},
    {"CX", "extreme: salt spray, damp tropics"},
}};
template <>
constexpr std::array<Term, 3> table<Coating>{{
    {"removed", "cleaned to bare metal before reading"},
    {"left-on", "read through the coating as if it were metal"},
    {"compensated", "the gauge leaves the coating out by itself"},
}};
template <>
constexpr std::array<Term, 3> table<When>{{
    {"at-once", "now, before anything else: it can hurt someone where it stands"},
    {"before-use", "before the car is driven again"},
    {"next-survey", "when the car is next looked over"},
}};

template <>
constexpr std::array<Term, 9> table<Matter>{{
    {"tyres", "tyres and wheels"},
    {"brakes", "brakes, their pipes and hoses"},
    {"fuel", "tank, pipes and what leaks from them"},
    {"steering", "steering"},
    {"suspension", "springs, dampers, bushes, joints"},
    {"exhaust", "exhaust"},
    {"wiring", "wiring, lamps, battery"},
    {"glass", "glass and its rubbers"},
    {"other", "anything else"},
}};
template <>
constexpr std::array<Term, 2> table<Weather>{{
    {"dry", "the car was dry"},
    {"wet", "the car was wet: water hides rust and shows leaks"},
}};
template <>
constexpr std::array<Term, 3> table<GapKind>{{
    {"gap", "the width between two edges"},
    {"step", "one face stands proud of the other"},
    {"drop", "one edge hangs below the other"},
}};
template <>
constexpr std::array<Term, 8> table<Tool>{{
    {"gauge", "a gauge that reads the metal"},
    {"film", "a gauge that reads the coating"},
    {"scope", "a scope for the insides"},
    {"magnet", "a magnet"},
    {"tap", "a light hammer"},
    {"probe", "a pointed tool"},
    {"mirror", "a mirror"},
    {"lamp", "lamps"},
}};

// A word for each value up to `last`, none of them empty: a list too short would end in empty ones.
template <class Word>
constexpr bool has_all(Word last) {
  return table<Word>.size() == static_cast<std::size_t>(last) + 1 &&
         !table<Word>.back().word.empty();
}

template <class Word>
const Term& term(Word value) {
  return table<Word>.at(static_cast<std::size_t>(value));
}

}  // namespace

template <class Word>
std::optional<Word> of(std::string_view text) {
  const auto& all = table<Word>;
  const auto found = std::ranges::find(all, text, &Term::word);
  if (found == all.end()) return std::nullopt;
  return static_cast<Word>(found - all.begin());
}

template <class Word>
const std::vector<std::string>& words() {
  static const std::vector<std::string> all = [] {
    std::vector<std::string> texts;
    for (const Term& each : table<Word>) texts.emplace_back(each.word);
    return texts;
  }();
  return all;
}

template <class Word>
std::span<const Term> terms() {
  return table<Word>;
}

#define TINWORM_WORDS(Word, last)                          \
  static_assert(has_all<Word>(Word::last), #Word);         \
  std::string_view word(Word value) {                      \
    return term(value).word;                               \
  }                                                        \
  std::string_view meaning(Word value) {                   \
    return term(value).meaning;                            \
  }                                                        \
  template std::span<const Term> terms<Word>();            \
  template std::optional<Word> of<Word>(std::string_view); \
  template const std::vector<std::string>& words<Word>();

TINWORM_WORDS(Rust, hole)
TINWORM_WORDS(Hand, breaks)
TINWORM_WORDS(Tap, crunches)
TINWORM_WORDS(Probe, goes_in)
TINWORM_WORDS(Magnet, none)
TINWORM_WORDS(Stuffed, cement)
TINWORM_WORDS(RepairKind, treated)
TINWORM_WORDS(Joint, no_weld)
TINWORM_WORDS(Beneath, unknown)
TINWORM_WORDS(Now, cracked)
TINWORM_WORDS(SeenWord, not_fitted)
TINWORM_WORDS(Drains, plugged)
TINWORM_WORDS(Inside, hidden)
TINWORM_WORDS(Reason, other)
TINWORM_WORDS(Use, salted)
TINWORM_WORDS(Air, cx)
TINWORM_WORDS(Coating, compensated)
TINWORM_WORDS(When, next_survey)
TINWORM_WORDS(Sides, open_side)
TINWORM_WORDS(Shape, filler)
TINWORM_WORDS(HiddenBy, dirty)
TINWORM_WORDS(Matter, other)
TINWORM_WORDS(Weather, wet)
TINWORM_WORDS(GapKind, drop)
TINWORM_WORDS(Tool, lamp)

#undef TINWORM_WORDS

}  // namespace tinworm::survey
