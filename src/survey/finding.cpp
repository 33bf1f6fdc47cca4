#include "survey/finding.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "quantity/ascii.hpp"
#include "quantity/figure.hpp"
#include "survey/damage_words.hpp"
#include "survey/field.hpp"
#include "survey/free_words.hpp"
#include "survey/hole.hpp"

namespace tinworm::survey {
namespace {

using quantity::is_digit;
using quantity::trimmed;
using yaml::Entry;
using yaml::Node;

// A key of the long form and how a part of a line is known to be its value.
struct Key {
  std::string name;                // stands first: `metal .81`, `magnet none`
  std::vector<std::string> words;  // its words; none: numbers
  bool words_alone = false;        // a word is enough: `pitting`
  bool several = false;            // several of its words may stand in a line
  bool needs_figure = false;       // an English word too: without a figure behind it, free words
};

// What one line may hold.
struct Line {
  std::string what;  // "a finding"
  std::vector<Key> keys;
  bool has_dates = false;
  bool records_damage = false;  // a repair doesn't: what is wrong with metal stands under `found`
};

// Every field that a line may hold: a note is its free words, pits over patches are written long.
template <class Of>
std::vector<Key> keys_of(const std::vector<Field<Of>>& fields) {
  std::vector<Key> keys;
  for (const auto& [facts, read, written, copy] : fields)
    if (facts.writing != Writing::text && facts.writing != Writing::pits)
      keys.push_back({std::string(facts.key), facts.words(),
                      facts.alone == Alone::yes && !facts.terms.empty(),
                      facts.writing == Writing::words,
                      facts.writing == Writing::sheet || facts.writing == Writing::count});
  return keys;
}

const Line& finding_line() {
  static const Line line{"a finding", keys_of(finding_fields()), false, true};
  return line;
}

const Line& repair_line() {
  static const Line line{"a repair", keys_of(repair_fields()), true, false};
  return line;
}

bool holds(const std::vector<std::string>& all, std::string_view word) {
  return std::find(all.begin(), all.end(), word) != all.end();
}

bool starts_number(std::string_view text) {
  if (!text.empty() && (text[0] == '-' || text[0] == '+')) text.remove_prefix(1);
  if (!text.empty() && text[0] == '.') text.remove_prefix(1);
  return !text.empty() && is_digit(text[0]);
}

// `2021-05`, or four digits that can be a year; `05/2021` so that it is refused as the date it is.
bool is_date(std::string_view text) {
  const std::size_t digits = std::min(text.find_first_not_of("0123456789"), text.size());
  if (digits < text.size()) return text[digits] == '-' || text[digits] == '/';
  return text.size() == 4 && text >= "1885" && text <= "2199";
}

std::string_view first_word(std::string_view part) {
  return part.substr(0, part.find(' '));
}

std::string_view after_first_word(std::string_view part) {
  return trimmed(part.substr(first_word(part).size()));
}

bool is_position(std::string_view text) {
  const std::string_view axis = first_word(text);
  return starts_number(text) || axis == "x" || axis == "y" || axis == "z";
}

struct Found {  // which key a part is the value of
  std::string key;
  std::string_view value;
};

// A word of several, written apart: "seam weld" for "seam-weld".
std::string hyphened(std::string_view text) {
  std::string one = lower_case(text);
  std::ranges::replace(one, ' ', '-');
  return one;
}

bool is_quote(char c) {
  return c == '"' || c == '\'';
}

// A remark in quotes: whatever it says stays a remark, and is asked about.
bool is_quoted(std::string_view part) {
  return part.size() >= 2 && is_quote(part.front()) && part.back() == part.front();
}

bool is_whole_number(std::string_view text) {
  return !text.empty() && std::ranges::all_of(text, is_digit);
}

// `15`, `15 16`, `15-17`: more numbers of a list of photos.
bool are_photos(std::string_view part) {
  return std::ranges::all_of(between_spaces(part), [](std::string_view word) {
    const std::size_t dash = std::min(word.find('-'), word.size());
    return is_whole_number(word.substr(0, dash)) &&
           (dash == word.size() || is_whole_number(word.substr(dash + 1)));
  });
}

bool is_bare_figure(std::string_view part) {
  return starts_number(part) && part.find_first_not_of("0123456789. +-") == std::string_view::npos;
}

// "3mm plate all round", `2" of seam open`. A count of holes, a date and a size say no more.
bool is_remark_with_figure(std::string_view part) {
  constexpr std::array<std::string_view, 12> of_sizes{"mm", "um", "cm",   "m",   "in", "inch",
                                                      "ft", "x",  "thou", "swg", "us", "gauge"};
  if (!starts_number(part) || is_count_of_holes(part)) return false;
  std::size_t others = 0;
  for (const std::string& word : words_in(part)) {
    const std::size_t letters = word.find_first_not_of("0123456789x");
    if (letters == std::string::npos) continue;
    others += std::ranges::find(of_sizes, std::string_view(word).substr(letters)) == of_sizes.end();
  }
  return others >= 2;
}

// Words that name damage, none of them a key with a figure of its own.
bool is_remark_of_damage(std::string_view part) {
  const auto words = damage_words(part);
  return !words.empty() &&
         std::ranges::find(words, Damage::figure, &DamageWord::damage) == words.end();
}

class LineReader {
 public:
  LineReader(Page& page, const Line& line, const Node& node)
      : page_(page), line_(line), node_(node) {}

