#include "documents/finding_words.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "documents/parts.hpp"
#include "output/figures.hpp"
#include "scene/naming.hpp"
#include "survey/field.hpp"
#include "weighing/repair.hpp"
#include "weighing/step.hpp"
#include "weighing/words.hpp"
#include "weighing/zone_facts.hpp"

namespace tinworm::documents {
namespace {

using output::distance_text;
using output::sheet_text;

std::string figures(const std::vector<double>& mm, quantity::Units units) {
  std::string text;
  for (const double each : mm) text += (text.empty() ? "" : " ") + sheet_text(each, units);
  const std::string unit = units == quantity::Units::mm ? " mm" : " thou";
  // The unit once, after the last.
  for (std::size_t at = text.find(unit); at != std::string::npos && at + unit.size() < text.size();
       at = text.find(unit, at))
    text.erase(at, unit.size());
  return text;
}

std::string size_text(const quantity::Size& size, quantity::Units units) {
  if (!size.across_known)
    return fmt::format("{} long, width not known", distance_text(size.along_mm, units));
  return fmt::format("{} x {}", distance_text(size.along_mm, units),
                     distance_text(size.across_mm, units));
}

std::string_view sheet_words(weighing::BaselineFrom from) {
  switch (from) {
    case weighing::BaselineFrom::reference:
      return "read on sound metal of the same sheet";
    case weighing::BaselineFrom::pair_reference:
      return "read on its pair";
    case weighing::BaselineFrom::survey_sheet:
      return "stated in the survey";
    case weighing::BaselineFrom::plan_sheet:
      return "assumed from the body plan";
    case weighing::BaselineFrom::none:
      break;
  }
  return "not known";
}

// What hand and tools say; the rust itself is told in a sentence of its own.
std::string signs(const survey::Spot& spot) {
  std::vector<std::string> words;
  for (const survey::Field<survey::Spot>& field : survey::finding_fields()) {
    const bool of_words = field.facts.writing == survey::Writing::word ||
                          field.facts.writing == survey::Writing::words;
    if (!of_words || field.facts.key == "rust") continue;
    if (const std::string word = field.written(spot); !word.empty())
      words.push_back(fmt::format("{}{}", field.facts.on_paper, word));
  }
  return fmt::format("{}", fmt::join(words, ", "));
}

std::string rust_words(const survey::Spot& spot, quantity::Units units) {
  std::vector<std::string> words;
  // What stands here was found: beside it "none" would contradict it.
  if (spot.rust && spot.rust != survey::Rust::none) words.emplace_back(survey::word(*spot.rust));
  if (spot.hole)
    words.push_back((spot.rust == survey::Rust::hole ? "" : "hole ") +
                    size_text(*spot.hole, units));
  for (const quantity::Size& other : spot.other_holes)
    words.push_back("another " + size_text(other, units));
  if (spot.crack_mm) words.push_back("crack " + distance_text(*spot.crack_mm, units));
  if (words.empty()) words.emplace_back("no kind noted");
  if (spot.size && spot.size != spot.hole) words.push_back(size_text(*spot.size, units));
  return fmt::format("{}", fmt::join(words, ", "));
}

std::string read_words(const survey::Spot& spot, const weighing::MetalLeft& metal,
                       quantity::Units units) {
  std::string text;
  if (!spot.metal_mm.empty()) {
    text = " Read " + figures(spot.metal_mm, units);
    if (metal.baseline_mm)
      text += fmt::format(" of {} ({})", sheet_text(*metal.baseline_mm, units),
                          sheet_words(metal.baseline_from));
    text += ".";
  }
  std::vector<double> pits = spot.pit_mm;
  if (spot.pits)
    pits.insert(pits.end(), spot.pits->deepest_mm.begin(), spot.pits->deepest_mm.end());
  if (!pits.empty())
    text += fmt::format(" Deepest pit {}.", sheet_text(std::ranges::max(pits), units));
  return text;
}

// How near a mounting it is, by the tape where that was reckoned.
std::string near_words(const weighing::Spot& spot, quantity::Units units) {
  const std::string away = distance_text(spot.near_mm, units);
  if (spot.near == weighing::Near::within_radius)
    return fmt::format("{} from the {}", away, spot.near_what);
  if (spot.near == weighing::Near::into_mount)
    return fmt::format("{} from the {}, whose load it takes", away, spot.near_what);
  return weighing::near_text(spot);
}

// "Let-in, stitch, 2021-05, now rusting": what makes it doubtful after a colon, unless it was said.
std::string repair_words(const survey::Repair& repair, const std::string& why,
                         quantity::Units units) {
  const std::string text = scene::capitalised(weighing::text_of(repair, units));
  return text + (text.ends_with(why) ? "." : ": " + why + ".");
}

}  // namespace

const survey::Spot* noted(const weighing::Result& result, const weighing::Spot& spot) {
  const survey::Zone* entry = result.survey.zone(spot.zone, spot.own);
  return entry && !spot.is_repair ? &entry->found.at(spot.index) : nullptr;
}

const std::vector<survey::Photo>& photos_of(const weighing::Result& result,
                                            const weighing::Spot& spot) {
  static const std::vector<survey::Photo> none;
  const survey::Zone* entry = result.survey.zone(spot.zone, spot.own);
  if (!entry) return none;
  return spot.is_repair ? entry->repairs.at(spot.index).photos : entry->found.at(spot.index).photos;
}

std::string place_title(const weighing::Zone& zone, const weighing::Spot& spot) {
  return fmt::format("{}, {}: {}", scene::capitalised(weighing::title(zone)), spot.name,
                     scene::step_words(spot));
}

std::string under_the_pit(const weighing::Spot& spot) {
  if (!spot.metal.pit_left) return "";
  std::string text =
      fmt::format("; under the deepest pit {}", output::percent_text(*spot.metal.pit_left));
  if (spot.metal.pit_left_low < spot.metal.pit_left)
    text += ", at worst " + (weighing::pitted_through(*spot.metal.pit_left_low)
                                 ? std::string("nothing")
                                 : output::percent_text(*spot.metal.pit_left_low));
  return text;
}

std::string place_judged(const weighing::Spot& spot, quantity::Units units) {
  std::string text = scene::metal_words(spot) + under_the_pit(spot);
  if (const std::string near = near_words(spot, units); !near.empty()) text += "; " + near;
  return scene::capitalised(text) + ".";
}

std::string place_noted(const weighing::Result& result, const weighing::Spot& spot,
                        quantity::Units units) {
  const survey::Spot* entry = noted(result, spot);
  std::string text, note;
  if (entry) {
    text = scene::capitalised(rust_words(*entry, units));
    if (const std::string more = signs(*entry); !more.empty()) text += "; " + more;
    text += "." + read_words(*entry, spot.metal, units);
    note = entry->note;
  } else if (const weighing::Zone* zone = part(result, spot.zone, spot.own)) {
    const survey::Repair& repair = result.survey.zone(spot.zone, spot.own)->repairs.at(spot.index);
    text = repair_words(repair, zone->repairs.at(spot.index).why, units);
    note = repair.note;
  }
  if (!note.empty())
    text += (text.empty() ? "" : " ") + scene::capitalised(note) + (note.back() == '.' ? "" : ".");
  for (const std::string& remark : spot.metal.remarks)
    text += " " + scene::capitalised(remark) + ".";
  return text;
}

}  // namespace tinworm::documents
