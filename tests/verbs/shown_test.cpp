// A file's name or an argument that holds escape sequences, line feeds, bytes that are no UTF-8 or
// marks that turn writing round works no terminal: whole messages, through the program.
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "verbs/program.hpp"

namespace tinworm::verbs {
namespace {

// In the shell's words: ESC [31m, BEL, a line feed, a bad byte, U+202E.
const std::string bad = R"sh("$(printf 'x\033[31m\007\n\377\342\200\256.yaml')")sh";
const std::string bad_shown = R"(x\x1b[31m\x07\n\xff\u202e.yaml)";

std::string renamed(const std::string& ending) {
  std::string name = bad;
  return name.replace(name.find(".yaml"), 5, ending);
}

std::string shown_as(const std::string& ending) {
  return bad_shown.substr(0, bad_shown.find(".yaml")) + ending;
}

TEST(Shown, NamesInMessages) {
  const std::string both = " --panels panels";
  const struct {
    std::string arguments, before, message;
    int status;
  } cases[] = {
      {"check " + bad + both, "true", "tinworm: " + bad_shown + ": no such file\n", 3},
      {"check y.yaml" + both, R"sh(touch "$(printf 'y\033.yaml')")sh",
       "tinworm: y.yaml: no such file (did you mean \"y\\x1b.yaml\"?)\n", 3},
      {"weigh bad.yaml -o " + bad + both, "true",
       "tinworm weigh: " + bad_shown +
           " ends as surveys and body plans do; outputs never replace one\n"
           "Give it an ending of its own (text, json or csv).\n",
       2},
      {"weigh good.yaml -o " + renamed(".json") + both, "true", "wrote " + shown_as(".json") + "\n",
       0},
      {"weigh good.yaml -o " + renamed(".odd") + both, "true",
       "tinworm weigh: the ending of \"" + shown_as(".odd") +
           "\" doesn't tell what to write\n"
           "Name a file that ends in the kind (text, json or csv), or add --as.\n",
       2},
      {"map good.yaml -o " + renamed(".svg") + both, "true", "wrote " + shown_as(".svg") + "\n", 0},
      {"listing good.yaml -o " + renamed(".svg") + both, "true", "wrote " + shown_as(".svg") + "\n",
       0},
      {"start small-body -o " + bad + both, "true",
       "wrote " + bad_shown + ": fill it in, then `tinworm check " + bad_shown + "`\n", 0},
      {"start small-body -o " + bad + both, "touch " + bad,
       "tinworm: " + bad_shown +
           ": this file is there already, and start never replaces one (give another name, or take "
           "it away yourself)\n",
       3},
      {bad, "true",
       "tinworm: there is no verb \"" + bad_shown +
           "\"\nThe verbs are bodies, start, field-sheet, check, weigh, map, compare, due, work, "
           "report, "
           "listing, "
           "schema.\n",
       2},
      {"weigh good.yaml --" + bad + both, "true",
       "tinworm weigh: there is no option --" + bad_shown + "\n", 2},
      {"weigh good.yaml --format " + bad + both, "true",
       "tinworm weigh: --format takes text, json or csv, not \"" + bad_shown + "\"\n", 2},
      {"weigh good.yaml --explain " + bad + both, "true",
       "tinworm weigh: good.yaml has no zone " + bad_shown +
           "\n\"tinworm bodies small-body\" lists them.\n",
       2},
      {"bodies " + renamed("") + both, "true",
       "tinworm bodies: there is no such body plan: \"" + shown_as("") + "\"\n", 2},
  };
  for (const auto& [arguments, before, message, status] : cases) {
    const Ended ended = Workshop().run(arguments, before);
    EXPECT_EQ(ended.status, status) << arguments;
    if (arguments.starts_with("bodies"))
      EXPECT_EQ(ended.messages.substr(0, message.size()), message);
    else
      EXPECT_EQ(ended.messages, message);
  }
}

TEST(Shown, NamesInMistakesAndResults) {
  const Workshop workshop;
  workshop.run("--version", "cp bad.yaml " + bad);
  std::string mistakes = bad_survey_problems;
  for (std::size_t at; (at = mistakes.find("bad.yaml:")) != std::string::npos;)
    mistakes.replace(at, 8, bad_shown);
  const Ended mistaken = workshop.run("check " + bad + " --panels panels");
  EXPECT_EQ(mistaken.results, mistakes);
  EXPECT_EQ(workshop.run("weigh " + bad + " --panels panels").messages, mistakes);

  workshop.run("--version", "cp good.yaml " + bad);
  for (const std::string verb : {"check", "weigh", "work"}) {
    const Ended ended = workshop.run(verb + " " + bad + " --panels panels");
    EXPECT_EQ(ended.status, 0) << ended.messages;
    EXPECT_NE(ended.results.find(bad_shown), std::string::npos) << verb << ended.results;
    for (const char* raw : {"\x1b", "\a", "\xFF", "\u202E"})
      EXPECT_EQ(ended.results.find(raw), std::string::npos) << verb;
  }
  const Ended json = workshop.run("weigh " + bad + " --panels panels --format json");
  EXPECT_EQ(nlohmann::json::parse(json.results)["file"], bad_shown);
}

TEST(Shown, TheNameOfRulesOnPaper) {
  const Workshop workshop;
  workshop.put("rules.yaml", "rules: 1\nnear-radius: 400 mm\n");
  workshop.run("--version", "cp rules.yaml " + bad);
  for (const std::string output :
       {"map good.yaml -o out.pdf", "report good.yaml --missing-photos -o out.pdf"}) {
    const Ended ended = workshop.run(output + " --panels panels --rules " + bad);
    EXPECT_EQ(ended.messages.find("should not happen"), std::string::npos) << ended.messages;
  }
  const Ended text = workshop.run("weigh good.yaml --panels panels --rules " + bad);
  EXPECT_NE(text.results.find("x\\x1b[31m\\x07\\n\\xff\\u202e.yaml"), std::string::npos)
      << text.results;
}

}  // namespace
}  // namespace tinworm::verbs
