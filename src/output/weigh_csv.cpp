#include "output/weigh_csv.hpp"

#include <fmt/format.h>

#include "output/csv.hpp"
#include "output/figures.hpp"
#include "weighing/holes.hpp"
#include "weighing/words.hpp"

namespace tinworm::output {
namespace {

// One row; text as it goes into the file.
struct Record {
  std::string kind, zone, name, side, role, spot, rust, seen, evidence, step, step_low, step_high,
      near, value, low, high, value_kind, mean_mm, readings, baseline_mm, baseline_from, pit_left,
      rusted_share, iso4628_3, astm_d610, damage, share, rank, holes, largest_hole_mm, stuffed;
};

struct Field {
  std::string_view title;
  std::string Record::*value;
};

constexpr Field fields[] = {
    {"kind", &Record::kind},
    {"zone", &Record::zone},
    {"name", &Record::name},
    {"side", &Record::side},
    {"role", &Record::role},
    {"spot", &Record::spot},
    {"rust", &Record::rust},
    {"seen", &Record::seen},
    {"evidence", &Record::evidence},
    {"step", &Record::step},
    {"step_low", &Record::step_low},
    {"step_high", &Record::step_high},
    {"near", &Record::near},
    {"value", &Record::value},
    {"low", &Record::low},
    {"high", &Record::high},
    {"value_kind", &Record::value_kind},
    {"mean_mm", &Record::mean_mm},
    {"readings", &Record::readings},
    {"baseline_mm", &Record::baseline_mm},
    {"baseline_from", &Record::baseline_from},
    {"pit_left", &Record::pit_left},
    {"rusted_share", &Record::rusted_share},
    {"iso4628_3", &Record::iso4628_3},
    {"astm_d610", &Record::astm_d610},
    {"damage", &Record::damage},
    {"share", &Record::share},
    {"rank", &Record::rank},
    {"holes", &Record::holes},
    {"largest_hole_mm", &Record::largest_hole_mm},
    {"stuffed", &Record::stuffed},
};

std::string number(std::optional<double> value) {
  return value ? fmt::format("{}", rounded(*value)) : "";
}

std::string whole(std::optional<int> value) {
  return value ? fmt::format("{}", *value) : "";
}

void set_metal(Record& row, const weighing::MetalLeft& metal) {
  row.value = number(metal.shown.value);
  row.low = number(metal.shown.low);
  row.high = number(metal.shown.high);
  row.value_kind = word(metal.kind);
  row.mean_mm = number(metal.mean_mm);
  row.readings = fmt::format("{}", metal.readings);
  row.baseline_mm = number(metal.baseline_mm);
  row.baseline_from = word(metal.baseline_from);
  row.pit_left = number(metal.pit_left);
}

// As in JSON: `step_low` is the step at the low end of the metal left, the worst it may be.
template <class Place>
void set_steps(Record& row, const Place& place) {
  row.evidence = word(place.evidence);
  row.step = word(place.step);
  row.step_low = word(place.step_low);
  row.step_high = word(place.step_high);
}

Record burden_row(std::string kind, const weighing::Burden& burden) {
  Record row;
  row.kind = std::move(kind);
  row.value = number(burden.value);
  row.low = number(burden.low);
  row.high = number(burden.high);
  row.value_kind = "burden";
  return row;
}

Record zone_row(const weighing::Zone& zone) {
  Record row;
  row.kind = "zone";
  row.zone = zone.number != 0 ? fmt::format("{:02}", zone.number) : zone.own;
  row.name = zone.name;
  row.side = body::word(zone.side);
  row.role = body::word(zone.role);
  row.seen = zone.seen.word ? word(*zone.seen.word) : "not-seen";
  set_steps(row, zone);
  row.near = zone.near;
  if (zone.metal) set_metal(row, *zone.metal);
  row.rusted_share = number(zone.rusted_share);
  row.iso4628_3 = whole(zone.iso4628_3);
  row.astm_d610 = whole(zone.astm_d610);
  row.damage = number(zone.damage);
  row.share = number(zone.share);
  return row;
}

Record spot_row(const Record& zone, const weighing::Spot& spot) {
  Record row;
  row.kind = "spot";
  row.zone = zone.zone;
  row.name = zone.name;
  row.side = zone.side;
  row.role = zone.role;
  row.seen = zone.seen;
  row.spot = spot.name;
  row.rust = spot.rust;
  set_steps(row, spot);
  row.near = spot.near_what;
  set_metal(row, spot.metal);
  row.damage = number(spot.damage);
  row.rank = spot.rank > 0 ? fmt::format("{}", spot.rank) : "";
  if (!spot.holes.empty()) {
    row.holes = fmt::format("{}", spot.holes.size());
    row.largest_hole_mm = number(weighing::largest_mm(spot.holes));
  }
  if (spot.stuffed) row.stuffed = word(*spot.stuffed);
  return row;
}

std::string record(const std::vector<std::string>& survey, const Record& row,
                   const std::string& rules) {
  std::vector<std::string> values = survey;
  for (const Field& field : fields) values.push_back(row.*field.value);
  values.push_back(rules);
  return csv_record(values);
}

}  // namespace

std::string weigh_csv_header() {
  std::vector<std::string> titles = {"file", "date", "verdict", "could_be", "open_up_first"};
  for (const Field& field : fields) titles.emplace_back(field.title);
  titles.emplace_back("rules");
  return csv_record(titles);
}

std::string weigh_csv_rows(const weighing::Result& result) {
  const std::vector<std::string> survey = {
      result.file, result.survey.visit.date.text(), std::string(word(result.verdict)),
      std::string(word(result.could_be)), result.open_up_first ? "true" : "false"};
  const std::string changed = weighing::rules_text(result);
  const std::string rules = changed.empty() ? "default" : changed;
  std::string rows = record(survey, burden_row("structure", result.structure), rules) +
                     record(survey, burden_row("skin", result.skin), rules) +
                     record(survey, burden_row("shell", result.shell), rules);
  for (const weighing::Zone& zone : result.zones) {
    const Record row = zone_row(zone);
    rows += record(survey, row, rules);
    for (const weighing::Spot& spot : zone.spots) {
      rows += record(survey, spot_row(row, spot), rules);
    }
  }
  return rows;
}

}  // namespace tinworm::output
