#include "verbs/last_words.hpp"

#include <new>
#include <stdexcept>
#include <system_error>

#include <gtest/gtest.h>

namespace tinworm::verbs {
namespace {

TEST(LastWords, TellTheMachinesTroubleFromOurs) {
  EXPECT_EQ(last_words(std::bad_alloc()),
            "tinworm: there is not enough memory (close other programs; where a verb has --jobs, "
            "give --jobs 1)\n");
  EXPECT_EQ(last_words(std::system_error(EAGAIN, std::generic_category())),
            "tinworm: the system gives no more threads (close other programs; where a verb has "
            "--jobs, give --jobs 1)\n");
  EXPECT_EQ(last_words(std::logic_error("a zone without a number")),
            "tinworm: this should not happen: a zone without a number\n");
}

}  // namespace
}  // namespace tinworm::verbs
