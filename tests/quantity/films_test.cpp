#include <gtest/gtest.h>

#include "quantity/length.hpp"

namespace tinworm::quantity {
namespace {

TEST(Films, AreReadingsRangesOrOffTheScale) {
  struct {
    std::string text;
    Films films;
  } const cases[] = {
      {"140 155 900 um", {{140, 155, 900}, {}}},
      {"140 155 900", {{140, 155, 900}, {}}},
      {"900-1600", {{900, 1600}, {}}},
      {"900–1600", {{900, 1600}, {}}},
      {"900 - 1600 um", {{900, 1600}, {}}},
      {"140 900-1600 150", {{140, 900, 1600, 150}, {}}},
      {"1-2 mm", {{1000, 2000}, {}}},
      {"over 2000", {{2000}, 2000}},
      {"Over 2000 um", {{2000}, 2000}},
      {">2000", {{2000}, 2000}},
      {"> 2000", {{2000}, 2000}},
      {"2000+", {{2000}, 2000}},
      {"2000+ um", {{2000}, 2000}},
      {"600-2000+", {{600, 2000}, 2000}},
      {"900 over 2000", {{900, 2000}, 2000}},
      {"2000+ 150", {{2000, 150}, 2000}},
      {"over 2 mm", {{2000}, 2000}},
  };
  for (const auto& c : cases) {
    SCOPED_TRACE(c.text);
    const auto films = parse_films_um(c.text);
    ASSERT_TRUE(films.has_value()) << films.error().what;
    EXPECT_EQ(*films, c.films);
  }
}

TEST(Films, AreRefusedWhereTheyAreBroken) {
  struct {
    std::string text, what, cure;
    int offset;
  } const cases[] = {
      {"1600-900", "a range goes from the thinner film to the thicker", "write 900-1600", 0},
      {"900-900", "a range goes from the thinner film to the thicker", "write 900", 0},
      {"900-", "a number is missing", "", 4},
      {"over", "a number is missing", "", 4},
      {"over heavy", "\"heavy\" is not a number", "", 5},
      {">", "a number is missing", "", 1},
      {"over 900-1600", "\"-1600\" is no unit of length", "", 8},
      {"900-1600-2000", "\"-2000\" is no unit of length", "", 8},
      {"-1600", "a number here has no sign", "", 0},
      {"+2000", "a number here has no sign", "", 0},
      {"140, 155", "spaces stand between numbers, not commas", "", 3},
      {"under 50", "\"under 50\" is not a number", "", 0},
      {"140 mm 155", "one unit for all numbers stands at the end", "", 4},
      {"", "a number is missing", "", 0},
  };
  for (const auto& c : cases) {
    SCOPED_TRACE(c.text);
    const auto films = parse_films_um(c.text);
    ASSERT_FALSE(films.has_value());
    EXPECT_EQ(films.error().what, c.what);
    EXPECT_EQ(films.error().cure, c.cure);
    EXPECT_EQ(films.error().offset, c.offset);
  }
}

}  // namespace
}  // namespace tinworm::quantity
