// `check --matches`: of every kind of output, and of a survey changed since.
#include "verbs/matches.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "output/fingerprint.hpp"
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

// Made from several, it matches each of them, in any kind that carries fingerprints.
TEST(Matches, AComparisonMatchesEachOfItsSurveys) {
  const Workshop workshop;
  const std::string rest = "\ncar: {name: Wherry}\nseen: {bare: 51-56}\n";
  std::string prints;
  for (const std::string year : {"2017", "2021", "2025"}) {
    const std::string text =
        "survey: 1\nbody: two-door-saloon 1\nvisit: {date: " + year + "-04-08}" + rest;
    workshop.put(year + ".yaml", text);
    prints += " " + output::sha256(text).substr(0, 12);
  }
  for (const std::string kind : {"pdf", "svg", "png", "json", "txt"}) {
    const std::string out = "years." + kind;
    ASSERT_EQ(workshop.run("compare 2025.yaml 2017.yaml 2021.yaml -o " + out).status, 0);
    for (const std::string year : {"2017", "2021", "2025"}) {
      const Ended among = workshop.run("check " + year + ".yaml --matches " + out);
      EXPECT_EQ(among.status, 0) << kind;
      EXPECT_EQ(among.results,
                out + " was made from 3 surveys, " + year + ".yaml as it stands among them\n");
    }
    const Ended not_among = workshop.run("check good.yaml --matches " + out);
    EXPECT_EQ(not_among.status, 1) << kind;
    EXPECT_EQ(not_among.results,
              out +
                  " was not made from good.yaml as it stands: it carries the fingerprints of 3 "
                  "surveys," +
                  prints + ", the survey has " +
                  output::sha256(workshop.text("good.yaml")).substr(0, 12) + "\n");
  }
  ASSERT_EQ(workshop.run("compare 2017.yaml 2021.yaml -o years.csv").status, 0);
  EXPECT_EQ(workshop.run("check 2017.yaml --matches years.csv").results,
            "years.csv holds no fingerprint of a survey\n");
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
  const std::string all(64, 'a'), other(64, 'b'), first(12, 'a');
  const struct {
    std::string output;
    std::vector<std::string> found;
  } cases[] = {
      {"{\"sha256\": \"" + all + "\"}", {all}},
      {"{\"sha256\":\"" + all + "\"}", {all}},
      {"{\"sha256\": \"" + all + "\"}, {\"sha256\": \"" + other + "\"}", {all, other}},
      {"Survey SHA-256: " + all + "\n", {all}},
      {"Survey SHA-256: " + all + " " + other + "\n", {all, other}},
      {"SHA-256 of this: none, then SHA-256 " + all, {all}},
      {"SHA-256 " + all + " " + other + " " + first + ")", {all, other}},
      {"SHA-256 " + all + " " + all + " ", {all}},
      {"default rules, fingerprint " + first + "\n", {first}},
      {"  date  file  fingerprint\n  2017  a     " + first + "\n  2021  long\n        name\n\n  " +
           first.substr(1) + "b\n",
       {first}},
      {"  fingerprint\n  " + first, {first}},
      {"fingerprint " + first.substr(1), {}},
      {"SHA-256 " + all + "a", {}},
      {"", {}},
  };
  for (const auto& [output, found] : cases) EXPECT_EQ(fingerprints_in(output), found) << output;
  EXPECT_TRUE(match("fingerprint " + first, "o", all, "s").same);
  EXPECT_FALSE(match("fingerprint " + std::string(12, 'b'), "o", all, "s").same);
}

}  // namespace
}  // namespace tinworm::verbs
