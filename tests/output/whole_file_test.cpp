#include "output/whole_file.hpp"

#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <atomic>
#include <csignal>
#include <filesystem>
#include <fstream>
#include <functional>
#include <iterator>
#include <sstream>
#include <thread>
#include <vector>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "output/file_error.hpp"

namespace tinworm::output {
namespace {

namespace fs = std::filesystem;

class WholeFiles : public testing::Test {
 protected:
  void SetUp() override {
    std::string name = (fs::temp_directory_path() / "tinworm-test-XXXXXX").string();
    ASSERT_NE(::mkdtemp(name.data()), nullptr);
    folder_ = name;
  }
  void TearDown() override { fs::remove_all(folder_); }

  std::string path(const std::string& name) const { return (folder_ / name).string(); }
  std::string text(const std::string& name) const {
    std::ifstream file(path(name), std::ios::binary);
    std::ostringstream all;
    all << file.rdbuf();
    return all.str();
  }
  void put(const std::string& name, const std::string& text) const {
    std::ofstream(path(name), std::ios::binary) << text;
  }
  long files() const { return std::distance(fs::directory_iterator(folder_), {}); }

  fs::path folder_;
};

std::string refusal(const std::function<void()>& act) {
  try {
    act();
  } catch (const FileError& error) {
    return error.what();
  }
  return "done";
}

TEST_F(WholeFiles, WritesAndReplaces) {
  write_whole(path("a.txt"), "one");
  EXPECT_EQ(text("a.txt"), "one");
  write_whole(path("a.txt"), std::string("t\0o", 3));
  EXPECT_EQ(text("a.txt"), std::string("t\0o", 3));
  EXPECT_EQ(files(), 1) << "nothing left beside it";
}

TEST_F(WholeFiles, KeepsPermissionsAndGivesNewFilesTheUsualOnes) {
  put("old.txt", "old");
  ASSERT_EQ(::chmod(path("old.txt").c_str(), 0640), 0);
  write_whole(path("old.txt"), "new");
  const mode_t before = ::umask(0027);
  write_whole(path("fresh.txt"), "new");
  ::umask(before);
  struct stat status {};
  ASSERT_EQ(::stat(path("old.txt").c_str(), &status), 0);
  EXPECT_EQ(status.st_mode & 07777, 0640u);
  ASSERT_EQ(::stat(path("fresh.txt").c_str(), &status), 0);
  EXPECT_EQ(status.st_mode & 07777, 0640u);
}

// The mask is of the whole process: whoever set it to ask for it would change it for all.
TEST_F(WholeFiles, ManyThreadsAllGiveTheUsualPermissions) {
  const mode_t before = ::umask(0022);
  constexpr int threads = 8, files = 100;
  const auto name = [](int thread, int file) { return fmt::format("{}-{}", thread, file); };
  {
    std::vector<std::jthread> all;
    for (int t = 0; t < threads; ++t)
      all.emplace_back([&, t] {
        for (int i = 0; i < files; ++i) write_whole(path(name(t, i)), "x");
      });
  }
  EXPECT_EQ(::umask(before), 0022u) << "nobody set it";
  for (int t = 0; t < threads; ++t)
    for (int i = 0; i < files; ++i) {
      struct stat status {};
      ASSERT_EQ(::stat(path(name(t, i)).c_str(), &status), 0);
      EXPECT_EQ(status.st_mode & 07777, 0644u) << name(t, i);
    }
}

TEST_F(WholeFiles, ADraftOfAPrivateFileIsPrivate) {
  put("old.txt", "old");
  ASSERT_EQ(::chmod(path("old.txt").c_str(), 0600), 0);
  Draft draft(path("old.txt"), "old.txt", Draft::Open::to_its_owner);
  for (const auto& each : fs::directory_iterator(folder_))
    EXPECT_EQ(each.status().permissions(), fs::perms(0600)) << each.path();
}

TEST_F(WholeFiles, PieceByPieceIsThereOnlyOnceFinished) {
  put("a.txt", "old");
  {
    WholeFile file(path("a.txt"));
    file.add("one ");
    file.add("two");
    EXPECT_EQ(text("a.txt"), "old");
    file.finish();
    EXPECT_EQ(text("a.txt"), "one two");
  }
  { WholeFile(path("a.txt")).add("never finished"); }
  EXPECT_EQ(text("a.txt"), "one two");
  EXPECT_EQ(files(), 1) << "nothing left beside it";
}

TEST_F(WholeFiles, ANewOneNeverReplaces) {
  EXPECT_TRUE(write_new(path("a.txt"), "first"));
  EXPECT_FALSE(write_new(path("a.txt"), "second"));
  EXPECT_EQ(text("a.txt"), "first");
  fs::create_symlink("nowhere.txt", path("link.txt"));
  EXPECT_FALSE(write_new(path("link.txt"), "through")) << "a link is something";
  EXPECT_FALSE(write_new(folder_.string(), "x"));
  EXPECT_EQ(refusal([&] { write_new(path("none/a.txt"), "x"); }),
            path("none/a.txt") + ": its folder does not exist (make the folder first)");
  EXPECT_EQ(refusal([&] { write_new(path("none/"), "x"); }),
            path("none/") + ": a folder, not a file (give the name of a file)");
  EXPECT_EQ(files(), 2) << "nothing left beside them";
}

TEST_F(WholeFiles, OfManyAtOnceOneIsNew) {
  for (int round = 0; round < 50; ++round) {
    std::atomic<int> written = 0;
    std::vector<std::jthread> all;
    for (int t = 0; t < 4; ++t)
      all.emplace_back([&] { written += write_new(path(fmt::format("{}", round)), "x"); });
    all.clear();
    EXPECT_EQ(written, 1) << round;
  }
}

TEST_F(WholeFiles, FollowsLinksToWhatTheyName) {
  put("target.txt", "old");
  fs::create_symlink("target.txt", path("link.txt"));
  fs::create_symlink("link.txt", path("further.txt"));
  fs::create_symlink("not-there.txt", path("dangling.txt"));
  write_whole(path("further.txt"), "new");
  write_whole(path("dangling.txt"), "made");
  EXPECT_EQ(text("target.txt"), "new");
  EXPECT_EQ(text("not-there.txt"), "made");
  EXPECT_TRUE(fs::is_symlink(path("further.txt")));
  fs::create_symlink("round.txt", path("round.txt"));
  EXPECT_EQ(refusal([&] { write_whole(path("round.txt"), "x"); }),
            path("round.txt") + ": links that go round in a circle");
}

TEST_F(WholeFiles, RefusesWhatIsNoFile) {
  EXPECT_EQ(refusal([&] { write_whole(folder_.string(), "x"); }),
            folder_.string() + ": a folder, not a file (give the name of a file)");
  EXPECT_EQ(refusal([&] { write_whole(path("none/a.txt"), "x"); }),
            path("none/a.txt") + ": its folder does not exist (make the folder first)");
  put("file", "x");
  EXPECT_EQ(refusal([&] { write_whole(path("file/a.txt"), "x"); }),
            path("file/a.txt") + ": a part of the path is a file, not a folder");
}

TEST_F(WholeFiles, LeavesDevicesInPlace) {
  write_whole("/dev/null", "gone");
  EXPECT_TRUE(fs::is_character_file("/dev/null"));
  EXPECT_EQ(refusal([] { write_whole("/dev/full", "x"); }),
            "/dev/full: the disk is full (make room, or write elsewhere)");
}

// A limit on the size of files stands for a disk that fills up half-way.
TEST_F(WholeFiles, LeavesTheOldFileWholeWhenTheDiskFillsUp) {
  put("old.txt", "old and whole");
  rlimit before{};
  ASSERT_EQ(::getrlimit(RLIMIT_FSIZE, &before), 0);
  const rlimit small{1000, before.rlim_max};
  auto* const handler = std::signal(SIGXFSZ, SIG_IGN);
  ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &small), 0);
  const std::string said = refusal([&] { write_whole(path("old.txt"), std::string(5000, 'x')); });
  ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &before), 0);
  std::signal(SIGXFSZ, handler);
  EXPECT_EQ(said, path("old.txt") + ": larger than the system lets a file become");
  EXPECT_EQ(text("old.txt"), "old and whole");
  EXPECT_EQ(files(), 1) << "the draft is gone";
}

