#include "rates/rates.hpp"

#include <gtest/gtest.h>

#include <cctype>
#include <set>

#include <fmt/format.h>

#include "rates/reader.hpp"

namespace tinworm::rates {
namespace {

TEST(Rates, HaveAKeyBoundsAPlainDescriptionAndASource) {
  std::set<std::string> keys;
  for (const Rate& each : table()) {
    EXPECT_TRUE(keys.insert(each.key).second) << each.key;
    for (const char c : each.key) EXPECT_TRUE(std::islower(c) || c == '-') << each.key;
    EXPECT_FALSE(each.what.empty()) << each.key;
    EXPECT_FALSE(each.source.empty()) << each.key;
    EXPECT_NE(each.single == nullptr, each.range == nullptr) << each.key;
    const Range now = value(Rates{}, each);
    EXPECT_LE(each.least, now.low) << each.key;
    EXPECT_LE(now.low, now.likely) << each.key;
    EXPECT_LE(now.likely, now.high) << each.key;
    EXPECT_LE(now.high, each.most) << each.key;
  }
  for (std::size_t job = 0; job < jobs; ++job)
    EXPECT_TRUE(keys.contains(std::string(key(static_cast<Job>(job))))) << job;
}

// One rate moved moves no other: each accessor reaches a member of its own.
TEST(Rates, AreEachTheirOwn) {
  for (const Rate& each : table()) {
    Rates rates;
    if (each.single)
      each.single(rates) += 1;
    else
      each.range(rates).high += 1;
    EXPECT_EQ(changed(rates).size(), 1u) << each.key;
  }
}

// Written as they are shown, every default can be read back and changes nothing.
TEST(Rates, AreReadAsTheyAreWritten) {
  for (const Rate& each : table()) {
    std::string text = value_text(Rates{}, each);
    for (std::size_t at = 0; (at = text.find("–")) != text.npos;) text.replace(at, 3, " ");
    const std::string yaml = fmt::format("rates: 1\n{}: {}\n", each.key, text);
    const Reading reading = read_rates(yaml);
    ASSERT_TRUE(reading.file) << yaml::to_text(reading.problems, "rates.yaml", yaml);
    EXPECT_TRUE(changed(reading.file->rates).empty()) << yaml;
  }
}

// What a patch of 100 x 100 mm takes: 1.5 to 3 h flat with access to both sides, 3 to 6 h with a
// fold, an edge, a second skin (memory of the trade). Weld .4 m.
TEST(Rates, GiveThePatchOfTheTrade) {
  const Rates rates;
  EXPECT_NEAR(rates.flat_cut.low + .4 / rates.weld_speed.high, 1.5, .2);
  EXPECT_NEAR(rates.flat_cut.high + .4 / rates.weld_speed.low, 3, .5);
  EXPECT_NEAR(rates.folded_cut.low + .4 / rates.weld_speed.high, 3, .2);
  EXPECT_NEAR(rates.folded_cut.high + .4 / rates.weld_speed.low, 6, .2);
}

}  // namespace
}  // namespace tinworm::rates
