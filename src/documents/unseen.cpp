#include "documents/unseen.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "documents/parts.hpp"
#include "output/figures.hpp"
#include "scene/naming.hpp"
#include "weighing/looks.hpp"

namespace tinworm::documents {
namespace {

using weighing::Result;

std::string carries(const Result& result, int number) {
  const weighing::Zone* zone = result.zone(number);
  if (zone == nullptr || zone->near.empty()) return "";
  return (zone->on_mount ? "" : "near: ") + zone->near;
}

void write_shares(Flow& flow, const Result& result) {
  const auto row = [](const char* name, const weighing::Coverage& coverage) {
    if (!coverage.any) return Row{{name, "this body has none", ""}, "", "", false};
    return Row{{name, output::percent_text(coverage.area_share),
                output::percent_text(coverage.measured_share)},
               "",
               "",
               false};
  };
  flow.table({{"share of its area", 2},
              {"seen", 1, scene::Align::right},
              {"measured", 1, scene::Align::right}},
             {row("main structure", result.main), row("local structure", result.local),
              row("skin", result.skin_seen)});
}

void write_not_seen(Flow& flow, const Result& result) {
  flow.heading("Not seen at all");
  std::vector<Row> rows;
  for (const weighing::NotSeen& each : result.not_seen)
    rows.push_back({{title_of(result, each.zone, each.own), each.why, carries(result, each.zone)},
                    on_sheet(each.zone),
                    "",
                    false});
  if (rows.empty()) flow.paragraph("No part was left out altogether.");
  flow.table({{"part", 2}, {"why", 2.4}, {"what stands there", 2}}, rows);
}

void write_seen_in_part(Flow& flow, const Result& result) {
  std::vector<int> part, inside;
  for (const weighing::Zone& zone : result.zones) {
    if (zone.number == 0 || !zone.fitted || zone.seen_share <= 0) continue;
    if (zone.seen.word == survey::SeenWord::part) part.push_back(zone.number);
    if (zone.inside == "not-seen") inside.push_back(zone.number);
  }
  if (!part.empty())
    flow.paragraph(fmt::format("Seen in part, the rest not: {}.", scene::number_list(part)));
  if (!inside.empty())
    flow.paragraph(fmt::format("Nobody looked inside: {}. Boxes and layers rust from inside.",
                               scene::number_list(inside)));
}

// What one opening shows, in one row.
Row look_row(const weighing::Look& look, const Result& result) {
  std::vector<std::string> parts, why;
  for (const weighing::OpenUp* open : look.shows) {
    parts.push_back(title_of(result, open->zone, open->own));
    if (std::ranges::find(why, open->why) == why.end()) why.push_back(open->why);
  }
  std::string how = look.opening;
  if (look.minutes > 0) how += fmt::format("{}about {} min", how.empty() ? "" : ", ", look.minutes);
  return {{fmt::format("{}", fmt::join(parts, "; ")), how, fmt::format("{}", fmt::join(why, "; ")),
           std::string(sentence(look.could_become))},
          on_sheet(look.shows.front()->zone),
          "",
          false};
}

void write_to_open(Flow& flow, const Result& result) {
  std::vector<Row> rows;
  for (const weighing::Look& look : weighing::looks(result)) rows.push_back(look_row(look, result));
  if (rows.empty()) return;
  flow.heading("To open up, what could change most first");
  flow.table({{"part", 2}, {"how", 1.4}, {"why", 2.6}, {"the verdict could become", 1.4}}, rows);
}

}  // namespace

void write_unseen(Flow& flow, const Result& result) {
  flow.section("What wasn't seen, so isn't known", "not-seen");
  write_shares(flow, result);
  write_not_seen(flow, result);
  write_seen_in_part(flow, result);
  write_to_open(flow, result);
}

void write_questions(Flow& flow, const Result& result) {
  if (result.advice.empty()) return;
  flow.section("Questions that are open", "questions");
  for (std::size_t i = 0; i < result.advice.size(); ++i) {
    const bool why_later = same_reason_follows(result.advice, i);
    flow.item(scene::capitalised(why_later ? result.advice[i].question : text(result.advice[i])),
              "", small_style);
  }
}

}  // namespace tinworm::documents
