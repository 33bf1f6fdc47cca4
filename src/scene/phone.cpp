#include "scene/phone.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "scene/blank_page.hpp"
#include "scene/body_view.hpp"
#include "scene/callout.hpp"
#include "scene/column.hpp"
#include "scene/drafting.hpp"
#include "scene/figure.hpp"
#include "scene/label.hpp"
#include "scene/listing_words.hpp"
#include "scene/naming.hpp"
#include "scene/not_seen.hpp"
#include "scene/parts_strip.hpp"
#include "scene/spot_mark.hpp"
#include "scene/worst_list.hpp"
#include "scene/writer.hpp"

namespace tinworm::scene {
namespace {

constexpr double margin_mm = 2.5;
constexpr double no_end_mm = 2000;  // what is written finds its own height
constexpr Style car_style{11.5, Font::bold, black, Says::title, 1.2};
constexpr Style line_style{7.5, Font::regular, black, Says::title, 1.25};
constexpr Style place_style{7.5, Font::bold, black, Says::callout, 1.25};

std::string car_text(const survey::Car& car) {
  return car.built ? fmt::format("{}, {}", car.name, *car.built) : car.name;
}

const weighing::Zone* zone_of(const weighing::Result& result, const weighing::Spot& spot) {
  for (const weighing::Zone& zone : result.zones) {
    if (zone.own == spot.own && zone.number == spot.zone) return &zone;
  }
  return nullptr;
}

void write_private(Writer& writer, const weighing::Result& result) {
  const survey::Car& car = result.survey.car;
  for (const std::string& text :
       {car.owner, car.registration, car.chassis_number, result.survey.visit.place}) {
    if (!text.empty()) writer.block(text, line_style);
  }
}

bool anything_seen(const weighing::Result& result) {
  return std::ranges::any_of(result.zones,
                             [](const weighing::Zone& zone) { return zone.seen_share > 0; });
}

// The worst of the whole car that bear no letter on this sheet.
void write_worst_elsewhere(Writer& writer, const Drafting& drafting) {
  constexpr std::size_t most = 3;
  const std::vector<const weighing::Spot*> ranked = drafting.result.ranked();
  for (std::size_t i = 0; i < std::min(ranked.size(), most); ++i) {
    const weighing::Zone* zone = zone_of(drafting.result, *ranked[i]);
    const auto& lettered = drafting.lettered;
    if (zone == nullptr || std::ranges::find(lettered, ranked[i]) != lettered.end()) continue;
    writer.block(fmt::format("{}: {}", capitalised(zone_name(*zone)), step_words(*ranked[i])),
                 place_style);
  }
}

// What must be read first: the letters of the drawing in words and, for a buyer, the worst of the
// whole car and what was not seen.
void write_at_once(Writer& writer, const Drafting& drafting) {
  const weighing::Result& result = drafting.result;
  write_worst(writer, drafting, Fit::close);
  if (!drafting.options.for_sale) return;
  if (result.ranked().empty())
    writer.block(anything_seen(result) ? "No rust found where looked" : "Nothing was looked at",
                 heading_style);
  else if (drafting.lettered.empty())
    writer.block("Worst places found", heading_style);
  write_worst_elsewhere(writer, drafting);
  writer.y += apart_mm * 0.4;
  if (const std::string share = unseen_share(result); !share.empty())
    writer.block(share, place_style);
  writer.y += apart_mm * 0.4;
  write_unseen(writer, result);
  writer.y += apart_mm * 0.6;
}

void write_head(Writer& writer, const Drafting& drafting) {
  const weighing::Result& result = drafting.result;
  const DiagramOptions& options = drafting.options;
  writer.block(car_text(result.survey.car), car_style);
  writer.block(fmt::format("Surveyed {}. {}.", result.survey.visit.date.text(),
                           name_of(drafting.sheet.kind)),
               line_style);
  if (options.signed_name && !options.for_sale && !result.survey.visit.by.empty())
    writer.block("By " + result.survey.visit.by, line_style);
  if (options.private_too) write_private(writer, result);
  writer.y += apart_mm * 0.5;
  writer.rule();
  write_verdict(writer, result);
  write_at_once(writer, drafting);
}

// The worst three without a letter with what is known of them, the others by name.
void write_places(Writer& writer, const Drafting& drafting) {
  constexpr int in_full = 3, most = 9;
  if (!drafting.lettered.empty()) return;
  const std::vector<Callout> places = callouts_of(drafting, most);
  if (places.empty()) return;
  writer.rule();
  writer.block("Worst first", heading_style);
  writer.y += 0.4;
  for (std::size_t i = 0; i < places.size(); ++i) {
    writer.block(places[i].title, place_style);
    if (i < in_full) writer.block(places[i].detail, list_style, 3.5);
  }
  writer.y += apart_mm * 0.4;
}

void write_foot(Writer& writer, const weighing::Result& result) {
  writer.rule();
  writer.block(result.caution, caution_style);
  writer.y += apart_mm * 0.4;
  writer.block(
      fmt::format("Survey fingerprint {} (SHA-256, first 12)", result.sha256.substr(0, 12)),
      caution_style);
}

void draw_views(Drafting& drafting) {
  drafting.numbers_everywhere = false;
  draw_body(drafting);
  draw_view_names(drafting);
  draw_spots(drafting);
  for (const SpotMark& mark : drafting.spots) drafting.space.cover(mark.shape);
  draw_letters(drafting);
  label_outside(drafting, label_inside(drafting));
  draw_figures(drafting);
}

Sheet framed(Sheet sheet) {
  sheet.frame = {0, 0, phone_width_mm, no_end_mm};
  return sheet;
}

// How far down the words go that stand before the views. Which letters they explain is known only
// when the views are drawn: a trial tells.
double head_mm(const weighing::Result& result, const Sheet& sheet, const DiagramOptions& options,
               const Area& whole, const Measure& measure) {
  Page page = blank_page(sheet, {phone_width_mm, no_end_mm});
  Drafting trial{page, sheet, result, options, measure, FreeSpace(sheet.drawing), {}, {}, {}, {}};
  draw_views(trial);
  Layer words;
  Writer writer{words, whole, margin_mm, measure};
  write_head(writer, trial);
  return writer.y;
}

}  // namespace

std::optional<Page> phone_page(const weighing::Result& result, SheetKind kind,
                               const DiagramOptions& options, const Measure& measure) {
  const Area whole{margin_mm, margin_mm, phone_width_mm - 2 * margin_mm, no_end_mm};
  const std::optional<Sheet> tried = lay_out_stacked(kind, *result.body, whole);
  if (!tried) return std::nullopt;
  const double top = head_mm(result, framed(*tried), options, whole, measure);
  const Sheet sheet =
      framed(*lay_out_stacked(kind, *result.body, {whole.x_mm, top, whole.width_mm, no_end_mm}));

  Page page = blank_page(sheet, {phone_width_mm, no_end_mm});
  Drafting drafting{page, sheet, result, options, measure, FreeSpace(sheet.drawing),
                    {},   {},    {},     {}};
  draw_views(drafting);
  Writer writer{page.layer("column"), whole, margin_mm, measure};
  write_head(writer, drafting);

  writer.y = sheet.drawing.bottom() + apart_mm;
  write_places(writer, drafting);
  write_parts(writer, parts_of(drafting, Parts::all));
  if (options.for_sale) {
    write_looked(writer, result);
    if (const std::string elsewhere = elsewhere_line(result, kind); !elsewhere.empty())
      writer.block(elsewhere, list_style);
    write_repairs(writer, result, no_end_mm);
  }
  write_rules(writer, result, "");
  write_legend(writer, drafting.used, result.constants, Fit::roomy);
  if (!options.for_sale) write_limits(writer, result, "", kind);
  write_foot(writer, result);
  page.height_mm = writer.y + margin_mm;
  page.frame = {0, 0, phone_width_mm, page.height_mm};
  page.label = "1";
  return page;
}

}  // namespace tinworm::scene