  std::vector<Entry> read() {
    const std::string_view text = node_.text;
    for (std::size_t start = 0; start <= text.size();) {
      const std::size_t end = next_comma(text, start);
      take(trimmed(text.substr(start, end - start)));
      start = end + 1;
    }
    return std::move(entries_);
  }

 private:
  // The comma that ends the part. One between two digits is a decimal comma until proved otherwise;
  // those inside a quoted remark belong to it.
  std::size_t next_comma(std::string_view text, std::size_t from) {
    const std::size_t start = text.find_first_not_of(' ', from);
    if (start < text.size() && is_quote(text[start])) {
      const std::size_t close = text.find(text[start], start + 1);
      const std::size_t after =
          close < text.size() ? text.find_first_not_of(' ', close + 1) : close;
      if (close < text.size() && (after >= text.size() || text[after] == ','))
        return std::min(after, text.size());
    }
    for (std::size_t i = from; i < text.size(); ++i) {
      if (text[i] != ',') continue;
      const bool between_digits =
          i > 0 && is_digit(text[i - 1]) && i + 1 < text.size() && is_digit(text[i + 1]);
      if (!between_digits) return i;
      decimal_comma_ = true;
    }
    return text.size();
  }

  void take(std::string_view part) {
    const std::string last_key = std::exchange(last_key_, "");
    if (std::exchange(decimal_comma_, false))
      return refuse(part, "a comma stands between two digits", "plain decimals: 3, 0.82, .82",
                    "write a point, or a space after a comma that parts two things");
    if (part.empty())
      return refuse(part, fmt::format("{} has an empty part", line_.what), "",
                    "something stands on both sides of every comma");
    if (is_quoted(part)) return add_note(trimmed(part.substr(1, part.size() - 2)));
    if (last_key == "photo" && are_photos(part)) return add("photo", part);  // photo 14, 15-17
    if (last_key == "photo" && is_bare_figure(part))
      return refuse(part, "a figure alone behind photos is a photo's number", "14, 15",
                    fmt::format("a size carries its unit: {} mm; readings carry their word: "
                                "metal {}",
                                part, part));
    const bool says_more = is_remark_with_figure(part);
    if (node_.quoted && (says_more || (!known(part) && is_remark_of_damage(part))))
      return add_note(part);  // the whole line stands in quotes
    if (says_more)
      return refuse(part, "a part that begins with a figure is a size, and this says more",
                    "180x60, 40 mm", "put a remark in quotes, or a comma behind the size");
    if (const auto found = known(part)) return add(found->key, found->value);
    if (nearly_known(part) || names_damage(part)) return;
    add_note(part);
  }

  std::optional<Found> known(std::string_view part) const {
    const std::string whole = hyphened(part);
    for (const Key& key : line_.keys)
      if (key.words_alone && holds(key.words, whole)) return Found{key.name, part};
    if (line_.has_dates && is_date(part)) return Found{"date", part};
    if (line_.records_damage && is_count_of_holes(part)) return Found{"hole", part};
    if (starts_number(part)) return Found{"size", part};
    const std::string first = lower_case(first_word(part));
    const std::string_view value = after_first_word(part);
    for (const Key& key : line_.keys)
      if (key.name == first && !value.empty() && (key.name != "at" || is_position(value)) &&
          (!key.needs_figure || starts_number(value)))
        return Found{key.name, value};
    return std::nullopt;
  }

