#include "quantity/unit.hpp"

#include <algorithm>
#include <array>
#include <optional>

#include <fmt/format.h>

#include "quantity/ascii.hpp"
#include "quantity/figure.hpp"
#include "quantity/unit_words.hpp"

namespace tinworm::quantity {
namespace {

// What people write and what it means here.
struct Slip {
  std::string_view written;
  std::string_view meant;
};

// foot and mile: the international ones of 1959, exact.
constexpr double um_per_inch = inch_mm * 1000;
constexpr std::array lengths{Unit{"mm", 1},        Unit{"um", 0.001},       Unit{"µm", 0.001},
                             Unit{"μm", 0.001},    Unit{"cm", 10},          Unit{"m", 1000},
                             Unit{"in", inch_mm},  Unit{"\"", inch_mm},     Unit{"″", inch_mm},
                             Unit{"thou", 0.0254}, Unit{"ft", 12 * inch_mm}};
constexpr std::array films{Unit{"um", 1},           Unit{"µm", 1},           Unit{"μm", 1},
                           Unit{"mm", 1000},        Unit{"cm", 1e4},         Unit{"m", 1e6},
                           Unit{"in", um_per_inch}, Unit{"\"", um_per_inch}, Unit{"″", um_per_inch},
                           Unit{"thou", 25.4},      Unit{"ft", 304800}};
constexpr std::array areas{Unit{"m2", 1}, Unit{"cm2", 0.0001}, Unit{"ft2", 0.09290304}};
constexpr std::array distances{Unit{"km", 1}, Unit{"mi", 1.609344}};

constexpr std::array slips{
    Slip{"millimetres", "mm"}, Slip{"inch", "in"},      Slip{"inches", "in"}, Slip{"”", "in"},
    Slip{"''", "in"},          Slip{"mil", "thou"},     Slip{"mils", "thou"}, Slip{"thous", "thou"},
    Slip{"'", "ft"},           Slip{"feet", "ft"},      Slip{"foot", "ft"},   Slip{"micron", "um"},
    Slip{"microns", "um"},     Slip{"u", "um"},         Slip{"µ", "um"},      Slip{"m²", "m2"},
    Slip{"cm²", "cm2"},        Slip{"ft²", "ft2"},      Slip{"sqft", "ft2"},  Slip{"miles", "mi"},
    Slip{"mile", "mi"},        Slip{"kilometres", "km"}};

constexpr std::string_view length_units = "mm, um, cm, m, in, thou, ft";
constexpr Kind length{"a length", "of length", lengths, length_units};
constexpr Kind film{"a coating", "of length", films, length_units};
constexpr Kind area{"an area", "of area", areas, "m2, cm2, ft2"};
constexpr Kind distance{"a distance", "of distance", distances, "km, mi"};

std::vector<std::string_view> words_of(const Kind& kind) {
  std::vector<std::string_view> words;
  for (const Unit& unit : kind.units) words.push_back(unit.word);
  return words;
}

std::optional<double> known(std::string_view word, const Kind& kind) {
  const std::string lower = lower_case(word);
  const auto unit = std::ranges::find(kind.units, lower, &Unit::word);
  return unit == kind.units.end() ? std::nullopt : std::optional(unit->factor);
}

std::string meant(std::string_view word, const Kind& kind) {
  const std::string lower = lower_case(word);
  for (const Slip& slip : slips)
    if (slip.written == lower && known(slip.meant, kind))
      return fmt::format("did you mean \"{}\"?", slip.meant);
  return "";
}

}  // namespace

const Kind& length_kind() {
  return length;
}
const Kind& film_kind() {
  return film;
}
const Kind& area_kind() {
  return area;
}
const Kind& distance_kind() {
  return distance;
}

std::vector<std::string_view> length_unit_words() {
  return words_of(length);
}
std::vector<std::string_view> area_unit_words() {
  return words_of(area);
}
std::vector<std::string_view> distance_unit_words() {
  return words_of(distance);
}

bool is_unit(std::string_view word, const Kind& kind) {
  return known(word, kind).has_value();
}

bool is_inch(std::string_view word) {
  return known(word, length) == inch_mm;
}

tl::unexpected<Refusal> refused(Refusal refusal, std::string_view whole, std::string_view at) {
  refusal.offset = offset_in(whole, at);
  return tl::make_unexpected(std::move(refusal));
}

tl::expected<double, Refusal> factor_of(std::string_view word, std::string_view whole,
                                        const Kind& kind) {
  if (const auto factor = known(word, kind)) return *factor;
  if (starts_number(word))
    return refused({"two numbers where one is meant", "", "", 0}, whole, word);
  return refused({fmt::format("\"{}\" is no unit {}", word, kind.unit_of),
                  std::string(kind.allowed), meant(word, kind), 0},
                 whole, word);
}

}  // namespace tinworm::quantity
