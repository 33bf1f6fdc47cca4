#include "documents/blank_row.hpp"

#include <algorithm>
#include <utility>

#include "documents/typography.hpp"

namespace tinworm::documents {
namespace {

constexpr double between_mm = 2.4;  // words that a pen can circle one of
constexpr double gap_mm = 1.2;      // between words and the line to write on
constexpr double line_mm = 4.3;     // of several lines in one row
constexpr double beside_mm = 1.5;   // between a cell's edge and its words

constexpr Style printed{text_pt, Font::regular, black, Says::words, 1.3};
constexpr Style about_style{text_pt, Font::bold, black, Says::words, 1.3};
constexpr Style then_style{text_pt, Font::regular, scene::soft_ink, Says::words, 1.3};

const Style& style_of(const Piece& piece) {
  return piece.strong ? about_style : printed;
}

double width_of(const Piece& piece, const scene::Measure& measure) {
  if (piece.words.empty()) return piece.write_mm;
  const Style& style = style_of(piece);
  const double words = measure(piece.words, style.font, style.size_pt).width_mm;
  return words + (piece.write_mm > 0 ? gap_mm + piece.write_mm : 0);
}

using Line = std::vector<const Piece*>;

std::vector<Line> broken(const Cell& cell, double width_mm, const scene::Measure& measure) {
  std::vector<Line> lines(1);
  const double room = width_mm - 2 * beside_mm;
  double used = 0;
  for (const Piece& piece : cell.pieces) {
    const double width = width_of(piece, measure);
    if (!lines.back().empty() && used + width > room) {
      lines.emplace_back();
      used = 0;
    }
    lines.back().push_back(&piece);
    used += width + between_mm;
  }
  return lines;
}

struct Laid {
  std::vector<std::string> name, note;
  std::vector<std::vector<Line>> cells;
  std::vector<double> widths_mm;  // of the cells
  double row_height_mm = row_mm;
  double height_mm = row_mm;
};

Laid laid(const Entry& entry, double width_mm, const scene::Measure& measure) {
  Laid laid;
  laid.name = scene::wrap(entry.name, about_style, names_mm - beside_mm, measure);
  std::size_t most = laid.name.size();
  double shares = 0;
  for (const Cell& cell : entry.cells) shares += cell.share;
  for (const Cell& cell : entry.cells) {
    laid.widths_mm.push_back(cell.share / shares * (width_mm - names_mm));
    laid.cells.push_back(broken(cell, laid.widths_mm.back(), measure));
    most = std::max(most, laid.cells.back().size());
  }
  laid.row_height_mm = std::max(row_mm, static_cast<double>(most) * line_mm + 0.6);
  if (!entry.note.empty())
    laid.note = scene::wrap(entry.note, then_style, width_mm - names_mm - 2 * beside_mm, measure);
  laid.height_mm = laid.row_height_mm +
                   static_cast<double>(laid.note.size()) * scene::line_height_mm(then_style);
  return laid;
}

class Drawer {
 public:
  Drawer(scene::Layer& layer, const scene::Measure& measure) : layer_(layer), measure_(measure) {}

  void draw(const Entry& entry, const Laid& laid, scene::At at, double width_mm) {
    rule({at.x_mm, at.y_mm}, {at.x_mm + width_mm, at.y_mm}, entry.heavy ? 1.8 : 0.3);
    for (std::size_t i = 0; i < laid.name.size(); ++i)
      words(laid.name[i], about_style, at.x_mm, baseline(laid, at.y_mm, i, laid.name.size()));
    double x = at.x_mm + names_mm;
    for (std::size_t i = 0; i < entry.cells.size(); ++i) {
      rule({x, at.y_mm}, {x, at.y_mm + laid.row_height_mm}, 0.3);
      for (std::size_t k = 0; k < laid.cells[i].size(); ++k)
        line(laid.cells[i][k], x + beside_mm, baseline(laid, at.y_mm, k, laid.cells[i].size()));
      x += laid.widths_mm[i];
    }
    double y = at.y_mm + laid.row_height_mm + 3;
    for (const std::string& each : laid.note) {
      words(each, then_style, at.x_mm + names_mm + beside_mm, y);
      y += scene::line_height_mm(then_style);
    }
  }

 private:
  // One line stands low, to leave room to write above it; several share the row.
  static double baseline(const Laid& laid, double top_mm, std::size_t line, std::size_t lines) {
    if (lines == 1) return top_mm + 6.2;
    const double first = (laid.row_height_mm - static_cast<double>(lines) * line_mm) / 2 + 3.3;
    return top_mm + first + static_cast<double>(line) * line_mm;
  }

  void line(const Line& line, double x, double baseline) {
    for (const Piece* piece : line) {
      double end = x;
      if (!piece->words.empty())
        end +=
            words(piece->words, style_of(*piece), x, baseline) + (piece->write_mm > 0 ? gap_mm : 0);
      if (piece->write_mm > 0)
        rule({end, baseline + 0.8}, {end + piece->write_mm, baseline + 0.8}, 0.4);
      x = end + piece->write_mm + between_mm;
    }
  }

  double words(const std::string& text, const Style& style, double x, double baseline) {
    scene::Text set = scene::set(text, style, {x, baseline}, scene::Align::left, measure_);
    const double width = set.area.width_mm;
    layer_.items.push_back(std::move(set));
    return width;
  }

  void rule(scene::At from, scene::At to, double width_pt) {
    layer_.items.push_back(
        scene::Shape{{scene::segment(from, to)}, {}, scene::Stroke{scene::ink, width_pt, {}}});
  }

  scene::Layer& layer_;
  const scene::Measure measure_;
};

}  // namespace

std::vector<Piece> to_circle(std::string_view about, const std::vector<std::string>& words) {
  std::vector<Piece> pieces;
  if (!about.empty()) pieces.push_back({std::string(about), 0, true});
  for (const std::string& word : words) pieces.push_back({word, 0, false});
  return pieces;
}

Piece to_write(std::string about, double write_mm) {
  return {std::move(about), write_mm, false};
}

void write_entries(Flow& flow, const std::vector<Entry>& entries) {
  std::vector<Laid> all;
  double height = 0;
  for (const Entry& entry : entries) {
    all.push_back(laid(entry, flow.width_mm(), flow.measure()));
    height += all.back().height_mm;
  }
  flow.block(height, [&](scene::Page& page, const scene::Area& area) {
    Drawer drawer(page.layer("text"), flow.measure());
    scene::At at{area.x_mm, area.y_mm};
    for (std::size_t i = 0; i < entries.size(); ++i) {
      drawer.draw(entries[i], all[i], at, area.width_mm);
      at.y_mm += all[i].height_mm;
    }
  });
}

}  // namespace tinworm::documents
