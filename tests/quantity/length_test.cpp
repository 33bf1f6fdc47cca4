#include "quantity/length.hpp"

#include <gtest/gtest.h>

namespace tinworm::quantity {
namespace {

using Reader = tl::expected<double, Refusal> (*)(std::string_view);

tl::expected<double, Refusal> mm(std::string_view text) {
  return parse_length_mm(text, Units::mm);
}
tl::expected<double, Refusal> inch(std::string_view text) {
  return parse_length_mm(text, Units::inch);
}
tl::expected<double, Refusal> coordinate(std::string_view text) {
  return parse_coordinate_mm(text, Units::mm);
}

struct Taken {
  Reader read;
  std::string text;
  double value;
};

TEST(Length, TakesPlainDecimalsWithUnits) {
  const Taken cases[] = {
      {parse_number, "0", 0},
      {parse_number, ".81", 0.81},
      {parse_number, "5.", 5},
      {parse_number, "0.5", 0.5},
      {parse_number, "3000000000", 3e9},
      {mm, "0.82 mm", 0.82},
      {mm, "0.82mm", 0.82},
      {mm, "0.82", 0.82},
      {mm, "  0.82   mm ", 0.82},
      {inch, "1.5", 38.1},
      {inch, "1.5 mm", 1.5},
      {mm, "1.5 in", 38.1},
      {mm, "32 thou", 0.8128},
      {mm, "140 um", 0.14},
      {mm, "140 µm", 0.14},
      {mm, "140 μm", 0.14},
      {mm, "2 cm", 20},
      {mm, "1.2 m", 1200},
      {mm, "2 ft", 609.6},
      {mm, "0.82 MM", 0.82},
      {mm, "32 Thou", 0.8128},
      {mm, "1.5 IN", 38.1},
      {mm, "1.5\"", 38.1},
      {mm, "1.5 ″", 38.1},
      {mm, "3/64 in", 1.190625},
      {mm, "3/64\"", 1.190625},
      {mm, "4 1/2 in", 114.3},
      {mm, "4-1/2\"", 114.3},
      {mm, "1/128 in", 0.1984375},
      {inch, "3/64", 1.190625},
      {inch, "4 1/2", 114.3},
      {coordinate, "-28 1/2 in", -723.9},
      {coordinate, "-720", -720},
      {coordinate, "+12.5", 12.5},
      {coordinate, "-1 in", -25.4},
      {coordinate, "1150", 1150},
      {parse_film_um, "140", 140},
      {parse_film_um, "140 um", 140},
      {parse_film_um, "0.14 mm", 140},
      {parse_film_um, "5 thou", 127},
      {parse_film_um, "1/64 in", 396.875},
      {parse_area_m2, "0.31 m2", 0.31},
      {parse_area_m2, "3100 cm2", 0.31},
      {parse_area_m2, "2 ft2", 0.18580608},
      {parse_distance_km, "61200 mi", 98491.8528},
      {parse_distance_km, "61200km", 61200},
      {parse_distance_km, "61200 KM", 61200},
      {parse_share, "60 %", 0.6},
      {parse_share, "60%", 0.6},
      {parse_share, "0 %", 0},
      {parse_share, "100 %", 1},
  };
  for (const Taken& c : cases) {
    SCOPED_TRACE(c.text);
    const auto value = c.read(c.text);
    ASSERT_TRUE(value.has_value()) << value.error().what;
    EXPECT_NEAR(*value, c.value, 1e-12 * (1 + c.value * c.value));
  }
}

struct Refused {
  Reader read;
  std::string text;
  std::string what;
  std::string cure;
  int offset;
};

TEST(Length, RefusesWhatOthersTakeInSilence) {
  const std::string exponent = "a number is written out, without an exponent";
  const std::string comma = "a number has a point, never a comma";
  const std::string unsigned_ = "a number here has no sign";
  const std::string parts = "a fraction of an inch has 2, 4, 8, 16, 32, 64 or 128 parts";
  const std::string proper = "a fraction lies between 0 and 1";
  const Refused cases[] = {
      {parse_number, "", "a number is missing", "", 0},
      {parse_number, "012", "a number starts with 0 only before its point", "write 12", 0},
      {parse_number, "08", "a number starts with 0 only before its point", "write 8", 0},
      {parse_number, "00", "a number starts with 0 only before its point", "write 0", 0},
      {parse_number, "0x1F", "nothing may follow the number here", "leave out \"x1F\"", 1},
      {parse_number, "0o17", "nothing may follow the number here", "leave out \"o17\"", 1},
      {parse_number, "1e3", exponent, "", 0},
      {parse_number, "1E-3", exponent, "", 0},
      {parse_number, "1e+3", exponent, "", 0},
      {parse_number, ".inf", "\".inf\" is not a number", "", 0},
      {parse_number, "inf", "\"inf\" is not a number", "", 0},
      {parse_number, "nan", "\"nan\" is not a number", "", 0},
      {parse_number, ".nan", "\".nan\" is not a number", "", 0},
      {parse_number, ".", "\".\" is not a number", "", 0},
      {parse_number, "-1", unsigned_, "", 0},
      {parse_number, "+1", unsigned_, "", 0},
      {parse_number, "-0", unsigned_, "", 0},
      {parse_number, "1_000", "the digits of a number stand together", "leave out the separators",
       0},
      {parse_number, "1'000", "the digits of a number stand together", "leave out the separators",
       0},
      {parse_number, "1,5", comma, "write 1.5", 0},
      {parse_number, "1.2.3", "a number has one point at most", "", 0},
      {parse_number, "1 2", "nothing may follow the number here", "leave out \"2\"", 2},
      {parse_number, std::string(400, '9'), "a number of this size cannot be read", "", 0},
      {mm, "1.5 inches", "\"inches\" is no unit of length", "did you mean \"in\"?", 4},
      {mm, "1.5”", "\"”\" is no unit of length", "did you mean \"in\"?", 3},
      {mm, "3/64", "a fraction is of an inch", "write 3/64 in, or decimals", 0},
      {mm, "4 1/2", "a fraction is of an inch", "write 4 1/2 in, or decimals", 0},
      {mm, "1/2 mm", "a fraction is of an inch", "write decimals: 0.5 mm", 0},
      {inch, "1/2 cm", "a fraction is of an inch", "write decimals: 0.5 cm", 0},
      {mm, "3/46 in", parts, "if it is meant, write it in decimals: 0.06522 in", 0},
      {mm, "1/0 in", parts, "", 0},
      {mm, "1/99999999999 in", parts, "", 0},
      {mm, "5/4 in", proper, "write 1 1/4", 0},
      {mm, "1 4/4 in", proper, "", 2},
      {mm, "0/4 in", proper, "", 0},
      {mm, "03/64 in", proper, "write 3/64", 0},
      {mm, "3 /64 in", "\"/64 in\" is no unit of length", "", 2},
      {mm, "1.5 1/2 in", "two numbers where one is meant", "", 4},
      {mm, "3/64/2 in", "\"/2 in\" is no unit of length", "", 4},
      {coordinate, "-1/2", "a fraction is of an inch", "write -1/2 in, or decimals", 0},
      {parse_film_um, "1/2", "a fraction is of an inch", "write 1/2 in, or decimals", 0},
      {parse_number, "1/2", "nothing may follow the number here", "leave out \"/2\"", 1},
      {mm, "5 mil", "\"mil\" is no unit of length", "did you mean \"thou\"?", 2},
      {mm, "140 microns", "\"microns\" is no unit of length", "did you mean \"um\"?", 4},
      {mm, "5 mi", "\"mi\" is no unit of length", "", 2},
      {mm, "5 6 mm", "two numbers where one is meant", "", 2},
      {mm, "mm", "\"mm\" is not a number", "", 0},
      {mm, "0x1F", "\"x1F\" is no unit of length", "", 1},
      {mm, "-0.5 mm", unsigned_, "", 0},
      {coordinate, "- 5", "a sign stands right before its number", "", 0},
      {coordinate, "--5", unsigned_, "", 1},
      {parse_area_m2, "0.31", "an area needs its unit", "write it as 0.31 m2", 0},
      {parse_area_m2, "0.31 mm", "\"mm\" is no unit of area", "", 5},
      {parse_area_m2, "0.31 m²", "\"m²\" is no unit of area", "did you mean \"m2\"?", 5},
      {parse_distance_km, "61200", "a distance needs its unit", "write it as 61200 mi or 98500 km",
       0},
      {parse_distance_km, "61,200 mi", comma, "write 61.200, or 61200 if the comma parts thousands",
       0},
      {parse_distance_km, "61200 miles", "\"miles\" is no unit of distance", "did you mean \"mi\"?",
       6},
      {parse_distance_km, "61 200 mi", "two numbers where one is meant", "", 3},
      {parse_share, "60", "a share is written in per cent", "write 60 %", 0},
      {parse_share, "0.6", "a share is written in per cent", "write 60 %", 0},
      {parse_share, "60 m", "a share is written in per cent", "", 3},
      {parse_share, "101 %", "a share is not over 100 %", "", 0},
      {parse_share, "-5 %", unsigned_, "", 0},
  };
  for (const Refused& c : cases) {
    SCOPED_TRACE(c.text);
    const auto value = c.read(c.text);
    ASSERT_FALSE(value.has_value()) << *value;
    EXPECT_EQ(value.error().what, c.what);
    EXPECT_EQ(value.error().cure, c.cure);
    EXPECT_EQ(value.error().offset, c.offset);
  }
}

TEST(Length, WholeNumbersHaveNoFraction) {
  EXPECT_EQ(*parse_whole_number("1967"), 1967);
  EXPECT_EQ(*parse_whole_number("12.0"), 12);
  for (const char* text : {"12.5", "1000000000", "0x7AF", "1e3", ""})
    EXPECT_FALSE(parse_whole_number(text).has_value()) << text;
}

TEST(Length, ReadsALineOfReadings) {
  struct {
    std::string text;
    std::vector<double> values;
  } const cases[] = {
      {".81 .78 .84 .80", {.81, .78, .84, .80}},
      {".81 .78 .84 mm", {.81, .78, .84}},
      {".81  .78\tmm", {.81, .78}},
      {"32 31 thou", {0.8128, 0.7874}},
      {"1.02", {1.02}},
      {"3/64 1/32 in", {1.190625, 0.79375}},
      {"1 1/32 1/32\"", {26.19375, 0.79375}},
  };
  for (const auto& c : cases) {
    SCOPED_TRACE(c.text);
    const auto values = parse_lengths_mm(c.text, Units::mm);
    ASSERT_TRUE(values.has_value()) << values.error().what;
    ASSERT_EQ(values->size(), c.values.size());
    for (std::size_t i = 0; i < c.values.size(); ++i) EXPECT_NEAR((*values)[i], c.values[i], 1e-12);
  }
  EXPECT_EQ(*parse_lengths_mm("2 3", Units::inch), (std::vector<double>{50.8, 25.4 * 3}));
}

TEST(Length, RefusesABrokenLineOfReadings) {
  struct {
    std::string text, what;
    int offset;
  } const cases[] = {
      {".81 mm .78 mm", "one unit for all numbers stands at the end", 4},
      {".81, .78", "spaces stand between numbers, not commas", 3},
      {".81,.78", "spaces stand between numbers, not commas", 3},
      {".81 .78 furlong", "\"furlong\" is no unit of length", 8},
      {".81 -.78", "\"-.78\" is no unit of length", 4},
      {".81 3/64", "a fraction is of an inch", 4},
      {".81.78", "a number has one point at most", 0},
      {"", "a number is missing", 0},
      {"mm", "\"mm\" is not a number", 0},
  };
  for (const auto& c : cases) {
    SCOPED_TRACE(c.text);
    const auto values = parse_lengths_mm(c.text, Units::mm);
    ASSERT_FALSE(values.has_value());
    EXPECT_EQ(values.error().what, c.what);
    EXPECT_EQ(values.error().offset, c.offset);
  }
}

}  // namespace
}  // namespace tinworm::quantity
