// The line by which an output can be made again: written, read back, and what it must not let in.
#include "verbs/record.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "verbs/record_words.hpp"

namespace tinworm::verbs {
namespace {

const std::string print(64, 'a'), other_print(64, 'b');

const Record whole{"0.1.0 with cairo 1.16.0",
                   {"map", "--as=pdf", "--paper=a4"},
                   "two-door-saloon 1",
                   {{InputKind::survey, "the (old) car; 2]\u00e9.yaml", print},
                    {InputKind::plan, "", other_print},
                    {InputKind::rules, "100%.yaml", print}}};

TEST(Record, IsOneLineOfPlainLetters) {
  EXPECT_EQ(text(whole),
            "[tinworm 0.1.0 with cairo 1.16.0: map --as=pdf --paper=a4; "
            "body two-door-saloon 1; survey the%20%28old%29%20car%3B%202%5D%C3%A9.yaml " +
                print + "; plan " + other_print + "; rules 100%25.yaml " + print + "]");
}

TEST(Record, IsReadBack) {
  EXPECT_EQ(read_record(text(whole)), whole);
  const Record least{"1", {"weigh"}, "b 1", {}};
  EXPECT_EQ(read_record(text(least)), least);
}

TEST(Record, IsNoneUnlessLetterForLetter) {
  const std::vector<std::string> lines = {
      "",
      "[tinworm ]",
      "[tinworm 1: weigh]",
      "[tinworm 1: weigh; body b 1; survey a.yaml " + print,          // no end
      "[tinworm 1: weigh; body b 1; survey a.yaml " + print + "a]",   // digits too many
      "[tinworm 1: weigh; body b 1; survey a.yaml ]",                 // no fingerprint
      "[tinworm 1: weigh; body b 1; survey a b " + print + "]",       // a word too many
      "[tinworm 1: weigh; body b 1; journey a.yaml " + print + "]",   // no such input
      "[tinworm 1: weigh; survey a.yaml " + print + "]",              // no body
      "[tinworm 1: weigh; body b 1; survey %61.yaml " + print + "]",  // not how it is written
      "[tinworm 1: weigh; body b 1; survey a%2.yaml " + print + "]",
      "[tinworm 1\033[31m: weigh; body b 1; survey a.yaml " + print + "]"};
  for (const std::string& line : lines) EXPECT_EQ(read_record(line), std::nullopt) << line;
}

TEST(Record, FindsTheSurveyByItsFingerprintAlone) {
  EXPECT_EQ(whole.survey(print), &whole.inputs[0]);
  EXPECT_EQ(whole.survey(other_print), nullptr) << "that of a body plan";
  EXPECT_EQ(whole.input(InputKind::rates), nullptr);
}

// Whoever wrote it, it can ask for no more than an output of a survey.
TEST(RecordWords, NameNoFileAndNoOtherVerb) {
  EXPECT_TRUE(are_harmless({"map", "--as=pdf", "--paper=a4", "--private"}));
  EXPECT_TRUE(are_harmless({"weigh", "--as=text", "SOURCE_DATE_EPOCH=1", "--explain=51"}));
  for (const Words& words :
       {Words{"start", "--as=text"}, Words{"check", "--as=text"}, Words{"map"},
        Words{"map", "--as=jpeg"}, Words{"map", "--as=pdf", "-o"}, Words{"map", "--as=pdf", "/etc"},
        Words{"map", "--as=pdf", "--rules=x.yaml"}, Words{"map", "--as=pdf", "-o=x"},
        Words{"map", "--as=pdf", "--panels=/"}, Words{"map", "--as=pdf", "--private=x"}})
    EXPECT_FALSE(are_harmless(words)) << words.back();
}

TEST(RecordWords, OptionsThatChangeNothingAreNotAmongThem) {
  WeighOptions weigh;
  weigh.to.kind = Kind::json;
  const Words plain = words_of(weigh);
  weigh.units = quantity::Units::inch;  // JSON is in mm
  weigh.common.jobs = 3;
  weigh.common.quiet = weigh.common.no_colour = true;
  weigh.to.path = "x.json";
  EXPECT_EQ(words_of(weigh), plain);
  EXPECT_EQ(plain, (Words{"weigh", "--as=json"}));
  weigh.to.kind = Kind::text;
  weigh.explain = "51";
  EXPECT_EQ(words_of(weigh), (Words{"weigh", "--as=text", "--units=inch", "--explain=51"}));
}

TEST(RecordWords, HoldEveryOptionOfAPicture) {
  MapOptions map;
  map.to.kind = Kind::png;
  map.with_private = map.circles = true;
  EXPECT_EQ(words_of(map), (Words{"map", "--as=png", "--page=structure", "--paper=a4",
                                  "--width=2400", "--private", "--circles"}));
  ListingOptions listing;
  listing.to.kind = Kind::svg;
  listing.picture.phone = listing.signed_name = true;
  listing.picture.sheet = scene::SheetKind::skin;
  EXPECT_EQ(words_of(listing),
            (Words{"listing", "--as=svg", "--page=skin", "--paper=phone", "--signed"}));
  ReportOptions report;
  report.to.kind = Kind::pdf;
  report.paper = scene::Paper::letter;
  report.missing_photos = true;
  EXPECT_EQ(words_of(report),
            (Words{"report", "--as=pdf", "--units=mm", "--paper=letter", "--missing-photos"}));
}

}  // namespace
}  // namespace tinworm::verbs