  // Adds the problem where a part was meant for something it isn't.
  bool nearly_known(std::string_view part) {
    const std::string first = lower_case(first_word(part));
    const bool alone = first.size() == part.size();
    for (const Key& key : line_.keys) {
      if (alone && key.name == first)
        return refused(part, fmt::format("\"{}\" has no value", first), "",
                       cure_without_value(key));
      if (alone && holds(key.words, first))
        return refused(part, "this word needs another before it", "",
                       fmt::format("write \"{} {}\"", key.name, first));
      if (key.words_alone && holds(key.words, first))
        return refused(part, fmt::format("\"{}\" stands alone between commas", first), "",
                       "put a comma after it if that was found; if not, put the remark in quotes");
    }
    if (first == "pits")
      return refused(part, "pits over equal patches are written long", "",
                     "- spot: …, pits: {each: 50x50, deepest: .2 .3 .4}");
    if (is_position(first) && starts_number(after_first_word(part)))
      return refused(part, "a position stands in one part", "at x 1150 z 200", "");
    const std::string meant = meant_by(part);
    // Several words that only sound like one of ours are free words: "bolted to the rail" is no
    // bleed.
    constexpr std::size_t shared = 3;
    if (meant.empty() ||
        (!alone && first.substr(0, shared) != std::string_view(meant).substr(0, shared)))
      return false;
    const std::string_view value = after_first_word(part);
    return refused(part, fmt::format("this is no part of {}", line_.what), "",
                   fmt::format("did you mean \"{}{}{}\"? A remark goes in quotes", meant,
                               value.empty() ? "" : " ", value));
  }

  static std::string cure_without_value(const Key& key) {
    return key.words.empty()
               ? ""
               : fmt::format("write \"{} {}\"", key.name, fmt::join(key.words, " | "));
  }

  // Free words that name damage would say it to no one: it is to be recorded, or quoted as a
  // remark.
  bool names_damage(std::string_view part) {
    const auto words = damage_words(part);
    const DamageWord* damage = worst(words);
    if (!damage || damage->innocence == Innocence::often) return false;
    const std::string key(damage->offer.substr(0, damage->offer.find(' ')));
    const bool recorded = entry(key) != nullptr;
    const std::string cure =
        recorded                                   ? fmt::format("\"{}\" stands in the line", key)
        : line_.records_damage && !damage->of_zone ? fmt::format("write \"{}\"", damage->offer)
        : damage->of_zone ? fmt::format("write \"{}\" at the zone", damage->offer)
                          : fmt::format("record it under \"found\": \"{}\"", damage->offer);
    return refused(part, fmt::format("\"{}\" would be lost among free words", damage->found), "",
                   cure + (recorded ? ": put a remark in quotes" : ", or put a remark in quotes"));
  }

  // The known word that the part, or its first word with something fit behind it, nearly is.
  std::string meant_by(std::string_view part) const {
    constexpr std::size_t long_enough = 6;  // shorter first words of free text are near too much
    const std::string_view first = first_word(part);
    const std::string_view value = after_first_word(part);
    std::vector<std::string> candidates;
    for (const Key& key : line_.keys) {
      if (key.words_alone && (value.empty() || first.size() >= long_enough))
        candidates.insert(candidates.end(), key.words.begin(), key.words.end());
      const bool fits = key.words.empty()
                            ? starts_number(value) || (key.name == "at" && is_position(value))
                            : holds(key.words, lower_case(value));
      if (value.empty() || fits) candidates.push_back(key.name);
    }
    return yaml::nearest_word(first, candidates);
  }

  // Words of the format are known in any case; paths and remarks stay as they are.
  Node value_of(const std::string& key, std::string_view value) const {
    Node node = page_.part_of(node_, value);
    const auto of_words = std::ranges::find_if(
        line_.keys, [&](const Key& each) { return each.name == key && !each.words.empty(); });
    if (of_words == line_.keys.end()) return node;
    if (holds(of_words->words, hyphened(value)))
      node.text = hyphened(value);
    else if (of_words->several)
      node.text = lower_case(value);
    return node;
  }

  Entry* entry(std::string_view key) {
    const auto found = std::ranges::find(entries_, key, &Entry::key);
    return found == entries_.end() ? nullptr : &*found;
  }

