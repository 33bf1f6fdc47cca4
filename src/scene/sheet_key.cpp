#include "scene/sheet_key.hpp"

#include <algorithm>

#include "scene/naming.hpp"

namespace tinworm::scene {
namespace {

constexpr Style entry_style{7, Font::regular, black, Says::legend, 1.18};

bool speaks_for_itself(const LegendEntry& entry) {
  return entry.sign == KeySign::sound || entry.sign == KeySign::step ||
         entry.sign == KeySign::ground || entry.sign == KeySign::part;
}

// Steps by their names two by two, the others below in full.
void write_brief(Writer& writer, const Used& used, const rules::Rules& rules) {
  constexpr double between_mm = 0.3;
  Style style = list_style;
  style.size_pt = 6.5;
  style.says = Says::legend;
  std::vector<LegendEntry> steps, others;
  for (LegendEntry& entry : legend_of(used, rules)) {
    const bool step = speaks_for_itself(entry);
    if (step) entry.meaning.clear();
    (step ? steps : others).push_back(std::move(entry));
  }
  writer.rule();
  writer.block("Key", heading_style);
  writer.y += 0.6;
  const auto middle = steps.begin() + static_cast<std::ptrdiff_t>((steps.size() + 1) / 2);
  Area half = writer.area;
  half.width_mm /= 2;
  Writer left{writer.layer, half, writer.y, writer.measure};
  half.x_mm += half.width_mm;
  Writer right{writer.layer, half, writer.y, writer.measure};
  write_entries(left, {steps.begin(), middle}, style, between_mm);
  write_entries(right, {middle, steps.end()}, style, between_mm);
  writer.y = std::max(left.y, right.y);
  write_entries(writer, others, style, between_mm);
  writer.y += apart_mm * 0.4;
}

}  // namespace

void write_legend(Writer& writer, const Used& used, const rules::Rules& rules, Fit fit) {
  if (fit == Fit::brief) return write_brief(writer, used, rules);
  Style style = entry_style;
  if (fit == Fit::close) style.size_pt = 6.5;
  const double between_mm = fit == Fit::close ? 0.3 : 0.75;
  writer.rule();
  writer.block("Key", heading_style);
  writer.y += 0.6;
  write_entries(writer, legend_of(used, rules), style, between_mm);
  writer.y += apart_mm * 0.4;
}

void write_entries(Writer& writer, const std::vector<LegendEntry>& entries, const Style& style,
                   double between_mm) {
  constexpr double indent = swatch_width_mm + 2.2;
  for (const LegendEntry& entry : entries) {
    const double top = writer.y;
    add_swatch(writer.layer, entry, {writer.area.x_mm, top + 0.2});
    writer.block(entry.meaning.empty() ? entry.words : entry.words + ": " + entry.meaning, style,
                 indent);
    writer.y = std::max(writer.y, top + swatch_height_mm) + between_mm;
  }
}

namespace {

std::optional<Area> blank_place_but(const Drafting& drafting, const std::optional<Area>& taken,
                                    double width_mm, double height_mm) {
  constexpr double clear_mm = 1.5, pitch_mm = 1;
  const Area& where = drafting.sheet.drawing;
  for (double x = where.right() - width_mm - clear_mm; x > where.x_mm; x -= pitch_mm) {
    for (double y = where.y_mm + clear_mm; y + height_mm < where.bottom(); y += pitch_mm) {
      const Area area{x, y, width_mm, height_mm};
      if (taken && taken->overlaps(area.grown(clear_mm))) continue;
      if (drafting.space.blank(area.grown(clear_mm))) return area;
    }
  }
  return std::nullopt;
}

Used used_in(const Drafting& drafting, bool line_weights) {
  Used used = drafting.used;
  if (!line_weights) used.roles.clear();
  return used;
}

}  // namespace

std::optional<Area> blank_place(const Drafting& drafting, double width_mm, double height_mm) {
  return blank_place_but(drafting, {}, width_mm, height_mm);
}

std::optional<KeySetting> place_for_key(const Drafting& drafting, Fit least,
                                        const std::optional<Area>& taken) {
  const struct {
    Fit fit;
    bool line_weights;
    double width_mm;
  } tries[] = {{Fit::roomy, true, 56},
               {Fit::close, true, 56},
               {Fit::close, false, 56},
               {Fit::close, false, 49},
               {Fit::brief, false, 49}};
  for (const auto& [fit, line_weights, width_mm] : tries) {
    if (fit > least) break;
    Layer tried;
    Writer trial{tried, {0, 0, width_mm, 1000}, 0, drafting.measure};
    write_legend(trial, used_in(drafting, line_weights), drafting.result.constants, fit);
    if (const auto area = blank_place_but(drafting, taken, width_mm, trial.y))
      return KeySetting{*area, fit, line_weights};
  }
  return std::nullopt;
}

void draw_key(Drafting& drafting, const KeySetting& setting) {
  Writer writer{drafting.page.layer("column"), setting.area, setting.area.y_mm, drafting.measure};
  write_legend(writer, used_in(drafting, setting.line_weights), drafting.result.constants,
               setting.fit);
  drafting.space.write(setting.area);
}

}  // namespace tinworm::scene
