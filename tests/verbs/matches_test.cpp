// `check --matches`: every output made again, forged, changed, and made of what isn't at hand.
#include "verbs/matches.hpp"

#include <filesystem>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "output/fingerprint.hpp"
#include "photos/made_jpeg.hpp"
#include "verbs/program.hpp"

namespace tinworm::verbs {
namespace {

namespace fs = std::filesystem;

using testing::HasSubstr;
using testing::StartsWith;

// A car, another one, and what may be made of them.
class Matches : public testing::Test {
 protected:
  void SetUp() override {
    workshop.put("rules.yaml", "rules: 1\nnear-radius: 400 mm\n");
    workshop.put("rates.yaml", "rates: 1\nhour: 99\n");
    std::string other = workshop.text("good.yaml");
    workshop.put("other.yaml", other.replace(other.find("1967"), 4, "1968"));
    for (const std::string year : {"2017", "2021", "2025"})
      workshop.put(year + ".yaml", "survey: 1\nbody: two-door-saloon 1\nvisit: {date: " + year +
                                       "-04-08}\ncar: {name: Wherry}\nseen: {bare: 51-56}\n");
  }

  void make(const std::string& arguments) const {
    const Ended ended = workshop.run(arguments + " --panels panels");
    ASSERT_EQ(ended.status, 0) << arguments << ": " << ended.messages;
  }
  Ended check(const std::string& survey, const std::string& output,
              const std::string& more = "--panels panels") const {
    return workshop.run("check " + survey + " --matches " + output + " " + more);
  }
  std::string print(const std::string& file) const { return output::sha256(workshop.text(file)); }
  // One occurrence in a file replaced.
  void edit(const std::string& file, const std::string& from, const std::string& to,
            const std::string& as) const {
    std::string text = workshop.text(file);
    const std::size_t at = text.find(from);
    ASSERT_NE(at, text.npos) << file << " lacks " << from;
    workshop.put(as, text.replace(at, from.size(), to));
  }

