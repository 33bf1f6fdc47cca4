// `tinworm check` as a user sees it: mistakes, then questions, as text and as JSON.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <string>

#include <nlohmann/json.hpp>

#include "verbs/program.hpp"

namespace tinworm::verbs {
namespace {

using testing::HasSubstr;

TEST(Check, NamesEveryMistakeWithItsPlace) {
  const Ended ended = Workshop().run("check bad.yaml --panels panels");
  EXPECT_EQ(ended.status, 1);
  EXPECT_EQ(ended.results, bad_survey_problems);
  EXPECT_EQ(ended.messages, "");
}

// 60 mistakes: 50 are told, and how to see the rest; with --all every one.
TEST(Check, TellsEveryMistakeWhereAllAreAskedFor) {
  const Workshop workshop;
  std::string survey =
      "survey: 1\nbody: small-body 2\ncar: {name: Wherry 1200}\nvisit: {date: 2025-04-12}\n"
      "seen: {bare: 51}\nzones:\n  51:\n    found:\n";
  for (int i = 0; i < 60; ++i) survey += "      - place " + std::to_string(i) + ": shiny\n";
  workshop.put("many.yaml", survey);
  const auto lines = [](const std::string& text) {
    return std::count(text.begin(), text.end(), '\n');
  };
  const auto last_line = [](const std::string& text) {
    const std::size_t before = text.rfind('\n', text.size() - 2);
    return text.substr(before + 1);
  };
  for (const std::string verb : {"check", "weigh", "work"}) {
    const auto told = [&](const Ended& ended) {
      return verb == "check" ? ended.results : ended.messages;
    };
    const Ended first = workshop.run(verb + " many.yaml --panels panels");
    EXPECT_EQ(first.status, 1) << verb;
    EXPECT_EQ(lines(told(first)), 3 * 50 + 1) << verb;
    EXPECT_EQ(last_line(told(first)), "and 10 more: --all lists them\n") << verb;
    const Ended all = workshop.run(verb + " many.yaml --all --panels panels");
    EXPECT_EQ(all.status, 1) << verb;
    EXPECT_EQ(lines(told(all)), 3 * 60) << verb;
    EXPECT_TRUE(told(all).starts_with(told(first).substr(0, told(first).rfind("and 10 more"))))
        << verb;
  }
}

TEST(Check, GivesMistakesAsJson) {
  const Ended ended = Workshop().run("check bad.yaml --panels panels --format json");
  EXPECT_EQ(ended.status, 1);
  const auto json = nlohmann::json::parse(ended.results);
  EXPECT_EQ(json["kind"], "check");
  ASSERT_EQ(json["problems"].size(), 2u);
  EXPECT_EQ(json["problems"][0]["line"], 4);
}

TEST(Check, ShowsTheMistakesOfABodyPlanToo) {
  const Workshop workshop;
  workshop.put("panels/small-body.yaml", "plan: 1\nbody: small-body\nversion: none\n");
  const Ended ended = workshop.run("check good.yaml --panels panels");
  EXPECT_EQ(ended.status, 1);
  EXPECT_THAT(ended.results, HasSubstr("the body plan panels/small-body.yaml has errors"));
  EXPECT_THAT(ended.results, HasSubstr("panels/small-body.yaml:3:10: "));
}

TEST(Check, RefusesAnotherVersionOfTheBody) {
  const Workshop workshop;
  std::string survey = workshop.text("good.yaml");
  survey.replace(survey.find("small-body 2"), 12, "small-body 1");
  workshop.put("good.yaml", survey);
  const Ended ended = workshop.run("check good.yaml --panels panels");
  EXPECT_EQ(ended.status, 1);
  EXPECT_EQ(ended.results,
            "good.yaml:2:7: the body plan is of another version than the survey was made for "
            "(found \"small-body 1\"; allowed: small-body 2; look whether the zones still mean the "
            "same, then write 2)\n"
            "body: small-body 1\n"
            "      ^\n");
}

// A survey of the small body that leaves little to ask.
const std::string thorough =
    "survey: 1\n"
    "body: small-body 2\n"
    "car: {name: Wherry 1200}\n"
    "visit: {date: 2025-04-12}\n"
    "gauges: {metal: {uncertainty: 0.05 mm, coating: removed}}\n"
    "seen:\n"
    "  bare: 11 51 52\n"
    "zones:\n"
    "  51:\n"
    "    reference: 1.00 1.01\n"
    "    found:\n"
    "      - rear end: none, metal .98 .99 .98\n"
    "    mark: {rear end: \"140 ahead of the hanger's bolt, 25 above the seam\"}\n"
    "  52:\n"
    "    reference: 1.00 1.01\n"
    "    found:\n"
    "      - rear end: none, metal .98 .97 .98\n"
    "    mark: {rear end: \"140 ahead of the hanger's bolt, 25 above the seam\"}\n";

std::string changed(std::string survey, const std::string& from, const std::string& to) {
  return survey.replace(survey.find(from), from.size(), to);
}

TEST(Check, SaysThatAllReadsWell) {
  const Workshop workshop;
  workshop.put("thorough.yaml", thorough);
  for (const char* strict : {"", " --strict"}) {
    const Ended ended = workshop.run("check thorough.yaml --panels panels" + std::string(strict));
    EXPECT_EQ(ended.status, 0);
    EXPECT_EQ(ended.results,
              "thorough.yaml: no mistakes; no questions; small-body 2, 3 zones named, 2 spots\n");
    EXPECT_EQ(ended.messages, "");
  }
}

TEST(Check, AsksAboutAVisitThatIsYetToCome) {
  const Workshop workshop;
  workshop.put("thorough.yaml", thorough);
  const std::string eve = "export SOURCE_DATE_EPOCH=1744243200";  // two days before the visit
  const Ended ended = workshop.run("check thorough.yaml --panels panels", eve);
  EXPECT_EQ(ended.status, 0);
  EXPECT_EQ(ended.results,
            "thorough.yaml: question: was the car seen on 2025-04-12? Today is 2025-04-10.\n"
            "    why: Nobody has seen yet what a later date tells of, and rates of rusting go by "
            "the date.\n"
            "thorough.yaml: no mistakes; 1 question; small-body 2, 3 zones named, 2 spots\n");
  // What is weighed and drawn never goes by the clock.
  EXPECT_EQ(workshop.run("weigh thorough.yaml --panels panels", eve).results,
            workshop.run("weigh thorough.yaml --panels panels").results);
  EXPECT_EQ(
      workshop.run("check thorough.yaml --panels panels", "export SOURCE_DATE_EPOCH=noon").messages,
      "tinworm check: SOURCE_DATE_EPOCH is seconds since 1970, not \"noon\"\n");
}

const std::string good_survey_questions =
    "good.yaml:6:15: question: can a reading be taken on outer sill, right (52)? What stands "
    "there: rear spring hanger.\n"
    "    why: Weak metal under such a mounting decides whether the car may be driven, and no "
    "figure says how much is left.\n"
    "good.yaml: question: can more be measured? Of the main structure 3 readings are recorded.\n"
    "    why: Load-bearing metal is to keep 85 % of its sheet, which neither eye nor hand can "
    "tell.\n"
    "good.yaml: question: how sure is the gauge? Give its standard uncertainty under `gauges: "
    "metal: uncertainty`.\n"
    "    why: Until then 0.05 mm is assumed, and goes into every interval.\n"
    "good.yaml: question: was the coat taken off under the gauge? Say so under `gauges: metal: "
    "coating`.\n"
    "    why: Until then bare metal is assumed; paint read with the sheet makes thin metal look "
    "thick.\n"
    "good.yaml: question: how is the next surveyor to find the point that was measured again: "
    "outer "
    "sill, left (51), rear end? Say under `mark` what it lies from.\n"
    "    why: A few millimetres aside sheet rusts otherwise: then worse or better between two "
    "visits "
    "rests on luck.\n"
    "good.yaml: question: has the surveyor any interest in the sale? Say it under `visit: "
    "interest`, be it `none`.\n"
    "    why: A buyer weighs a survey by who made it, and what for.\n"
    "good.yaml:11:9: question: is there a photo of outer sill, left (51), rear end? Take one from "
    "near with a scale and one from further off.\n"
    "    why: Who didn't lie under the car can judge by it, and the next survey can compare.\n"
    "good.yaml: no mistakes; 7 questions; small-body 2, 3 zones named, 1 spot\n";

TEST(Check, AsksWithPlaceAndReason) {
  const Workshop workshop;
  const Ended ended = workshop.run("check good.yaml --panels panels");
  EXPECT_EQ(ended.status, 0);
  EXPECT_EQ(ended.results, good_survey_questions);
  EXPECT_EQ(ended.messages, "");
  const Ended strict = workshop.run("check good.yaml --panels panels --strict");
  EXPECT_EQ(strict.status, 1);
  EXPECT_EQ(strict.results, good_survey_questions);
}

TEST(Check, GivesTheReasonOfSeveralOnce) {
  const Workshop workshop;
  workshop.put("wide.yaml",
               changed(changed(thorough, ".98 .99 .98", ".60 .99"), ".98 .97 .98", ".98 .50"));
  EXPECT_THAT(workshop.run("check wide.yaml --panels panels").results,
              HasSubstr("wide.yaml:12:9: question: outer sill, left (51), rear end: is it one "
                        "sheet, and was it clean? Its readings differ by 0.39 mm.\n"
                        "wide.yaml:17:9: question: outer sill, right (52), rear end: is it one "
                        "sheet, and was it clean? Its readings differ by 0.48 mm.\n"
                        "    why: They are no repeats of one figure, and leave the metal there "
                        "known only roughly.\n"));
}

TEST(Check, GivesAdviceAsJson) {
  const Workshop workshop;
  workshop.put("wide.yaml", changed(thorough, "reference: 1.00 1.01", "reference: .70 1.05"));
  const Ended ended = workshop.run("check wide.yaml --panels panels --format json");
  EXPECT_EQ(ended.status, 0);
  const auto json = nlohmann::ordered_json::parse(ended.results);
  ASSERT_EQ(json["advice"].size(), 1u);
  EXPECT_EQ(json["advice"][0].dump(),
            R"({"zone":51,"spot":null,"line":9,"column":3,"kind":"wide-readings",)"
            R"("question":"outer sill, left (51), reference: is it one sheet, and was it clean? )"
            R"(Its readings differ by 0.35 mm.","why":"They are no repeats of one figure, and )"
            R"(leave the metal there known only roughly."})");
  ASSERT_EQ(json["questions"].size(), 1u);
  EXPECT_EQ(
      json["questions"][0],
      "outer sill, left (51), reference: is it one sheet, and was it clean? Its readings differ by "
      "0.35 mm. They are no repeats of one figure, and leave the metal there known only roughly.");
  EXPECT_TRUE(json["problems"].empty());
  const auto bad =
      nlohmann::json::parse(workshop.run("check bad.yaml --panels panels --format json").results);
  EXPECT_TRUE(bad["advice"].empty());
  EXPECT_TRUE(bad["questions"].empty());
}

