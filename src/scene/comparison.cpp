#include "scene/comparison.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "scene/blank_page.hpp"
#include "scene/change_list.hpp"
#include "scene/change_words.hpp"
#include "scene/charts.hpp"
#include "scene/comparison_sheet.hpp"
#include "scene/further_pages.hpp"
#include "scene/naming.hpp"
#include "scene/not_seen.hpp"
#include "scene/setting.hpp"
#include "scene/strip.hpp"
#include "scene/writer.hpp"
#include "scene/year_maps.hpp"
#include "weighing/words.hpp"

namespace tinworm::scene {
namespace {

using history::Comparison;

constexpr double strip_mm = 11.5;

struct Drawn {
  std::vector<Page> pages;
  std::vector<int> scales;  // of each page; 0: none
  bool overflow = false;

  void add(Page page, int scale) {
    pages.push_back(std::move(page));
    scales.push_back(scale);
  }
};

std::vector<StripCell> cells_of(const Comparison& comparison, const std::string& sheet,
                                const std::string& number, int scale) {
  const weighing::Result &first = comparison.surveys.front(), &latest = comparison.latest();
  const survey::Car& car = latest.survey.car;
  std::vector<StripCell> cells{
      {"Car", car.built ? fmt::format("{}, {}", car.name, *car.built) : car.name,
       latest.body->title, 48, true, false},
      {"Surveys compared",
       fmt::format("{} to {}", first.survey.visit.date.text(), latest.survey.visit.date.text()),
       fmt::format("{} surveys", comparison.surveys.size()), 46, false, false},
      {"Verdict now", capitalised(weighing::sentence(latest.verdict)), left_open(latest), 48, true,
       false},
      {"Sheet", sheet, "page " + number, 40, false, false}};
  if (scale > 0) cells.push_back({"Scale", fmt::format("1:{}", scale), "", 48, false, true});
  cells.push_back({"Fingerprints, SHA-256", latest.sha256.substr(0, 12),
                   fmt::format("first {}", first.sha256.substr(0, 12)), 37, false, false});
  return cells;
}

void number_pages(Drawn& drawn, const Comparison& comparison, const ComparisonOptions& options,
                  const Measure& measure) {
  for (std::size_t i = 0; i < drawn.pages.size(); ++i) {
    Page& page = drawn.pages[i];
    page.label = fmt::format("{}", i + 1);
    const Area strip{page.frame.x_mm, page.frame.bottom() - strip_mm, page.frame.width_mm,
                     strip_mm};
    const std::string number = fmt::format("{} of {}", i + 1, drawn.pages.size());
    draw_cells(page, strip, cells_of(comparison, page.title, number, drawn.scales[i]),
               drawn.scales[i], options.units, measure);
  }
}

// A zone is linked to where it is drawn first.
std::vector<std::string> keep_first_places(std::vector<Page>& pages) {
  std::vector<std::string> known;
  for (Page& page : pages) {
    std::erase_if(page.places, [&](const Place& place) {
      return std::ranges::find(known, place.name) != known.end();
    });
    for (const Place& place : page.places) known.push_back(place.name);
  }
  return known;
}

std::string title_of(SheetKind kind) {
  switch (kind) {
    case SheetKind::structure:
      return "Changes, structure";
    case SheetKind::skin:
      return "Changes, skin";
    case SheetKind::frame:
      break;
  }
  return "Changes, frame";
}

std::vector<Sheet> sheets_of(const std::vector<SheetKind>& kinds, const Comparison& comparison,
                             Paper paper) {
  std::vector<Sheet> sheets;
  for (const SheetKind kind : kinds)
    for (Sheet& sheet : lay_out(kind, *comparison.latest().body, paper))
      sheets.push_back(std::move(sheet));
  return sheets;
}

Drawn draw_maps(const std::vector<Sheet>& sheets, const Comparison& comparison,
                const ComparisonOptions& options, const Measure& measure,
                const std::string& overflow_page) {
  Drawn drawn;
  const MarkedBody body = marked_body(comparison);
  for (const Sheet& sheet : sheets) {
    Page page = blank_page(sheet, size_of(options.paper));
    page.title = title_of(sheet.kind);
    drawn.overflow |=
        draw_comparison_sheet(page, sheet, comparison, body, options, measure, overflow_page);
    drawn.add(std::move(page), sheet.scale);
  }
  return drawn;
}

void add_limits(Drawn& drawn, const Comparison& comparison, const ComparisonOptions& options,
                const Measure& measure) {
  if (!drawn.overflow) return;
  DiagramOptions plain;
  plain.paper = options.paper;
  Further further;
  further.needed = true;
  for (Page& page : further_pages(comparison.latest(), further, plain, measure))
    drawn.add(std::move(page), 0);
}

// The index of the first page that says so.
std::size_t page_of(std::string_view heading, const std::vector<Page>& pages) {
  for (std::size_t i = 0; i < pages.size(); ++i)
    for (const Text* text : texts(pages[i]))
      if (text->text == heading) return i;
  return 0;
}

Page years_page(const Comparison& comparison, const ComparisonOptions& options,
                const Measure& measure) {
  Page page;
  const PaperSize size = size_of(options.paper);
  page.width_mm = size.width_mm;
  page.height_mm = size.height_mm;
  page.frame = frame_of(options.paper);
  page.title = "Years side by side";
  for (const char* name : {"zones", "bounds", "lines", "words", "column", "strip"})
    page.layer(name);
  const Area frame = page.frame;
  Area room{frame.x_mm + 5, frame.y_mm + 3, frame.width_mm - 10, frame.height_mm - strip_mm - 5};
  Writer foot{page.layer("column"), room, 0, measure};
  const std::string caution = caution_words(comparison);
  const double caution_mm = foot.height(caution, caution_style);
  foot.y = room.bottom() - caution_mm;
  foot.block(caution, caution_style);
  room.height_mm -= caution_mm + apart_mm;

  const auto places = charted(comparison);
  Area maps = room;
  if (!places.empty()) maps.height_mm *= places.size() > 3 ? 0.51 : 0.6;
  const double used_mm = draw_year_maps(page, comparison, maps, measure) + apart_mm;
  const Area rest{room.x_mm, room.y_mm + used_mm, room.width_mm, room.height_mm - used_mm};
  draw_charts(page, comparison, places, options.units, rest, measure);
  return page;
}

}  // namespace

std::vector<Page> comparison_pages(const Comparison& comparison, const ComparisonOptions& options,
                                   const Measure& measure) {
  std::vector<SheetKind> kinds{SheetKind::structure, SheetKind::frame};
  if (changed_on(SheetKind::skin, comparison)) kinds.push_back(SheetKind::skin);
  const auto sheets = sheets_of(kinds, comparison, options.paper);
  // Maps name the page where the limits stand in full, should they have no room for them.
  const std::size_t before = sheets.size() + 1;
  const std::size_t limits =
      page_of("Not seen, so not known", change_list(comparison, options, {}, true, measure));
  Drawn drawn =
      draw_maps(sheets, comparison, options, measure, fmt::format("{}", before + limits + 1));
  const auto linked = keep_first_places(drawn.pages);
  drawn.add(years_page(comparison, options, measure), 0);
  for (Page& page : change_list(comparison, options, linked, drawn.overflow, measure))
    drawn.add(std::move(page), 0);
  number_pages(drawn, comparison, options, measure);
  return std::move(drawn.pages);
}

std::vector<Page> comparison_map(const Comparison& comparison, SheetKind kind,
                                 const ComparisonOptions& options, const Measure& measure) {
  const auto sheets = sheets_of({kind}, comparison, options.paper);
  if (sheets.empty()) return {};
  Drawn drawn =
      draw_maps(sheets, comparison, options, measure, fmt::format("{}", sheets.size() + 1));
  keep_first_places(drawn.pages);
  add_limits(drawn, comparison, options, measure);
  number_pages(drawn, comparison, options, measure);
  return std::move(drawn.pages);
}

std::string picture_description(const Comparison& comparison) {
  const weighing::Result& latest = comparison.latest();
  const auto places = comparison.by_change();
  const bool any = !places.empty() && places.front()->change == history::Change::worse;
  const std::string changed = weighing::rules_text(latest);
  return fmt::format(
      "{}, {} surveys from {} to {} compared. Changed most: {}. Verdict now: {}{}. {}{}Not seen in "
      "the latest, so not known: {}. {}",
      latest.survey.car.name, comparison.surveys.size(),
      comparison.surveys.front().survey.visit.date.text(), latest.survey.visit.date.text(),
      any ? fmt::format("{}, {}", place_words(comparison, *places.front()),
                        plain_spaces(change_words(*places.front(), Units::mm)))
          : "nothing beyond the error",
      weighing::sentence(latest.verdict), latest.open_up_first ? "; open up first" : "", changed,
      changed.empty() ? "" : " ", not_seen_words(latest), caution_words(comparison));
}

}  // namespace tinworm::scene
