#include "documents/visit.hpp"

#include <fmt/format.h>

#include "documents/parts.hpp"
#include "documents/typography.hpp"
#include "survey/told.hpp"

namespace tinworm::documents {
namespace {

void write_cuts(Flow& flow, const weighing::Result& result) {
  if (result.survey.opened.empty()) return;
  flow.heading("What was found when it was cut open");
  for (const survey::Opened& cut : result.survey.opened)
    flow.item(fmt::format("{}, {}", title_of(result, cut.zone, cut.own), survey::opened_text(cut)),
              "", small_style);
  flow.paragraph("After the survey, and no part of its verdict.", note_style);
}

}  // namespace

void write_visit(Flow& flow, const weighing::Result& result) {
  const auto told = survey::told_of_car(result.survey, survey::Reader::owner);
  if (told.empty() && result.survey.opened.empty()) return;
  flow.section("The car and the visit", "visit");
  std::vector<Row> rows;
  for (const survey::Told& each : told) rows.push_back({{each.label, each.text}, "", "", false});
  flow.table({{"what", 1}, {"as recorded", 3}}, rows);
  write_cuts(flow, result);
}

}  // namespace tinworm::documents