  bool knows(std::string_view key) const {
    return std::ranges::find(line_.keys, key, &Key::name) != line_.keys.end();
  }

  bool may_be_several(std::string_view key) const {
    const auto found = std::ranges::find(line_.keys, key, &Key::name);
    return found != line_.keys.end() && found->several;
  }

  void add_note(std::string_view words) {
    if (Entry* note = entry("note")) {
      note->value.text += fmt::format(", {}", words);
      return;
    }
    Node node = page_.part_of(node_, words);
    node.quoted = true;  // free words: never a number, a date or a truth
    const Place place = node.place;
    entries_.push_back({"note", place, std::move(node)});
  }

  // "metal .81 .79 bare": what was under the gauge there may stand behind its readings.
  bool add_with_coating(const std::string& key, std::string_view value) {
    const std::size_t space = value.rfind(' ');
    if (key != "metal" || space == value.npos || !knows("coating")) return false;
    const std::string last = lower_case(value.substr(space + 1));
    if (last != "bare" && !of<Coating>(last)) return false;
    add(key, value.substr(0, space));
    add("coating", value.substr(space + 1));
    if (last == "bare")
      if (Entry* coating = entry("coating"))
        coating->value.text = std::string(word(Coating::removed));
    return true;
  }

  void add(const std::string& key, std::string_view value) {
    if (add_with_coating(key, value)) return;
    last_key_ = key;
    Node node = value_of(key, value);
    Entry* before = entry(key);
    if (!before) {
      const Place place = node.place;
      entries_.push_back({key, place, std::move(node)});
      return;
    }
    if (key == "photo" || may_be_several(key)) {
      before->value.text += fmt::format(" {}", node.text);
      return;
    }
    if (std::ranges::find(told_twice_, key) != told_twice_.end()) return;
    told_twice_.push_back(key);
    const bool hole = key == "rust" && (node.text == "hole" || before->value.text == "hole");
    const bool holes = key == "hole";
    const Entry* one_hole = key == "size" ? entry("hole") : nullptr;
    refuse(value, fmt::format("{} has two parts for {}", line_.what, key), "",
           hole    ? "a hole beside other rust carries its size: hole 14x9"
           : holes ? "write them all in one part and one unit: hole 20 15 8"
           : one_hole
               ? fmt::format("the first is \"{}\": keep one; several holes stand in one part, "
                             "hole {} {}",
                             before->value.text, one_hole->value.text, before->value.text)
               : fmt::format("the first is \"{}\": keep one", before->value.text));
  }

  void refuse(std::string_view part, std::string what, std::string allowed, std::string cure) {
    Node node = page_.part_of(node_, part);
    page_.add(
        {node.place, std::move(what), std::move(node.text), std::move(allowed), std::move(cure)});
  }
  bool refused(std::string_view part, std::string what, std::string allowed, std::string cure) {
    refuse(part, std::move(what), std::move(allowed), std::move(cure));
    return true;
  }

  Page& page_;
  const Line& line_;
  const Node& node_;
  std::vector<Entry> entries_;
  bool decimal_comma_ = false;
  std::string last_key_;
  std::vector<std::string> told_twice_;  // keys of which that was said
};

// A line's parts with the name that stands before its colon.
Node named(const Entry& line, std::vector<Entry> entries) {
  Node name;
  name.kind = Node::Kind::scalar;
  name.place = line.key_place;
  name.quoted = true;  // a key: no YAML reader makes anything else of it
  name.text = line.key;
  Node long_form;
  long_form.kind = Node::Kind::map;
  long_form.place = line.key_place;
  long_form.entries = std::move(entries);
  long_form.entries.insert(long_form.entries.begin(), {"spot", line.key_place, std::move(name)});
  return long_form;
}

}  // namespace

Node finding_written_long(Page& page, const Entry& line) {
  return named(line, LineReader(page, finding_line(), line.value).read());
}

Node repair_written_long(Page& page, const Entry& line) {
  return named(line, LineReader(page, repair_line(), line.value).read());
}

Node repair_written_long(Page& page, const Node& line) {
  Node repair;
  repair.kind = Node::Kind::map;
  repair.place = line.place;
  repair.entries = LineReader(page, repair_line(), line).read();
  return repair;
}

}  // namespace tinworm::survey
