#include "documents/answers.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "documents/costs.hpp"
#include "documents/finding_words.hpp"
#include "documents/parts.hpp"
#include "documents/remarks.hpp"
#include "history/outlook.hpp"
#include "scene/naming.hpp"
#include "weighing/looks.hpp"
#include "weighing/words.hpp"
#include "weighing/zone_facts.hpp"

namespace tinworm::documents {
namespace {

using weighing::Result;
using weighing::Verdict;

// "rear wing, left (95); dogleg, left (75) and 3 more"
std::string some(const std::vector<std::string>& names, std::size_t most) {
  const std::size_t shown = std::min(names.size(), most);
  std::string text = fmt::format("{}", fmt::join(names.begin(), names.begin() + shown, "; "));
  if (shown < names.size()) text += fmt::format("; and {} more", names.size() - shown);
  return text;
}

void add_once(std::vector<std::string>& names, const std::string& name) {
  if (std::ranges::find(names, name) == names.end()) names.push_back(name);
}

std::string could(const char* what, const std::vector<std::string>& names, std::size_t most) {
  if (names.size() == 1) return fmt::format("One part could {}: {}.", what, names.front());
  return fmt::format("{} could {}, first: {}.", counted_parts(names.size()), what,
                     some(names, most));
}

std::string of_verdict(const Result& result) {
  switch (result.verdict) {
    case Verdict::keep_parked:
      return "Metal or a repair that carries brakes, steering, suspension, belts, towing or the "
             "tank "
             "gives way, or a section of the shell is gone.";
    case Verdict::mend:
      return fmt::format(
          "Metal that carries the car is past its limit ({} is to be left), or a repair of it "
          "can't "
          "be relied on: it is to be mended.",
          rules::value_text(rules::constant("repair-limit"), result.constants.repair_limit));
    case Verdict::treat:
      return "Rust was found; metal that carries the car is within its limit where it could be "
             "judged.";
    case Verdict::leave_alone:
      return "No rust was found where looked.";
    case Verdict::not_known:
      break;
  }
  return "Too little of the main structure was seen to say more.";
}

// By what was found and by what opening up may find.
Verdict worst_left_open(const Result& result) {
  Verdict worst = std::max(result.verdict, result.could_be);
  for (const weighing::OpenUp& each : result.open_up) worst = std::max(worst, each.could_become);
  return worst;
}

std::vector<std::string> blocked_drains(const Result& result) {
  std::vector<std::string> names;
  const auto add = [&](const survey::Zone& entry, int number, const std::string& own) {
    if (entry.drains && *entry.drains != survey::Drains::open)
      names.push_back(title_of(result, number, own));
  };
  for (const auto& [number, entry] : result.survey.zones) add(entry, number, "");
  for (const survey::OwnZone& own : result.survey.own) add(own.zone, 0, own.key);
  return names;
}

std::vector<std::string> wet_packs(const Result& result) {
  std::vector<std::string> names;
  for (const weighing::Spot* spot : result.ranked())
    if (spot->rust == survey::word(survey::Rust::poultice))
      add_once(names, title_of(result, spot->zone, spot->own));
  return names;
}

bool is_braced(const work::Plan& plan) {
  return std::ranges::any_of(plan.tasks,
                             [](const work::Task& task) { return task.kind == work::Kind::brace; });
}

// Parts to cut, those on or near a mounting alone if there are any. `certain`: metal known to be
// past its limit; else only judged to be.
std::vector<std::string> cuts(const Result& result, const work::Plan& plan, bool certain) {
  std::vector<std::string> all, danger;
  for (const work::Task& task : plan.tasks) {
    if (task.kind != work::Kind::cut) continue;
    if (std::ranges::any_of(task.cuts, &work::Cut::certain) != certain) continue;
    const std::string name = title_of(result, task.zone, task.own);
    all.push_back(name);
    if (task.urgency == work::Urgency::danger) danger.push_back(name);
  }
  return danger.empty() ? all : danger;
}

}  // namespace

std::string may_it_be_driven(const Result& result) {
  if (result.verdict == Verdict::keep_parked) return "No: keep it parked until mended";
  const bool first = !before_use(result.survey).empty();  // and the metal's answer all the same
  if (result.verdict == Verdict::not_known)
    return first ? "Not yet; then not known: too little was seen"
                 : "Not known: too little was seen";
  if (worst_left_open(result) == Verdict::keep_parked)
    return first ? "Not yet; then not settled: what nobody saw could forbid it"
                 : "Not settled: what nobody saw or measured could forbid it";
  if (result.verdict == Verdict::mend)
    return first ? "Not yet; then for an inspection to say: it is to be mended"
                 : "For an inspection to say: what carries the car is to be mended";
  return first ? "Not yet: first see to what is named here"
         : result.verdict == Verdict::leave_alone
             ? "Nothing found forbids it; law and inspection decide"
             : "What was found doesn't forbid it; law and inspection decide";
}

std::string verdict_line(const Result& result) {
  std::string verdict = fmt::format("Verdict: {}.", sentence(result.verdict));
  if (result.could_be != result.verdict)
    verdict += fmt::format(" Could be: {}.", sentence(result.could_be));
  if (result.open_up_first) verdict += " Open up first.";
  return verdict + " " + of_verdict(result);
}

std::string finding_place(const weighing::Spot& spot) {
  return fmt::format("found-{}", spot.rank);
}

std::vector<WorstPlace> worst_places(const Result& result, std::size_t most) {
  std::vector<WorstPlace> places;
  for (const weighing::Spot* spot : result.ranked()) {
    const weighing::Zone* zone = part(result, spot->zone, spot->own);
    if (zone == nullptr || places.size() == most) continue;
    std::string detail = scene::metal_words(*spot) + under_the_pit(*spot);
    if (const std::string near = scene::near_words(*spot); !near.empty()) detail += "; " + near;
    places.push_back({place_title(*zone, *spot), scene::capitalised(detail), finding_place(*spot)});
  }
  return places;
}

std::vector<std::string> unseen_lines(const Result& result, std::size_t most) {
  std::vector<std::string> lines, worse, more, unseen;
  for (const weighing::OpenUp& each : result.open_up)
    (each.could_become > result.verdict ? worse : more)
        .push_back(title_of(result, each.zone, each.own));
  if (!worse.empty())
    lines.push_back(could("make the verdict worse", worse, most));
  else if (!more.empty())
    lines.push_back(could("add to the work", more, most));
  for (const weighing::NotSeen& each : result.not_seen)
    unseen.push_back(title_of(result, each.zone, each.own));
  lines.push_back(unseen.empty() ? "No part was left out altogether."
                                 : fmt::format("Not seen at all: {}.", some(unseen, 2 * most)));
  return lines;
}

// "left carpet and mat up (55, 61)": one opening for several parts.
std::string look_title(const weighing::Look& look, const Result& result) {
  const weighing::OpenUp& first = *look.shows.front();
  if (look.shows.size() == 1) return title_of(result, first.zone, first.own);
  std::vector<int> zones;
  for (const weighing::OpenUp* open : look.shows) zones.push_back(open->zone);
  std::ranges::sort(zones);
  return fmt::format("{} ({})", look.opening, scene::number_list(zones));
}

std::vector<std::string> first_lines(const Result& result, const work::Plan& plan,
                                     std::size_t most) {
  std::vector<std::string> lines, open;
  if (result.open_up_first)
    for (const weighing::Look& look : weighing::looks(result))
      open.push_back(look_title(look, result));
  if (!open.empty()) lines.push_back(fmt::format("Open up and measure: {}.", some(open, most)));
  const auto certain = cuts(result, plan, true), judged = cuts(result, plan, false);
  if (!certain.empty())
    lines.push_back(fmt::format("{}ut and weld, in this order: {}.",
                                is_braced(plan) ? "Brace the shell, then c" : "C",
                                some(certain, most)));
  if (!judged.empty())
    lines.push_back(
        fmt::format("Clean and measure, and cut if past the limit: {}.", some(judged, most)));
  if (certain.empty() && judged.empty() && !plan.tasks.empty())
    lines.push_back(fmt::format(
        "Clean, treat, coat and wax; {}.",
        plan.tasks.size() == 1 ? "one task" : fmt::format("{} tasks", plan.tasks.size())));
  if (lines.empty()) lines.push_back(nothing_to_do);
  return lines;
}

std::vector<std::string> stop_lines(const Result& result, std::size_t most) {
  std::vector<std::string> lines;
  if (const auto drains = blocked_drains(result); !drains.empty())
    lines.push_back(fmt::format("Open the drains of {}.", some(drains, most)));
  if (const auto packs = wet_packs(result); !packs.empty())
    lines.push_back(fmt::format("Take out what holds the wet at {}.", some(packs, most)));
  const auto& use = result.survey.kept.use;
  if (use == survey::Use::salted)
    lines.push_back("Keep it off salted roads until it is treated, and wash it underneath.");
  if (use == survey::Use::all_weather)
    lines.push_back("Keep it off salt until it is treated, and wash it underneath.");
  lines.push_back(blocked_drains(result).empty()
                      ? "Keep carpets dry and drains open (common practice)."
                      : "Keep carpets dry (common practice).");
  return lines;
}

std::string look_again(const Result& result, const history::Comparison* before) {
  history::Comparison alone;
  if (!before) alone.surveys = {result};
  const history::NextSurvey next =
      before ? before->next : history::next_survey(alone, result.constants);
  if (!next.date) return scene::capitalised(next.why) + ".";
  if (before) return fmt::format("By {} ({}).", next.date->text(), next.why);
  return fmt::format("By {} ({}). By this survey alone: beside earlier ones it may be sooner.",
                     next.date->text(), next.why);
}

}  // namespace tinworm::documents
