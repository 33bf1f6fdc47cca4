#include "metal/corrosivity.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace tinworm::metal {

namespace {

// ISO 9223:2012 Table 2, carbon steel, upper limits C1 to CX, inclusive (quoted).
constexpr std::array limits_um{1.3, 25.0, 50.0, 80.0, 200.0, 700.0};
constexpr std::array limits_g_per_m2{10.0, 200.0, 400.0, 650.0, 1500.0, 5500.0};
constexpr std::size_t categories = static_cast<std::size_t>(Corrosivity::cx) + 1;
using Limits = std::array<double, categories>;
static_assert(limits_um.size() == categories && limits_g_per_m2.size() == categories);

std::optional<Corrosivity> category(const Limits& limits, double loss) {
  if (!(loss >= 0 && loss <= limits.back())) return std::nullopt;
  return static_cast<Corrosivity>(std::ranges::lower_bound(limits, loss) - limits.begin());
}

FirstYear first_year(const Limits& limits, Corrosivity category) {
  const auto i = static_cast<std::size_t>(category);
  return {i == 0 ? 0 : limits[i - 1], limits[i]};
}

}  // namespace

std::string_view word(Corrosivity category) {
  constexpr std::array words{"C1", "C2", "C3", "C4", "C5", "CX"};
  static_assert(words.size() == categories);
  return words[static_cast<std::size_t>(category)];
}

std::optional<Corrosivity> category_by_thickness(double um_per_year) {
  return category(limits_um, um_per_year);
}

std::optional<Corrosivity> category_by_mass(double g_per_m2_year) {
  return category(limits_g_per_m2, g_per_m2_year);
}

FirstYear first_year_um(Corrosivity category) {
  return first_year(limits_um, category);
}

FirstYear first_year_g_per_m2(Corrosivity category) {
  return first_year(limits_g_per_m2, category);
}

double power_law_loss(double first_year, double years, double b) {
  return first_year * std::pow(years, b);
}

double tangent_loss(double first_year, double years, double b) {
  constexpr double from_years = 20;
  if (years <= from_years) return power_law_loss(first_year, years, b);
  const double slope = b * std::pow(from_years, b - 1);
  return first_year * (std::pow(from_years, b) + slope * (years - from_years));
}

}  // namespace tinworm::metal
