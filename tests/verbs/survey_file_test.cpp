// A paper stands wherever its survey does: read, weighed and begun anew from.
#include <string>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "attachments/attachments.hpp"
#include "output/file_error.hpp"
#include "verbs/program.hpp"
#include "verbs/survey_file.hpp"

namespace tinworm::verbs {
namespace {

using testing::HasSubstr;
using testing::Not;

const std::string survey_text =
    "survey: 1\n"
    "body: small-body 2\n"
    "car: {name: Wherry 1200, built: 1967, owner: Zzyxowner}\n"
    "visit: {date: 2025-04-12, by: S. Urveyor, place: Zzyxplace}\n"
    "seen:\n"
    "  bare: 11 51\n"
    "  hidden: {52: trim}\n"
    "zones:\n"
    "  51:\n"
    "    reference: 1.10 1.11\n"
    "    found:\n"
    "      - rear end: pitting, firm, 120x60, metal .88 .86 .90, \"Zzyxremark\"\n";

const std::string rules_text = "rules: 1\nnear-radius: 400 mm\n";

class Papers : public testing::Test {
 protected:
  void SetUp() override { workshop.put("car.yaml", survey_text); }
  Ended run(const std::string& arguments) const {
    return workshop.run(arguments + " --panels panels");
  }
  Ended make(const std::string& arguments) const {
    const Ended ended = run(arguments);
    EXPECT_EQ(ended.status, 0) << ended.messages;
    return ended;
  }
  // Without the panels' folder: what comes from the paper alone.
  Ended alone(const std::string& arguments) const { return workshop.run(arguments); }
  // car.pdf with other files in it than it was made of.
  void put_into(const std::string& paper, const std::vector<attachments::Attachment>& files) const {
    make("report car.yaml -o bare.pdf");
    workshop.run("--version",
                 "qpdf bare.pdf --remove-attachment='1 car.yaml' "
                 "--remove-attachment='2 small-body.yaml' "
                 "--object-streams=disable without.pdf");
    workshop.put(paper, attachments::with_attachments(workshop.text("without.pdf"), files));
  }

