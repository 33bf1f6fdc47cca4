#include "scene/sheet_key.hpp"

#include <algorithm>

#include "scene/naming.hpp"

namespace tinworm::scene {
namespace {

constexpr Style entry_style{7, Font::regular, black, Says::legend, 1.18};

bool speaks_for_itself(const LegendEntry& entry) {
  using weighing::Step;
  for (const char* part : {"seen in part", "part or inside not seen", "inside not seen",
                           "white ground", "pale lines"}) {
    if (entry.words == part) return true;
  }
  for (const Step step :
       {Step::sound, Step::bloom, Step::pitted, Step::thin, Step::weak, Step::holed}) {
    // Not where its words follow changed rules.
    if (entry.words == step_name(step) && entry.meaning == step_meaning(step)) return true;
  }
  return false;
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

bool draw_key_on_sheet(Drafting& drafting, Fit least) {
  constexpr double clear_mm = 1.5, pitch_mm = 1;
  const rules::Rules& rules = drafting.result.constants;
  const Area& where = drafting.sheet.drawing;
  Used without_weights = drafting.used;
  without_weights.roles.clear();
  const struct {
    const Used& used;
    Fit fit;
    double width_mm;
  } tries[] = {{drafting.used, Fit::roomy, 56},
               {drafting.used, Fit::close, 56},
               {without_weights, Fit::close, 56},
               {without_weights, Fit::close, 49},
               {without_weights, Fit::brief, 49}};
  for (const auto& [used, fit, width_mm] : tries) {
    if (fit > least) break;
    Layer tried;
    Writer trial{tried, {0, 0, width_mm, where.height_mm}, 0, drafting.measure};
    write_legend(trial, used, rules, fit);
    for (double x = where.right() - width_mm - clear_mm; x > where.x_mm; x -= pitch_mm) {
      for (double y = where.y_mm + clear_mm; y + trial.y < where.bottom(); y += pitch_mm) {
        const Area area{x, y, width_mm, trial.y};
        if (!drafting.space.blank(area.grown(clear_mm))) continue;
        Writer writer{drafting.page.layer("column"), area, y, drafting.measure};
        write_legend(writer, used, rules, fit);
        drafting.space.write(area);
        return true;
      }
    }
  }
  return false;
}

}  // namespace tinworm::scene
