// Walks a folder of bad files: beside each NAME.yaml stands NAME.txt, the exact text a user sees.
// After a wanted change of wording: TINWORM_APPROVE=1 tinworm_tests --gtest_filter='*BadFiles*',
// then read the difference in version control before committing it.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <functional>
#include <iterator>
#include <string>
#include <string_view>
#include <vector>

#include "paths.hpp"
#include "yaml/problem.hpp"

namespace tinworm {

inline std::string file_text(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  EXPECT_TRUE(file.is_open()) << path;
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

using FindProblems = std::function<yaml::Problems(std::string_view yaml)>;

// `folder` under tests/cases/bad; at least `least` cases must be there.
inline void expect_bad_files(std::string_view folder, std::size_t least,
                             const FindProblems& find_problems) {
  namespace fs = std::filesystem;
  std::vector<fs::path> files;
  for (const auto& entry :
       fs::directory_iterator(fs::path(source_folder()) / "tests/cases/bad" / folder))
    if (entry.path().extension() == ".yaml") files.push_back(entry.path());
  std::sort(files.begin(), files.end());
  EXPECT_GE(files.size(), least);
  for (const fs::path& file : files) {
    SCOPED_TRACE(file.filename().string());
    const std::string source = file_text(file);
    const yaml::Problems problems = find_problems(source);
    EXPECT_FALSE(problems.empty());
    const std::string text = yaml::to_text(problems, file.filename().string(), source);
    const fs::path golden = fs::path(file).replace_extension(".txt");
    if (std::getenv("TINWORM_APPROVE")) std::ofstream(golden, std::ios::binary) << text;
    EXPECT_EQ(text, file_text(golden));
  }
}

}  // namespace tinworm
