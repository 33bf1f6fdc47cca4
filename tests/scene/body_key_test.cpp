// The numbered key of every built-in body, on the two smaller papers.
#include "scene/body_key.hpp"

#include <algorithm>
#include <set>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "painting/measure.hpp"
#include "scene/fixture.hpp"

namespace tinworm::scene {
namespace {

using testing::Contains;

const std::vector<SheetKind> every_kind = {SheetKind::structure, SheetKind::skin, SheetKind::frame};

struct Key {
  body::PlanPtr plan;
  std::vector<Page> pages;
};

const std::vector<Key>& keys() {
  static std::vector<Key> all;
  if (!all.empty()) return all;
  for (const body::BuiltIn& each : body::built_in_plans()) {
    for (const Paper size : {Paper::a4, Paper::letter}) {
      const body::PlanPtr plan = fixture::plan(each.name);
      all.push_back({plan, body_key(plan, size, every_kind, painting::measure(), true)});
    }
  }
  return all;
}

std::vector<std::string> said(const Page& page) {
  std::vector<std::string> words;
  for (const Text* text : texts(page)) words.push_back(text->text);
  return words;
}

TEST(BodyKey, NumbersEveryZoneAndNamesIt) {
  for (const Key& key : keys()) {
    std::set<int> numbered;
    std::vector<std::string> words;
    for (const Page& page : key.pages) {
      for (const Label& label : page.labels) numbered.insert(label.zone);
      for (const std::string& word : said(page)) words.push_back(word);
    }
    for (const body::Zone& zone : key.plan->zones) {
      EXPECT_TRUE(numbered.contains(zone.number)) << zone.number;
      const std::string first = zone.name.substr(0, zone.name.find(' '));
      EXPECT_THAT(words, Contains(testing::StartsWith(first))) << zone.name;
    }
  }
}

TEST(BodyKey, NothingOverlapsOrLeavesTheFrame) {
  for (const Key& key : keys()) {
    for (const Page& page : key.pages) {
      const auto all = texts(page);
      for (std::size_t i = 0; i < all.size(); ++i) {
        EXPECT_TRUE(page.frame.contains(all[i]->area)) << all[i]->text;
        EXPECT_GE(all[i]->size_pt, 6.5);
        for (std::size_t j = 0; j < i; ++j) {
          EXPECT_FALSE(all[i]->area.grown(-0.1).overlaps(all[j]->area.grown(-0.1)))
              << all[i]->text << " and " << all[j]->text;
        }
      }
    }
  }
}

TEST(BodyKey, SaysNothingOfACarOrASurvey) {
  for (const Key& key : keys()) {
    for (const Page& page : key.pages) {
      for (const std::string& word : said(page)) {
        for (const char* never : {"sound", "Verdict", "Surveyed", "measured", "Not seen"}) {
          EXPECT_EQ(word.find(never), std::string::npos) << word;
        }
      }
    }
  }
}

TEST(BodyKey, OnePageForEachSheetThatTheBodyDraws) {
  const body::PlanPtr plan = fixture::plan("two-door-saloon");
  EXPECT_EQ(body_key(plan, Paper::a4, every_kind, painting::measure()).size(), 2u);
  EXPECT_EQ(body_key(plan, Paper::a4, {SheetKind::skin}, painting::measure()).size(), 1u);
  EXPECT_TRUE(body_key(plan, Paper::a4, {SheetKind::frame}, painting::measure()).empty());
}

TEST(BodyKey, NamesEveryMountAndEveryStation) {
  for (const body::BuiltIn& each : body::built_in_plans()) {
    const body::PlanPtr plan = fixture::plan(each.name);
    const auto pages = body_key(plan, Paper::a4, every_kind, painting::measure(), true);
    std::string all;
    for (const Page& page : pages)
      for (const std::string& word : said(page)) all += word + " ";
    for (const body::Mount& mount : plan->mounts)
      EXPECT_THAT(all, testing::HasSubstr(mount.what + ": ")) << each.name;
    for (const body::Zone& zone : plan->zones) {
      for (const body::Station& station : zone.stations) {
        const std::string first = station.name.substr(0, station.name.find(' '));
        EXPECT_THAT(all, testing::HasSubstr(first)) << each.name << " " << zone.number;
      }
    }
  }
}

}  // namespace
}  // namespace tinworm::scene
