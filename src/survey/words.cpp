#include "survey/words.hpp"

#include <algorithm>
#include <array>

namespace tinworm::survey {
namespace {

// The one table: the words of each kind in the order of its enum.
template <class Word>
constexpr std::array<std::string_view, 0> table{};
template <>
constexpr std::array<std::string_view, 12> table<Rust>{"none",    "surface", "blister",  "pitting",
                                                       "scale",   "seam",    "poultice", "edge",
                                                       "contact", "acid",    "bleed",    "hole"};
template <>
constexpr std::array<std::string_view, 3> table<Hand>{"firm", "gives", "breaks"};
template <>
constexpr std::array<std::string_view, 3> table<Tap>{"rings", "dull", "crunches"};
template <>
constexpr std::array<std::string_view, 3> table<Probe>{"stops", "dents", "goes-in"};
template <>
constexpr std::array<std::string_view, 3> table<Magnet>{"holds", "weak", "none"};
template <>
constexpr std::array<std::string_view, 5> table<Stuffed>{"foam", "paper", "board", "mesh",
                                                         "cement"};
template <>
constexpr std::array<std::string_view, 9> table<RepairKind>{"let-in",    "lapped", "plated-over",
                                                            "new-panel", "brazed", "bonded",
                                                            "riveted",   "filled", "treated"};
template <>
constexpr std::array<std::string_view, 5> table<Joint>{"seam-weld", "plug-weld", "spot-weld",
                                                       "stitch", "no-weld"};
template <>
constexpr std::array<std::string_view, 3> table<Beneath>{"cut-out", "over-rust", "unknown"};
template <>
constexpr std::array<std::string_view, 5> table<Now>{"sound", "poor-weld", "rusting", "lifting",
                                                     "cracked"};
template <>
constexpr std::array<std::string_view, 7> table<SeenWord>{"bare", "coated", "part",      "scope",
                                                          "tap",  "hidden", "not-fitted"};
template <>
constexpr std::array<std::string_view, 3> table<Drains>{"open", "blocked", "plugged"};
template <>
constexpr std::array<std::string_view, 2> table<Inside>{"scoped", "not-seen"};
template <>
constexpr std::array<std::string_view, 5> table<Reason>{"purchase", "periodic", "after-repair",
                                                        "sale", "other"};
template <>
constexpr std::array<std::string_view, 4> table<Use>{"stored", "dry-season", "all-weather",
                                                     "salted"};
template <>
constexpr std::array<std::string_view, 6> table<Air>{"C1", "C2", "C3", "C4", "C5", "CX"};
template <>
constexpr std::array<std::string_view, 3> table<Coating>{"removed", "left-on", "compensated"};
template <>
constexpr std::array<std::string_view, 2> table<When>{"before-use", "next-survey"};

template <class Word>
std::string_view word_in_table(Word value) {
  return table<Word>.at(static_cast<std::size_t>(value));
}

}  // namespace

template <class Word>
std::optional<Word> of(std::string_view text) {
  const auto& all = table<Word>;
  const auto found = std::find(all.begin(), all.end(), text);
  if (found == all.end()) return std::nullopt;
  return static_cast<Word>(found - all.begin());
}

template <class Word>
const std::vector<std::string>& words() {
  static const std::vector<std::string> all(table<Word>.begin(), table<Word>.end());
  return all;
}

#define TINWORM_WORDS(Word)                                \
  std::string_view word(Word value) {                      \
    return word_in_table(value);                           \
  }                                                        \
  template std::optional<Word> of<Word>(std::string_view); \
  template const std::vector<std::string>& words<Word>();

TINWORM_WORDS(Rust)
TINWORM_WORDS(Hand)
TINWORM_WORDS(Tap)
TINWORM_WORDS(Probe)
TINWORM_WORDS(Magnet)
TINWORM_WORDS(Stuffed)
TINWORM_WORDS(RepairKind)
TINWORM_WORDS(Joint)
TINWORM_WORDS(Beneath)
TINWORM_WORDS(Now)
TINWORM_WORDS(SeenWord)
TINWORM_WORDS(Drains)
TINWORM_WORDS(Inside)
TINWORM_WORDS(Reason)
TINWORM_WORDS(Use)
TINWORM_WORDS(Air)
TINWORM_WORDS(Coating)
TINWORM_WORDS(When)

#undef TINWORM_WORDS

}  // namespace tinworm::survey
