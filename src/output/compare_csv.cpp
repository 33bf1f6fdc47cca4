#include "output/compare_csv.hpp"

#include <fmt/format.h>

#include "output/csv.hpp"
#include "output/figures.hpp"
#include "output/zone_text.hpp"

namespace tinworm::output {
namespace {

using history::Comparison;
using history::Place;
using Cells = std::vector<std::string>;

const Cells titles = {"zone",
                      "name",
                      "side",
                      "role",
                      "spot",
                      "date",
                      "file",
                      "verdict",
                      "seen",
                      "recorded",
                      "step",
                      "evidence",
                      "metal_mm",
                      "metal_low_mm",
                      "metal_high_mm",
                      "readings",
                      "baseline_mm",
                      "repaired",
                      "change",
                      "change_overall",
                      "why",
                      "lost_mm",
                      "lost_low_mm",
                      "lost_high_mm",
                      "smallest_visible_mm",
                      "rate_mm_per_year",
                      "rate_low",
                      "rate_high",
                      "rate_from",
                      "years_to_limit_low",
                      "years_to_limit_high"};

std::string number(std::optional<double> value) {
  return value ? fmt::format("{}", rounded(*value)) : "";
}

const char* whether(bool is) {
  return is ? "true" : "false";
}

void append(Cells& row, const Cells& more) {
  row.insert(row.end(), more.begin(), more.end());
}

Cells of_survey(const weighing::Result& survey) {
  return {survey.survey.visit.date.text(), survey.file, std::string(word(survey.verdict))};
}

Cells of_record(const history::Record& record) {
  const auto& t = record.thickness;
  return {whether(record.seen),
          whether(record.recorded),
          record.recorded ? std::string(word(record.step)) : "",
          record.recorded ? std::string(word(record.evidence)) : "",
          t ? number(t->metal_mm) : "",
          t ? number(t->low_mm) : "",
          t ? number(t->high_mm) : "",
          t ? fmt::format("{}", t->readings) : ""};
}

Cells of_place(const Place& place) {
  Cells cells = {std::string(word(place.change)), place.why};
  if (place.lost_mm)
    append(cells,
           {number(place.lost_mm->value), number(place.lost_mm->low), number(place.lost_mm->high)});
  else
    append(cells, {"", "", ""});
  cells.push_back(number(place.smallest_visible_mm));
  if (place.rate)
    append(cells, {number(place.rate->per_year.value), number(place.rate->per_year.low),
                   number(place.rate->per_year.high), std::string(word(place.rate->from))});
  else
    append(cells, {"", "", "", ""});
  const auto* life =
      place.outlook && place.outlook->years_to_limit ? &*place.outlook->years_to_limit : nullptr;
  append(cells, {life ? number(life->low_years) : "", life ? number(life->high_years) : ""});
  return cells;
}

}  // namespace

std::string compare_csv(const Comparison& comparison) {
  std::string csv = csv_record(titles);
  for (const history::Zone& zone : comparison.zones) {
    const Cells of_zone = {zone_number(zone.number, zone.own), zone.name,
                           std::string(body::word(zone.side)), std::string(body::word(zone.role))};
    for (const Place& place : zone.places) {
      for (const history::Record& record : place.records) {
        Cells row = of_zone;
        row.push_back(place.zone_mean ? "mean of the zone" : place.name);
        append(row, of_survey(comparison.surveys[record.survey]));
        append(row, of_record(record));
        append(row, {number(place.baseline_mm), whether(record.repaired),
                     record.change ? std::string(word(*record.change)) : ""});
        append(row, of_place(place));
        csv += csv_record(row);
      }
    }
    for (std::size_t i = 0; zone.places.empty() && i < comparison.surveys.size(); ++i) {
      Cells row = of_zone;
      row.emplace_back();
      append(row, of_survey(comparison.surveys[i]));
      const bool seen = zone.steps[i] != weighing::Step::not_seen;
      append(row, {whether(seen), "false", std::string(word(zone.steps[i]))});
      row.resize(titles.size());
      row[19] = word(zone.change);
      row[20] = zone.why;
      csv += csv_record(row);
    }
  }
  return csv;
}

}  // namespace tinworm::output
