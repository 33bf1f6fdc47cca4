// The plain words of a survey: what may be written and what it means. One table for the reader,
// the writer, the schema and the outputs. To add a word: its enum here, its row in words.cpp.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace tinworm::survey {

enum class Rust {
  none,
  surface,
  blister,
  pitting,
  scale,
  seam,
  poultice,
  edge,
  contact,
  acid,
  bleed,
  hole
};
constexpr std::size_t rusts = static_cast<std::size_t>(Rust::hole) + 1;
enum class Hand { firm, gives, breaks };
enum class Tap { rings, dull, crunches };
enum class Probe { stops, dents, goes_in };
enum class Magnet { holds, weak, none };
enum class Stuffed { foam, paper, board, mesh, cement };
enum class Shape { dent, wavy, filler };  // no rust: looks, or a sign of what lies beneath
enum class RepairKind {
  let_in,
  lapped,
  plated_over,
  new_panel,
  brazed,
  bonded,
  riveted,
  filled,
  treated
};
enum class Joint { seam_weld, plug_weld, spot_weld, stitch, no_weld };
enum class Sides { open_side };  // of a repair: some side of it isn't welded
enum class Beneath { cut_out, over_rust, unknown };
enum class Now { sound, poor_weld, rusting, lifting, cracked };
enum class SeenWord { bare, coated, part, scope, tap, hidden, not_fitted };
enum class Drains { open, blocked, plugged };
enum class Inside { scoped, part, not_seen, hidden };
// What hid a zone: the first word of its reason.
enum class HiddenBy {
  carpet,
  trim,
  coating,
  seat,
  tank,
  load,
  part,
  closed,
  not_agreed,
  unsafe,
  dirty
};
enum class Reason { purchase, periodic, after_repair, sale, other };
enum class Use { stored, dry_season, all_weather, salted };
enum class Air { c1, c2, c3, c4, c5, cx };  // ISO 9223 corrosivity category, written C1 … C5, CX
enum class Coating { removed, left_on, compensated };  // under the metal gauge
// Of `also:`, beside a date and what the odometer will show.
enum class When { at_once, before_use, next_survey };
enum class Matter {  // what `also:` is about
  tyres,
  brakes,
  fuel,
  steering,
  suspension,
  exhaust,
  wiring,
  glass,
  other
};
enum class Weather { dry, wet };  // on the day of the visit
enum class GapKind { gap, step, drop };
enum class Tool { gauge, film, scope, magnet, tap, probe, mirror, lamp };

// As written in a survey: "let-in", "goes-in".
std::string_view word(Rust), word(Hand), word(Tap), word(Probe), word(Magnet), word(Stuffed),
    word(RepairKind), word(Joint), word(Beneath), word(Now), word(SeenWord), word(Drains),
    word(Inside), word(Reason), word(Use), word(Air), word(Coating), word(When), word(Sides),
    word(Shape), word(HiddenBy), word(Matter), word(Weather), word(GapKind), word(Tool);

// What a word means, in a clause: an editor shows it with the word.
std::string_view meaning(Rust), meaning(Hand), meaning(Tap), meaning(Probe), meaning(Magnet),
    meaning(Stuffed), meaning(RepairKind), meaning(Joint), meaning(Beneath), meaning(Now),
    meaning(SeenWord), meaning(Drains), meaning(Inside), meaning(Reason), meaning(Use),
    meaning(Air), meaning(Coating), meaning(When), meaning(Sides), meaning(Shape),
    meaning(HiddenBy), meaning(Matter), meaning(Weather), meaning(GapKind), meaning(Tool);

// The value a word means; none if it is no such word. `of<Rust>("seam")`.
template <class Word>
std::optional<Word> of(std::string_view text);

// All words of a kind, in the order of the enum.
template <class Word>
const std::vector<std::string>& words();

struct Term {
  std::string_view word, meaning;
};

// The same with what they mean.
template <class Word>
std::span<const Term> terms();

}  // namespace tinworm::survey
