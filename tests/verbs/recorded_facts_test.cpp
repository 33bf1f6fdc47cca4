// Each fact of a record, where it was typed and where its reader meets it; and that what is private
// stays with the owner. As a user runs it, read back with poppler.
#include <algorithm>
#include <cctype>
#include <fstream>
#include <map>
#include <sstream>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "paths.hpp"
#include "verbs/program.hpp"

namespace tinworm::verbs {
namespace {

using testing::HasSubstr;
using testing::Not;

std::string whole(const std::string& path) {
  std::ifstream file(path);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

// Lines run on: a paper breaks them where it must.
std::string flowing(const std::string& text) {
  std::string one;
  for (const char c : text) {
    const bool space = std::isspace(static_cast<unsigned char>(c)) != 0;
    if (!space || (!one.empty() && one.back() != ' ')) one += space ? ' ' : c;
  }
  return one;
}

class RecordedFacts : public testing::Test {
 protected:
  static std::map<std::string, std::string>& papers() {
    static std::map<std::string, std::string> made;
    return made;
  }

  static void SetUpTestSuite() {
    const Workshop workshop;
    workshop.put("car.yaml", whole(source_folder() + "/tests/cases/good/saloon-record.yaml"));
    const auto pdf = [&](const std::string& name, const std::string& arguments) {
      const Ended ended = workshop.run(arguments + " -o out.pdf", "true");
      EXPECT_EQ(ended.status, 0) << ended.messages;
      workshop.run("--version", "pdftotext -layout out.pdf read.txt");
      papers()[name] = flowing(workshop.text("read.txt"));
    };
    papers()["weigh"] = flowing(workshop.run("weigh car.yaml").results);
    papers()["json"] = workshop.run("weigh car.yaml --format json").results;
    papers()["check"] = flowing(workshop.run("check car.yaml").results);
    papers()["next"] = workshop.run("start --from car.yaml --date 2028-01").results;
    pdf("report", "report car.yaml");
    pdf("listing", "listing car.yaml");
    pdf("map", "map car.yaml");
    pdf("work", "work car.yaml");
  }
};

struct Fact {
  std::string what, typed, paper, words;
};

TEST_F(RecordedFacts, ComeOutWhereTheirReaderNeedsThem) {
  const std::string survey = whole(source_folder() + "/tests/cases/good/saloon-record.yaml");
  const Fact facts[] = {
      {"colour", "colour: green with a cream roof", "report", "green with a cream roof"},
      {"colour", "colour: green with a cream roof", "weigh", "Colour: green with a cream roof"},
      {"odometer as typed", "odometer: 61402 mi", "weigh", "61402 mi"},
      {"odometer as typed", "odometer: 61402 mi", "report", "61402 mi"},
      {"engine number", "engine-number: S-9-3301", "report", "S-9-3301"},
      {"chassis number", "chassis-number: S13-20417", "report", "S13-20417"},
      {"a wet car", "weather: wet", "weigh", "The car was: wet"},
      {"a wet car", "weather: wet", "listing", "The car was wet."},
      {"tools", "tools: [gauge", "report", "a scope for the insides"},
      {"steering on the right", "steering: right", "weigh", "steering right"},
      {"the surveyor's own words", "summary: The left side", "report",
       "The left side has stood in water"},
      {"a gap's side", "side: left, wheels: 5.0", "weigh", "door rear edge top, left: 5 mm"},
      {"a step", "kind: step", "weigh", "door rear edge, left (step): 2 mm on the lift"},
      {"a step", "kind: step", "report", "(step)"},
      {"what hid a zone", "89 90: not-agreed by the owner", "report", "not-agreed by the owner"},
      {"a dent", "dent, 90x90", "weigh", "lower tray left: dent"},
      {"filler", "filler, 3x2 in", "weigh", "rear bottom: filler"},
      {"a wave", "hole 35, wavy", "report", "wavy"},
      {"drains by place", "left end blocked", "weigh", "left end blocked, right end open"},
      {"drains by place", "left end blocked", "report", "left end blocked, right end open"},
      {"a repair's place", "plate outer edge: brazed", "report", "plate outer edge: brazed"},
      {"an open side", "open-side", "report", "open-side"},
      {"several joints", "stitch, no-weld", "report", "no-weld"},
      {"layers", "layers 2", "report", "2 layers"},
      {"readings on a repair", "metal 1.22", "report", "metal 1.22 mm"},
      {"a repair's own sheet", "sheet 3", "report", "sheet 3 mm"},
      {"an open side", "open-side", "listing", "open side"},
      {"a mark", "40 ahead of the eye bolt", "weigh", "40 ahead of the eye bolt"},
      {"a mark", "40 ahead of the eye bolt", "report", "40 ahead of the eye bolt"},
      {"a mark", "40 ahead of the eye bolt", "next", "40 ahead of the eye bolt"},
      {"an inside seen in part", "part 70 %", "weigh", "Inside: part 70 %"},
      {"an own part's mount", "carries: seat", "weigh", "carries seat"},
      {"an own part's place", "x: 1560", "report", "x 1560 mm"},
      {"at once", "when: at-once", "weigh", "At once"},
      {"at once", "when: at-once", "map", "At once, before anything else: fuel."},
      {"at once", "when: at-once", "listing", "At once, before anything else: fuel."},
      {"at once", "when: at-once", "work", "At once: fuel: weep at the sender."},
      {"before use", "when: before-use", "listing", "brakes (before it is"},
      {"a mileage", "when: 65000 mi", "weigh", "by 65000 mi"},
      {"a mileage", "when: 65000 mi", "report", "by 65000 mi"},
      {"what a cut showed", "say: nothing left of the membrane", "report",
       "nothing left of the membrane"},
      {"what a cut showed", "say: nothing left of the membrane", "weigh", "metal 0.40 mm"},
      {"a measured place without a mark", "metal 1.22", "json", "1.22"},
  };
  for (const Fact& fact : facts) {
    EXPECT_THAT(survey, HasSubstr(fact.typed)) << fact.what;
    EXPECT_NE(papers().at(fact.paper).find(fact.words), std::string::npos)
        << fact.what << " is not in " << fact.paper << ": " << fact.words;
  }
}

TEST_F(RecordedFacts, WhatIsPrivateStaysWithTheOwner) {
  for (const char* paper : {"weigh", "json", "listing", "map", "work"})
    for (const char* words : {"S-9-3301", "The left side has stood"})
      EXPECT_EQ(papers().at(paper).find(words), std::string::npos) << paper << ": " << words;
  for (const char* words : {"weep at the sender", "right rear pipe", "40 ahead",
                            "left of the membrane", "the captive nut", "green"})
    EXPECT_EQ(papers().at("listing").find(words), std::string::npos) << words;
}

}  // namespace
}  // namespace tinworm::verbs
