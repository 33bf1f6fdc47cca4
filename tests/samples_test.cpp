// The samples and what the tool makes of them stay together: output-samples/make writes them anew.
#include <gtest/gtest.h>

#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "output/fingerprint.hpp"
#include "paths.hpp"

namespace tinworm {
namespace {

namespace fs = std::filesystem;

const fs::path folder = source_folder() + "/output-samples";

std::string read(const fs::path& path) {
  std::ifstream file(path, std::ios::binary);
  std::stringstream text;
  text << file.rdbuf();
  return text.str();
}

std::vector<fs::path> surveys() {
  std::vector<fs::path> found;
  for (const auto& entry : fs::directory_iterator(folder))
    if (entry.path().extension() == ".yaml") found.push_back(entry.path());
  return found;
}

// What the tool makes of `arguments`, as output-samples/make calls it, from the folder itself: the
// outputs name the files as given.
std::string made(const std::string& arguments, const std::string& kind) {
  // Tests run side by side, each a process of its own.
  const fs::path out =
      fs::temp_directory_path() / ("tinworm-sample-" + std::to_string(::getpid()) + "." + kind);
  const std::string command = "cd '" + folder.string() + "' && '" + program_file() + "' " +
                              arguments + " --quiet -o '" + out.string() + "'";
  EXPECT_EQ(std::system(command.c_str()), 0) << command;
  const std::string text = read(out);
  fs::remove(out);
  return text;
}

std::string weighed(const fs::path& survey, const std::string& kind) {
  return made("weigh '" + survey.filename().string() + "'", kind);
}

const std::string years =
    "wherry-years/wherry-2017.yaml wherry-years/wherry-2021.yaml "
    "wherry-2025.yaml";

TEST(Samples, AreWhatTheToolMakes) {
  ASSERT_GE(surveys().size(), 2);
  for (const fs::path& survey : surveys())
    for (const char* kind : {"txt", "json", "csv"}) {
      fs::path kept = survey;
      kept.replace_extension(kind);
      EXPECT_EQ(read(kept), weighed(survey, kind)) << kept << ": run output-samples/make";
    }
}

// Pictures differ by library version; that each says which survey it came from, as it stands,
// doesn't.
TEST(Samples, PicturesCarryTheFingerprintOfTheirSurvey) {
  for (const fs::path& survey : surveys()) {
    const std::string print = output::sha256(read(survey));
    for (const char* ending : {".pdf", "-report.pdf", "-work.pdf", "-structure.svg",
                               "-structure.png", "-skin.svg", "-skin.png"}) {
      const fs::path picture = folder / (survey.stem().string() + ending);
      EXPECT_NE(read(picture).find("; survey " + survey.filename().string() + " " + print),
                std::string::npos)
          << picture << ": run output-samples/make";
    }
  }
}

TEST(Samples, TheComparisonIsWhatTheToolMakes) {
  for (const std::string kind : {"txt", "json", "csv"})
    EXPECT_EQ(read(folder / ("wherry-years/wherry-years." + kind)), made("compare " + years, kind))
        << kind << ": run output-samples/make";
}

TEST(Samples, TheComparisonsPicturesCarryTheFingerprintsOfItsSurveys) {
  std::istringstream surveys(years);
  for (std::string survey; surveys >> survey;)
    for (const std::string kind : {"pdf", "svg", "png", "json", "txt"}) {
      const fs::path file = folder / ("wherry-years/wherry-years." + kind);
      EXPECT_NE(read(file).find(output::sha256(read(folder / survey))), std::string::npos)
          << file << " and " << survey << ": run output-samples/make";
    }
}

// Three surveys of one car are told on four pages, as anybody would want to read them.
TEST(Samples, TheComparisonHasFourPagesAtMost) {
  for (const char* paper : {"a4", "a3", "letter"}) {
    const fs::path out = fs::temp_directory_path() / "tinworm-sample-pages.pdf";
    const std::string command = "cd '" + folder.string() + "' && '" + program_file() +
                                "' compare " + years + " --quiet --paper " + paper + " -o '" +
                                out.string() + "' && pdfinfo '" + out.string() +
                                "' | grep -q '^Pages: *[2-4]$'";
    EXPECT_EQ(std::system(command.c_str()), 0) << paper;
    fs::remove(out);
  }
}

}  // namespace
}  // namespace tinworm