TEST(Check, LooksForPhotosBesideTheSurvey) {
  const Workshop workshop;
  workshop.run("--version", "mkdir -p cars/photos && touch cars/photos/1.jpg cars/wing.jpg");
  const std::string survey =
      changed(changed(thorough, "seen:", "photos: {folder: photos, name: \"{}.jpg\"}\nseen:"),
              ".98 .99 .98", ".98 .99 .98, photo 1 wing.jpg");
  workshop.put("cars/there.yaml", survey);
  workshop.put("cars/not-there.yaml", changed(survey, "photo 1", "photo 1 2"));
  EXPECT_EQ(workshop.run("check cars/there.yaml --panels panels").results,
            "cars/there.yaml: no mistakes; no questions; small-body 2, 3 zones named, 2 spots\n");
  EXPECT_EQ(workshop.run("check cars/not-there.yaml --panels panels").results,
            "cars/not-there.yaml:13:52: question: where is the photo photos/2.jpg? It is named but "
            "not there.\n"
            "    why: What can't be shown carries less weight.\n"
            "cars/not-there.yaml: no mistakes; 1 question; small-body 2, 3 zones named, 2 spots\n");
}

TEST(Check, AsksForTheStationsOfTheSurveyBefore) {
  const Workshop workshop;
  workshop.put("now.yaml", thorough);
  workshop.put("before.yaml",
               changed(changed(thorough, "2025-04-12", "2022-05"), "rear end: none", "jack: none"));
  const std::string check = "check now.yaml --panels panels --before ";
  EXPECT_EQ(workshop.run(check + "before.yaml").results,
            "now.yaml:9:3: question: can it be measured again, as in 2022-05: outer sill, left "
            "(51), jack?\n"
            "    why: Only the same place measured twice shows how fast it rusts.\n"
            "now.yaml: no mistakes; 1 question; small-body 2, 3 zones named, 2 spots\n");
  EXPECT_EQ(workshop.run(check + "before.yaml --strict").status, 1);
  EXPECT_EQ(workshop.run(check + "now.yaml --strict").status, 0) << "nothing has changed";
}

