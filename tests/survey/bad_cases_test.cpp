#include <gtest/gtest.h>

#include "bad_cases.hpp"
#include "survey/small_plan.hpp"

namespace tinworm::survey {
namespace {

yaml::Problems problems_of(std::string_view source) {
  const Reading reading = read_with_small_plan(source);
  EXPECT_FALSE(reading.survey.has_value()) << "a survey with problems was read";
  return reading.problems;
}

TEST(BadFiles, OfShapeAreRefusedInThePinnedWords) {
  expect_bad_files("shape", 150, problems_of);
}

TEST(BadFiles, OfMeaningAreRefusedInThePinnedWords) {
  expect_bad_files("meaning", 105, problems_of);
}

}  // namespace
}  // namespace tinworm::survey
