#include "output/descriptor.hpp"

#include <fcntl.h>
#include <unistd.h>

#include <csignal>

#include <gtest/gtest.h>

#include "output/file_error.hpp"

namespace tinworm::output {
namespace {

TEST(WriteAll, TellsWhenTheReaderHasGone) {
  int ends[2];
  ASSERT_EQ(::pipe(ends), 0);
  ::close(ends[0]);
  auto* const handler = std::signal(SIGPIPE, SIG_IGN);
  try {
    write_all(ends[1], "x", "standard output");
    ADD_FAILURE() << "written to nobody";
  } catch (const FileError& error) {
    EXPECT_STREQ(error.what(), "standard output: whoever was reading has gone away");
  }
  std::signal(SIGPIPE, handler);
  ::close(ends[1]);
}

TEST(Descriptor, ClosesOnce) {
  Descriptor file(::open("/dev/null", O_WRONLY));
  ASSERT_TRUE(file.open());
  EXPECT_EQ(file.close(), 0);
  EXPECT_FALSE(file.open());
  EXPECT_EQ(file.close(), 0);
}

}  // namespace
}  // namespace tinworm::output