TEST_F(WholeFiles, ReadsAllBytes) {
  const std::string bytes = std::string(200'000, 'x') + std::string("\0\r\n", 3);
  put("a.yaml", bytes);
  put("empty.yaml", "");
  EXPECT_EQ(read_whole(path("a.yaml"), 1 << 20), bytes);
  EXPECT_EQ(read_whole(path("empty.yaml"), 1 << 20), "");
}

TEST_F(WholeFiles, SaysWhyItCannotRead) {
  put("wherry-2025.yaml", std::string(2'000'000, 'x'));
  const auto said = [](const std::string& name) {
    return refusal([&] { read_whole(name, 1 << 20); });
  };
  EXPECT_EQ(said(path("whery-2025.yaml")), path("whery-2025.yaml") +
                                               ": no such file (did you mean \"" +
                                               path("wherry-2025.yaml") + "\"?)");
  EXPECT_EQ(said(path("quite-another.txt")), path("quite-another.txt") + ": no such file");
  EXPECT_EQ(said(folder_.string()),
            folder_.string() + ": a folder, not a file (give the name of a file)");
  EXPECT_EQ(said(path("wherry-2025.yaml")),
            path("wherry-2025.yaml") + ": larger than 1 MiB (check that it is the right file)");
  EXPECT_EQ(said(path("wherry-2025.yaml/a")),
            path("wherry-2025.yaml/a") + ": a part of the path is a file, not a folder");
  EXPECT_EQ(said(""), "\"\": a file needs a name");
}

}  // namespace
}  // namespace tinworm::output
