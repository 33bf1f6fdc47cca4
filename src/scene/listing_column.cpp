#include "scene/listing_column.hpp"

#include <algorithm>
#include <optional>

#include <fmt/format.h>

#include "scene/column.hpp"
#include "scene/listing_words.hpp"
#include "scene/naming.hpp"
#include "scene/parts_strip.hpp"
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
  bool all() const { return all_repairs && elsewhere && most_zones == no_limit; }
};

// Where the key and the names of the numbers stand; none: in the column, on a further page.
struct Placed {
  std::optional<KeySetting> key;
  std::optional<PartsSetting> parts;
  Parts which = Parts::none;
};

// The dearest first.
std::vector<Placed> placings(const Drafting& drafting) {
  std::vector<Placed> all;
  for (const Parts which : {Parts::all, Parts::unnamed}) {
    const auto parts = place_for_parts(drafting, which);
    if (!parts) continue;
    all.push_back({place_for_key(drafting, Fit::brief, parts->area), parts, which});
  }
  all.push_back({place_for_key(drafting, Fit::brief), {}, Parts::none});
  return all;
}

constexpr Fullness fullnesses[] = {
    {Fit::roomy, true, true, no_limit},   {Fit::close, true, true, no_limit},
    {Fit::close, false, true, no_limit},  {Fit::brief, false, true, no_limit},
    {Fit::brief, false, false, no_limit}, {Fit::brief, false, false, 16},
    {Fit::brief, false, false, 4, false}, {Fit::brief, false, false, 2, false},
    {Fit::brief, false, false, 0, false}};

void write_key(Writer& writer, const Drafting& drafting, const Fullness& fullness) {
  Used used = drafting.used;
  if (!fullness.line_weights) used.roles.clear();
  const rules::Rules& rules = drafting.result.constants;
  write_legend(writer, used, rules, fullness.key);
}

void write_all(Writer& writer, const Drafting& drafting, const Fullness& fullness,
               const Placed& placed, const std::string& overflow_page, double repairs_mm) {
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
  if (!placed.key) write_key(writer, drafting, fullness);
  if (!fullness.all())
    writer.block(fmt::format("All of it, and the names of the numbers: page {}.", overflow_page),
                 list_style);
  else if (!placed.parts)
    writer.block(fmt::format("What the numbers are called: page {}.", overflow_page), list_style);
}

// What it leaves of the column; negative where that is too short.
double room_left(const Writer& like, const Drafting& drafting, const Fullness& fullness,
                 const Placed& placed, const std::string& overflow_page) {
  Layer tried;
  Writer trial{tried, like.area, like.y, like.measure};
  write_all(trial, drafting, fullness, placed, overflow_page,
            fullness.all_repairs ? like.area.height_mm : 0);
  return trial.room();
}

double least_repairs_mm(const Writer& like, const weighing::Result& result) {
  Layer tried;
  Writer trial{tried, like.area, 0, like.measure};
  write_repairs(trial, result, 0);
  return trial.y;
}

}  // namespace

namespace {

struct Choice {
  Placed placed;
  Fullness fullness;
  double spare_mm = 0;
};

// What says most and fits; of two that say as much the dearer placing.
Choice chosen(const Writer& like, const Drafting& drafting, const std::string& overflow_page) {
  const std::vector<Placed> all = placings(drafting);
  for (const Fullness& each : fullnesses) {
    for (const Placed& placed : all) {
      const double spare_mm = room_left(like, drafting, each, placed, overflow_page);
      if (spare_mm >= 0) return {placed, each, spare_mm};
    }
  }
  return {all.back(), std::end(fullnesses)[-1], 0};
}

}  // namespace

Further draw_listing_column(Drafting& drafting, const std::string& overflow_page) {
  Writer writer = open_column(drafting, drafting.result.caution);
  const auto [placed, fullness, spare_mm] = chosen(writer, drafting, overflow_page);
  const double repairs_mm = fullness.all_repairs
                                ? writer.area.height_mm
                                : least_repairs_mm(writer, drafting.result) + spare_mm;
  write_all(writer, drafting, fullness, placed, overflow_page, repairs_mm);
  if (placed.key) draw_key(drafting, *placed.key);
  if (placed.parts)
    write_parts(writer.layer, parts_of(drafting, placed.which), *placed.parts, drafting.measure);
  Further further;
  further.numbers = numbers_on(drafting.page);
  further.parts = !placed.parts || !fullness.all();
  further.needed = further.parts;
  return further;
}

}  // namespace tinworm::scene
