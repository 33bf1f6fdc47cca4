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

}  // namespace
}  // namespace tinworm::metal