  Workshop workshop;
};

struct Made {
  std::string command;  // without -o
  std::string output, record;
};

const std::vector<Made> all_made = {
    {"map good.yaml", "map.pdf", "map --as=pdf --paper=a4"},
    {"map good.yaml --private --circles --paper a3", "private.pdf",
     "map --as=pdf --paper=a3 --private --circles"},
    {"map good.yaml --page skin", "map.svg", "map --as=svg --page=skin --paper=a4"},
    {"map good.yaml --paper phone", "map.png",
     "map --as=png --page=structure --paper=phone --width=1080"},
    {"map good.yaml --width 700 --rules rules.yaml", "small.png",
     "map --as=png --page=structure --paper=a4 --width=700"},
    {"listing good.yaml", "listing.pdf", "listing --as=pdf --paper=a4"},
    {"listing good.yaml --rules rules.yaml", "listing.svg",
     "listing --as=svg --page=structure --paper=a4"},
    {"report good.yaml --units inch --rates rates.yaml", "report.pdf",
     "report --as=pdf --units=inch --paper=a4"},
    {"work good.yaml", "work.txt", "work --as=text --units=mm"},
    {"work good.yaml --rates rates.yaml", "work.json", "work --as=json"},
    {"work good.yaml --paper letter", "work.pdf", "work --as=pdf --units=mm --paper=letter"},
    {"weigh good.yaml", "weigh.txt", "weigh --as=text --units=mm"},
    {"weigh good.yaml --explain 51 --units inch", "explain.txt",
     "weigh --as=text --units=inch --explain=51"},
    {"weigh good.yaml --rules rules.yaml", "weigh.json", "weigh --as=json"},
};

TEST_F(Matches, EveryOutputIsMadeAgainFromItsRecord) {
  for (const Made& each : all_made) {
    make(each.command + " -o " + each.output);
    // In a listing rules have no name to be found by.
    const bool nameless = each.output == "listing.svg";
    const std::string more = nameless ? "--panels panels --rules rules.yaml" : "--panels panels";
    const Ended same = check("good.yaml", each.output, more);
    EXPECT_EQ(same.results, each.output + ": identical. \"tinworm " + each.record +
                                "\" makes the same of good.yaml as it stands, byte for byte.\n");
    EXPECT_EQ(same.messages, "") << each.output;
    EXPECT_EQ(same.status, 0) << each.output;
    const Ended of_another = check("other.yaml", each.output);
    EXPECT_EQ(of_another.status, 1) << each.output;
    EXPECT_THAT(of_another.results, StartsWith(each.output + ": not from it. It was made of "));
  }
}

TEST_F(Matches, ASurveyChangedSinceIsNotTheOneItWasMadeOf) {
  make("map good.yaml -o map.pdf");
  make("listing good.yaml -o listing.pdf");
  const std::string before = print("good.yaml").substr(0, 12);
  workshop.put("good.yaml", workshop.text("good.yaml") + "# a word more\n");
  const std::string now = print("good.yaml").substr(0, 12);
  EXPECT_EQ(check("good.yaml", "map.pdf").results,
            "map.pdf: not from it. It was made of good.yaml (survey, fingerprint " + before +
                "); good.yaml as it stands has the fingerprint " + now +
                ". The survey was changed since, or is another.\n");
  EXPECT_EQ(check("good.yaml", "listing.pdf").results,
            "listing.pdf: not from it. It was made of the survey of fingerprint " + before +
                "; good.yaml as it stands has the fingerprint " + now + ".\n");
}

// Digits prove nothing: another car's map that names this survey, in a comment, in its record, or
// as the name of its car.
TEST_F(Matches, WhatOnlyNamesTheSurveyDiffers) {
  make("map other.yaml -o other.pdf");
  make("map good.yaml -o good.svg");
  make("weigh other.yaml -o other.json");
  const std::string good = print("good.yaml"), other = print("other.yaml");
  const std::string said = ": names this survey but differs. It was changed after it was made, ";

  workshop.put("comment.pdf", workshop.text("other.pdf") + "%SHA-256 " + good + "\n");
  EXPECT_THAT(check("good.yaml", "comment.pdf").results, StartsWith("comment.pdf: not from it. "));
  EXPECT_EQ(check("other.yaml", "comment.pdf").results,
            "comment.pdf: names this survey but differs. 74 bytes were added at its end.\n");

  edit("other.pdf", "survey other.yaml " + other, "survey good.yaml " + good, "forged.pdf");
  const Ended forged = check("good.yaml", "forged.pdf");
  EXPECT_THAT(forged.results, StartsWith("forged.pdf" + said + "first at byte "));
  EXPECT_EQ(forged.status, 1);

  const std::string drawn = workshop.text("good.svg");
  workshop.put("empty.svg", drawn.substr(0, drawn.find("</desc>")) + "</desc>\n</svg>\n");
  EXPECT_THAT(check("good.yaml", "empty.svg").results,
              StartsWith("empty.svg" + said + "first in line "));
  workshop.put("short.svg", drawn.substr(0, drawn.size() - 7));
  EXPECT_EQ(check("good.yaml", "short.svg").results,
            "short.svg: names this survey but differs. 7 bytes are missing at its end.\n");

  edit("other.json", "\"verdict\"", "\"Verdict\"", "edited.json");
  EXPECT_THAT(check("other.yaml", "edited.json").results,
              StartsWith("edited.json" + said + "first in line "));
}

// Whatever a survey says: the true record is still found, the false one fails.
TEST_F(Matches, ASurveyThatHoldsARecordOrDigitsIsNoOther) {
  make("weigh 2025.yaml -o true.json");
  const std::string json = workshop.text("true.json");
  const std::size_t from = json.find("[tinworm ");
  ASSERT_NE(from, json.npos);
  const std::string record = json.substr(from, json.find(']', from) + 1 - from);
  workshop.put("posing.yaml",
               workshop.text("2025.yaml") + "also: [{what: brakes, say: \"" + record + "\"}]\n");
  make("weigh posing.yaml -o posing.json");
  ASSERT_THAT(workshop.text("posing.json"), HasSubstr(record));
  EXPECT_THAT(check("posing.yaml", "posing.json").results, StartsWith("posing.json: identical. "));
  EXPECT_THAT(check("2025.yaml", "posing.json").results,
              StartsWith("posing.json: names this survey but differs. "));
  edit("good.yaml", "Wherry 1200", "\"SHA-256 " + print("good.yaml") + "\"", "digits.yaml");
  make("map digits.yaml -o digits.svg");
  EXPECT_THAT(check("good.yaml", "digits.svg").results, StartsWith("digits.svg: not from it. "));
  edit("good.yaml", "Wherry 1200", "fingerprint " + print("good.yaml").substr(0, 12), "first.yaml");
  make("weigh first.yaml -o first.txt");
  EXPECT_THAT(check("good.yaml", "first.txt").results, StartsWith("first.txt: not from it. "));
}

TEST_F(Matches, OtherRulesAndRatesAreNamed) {
  make("weigh good.yaml -o plain.txt");
  make("report good.yaml --rules rules.yaml --rates rates.yaml -o report.pdf");
  const std::string rules = "rules.yaml (rules, fingerprint " + print("rules.yaml").substr(0, 12);
  EXPECT_EQ(check("good.yaml", "plain.txt", "--panels panels --rules rules.yaml").results,
            "plain.txt: names this survey but differs. It was made by other rules: by the "
            "defaults, not by " +
                rules + ").\n");
  workshop.put("later.yaml", "rates: 1\nhour: 98\n");
  EXPECT_THAT(check("good.yaml", "report.pdf", "--panels panels --rates later.yaml").results,
              StartsWith("report.pdf: names this survey but differs. It was made by other rates: "
                         "by rates.yaml ("));
  workshop.put("rules.yaml", "rules: 1\nnear-radius: 350 mm\n");
  fs::remove(workshop.path("rates.yaml"));
  const Ended missing = check("good.yaml", "report.pdf");
  EXPECT_EQ(missing.results, "report.pdf: can't tell. Not at hand: " + rules +
                                 "), rates.yaml (rates, fingerprint " +
                                 output::sha256("rates: 1\nhour: 99\n").substr(0, 12) +
                                 "). Put it beside the survey, or name it.\n");
  EXPECT_EQ(missing.status, 1);
  // A file that changes nothing is no input.
  workshop.put("same.yaml", "rules: 1\n");
  EXPECT_THAT(check("good.yaml", "plain.txt", "--panels panels --rules same.yaml").results,
              StartsWith("plain.txt: identical. "));
}

TEST_F(Matches, AComparisonIsMadeAgainFromAllItsSurveys) {
  for (const std::string kind : {"pdf", "svg", "png", "json", "txt"}) {
    const std::string out = "years." + kind;
    make("compare 2025.yaml 2017.yaml 2021.yaml -o " + out);
    for (const std::string year : {"2017", "2021", "2025"})
      EXPECT_THAT(check(year + ".yaml", out, "").results, StartsWith(out + ": identical. "));
    EXPECT_THAT(check("good.yaml", out).results,
                HasSubstr("It was made of 2017.yaml (survey, fingerprint " +
                          print("2017.yaml").substr(0, 12) + "), 2021.yaml (survey, "));
  }
  const std::string gone = print("2021.yaml").substr(0, 12);
  fs::create_directories(workshop.path("away"));
  fs::rename(workshop.path("2021.yaml"), workshop.path("away/2021.yaml"));
  EXPECT_EQ(check("2017.yaml", "years.pdf", "").results,
            "years.pdf: can't tell. Not at hand: 2021.yaml (survey, fingerprint " + gone +
                "). Put it beside the survey, or name it.\n");
  fs::rename(workshop.path("years.pdf"), workshop.path("away/years.pdf"));
  EXPECT_THAT(check("2017.yaml", "away/years.pdf", "").results,
              StartsWith("away/years.pdf: identical. "));
}

TEST_F(Matches, WhatIsNotAtHandIsNamed) {
  make("map good.yaml -o map.pdf");
  const Ended no_plan = check("good.yaml", "map.pdf", "");
  EXPECT_EQ(no_plan.results, "map.pdf: can't tell. It can't be made again:\n");
  EXPECT_THAT(no_plan.messages, HasSubstr("good.yaml:2:7: there is no such body plan"));
  std::string plan = workshop.text("panels/small-body.yaml");
  workshop.put("panels/small-body.yaml", plan + "# a word more\n");
  EXPECT_EQ(check("good.yaml", "map.pdf").results,
            "map.pdf: can't tell. Not at hand: the plan of fingerprint " +
                output::sha256(plan).substr(0, 12) + " that it was made with.\n");
  workshop.put("panels/small-body.yaml", plan);
  fs::rename(workshop.path("good.yaml"), workshop.path("good (1).yaml"));
  make("listing 'good (1).yaml' -o listing.pdf");
  EXPECT_EQ(check("'good (1).yaml'", "map.pdf").results,
            "map.pdf: can't tell. The survey was called good.yaml when it was made: give it that "
            "name.\n");
  fs::rename(workshop.path("good (1).yaml"), workshop.path("sold.yaml"));
  EXPECT_THAT(check("sold.yaml", "listing.pdf").results, StartsWith("listing.pdf: identical. "));
}

TEST_F(Matches, AReportRestsOnItsPhotos) {
  const std::string jpeg = photos::fixture::made_jpeg(photos::fixture::quarters(64, 48), {});
  const std::string darker = photos::fixture::made_jpeg(photos::fixture::quarters(48, 64), {});
  std::string survey = workshop.text("good.yaml");
  survey.insert(survey.find("seen:"), "photos: {name: \"{}.jpg\"}\n");
  survey.insert(survey.find(", 60x40"), ", photo 1 2");
  workshop.put("shown.yaml", survey);
  workshop.put("1.jpg", jpeg);
  make("report shown.yaml --missing-photos -o gap.pdf");
  workshop.put("2.jpg", jpeg);
  make("report shown.yaml --missing-photos -o report.pdf");
  EXPECT_THAT(check("shown.yaml", "report.pdf").results,
              StartsWith("report.pdf: identical. \"tinworm report --as=pdf --units=mm "
                         "--paper=a4\" makes"));
  EXPECT_THAT(check("shown.yaml", "gap.pdf").results,
              StartsWith("gap.pdf: can't tell. Not at hand: the photos of fingerprint "));
  workshop.put("2.jpg", darker);
  EXPECT_THAT(check("shown.yaml", "report.pdf").results,
              StartsWith("report.pdf: can't tell. Not at hand: the photos of fingerprint "));
  fs::remove(workshop.path("2.jpg"));
  EXPECT_THAT(check("shown.yaml", "gap.pdf").results, StartsWith("gap.pdf: identical. "));
}

TEST_F(Matches, ADateFromTheEnvironmentIsUsedAgain) {
  ASSERT_EQ(workshop.run("map 2025.yaml -o map.pdf", "export SOURCE_DATE_EPOCH=86400").status, 0);
  EXPECT_THAT(check("2025.yaml", "map.pdf", "").results, StartsWith("map.pdf: identical. "));
  make("map 2025.yaml -o plain.pdf");
  EXPECT_THAT(
      workshop.run("check 2025.yaml --matches plain.pdf", "export SOURCE_DATE_EPOCH=86400").results,
      StartsWith("plain.pdf: identical. "));
}

// Newline-delimited JSON: the line of the survey asked for.
TEST_F(Matches, ALineOfManyIsHeldAgainstItsSurvey) {
  make("weigh other.yaml good.yaml -o many.ndjson");
  const Ended same = check("good.yaml", "many.ndjson");
  EXPECT_EQ(same.results,
            "many.ndjson: identical. \"tinworm weigh --as=json\" makes the same of "
            "good.yaml as it stands, byte for byte (line 2).\n");
  edit("many.ndjson", "}\n{", "} \n{", "edited.ndjson");
  EXPECT_THAT(check("good.yaml", "edited.ndjson").results, StartsWith("edited.ndjson: identical"));
  EXPECT_THAT(check("other.yaml", "edited.ndjson").results,
              StartsWith("edited.ndjson: names this survey but differs. It was changed after it "
                         "was made, first in line 1."));
}

TEST_F(Matches, TellsWhatCarriesNoRecord) {
  make("weigh good.yaml -o weigh.csv");
  make("weigh good.yaml other.yaml -o table.txt");
  workshop.put("old.txt", "default rules, fingerprint " + print("good.yaml").substr(0, 12) + "\n");
  for (const std::string file : {"weigh.csv", "table.txt", "old.txt"}) {
    const Ended ended = check("good.yaml", file);
    EXPECT_EQ(ended.status, 1);
    EXPECT_EQ(ended.results, file +
                                 ": can't tell. It carries no record of how it was made, as "
                                 "every output but CSV and tables of many surveys does.\n");
  }
}

TEST_F(Matches, TellsAnotherVersionAndWhatARecordMayNotAskFor) {
  make("weigh good.yaml -o weigh.txt");
  edit("weigh.txt", "[tinworm " TINWORM_TEST_VERSION ":", "[tinworm 9.9.9:", "later.txt");
  EXPECT_EQ(check("good.yaml", "later.txt").results,
            "later.txt: can't tell. It was made by tinworm 9.9.9; this is " TINWORM_TEST_VERSION
            ".\n");
  edit("weigh.txt", ": weigh --as=text --units=mm;", ": start --as=text -o x.txt;", "start.txt");
  EXPECT_EQ(check("good.yaml", "start.txt").results,
            "start.txt: can't tell. Its record asks for \"start --as=text -o x.txt\", which no "
            "output is made by.\n");
  EXPECT_FALSE(workshop.has("x.txt"));
  make("weigh good.yaml --explain 51 -o explain.txt");
  edit("explain.txt", "--units=mm ", "--units=inch ", "units.txt");
  EXPECT_THAT(check("good.yaml", "units.txt").results,
              StartsWith("units.txt: names this survey but differs. It was changed after"));
}

TEST_F(Matches, RefusesWhatItCannotRead) {
  const Ended none = check("good.yaml", "mop.pdf");
  EXPECT_EQ(none.status, 3);
  make("map good.yaml -o map.pdf");
  EXPECT_EQ(check("good.yaml", "mop.pdf").messages,
            "tinworm: mop.pdf: no such file (did you mean \"map.pdf\"?)\n");
  EXPECT_EQ(check("good.yaml", "panels").messages, "tinworm: panels: a folder, not a file\n");
  EXPECT_EQ(check("good.yaml", "/dev/zero").messages,
            "tinworm: /dev/zero: not a plain file; save it as one first\n");
  const Ended many = workshop.run("check good.yaml bad.yaml --matches map.pdf");
  EXPECT_EQ(many.status, 2);
  EXPECT_EQ(many.messages,
            "tinworm check: --matches holds one output against one survey\nName one survey.\n");
  EXPECT_EQ(workshop.run("check good.yaml --rates rates.yaml").messages,
            "tinworm check: --rates goes with --matches: no question rests on rates\n"
            "Leave it out.\n");
}

// However large the file is, a few blocks of it are held: 600 MB in 200 MB of address space.
TEST_F(Matches, ALargeFileIsReadInBlocks) {
  make("weigh 2025.yaml -o weigh.txt");
  fs::copy_file(workshop.path("weigh.txt"), workshop.path("large.txt"));
  fs::resize_file(workshop.path("large.txt"), 600'000'000);
  const Ended ended =
      workshop.run("check 2025.yaml --matches large.txt", "ulimit -v 400000 2>/dev/null");
  EXPECT_THAT(ended.results, testing::MatchesRegex("large.txt: names this survey but differs. "
                                                   "[0-9]+ bytes were added at its end.\n"));
}

}  // namespace
}  // namespace tinworm::verbs
