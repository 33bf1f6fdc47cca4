#include "scene/strip.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "scene/naming.hpp"
#include "scene/palette.hpp"
#include "scene/setting.hpp"

namespace tinworm::scene {
namespace {

constexpr Style label_style{6.5, Font::regular, soft_ink, Says::title};
constexpr Style value_style{8, Font::regular, black, Says::title};
constexpr Style strong_style{8, Font::bold, black, Says::title};
constexpr Style second_style{6.5, Font::regular, black, Says::title};

std::string joined(std::initializer_list<std::string> parts) {
  std::string text;
  for (const std::string& part : parts) {
    if (part.empty()) continue;
    text += (text.empty() ? "" : ", ") + part;
  }
  return text;
}

std::string open_up_words(const weighing::Result& result) {
  if (result.open_up_first) return "open up first";
  return "";
}

std::vector<StripCell> cells_of(const weighing::Result& result, const DiagramOptions& options,
                                const StripWords& words) {
  const survey::Car& car = result.survey.car;
  const survey::Visit& visit = result.survey.visit;
  std::vector<StripCell> cells;
  cells.push_back({"Car", joined({car.name, car.built ? fmt::format("{}", *car.built) : ""}),
                   result.body->title, 50, true, false});
  if (options.private_too) {
    cells.push_back({"Owner, place", joined({car.owner, visit.place}),
                     joined({car.registration, car.chassis_number}), 44, false, false});
  }
  cells.push_back({"Surveyed", visit.date.text(), options.signed_name ? "by " + visit.by : "",
                   options.signed_name ? 38.0 : 24.0, false, false});
  cells.push_back({"Verdict", capitalised(weighing::sentence(result.verdict)),
                   open_up_words(result), 56, true, false});
  cells.push_back({"Sheet", words.sheet, fmt::format("page {}", words.number), 38, false, false});
  if (words.scale > 0) {
    cells.push_back({"Scale", fmt::format("1:{}", words.scale), "", 52, false, true});
  }
  cells.push_back(
      {"Survey fingerprint", result.sha256.substr(0, 12), "SHA-256, first 12", 31, false, false});
  return cells;
}

struct BarPiece {
  double mm;
  const char *one, *two;  // the figures at its end and at that of two
};

BarPiece piece_of(int scale, bool inch) {
  constexpr int large = 15;  // from here down half a metre is longer than its cell
  if (scale <= large) return inch ? BarPiece{152.4, "6", "12 in"} : BarPiece{200, "0.2", "0.4 m"};
  return inch ? BarPiece{304.8, "1", "2 ft"} : BarPiece{500, "0.5", "1 m"};
}

// Two lengths, black and white; the figures stand under them.
void draw_bar(Layer& layer, const Area& cell, int scale, quantity::Units units,
              const Measure& measure) {
  const auto [mm, one, two] = piece_of(scale, units == quantity::Units::inch);
  const double piece = mm / scale;
  const double x = cell.x_mm + 10.5, y = cell.y_mm + 4.6;
  for (const int i : {0, 1}) {
    const Area part{x + i * piece, y, piece, 1.1};
    layer.items.push_back(Shape{{polyline(part)}, i == 0 ? ink : paper, Stroke{ink, 0.4, {}}});
  }
  const Style style{6.5, Font::regular, black, Says::scale};
  const auto figure = [&](double at, std::string_view text) {
    layer.items.push_back(set(text, style, {x + at, y + 4.2}, Align::centre, measure));
  };
  figure(0, "0");
  figure(piece, one);
  figure(2 * piece, two);
}

}  // namespace

void draw_strip(Page& page, const Area& strip, const weighing::Result& result,
                const DiagramOptions& options, const StripWords& words, const Measure& measure) {
  draw_cells(page, strip, cells_of(result, options, words), words.scale, options.units, measure);
}

namespace {

constexpr double margin_mm = 2.4;

// What a cell's lines and its bar take.
double needed_mm(const StripCell& cell, const Measure& measure) {
  const auto width = [&](const std::string& text, const Style& style) {
    return text.empty() ? 0 : measure(text, style.font, style.size_pt).width_mm;
  };
  return margin_mm + std::max({width(cell.label, label_style),
                               width(cell.value, cell.strong ? strong_style : value_style),
                               width(cell.second, second_style)});
}

// By their shares, except that what cells don't need goes to those whose words would be cut.
std::vector<double> widths_of(const std::vector<StripCell>& cells, double all_mm,
                              const Measure& measure) {
  double shares = 0, spare = 0, wanted = 0;
  for (const StripCell& cell : cells) shares += cell.share;
  std::vector<double> widths;
  for (const StripCell& cell : cells) {
    widths.push_back(all_mm * cell.share / shares);
    const double over = widths.back() - needed_mm(cell, measure);
    if (!cell.bar && over > 0) spare += over;
    if (over < 0) wanted -= over;
  }
  const double given = std::min(spare, wanted);
  if (given <= 0) return widths;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const double over = widths[i] - needed_mm(cells[i], measure);
    if (over < 0)
      widths[i] -= over * given / wanted;
    else if (!cells[i].bar)
      widths[i] -= over * given / spare;
  }
  return widths;
}

}  // namespace

void draw_cells(Page& page, const Area& strip, const std::vector<StripCell>& cells, int scale,
                quantity::Units units, const Measure& measure) {
  Layer& layer = page.layer("strip");
  layer.items.push_back(Shape{{polyline(page.frame)}, {}, Stroke{ink, 1.4, {}}});
  layer.items.push_back(Shape{
      {segment({strip.x_mm, strip.y_mm}, {strip.right(), strip.y_mm})}, {}, Stroke{ink, 0.7, {}}});
  const std::vector<double> widths = widths_of(cells, strip.width_mm, measure);
  double x = strip.x_mm;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const StripCell& cell = cells[i];
    const Area area{x, strip.y_mm, widths[i], strip.height_mm};
    if (i > 0) {
      layer.items.push_back(
          Shape{{segment({x, strip.y_mm}, {x, strip.bottom()})}, {}, Stroke{faint_ink, 0.4, {}}});
    }
    const double left = x + 1.6, room = area.width_mm - margin_mm + 0.01;
    const auto line = [&](const std::string& text, const Style& style, double down) {
      if (text.empty()) return;
      layer.items.push_back(set(cut(text, style, room, measure), style, {left, strip.y_mm + down},
                                Align::left, measure));
    };
    line(cell.label, label_style, 3.1);
    line(cell.value, cell.strong ? strong_style : value_style, 6.9);
    line(cell.second, second_style, 10.0);
    if (cell.bar) draw_bar(layer, area, scale, units, measure);
    x = area.right();
  }
}

}  // namespace tinworm::scene
