// A damaged survey is read whole or refused whole, never by halves, and never brings the reader
// down.
#include <gtest/gtest.h>

#include <algorithm>
#include <chrono>
#include <random>

#include "bad_cases.hpp"
#include "paths.hpp"
#include "survey/small_plan.hpp"

namespace tinworm::survey {
namespace {

std::string good_file(const std::string& name) {
  return file_text(std::filesystem::path(source_folder()) / "tests/cases/good" / name);
}

void expect_all_or_nothing(const std::string& source) {
  const Reading reading = read_with_small_plan(source);
  EXPECT_NE(reading.survey.has_value(), !reading.problems.empty()) << source;
  // A file that breaks off is faulted at its end, which may be the line after its last.
  const auto lines = std::count(source.begin(), source.end(), '\n') + 2;
  for (const yaml::Problem& problem : reading.problems) {
    EXPECT_GE(problem.place.line, 0) << source;
    EXPECT_LE(problem.place.line, lines) << source;
    EXPECT_FALSE(problem.what.empty()) << source;
  }
}

TEST(Mutation, CutShortAnywhere) {
  const std::string source = good_file("wherry-2025.yaml");
  for (std::size_t length = 0; length < source.size(); length += 3)
    expect_all_or_nothing(source.substr(0, length));
}

TEST(Mutation, OneCharacterChanged) {
  constexpr std::string_view characters = ",:-.0 9x%'\"[]{}#&*\n\t\xC3\x01 ab";
  std::mt19937 random(20250412);  // the raw generator's figures are the same everywhere
  for (const char* name : {"wherry-2025.yaml", "long.yaml", "inch.yaml"}) {
    const std::string source = good_file(name);
    for (int i = 0; i < 400; ++i) {
      std::string damaged = source;
      damaged[random() % damaged.size()] = characters[random() % characters.size()];
      expect_all_or_nothing(damaged);
    }
  }
}

TEST(Mutation, OneLineLost) {
  for (const char* name : {"wherry-2025.yaml", "long.yaml", "inch.yaml"}) {
    const std::string source = good_file(name);
    for (std::size_t start = 0; start < source.size();) {
      const std::size_t end = source.find('\n', start) + 1;
      expect_all_or_nothing(source.substr(0, start) + source.substr(end));
      start = end;
    }
  }
}

// As large as a file may be, in the shapes whose reading could grow with its square.
TEST(Mutation, LargeFilesAreReadInTime) {
  const std::string head = good_file("least.yaml") + "seen: {bare: 51-58}\nzones:\n  51:\n";
  const auto repeated = [](const std::string& text, std::size_t bytes) {
    std::string out;
    while (out.size() + text.size() < bytes) out += text;
    return out;
  };
  std::string spots = "    found:\n";
  for (int i = 0; i < 20'000; ++i) spots += "      - s" + std::to_string(i) + ": none, wet\n";
  const std::string sources[] = {
      head + "    found:\n      - a: pitting" + repeated(", wet", 900'000) + "\n",
      head + "    photos: " + repeated("14 ", 900'000) + "\n",
      head + "    reference: " + repeated("1.01 ", 900'000) + "\n",
      head + "    seen: part" + repeated(" 60", 900'000) + "\n",
      head + spots,
  };
  for (const std::string& source : sources) {
    const auto start = std::chrono::steady_clock::now();
    read_with_small_plan(source);
    EXPECT_LT(std::chrono::steady_clock::now() - start, std::chrono::seconds(20))
        << source.substr(head.size(), 60);
  }
}

}  // namespace
}  // namespace tinworm::survey
