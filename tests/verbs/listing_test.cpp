// `tinworm listing` as a user runs it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "verbs/program.hpp"

namespace tinworm::verbs {
namespace {

using testing::HasSubstr;
using testing::Not;

const std::string caution = "An aid to judgement, not a roadworthiness test";

// Every key that people type freely, each with a word that begins with "Zzyx".
const std::string stuffed =
    "survey: 1\n"
    "body: small-body 2\n"
    "car: {name: Wherry 1200, built: 1967, owner: ZzyxOwner, registration: ZzyxReg,\n"
    "  chassis-number: ZzyxChassis, odometer: 98765 km}\n"
    "visit: {date: 2025-04-12, reason: sale, by: S. Urveyor, interest: ZzyxInterest,\n"
    "  place: ZzyxPlace, leave: [carpets]}\n"
    "gaps: [{where: ZzyxGap, wheels: 4 mm, lift: 3 mm}]\n"
    "seen:\n"
    "  bare: 11 51\n"
    "  hidden: {52: ZzyxReason}\n"
    "zones:\n"
    "  51:\n"
    "    note: ZzyxNote\n"
    "    found:\n"
    "      - ZzyxSpot: hole, breaks, 60x40, ZzyxSpotNote\n"
    "    repairs:\n"
    "      - lapped, 2016, ZzyxRepairNote\n"
    "  own-a: {name: ZzyxOwn, role: main, side: left, seen: bare,\n"
    "    found: [{spot: ZzyxOwnSpot, rust: hole}]}\n"
    "also: [{what: ZzyxWhat, say: ZzyxSay, when: before-use}]\n"
    "price: {asked: 98765 EUR, sound: 98765 EUR}\n";

struct Listed {
  Workshop workshop;
  Ended draw(const std::string& more) const {
    return workshop.run("listing stuffed.yaml --panels panels " + more);
  }
  // What a reader or a program can get out of the file as text.
  std::string read(const std::string& file) const {
    if (!file.ends_with(".pdf")) return workshop.text(file);
    const Ended read = workshop.run("--version", "(pdftotext " + file + " - && pdfinfo " + file +
                                                     " && qpdf --qdf --object-streams=disable " +
                                                     file + " -) > read.txt");
    EXPECT_EQ(read.messages, "") << file;
    return workshop.text("read.txt");
  }
  Listed() { workshop.put("stuffed.yaml", stuffed); }
};

TEST(ListingVerb, LetsNothingPrivateIntoAnyFile) {
  const Listed listed;
  for (const auto& [file, more] : {std::pair<std::string, std::string>{"a.pdf", ""},
                                   {"a.svg", ""},
                                   {"a.png", ""},
                                   {"skin.svg", "--page skin"},
                                   {"phone.svg", "--paper phone"},
                                   {"phone.png", "--paper phone"}}) {
    const Ended ended = listed.draw("-o " + file + " " + more);
    EXPECT_EQ(ended.messages, "wrote " + file + "\n");
    EXPECT_EQ(ended.status, 0);
    const std::string text = listed.read(file);
    EXPECT_THAT(text, HasSubstr("Wherry 1200")) << file;
    EXPECT_THAT(text, HasSubstr(caution)) << file;
    for (const char* secret : {"Zzyx", "98765", "98 765", "Urveyor", "stuffed"})
      EXPECT_THAT(text, Not(HasSubstr(secret))) << file;
    const Ended same = listed.workshop.run("check stuffed.yaml --panels panels --matches " + file);
    EXPECT_THAT(same.results, testing::StartsWith(file + ": identical. "));
    // A file's name may be its owner's.
    EXPECT_THAT(text, Not(HasSubstr("stuffed.yaml"))) << file;
  }
}

TEST(ListingVerb, SignedSaysWhoLookedAndThatThereIsAnInterest) {
  const Listed listed;
  ASSERT_EQ(listed.draw("--signed -o a.pdf").status, 0);
  const std::string text = listed.read("a.pdf");
  EXPECT_THAT(text, HasSubstr("Surveyed by S. Urveyor"));
  EXPECT_THAT(text, HasSubstr("declared"));
  EXPECT_THAT(text, HasSubstr("Author:          S. Urveyor"));
  EXPECT_THAT(text, Not(HasSubstr("Zzyx")));
}

TEST(ListingVerb, NamesChangedRulesWithoutTheirFile) {
  const Listed listed;
  listed.workshop.put("ZzyxStrict.yaml", "rules: 1\nname: ZzyxStrict\nnear-radius: 250 mm\n");
  ASSERT_EQ(listed.draw("--rules ZzyxStrict.yaml -o a.svg").status, 0);
  EXPECT_THAT(listed.read("a.svg"), HasSubstr("near-radius 250 mm (default 300 mm)"));
  EXPECT_THAT(listed.read("a.svg"), Not(HasSubstr("Zzyx")));
}

TEST(ListingVerb, SaysWhatItRefuses) {
  const Workshop workshop;
  const struct {
    std::string arguments, messages;
    int status = 2;
  } cases[] = {
      {"", "tinworm listing: the survey to read is missing\ntinworm listing SURVEY.yaml\n"},
      {"good.yaml",
       "tinworm listing: where to draw is missing\ntinworm listing good.yaml -o listing.pdf\n"},
      {"good.yaml bad.yaml -o a.pdf",
       "tinworm listing: takes one survey, that of the car for sale\n"
       "tinworm listing SURVEY.yaml -o listing.pdf\n"},
      {"good.yaml -o a.json",
       "tinworm listing: listing doesn't make json\nIt makes pdf, svg or png.\n"},
      {"good.yaml --paper phone -o a.pdf",
       "tinworm listing: --paper phone is for SVG and PNG\nA PDF takes a4, a3 or letter.\n"},
      {"good.yaml -o a.pdf --private", "tinworm listing: there is no option --private\n"},
      {"good.yaml --panels panels -o a.svg --page frame",
       "tinworm listing: good.yaml: small-body has no frame sheet\n"},
      {"good.yaml --panels panels -o a.pdf --signed",
       "tinworm listing: good.yaml doesn't say who looked\n"
       "Write the surveyor's name under visit, as in {by: NAME}, or leave out --signed.\n"},
      {"bad.yaml --panels panels -o a.pdf", bad_survey_problems, 1},
      {"good.yaml --panels panels -o none/a.pdf",
       "tinworm: none/a.pdf: its folder does not exist (make the folder first)\n", 3}};
  for (const auto& each : cases) {
    const Ended ended = workshop.run("listing " + each.arguments);
    EXPECT_EQ(ended.status, each.status) << each.arguments;
    EXPECT_EQ(ended.messages, each.messages) << each.arguments;
    EXPECT_EQ(ended.results, "");
    EXPECT_FALSE(workshop.has("a.pdf"));
  }
}

}  // namespace
}  // namespace tinworm::verbs
