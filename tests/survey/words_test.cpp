#include "survey/words.hpp"

#include <gtest/gtest.h>

namespace tinworm::survey {
namespace {

template <class Word>
void expect_words(std::size_t count, Word last, std::string_view last_word) {
  const auto& all = words<Word>();
  ASSERT_EQ(all.size(), count);
  EXPECT_EQ(word(last), last_word);
  EXPECT_EQ(all.back(), last_word);
  for (std::size_t i = 0; i < count; ++i) {
    const auto value = of<Word>(all[i]);
    ASSERT_TRUE(value) << all[i];
    EXPECT_EQ(static_cast<std::size_t>(*value), i);
    EXPECT_EQ(word(*value), all[i]);
  }
}

TEST(Words, StandInTheOrderOfTheirKind) {
  expect_words(12, Rust::hole, "hole");
  expect_words(3, Hand::breaks, "breaks");
  expect_words(3, Tap::crunches, "crunches");
  expect_words(3, Probe::goes_in, "goes-in");
  expect_words(3, Magnet::none, "none");
  expect_words(5, Stuffed::cement, "cement");
  expect_words(9, RepairKind::treated, "treated");
  expect_words(5, Joint::no_weld, "no-weld");
  expect_words(3, Beneath::unknown, "unknown");
  expect_words(5, Now::cracked, "cracked");
  expect_words(7, SeenWord::not_fitted, "not-fitted");
  expect_words(3, Drains::plugged, "plugged");
  expect_words(4, Inside::hidden, "hidden");
  expect_words(5, Reason::other, "other");
  expect_words(4, Use::salted, "salted");
  expect_words(6, Air::cx, "CX");
  expect_words(3, Coating::compensated, "compensated");
  expect_words(3, When::next_survey, "next-survey");
}

TEST(Words, AreExact) {
  EXPECT_FALSE(of<Rust>("Pitting"));
  EXPECT_FALSE(of<Rust>(""));
  EXPECT_FALSE(of<Rust>("pitting "));
  EXPECT_FALSE(of<Air>("c4"));
  EXPECT_FALSE(of<Probe>("goes_in"));
}

}  // namespace
}  // namespace tinworm::survey
