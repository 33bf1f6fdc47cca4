// The owner's paper and the workshop's: what stands on each page, where links lead, what is
// private.
#include "documents/report.hpp"

#include <algorithm>
#include <map>
#include <set>

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "documents/answers.hpp"
#include "documents/fixture.hpp"
#include "documents/paper.hpp"
#include "documents/papers.hpp"
#include "output/work_figures.hpp"
#include "scene/fixture.hpp"

namespace tinworm::documents {
namespace {

using fixture::Papers;
using fixture::papers;
using fixture::Shot;
using testing::HasSubstr;
using testing::Not;

// Something found on sixty zones, a far and a near photo of every third of them.
Shot big_survey() {
  Shot shot;
  shot.survey = scene::fixture::clean_survey(scene::fixture::plan());
  const survey::Rust words[] = {survey::Rust::pitting, survey::Rust::scale, survey::Rust::hole,
                                survey::Rust::seam, survey::Rust::surface};
  int index = 0;
  for (const body::Zone& zone : shot.survey.body->zones) {
    if (index == 60) break;
    survey::Spot spot = scene::fixture::spot("lower edge", words[index % 5], {}, {120, 60});
    if (index % 3 == 0) shot.take(spot.photos, 2);
    shot.survey.zones[zone.number].found.push_back(spot);
    ++index;
  }
  return shot;
}

bool is_upright(const scene::Page& page) {
  return page.height_mm > page.width_mm;
}

std::vector<const scene::Photo*> photos_on(const scene::Page& page) {
  std::vector<const scene::Photo*> found;
  for (const scene::Layer& layer : page.layers)
    for (const scene::Item& item : layer.items)
      if (const auto* photo = std::get_if<scene::Photo>(&item)) found.push_back(photo);
  return found;
}

class BigReport : public testing::TestWithParam<ReportOptions> {};

TEST_P(BigReport, SixtyZonesAndFortyPhotosStayWithinTwentyFivePages) {
  const Shot shot = big_survey();
  ASSERT_EQ(shot.photos, 40);
  const Papers made = papers(shot, GetParam());
  EXPECT_LE(made.report.size(), 25U);
  std::size_t photos = 0;
  for (const scene::Page& page : made.report) photos += photos_on(page).size();
  EXPECT_EQ(photos, 40U);
}

TEST_P(BigReport, NothingOverlapsOrLeavesThePaper) {
  for (const scene::Page& page : papers(big_survey(), GetParam()).report) {
    if (!is_upright(page)) continue;  // sheets have tests of their own
    std::vector<scene::Area> areas;
    for (const scene::Text* text : fixture::running_text(page)) areas.push_back(text->area);
    for (const scene::Photo* photo : photos_on(page)) areas.push_back(photo->area);
    for (std::size_t i = 0; i < areas.size(); ++i) {
      EXPECT_TRUE(page.frame.grown(1e-6).contains(areas[i])) << page.label;
      for (std::size_t j = 0; j < i; ++j)
        EXPECT_FALSE(areas[i].grown(-0.25).overlaps(areas[j].grown(-0.25)))
            << page.label << ": " << i << " and " << j;
    }
  }
}

TEST_P(BigReport, NoHeadingIsTheLastOfItsPage) {
  for (const scene::Page& page : papers(big_survey(), GetParam()).report) {
    const auto running = fixture::running_text(page);
    if (!is_upright(page) || running.empty()) continue;
    const auto lowest = *std::ranges::max_element(
        running, {}, [](const scene::Text* text) { return text->area.y_mm; });
    EXPECT_FALSE(fixture::is_heading(*lowest)) << page.label << ": " << lowest->text;
  }
}

TEST_P(BigReport, EveryPageHasItsNumberTheCautionAndTheFingerprint) {
  const Papers made = papers(big_survey(), GetParam());
  for (std::size_t i = 0; i < made.report.size(); ++i) {
    const std::string words = fixture::words(made.report[i]);
    EXPECT_THAT(words, HasSubstr(fmt::format("page {} of {}", i + 1, made.report.size())));
    EXPECT_THAT(words, HasSubstr("What wasn't seen is")) << i + 1;
    EXPECT_THAT(words, HasSubstr(made.result.sha256.substr(0, 12)));
    EXPECT_EQ(made.report[i].label, fmt::format("{}", i + 1));
  }
}

TEST_P(BigReport, LinksLeadBothWaysBetweenPlacesAndSheets) {
  const Papers made = papers(big_survey(), GetParam());
  std::map<std::string, std::size_t> places;
  for (std::size_t i = 0; i < made.report.size(); ++i)
    for (const scene::Place& place : made.report[i].places)
      EXPECT_TRUE(places.emplace(place.name, i).second) << place.name << " twice";
  std::size_t to_sheets = 0, from_sheets = 0, to_findings = 0;
  for (std::size_t i = 0; i < made.report.size(); ++i)
    for (const scene::Link& link : made.report[i].links) {
      ASSERT_TRUE(places.contains(link.to)) << link.to;
      to_sheets += is_upright(made.report[i]) && !is_upright(made.report[places[link.to]]);
      from_sheets += !is_upright(made.report[i]) && is_upright(made.report[places[link.to]]);
      to_findings += i == 0 && link.to.starts_with("found-");
    }
  EXPECT_GE(to_sheets, 2 * 60U);  // each finding, each row
  EXPECT_GE(from_sheets, 60U);    // each number
  EXPECT_EQ(to_findings, 3U);     // the worst three
}

INSTANTIATE_TEST_SUITE_P(Papers, BigReport,
                         testing::Values(ReportOptions{scene::Paper::a4, quantity::Units::mm},
                                         ReportOptions{scene::Paper::letter, quantity::Units::inch},
                                         ReportOptions{scene::Paper::a3, quantity::Units::mm}));

TEST(Report, TheFirstPageAnswersInOrder) {
  Shot shot = big_survey();
  survey::Spot hanger = scene::fixture::spot("lower edge", survey::Rust::scale, {}, {120, 60});
  hanger.at = scene::fixture::at(shot.survey.body->zone(85)->stations.front());
  hanger.hand = survey::Hand::breaks;
  shot.survey.zones[85].found = {hanger};
  const Papers made = papers(shot);
  const std::string page = fixture::words(made.report.front());
  std::size_t at = 0;
  for (const char* question :
       {"Wherry 1200, built 1967", "Can it be driven?", "Verdict: keep it parked until mended.",
        "The worst three places", "Rear spring hanger, left (85), lower edge",
        "Not seen, or only judged, and could change it", "What to stop now", "Look again",
        "What to do first", "What it may take", "Sheets: pages 2 to 3."}) {
    const std::size_t found = page.find(question, at);
    ASSERT_NE(found, std::string::npos) << question;
    at = found;
  }
  for (const WorstPlace& place : worst_places(made.result, 3))
    EXPECT_THAT(page, HasSubstr(place.title.substr(0, 20)));
}

TEST(Report, APhotoThatIsMissingIsAMarkedGap) {
  Shot shot = big_survey();
  shot.album["photos/IMG_1.jpg"] = tl::make_unexpected(std::string("there is no such photo"));
  shot.album.erase("photos/IMG_2.jpg");
  const std::string words = fixture::words(papers(shot).report);
  EXPECT_THAT(words, HasSubstr("Photo missing: there is no such photo."));
  EXPECT_THAT(words, HasSubstr("Photo missing: not at hand."));
  EXPECT_THAT(words, HasSubstr("IMG_1"));
  EXPECT_THAT(words, HasSubstr("IMG_2"));
}

TEST(Report, EveryPhotoOfASurveyIsShown) {
  Shot shot = big_survey();
  survey::Zone& zone = shot.survey.zones[51];
  shot.take(zone.photos, 7);
  shot.take(zone.found.front().photos, 9);
  zone.repairs.emplace_back();
  shot.take(zone.repairs.back().photos, 3);
  survey::Spot station;
  station.name = "middle";
  station.rust = survey::Rust::none;
  station.metal_mm = {1.05, 1.06};
  zone.reference_mm = {1.1, 1.1};
  shot.take(station.photos, 1);
  zone.found.push_back(station);
  std::multiset<std::string> captions;
  for (const scene::Page& page : papers(shot).report)
    for (const scene::Text* text : scene::texts(page))
      if (const std::size_t from = text->text.find("IMG_"); from != std::string::npos)
        captions.insert(text->text.substr(from));
  EXPECT_EQ(captions.size(), 60U);
  for (int i = 1; i <= 60; ++i) EXPECT_EQ(captions.count(fmt::format("IMG_{}", i)), 1U) << i;
}

TEST(Report, IsTheOwnersAndTheWorkshopsPaperIsNot) {
  const Papers made = papers(big_survey());
  const std::string owner = fixture::words(made.report), shop = fixture::words(made.work);
  for (const char* secret : {"Owner Private", "PRIVATE 1", "W12-PRIVATE", "Private Lane"}) {
    EXPECT_THAT(owner, HasSubstr(secret));
    EXPECT_THAT(shop, Not(HasSubstr(secret)));
  }
  for (const char* money : {"9 512", "9512", "asked"}) EXPECT_THAT(shop, Not(HasSubstr(money)));
  EXPECT_THAT(shop, Not(HasSubstr("a private note")));
  EXPECT_THAT(shop, HasSubstr("Tasks in order"));
  EXPECT_THAT(shop, HasSubstr("What could double it"));
  EXPECT_THAT(shop, HasSubstr(made.result.caution.substr(0, 40)));
}

TEST(Report, OfASoundCarSaysWhatWasLookedAtAndNoMore) {
  Shot shot;
  shot.survey = scene::fixture::clean_survey(scene::fixture::plan());
  const std::string words = fixture::words(papers(shot).report);
  EXPECT_THAT(words, HasSubstr("No rust was found where looked."));
  EXPECT_THAT(words, HasSubstr("Nothing was found that asks for work where looked."));
  EXPECT_THAT(words, HasSubstr("No repair was noted. Good repairs don't show."));
  EXPECT_THAT(words, Not(HasSubstr("rust-free")));
}

TEST(Report, TheLongestInterestStandsAboveTheFootWhereItIsSigned) {
  Shot shot;
  shot.survey = scene::fixture::clean_survey(scene::fixture::plan());
  shot.survey.visit.interest = std::string(2000, 'W');
  const Papers made = papers(shot);
  const std::string signs = "interest in a sale of this car: ";
  const auto page = std::ranges::find_if(made.report, [&](const scene::Page& each) {
    return is_upright(each) && fixture::words(each).find(signs) != std::string::npos;
  });
  ASSERT_NE(page, made.report.end());
  for (const scene::Text* text : fixture::running_text(*page))
    EXPECT_TRUE(upright(scene::Paper::a4).text.contains(text->area)) << text->text;
}

// The first page and the plan of work say one figure.
TEST(Report, ItsFirstPageAndItsPlanOfWorkAgree) {
  const Papers made = papers(big_survey());
  const std::string first = fixture::words(made.report.front());
  const std::string all = fixture::words(made.report);
  const std::string mean = output::money_text(made.plan.cost.mean);
  const std::string row =
      fmt::format("mean {} {} ", output::hours_text(made.plan.hours.mean), mean);
  EXPECT_THAT(all, HasSubstr(row));
  EXPECT_NE(made.plan.cost.mean, made.plan.cost.sum.likely);
  EXPECT_THAT(first, HasSubstr(fmt::format("about {} EUR and {} h", mean,
                                           output::hours_text(made.plan.hours.mean))));
}

TEST(Report, ContentsNameThePagesWhereSectionsStand) {
  const Papers made = papers(big_survey());
  const std::string first = fixture::words(made.report.front());
  int sections = 0;
  for (std::size_t i = 1; i < made.report.size(); ++i) {
    if (!is_upright(made.report[i])) continue;
    for (const scene::Outlined& each : made.report[i].outline) {
      ++sections;
      EXPECT_THAT(first, HasSubstr(fmt::format("{}: {}.", each.text, i + 1)));
    }
  }
  EXPECT_GE(sections, 8);
}

TEST(Report, SaysTheSameTwice) {
  const Shot shot = big_survey();
  EXPECT_EQ(fixture::words(papers(shot).report), fixture::words(papers(shot).report));
}

}  // namespace
}  // namespace tinworm::documents
