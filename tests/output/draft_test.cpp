// Processes that are ended while they write: nothing of theirs stays behind.
#include "output/draft.hpp"

#include <signal.h>
#include <stdlib.h>
#include <sys/wait.h>
#include <unistd.h>

#include <filesystem>
#include <iterator>
#include <thread>
#include <vector>

#include <fmt/format.h>
#include <gtest/gtest.h>

#include "output/whole_file.hpp"

namespace tinworm::output {
namespace {

namespace fs = std::filesystem;

class Drafts : public testing::Test {
 protected:
  void SetUp() override {
    std::string name = (fs::temp_directory_path() / "tinworm-test-XXXXXX").string();
    ASSERT_NE(::mkdtemp(name.data()), nullptr);
    folder_ = name;
  }
  void TearDown() override { fs::remove_all(folder_); }

  int drafts() const {
    int count = 0;
    for (const auto& each : fs::directory_iterator(folder_))
      count += each.path().filename().string().starts_with(".");
    return count;
  }

  // How a process ended that writes the same few files over and over on several threads, and was
  // sent `signal` once it had a draft on the disk.
  int ended_while_writing(int signal, bool ignored) const {
    const pid_t child = ::fork();
    if (child == 0) {
      ::signal(signal, ignored ? SIG_IGN : SIG_DFL);
      write_on_and_on();
    }
    while (drafts() == 0) ::usleep(100);
    ::kill(child, signal);
    if (ignored) {
      ::usleep(20'000);
      ::kill(child, SIGTERM);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFSIGNALED(status) ? WTERMSIG(status) : -1;
  }

 private:
  [[noreturn]] void write_on_and_on() const {
    remove_drafts_with_the_program();
    std::vector<std::jthread> threads;
    const std::string bytes(100'000, 'x');
    for (int t = 0; t < 4; ++t) {
      threads.emplace_back([&, t] {
        for (int i = 0;; ++i) {
          write_whole((folder_ / fmt::format("{}-{}", t, i % 2)).string(), bytes);
          const std::string fresh = (folder_ / fmt::format("new-{}", t)).string();
          write_new(fresh, bytes);
          fs::remove(fresh);
        }
      });
    }
    threads.clear();
    ::_exit(0);
  }

  fs::path folder_;
};

TEST_F(Drafts, GoWithAProgramThatIsEnded) {
  for (int round = 0; round < 10; ++round) {
    for (const int signal : {SIGINT, SIGTERM, SIGHUP}) {
      EXPECT_EQ(ended_while_writing(signal, false), signal);
      EXPECT_EQ(drafts(), 0) << signal;
    }
  }
}

TEST_F(Drafts, ASignalThatIsIgnoredStaysSo) {
  EXPECT_EQ(ended_while_writing(SIGHUP, true), SIGTERM);
  EXPECT_EQ(drafts(), 0);
}

}  // namespace
}  // namespace tinworm::output
