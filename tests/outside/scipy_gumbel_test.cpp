// Our Gumbel fit against SciPy's, which shares nothing with it. Needs Debian's python3-scipy.
#include <array>
#include <cstdio>
#include <memory>
#include <sstream>

#include <fmt/core.h>
#include <gtest/gtest.h>

#include "metal/pits.hpp"
#include "outside/record.hpp"

namespace tinworm::outside {
namespace {

// What a command writes to its standard output; fails the test where its status isn't 0.
std::string output_of(const std::string& command) {
  std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(command.c_str(), "r"), [](FILE*) { return 0; });
  std::string text;
  std::array<char, 4096> part;
  while (const std::size_t read = fread(part.data(), 1, part.size(), pipe.get()))
    text.append(part.data(), read);
  EXPECT_EQ(pclose(pipe.release()), 0) << command << ": is python3-scipy installed?";
  return text;
}

std::vector<double> figures(const std::string& text) {
  std::istringstream in(text);
  std::vector<double> all;
  for (double x = 0; in >> x;) all.push_back(x);
  return all;
}

TEST(ScipyGumbel, SameFit) {
  std::istringstream lines(
      output_of("/usr/bin/python3 " TINWORM_SOURCE_DIR "/tests/outside/scipy_gumbel.py"));
  int sets = 0;
  for (std::string values, theirs; std::getline(lines, values, ';') && std::getline(lines, theirs);
       ++sets) {
    const auto maxima = figures(values), published = figures(theirs);
    ASSERT_EQ(published.size(), 4u) << theirs;
    const auto fit = metal::fit_gumbel(maxima);
    ASSERT_TRUE(fit);
    const std::string of = fmt::format(" of {} maxima", maxima.size());
    const auto expect = [&](const char* what, double theirs_is, double ours, double tolerance) {
      expect_published("SciPy, stats.gumbel_r by likelihood", what + of, theirs_is, ours,
                       tolerance);
    };
    // A simplex on a flat top: place to 1e-7, height to 1e-10.
    expect("location", published[0], fit->location_mm, 1e-7);
    expect("scale", published[1], fit->scale_mm, 1e-7);
    expect("log-likelihood", published[2], metal::log_likelihood(*fit, maxima), 1e-10);
    expect("50-fold level", published[3], metal::return_level_mm(*fit, 50), 5e-7);
  }
  EXPECT_EQ(sets, 6);
}

}  // namespace
}  // namespace tinworm::outside
