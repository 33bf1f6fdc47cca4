#include "survey/damage_words.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "quantity/ascii.hpp"
#include "survey/page.hpp"

namespace tinworm::survey {
namespace {

struct Row {
  std::string_view words;  // one or several between spaces; a hyphen in a text parts words too
  Damage damage;
  std::string_view offer;  // {} is the figure that follows in the text, or an example
  bool of_zone = false;    // a key of the zone records it
};

constexpr std::string_view offer_hole = "hole {}", offer_crack = "crack {}";

constexpr std::array never_innocent{
    Row{"holed", Damage::hole, offer_hole},
    Row{"perforated", Damage::hole, offer_hole},
    Row{"perforation", Damage::hole, offer_hole},
    Row{"perforations", Damage::hole, offer_hole},
    Row{"pinhole", Damage::hole, offer_hole},
    Row{"pinholes", Damage::hole, offer_hole},
    Row{"gone", Damage::hole, offer_hole},
    Row{"rusted out", Damage::hole, offer_hole},
    Row{"rusted through", Damage::hole, offer_hole},
    Row{"rust through", Damage::hole, offer_hole},
    Row{"rotted through", Damage::hole, offer_hole},
    Row{"daylight", Damage::hole, offer_hole},
    Row{"rotten", Damage::gives, "breaks"},
    Row{"rotted", Damage::gives, "breaks"},
    Row{"crumbles", Damage::gives, "breaks"},
    Row{"crumbling", Damage::gives, "breaks"},
    Row{"crumbly", Damage::gives, "breaks"},
    Row{"collapsed", Damage::gives, "breaks"},
    Row{"gives", Damage::gives, "gives"},
    Row{"goes in", Damage::gives, "probe goes-in"},
    Row{"went in", Damage::gives, "probe goes-in"},
    Row{"cracked", Damage::crack, offer_crack},
    Row{"cracks", Damage::crack, offer_crack},
    Row{"crack", Damage::crack, offer_crack},
    Row{"split", Damage::crack, offer_crack},
    Row{"torn", Damage::crack, offer_crack},
    Row{"flaking", Damage::scale, "scale"},
    Row{"flaky", Damage::scale, "scale"},
    Row{"mesh", Damage::stuffed, "stuffed mesh"},
    Row{"foam", Damage::stuffed, "stuffed foam"},
};

constexpr std::array often_innocent{
    Row{"hole", Damage::hole, offer_hole},
    Row{"holes", Damage::hole, offer_hole},
    Row{"through", Damage::hole, offer_hole},
    Row{"thin", Damage::thin, "metal .80"},
    Row{"soft", Damage::gives, "gives"},
    Row{"weak", Damage::gives, "gives"},
    Row{"loose", Damage::loose, "repairs: - lapped, lifting", true},
    Row{"filler", Damage::filler, "film: 1200", true},
    Row{"patch", Damage::repair, "repairs: - lapped", true},
    Row{"patched", Damage::repair, "repairs: - lapped", true},
    Row{"plated", Damage::repair, "repairs: - plated-over", true},
    Row{"weld", Damage::repair, "repairs: - let-in, seam-weld", true},
    Row{"welded", Damage::repair, "repairs: - let-in, seam-weld", true},
    Row{"riveted", Damage::repair, "repairs: - riveted", true},
    Row{"brazed", Damage::repair, "repairs: - brazed", true},
    Row{"repaired", Damage::repair, "repairs: - let-in", true},
    Row{"repair", Damage::repair, "repairs: - let-in", true},
};

// Keys that carry a figure of their own.
constexpr std::array figure_keys{
    Row{"hole", Damage::figure, offer_hole},   Row{"holes", Damage::figure, offer_hole},
    Row{"crack", Damage::figure, offer_crack}, Row{"metal", Damage::figure, "metal {}"},
    Row{"pit", Damage::figure, "pit {}"},      Row{"film", Damage::figure, "film: {}", true}};

// Other English words that are one slip away from a word of the tables.
constexpr std::array<std::string_view, 19> plain_words{
    "it",   "one",   "rack",   "racks",  "hold",  "tin", "oft",  "lose", "path", "wed",
    "held", "plate", "though", "trough", "filer", "ton", "form", "spit", "slip"};

using quantity::is_digit;
using quantity::lower_case;

struct Token {
  std::string letters;  // lower case; empty for a figure
  std::string figure;   // as it stands, glued to letters or alone
  std::size_t begin = 0, end = 0;
};

bool is_letter(char c) {
  return (lower_case(c) >= 'a' && lower_case(c) <= 'z') || static_cast<unsigned char>(c) >= 0x80;
}

// Letters with a figure glued to them are one token: "hole20x20", "metal.31".
std::vector<Token> tokens_of(std::string_view text) {
  const auto starts_figure = [&](std::size_t at) {
    return at < text.size() && (is_digit(text[at]) || (text[at] == '.' && at + 1 < text.size() &&
                                                       is_digit(text[at + 1])));
  };
  std::vector<Token> tokens;
  for (std::size_t at = 0; at < text.size();) {
    Token token;
    token.begin = at;
    while (at < text.size() && is_letter(text[at])) token.letters += lower_case(text[at++]);
    if (starts_figure(at))
      while (at < text.size() && (is_digit(text[at]) || text[at] == '.' ||
                                  (lower_case(text[at]) == 'x' && starts_figure(at + 1))))
        token.figure += text[at++];
    token.end = at;
    if (at == token.begin)
      ++at;
    else
      tokens.push_back(std::move(token));
  }
  return tokens;
}

// One letter dropped, doubled or swapped with its neighbour.
bool is_one_slip(std::string_view typed, std::string_view meant) {
  if (typed.size() + 1 == meant.size()) {
    const auto differs = std::ranges::mismatch(typed, meant);
    return std::equal(differs.in1, typed.end(), differs.in2 + 1);
  }
  if (typed.size() == meant.size() + 1) {
    const auto differs = std::ranges::mismatch(meant, typed);
    const bool doubled = differs.in2 != typed.begin() && *differs.in2 == *(differs.in2 - 1);
    return doubled && std::equal(differs.in1, meant.end(), differs.in2 + 1);
  }
  if (typed.size() != meant.size()) return false;
  const auto differs = std::ranges::mismatch(typed, meant);
  const auto left = typed.end() - differs.in1;
  return left >= 2 && differs.in1[0] == differs.in2[1] && differs.in1[1] == differs.in2[0] &&
         std::equal(differs.in1 + 2, typed.end(), differs.in2 + 2);
}

enum class Spelling { exact, near };

bool is_word(std::string_view typed, std::string_view meant, Spelling spelling) {
  constexpr std::size_t long_enough = 3;  // shorter words are near too much
  if (typed == meant) return true;
  return spelling == Spelling::near && meant.size() >= long_enough && typed.size() >= 2 &&
         !is_plain_word(typed) && is_one_slip(typed, meant);
}

// How many tokens from `at` on are the row's words; 0: they are others.
std::size_t spans(const Row& row, const std::vector<Token>& tokens, std::size_t at,
                  Spelling spelling) {
  const auto words = between_spaces(row.words);
  if (at + words.size() > tokens.size()) return 0;
  for (std::size_t i = 0; i < words.size(); ++i)
    if (!is_word(tokens[at + i].letters, words[i], spelling)) return 0;
  return words.size();
}

std::string offer_with(const Row& row, std::string_view figure) {
  const std::string_view example = row.offer == offer_crack ? "30" : "20x15";
  return fmt::format(fmt::runtime(row.offer), figure.empty() ? example : figure);
}

// "three holes", "several holes": holes that were counted are nobody's drain.
bool is_count(std::string_view word) {
  constexpr std::array<std::string_view, 17> counts{
      "two",  "three", "four",    "five", "six",   "seven", "eight", "nine", "ten",
      "some", "few",   "several", "many", "small", "big",   "large", "rust"};
  return std::ranges::find(counts, word) != counts.end();
}

class Scan {
 public:
  explicit Scan(std::string_view text) : text_(text), tokens_(tokens_of(text)) {}

