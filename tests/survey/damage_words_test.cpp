// No damage is lost in free words: every word of both tables, in every free place, in any case and
// with one slip of a key.
#include "survey/damage_words.hpp"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>
#include <set>

#include "survey/field_sheet.hpp"
#include "survey/form.hpp"
#include "survey/free_words.hpp"
#include "survey/small_plan.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::survey {
namespace {

enum class In { zone, survey, sheet };

struct Place {
  std::string_view name;
  std::string_view lines;  // the words at {}
  bool quoted = false;     // a remark: asked about, never refused
  In in = In::zone;        // of zone 51, of the survey itself, a row of a spreadsheet
};

constexpr Place places[] = {
    {"end of a line", "    found:\n      - rear end: surface, 60x40, {0}\n"},
    {"middle of a line", "    found:\n      - rear end: surface, {0}, 60x40\n"},
    {"among other words", "    found:\n      - rear end: surface, here {0} below\n"},
    {"quoted", "    found:\n      - rear end: surface, \"{0}, it seems\"\n", true},
    {"a long note", "    found:\n      - {{spot: rear end, rust: surface, note: \"so {0}\"}}\n",
     true},
    {"a zone's note", "    note: it is {0} here\n", true},
    {"a repair", "    repairs:\n      - treated, 60x40, looks {0} here\n"},
    {"a spreadsheet's note", "51,rear end,bare,surface,\"so {0}, he says\"\n", true, In::sheet},
    {"what else the owner must know", "also:\n  - {{what: tyres, say: \"so {0}\"}}\n", true,
     In::survey},
    {"a gap", "gaps:\n  - {{where: \"door, {0} edge\", wheels: 4 mm}}\n", true, In::survey},
    {"a reason for hiding", "  hidden: {{53: \"load, {0}\"}}\n", true, In::survey},
    {"the name of a part of its own",
     "zones:\n  own-a: {{name: \"the {0} bracket\", role: local, side: left, seen: bare}}\n", true,
     In::survey},
};

// As typed, all capitals, first letter a capital, each letter dropped, doubled, swapped with the
// next.
std::vector<std::string> spellings(const std::string& word) {
  std::set<std::string> all = {word};
  std::string capitals = word;
  std::ranges::transform(capitals, capitals.begin(),
                         [](unsigned char c) { return std::toupper(c); });
  all.insert(capitals);
  all.insert(capitals.substr(0, 1) + word.substr(1));
  for (std::size_t i = 0; i < word.size(); ++i) {
    // Of a word of two letters nothing is left to be near to: "goes in".
    const std::size_t begin = word.rfind(' ', i) + 1,
                      end = std::min(word.find(' ', i), word.size());
    if (word[i] == ' ' || end - begin < 3) continue;
    std::string dropped = word, doubled = word;
    all.insert(dropped.erase(i, 1));
    all.insert(doubled.insert(i, 1, word[i]));
    if (i + 1 < word.size() && word[i + 1] != ' ') {
      std::string swapped = word;
      std::swap(swapped[i], swapped[i + 1]);
      all.insert(swapped);
    }
  }
  std::erase_if(all, [](const std::string& one) {
    return std::ranges::any_of(words_in(one), is_plain_word);
  });
  return {all.begin(), all.end()};
}

enum class Outcome { refused, counted, asked, silent };

// Whether a place records more than the surface rust that every line of these tests has.
bool counts(const Survey& survey) {
  const auto zone = survey.zones.find(51);
  if (zone == survey.zones.end()) return false;
  for (const Spot& spot : zone->second.found)
    if (spot.hand || spot.hole || spot.crack_mm || spot.stuffed || !spot.shapes.empty() ||
        spot.rust != Rust::surface)
      return true;
  return false;
}

// A repair is itself the record of a patch, a weld or filler.
bool tells_of_repair(std::string_view word) {
  const auto words = damage_words(word);
  return words.size() == 1 &&
         (words.front().damage == Damage::repair || words.front().damage == Damage::loose ||
          words.front().damage == Damage::filler);
}

constexpr std::string_view head =
    "survey: 1\nbody: two-door-saloon 1\ncar: {name: Wherry 1200, built: 1967}\n"
    "visit: {date: 2025-04-12}\nseen:\n  bare: 51 52\n";

Reading read_sheet(const std::string& row) {
  const auto records = csv_records("zone,station,seen,rust,note\n" + row);
  EXPECT_TRUE(records) << row;
  const FieldSheet sheet = read_field_sheet(*records, *small_plan());
  EXPECT_TRUE(sheet.problems.empty()) << row;
  Form form;
  form.car = "Wherry 1200";
  form.date = {2025, 4, 12};
  form.filled = sheet.zones;
  return read_with_small_plan(text_of(form_lines(*small_plan(), form)));
}

// Whether the survey with these lines is refused, counts the damage, or is asked about its words.
Outcome outcome(const std::string& lines, In in = In::zone) {
  const std::string zone = in == In::zone ? "zones:\n  51:\n" : "";
  const Reading reading =
      in == In::sheet ? read_sheet(lines) : read_with_small_plan(std::string(head) + zone + lines);
  if (!reading.survey) return Outcome::refused;
  if (counts(*reading.survey)) return Outcome::counted;
  for (const weighing::Advice& each : weighing::weigh(*reading.survey, {}).advice)
    if (each.kind == "said-not-recorded") return Outcome::asked;
  return Outcome::silent;
}

TEST(DamageWords, AreNeverLost) {
  int cases = 0, refused = 0, counted = 0, asked = 0;
  for (const Innocence innocence : {Innocence::never, Innocence::often})
    for (const std::string& word : words_of(innocence))
      for (const std::string& spelling : spellings(word))
        for (const Place& place : places) {
          const std::string lines = fmt::format(fmt::runtime(place.lines), spelling);
          Outcome came = outcome(lines, place.in);
          if (place.name == "a repair" && tells_of_repair(spelling)) came = Outcome::counted;
          ++cases;
          refused += came == Outcome::refused;
          asked += came == Outcome::asked;
          counted += came == Outcome::counted;
          // "holed" with a letter dropped is "hole", a word that is asked about in its own right.
          const std::vector<std::string> often = words_of(Innocence::often);
          const bool must_refuse = innocence == Innocence::never && !place.quoted &&
                                   std::ranges::find(often, spelling) == often.end();
          if (must_refuse && came != Outcome::counted) {
            EXPECT_EQ(came, Outcome::refused) << place.name << ": " << spelling;
          } else {
            EXPECT_NE(came, Outcome::silent) << place.name << ": " << spelling;
          }
          if (place.quoted) {
            EXPECT_EQ(came, Outcome::asked) << place.name << ": " << spelling;
          }
        }
  std::printf("damage words: %d cases, %d refused, %d counted, %d asked about, %d silent\n", cases,
              refused, counted, asked, cases - refused - counted - asked);
}

TEST(DamageWords, LetInnocentLinesBy) {
  constexpr std::string_view lines[] = {
      "beside the drain hole",
      "through the grommet",
      "soft sealer",
      "patch of tar",
      "under a thin wax",
      "loose clip above",
      "weld line of the works",
      "in the water trough",
      "above the steering rack",
      "one photo for both",
      "the paint holds well",
      "behind the splash plate",
      "though dry",
      "dirt in the fold",
      "old sealer lifting a little",
      "wet carpet above",
      "tar over the edges",
      "path of the brake pipe",
      "a tin of wax was used",
      "seen from the boot",
  };
  for (const std::string_view words : lines)
    EXPECT_NE(outcome(fmt::format("    found:\n      - rear end: surface, {}\n", words)),
              Outcome::refused)
        << words;
}

// What a message tells to write must be right where it tells to write it.
TEST(DamageWords, OfferCuresThatTheReaderTakes) {
  int cures = 0;
  for (const Innocence innocence : {Innocence::never, Innocence::often})
    for (const std::string& word : words_of(innocence)) {
      const auto words = damage_words(word);
      ASSERT_FALSE(words.empty()) << word;
      const DamageWord& damage = words.front();
      std::string lines = fmt::format("    found:\n      - rear end: {}\n", damage.offer);
      if (damage.of_zone) {
        const std::string list = "repairs: - ";
        lines = damage.offer.starts_with(list)
                    ? fmt::format("    repairs:\n      - {}\n", damage.offer.substr(list.size()))
                    : fmt::format("    {}\n", damage.offer);
      }
      EXPECT_NE(outcome(lines), Outcome::refused) << word << ": " << damage.offer;
      ++cures;
    }
  EXPECT_EQ(cures, 47);
}

TEST(DamageWords, OfferWhatWouldRecordThem) {
  const std::pair<std::string, std::string> cases[] = {
      {"perforated 20 mm", "hole 20"},
      {"firm gone right through", "hole 20x15"},
      {"rotten", "breaks"},
      {"three holes", "hole 20x15"},
      {"hoel 20", "hole 20"},
      {"hole20x20", "hole 20x20"},
      {"mteal .31", "metal .31"},
      {"rusted-out", "hole 20x15"},
      {"cracked 30", "crack 30"},
      {"mesh behind", "stuffed mesh"},
  };
  for (const auto& [text, offer] : cases) {
    const auto words = damage_words(text);
    const DamageWord* word = worst(words);
    ASSERT_TRUE(word) << text;
    EXPECT_EQ(word->innocence, Innocence::never) << text;
    EXPECT_EQ(word->offer, offer) << text;
  }
}

}  // namespace
}  // namespace tinworm::survey
