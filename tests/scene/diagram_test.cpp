// What must hold of every diagram, on every built-in body and every paper.
#include "scene/diagram.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "scene/figure.hpp"
#include "scene/fixture.hpp"
#include "scene/naming.hpp"
#include "scene/not_seen.hpp"
#include "scene/palette.hpp"

namespace tinworm::scene {
namespace {

using testing::HasSubstr;
using testing::Not;
using weighing::Step;

struct Drawn {
  std::string name;
  weighing::Result result;
  DiagramOptions options;
  std::vector<Page> pages;
};

// Every built-in body with a busy survey on every paper.
const std::vector<Drawn>& all_drawn() {
  static const std::vector<Drawn> all = [] {
    std::vector<Drawn> made;
    for (const body::BuiltIn& each : body::built_in_plans()) {
      const auto result = fixture::weighed(fixture::busy_survey(fixture::plan(each.name)));
      for (const auto& [paper, word] :
           {std::pair{Paper::a4, "A4"}, {Paper::a3, "A3"}, {Paper::letter, "Letter"}}) {
        DiagramOptions options;
        options.paper = paper;
        options.circles = paper == Paper::a3;
        made.push_back({fmt::format("{} on {}", each.name, word), result, options,
                        fixture::drawn(result, options)});
      }
    }
    return made;
  }();
  return all;
}

TEST(Diagram, NoTwoTextsOverlap) {
  for (const Drawn& drawn : all_drawn()) {
    for (const Page& page : drawn.pages) {
      const auto all = texts(page);
      for (std::size_t i = 0; i < all.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j) {
          EXPECT_FALSE(all[i]->area.grown(-0.1).overlaps(all[j]->area.grown(-0.1)))
              << drawn.name << ", " << page.title << ": \"" << all[i]->text << "\" and \""
              << all[j]->text << "\"";
        }
      }
    }
  }
}

TEST(Diagram, LeadersCrossNoWords) {
  const auto crosses_area = [](At a, At b, const Area& area) {
    for (int k = 0; k <= 200; ++k) {
      const double t = k / 200.0;
      if (area.contains(At{std::lerp(a.x_mm, b.x_mm, t), std::lerp(a.y_mm, b.y_mm, t)}))
        return true;
    }
    return false;
  };
  for (const Drawn& drawn : all_drawn()) {
    for (const Page& page : drawn.pages) {
      for (const Item& item : fixture::layer(page, "leaders")
                                  ? fixture::layer(page, "leaders")->items
                                  : std::vector<Item>{}) {
        const auto& shape = std::get<Shape>(item);
        if (!shape.stroke || shape.lines[0].points.size() != 2) continue;
        const At from = shape.lines[0].points[0], to = shape.lines[0].points[1];
        for (const Text* text : texts(page)) {
          const Area own = text->area.grown(-0.15);
          if (own.grown(0.6).contains(from)) continue;  // the words it starts from
          EXPECT_FALSE(crosses_area(from, to, own))
              << drawn.name << ", " << page.title << ": through \"" << text->text << "\"";
        }
      }
    }
  }
}

TEST(Diagram, EveryNumberStandsInItsZoneOrIsLedToIt) {
  for (const Drawn& drawn : all_drawn()) {
    std::vector<Sheet> sheets;
    for (const SheetKind kind : drawn.options.sheets) {
      for (const Sheet& sheet : lay_out(kind, *drawn.result.body, drawn.options.paper)) {
        sheets.push_back(sheet);
      }
    }
    ASSERT_GE(drawn.pages.size(), sheets.size());
    for (std::size_t i = 0; i < sheets.size(); ++i) {
      std::size_t expected = 0;
      for (const PlacedView& view : sheets[i].views) {
        for (const body::Zone& zone : drawn.result.body->zones) {
          const auto* drawing = drawing_on(sheets[i].kind, zone, view.projection.view);
          if (drawing == nullptr) continue;
          ++expected;
          const auto shape = on_paper(drawing->outline, view.projection);
          const bool labelled = std::any_of(
              drawn.pages[i].labels.begin(), drawn.pages[i].labels.end(), [&](const Label& label) {
                const At at = label.led ? label.anchor : label.plate.middle();
                return label.zone == zone.number && inside(shape, at);
              });
          EXPECT_TRUE(labelled) << drawn.name << ", " << drawn.pages[i].title << ": zone "
                                << zone.number << ", " << body::word(view.projection.view);
        }
      }
      EXPECT_EQ(drawn.pages[i].labels.size(), expected) << drawn.name;
    }
  }
}

// What a text of the page stands on: the last fill before it that holds all of it, else paper.
Colour ground_under(const Page& page, const Text* text) {
  Colour ground = paper;
  for (const Layer& layer : page.layers) {
    for (const Item& item : layer.items) {
      if (std::get_if<Text>(&item) == text) return ground;
      const auto* shape = std::get_if<Shape>(&item);
      const auto* clipped = std::get_if<Clipped>(&item);
      if (clipped != nullptr && bounds(clipped->clip).contains(text->area.grown(-0.3)))
        shape = &clipped->within[0];
      if (shape == nullptr || !shape->fill) continue;
      if (bounds(shape->lines).contains(text->area.grown(-0.3))) ground = *shape->fill;
    }
  }
  return ground;
}

TEST(Diagram, NoTextIsSmallOrFaint) {
  for (const Drawn& drawn : all_drawn()) {
    for (const Page& page : drawn.pages) {
      for (const Text* text : texts(page)) {
        EXPECT_GE(text->size_pt, 6.5) << text->text;
        EXPECT_GE(contrast(text->colour, ground_under(page, text)), 4.5) << text->text;
      }
    }
  }
}

Area covered(const Item& item) {
  if (const auto* shape = std::get_if<Shape>(&item)) return bounds(shape->lines);
  if (const auto* clipped = std::get_if<Clipped>(&item)) return bounds(clipped->clip);
  if (const auto* text = std::get_if<Text>(&item)) return text->area;
  return std::get<Photo>(item).area;
}

TEST(Diagram, NothingLiesOutsideTheFrame) {
  for (const Drawn& drawn : all_drawn()) {
    for (const Page& page : drawn.pages) {
      for (const Layer& layer : page.layers) {
        for (const Item& item : layer.items) {
          const Area area = covered(item);
          EXPECT_TRUE(page.frame.grown(0.01).contains(area))
              << drawn.name << ", " << page.title << ", " << layer.name << ": " << area.x_mm << " "
              << area.y_mm << " to " << area.right() << " " << area.bottom();
        }
      }
    }
  }
}

bool fills_with(const Page& page, std::string_view name, Colour colour) {
  const Layer* layer = fixture::layer(page, name);
  if (layer == nullptr) return false;
  return std::any_of(layer->items.begin(), layer->items.end(), [&](const Item& item) {
    const auto* clipped = std::get_if<Clipped>(&item);
    if (clipped != nullptr) return clipped->within[0].fill == colour;
    const auto* edged = std::get_if<Shape>(&item);
    if (edged == nullptr || !edged->stroke) return false;
    return edged->fill == colour || edged->stroke->colour == colour;
  });
}

std::string all_words(const Page& page) {
  std::string all;
  for (const Text* text : texts(page)) all += (all.empty() ? "" : " ") + text->text;
  return all;
}

// With its meaning, or by its name alone where the key is set briefly.
bool in_key(const Page& page, Step step) {
  const std::string name(step_name(step));
  const auto all = texts(page);
  return std::any_of(all.begin(), all.end(), [&](const Text* text) {
    return text->says == Says::legend && (text->text == name || text->text.starts_with(name + ":"));
  });
}

// Read off the colours on the page, not off what the drawing says it used.
TEST(Diagram, TheKeyListsExactlyTheStepsThatAreDrawn) {
  auto cases = all_drawn();
  const auto clean = fixture::weighed(fixture::clean_survey(fixture::plan()));
  Drawn plain;
  plain.name = "clean";
  plain.result = clean;
  plain.pages = fixture::drawn(clean);
  cases.push_back(plain);
  for (const Drawn& drawn : cases) {
    for (const Page& page : drawn.pages) {
      if (page.labels.empty()) continue;
      for (const Step step : {Step::not_seen, Step::sound, Step::bloom, Step::pitted, Step::thin,
                              Step::weak, Step::holed}) {
        const bool is_drawn =
            step == Step::not_seen
                ? fills_with(page, "zones", not_seen_ground)
                : fills_with(page, "numbers", strong(step)) ||
                      (step != Step::sound && fills_with(page, "spots", strong(step)));
        EXPECT_EQ(in_key(page, step), is_drawn)
            << drawn.name << ", " << page.title << ": " << step_name(step);
      }
    }
  }
}

TEST(Diagram, TheKeyOfACleanCarIsShort) {
  const auto pages = fixture::drawn(fixture::weighed(fixture::clean_survey(fixture::plan())));
  EXPECT_EQ(
      fixture::said(pages[0], Says::legend),
      "Key sound: clean where it was looked at white ground: seen bare, or measured "
      "broken edge, \u2248: judged, not measured main: carries the car local: stiffens or shares "
      "skin: hangs on, keeps water out");
}

TEST(Diagram, LimitsTravelWithEveryPage) {
  for (const Drawn& drawn : all_drawn()) {
    for (const Page& page : drawn.pages) {
      EXPECT_EQ(fixture::said(page, Says::caution), drawn.result.caution) << page.title;
      const std::string title = fixture::said(page, Says::title);
      EXPECT_THAT(title, HasSubstr("2025-04-12"));
      EXPECT_THAT(title, HasSubstr("3f9a0c1be27d"));
      EXPECT_THAT(title, HasSubstr(capitalised(weighing::sentence(drawn.result.verdict))));
      ASSERT_FALSE(drawn.result.not_seen.empty());
      EXPECT_THAT(all_words(page), HasSubstr("Not seen, so not known"));
    }
  }
}

// By name, on the sheet that shows it or on the page that its sheet points to.
TEST(Diagram, EveryPartNotSeenIsNamed) {
  for (const Drawn& drawn : all_drawn()) {
    std::string all;
    for (const Page& page : drawn.pages) all += all_words(page) + " ";
    for (const weighing::NotSeen& each : drawn.result.not_seen) {
      const weighing::Zone* zone = drawn.result.zone(each.zone);
      ASSERT_NE(zone, nullptr);
      EXPECT_THAT(all, HasSubstr(zone->name)) << drawn.name << " " << each.zone;
    }
  }
}

TEST(Diagram, WorstConsequenceComesFirstAmongWhatWasNotSeen) {
  const auto result = fixture::weighed(fixture::busy_survey(fixture::plan()));
  const auto lines = not_seen_lines(result);
  ASSERT_FALSE(lines.empty());
  std::vector<int> order;
  for (const NotSeenLine& line : lines)
    order.insert(order.end(), line.zones.begin(), line.zones.end());
  for (std::size_t i = 1; i < order.size(); ++i) {
    const auto place = [&](int zone) {
      return std::ranges::find(result.open_up, zone, &weighing::OpenUp::zone);
    };
    if (lines.size() == 1) {
      EXPECT_LE(place(order[i - 1]), place(order[i]));
    }
  }
  ASSERT_FALSE(result.open_up.empty());
  const auto first = std::ranges::find_if(result.open_up, [&](const weighing::OpenUp& each) {
    return std::ranges::find(order, each.zone) != order.end();
  });
  ASSERT_NE(first, result.open_up.end());
  EXPECT_EQ(order.front(), first->zone);
}

TEST(Diagram, ManyReasonsRunOnToAPageOfTheirOwn) {
  survey::Survey survey = fixture::clean_survey(fixture::plan());
  std::vector<std::string> reasons;
  for (auto& [number, seen] : survey.seen) {
    if (number % 2 == 0) continue;
    seen = {
        survey::SeenWord::hidden,
        0,
        fmt::format("zone {} lay behind something that could not be taken off that day", number),
        {}};
    reasons.push_back(seen.reason);
    survey.zones.erase(number);
  }
  const auto pages = fixture::drawn(fixture::weighed(survey));
  ASSERT_EQ(pages.size(), 3U);
  EXPECT_THAT(pages[2].title, HasSubstr("ot seen"));
  EXPECT_THAT(fixture::said(pages[0], Says::not_seen), HasSubstr("The rest on page 3."));
  for (const std::string& reason : reasons) EXPECT_THAT(all_words(pages[2]), HasSubstr(reason));
}

TEST(Diagram, WhatThePlanCannotDrawIsSaid) {
  survey::Survey survey = fixture::busy_survey(fixture::plan());
  survey::OwnZone own;
  own.key = "own-a";
  own.name = "sunroof tray";
  own.seen.word = survey::SeenWord::bare;
  own.zone.found = {fixture::spot("drain", survey::Rust::scale, {}, {30, 30})};
  for (int i = 0; i < 20; ++i) {
    own.name = fmt::format("own part {}", i);
    survey.own.push_back(own);
    const auto pages = fixture::drawn(fixture::weighed(survey));
    EXPECT_THAT(fixture::all_said(pages), HasSubstr(own.name)) << i;
    const std::string limits = fixture::said(pages[0], Says::not_seen);
    if (limits.find("The rest") != std::string::npos) {
      EXPECT_THAT(limits, HasSubstr("what was found but is not drawn"));
    }
    if (i > 2) i += 7;
  }
}

TEST(Diagram, AnOwnPartThatNobodySawHasNoNumber) {
  survey::Survey survey = fixture::clean_survey(fixture::plan());
  survey.own = {{"own-a",
                 "sunroof tray",
                 body::Role::local,
                 body::Side::left,
                 {},
                 {},
                 {},
                 {survey::SeenWord::hidden, 0, "headlining"},
                 {}}};
  const auto result = fixture::weighed(survey);
  const std::string said = fixture::all_said(fixture::drawn(result));
  EXPECT_THAT(said, HasSubstr("sunroof tray, left: not seen,"));
  EXPECT_THAT(said, Not(HasSubstr("No zone was left out")));
  EXPECT_THAT(said, Not(HasSubstr("0: headlining")));
  EXPECT_THAT(picture_description(result),
              HasSubstr("Not seen, so not known: what is not on the drawing."));
  survey.seen.erase(23);
  EXPECT_THAT(picture_description(fixture::weighed(survey)),
              HasSubstr("Not seen, so not known: zones 23 and what is not on the drawing."));
}

TEST(Diagram, PrivateKeysOnlyOnRequest) {
  const auto result = fixture::weighed(fixture::busy_survey(fixture::plan()));
  const std::string open = fixture::all_said(fixture::drawn(result));
  const std::vector<std::string> secrets{"Owner Private", "PRIVATE 1", "W12-PRIVATE",
                                         "Private Lane"};
  for (const std::string& secret : secrets) EXPECT_THAT(open, Not(HasSubstr(secret)));
  for (const char* never : {"private note", "9512", "S. Urveyor"}) {
    EXPECT_THAT(open, Not(HasSubstr(never)));
  }
  DiagramOptions options;
  options.private_too = options.signed_name = true;
  options.paper = Paper::a3;  // wide enough that none is cut
  const std::string closed = fixture::all_said(fixture::drawn(result, options));
  for (const std::string& secret : secrets) EXPECT_THAT(closed, HasSubstr(secret));
  EXPECT_THAT(closed, HasSubstr("S. Urveyor"));
  EXPECT_THAT(closed, Not(HasSubstr("9512")));
  EXPECT_THAT(picture_description(result), Not(HasSubstr("rivate")));
}

TEST(Diagram, TheWorstThreePlacesAreSaidInWords) {
  survey::Survey survey = fixture::clean_survey(fixture::plan());
  survey::Spot hole = fixture::spot("behind the eye", survey::Rust::hole, {}, {30, 14});
  survey.zones[85].found = {hole};
  survey.zones[51].reference_mm = {1.0, 1.0, 1.0};
  survey::Spot pitted =
      fixture::spot("rear end", survey::Rust::pitting, {1900, -740, 220}, {180, 60});
  pitted.metal_mm = {0.72, 0.70, 0.74};
  survey.zones[51].found = {pitted};
  const auto pages = fixture::drawn(fixture::weighed(survey));
  const std::string words = fixture::said(pages[0], Says::callout);
  EXPECT_THAT(words, HasSubstr("rear spring hanger, left behind the eye: holed, hole 30\u00d714"));
  EXPECT_THAT(words, HasSubstr("outer sill, left rear end: thin, 72 %, measured"));
  EXPECT_LT(words.rfind("rear spring hanger, left"), words.rfind("outer sill, left"));
}

// A letter stands once at its place and once in the list beside, in the order of the places.
TEST(Diagram, EveryLetterHasItsEntryAndEveryEntryItsLetter) {
  for (const Drawn& drawn : all_drawn()) {
    std::set<std::string> on_any;
    for (const Page& page : drawn.pages) {
      std::vector<std::string> at_places, listed;
      for (const Layer& layer : page.layers) {
        for (const Item& item : layer.items) {
          const auto* text = std::get_if<Text>(&item);
          if (text == nullptr || text->says != Says::rank) continue;
          (layer.name == "column" ? listed : at_places).push_back(text->text);
        }
      }
      EXPECT_THAT(listed, testing::ElementsAreArray(at_places)) << drawn.name << page.title;
      EXPECT_TRUE(std::is_sorted(listed.begin(), listed.end())) << drawn.name;
      EXPECT_TRUE(page.title != name_of(SheetKind::skin) || listed.empty()) << drawn.name;
      on_any.insert(listed.begin(), listed.end());
    }
    std::set<std::string> expected;
    for (std::size_t i = 0; i < lettered(drawn.result).size(); ++i)
      expected.insert(std::string(1, static_cast<char>('A' + i)));
    EXPECT_EQ(on_any, expected) << drawn.name;
    EXPECT_EQ(expected.size(), 9U) << drawn.name << ": not busy enough";
  }
}

TEST(Diagram, NotSeenIsNeverDrawnAsSound) {
  for (const Drawn& drawn : all_drawn()) {
    for (const Page& page : drawn.pages) {
      const Layer* zones = fixture::layer(page, "zones");
      if (zones == nullptr) continue;
      std::size_t grey = 0, expected = 0;
      for (const Item& item : zones->items) {
        const auto* clipped = std::get_if<Clipped>(&item);
        if (clipped == nullptr || clipped->within[0].fill != not_seen_ground) continue;
        ++grey;
        ASSERT_EQ(clipped->within.size(), 2U) << "the diagonals are missing";
        EXPECT_GE(clipped->within[1].stroke->width_pt * mm_per_pt, 0.5) << "bold";
      }
      for (const Label& label : page.labels) {
        const weighing::Zone* zone = drawn.result.zone(label.zone);
        expected += zone->fitted && zone->step == Step::not_seen;
      }
      EXPECT_EQ(grey, expected) << drawn.name << ", " << page.title;
    }
  }
}

TEST(Diagram, ABoxThatNobodyLookedIntoIsNotWhite) {
  survey::Survey survey = fixture::clean_survey(fixture::plan());
  const auto striped = [](const Page& page) {
    std::size_t count = 0;
    for (const Item& item : fixture::layer(page, "zones")->items) {
      const auto* clipped = std::get_if<Clipped>(&item);
      count += clipped && clipped->within.size() > 1 &&
               clipped->within[1].stroke->colour == not_seen_mark;
    }
    return count;
  };
  EXPECT_EQ(striped(fixture::drawn(fixture::weighed(survey))[0]), 0U);
  survey.zones[67].inside = survey::Inside::not_seen;
  const Page page = fixture::drawn(fixture::weighed(survey))[0];
  EXPECT_EQ(striped(page), 1U);
  EXPECT_THAT(fixture::said(page, Says::legend),
              HasSubstr("inside not seen: the rest is not known"));
  survey.seen[68] = {survey::SeenWord::part, 0.5, "", {}};
  EXPECT_THAT(fixture::said(fixture::drawn(fixture::weighed(survey))[0], Says::legend),
              HasSubstr("part or inside not seen: the rest is not known"));
}

TEST(Diagram, LinksNameEachZoneOnce) {
  for (const Drawn& drawn : all_drawn()) {
    std::set<std::string> names;
    for (const Page& page : drawn.pages) {
      for (const Place& place : page.places) EXPECT_TRUE(names.insert(place.name).second);
    }
    EXPECT_EQ(names.size(), drawn.result.body->zones.size()) << drawn.name;
  }
}

}  // namespace
}  // namespace tinworm::scene
