// What must hold on any sheet of any survey: letters and entries, leaders, sizes, room.
#include <algorithm>
#include <map>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "painting/measure.hpp"
#include "paths.hpp"
#include "scene/figure.hpp"
#include "scene/free_space.hpp"
#include "scene/further_pages.hpp"
#include "scene/random_survey.hpp"
#include "verbs/plan_shelf.hpp"
#include "verbs/surveys.hpp"

namespace tinworm::scene {
namespace {

struct Drawn {
  std::string name;
  weighing::Result result;
  std::vector<Sheet> sheets;
  std::vector<Page> pages;  // those of the sheets first
};

Drawn drawn(std::string name, weighing::Result result) {
  Drawn all{std::move(name), std::move(result), {}, {}};
  const DiagramOptions options;
  all.pages = diagram(all.result, options, painting::measure());
  for (const SheetKind kind : options.sheets)
    for (Sheet& sheet : lay_out(kind, *all.result.body, options.paper))
      all.sheets.push_back(std::move(sheet));
  return all;
}

weighing::Result sample(const std::string& name) {
  verbs::PlanShelf plans("");
  const auto loaded = verbs::load_survey(source_folder() + "/output-samples/" + name, plans);
  if (!loaded.survey) throw std::runtime_error("the sample can't be read");
  return fixture::weighed(*loaded.survey);
}

void each_drawn(const std::function<void(const Drawn&)>& look) {
  for (const char* name : {"wherry-2025.yaml", "coble-2024.yaml"}) look(drawn(name, sample(name)));
  const auto& bodies = body::built_in_plans();
  for (unsigned seed = 1; seed <= 200; ++seed) {
    const std::string name(bodies[seed % bodies.size()].name);
    look(drawn(name + " " + std::to_string(seed),
               fixture::weighed(fixture::random_survey(fixture::plan(name), seed))));
  }
}

struct Leader {
  At from, to;
};

// Each is drawn twice, on a paper edge first.
std::vector<Leader> leaders(const Page& page) {
  std::vector<Leader> found;
  const Layer* layer = fixture::layer(page, "leaders");
  if (layer == nullptr) return found;
  for (const Item& item : layer->items) {
    const auto& shape = std::get<Shape>(item);
    if (!shape.stroke || shape.stroke->colour == white || shape.lines[0].points.size() != 2)
      continue;
    found.push_back({shape.lines[0].points[0], shape.lines[0].points[1]});
  }
  return found;
}

std::map<std::string, int> letters(const Page& page) {
  std::map<std::string, int> count;
  for (const Text* text : texts(page))
    if (text->says == Says::rank) ++count[text->text];
  return count;
}

// At its place and in the list, nowhere else; or in the list of a further page.
void look_at_letters(const Drawn& all) {
  std::string further;
  for (std::size_t i = all.sheets.size(); i < all.pages.size(); ++i)
    further += fixture::all_said({all.pages[i]});
  for (std::size_t i = 0; i < all.sheets.size(); ++i) {
    for (const auto& [letter, count] : letters(all.pages[i])) {
      const bool continued = further.find("\n" + letter + "  ") != std::string::npos ||
                             further.starts_with(letter + "  ");
      EXPECT_EQ(count, continued ? 1 : 2)
          << all.name << ", " << all.pages[i].title << ": " << letter;
      EXPECT_NE(all.sheets[i].kind, SheetKind::skin) << all.name << ": " << letter;
    }
  }
  // The worst nine are all marked.
  std::set<std::string> marked;
  for (const Page& page : all.pages)
    for (const auto& [letter, count] : letters(page)) marked.insert(letter);
  for (const weighing::Spot* spot : lettered(all.result))
    EXPECT_TRUE(marked.contains(letter_of(all.result, *spot))) << all.name << " " << spot->zone;
}

void look_at_leaders(const Drawn& all) {
  for (std::size_t i = 0; i < all.sheets.size(); ++i) {
    const auto lines = leaders(all.pages[i]);
    for (std::size_t a = 0; a < lines.size(); ++a) {
      for (std::size_t b = 0; b < a; ++b) {
        EXPECT_FALSE(crosses(lines[a].from, lines[a].to, lines[b].from, lines[b].to))
            << all.name << ", " << all.pages[i].title;
      }
      for (const Text* text : texts(all.pages[i])) {
        if (text->says != Says::view_name) continue;
        EXPECT_FALSE(crosses(lines[a].from, lines[a].to, text->area))
            << all.name << ", " << all.pages[i].title << ": " << text->text;
      }
      const auto& views = all.sheets[i].views;
      const auto home = std::ranges::find_if(views, [&](const PlacedView& view) {
        return view.area.grown(0.2).contains(lines[a].to);
      });
      ASSERT_NE(home, views.end()) << all.name;
      for (const PlacedView& view : views) {
        if (&view == &*home) continue;
        EXPECT_FALSE(crosses(lines[a].from, lines[a].to, view.area))
            << all.name << ", " << all.pages[i].title << " into "
            << view_name(view.projection.view);
      }
    }
  }
}

void look_at_texts(const Drawn& all) {
  constexpr double least_pt = 6.5;
  for (const Page& page : all.pages) {
    const auto runs = texts(page);
    for (std::size_t i = 0; i < runs.size(); ++i) {
      EXPECT_GE(runs[i]->size_pt, least_pt) << all.name << ": " << runs[i]->text;
      EXPECT_TRUE(page.frame.grown(0.1).contains(runs[i]->area))
          << all.name << ": " << runs[i]->text;
      for (std::size_t j = 0; j < i; ++j) {
        EXPECT_FALSE(runs[i]->area.grown(-0.3).overlaps(runs[j]->area.grown(-0.3)))
            << all.name << ", " << page.title << ": " << runs[i]->text << " and " << runs[j]->text;
      }
    }
  }
}

// Every number on a drawing has its name there or on a further page.
void look_at_names(const Drawn& all) {
  std::string further;
  for (std::size_t i = all.sheets.size(); i < all.pages.size(); ++i)
    further += fixture::all_said({all.pages[i]});
  for (std::size_t i = 0; i < all.sheets.size(); ++i) {
    std::string names = fixture::said(all.pages[i], Says::part_name);
    std::ranges::replace(names, '\n', ' ');
    for (const Label& label : all.pages[i].labels) {
      const std::string& name = all.result.zone(label.zone)->name;
      const std::string first = name.substr(0, name.find_first_of(" -"));
      EXPECT_TRUE(names.find(first) != std::string::npos ||
                  further.find(first) != std::string::npos)
          << all.name << ", " << all.pages[i].title << ": " << label.zone << " " << name;
    }
  }
}

TEST(SheetRules, HoldOnTheSamplesAndTwoHundredRandomSurveys) {
  int letters_seen = 0, leaders_seen = 0;
  each_drawn([&](const Drawn& all) {
    look_at_letters(all);
    look_at_leaders(all);
    look_at_texts(all);
    look_at_names(all);
    for (const Page& page : all.pages) {
      letters_seen += static_cast<int>(letters(page).size());
      leaders_seen += static_cast<int>(leaders(page).size());
    }
  });
  EXPECT_GT(letters_seen, 500);
  EXPECT_GT(leaders_seen, 500);
}

}  // namespace
}  // namespace tinworm::scene
