// No damage is lost: whatever a place shows and however its zone was seen, no output says that
// nothing was found.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "documents/report.hpp"
#include "output/explain.hpp"
#include "output/weigh_csv.hpp"
#include "output/weigh_json.hpp"
#include "output/weigh_text.hpp"
#include "output/work_csv.hpp"
#include "output/work_json.hpp"
#include "output/work_text.hpp"
#include "scene/fixture.hpp"
#include "scene/listing.hpp"
#include "scene/phone.hpp"
#include "work/plan.hpp"

namespace tinworm {
namespace {

using survey::Rust;
using survey::SeenWord;
using weighing::Result;
using weighing::Step;
using weighing::Verdict;

struct Sign {
  const char* what;
  std::function<void(survey::Zone&, survey::Spot&)> record;
};

const Sign signs[] = {
    {"hole",
     [](auto&, auto& spot) {
       spot.hole = survey::Size{40, 25};
     }},
    {"crack", [](auto&, auto& spot) { spot.crack_mm = 35; }},
    {"gives", [](auto&, auto& spot) { spot.hand = survey::Hand::gives; }},
    {"breaks", [](auto&, auto& spot) { spot.hand = survey::Hand::breaks; }},
    {"crunches", [](auto&, auto& spot) { spot.tap = survey::Tap::crunches; }},
    {"probe goes in", [](auto&, auto& spot) { spot.probe = survey::Probe::goes_in; }},
    {"pit", [](auto&, auto& spot) { spot.pit_mm = {.1}; }},
    {"pit through", [](auto&, auto& spot) { spot.pit_mm = {3}; }},
    {"reading below the limit",
     [](auto& zone, auto& spot) {
       zone.reference_mm = {1.2, 1.2, 1.2};
       spot.metal_mm = {.7, .7, .7};
     }},
    {"stuffed", [](auto&, auto& spot) { spot.stuffed = survey::Stuffed::foam; }},
    {"stuffed and firm",
     [](auto&, auto& spot) {
       spot.stuffed = survey::Stuffed::mesh;
       spot.hand = survey::Hand::firm;
       spot.tap = survey::Tap::rings;
     }},
    {"reading far under an assumed sheet",
     [](auto&, auto& spot) {
       spot.metal_mm = {.3, .3};
     }},
};

const SeenWord seen_words[] = {SeenWord::bare, SeenWord::coated, SeenWord::part, SeenWord::scope,
                               SeenWord::tap};

constexpr int sill = 51, wing = 43;

survey::Survey damaged(int zone, SeenWord seen, const Sign& sign, std::optional<Rust> rust) {
  survey::Survey survey = scene::fixture::clean_survey(scene::fixture::plan());
  survey.seen[zone].word = seen;
  survey.seen[zone].share = seen == SeenWord::tap ? 0 : seen == SeenWord::part ? .5 : 1;
  survey::Spot spot;
  spot.name = "rear end";
  spot.rust = rust;
  sign.record(survey.zones[zone], spot);
  survey.zones[zone].found = {spot};
  return survey;
}

// All that stands on a picture or paper, on one line.
std::string words(const std::vector<scene::Page>& pages) {
  std::string all;
  for (const scene::Page& page : pages)
    for (const scene::Text* text : scene::texts(page)) all += text->text + " ";
  return all;
}

struct Output {
  const char* name;
  std::string text;
};

std::vector<Output> outputs(const Result& result, int zone) {
  const auto& measure = scene::fixture::measured;
  const work::Plan plan = work::plan(result, rates::Rates{});
  output::TextStyle wide;
  wide.width = 10'000;
  const auto phone =
      scene::phone_page(result, scene::SheetKind::structure, scene::DiagramOptions{}, measure);
  const auto sale = scene::listing_phone(result, scene::SheetKind::structure, {}, measure);
  return {
      {"weigh text", output::weigh_text(result, wide)},
      {"explain", output::explain_zone(result, *result.zone(zone), wide)},
      {"weigh json", output::weigh_json(result).dump()},
      {"weigh csv", output::weigh_csv_rows(result)},
      {"work text", output::work_text(result, plan, wide)},
      {"work json", output::work_json(result, plan).dump()},
      {"work csv", output::work_csv_rows(result, plan)},
      {"map", words(scene::diagram(result, scene::DiagramOptions{}, measure))},
      {"map for a telephone", words(std::vector<scene::Page>{*phone})},
      {"listing", words(scene::listing(result, {}, measure))},
      {"listing for a telephone", words(std::vector<scene::Page>{*sale})},
      {"report", words(documents::report(result, plan, {}, documents::ReportOptions{}, measure))},
      {"work paper",
       words(documents::work_paper(result, plan, documents::ReportOptions{}, measure))}};
}

// The report's table of constants says what is taken where nothing is found; that speaks of no car.
const char* const says_nothing[] = {
    "none found", "None found",    "othing found where", "othing found forbids", "othing was found",
    "No rust",    "nothing-found", "eave alone",         "leave-alone"};

void expect_counted(const Result& result, int number, SeenWord seen) {
  const weighing::Zone& zone = *result.zone(number);
  EXPECT_NE(result.verdict, Verdict::leave_alone);
  EXPECT_NE(result.verdict, Verdict::not_known);
  EXPECT_GT(zone.step, Step::sound);
  EXPECT_TRUE(zone.metal);
  EXPECT_GT(zone.weight.high, 0);
  EXPECT_EQ(zone.spots[0].rank, 1);
  if (seen != SeenWord::tap) return;
  EXPECT_EQ(zone.seen_share, 0);
  EXPECT_THAT(result.not_seen, testing::Contains(testing::Field(&weighing::NotSeen::zone, number)));
  EXPECT_THAT(result.open_up, testing::Contains(testing::Field(&weighing::OpenUp::zone, number)));
}

TEST(DamageFound, CountsHoweverItsZoneWasSeen) {
  for (const int zone : {sill, wing})
    for (const SeenWord seen : seen_words)
      for (const Sign& sign : signs)
        for (const std::optional<Rust> rust : {std::optional<Rust>(), std::optional(Rust::none)}) {
          SCOPED_TRACE(fmt::format("{} in zone {}, {}, rust {}", sign.what, zone,
                                   survey::word(seen), rust ? "none" : "not given"));
          expect_counted(scene::fixture::weighed(damaged(zone, seen, sign, rust)), zone, seen);
        }
}

// The same finding weighs the same at its place, whether it was seen or only tapped.
TEST(DamageFound, WeighsTheSameWhereOnlyATapFoundIt) {
  for (const int zone : {sill, wing})
    for (const Sign& sign : signs) {
      SCOPED_TRACE(fmt::format("{} in zone {}", sign.what, zone));
      const Result bare = scene::fixture::weighed(damaged(zone, SeenWord::bare, sign, {}));
      const Result tap = scene::fixture::weighed(damaged(zone, SeenWord::tap, sign, {}));
      EXPECT_EQ(tap.verdict, bare.verdict);
      EXPECT_EQ(tap.reasons.at(0).text, bare.reasons.at(0).text);
      EXPECT_EQ(tap.reasons.at(0).rule, bare.reasons.at(0).rule);
      EXPECT_EQ(tap.zone(zone)->step, bare.zone(zone)->step);
      EXPECT_EQ(tap.zone(zone)->weight, bare.zone(zone)->weight);
      EXPECT_EQ(tap.zone(zone)->rusted_share, bare.zone(zone)->rusted_share);
      EXPECT_EQ(tap.structure.value, bare.structure.value);
      EXPECT_EQ(tap.skin.value, bare.skin.value);
      EXPECT_GE(tap.structure.high, bare.structure.high - 1e-12);
      const work::Plan looked = work::plan(bare, rates::Rates{}),
                       tapped = work::plan(tap, rates::Rates{});
      ASSERT_EQ(tapped.tasks.size(), looked.tasks.size());
      EXPECT_EQ(tapped.tasks[0].what, looked.tasks[0].what);
      EXPECT_GE(tapped.tasks[0].hours.high, looked.tasks[0].hours.high);
    }
}

TEST(DamageFound, StandsOnNoPaperBesideNothingFound) {
  for (const int zone : {sill, wing})
    for (const SeenWord seen : seen_words)
      for (const Sign& sign : signs) {
        if (zone == wing && seen != SeenWord::tap) continue;
        const Result result = scene::fixture::weighed(damaged(zone, seen, sign, Rust::none));
        for (const Output& output : outputs(result, zone))
          for (const char* const phrase : says_nothing)
            EXPECT_EQ(output.text.find(phrase), std::string::npos)
                << output.name << " says \"" << phrase << "\": " << sign.what << " in zone " << zone
                << ", " << survey::word(seen);
      }
}

// The largest hole alone is never all that a paper tells, nor is stuffing kept from anybody.
TEST(DamageFound, SaysHowManyHolesAndWhatStuffsThem) {
  const Sign sign = {"holes", [](auto&, auto& spot) {
                       spot.hole = survey::Size{40, 25};
                       spot.other_holes = {{20, 20}, {8, 8}};
                       spot.stuffed = survey::Stuffed::mesh;
                     }};
  const Result result = scene::fixture::weighed(damaged(sill, SeenWord::bare, sign, Rust::scale));
  for (const Output& output : outputs(result, sill)) {
    const bool json = output.name == std::string("weigh json");
    const bool csv = output.name == std::string("weigh csv");
    const bool report = output.name == std::string("report");
    const char* const holes = json     ? R"("holes":{"count":3,"largest_mm":40.0})"
                              : csv    ? ",3,40,mesh"
                              : report ? "another 20 mm x 20 mm, another 8 mm x 8 mm"
                                       : "3 holes, the largest 40 x 25 mm";
    const char* const stuffed = json ? R"("stuffed":"mesh")" : csv ? ",mesh" : "stuffed with mesh";
    EXPECT_NE(output.text.find(holes), std::string::npos) << output.name << "\n" << output.text;
    EXPECT_NE(output.text.find(stuffed), std::string::npos) << output.name;
  }
}

// Where nothing was found the papers say so: the phrases of the test above aren't empty words.
TEST(DamageFound, IsToldApartFromNothingFound) {
  const Result clean =
      scene::fixture::weighed(scene::fixture::clean_survey(scene::fixture::plan()));
  EXPECT_EQ(clean.verdict, Verdict::leave_alone);
  const std::vector<Output> all = outputs(clean, sill);
  for (const Output& output : all)
    EXPECT_TRUE(std::ranges::any_of(says_nothing,
                                    [&](const char* phrase) {
                                      return output.text.find(phrase) != std::string::npos;
                                    }) ||
                output.name == std::string("explain") || output.name == std::string("work csv"))
        << output.name;
}

}  // namespace
}  // namespace tinworm