  std::vector<DamageWord> words() {
    for (std::size_t at = 0; at < tokens_.size();) at += std::max<std::size_t>(take(at), 1);
    return std::move(words_);
  }

 private:
  std::size_t take(std::size_t at) {
    if (take_figure(at)) return 1;
    // "hole" is near "holed", yet a word of its own.
    for (const Spelling spelling : {Spelling::exact, Spelling::near})
      if (const std::size_t count = take_word(at, spelling)) return count;
    return 0;
  }

  std::size_t take_word(std::size_t at, Spelling spelling) {
    for (const Row& row : never_innocent)
      if (const std::size_t count = spans(row, tokens_, at, spelling))
        return add(row, Innocence::never, at, count);
    for (const Row& row : often_innocent)
      if (const std::size_t count = spans(row, tokens_, at, spelling)) {
        const bool counted = row.words == "holes" && at > 0 &&
                             (is_count(tokens_[at - 1].letters) || !tokens_[at - 1].figure.empty());
        return add(row, counted ? Innocence::never : Innocence::often, at, count);
      }
    return 0;
  }

  bool take_figure(std::size_t at) {
    const Token& token = tokens_[at];
    const bool glued = !token.letters.empty() && !token.figure.empty();
    const bool beside = !token.letters.empty() && at + 1 < tokens_.size() &&
                        tokens_[at + 1].letters.empty() && !tokens_[at + 1].figure.empty() &&
                        text_.substr(token.end, tokens_[at + 1].begin - token.end) == " ";
    if (!glued && !beside) return false;
    for (const Row& row : figure_keys)
      if (is_word(token.letters, row.words, Spelling::near)) {
        const Token& last = glued ? token : tokens_[at + 1];
        words_.push_back({std::string(text_.substr(token.begin, last.end - token.begin)),
                          Damage::figure, Innocence::never, offer_with(row, last.figure),
                          row.of_zone});
        return true;
      }
    return false;
  }

  std::size_t add(const Row& row, Innocence innocence, std::size_t at, std::size_t count) {
    const Token &first = tokens_[at], &last = tokens_[at + count - 1];
    const bool figure_follows = at + count < tokens_.size() && tokens_[at + count].letters.empty();
    words_.push_back(
        {std::string(text_.substr(first.begin, last.end - first.begin)), row.damage, innocence,
         offer_with(row, figure_follows ? tokens_[at + count].figure : last.figure), row.of_zone});
    return count;
  }

  std::string_view text_;
  std::vector<Token> tokens_;
  std::vector<DamageWord> words_;
};

}  // namespace

std::vector<DamageWord> damage_words(std::string_view text) {
  return Scan(text).words();
}

const DamageWord* worst(const std::vector<DamageWord>& words) {
  const auto never = std::ranges::find(words, Innocence::never, &DamageWord::innocence);
  if (never != words.end()) return &*never;
  return words.empty() ? nullptr : &words.front();
}

std::vector<std::string> words_of(Innocence innocence) {
  std::vector<std::string> words;
  const auto add = [&](const auto& rows) {
    for (const Row& row : rows) words.emplace_back(row.words);
  };
  if (innocence == Innocence::never)
    add(never_innocent);
  else
    add(often_innocent);
  return words;
}

bool is_plain_word(std::string_view word) {
  return std::ranges::find(plain_words, word) != plain_words.end();
}

}  // namespace tinworm::survey
