// Means of covered pixels, worked by hand, and what must hold for any sizes.
#include "photos/shrinking.hpp"

#include <numeric>

#include <gtest/gtest.h>

namespace tinworm::photos {
namespace {

Pixels shrunk(const Pixels& from, int width_px, int height_px) {
  Shrinking shrinking(from.width_px, from.height_px, width_px, height_px, from.channels);
  for (int y = 0; y < from.height_px; ++y) shrinking.add(from.at(0, y));
  return std::move(shrinking).done();
}

TEST(Shrinking, IsTheMeanOfWhatAPixelCovers) {
  struct {
    Pixels from, to;
  } const cases[] = {
      {{3, 1, 1, {1, 2, 3}}, {3, 1, 1, {1, 2, 3}}},                            // as it is
      {{3, 1, 1, {0, 30, 60}}, {2, 1, 1, {10, 50}}},                           // (2*0 + 30)/3
      {{1, 3, 1, {0, 30, 60}}, {1, 2, 1, {10, 50}}},                           // and down
      {{5, 1, 1, {10, 20, 30, 40, 50}}, {3, 1, 1, {14, 30, 46}}},              // (3*10 + 2*20)/5
      {{2, 2, 1, {0, 1, 1, 1}}, {1, 1, 1, {1}}},                               // 3/4 rounds up
      {{2, 1, 3, {0, 10, 20, 100, 110, 120}}, {1, 1, 3, {50, 60, 70}}},        // each colour alone
      {{3, 3, 1, {0, 0, 0, 0, 90, 0, 0, 0, 0}}, {2, 2, 1, {10, 10, 10, 10}}},  // 90/4 over 9/4
  };
  for (const auto& each : cases) {
    EXPECT_EQ(shrunk(each.from, each.to.width_px, each.to.height_px), each.to)
        << each.from.width_px << " x " << each.from.height_px;
  }
}

TEST(Shrinking, LeavesOneColourAloneAtAnySize) {
  const Pixels from{37, 23, 1, std::vector<unsigned char>(37 * 23, 255)};
  for (int width = 1; width <= 37; ++width) {
    for (const int height : {1, 2, 7, 11, 22, 23}) {
      const Pixels to = shrunk(from, width, height);
      EXPECT_EQ(to, (Pixels{width, height, 1, std::vector<unsigned char>(width * height, 255)}));
    }
  }
}

TEST(Shrinking, KeepsTheMeanOfAll) {
  Pixels from{61, 47, 1, {}};
  for (int i = 0; i < 61 * 47; ++i) from.rows.push_back(static_cast<unsigned char>(i * 37 % 251));
  const auto mean = [](const Pixels& pixels) {
    return std::accumulate(pixels.rows.begin(), pixels.rows.end(), 0.0) /
           static_cast<double>(pixels.rows.size());
  };
  for (const int width : {60, 31, 9}) {
    EXPECT_NEAR(mean(shrunk(from, width, 13)), mean(from), 0.5) << width;  // rounding
  }
}

}  // namespace
}  // namespace tinworm::photos
