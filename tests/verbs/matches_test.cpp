// `check --matches`: of every kind of output, and of a survey changed since.
#include "verbs/matches.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "verbs/program.hpp"

namespace tinworm::verbs {
namespace {

using testing::HasSubstr;

TEST(Matches, EveryOutputThatCarriesAFingerprint) {
  const Workshop workshop;
  for (const std::string kind : {"pdf", "svg", "png"})
    ASSERT_EQ(workshop.run("map good.yaml --panels panels -o out." + kind).status, 0);
  for (const std::string kind : {"json", "txt"})
    ASSERT_EQ(workshop.run("weigh good.yaml --panels panels -o out." + kind).status, 0);
  for (const std::string kind : {"pdf", "svg", "png", "json", "txt"}) {
    const Ended same = workshop.run("check good.yaml --panels panels --matches out." + kind);
    EXPECT_EQ(same.status, 0) << kind;
    EXPECT_EQ(same.results, "out." + kind + " was made from good.yaml as it stands\n");
  }
  workshop.put("good.yaml", workshop.text("good.yaml") + "# a word more\n");
  for (const std::string kind : {"pdf", "svg", "png", "json", "txt"}) {
    const Ended changed = workshop.run("check good.yaml --panels panels --matches out." + kind);
    EXPECT_EQ(changed.status, 1) << kind;
    EXPECT_THAT(changed.results, HasSubstr("out." + kind +
                                           " was not made from good.yaml as it stands: it carries "
                                           "the fingerprint "));
  }
}

TEST(Matches, TellsWhatCarriesNone) {
  const Workshop workshop;
  workshop.put("other.txt", "SHA-256 of nothing; fingerprint of nobody\n");
  const Ended ended = workshop.run("check good.yaml --panels panels --matches other.txt");
  EXPECT_EQ(ended.status, 1);
  EXPECT_EQ(ended.results, "other.txt holds no fingerprint of a survey\n");
  EXPECT_EQ(workshop.run("check good.yaml --panels panels --matches none.pdf").status, 3);
  const Ended many = workshop.run("check good.yaml bad.yaml --panels panels --matches other.txt");
  EXPECT_EQ(many.status, 2);
  EXPECT_EQ(many.messages,
            "tinworm check: --matches holds one output against one survey\nName one survey.\n");
}

TEST(Matches, ReadsTheFingerprintAsItIsWritten) {
  const std::string all(64, 'a'), first(12, 'a');
  const struct {
    std::string output;
    std::optional<std::string> found;
  } cases[] = {
      {"{\"sha256\": \"" + all + "\"}", all},
      {"{\"sha256\":\"" + all + "\"}", all},
      {"Survey SHA-256: " + all + "\n", all},
      {"SHA-256 of this: none, then SHA-256 " + all, all},
      {"default rules, fingerprint " + first + "\n", first},
      {"fingerprint " + first.substr(1), std::nullopt},
      {"SHA-256 " + all + "a", std::nullopt},
      {"", std::nullopt},
  };
  for (const auto& [output, found] : cases) EXPECT_EQ(fingerprint_in(output), found) << output;
  EXPECT_TRUE(match("fingerprint " + first, "o", all, "s").same);
  EXPECT_FALSE(match("fingerprint " + std::string(12, 'b'), "o", all, "s").same);
}

}  // namespace
}  // namespace tinworm::verbs
