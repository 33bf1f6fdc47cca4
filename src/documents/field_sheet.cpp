#include "documents/field_sheet.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "body/walk_round.hpp"
#include "documents/blank_row.hpp"
#include "documents/flow.hpp"
#include "documents/leg_picture.hpp"
#include "survey/position.hpp"
#include "survey/words.hpp"
#include "survey/written.hpp"

namespace tinworm::documents {
namespace {

using survey::words;

// All common practice of work on a lift.
const std::vector<std::string>& before_it_is_lifted() {
  static const std::vector<std::string> all = {
      "On its wheels, on level floor, first: gaps and heights. The lift changes them.",
      "Tap and thumb the jacking points before they carry the car. A rotten one gives way without "
      "warning; then lift at metal that is sound.",
      "Never under a car that a jack alone holds: stands on firm ground, wheels wedged.",
      "No flame, spark or lamp with a hot bulb near tank, lines or fumes; battery off before a "
      "probe "
      "goes where wires run.",
      "Probe, scrape and lift carpets only where the owner agreed.",
      "Eyes covered under the car, and a mask where old coating is scraped.",
  };
  return all;
}

Piece strong(std::string text) {
  return {std::move(text), 0, true};
}

std::vector<Piece> joined(std::vector<Piece> row, std::vector<Piece> more) {
  row.insert(row.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
  return row;
}

std::vector<Piece> readings(std::string_view about, int count, double write_mm,
                            std::string_view unit) {
  std::vector<Piece> row;
  if (!about.empty()) row.push_back(strong(std::string(about)));
  for (int i = 0; i < count; ++i) row.push_back(to_write("", write_mm));
  row.push_back(to_write(std::string(unit), 0));
  return row;
}

std::string sentences(const std::vector<std::string>& all) {
  return fmt::format("{}", fmt::join(all, " "));
}

class FieldSheet {
 public:
  FieldSheet(Flow& flow, const body::Plan& plan, const survey::Survey* before)
      : flow_(flow), plan_(plan), before_(before) {}

  void head(const std::string& next_step) {
    flow_.section("Field sheet: " + plan_.title);
    flow_.paragraph(
        "Circle the words that hold and write where there is room. What stays blank was not looked "
        "at, and never counts as sound. " +
        next_step);
    if (before_)
      flow_.paragraph(fmt::format("In grey: what the survey of {} says of the same place.",
                                  before_->visit.date.text()));
    flow_.heading("Before it is lifted (common practice)");
    for (const std::string& each : before_it_is_lifted()) flow_.item(each);
    flow_.heading("The car and the visit");
    car();
    visit();
    gaps();
  }

  void legs() {
    for (const body::Leg& leg : body::walk_round(plan_)) {
      flow_.heading(leg.title);
      write_leg_picture(flow_, plan_, leg);
      for (const int number : leg.zones) zone(*plan_.zone(number));
    }
  }

  void rest() {
    own_zones();
    flow_.heading("What can't wait, and what else the owner must know");
    for (int i = 0; i < 6; ++i)
      one({"",
           {{140, {to_write("", 130)}}, {82, to_circle("", words<survey::When>())}},
           "",
           false});
    flow_.heading("In a few words: what is sound, what is rotten, what first?");
    for (int i = 0; i < 4; ++i) one({"", {{222, {to_write("", 210)}}}, "", false});
  }

 private:
  void one(Entry entry) { write_entries(flow_, {std::move(entry)}); }

  void car() {
    const survey::Car car = before_ ? before_->car : survey::Car{};
    one({"car",
         {{222,
           {car.name.empty() ? to_write("", 70) : to_write(car.name, 0),
            car.built ? to_write(fmt::format("built {}", *car.built), 0) : to_write("built", 18),
            to_write("odometer", 30), to_write("km", 0), to_write("mi", 0)}}},
         car.odometer.empty() ? "" : fmt::format("last time {}", car.odometer),
         true});
  }

  void visit() {
    one({"visit",
         {{100, {to_write("date", 26), to_write("by", 46)}},
          {70, to_circle("", words<survey::Reason>())},
          {52, to_circle("weather", words<survey::Weather>())}},
         "",
         true});
    one({"agreed", {{222, {to_write("to be lifted, scraped, probed", 120)}}}, "", true});
    one({"gauge and tools",
         {{88, {to_write("", 34), to_write("uncertainty", 14), to_write("mm", 0)}},
          {54, to_circle("paint", words<survey::Coating>())},
          {80, to_circle("used", words<survey::Tool>())}},
         "",
         true});
    for (const body::Option& option : plan_.options)
      one({option.name, {{222, to_circle("", option.choices)}}, "", true});
  }

  void gaps() {
    flow_.heading("Gaps: on its wheels, then on the lift, at the same place");
    std::vector<std::string> places{"door front edge", "door rear edge", "", ""};
    if (before_ && !before_->gaps.empty()) {
      places.clear();
      for (const survey::Gap& gap : before_->gaps) places.push_back(gap.where);
      places.emplace_back();
    }
    for (const std::string& place : places)
      one({place,
           {{70, place.empty() ? std::vector<Piece>{to_write("where", 50)} : std::vector<Piece>{}},
            {42, to_circle("", {"left", "right"})},
            {52, {to_write("wheels", 20), to_write("mm", 0)}},
            {58, {to_write("lift", 20), to_write("mm", 0)}}},
           "",
           false});
  }

  const survey::Zone* last_time(int number) const {
    return before_ ? before_->zone(number, "") : nullptr;
  }

  static std::string title(const body::Zone& zone) {
    const std::string side =
        zone.side() == body::Side::centre ? "" : fmt::format(", {}", body::word(zone.side()));
    return fmt::format("{}  {}{}", zone.number, zone.name, side);
  }

  std::string hints(const body::Zone& zone, const survey::Zone* before) const {
    std::vector<std::string> all;
    if (!zone.starts.empty()) all.push_back(fmt::format("Rust starts: {}.", zone.starts));
    if (!zone.hides.empty())
      all.push_back(fmt::format("Usually worse behind it: {}.", fmt::join(zone.hides, ", ")));
    std::vector<std::string> mounts;
    for (const body::Mount& mount : plan_.mounts)
      if (body::under_near_rule(mount.carries) &&
          std::ranges::find(mount.on, zone.number) != mount.on.end())
        mounts.push_back(mount.what);
    if (!mounts.empty())
      all.push_back(fmt::format("Measure here: it carries the {}.", fmt::join(mounts, ", the ")));
    if (before && !before->reference_mm.empty())
      all.push_back(
          fmt::format("Last time, sound metal {} mm.", survey::readings(before->reference_mm)));
    return sentences(all);
  }

  Entry zone_head(const body::Zone& zone, const survey::Zone* before) const {
    const bool has_inside = zone.build == body::Build::box || zone.build == body::Build::layered;
    const bool skin = zone.role == body::Role::skin;
    std::vector<Piece> inside;
    if (has_inside)
      inside = joined(to_circle("inside", words<survey::Inside>()),
                      to_circle("drains", words<survey::Drains>()));
    return {title(zone),
            {{82, joined(to_circle("seen", words<survey::SeenWord>()), {to_write("by", 16)})},
             {76, std::move(inside)},
             {64, skin ? readings("film", 3, 9, "um") : readings("sound", 3, 9, "mm")}},
            hints(zone, before),
            true};
  }

  // "Last time: pitting, firm, metal 0.88 0.86. To be found: 25 above the seam."
  static std::string last_found(const survey::Zone* before, const std::string& place) {
    std::vector<std::string> all;
    if (before == nullptr) return "";
    for (const survey::Spot& spot : before->found)
      if (spot.name == place)
        all.push_back(fmt::format("Last time: {}.", survey::findings_line(spot)));
    const auto mark = std::ranges::find(before->marks, place, &survey::Mark::where);
    if (mark != before->marks.end()) all.push_back(fmt::format("To be found: {}.", mark->how));
    return sentences(all);
  }

  static Entry place(const std::string& name, const survey::Zone* before) {
    return {
        name.empty() ? "where" : name,
        {{79, to_circle("", words<survey::Rust>())},
         {39, joined(to_circle("", words<survey::Hand>()), to_circle("", words<survey::Tap>()))},
         {38, readings("", 3, 7, "mm")},
         {70,
          {to_write("size", 10), to_write("x", 10), to_write("holes", 18), to_write("photo", 14),
           to_write("note", 25)}}},
        last_found(before, name),
        false};
  }

  static std::vector<std::string> places_of(const body::Zone& zone, const survey::Zone* before) {
    std::vector<std::string> names;
    for (const body::Station& station : zone.stations) names.push_back(station.name);
    if (before)
      for (const survey::Spot& spot : before->found)
        if (std::ranges::find(names, spot.name) == names.end()) names.push_back(spot.name);
    if (names.empty()) names.emplace_back();
    return names;
  }

  // Repairs are usual in what is welded; of an earlier survey each is named.
  void repairs(const body::Zone& zone, const survey::Zone* before) {
    const bool usual = zone.joined == body::Joined::welded;
    if (!usual && (before == nullptr || before->repairs.empty())) return;
    std::vector<std::string> last;
    if (before)
      for (const survey::Repair& repair : before->repairs)
        last.push_back(fmt::format("Last time: {}{}{}.", repair.name,
                                   repair.name.empty() ? "" : ": ", survey::repair_line(repair)));
    one({"repair",
         {{82, to_circle("", words<survey::RepairKind>())},
          {52, to_circle("", words<survey::Joint>())},
          {46, to_circle("", words<survey::Now>())},
          {42, {to_write("where", 24), to_write("size", 12), to_write("x", 8)}}},
         sentences(last),
         false});
  }

  void zone(const body::Zone& zone) {
    const survey::Zone* before = last_time(zone.number);
    const std::vector<std::string> places = places_of(zone, before);
    write_entries(flow_, {zone_head(zone, before), place(places.front(), before)});
    for (std::size_t i = 1; i < places.size(); ++i) one(place(places[i], before));
    repairs(zone, before);
  }

  static Entry own_head(const std::string& name) {
    std::vector<Piece> part;
    if (name.empty()) part = {to_write("part", 40), to_write("side", 14)};
    return {name,
            {{82, std::move(part)}, {140, to_circle("seen", words<survey::SeenWord>())}},
            "",
            true};
  }

  void own_zones() {
    flow_.heading("Parts that the list doesn't know, and places it has no name for");
    if (before_)
      for (const survey::OwnZone& own : before_->own) {
        const std::string name = own.zone.found.empty() ? "" : own.zone.found.front().name;
        write_entries(flow_, {own_head(own.name), place(name, &own.zone)});
      }
    for (int i = 0; i < 4; ++i) write_entries(flow_, {own_head(""), place("", nullptr)});
  }

  Flow& flow_;
  const body::Plan& plan_;
  const survey::Survey* before_;
};

constexpr const char* caution =
    "An aid to memory, not a roadworthiness test or an engineer's report. Local law and licensed "
    "inspection decide. What wasn't seen is not known.";

}  // namespace

std::vector<scene::Page> field_sheet(const body::Plan& plan, const survey::Survey* before,
                                     const FieldSheetOptions& options,
                                     const scene::Measure& measure) {
  const Paper paper = lying(options.paper);
  Flow flow(paper, measure);
  FieldSheet sheet(flow, plan, before);
  sheet.head(options.next_step);
  sheet.legs();
  sheet.rest();
  std::vector<scene::Page> pages = std::move(flow).pages();
  const std::string car = before ? before->car.name + ", " : "";
  const Foot foot{fmt::format("{}{} {}", car, plan.name, plan.version), caution};
  for (std::size_t i = 0; i < pages.size(); ++i)
    write_foot(pages[i], paper, foot, i + 1, pages.size(), measure);
  return pages;
}

}  // namespace tinworm::documents
