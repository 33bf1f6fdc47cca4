// The rooms keep to themselves: who may include what, and how large a file may grow.
#include <filesystem>
#include <fstream>
#include <functional>
#include <iterator>
#include <regex>
#include <set>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "paths.hpp"

namespace tinworm {
namespace {

namespace fs = std::filesystem;

const fs::path top = source_folder();

bool is_source(const fs::path& path) {
  return path.extension() == ".cpp" || path.extension() == ".hpp";
}

void each_line(const fs::path& folder,
               const std::function<void(const fs::path&, int, const std::string&)>& look) {
  for (const fs::directory_entry& entry : fs::recursive_directory_iterator(folder)) {
    if (!entry.is_regular_file() || !is_source(entry.path())) continue;
    std::ifstream file(entry.path());
    std::string line;
    for (int number = 1; std::getline(file, line); ++number) {
      look(fs::relative(entry.path(), top), number, line);
    }
  }
}

TEST(Rooms, PureOnesTouchNothingOutside) {
  const std::regex outside(
      R"(#include *[<"](yaml-cpp|yaml\.h|cairo|pango|png\.h|iostream|fstream|filesystem|cstdio|stdio|unistd|fcntl|sys/))"
      R"(|(system|steady|high_resolution)_clock|\bgetenv\b|\btime\(NULL|\btime\(nullptr)");
  int files = 0;
  for (const char* room : {"quantity", "geometry", "metal", "boxes", "weighing", "history", "work",
                           "scene", "documents", "rules", "rates", "survey", "body", "schema"}) {
    if (!fs::exists(top / "src" / room)) continue;
    ++files;
    each_line(top / "src" / room, [&](const fs::path& path, int number, const std::string& line) {
      EXPECT_FALSE(std::regex_search(line, outside)) << path << ":" << number << ": " << line;
    });
  }
  EXPECT_GE(files, 6) << "the rooms were not found";
}

TEST(Rooms, HoldTheLibrariesThatAreTheirsAlone) {
  struct {
    std::regex library;
    std::set<std::string> rooms;
  } const theirs[] = {
      {std::regex(R"(#include *[<"](yaml-cpp/|yaml\.h))"), {"yaml"}},
      {std::regex(R"(#include *[<"](cairo|pango|fontconfig|hb|png\.h))"), {"painting"}},
      {std::regex(R"(#include *[<"](jpeglib|jerror|turbojpeg|libexif/))"), {"photos"}},
      {std::regex(R"(#include *[<"](geos_c|boost/geometry))"), {"geometry"}},
      {std::regex(R"(#include *[<"]openssl/)"), {"output"}},
      {std::regex(R"(#include *[<"]qpdf/)"), {"attachments"}},
      {std::regex(R"(#include *[<"]CLI/)"), {"verbs"}},
  };
  std::set<std::string> users_of_command_line;
  each_line(top / "src", [&](const fs::path& path, int number, const std::string& line) {
    const std::string room = std::next(path.begin())->string();
    for (const auto& [library, rooms] : theirs) {
      if (!std::regex_search(line, library)) continue;
      EXPECT_TRUE(rooms.contains(room)) << path << ":" << number << ": " << line;
      if (rooms.contains("verbs")) users_of_command_line.insert(path.string());
    }
  });
  EXPECT_EQ(users_of_command_line.size(), 1u) << "it takes seconds to compile: one file only";
}

// A constant set up as the program starts is nought to those set up before it: which ones, the
// linker decides. `-Wglobal-constructors` tells more exactly where a compiler has it.
TEST(Rooms, DrawingOnesSetUpNothingAsTheProgramStarts) {
  const std::regex set_up(R"(^(inline |static |extern )*const [^()]*([{=]|;$))");
  for (const char* room : {"scene", "documents"}) {
    each_line(top / "src" / room, [&](const fs::path& path, int number, const std::string& line) {
      EXPECT_FALSE(std::regex_search(line, set_up)) << path << ":" << number << ": " << line;
    });
  }
}

// A kept reference to a function handed in, which may be a temporary, would outlive it.
TEST(Rooms, KeepNoReferenceToAMeasure) {
  const std::regex kept(R"(^ *(const )?(scene::)?Measure& *\w+;)");
  each_line(top / "src", [&](const fs::path& path, int number, const std::string& line) {
    EXPECT_FALSE(std::regex_search(line, kept)) << path << ":" << number << ": " << line;
  });
}

// Where `fmt::join` of a range is since fmt 11; fmt 9 has part of it in fmt/format.h.
TEST(Rooms, IncludeWhereJoinIs) {
  const std::regex join(R"(fmt::join\()");
  std::set<fs::path> joining, including;
  for (const char* folder : {"src", "tests"}) {
    each_line(top / folder, [&](const fs::path& path, int, const std::string& line) {
      if (std::regex_search(line, join)) joining.insert(path);
      if (line == "#include <fmt/ranges.h>") including.insert(path);
    });
  }
  EXPECT_GE(joining.size(), 20u);
  for (const fs::path& path : joining) EXPECT_TRUE(including.contains(path)) << path;
}

TEST(Rooms, HaveNoFileOver500Lines) {
  std::set<fs::path> seen;
  for (const char* folder : {"src", "tests"}) {
    each_line(top / folder, [&](const fs::path& path, int number, const std::string&) {
      if (number > 500 && seen.insert(path).second) ADD_FAILURE() << path;
    });
  }
}

TEST(Rooms, AreNamedAfterNouns) {
  const std::regex nothing(R"((^|[/_])(utils?|helpers?|common|misc|managers?)([/_.]|$))");
  for (const fs::directory_entry& entry : fs::recursive_directory_iterator(top / "src")) {
    const std::string name = fs::relative(entry.path(), top).string();
    EXPECT_FALSE(std::regex_search(name, nothing)) << name;
  }
}

}  // namespace
}  // namespace tinworm
