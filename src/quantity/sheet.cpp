#include "quantity/sheet.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>

#include "quantity/ascii.hpp"
#include "quantity/figure.hpp"
#include "quantity/line.hpp"
#include "quantity/unit.hpp"

namespace tinworm::quantity {
namespace {

struct Gauge {
  int number;
  double inch;
};

constexpr std::array swg{Gauge{10, .128}, Gauge{11, .116}, Gauge{12, .104}, Gauge{13, .092},
                         Gauge{14, .080}, Gauge{15, .072}, Gauge{16, .064}, Gauge{17, .056},
                         Gauge{18, .048}, Gauge{19, .040}, Gauge{20, .036}, Gauge{21, .032},
                         Gauge{22, .028}, Gauge{23, .024}, Gauge{24, .022}, Gauge{25, .020},
                         Gauge{26, .018}};
constexpr std::array us{Gauge{10, .1345}, Gauge{11, .1196}, Gauge{12, .1046}, Gauge{13, .0897},
                        Gauge{14, .0747}, Gauge{15, .0673}, Gauge{16, .0598}, Gauge{17, .0538},
                        Gauge{18, .0478}, Gauge{19, .0418}, Gauge{20, .0359}, Gauge{21, .0329},
                        Gauge{22, .0299}, Gauge{23, .0269}, Gauge{24, .0239}, Gauge{26, .0179},
                        Gauge{28, .0149}};

template <class Table>
std::optional<double> inch_of(const Table& table, int number) {
  for (const Gauge& gauge : table)
    if (gauge.number == number) return gauge.inch;
  return std::nullopt;
}

constexpr std::string_view gauges_known = "10 to 26 SWG; 10 to 24, 26 and 28 US";

// What may stand behind a gauge's number. "20 gauge" and its kin tell no scale.
struct GaugeWord {
  std::string_view word;
  std::optional<GaugeScale> scale;
};
constexpr std::array gauge_words{GaugeWord{"swg", GaugeScale::swg},
                                 GaugeWord{"us", GaugeScale::us},
                                 GaugeWord{"gauge", {}},
                                 GaugeWord{"gauge sheet", {}},
                                 GaugeWord{"gage", {}},
                                 GaugeWord{"ga", {}},
                                 GaugeWord{"sg", {}},
                                 GaugeWord{"g", {}}};

const GaugeWord* gauge_word(std::string_view text) {
  const auto found = std::ranges::find(gauge_words, lower_case(text), &GaugeWord::word);
  return found == gauge_words.end() ? nullptr : &*found;
}

std::string could_mean(int gauge) {
  const auto a = sheet_gauge_mm(gauge, GaugeScale::swg);
  const auto b = sheet_gauge_mm(gauge, GaugeScale::us);
  if (a && b)
    return fmt::format("write {0} SWG ({1:.3f} mm) or {0} US ({2:.3f} mm), or the thickness in mm",
                       gauge, *a, *b);
  return "write the scale, SWG or US, or the thickness in mm";
}

std::optional<int> gauge_number(const Figure& figure) {
  const bool whole = figure.value == std::floor(figure.value) && figure.value < 100;
  return whole ? std::optional(static_cast<int>(figure.value)) : std::nullopt;
}

tl::expected<double, Refusal> of_gauge(const WrittenFigure& written, GaugeScale scale,
                                       std::string_view whole) {
  const auto number = gauge_number(written.figure);
  const auto mm = number ? sheet_gauge_mm(*number, scale) : std::nullopt;
  if (mm) return *mm;
  return refused(
      {fmt::format("the {} scale has no such gauge here", scale == GaugeScale::swg ? "SWG" : "US"),
       std::string(gauges_known), "write the thickness in mm", 0},
      whole, written.text);
}

}  // namespace

std::optional<double> sheet_gauge_mm(int gauge, GaugeScale scale) {
  const auto inch = scale == GaugeScale::swg ? inch_of(swg, gauge) : inch_of(us, gauge);
  if (!inch) return std::nullopt;
  return *inch * inch_mm;
}

tl::expected<double, Refusal> parse_sheet_mm(std::string_view text, Units units) {
  const auto line = figures_between_spaces(text);
  if (line && line->figures.size() > 1) return parse_length_mm(text, units);  // which refuses them
  const auto mm = parse_sheets_mm(text, units);
  if (!mm) return tl::make_unexpected(mm.error());
  return mm->front();
}

tl::expected<std::vector<double>, Refusal> parse_sheets_mm(std::string_view text, Units units) {
  const auto line = figures_between_spaces(text);
  if (!line) return tl::make_unexpected(line.error());
  const GaugeWord* gauge = gauge_word(line->unit);
  if (!gauge) return in_unit(*line, length_kind(), bare_length(units));
  if (!gauge->scale) {
    const auto number = gauge_number(line->figures.front().figure);
    return refused({"a gauge number means nothing without its scale", "1.1 mm, 20 SWG, 20 US",
                    number && line->figures.size() == 1 ? could_mean(*number) : could_mean(0), 0},
                   text, line->unit);
  }
  std::vector<double> all;
  for (const WrittenFigure& written : line->figures) {
    const auto mm = of_gauge(written, *gauge->scale, text);
    if (!mm) return tl::make_unexpected(mm.error());
    all.push_back(*mm);
  }
  return all;
}

std::optional<double> en10131_tolerance_mm(double sheet_mm) {
  struct Band {
    double up_to_mm, tolerance_mm;
  };
  constexpr std::array bands{Band{0.60, .03}, Band{0.80, .04}, Band{1.00, .05}, Band{1.20, .06},
                             Band{1.60, .08}, Band{2.00, .10}, Band{2.50, .12}, Band{3.00, .15}};
  if (!(sheet_mm > 0.40)) return std::nullopt;
  for (const Band& band : bands)
    if (sheet_mm <= band.up_to_mm) return band.tolerance_mm;
  return std::nullopt;
}

}  // namespace tinworm::quantity
