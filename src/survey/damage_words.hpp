// Words by which people name damage in free text, in any case and nearly spelled. A surveyor's word
// must not be lost as a remark: what is never innocent is refused where it could have been
// recorded, what often is innocent is asked about. The two tables are common practice of the trade.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace tinworm::survey {

enum class Damage { hole, gives, crack, scale, stuffed, filler, thin, loose, repair, figure };

enum class Innocence { never, often };

struct DamageWord {
  std::string found;  // as it stands in the text: "Rusted-out"
  Damage damage = Damage::hole;
  Innocence innocence = Innocence::often;
  std::string offer;     // how it would be recorded: "hole 20", "crack 30"
  bool of_zone = false;  // in a key of the zone, not in a line: "film: 1200"
};

// All of them in the order of the text. A key of the format with a figure of its own is one too,
// however spelled: "hoel 20", "hole20x20", "mteal .31".
std::vector<DamageWord> damage_words(std::string_view text);

// The first that is never innocent, else the first; null where the text names no damage.
const DamageWord* worst(const std::vector<DamageWord>& words);

// The tables' words, for tests and for whoever wants to see them: each as it is written.
std::vector<std::string> words_of(Innocence innocence);

// Whether the word is another English word although one slip of a key would make it a damage word:
// "rack" is no crack.
bool is_plain_word(std::string_view word);

}  // namespace tinworm::survey