TEST(Check, RefusesASurveyBeforeThatCannotBe) {
  const Workshop workshop;
  workshop.put("now.yaml", thorough);
  workshop.put("later.yaml", changed(thorough, "2025-04-12", "2026"));
  workshop.put("other.yaml",
               "survey: 1\nbody: two-door-saloon 1\ncar: {name: Wherry 1200}\n"
               "visit: {date: 2022}\n");
  const struct {
    std::string arguments;
    int status;
    std::string messages;
  } cases[] = {
      {"now.yaml --before other.yaml", 2,
       "tinworm check: other.yaml is of the body two-door-saloon 1, now.yaml of small-body 2\n"
       "--before takes an earlier survey of the same body.\n"},
      {"now.yaml --before later.yaml", 2,
       "tinworm check: later.yaml is of 2026, after now.yaml of 2025-04-12\n"
       "--before takes an earlier survey.\n"},
      {"now.yaml good.yaml --before now.yaml", 2,
       "tinworm check: --before goes with one survey to check, not several\n"
       "Check each with its own.\n"},
      {"now.yaml --before absent-2022.yaml", 3, "tinworm: absent-2022.yaml: no such file\n"},
      {"now.yaml --before bad.yaml", 1, bad_survey_problems},
  };
  for (const auto& c : cases) {
    const Ended ended = workshop.run("check --panels panels " + c.arguments);
    EXPECT_EQ(ended.status, c.status) << c.arguments;
    EXPECT_EQ(ended.messages, c.messages);
    EXPECT_EQ(ended.results, "");
  }
}

}  // namespace
}  // namespace tinworm::verbs
