#include "scene/parts_strip.hpp"

#include <algorithm>
#include <cmath>

#include "scene/sheet_key.hpp"

namespace tinworm::scene {
namespace {

constexpr Style part_style{6.5, Font::regular, black, Says::part_name, 1.16};
constexpr double between_columns_mm = 2.5;
constexpr double numbers_gap_mm = 1;

double width_of(std::string_view text, const Measure& measure) {
  return measure(text, part_style.font, part_style.size_pt).width_mm;
}

double numbers_mm(const std::vector<PartName>& parts, const Measure& measure) {
  double widest = 0;
  for (const PartName& part : parts) widest = std::max(widest, width_of(part.numbers, measure));
  return widest + numbers_gap_mm;
}

double name_mm(const std::vector<PartName>& parts, const Measure& measure) {
  double widest = 0;
  for (const PartName& part : parts) widest = std::max(widest, width_of(part.name, measure));
  return widest;
}

std::string flowing(const std::vector<PartName>& parts) {
  std::string text;
  for (const PartName& part : parts) {
    std::string numbers = part.numbers;
    // A number stays with its name's first word.
    for (std::size_t at = numbers.find(' '); at != std::string::npos; at = numbers.find(' ', at))
      numbers.replace(at, 1, no_break);
    text += (text.empty() ? "" : "; ") + numbers + std::string(no_break) + part.name;
  }
  return text;
}

void write_rows(Writer& writer, const std::vector<PartName>& parts, int columns) {
  const double pitch = (writer.area.width_mm + between_columns_mm) / columns;
  const double indent = numbers_mm(parts, writer.measure);
  const auto rows = static_cast<std::size_t>(
      std::ceil(static_cast<double>(parts.size()) / static_cast<double>(columns)));
  const double top = writer.y;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const double x = writer.area.x_mm + pitch * static_cast<double>(i / rows);
    const double baseline =
        top + line_height_mm(part_style) * (static_cast<double>(i % rows) + 0.79);
    writer.layer.items.push_back(
        set(parts[i].numbers, part_style, {x, baseline}, Align::left, writer.measure));
    writer.layer.items.push_back(
        set(parts[i].name, part_style, {x + indent, baseline}, Align::left, writer.measure));
  }
  writer.y = top + line_height_mm(part_style) * static_cast<double>(rows);
}

void write_setting(Writer& writer, const std::vector<PartName>& parts, int columns) {
  writer.rule();
  Style heading = heading_style;
  heading.says = Says::part_name;
  writer.block("Parts: odd left, even right", heading);
  if (columns > 0)
    write_rows(writer, parts, columns);
  else
    writer.block(flowing(parts), part_style);
}

double height_of(const std::vector<PartName>& parts, double width_mm, int columns,
                 const Measure& measure) {
  Layer tried;
  Writer trial{tried, {0, 0, width_mm, 1000}, 0, measure};
  write_setting(trial, parts, columns);
  return trial.y;
}

}  // namespace

std::set<int> numbers_on(const Page& page) {
  std::set<int> numbers;
  for (const Label& label : page.labels) numbers.insert(label.zone);
  return numbers;
}

std::vector<PartName> parts_of(const Drafting& drafting, Parts which) {
  if (which == Parts::none) return {};
  std::set<int> numbers = numbers_on(drafting.page);
  if (which == Parts::unnamed) {
    for (const int named : drafting.used.named) {
      numbers.erase(named);
      const body::Zone* plan = drafting.result.body->zone(named);
      if (const auto pair = plan == nullptr ? std::nullopt : plan->pair()) numbers.erase(*pair);
    }
  }
  return part_names(*drafting.result.body, numbers);
}

std::optional<PartsSetting> place_for_parts(const Drafting& drafting, Parts which) {
  constexpr int most_columns = 5;
  const std::vector<PartName> parts = parts_of(drafting, which);
  if (parts.empty()) return std::nullopt;
  const double column_mm =
      numbers_mm(parts, drafting.measure) + name_mm(parts, drafting.measure) + between_columns_mm;
  const auto seek = [&](double width_mm, int columns) -> std::optional<PartsSetting> {
    const double height = height_of(parts, width_mm, columns, drafting.measure);
    const auto area = blank_place(drafting, width_mm, height);
    if (!area) return std::nullopt;
    return PartsSetting{*area, columns};
  };
  for (int columns = 1; columns <= most_columns; ++columns)
    if (auto found = seek(columns * column_mm - between_columns_mm, columns)) return found;
  for (const double width_mm : {60.0, 52.0, 70.0, 90.0, 120.0, 180.0})
    if (auto found = seek(width_mm, 0)) return found;
  return std::nullopt;
}

void write_parts(Layer& layer, const std::vector<PartName>& parts, const PartsSetting& setting,
                 const Measure& measure) {
  Writer writer{layer, setting.area, setting.area.y_mm, measure};
  write_setting(writer, parts, setting.columns);
}

void write_parts(Writer& writer, const std::vector<PartName>& parts) {
  if (parts.empty()) return;
  write_setting(writer, parts, 0);
  writer.y += apart_mm * 0.4;
}

}  // namespace tinworm::scene
