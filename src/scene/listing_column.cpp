#include "scene/listing_column.hpp"

#include <algorithm>

#include "scene/column.hpp"
#include "scene/listing_words.hpp"
#include "scene/naming.hpp"
#include "scene/worst_list.hpp"

namespace tinworm::scene {
namespace {

// How much is said, from all to the least.
enum class Key { roomy, close, brief };  // brief: steps by their names alone, no line weights
struct Fullness {
  Key key = Key::roomy;
  bool line_weights = true;
  bool all_repairs = true;
  std::size_t most_zones = no_limit;
  bool elsewhere = true;  // rust on parts of other sheets
};

constexpr Fullness fullnesses[] = {
    {Key::roomy, true, true, no_limit},   {Key::close, true, true, no_limit},
    {Key::close, false, true, no_limit},  {Key::brief, false, true, no_limit},
    {Key::brief, false, false, no_limit}, {Key::brief, false, false, 16},
    {Key::brief, false, false, 4, false}};

bool speaks_for_itself(const LegendEntry& entry) {
  using weighing::Step;
  for (const char* part : {"seen in part", "part or inside not seen", "inside not seen",
                           "white ground", "pale lines"}) {
    if (entry.words == part) return true;
  }
  for (const Step step : {Step::not_seen, Step::sound, Step::bloom, Step::pitted, Step::thin,
                          Step::weak, Step::holed}) {
    if (entry.words == step_name(step)) return true;
  }
  return false;
}

// Steps by their names two by two, the others below in full.
void write_brief_key(Writer& writer, const Used& used, const rules::Rules& rules) {
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

void write_key(Writer& writer, const Drafting& drafting, const Fullness& fullness) {
  Used used = drafting.used;
  if (!fullness.line_weights) used.roles.clear();
  const rules::Rules& rules = drafting.result.constants;
  if (fullness.key == Key::brief) return write_brief_key(writer, used, rules);
  write_legend(writer, used, rules, fullness.key == Key::roomy ? Fit::roomy : Fit::close);
}

void write_all(Writer& writer, const Drafting& drafting, const Fullness& fullness,
               double repairs_mm) {
  const weighing::Result& result = drafting.result;
  write_verdict(writer, result);
  write_worst(writer, drafting, fullness.key == Key::roomy ? Fit::roomy : Fit::close);
  write_rules(writer, result, "");
  write_looked(writer, result, fullness.key == Key::brief ? Setting::flowing : Setting::lines);
  const std::size_t named = std::min<std::size_t>(fullness.most_zones, 8);
  const std::string elsewhere = elsewhere_line(result, drafting.sheet.kind, named);
  if (!elsewhere.empty() && fullness.elsewhere) writer.block(elsewhere, list_style);
  write_unseen(writer, result, fullness.most_zones);
  write_repairs(writer, result, repairs_mm);
  write_key(writer, drafting, fullness);
}

// What it leaves of the column; negative where that is too short.
double room_left(const Writer& like, const Drafting& drafting, const Fullness& fullness) {
  Layer tried;
  Writer trial{tried, like.area, like.y, like.measure};
  write_all(trial, drafting, fullness, fullness.all_repairs ? like.area.height_mm : 0);
  return trial.room();
}

double least_repairs_mm(const Writer& like, const weighing::Result& result) {
  Layer tried;
  Writer trial{tried, like.area, 0, like.measure};
  write_repairs(trial, result, 0);
  return trial.y;
}

}  // namespace

void draw_listing_column(Drafting& drafting) {
  Writer writer = open_column(drafting, drafting.result.caution);
  Fullness chosen;
  double spare = 0;
  for (const Fullness& each : fullnesses) {
    chosen = each;
    spare = room_left(writer, drafting, each);
    if (spare >= 0) break;
  }
  const double repairs_mm = chosen.all_repairs
                                ? writer.area.height_mm
                                : least_repairs_mm(writer, drafting.result) + std::max(spare, 0.0);
  write_all(writer, drafting, chosen, repairs_mm);
}

}  // namespace tinworm::scene
