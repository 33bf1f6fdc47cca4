#include "metal/film.hpp"

#include <gtest/gtest.h>

namespace tinworm::metal {
namespace {

TEST(Film, WordByTheGreatestReading) {
  struct Case {
    double greatest_um;
    std::string_view is;
  };
  for (const Case& c : std::vector<Case>{{0, "factory"},
                                         {200, "factory"},
                                         {200.1, "repainted"},
                                         {500, "repainted"},
                                         {500.1, "heavy"},
                                         {1000, "heavy"},
                                         {1000.1, "filler-likely"},
                                         {5000, "filler-likely"}}) {
    EXPECT_EQ(word(film_word(c.greatest_um)), c.is) << c.greatest_um;
  }
}

TEST(Film, LimitsAreTheCallersToSet) {
  EXPECT_EQ(film_word(250, {.factory_um = 250}), FilmWord::factory);
  EXPECT_EQ(film_word(900, {.heavy_um = 800}), FilmWord::filler_likely);
}

TEST(Film, MedianIsTheMiddle) {
  struct Case {
    std::vector<double> readings;
    double median;
  };
  for (const Case& c : std::vector<Case>{
           {{140}, 140}, {{900, 140, 155}, 155}, {{140, 160}, 150}, {{1, 100, 3, 2}, 2.5}}) {
    EXPECT_EQ(median(c.readings), c.median) << testing::PrintToString(c.readings);
  }
}

// Eight panels of one car, their median films in µm, worked by hand: in order 110 120 125 130 140
// 145 150 320, median (130 + 140)/2 = 135; off by 25 15 10 5 5 10 15 185, in order 5 5 10 10 15 15
// 25 185, MAD (10 + 15)/2 = 12.5; s = 1.4826 x 12.5 = 18.5325 against 15 % of 135 = 20.25: the
// greater holds. 320: (320 - 135)/20.25 = 9.1358, odd; 110: -1.2346, not.
TEST(FilmOddity, ThePanelUnlikeTheRestOfItsCar) {
  const auto found = film_oddities(std::vector<double>{130, 110, 120, 320, 140, 125, 150, 145});
  ASSERT_EQ(found.size(), 8u);
  for (std::size_t i = 0; i < found.size(); ++i) EXPECT_EQ(found[i].odd, i == 3) << i;
  EXPECT_NEAR(found[3].score, 9.1358, 5e-5);
  EXPECT_NEAR(found[1].score, -1.2346, 5e-5);
}

// Scattered enough that MAD speaks: 80 120 160 200 240 300 900: median 200, off by 120 80 40 0 40
// 100 700, MAD 80, s = 118.608. 900: 5.9018, odd; 300: .8431.
TEST(FilmOddity, BySpreadOfTheCarItself) {
  const auto found = film_oddities(std::vector<double>{80, 120, 160, 200, 240, 300, 900});
  EXPECT_NEAR(found[6].score, 5.9018, 5e-5);
  EXPECT_TRUE(found[6].odd);
  EXPECT_NEAR(found[5].score, .8431, 5e-5);
  EXPECT_FALSE(found[5].odd);
}

// A car half repainted less one panel still shows which half: mean and deviation would not.
TEST(FilmOddity, StandsThreeRepaintedPanelsOfSeven) {
  const auto found = film_oddities(std::vector<double>{120, 125, 130, 128, 420, 450, 480});
  for (std::size_t i = 0; i < found.size(); ++i) EXPECT_EQ(found[i].odd, i >= 4) << i;
}

TEST(FilmOddity, AThinPanelIsOddToo) {
  const auto found = film_oddities(std::vector<double>{200, 205, 195, 210, 60});
  EXPECT_TRUE(found[4].odd);  // (60 - 200)/30 = -4.67: rubbed through, or stripped
  EXPECT_NEAR(found[4].score, -4.6667, 5e-5);
}

TEST(FilmOddity, EqualPanelsAreNoneAndFewSayNothing) {
  for (const FilmOddity& each : film_oddities(std::vector<double>(6, 140.0)))
    EXPECT_EQ(each.score, 0);
  // Just inside and just past 3.5 times 15 %: 140 (1 + .525) = 213.5.
  EXPECT_FALSE(film_oddities(std::vector<double>{140, 140, 140, 140, 140, 213.4})[5].odd);
  EXPECT_TRUE(film_oddities(std::vector<double>{140, 140, 140, 140, 140, 213.6})[5].odd);
  EXPECT_TRUE(film_oddities(std::vector<double>{140, 140, 140, 900}).empty());
  EXPECT_TRUE(film_oddities({}).empty());
  EXPECT_EQ(film_oddities(std::vector<double>{140, 140, 140, 900}, {.least_panels = 4}).size(), 4u);
}

}  // namespace
}  // namespace tinworm::metal
