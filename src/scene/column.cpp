#include "scene/column.hpp"

#include <algorithm>
#include <memory>

#include <fmt/format.h>

#include "scene/legend.hpp"
#include "scene/naming.hpp"
#include "scene/palette.hpp"
#include "scene/setting.hpp"

namespace tinworm::scene {
namespace {

const Style verdict_style{11.5, Font::bold, black, Says::title, 1.16};
const Style second_style{7.5, Font::regular, black, Says::title, 1.25};
const Style heading_style{8, Font::bold, black, Says::legend, 1.3};
const Style entry_style{7, Font::regular, black, Says::legend, 1.18};
const Style not_seen_style{7, Font::regular, black, Says::not_seen, 1.22};
const Style list_style{7, Font::regular, black, Says::words, 1.22};
const Style caution_style{6.5, Font::regular, black, Says::caution, 1.22};
constexpr double inset_mm = 3, apart_mm = 2.2;

struct Writer {  // runs down a column
  Layer& layer;
  Area area;  // inside its margins
  double y;
  const Measure& measure;

  double room() const { return area.bottom() - y; }
  void block(std::string_view text, const Style& style, double indent = 0) {
    y += set_block(layer, text, style, {area.x_mm + indent, y}, area.width_mm - indent, measure);
  }
  double height(std::string_view text, const Style& style) const {
    return line_height_mm(style) *
           static_cast<double>(wrap(text, style, area.width_mm, measure).size());
  }
  void rule() {
    layer.items.push_back(
        Shape{{segment({area.x_mm, y}, {area.right(), y})}, {}, Stroke{faint_ink, 0.4, {}}});
    y += apart_mm * 0.7;
  }
};

Item moved(const Item& item, double dx, double dy) {
  const auto lines = [&](std::vector<Polyline> all) {
    for (Polyline& line : all) {
      for (At& at : line.points) at = {at.x_mm + dx, at.y_mm + dy};
    }
    return all;
  };
  const auto shape = [&](Shape each) {
    each.lines = lines(each.lines);
    return each;
  };
  if (const auto* plain = std::get_if<Shape>(&item)) return shape(*plain);
  Clipped clipped = std::get<Clipped>(item);
  clipped.clip = lines(clipped.clip);
  for (Shape& each : clipped.within) each = shape(each);
  return clipped;
}

void write_verdict(Writer& writer, const weighing::Result& result) {
  writer.block(capitalised(weighing::sentence(result.verdict)), verdict_style);
  writer.y += 0.6;
  if (result.open_up_first) {
    writer.block("Open up first: metal that matters was not seen, or only looked at.",
                 second_style);
  }
  if (result.could_be > result.verdict) {
    writer.block(fmt::format("It could be: {}.", weighing::sentence(result.could_be)),
                 second_style);
  }
  writer.y += apart_mm * 0.7;
}

// Set smaller where the column is short or narrow, down to the least size there is.
enum class Fit { roomy, close };

void write_legend(Writer& writer, const Used& used, Fit fit) {
  Style style = entry_style;
  if (fit == Fit::close) style.size_pt = 6.5;
  const double between_mm = fit == Fit::close ? 0.3 : 0.75;
  writer.rule();
  writer.block("Key", heading_style);
  writer.y += 0.6;
  constexpr double indent = swatch_width_mm + 2.2;
  for (const LegendEntry& entry : legend_of(used)) {
    const double top = writer.y;
    for (const Item& item : entry.swatch) {
      writer.layer.items.push_back(moved(item, writer.area.x_mm, top + 0.2));
    }
    writer.block(entry.words + ": " + entry.meaning, style, indent);
    writer.y = std::max(writer.y, top + swatch_height_mm) + between_mm;
  }
  writer.y += apart_mm * 0.4;
}

std::string line_text(const NotSeenLine& line) {
  return line.why.empty() ? number_list(line.zones)
                          : fmt::format("{}: {}", number_list(line.zones), line.why);
}

std::vector<int> all_not_seen(const weighing::Result& result) {
  std::vector<int> zones;
  for (const weighing::NotSeen& each : result.not_seen) zones.push_back(each.zone);
  return zones;
}

std::string short_list(const weighing::Result& result, const std::string& overflow_page) {
  return fmt::format("Zones {}. Reasons on page {}.", number_list(all_not_seen(result)),
                     overflow_page);
}

// True if the reasons did not fit.
bool write_not_seen(Writer& writer, const weighing::Result& result,
                    const std::string& overflow_page) {
  writer.rule();
  writer.block("Not seen, so not known", Style{8, Font::bold, black, Says::not_seen, 1.3});
  if (result.not_seen.empty()) {
    writer.block("Nothing: every zone was seen at least in part.", not_seen_style);
    return false;
  }
  double height = 0;
  const auto lines = not_seen_lines(result);
  for (const NotSeenLine& line : lines) height += writer.height(line_text(line), not_seen_style);
  if (height <= writer.room()) {
    for (const NotSeenLine& line : lines) writer.block(line_text(line), not_seen_style);
    return false;
  }
  writer.block(short_list(result, overflow_page), not_seen_style);
  return true;
}

void write_inside_not_seen(Writer& writer, const weighing::Result& result) {
  std::vector<int> zones;
  for (const weighing::OpenUp& each : result.open_up) {
    if (each.rule == "inside-not-seen" && each.zone != 0) zones.push_back(each.zone);
  }
  if (zones.empty()) return;
  const std::string text = fmt::format("Inside not seen: {}.", number_list(zones));
  if (writer.height(text, not_seen_style) <= writer.room()) writer.block(text, not_seen_style);
}

void write_not_drawn(Writer& writer, const weighing::Result& result) {
  std::vector<std::string> lines;
  for (const weighing::Zone& zone : result.zones) {
    if (zone.number == 0) {
      lines.push_back(fmt::format("{}: {}, {}", zone_name(zone), step_name(zone.step),
                                  evidence_words(zone.evidence)));
    }
  }
  if (lines.empty()) return;
  double height = line_height_mm(heading_style) + apart_mm;
  for (const std::string& line : lines) height += writer.height(line, list_style);
  if (height > writer.room()) return;
  writer.y += apart_mm * 0.4;
  writer.rule();
  writer.block("Found, but not on the drawing", heading_style);
  for (const std::string& line : lines) writer.block(line, list_style);
}

// Words for the rings: the ranks that have no callout.
void write_ranks(Writer& writer, const Drafting& drafting,
                 const std::vector<const weighing::Spot*>& called) {
  std::vector<std::string> lines;
  for (const weighing::Spot* spot : drafting.result.ranked()) {
    if (spot->rank > 9 || std::find(called.begin(), called.end(), spot) != called.end()) continue;
    const bool drawn =
        std::any_of(drafting.spots.begin(), drafting.spots.end(),
                    [&](const SpotMark& mark) { return mark.spot == spot && mark.principal; });
    const weighing::Zone* zone = drafting.result.zone(spot->zone);
    if (!drawn || zone == nullptr) continue;
    lines.push_back(
        fmt::format("{}  {} {}: {}", spot->rank, spot->zone, zone_name(*zone), step_words(*spot)));
  }
  if (lines.empty()) return;
  const double least = line_height_mm(heading_style) + apart_mm + line_height_mm(list_style);
  if (writer.room() < least) return;
  writer.y += apart_mm * 0.4;
  writer.rule();
  writer.block("Next in order", heading_style);
  for (const std::string& line : lines) {
    if (writer.height(line, list_style) > writer.room()) return;
    writer.block(line, list_style);
  }
}

}  // namespace

std::vector<NotSeenLine> not_seen_lines(const weighing::Result& result) {
  std::vector<NotSeenLine> lines;
  for (const weighing::NotSeen& each : result.not_seen) {
    const auto same = std::find_if(lines.begin(), lines.end(),
                                   [&](const NotSeenLine& line) { return line.why == each.why; });
    if (same == lines.end()) {
      lines.push_back({{each.zone}, each.why});
    } else {
      same->zones.push_back(each.zone);
    }
  }
  return lines;
}

bool draw_column(Drafting& drafting, const std::vector<const weighing::Spot*>& called,
                 const std::string& overflow_page) {
  const Area column = drafting.sheet.column;
  Layer& layer = drafting.page.layer("column");
  layer.items.push_back(Shape{{segment({column.x_mm, column.y_mm}, {column.x_mm, column.bottom()})},
                              {},
                              Stroke{ink, 0.5, {}}});
  const double width = column.width_mm - 2 * inset_mm;
  Writer writer{layer,
                {column.x_mm + inset_mm, column.y_mm + 2.4, width, column.height_mm - 4},
                column.y_mm + 2.4,
                drafting.measure};
  // The caution stands at the foot, whatever else there is.
  const double caution_mm = writer.height(drafting.result.caution, caution_style);
  Writer foot = writer;
  foot.y = writer.area.bottom() - caution_mm - apart_mm * 0.7;
  writer.area.height_mm = foot.y - writer.area.y_mm - apart_mm * 0.6;
  foot.rule();
  foot.block(drafting.result.caution, caution_style);

  write_verdict(writer, drafting.result);
  Layer tried;
  Writer trial{tried, writer.area, writer.y, writer.measure};
  write_legend(trial, drafting.used, Fit::roomy);
  const double least = line_height_mm(heading_style) + apart_mm +
                       writer.height(short_list(drafting.result, overflow_page), not_seen_style);
  write_legend(writer, drafting.used, trial.room() >= least ? Fit::roomy : Fit::close);
  const bool overflow = write_not_seen(writer, drafting.result, overflow_page);
  write_inside_not_seen(writer, drafting.result);
  write_not_drawn(writer, drafting.result);
  write_ranks(writer, drafting, called);
  return overflow;
}

std::vector<Page> not_seen_pages(const weighing::Result& result, const DiagramOptions& options,
                                 const Measure& measure) {
  std::vector<Page> pages;
  const PaperSize size = size_of(options.paper);
  const Area frame = frame_of(options.paper);
  const Area inner{frame.x_mm + 6, frame.y_mm + 5, frame.width_mm - 12, frame.height_mm - 24};
  const auto start = [&]() -> Page& {
    Page page;
    page.width_mm = size.width_mm;
    page.height_mm = size.height_mm;
    page.frame = frame;
    page.title = "Not seen";
    return pages.emplace_back(std::move(page));
  };
  Page* page = &start();
  const auto writer_for = [&](Page& to) {
    Writer writer{to.layer("column"), inner, inner.y_mm, measure};
    writer.block("Not seen, so not known", Style{12, Font::bold, black, Says::not_seen, 1.5});
    const double caution_mm = writer.height(result.caution, caution_style);
    Writer foot = writer;
    foot.y = inner.bottom() - caution_mm;
    foot.block(result.caution, caution_style);
    writer.area.height_mm -= caution_mm + apart_mm;
    return writer;
  };
  auto writer = std::make_unique<Writer>(writer_for(*page));
  for (const NotSeenLine& line : not_seen_lines(result)) {
    if (writer->height(line_text(line), not_seen_style) > writer->room()) {
      page = &start();
      writer = std::make_unique<Writer>(writer_for(*page));
    }
    writer->block(line_text(line), not_seen_style);
  }
  return pages;
}

}  // namespace tinworm::scene