  Workshop workshop;
};

TEST_F(Papers, WeighAsTheirSurveys) {
  make("report car.yaml -o report.pdf");
  make("map car.yaml --private -o map.pdf");
  for (const char* paper : {"report.pdf", "map.pdf"}) {
    for (const char* format : {"json", "csv"}) {
      const std::string as = std::string(" --format ") + format;
      const Ended from_paper = alone("weigh " + std::string(paper) + as);
      EXPECT_EQ(from_paper.status, 0) << from_paper.messages;
      EXPECT_EQ(from_paper.results, make("weigh car.yaml" + as).results);
      EXPECT_EQ(from_paper.messages, "");
    }
  }
}

TEST_F(Papers, AreMadeAgainOfPapers) {
  make("report car.yaml -o report.pdf");
  make("report report.pdf -o again.pdf");
  EXPECT_EQ(workshop.text("again.pdf"), workshop.text("report.pdf"));
}

TEST_F(Papers, StandForSurveysOfEveryVerb) {
  make("report car.yaml -o report.pdf");
  workshop.put("later.yaml",
               std::string(survey_text).replace(survey_text.find("2025-04-12"), 10, "2027-04-12"));
  for (const char* line :
       {"check report.pdf", "weigh report.pdf --explain 51", "map report.pdf -o m.svg",
        "work report.pdf", "listing report.pdf -o l.pdf", "compare report.pdf later.yaml",
        "check later.yaml --before report.pdf", "due report.pdf",
        "start --from report.pdf --date 2027-05 -o new.yaml",
        "check report.pdf --matches report.pdf"}) {
    const Ended ended = run(line);
    EXPECT_EQ(ended.status, 0) << line << "\n" << ended.results << ended.messages;
    EXPECT_EQ(ended.results.find("Zzyxowner"), std::string::npos) << line;
  }
  EXPECT_THAT(workshop.text("new.yaml"), HasSubstr("Wherry 1200"));
}

TEST_F(Papers, PassTheCheckThatTheyAreMadeOfTheSurvey) {
  make("report car.yaml -o report.pdf");
  EXPECT_THAT(run("check car.yaml --matches report.pdf").results,
              HasSubstr("report.pdf: identical."));
}

TEST_F(Papers, CarryTheRulesButDontObeyThemUnasked) {
  workshop.put("harder.yaml", rules_text);
  make("report car.yaml --rules harder.yaml -o report.pdf");
  const Ended unasked = alone("weigh report.pdf --format json");
  EXPECT_EQ(unasked.status, 0);
  EXPECT_EQ(unasked.messages,
            "report.pdf: carries harder.yaml, which it was made by: --rules report.pdf takes it\n");
  EXPECT_EQ(unasked.results, make("weigh car.yaml --format json").results);
  EXPECT_EQ(alone("weigh report.pdf --rules report.pdf --format json").results,
            make("weigh car.yaml --rules harder.yaml --format json").results);
}

TEST_F(Papers, WithoutASurveySaySo) {
  make("listing car.yaml -o listing.pdf");
  make("work car.yaml -o work.pdf");
  make("map car.yaml -o map.pdf");
  make("report car.yaml -o report.pdf");
  for (const char* paper : {"listing.pdf", "work.pdf", "map.pdf"}) {
    const Ended ended = run("weigh " + std::string(paper));
    EXPECT_EQ(ended.status, 3);
    EXPECT_THAT(ended.messages, HasSubstr("(")) << paper;
    EXPECT_EQ(ended.results, "");
  }
  const Ended rules = run("weigh report.pdf --rules report.pdf");
  EXPECT_EQ(rules.status, 3);
  EXPECT_EQ(rules.messages,
            "tinworm: report.pdf: carries no rules: it was made by the defaults, or isn't a paper "
            "that carries its survey (name a file of rules)\n");
}

TEST_F(Papers, ForStrangersHoldNothingOfTheSurvey) {
  make("listing car.yaml -o listing.pdf");
  make("work car.yaml -o work.pdf");
  make("map car.yaml -o map.pdf");
  for (const char* paper : {"listing.pdf", "work.pdf", "map.pdf"}) {
    workshop.run("--version", "qpdf --qdf --object-streams=disable " + std::string(paper) +
                                  " plain.pdf; pdfdetach -list " + paper + " > files.txt");
    for (const char* secret : {"Zzyx", "EmbeddedFile", "survey: 1"}) {
      EXPECT_THAT(workshop.text(paper), Not(HasSubstr(secret))) << paper;
      EXPECT_THAT(workshop.text("plain.pdf"), Not(HasSubstr(secret))) << paper;
    }
    EXPECT_EQ(workshop.text("files.txt"), "0 embedded files\n");
  }
}

TEST_F(Papers, OfEveryOtherKindForStrangersHoldNothingEither) {
  for (const char* line : {"listing car.yaml -o out.svg", "listing car.yaml -o out.png",
                           "listing car.yaml --paper phone -o out.png", "work car.yaml -o out.txt",
                           "work car.yaml -o out.json", "work car.yaml -o out.csv",
                           "map car.yaml -o out.svg", "map car.yaml -o out.png"}) {
    make(line);
    for (const char* secret : {"Zzyx", "survey: 1", "hidden: {52"})
      EXPECT_THAT(workshop.text("out" + std::string(line).substr(std::string(line).rfind('.'))),
                  Not(HasSubstr(secret)))
          << line;
  }
}

struct Wrong {
  const char* what;
  std::vector<attachments::Attachment> files;
  const char* message;
};

TEST_F(Papers, ChangedSinceAreRefused) {
  using attachments::Role;
  std::string thicker = survey_text;
  thicker.replace(thicker.find(".88"), 3, "1.1");
  const Wrong wrong[] = {
      {"another survey",
       {{Role::survey, "car.yaml", thicker}},
       "what it carries as survey isn\'t what it was made of: one of them was changed since"},
      {"under another name",
       {{Role::survey, "other.yaml", survey_text}},
       "what it carries as survey isn\'t what it was made of: one of them was changed since"},
      {"two",
       {{Role::survey, "car.yaml", survey_text}, {Role::survey, "b.yaml", survey_text}},
       "carries more than one survey"},
      {"another plan",
       {{Role::survey, "car.yaml", survey_text}, {Role::plan, "small-body.yaml", "plan: 1\n"}},
       "what it carries as plan isn\'t what it was made of: one of them was changed since"},
      {"rules that it wasn't made by",
       {{Role::survey, "car.yaml", survey_text}, {Role::rules, "harder.yaml", rules_text}},
       "what it carries as rules isn\'t what it was made of: one of them was changed since"},
      {"none", {}, "carries no survey, as a report does, and a map with --private"},
  };
  for (const Wrong& each : wrong) {
    put_into("changed.pdf", each.files);
    const Ended ended = run("weigh changed.pdf");
    EXPECT_EQ(ended.status, 3) << each.what;
    EXPECT_EQ(ended.results, "") << each.what;
    EXPECT_THAT(ended.messages, HasSubstr("changed.pdf: " + std::string(each.message)))
        << each.what;
  }
}

TEST_F(Papers, WithAnyByteChangedHoldTheSameSurveyOrNone) {
  make("report car.yaml -o report.pdf");
  const std::string whole = workshop.text("report.pdf");
  const std::size_t from = whole.find("Keywords");  // among the objects that the files hang on
  int refused = 0, read_well = 0;
  for (std::size_t at = from % 97; at < whole.size(); at += 97) {
    std::string bytes = whole;
    bytes[at] = static_cast<char>(bytes[at] ^ 0x15);
    workshop.put("changed.pdf", bytes);
    try {
      const SurveyFile file = read_survey_file(workshop.path("changed.pdf"));
      EXPECT_TRUE(file.text == survey_text || file.place == workshop.path("changed.pdf")) << at;
      ++read_well;
    } catch (const output::FileError&) {
      ++refused;
    }
  }
  EXPECT_GT(refused, 20);
  EXPECT_GT(read_well, 20);
}

TEST_F(Papers, OfOthersAreNone) {
  workshop.run("--version", "qpdf --empty other.pdf --object-streams=disable");
  const Ended ended = run("weigh other.pdf");
  EXPECT_EQ(ended.status, 3);
  EXPECT_THAT(ended.messages, HasSubstr("other.pdf: "));
}

}  // namespace
}  // namespace tinworm::verbs
