// Mistakes on the command line: what is said, word for word.
#include <gtest/gtest.h>

#include "verbs/program.hpp"

namespace tinworm::verbs {
namespace {

TEST(CommandLine, SaysWhatIsWrongAndWhatWasMeant) {
  struct {
    std::string arguments, messages;
  } const cases[] = {
      {"wiegh good.yaml", "tinworm: there is no verb \"wiegh\"\nDid you mean weigh?\n"},
      {"bake good.yaml",
       "tinworm: there is no verb \"bake\"\nThe verbs are bodies, start, field-sheet, check, "
       "weigh, map, "
       "compare, due, work, report, listing, schema.\n"},
      {"--quiet weigh good.yaml",
       "tinworm: the verb comes before --quiet\nThe verbs are bodies, start, field-sheet, check, "
       "weigh, map, "
       "compare, due, work, report, listing, schema.\n"},
      {"weigh", "tinworm weigh: the survey to read is missing\ntinworm weigh SURVEY.yaml\n"},
      {"weigh good.yaml --formt json",
       "tinworm weigh: there is no option --formt\nDid you mean --format?\n"},
      {"weigh good.yaml --formt=json",
       "tinworm weigh: there is no option --formt\nDid you mean --format?\n"},
      {"weigh good.yaml --fast", "tinworm weigh: there is no option --fast\n"},
      {"weigh good.yaml -z", "tinworm weigh: there is no option -z\n"},
      {"weigh good.yaml --format jsn",
       "tinworm weigh: --format takes text, json or csv, not \"jsn\"\nDid you mean \"json\"?\n"},
      {"weigh good.yaml --format pdf",
       "tinworm weigh: weigh doesn't make pdf\nIt makes text, json or csv.\n"},
      {"weigh good.yaml --format", "tinworm weigh: --format needs a value\n"},
      {"weigh good.yaml --format --quiet", "tinworm weigh: --format needs a value\n"},
      {"weigh good.yaml -o ''", "tinworm weigh: -o needs a value\n"},
      {"weigh good.yaml --units furlong",
       "tinworm weigh: --units takes mm or inch, not \"furlong\"\n"},
      {"weigh good.yaml --units mm --units inch",
       "tinworm weigh: --units is given 2 times\nGive it once.\n"},
      {"weigh good.yaml --jobs 0",
       "tinworm weigh: --jobs takes a whole number from 1 to 256, not \"0\"\n"},
      {"weigh good.yaml --jobs 0x10",
       "tinworm weigh: --jobs takes a whole number from 1 to 256, not \"0x10\"\n"},
      {"weigh good.yaml -o -",
       "tinworm weigh: -o - doesn't tell what to write\nAdd --as text, json or csv.\n"},
      {"weigh good.yaml -o out.json --format csv",
       "tinworm weigh: --format csv and the ending of out.json disagree\nLeave one out.\n"},
      {"weigh good.yaml --format csv --as json",
       "tinworm weigh: --format csv and --as json disagree\nLeave one out.\n"},
      {"weigh good.yaml -o out.doc",
       "tinworm weigh: the ending of \"out.doc\" doesn't tell what to write\n"
       "Name a file that ends in the kind (text, json or csv), or add --as.\n"},
      {"weigh good.yaml --explain 51 --format json",
       "tinworm weigh: --explain is text; json holds every zone as it is\nLeave one out.\n"},
      {"weigh good.yaml --as csv -o good.yaml",
       "tinworm weigh: good.yaml ends as surveys and body plans do; outputs never replace one\n"
       "Give it an ending of its own (text, json or csv).\n"},
      {"map good.yaml --as pdf -o photos/sill.JPG",
       "tinworm map: photos/sill.JPG ends as photos do; outputs never replace one\n"
       "Give it an ending of its own (pdf, svg or png).\n"},
      {"work", "tinworm work: the survey to read is missing\ntinworm work SURVEY.yaml\n"},
      {"work good.yaml -o plan.png",
       "tinworm work: work doesn't make png\nIt makes text, json, csv or pdf.\n"},
      {"work good.yaml --rate mine.yaml",
       "tinworm work: there is no option --rate\nDid you mean --rates?\n"},
      {"map good.yaml",
       "tinworm map: where to draw is missing\ntinworm map good.yaml -o map.pdf\n"},
      {"map good.yaml -o out.json",
       "tinworm map: map doesn't make json\nIt makes pdf, svg or png.\n"},
      {"map good.yaml -o out.pdf --page skin",
       "tinworm map: --page is for SVG and PNG; a PDF has every sheet\nLeave it out.\n"},
      {"map good.yaml -o out.svg --page skn",
       "tinworm map: --page takes structure, skin or frame, not \"skn\"\nDid you mean skin?\n"},
      {"map good.yaml -o out.svg --width 900",
       "tinworm map: --width is for PNG; PDF and SVG have no pixels\nLeave it out.\n"},
      {"map good.yaml -o out.png --width nan",
       "tinworm map: --width takes a whole number from 400 to 10000, not \"nan\"\n"},
      {"map good.yaml ./good.yaml -o out/",
       "tinworm map: two surveys would both be written to out/good.pdf\n"
       "Give the surveys different names, or write them one at a time.\n"},
      {"map good.yaml bad.yaml -o two.pdf",
       "tinworm map: several pictures can't all go into two.pdf\nName a folder: -o pictures/\n"},
      {"map good.yaml bad.yaml --as pdf -o -",
       "tinworm map: several pictures can't all go to standard output\n"
       "Name a folder: -o pictures/\n"},
      {"schema",
       "tinworm schema: takes one kind of file, not 0\ntinworm schema survey, body or rules\n"},
      {"schema surve",
       "tinworm schema: schema takes survey, body or rules, not \"surve\"\nDid you mean survey?\n"},
      {"bodies one two", "tinworm bodies: takes one body, not 2\n"},
      {"bodies -o key.pdf",
       "tinworm bodies: a key is drawn of one body, and none is named\ntinworm bodies lists "
       "them.\n"},
      {"bodies small-body --page skin",
       "tinworm bodies: --page, --paper and --width are for pictures\nName one with -o: key.pdf, "
       "key.svg or key.png.\n"},
      {"bodies small-body --paper phone -o key.png",
       "tinworm bodies: a key is drawn on paper\n--paper takes a4, a3 or letter here.\n"},
      {"map good.yaml --paper phone -o out.pdf",
       "tinworm map: --paper phone is for SVG and PNG\nA PDF takes a4, a3 or letter.\n"},
      {"bodies small-body -o key.csv",
       "tinworm bodies: bodies doesn't make csv\nIt makes text, json, pdf, svg or png.\n"},
      {"bodies small-bdy --panels panels",
       "tinworm bodies: there is no such body plan: \"small-bdy\"\nDid you mean small-body?\n"},
      {"weigh good.yaml --panels panels --explain 99",
       "tinworm weigh: good.yaml has no zone 99\n\"tinworm bodies small-body\" lists them.\n"},
  };
  const Workshop workshop;
  for (const auto& [arguments, messages] : cases) {
    const Ended ended = workshop.run(arguments);
    EXPECT_EQ(ended.status, 2) << arguments;
    EXPECT_EQ(ended.messages, messages) << arguments;
    EXPECT_EQ(ended.results, "") << arguments;
  }
  EXPECT_FALSE(workshop.has("out")) << "refused before anything is made";
}

TEST(CommandLine, ShowsTheVerbsWhereNoneIsGiven) {
  const Workshop workshop;
  const Ended nothing = workshop.run("");
  EXPECT_EQ(nothing.status, 2);
  const Ended help = workshop.run("--help");
  EXPECT_EQ(help.status, 0);
  EXPECT_EQ(nothing.messages, "tinworm: a verb is missing\n\n" + help.results);
}

TEST(CommandLine, HelpsWithAnExampleForEveryVerb) {
  const Workshop workshop;
  for (const std::string verb :
       {"bodies", "start", "check", "weigh", "map", "work", "report", "listing", "schema"}) {
    const Ended help = workshop.run(verb + " --help");
    EXPECT_EQ(help.status, 0) << verb;
    EXPECT_EQ(help.messages, "") << verb;
    EXPECT_TRUE(help.results.starts_with("tinworm " + verb + " ")) << help.results;
    EXPECT_NE(help.results.find("\nFor example\n  tinworm " + verb), std::string::npos) << verb;
    EXPECT_EQ(workshop.run(verb + " -h --nonsense").results, help.results) << verb;
  }
}

TEST(CommandLine, TellsItsVersion) {
  const Ended ended = Workshop().run("--version");
  EXPECT_EQ(ended.status, 0);
  EXPECT_EQ(ended.results, "tinworm " TINWORM_TEST_VERSION "\n");
}

}  // namespace
}  // namespace tinworm::verbs
