// A page as a value: what is drawn and said, and where. No Cairo, no Pango: a painter puts it on a
// surface, a test reads it. Lengths on paper in mm from the paper's top-left corner, y downward;
// stroke widths and letters in points (1 pt = 25.4/72 mm), as printers count them.
#pragma once

#include <array>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "scene/colour.hpp"

namespace tinworm::scene {

constexpr double mm_per_pt = 25.4 / 72;

struct At {
  double x_mm = 0, y_mm = 0;
  auto operator<=>(const At&) const = default;
};

struct Area {  // axis-parallel, width and height not negative
  double x_mm = 0, y_mm = 0, width_mm = 0, height_mm = 0;
  constexpr double right() const { return x_mm + width_mm; }
  constexpr double bottom() const { return y_mm + height_mm; }
  constexpr At middle() const { return {x_mm + width_mm / 2, y_mm + height_mm / 2}; }
  Area grown(double by_mm) const {
    return {x_mm - by_mm, y_mm - by_mm, width_mm + 2 * by_mm, height_mm + 2 * by_mm};
  }
  bool contains(At at) const {
    return at.x_mm >= x_mm && at.x_mm <= right() && at.y_mm >= y_mm && at.y_mm <= bottom();
  }
  bool contains(const Area& other) const {
    return other.x_mm >= x_mm && other.right() <= right() && other.y_mm >= y_mm &&
           other.bottom() <= bottom();
  }
  bool overlaps(const Area& other) const {  // touching edges don't overlap
    return x_mm < other.right() && other.x_mm < right() && y_mm < other.bottom() &&
           other.y_mm < bottom();
  }
  auto operator<=>(const Area&) const = default;
};

struct Polyline {
  std::vector<At> points;
  bool closed = false;
};

struct Stroke {
  Colour colour;
  double width_pt = 0.5;
  // Line and gap by turns, as many as are above nought; none: continuous. An array, so that a
  // stroke can be a constant.
  std::array<double, 6> dash_mm = {};
};

struct Shape {  // filled by the even-odd rule, then stroked with round caps and joins
  std::vector<Polyline> lines;
  std::optional<Colour> fill;
  std::optional<Stroke> stroke;
};

struct Clipped {  // shapes seen only inside `clip` (even-odd): how hatching is made
  std::vector<Polyline> clip;
  std::vector<Shape> within;
};

enum class Font { regular, bold };  // DejaVu Sans; the packaged fonts have no italic
enum class Align { left, centre, right };

// What a run of text is there for, so that tests can ask for one kind.
enum class Says {
  words,
  zone_number,
  part_name,
  rank,
  callout,
  view_name,
  legend,
  not_seen,
  caution,
  title,
  scale
};

struct Text {  // one line
  std::string text;
  Font font = Font::regular;
  double size_pt = 7;
  At at;  // on the baseline, at the side or middle that `align` names
  Align align = Align::left;
  Colour colour = black;
  Says says = Says::words;
  Area area;  // what it covers, from the measure that placed it
};

struct Photo {  // a JPEG, upright and of the size it shall have in the file
  Area area;    // stretched to it
  std::string jpeg;
  int width_px = 0, height_px = 0;
};

using Item = std::variant<Shape, Clipped, Text, Photo>;

struct Layer {  // later layers lie on earlier ones
  std::string name;
  std::vector<Item> items;
};

struct Link {  // from an area of this page to a place of any page, by name
  Area area;
  std::string to;
};

struct Place {  // what a link can name: letters, digits and hyphens
  std::string name;
  At at;
};

struct Outlined {  // where a part begins that a PDF's outline names
  std::string text;
  At at;
};

// A zone's number and what ties it to its zone. For tests and for the listing.
struct Label {
  int zone = 0;
  Area plate;
  At anchor;  // a point in the zone
  bool led = false;
};

struct Page {
  double width_mm = 297, height_mm = 210;
  Area frame;         // nothing is drawn outside it
  std::string title;  // in the outline of a PDF, unless `outline` has its parts
  std::vector<Outlined> outline;
  std::string label;  // page label; "3"
  std::vector<Layer> layers;
  std::vector<Link> links;
  std::vector<Place> places;
  std::vector<Label> labels;

  Layer& layer(std::string_view name);  // of that name, made on top if there is none
};

struct Extent {  // of a run of text
  double width_mm = 0, ascent_mm = 0, descent_mm = 0;
  double height_mm() const { return ascent_mm + descent_mm; }
};

// Measures text as the painter will set it. Given from outside, so that a scene needs no fonts.
using Measure = std::function<Extent(std::string_view text, Font font, double size_pt)>;

Polyline polyline(const Area& area);
Polyline circle(At centre, double radius_mm, int corners = 48);  // 48: off by 0.2 % of the radius
Polyline segment(At from, At to);
bool inside(const std::vector<Polyline>& shape, At at);  // even-odd, closed lines only
// Where the shape's inside meets a level: pairs of left and right, in order.
std::vector<std::pair<double, double>> stretches(const std::vector<Polyline>& shape, double y_mm);
Area bounds(const std::vector<Polyline>& shape);  // of at least one point

// Every run of text on a page, in drawing order.
std::vector<const Text*> texts(const Page& page);

}  // namespace tinworm::scene
