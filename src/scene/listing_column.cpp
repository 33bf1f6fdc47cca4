#include "scene/listing_column.hpp"

#include <algorithm>

#include "scene/column.hpp"
#include "scene/listing_words.hpp"
#include "scene/naming.hpp"
#include "scene/worst_list.hpp"

namespace tinworm::scene {
namespace {

// How much is said, from all to the least.
struct Fullness {
  Fit key = Fit::roomy;
  bool line_weights = true;
  bool all_repairs = true;
  std::size_t most_zones = no_limit;
  bool elsewhere = true;  // rust on parts of other sheets
  bool key_on_sheet = false;
};

constexpr Fullness fullnesses[] = {
    {Fit::roomy, true, true, no_limit},   {Fit::close, true, true, no_limit},
    {Fit::close, false, true, no_limit},  {Fit::brief, false, true, no_limit},
    {Fit::brief, false, false, no_limit}, {Fit::brief, false, false, 16},
    {Fit::brief, false, false, 4, false}};

void write_key(Writer& writer, const Drafting& drafting, const Fullness& fullness) {
  Used used = drafting.used;
  if (!fullness.line_weights) used.roles.clear();
  const rules::Rules& rules = drafting.result.constants;
  write_legend(writer, used, rules, fullness.key);
}

void write_all(Writer& writer, const Drafting& drafting, const Fullness& fullness,
               double repairs_mm) {
  const weighing::Result& result = drafting.result;
  write_verdict(writer, result);
  write_worst(writer, drafting, fullness.key);
  write_rules(writer, result, "");
  write_looked(writer, result, fullness.key == Fit::brief ? Setting::flowing : Setting::lines);
  const std::size_t named = std::min<std::size_t>(fullness.most_zones, 8);
  const std::string elsewhere = elsewhere_line(result, drafting.sheet.kind, named);
  if (!elsewhere.empty() && fullness.elsewhere) writer.block(elsewhere, list_style);
  write_unseen(writer, result, fullness.most_zones);
  write_repairs(writer, result, repairs_mm);
  if (!fullness.key_on_sheet) write_key(writer, drafting, fullness);
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
  const bool key_on_sheet = draw_key_on_sheet(drafting, Fit::brief);
  Writer writer = open_column(drafting, drafting.result.caution);
  Fullness chosen;
  double spare = 0;
  for (const Fullness& each : fullnesses) {
    chosen = each;
    chosen.key_on_sheet = key_on_sheet;
    spare = room_left(writer, drafting, chosen);
    if (spare >= 0) break;
  }
  const double repairs_mm = chosen.all_repairs
                                ? writer.area.height_mm
                                : least_repairs_mm(writer, drafting.result) + std::max(spare, 0.0);
  write_all(writer, drafting, chosen, repairs_mm);
}

}  // namespace tinworm::scene
