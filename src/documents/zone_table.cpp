#include "documents/zone_table.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "documents/finding_words.hpp"
#include "documents/parts.hpp"
#include "output/figures.hpp"
#include "output/zone_text.hpp"
#include "scene/naming.hpp"
#include "survey/told.hpp"
#include "survey/written.hpp"
#include "weighing/zone_facts.hpp"

namespace tinworm::documents {
namespace {

std::string seen_words(const weighing::Zone& zone) {
  if (!zone.fitted) return "not fitted";
  if (!zone.seen.word) return "not seen";
  if (*zone.seen.word == survey::SeenWord::part)
    return "part, " + output::percent_text(zone.seen.share);
  return std::string(survey::word(*zone.seen.word));
}

std::string inside_words(const weighing::Zone& zone) {
  return zone.inside == "not-seen" ? "not seen" : zone.inside;
}

std::string left_words(const weighing::Span& metal) {
  return metal.low == metal.high ? output::percent_text(metal.value) : output::percent_span(metal);
}

std::string step_words(const weighing::Zone& zone) {
  if (!zone.fitted) return "";
  if (zone.step == weighing::Step::not_seen) return "not known";
  const std::string found = output::step_text(zone.step, zone.step_high, zone.step_low);
  return zone.seen_share > 0 ? found : found + "; the rest not known";  // felt through a cover
}

// Its inside, drain holes, marks and note; of a zone of the survey's own, where it is too.
std::string noted_of(const weighing::Result& result, const weighing::Zone& zone,
                     const survey::Zone& entry) {
  std::vector<std::string> parts;
  if (const survey::OwnZone* own = result.survey.own_zone(zone.own))
    parts.push_back(survey::told_of_own(*own));
  for (const survey::Told& each : survey::told_of_zone(entry))
    if (each.key != "inside" || entry.inside == survey::Inside::part ||
        entry.inside == survey::Inside::hidden)  // the table has the others
      parts.push_back(fmt::format("{}: {}", each.label, each.text));
  parts.push_back(entry.note);
  std::erase(parts, "");
  return fmt::format("{}", fmt::join(parts, "; "));
}

void write_notes(Flow& flow, const weighing::Result& result) {
  bool headed = false;
  for (const weighing::Zone& zone : result.zones) {
    const survey::Zone* entry = result.survey.zone(zone.number, zone.own);
    const std::string noted = entry ? noted_of(result, zone, *entry) : "";
    if (noted.empty()) continue;
    if (!headed) flow.heading("Noted of whole parts");
    headed = true;
    flow.item(fmt::format("{}: {}", scene::capitalised(weighing::title(zone)), noted),
              on_sheet(zone.number), small_style);
  }
}

// "Outer sill, left (51), middle: none, metal 1.22 mm; bare, the scraped spot": as it was typed, in
// mm. Words beside it print nowhere else.
std::string clean_place(const weighing::Result& result, const weighing::Zone& zone,
                        const weighing::Spot& spot) {
  const survey::Spot* entry = noted(result, spot);
  if (!entry) return "";
  std::string text = survey::findings_line(*entry);
  if (!entry->metal_mm.empty() || !entry->pit_mm.empty()) text += " mm";
  if (!entry->note.empty()) text += (text.empty() ? "" : "; ") + entry->note;
  return fmt::format("{}, {}: {}", scene::capitalised(weighing::title(zone)), spot.name, text);
}

void write_clean_places(Flow& flow, const weighing::Result& result) {
  bool headed = false;
  for (const weighing::Zone& zone : result.zones)
    for (const weighing::Spot& spot : zone.spots) {
      const std::string text = spot.found || spot.is_repair ? "" : clean_place(result, zone, spot);
      if (text.empty()) continue;
      if (!headed) flow.heading("Places recorded without rust");
      headed = true;
      flow.item(text, on_sheet(zone.number), small_style);
    }
}

}  // namespace

std::string row_place(int zone) {
  return fmt::format("part-{:02}", zone);
}

void write_zone_table(Flow& flow, const weighing::Result& result) {
  flow.section("Every part", "parts");
  std::vector<Row> rows;
  for (const weighing::Zone& zone : result.zones) {
    const bool known = zone.fitted && zone.metal;
    rows.push_back({{output::zone_number(zone.number, zone.own), scene::zone_name(zone),
                     std::string(body::word(zone.role)), seen_words(zone), inside_words(zone),
                     step_words(zone), known ? left_words(zone.metal->weighed) : "",
                     known ? std::string(scene::evidence_words(zone.evidence)) : ""},
                    on_sheet(zone.number),
                    zone.number == 0 ? "" : row_place(zone.number),
                    false});
  }
  flow.table({{"no", 0.55},
              {"part", 2.5},
              {"role", 0.7},
              {"seen", 1},
              {"inside", 0.9},
              {"step", 1.7},
              {"metal left", 1.35, scene::Align::right},
              {"how known", 1.45}},
             rows);
  flow.paragraph(
      "Role: main carries the car, local stiffens or shares, skin hangs on. Metal left: "
      "the least low, likely and high of its places.",
      note_style);
  write_notes(flow, result);
  write_clean_places(flow, result);
}

}  // namespace tinworm::documents
