#include "scene/diagram.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "scene/blank_page.hpp"
#include "scene/body_view.hpp"
#include "scene/column.hpp"
#include "scene/details.hpp"
#include "scene/drafting.hpp"
#include "scene/figure.hpp"
#include "scene/further_pages.hpp"
#include "scene/label.hpp"
#include "scene/listing_column.hpp"
#include "scene/naming.hpp"
#include "scene/not_seen.hpp"
#include "scene/spot_mark.hpp"
#include "scene/strip.hpp"
#include "weighing/words.hpp"

namespace tinworm::scene {
namespace {

// Draws one sheet; tells what needs a page of its own.
Further draw_sheet(Page& page, const Sheet& sheet, const weighing::Result& result,
                   const DiagramOptions& options, const Measure& measure,
                   const std::string& overflow_page) {
  Drafting drafting{page, sheet, result, options, measure, FreeSpace(sheet.drawing),
                    {},   {},    {},     {}};
  drafting.part_names = true;
  draw_body(drafting);
  draw_view_names(drafting);
  draw_circles(drafting);
  draw_spots(drafting);
  for (const SpotMark& mark : drafting.spots) drafting.space.cover(mark.shape);
  // Letters must stand at their places and choose first; figures take what room the numbers leave.
  draw_letters(drafting);
  const auto left = label_inside(drafting);
  label_outside(drafting, left);
  draw_figures(drafting);
  for (const DrawnZone& drawn : drafting.zones) {
    const std::string name = fmt::format("zone-{:02}", drawn.zone->number);
    const bool known = std::any_of(page.places.begin(), page.places.end(),
                                   [&](const Place& place) { return place.name == name; });
    if (!known) page.places.push_back({name, {sheet.frame.x_mm, bounds(drawn.shape).y_mm}});
  }
  return options.for_sale ? draw_listing_column(drafting, overflow_page)
                          : draw_column(drafting, overflow_page);
}

}  // namespace

std::vector<Page> diagram(const weighing::Result& result, const DiagramOptions& options,
                          const Measure& measure) {
  std::vector<Sheet> sheets;
  for (const SheetKind kind : options.sheets) {
    for (Sheet& sheet : lay_out(kind, *result.body, options.paper))
      sheets.push_back(std::move(sheet));
  }
  const std::size_t whole = sheets.size();
  for (Sheet& sheet : details_of(sheets, result, options, measure))
    sheets.push_back(std::move(sheet));
  std::vector<Page> pages;
  const std::size_t before = static_cast<std::size_t>(options.pages_before);
  const std::string overflow_page = fmt::format("{}", before + sheets.size() + 1);
  Further further;
  for (const Sheet& sheet : sheets) {
    pages.push_back(blank_page(sheet, size_of(options.paper)));
    if (pages.size() > whole) pages.back().title = "Details";
    further.add(draw_sheet(pages.back(), sheet, result, options, measure, overflow_page));
  }
  for (Page& page : further_pages(result, further, options, measure))
    pages.push_back(std::move(page));
  const std::size_t all = before + pages.size() + static_cast<std::size_t>(options.pages_after);
  for (std::size_t i = 0; i < pages.size(); ++i) {
    pages[i].label = fmt::format("{}", before + i + 1);
    StripWords words{pages[i].title, 0, fmt::format("{} of {}", before + i + 1, all)};
    Area strip{pages[i].frame.x_mm, pages[i].frame.bottom() - 11.5, pages[i].frame.width_mm, 11.5};
    if (i < sheets.size()) {
      words.scale = sheets[i].scale;
      strip = sheets[i].strip;
    }
    draw_strip(pages[i], strip, result, options, words, measure);
  }
  // A zone is linked to where it is drawn first.
  std::vector<std::string> known;
  for (Page& page : pages) {
    std::erase_if(page.places, [&](const Place& place) {
      return std::find(known.begin(), known.end(), place.name) != known.end();
    });
    for (const Place& place : page.places) known.push_back(place.name);
  }
  return pages;
}

std::string picture_description(const weighing::Result& result) {
  const std::string changed = weighing::rules_text(result);
  return fmt::format("{}, surveyed {}. Verdict: {}{}. {}{}Not seen, so not known: {}. {}",
                     result.survey.car.name, result.survey.visit.date.text(),
                     weighing::sentence(result.verdict),
                     result.open_up_first ? "; open up first" : "", changed,
                     changed.empty() ? "" : " ", not_seen_words(result), result.caution);
}

}  // namespace tinworm::scene
