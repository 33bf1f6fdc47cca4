#include "output/weigh_text.hpp"

#include <algorithm>
#include <utility>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "output/display_width.hpp"
#include "output/figures.hpp"
#include "output/zone_text.hpp"
#include "survey/told.hpp"
#include "weighing/looks.hpp"
#include "weighing/words.hpp"

namespace tinworm::output {
namespace {

using weighing::Result;

std::string bullet(const std::string& text, const TextStyle& style) {
  return indented(text, style.width, "  - ", "    ");
}

std::string section(const std::string& title, const std::string& lines, const TextStyle& style) {
  return lines.empty() ? "" : "\n" + heading(title, style) + "\n" + lines;
}

std::string opening(const Result& result, const TextStyle& style) {
  const std::string verdict = fmt::format("Verdict: {}.", sentence(result.verdict));
  std::string text = verdict;
  if (result.could_be != result.verdict) {
    text += fmt::format(" Could be: {}.", sentence(result.could_be));
  }
  if (result.open_up_first) text += " Open up first.";
  text = indented(text, style.width, "", "");
  text.replace(0, verdict.size(), heading(verdict, style));
  const std::string car =
      fmt::format("{}; surveyed {}", car_text(result.survey.car), result.survey.visit.date.text());
  const std::string origin = fmt::format(
      "{}, body plan {} {}, {}, fingerprint {}", result.file, result.body->name,
      result.body->version, result.rules_changed.empty() ? "default rules" : "changed rules",
      result.sha256.substr(0, 12));
  return text + indented(car, style.width, "", "") + indented(origin, style.width, "", "") +
         rules_block(result, style);
}

std::string also_text(const survey::Also& item) {
  std::string text = item.what;
  if (!item.code.empty()) text += " " + item.code;
  if (!item.say.empty()) text += ": " + item.say;
  return text;
}

std::string reasons(const Result& result, const TextStyle& style) {
  std::string lines;
  for (const weighing::Reason& reason : result.reasons) {
    lines += bullet(fmt::format("{} [{}]", reason.text, reason.rule), style);
  }
  std::string also;
  for (const weighing::Reason& reason : result.also_to_mend) {
    also += bullet(fmt::format("{} [{}]", reason.text, reason.rule), style);
  }
  std::string open;
  for (const weighing::Reason& reason : result.open_reasons)
    open += bullet(fmt::format("{} [{}]", reason.text, reason.rule), style);
  return section("Why", lines, style) + section("Also to be mended", also, style) +
         section("What isn't known", open, style);
}

// What the owner must see to first, whatever the metal says.
std::string before_use(const Result& result, const TextStyle& style) {
  std::string at_once, lines;
  for (const survey::Also& item : result.survey.also) {
    if (survey::is_at_once(item))
      at_once += bullet(also_text(item), style);
    else if (survey::is_before_use(item))
      lines += bullet(also_text(item), style);
  }
  return section("At once", at_once, style) + section("Before it is driven", lines, style);
}

// Each rule named above, once, and where it comes from.
std::string sources(const Result& result, const TextStyle& style) {
  std::vector<std::pair<std::string, std::string>> seen;
  std::vector<weighing::Reason> all = result.reasons;
  for (const auto* more : {&result.also_to_mend, &result.open_reasons})
    all.insert(all.end(), more->begin(), more->end());
  for (const weighing::Reason& reason : all) {
    const std::pair<std::string, std::string> rule(reason.rule, reason.source);
    if (std::find(seen.begin(), seen.end(), rule) == seen.end()) seen.push_back(rule);
  }
  std::string lines;
  for (const auto& [rule, source] : seen)
    lines += bullet(fmt::format("{}: {}", rule, source), style);
  return section("Where these rules come from", lines, style);
}

std::string burden_line(const char* name, const weighing::Burden& burden, const TextStyle& style) {
  const std::string low = burden_word(burden.low), high = burden_word(burden.high);
  const std::string range = low == high ? "" : fmt::format("from {} to {}", low, high);
  std::string words;
  if (!burden.value) {
    words = fmt::format("not known, {}: {}", range.empty() ? low : range, burden.why);
  } else {
    words = burden_word(*burden.value) + (range.empty() ? "" : ", " + range);
  }
  return indented(words, style.width, fmt::format("  {:<11}", name), std::string(13, ' '));
}

std::string burdens(const Result& result, const TextStyle& style) {
  return section(
      "How much the rust weighs",
      burden_line("structure", result.structure, style) + burden_line("skin", result.skin, style) +
          burden_line("shell", result.shell, style) +
          indented(
              fmt::format("On this body one main zone rusted away would be {} for the structure.",
                          burden_word(result.one_zone_gone)),
              style.width, "  ", "  "),
      style);
}

std::string coverage_line(const char* name, const weighing::Coverage& coverage) {
  if (!coverage.any) return fmt::format("  {:<11}this body has none\n", name);
  return fmt::format("  {:<11}{} of its area, {} measured\n", name,
                     percent_text(coverage.area_share), percent_text(coverage.measured_share));
}

std::string coverage(const Result& result, const TextStyle& style) {
  return section("What was seen",
                 coverage_line("main", result.main) + coverage_line("local", result.local) +
                     coverage_line("skin", result.skin_seen),
                 style);
}

int worst_rank(const weighing::Zone& zone) {
  int worst = 1 << 20;
  for (const weighing::Spot& spot : zone.spots) {
    if (spot.rank > 0) worst = std::min(worst, spot.rank);
  }
  return worst;
}

std::string seen_text(const weighing::Zone& zone) {
  if (!zone.seen.word) return "not seen";
  if (*zone.seen.word == survey::SeenWord::part) return "part, " + percent_text(zone.seen.share);
  return std::string(survey::word(*zone.seen.word));
}

// Rust, damage or a repair, or readings that may mean rust; not a station with sound metal alone.
bool has_findings(const weighing::Zone& zone) {
  const bool found = std::any_of(zone.spots.begin(), zone.spots.end(),
                                 [](const weighing::Spot& spot) { return spot.found; });
  return found || !zone.repairs.empty() || zone.step_low > weighing::Step::sound;
}

std::string findings(const Result& result, const TextStyle& style) {
  std::vector<const weighing::Zone*> zones;
  for (const weighing::Zone& zone : result.zones) {
    if (has_findings(zone)) zones.push_back(&zone);
  }
  std::stable_sort(zones.begin(), zones.end(),
                   [](const auto* a, const auto* b) { return worst_rank(*a) < worst_rank(*b); });
  std::vector<Row> rows;
  for (const weighing::Zone* zone : zones) {
    const std::string side =
        zone->side == body::Side::centre ? "" : std::string(body::word(zone->side));
    rows.push_back({zone_number(zone->number, zone->own), zone->name, side, seen_text(*zone),
                    std::string(word(zone->evidence)),
                    step_text(zone->step, zone->step_high, zone->step_low),
                    zone->metal ? percent_span(zone->metal->shown) : "", zone->near});
  }
  return section("What was found, worst first (metal left: low–likely–high)",
                 table({{"zone"},
                        {"name"},
                        {"side"},
                        {"seen"},
                        {"evidence"},
                        {"step"},
                        {"metal left", Align::right},
                        {"near"}},
                       rows, style.width),
                 style);
}

std::string repairs(const Result& result, const TextStyle& style) {
  std::string lines;
  for (const weighing::Zone& zone : result.zones) {
    for (const weighing::Repair& repair : zone.repairs) {
      const char* relied = !repair.reliable   ? "not known whether it can be relied on"
                           : *repair.reliable ? "relied on"
                                              : "not relied on";
      lines += bullet(fmt::format("{}: {}; {}{}{}", zone_title(zone), repair.text, relied,
                                  repair.why.empty() ? "" : ": ", repair.why),
                      style);
    }
  }
  return section("Repairs", lines, style);
}

std::string boxes(const Result& result, const TextStyle& style) {
  std::vector<Row> rows;
  for (const weighing::BoxResult& box : result.boxes) {
    rows.push_back({box.name, box.twist_kept ? percent_span(*box.twist_kept) : "",
                    box.bending_kept ? percent_span(*box.bending_kept) : "",
                    box.withheld.empty() ? "" : "no figure: " + box.withheld});
  }
  return section("Stiffness kept by the boxes (indicative)",
                 table({{"box"}, {"twist", Align::right}, {"bending", Align::right}, {"withheld"}},
                       rows, style.width),
                 style);
}

std::string shown_by(const weighing::Look& look, const Result& result) {
  std::vector<std::string> each;
  for (const weighing::OpenUp* open : look.shows)
    each.push_back(fmt::format("{}: {}", zone_title(result, open->zone, open->own), open->why));
  return fmt::format("{}", fmt::join(each, "; "));
}

// One line for each thing to open: what it takes and all that it shows.
std::string look_text(const weighing::Look& look, const Result& result) {
  const std::string minutes = look.minutes > 0 ? fmt::format("about {} min", look.minutes) : "";
  const std::string could = fmt::format("; could become: {}", sentence(look.could_become));
  if (look.shows.size() > 1)
    return fmt::format("{} ({}), shows {} parts: {}{}", look.opening, minutes, look.shows.size(),
                       shown_by(look, result), could);
  const weighing::OpenUp& open = *look.shows.front();
  const std::string how = look.opening.empty() ? "" : look.opening + ", ";
  const std::string takes = minutes.empty() ? "" : fmt::format(" ({}{})", how, minutes);
  return fmt::format("{}{}: {}{}", zone_title(result, open.zone, open.own), takes, open.why, could);
}

std::string to_open(const Result& result, const TextStyle& style) {
  constexpr std::size_t named = 5;
  const std::vector<weighing::Look> looks = weighing::looks(result);
  std::string lines;
  for (std::size_t i = 0; i < std::min(named, looks.size()); ++i)
    lines += bullet(look_text(looks[i], result), style);
  std::vector<std::string> rest;
  for (std::size_t i = named; i < looks.size(); ++i)
    for (const weighing::OpenUp* open : looks[i].shows)
      rest.push_back(zone_title(result, open->zone, open->own));
  if (!rest.empty())
    lines += bullet(fmt::format("then {} more: {}", rest.size(), fmt::join(rest, "; ")), style);
  return section("To open up", lines, style);
}

// Zones with the same reason together: by name where they are few.
std::string not_seen(const Result& result, const TextStyle& style) {
  std::vector<std::pair<std::string, std::vector<weighing::NotSeen>>> reasons;
  for (const weighing::NotSeen& zone : result.not_seen) {
    auto same = std::find_if(reasons.begin(), reasons.end(),
                             [&](const auto& reason) { return reason.first == zone.why; });
    if (same == reasons.end()) same = reasons.insert(same, {zone.why, {}});
    same->second.push_back(zone);
  }
  std::string lines;
  constexpr std::size_t few = 4;
  for (const auto& [why, zones] : reasons) {
    std::vector<std::string> names;
    std::vector<int> numbers;
    for (const weighing::NotSeen& zone : zones) {
      if (zones.size() > few && zone.own.empty())
        numbers.push_back(zone.zone);
      else
        names.push_back(zone_title(result, zone.zone, zone.own));
    }
    if (!numbers.empty()) names.insert(names.begin(), zone_ranges(numbers));
    const std::string which = fmt::format("{}", fmt::join(names, "; "));
    lines += bullet(fmt::format("{}: {}", which, why), style);
  }
  return section("Not seen, so not known", lines, style);
}

std::string also(const Result& result, const TextStyle& style) {
  std::string lines;
  for (const survey::Also& item : result.survey.also) {
    std::string line = also_text(item);
    if (item.when) line += "; " + survey::when_text(item);
    lines += bullet(line, style);
  }
  return section("Also", lines, style);
}

// What the survey tells beside findings: nothing that was recorded stays out of sight.
std::string told(const Result& result, const TextStyle& style) {
  const survey::Survey& survey = result.survey;
  std::string lines;
  for (const survey::Told& each : survey::told_of_car(survey, survey::Reader::anybody))
    lines += bullet(fmt::format("{}: {}", each.label, each.text), style);
  for (const survey::Gap& gap : survey.gaps) lines += bullet(survey::gap_text(gap), style);
  for (const survey::OwnZone& own : survey.own)
    if (const std::string text = survey::told_of_own(own); !text.empty())
      lines += bullet(fmt::format("{}: {}", own.name, text), style);
  for (const weighing::Zone& zone : result.zones)
    if (const survey::Zone* recorded = result.survey.zone(zone.number, zone.own))
      for (const survey::Told& each : survey::told_of_zone(*recorded))
        lines += bullet(fmt::format("{}: {}: {}", zone_title(result, zone.number, zone.own),
                                    each.label, each.text),
                        style);
  for (const survey::Opened& cut : survey.opened)
    lines += bullet(fmt::format("{}: when cut open, {}", zone_number(cut.zone, cut.own),
                                survey::opened_text(cut)),
                    style);
  return section("Also recorded", lines, style);
}

std::string questions(const Result& result, const TextStyle& style) {
  std::string lines;
  const std::vector<weighing::Advice>& advice = result.advice;
  for (std::size_t i = 0; i < advice.size(); ++i) {
    const bool why_later = same_reason_follows(advice, i);
    lines += bullet(why_later ? advice[i].question : text(advice[i]), style);
  }
  return section("Questions", lines, style);
}

}  // namespace

std::string rules_block(const Result& result, const TextStyle& style) {
  const std::string text = weighing::rules_text(result);
  if (text.empty()) return "";
  const std::string changed = "Rules changed";
  std::string block = indented(text, style.width, "", "  ");
  return block.replace(0, changed.size(), heading(changed, style));
}

std::string weigh_text(const Result& result, const TextStyle& style) {
  return opening(result, style) + before_use(result, style) + reasons(result, style) +
         burdens(result, style) + coverage(result, style) + findings(result, style) +
         repairs(result, style) + boxes(result, style) + to_open(result, style) +
         not_seen(result, style) + questions(result, style) + also(result, style) +
         told(result, style) + sources(result, style) + "\n" +
         indented(result.caution, style.width, "", "");
}

std::vector<Column> weigh_line_columns() {
  return {{"survey"},     {"date"},  {"verdict"},
          {"could be"},   {"first"}, {"main seen", Align::right},
          {"worst place"}};
}

Row weigh_line(const Result& result) {
  std::string worst;
  if (const auto spots = result.ranked(); !spots.empty()) {
    const weighing::Spot& spot = *spots.front();
    worst = fmt::format("{}: {}", zone_title(result, spot.zone, spot.own),
                        step_text(spot.step, spot.step_high, spot.step_low));
  }
  const auto verdict = std::string(word(result.verdict));
  const auto could_be = std::string(word(result.could_be));
  return {result.file,
          result.survey.visit.date.text(),
          verdict,
          result.could_be == result.verdict ? "" : could_be,
          result.open_up_first ? "open up" : "",
          result.main.any ? percent_text(result.main.area_share) : "",
          worst};
}

}  // namespace tinworm::output
