#include <gtest/gtest.h>

#include "yaml/problem.hpp"

namespace tinworm::yaml {
namespace {

TEST(Place, ComesInOrderOfTheFile) {
  EXPECT_LT((Place{1, 9}), (Place{2, 1}));
  EXPECT_LT((Place{2, 1}), (Place{2, 2}));
}

}  // namespace
}  // namespace tinworm::yaml
