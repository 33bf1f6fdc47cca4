#include "verbs/bodies.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>
#include <nlohmann/json.hpp>

#include "body/checker.hpp"
#include "output/figures.hpp"
#include "output/table.hpp"
#include "output/weigh_json.hpp"
#include "output/whole_file.hpp"
#include "output/zone_text.hpp"
#include "painting/measure.hpp"
#include "scene/body_key.hpp"
#include "verbs/command_error.hpp"
#include "verbs/named_plan.hpp"
#include "verbs/picture.hpp"
#include "verbs/record.hpp"
#include "verbs/record_words.hpp"
#include "verbs/source_date.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {
namespace {

using nlohmann::ordered_json;
using output::Align;

// Both twins on one line: they differ by their side alone.
std::string number_text(const body::Zone& zone) {
  if (const auto pair = zone.pair()) return fmt::format("{:02} {:02}", zone.number, *pair);
  return fmt::format("{:02}", zone.number);
}

std::vector<output::Row> zone_rows(const body::Plan& plan, bool pairs) {
  std::vector<output::Row> rows;
  for (const body::Zone& zone : plan.zones) {
    const bool is_pair = zone.side() != body::Side::centre;
    if (is_pair != pairs || zone.side() == body::Side::right) continue;
    const std::string name =
        zone.also.empty() ? zone.name : fmt::format("{} ({})", zone.name, zone.also);
    rows.push_back({number_text(zone), name, std::string(body::word(zone.role)),
                    std::string(body::word(zone.joined)), std::string(body::word(zone.build)),
                    fmt::format("{:.2f} mm", zone.sheet_mm), fmt::format("{:.2f} m²", zone.area_m2),
                    zone.starts});
  }
  return rows;
}

std::string zones_text(const std::string& title, const std::vector<output::Row>& rows,
                       const output::TextStyle& style) {
  if (rows.empty()) return "";
  return "\n" + output::heading(title, style) + "\n" +
         output::table({{"zone"},
                        {"name"},
                        {"role"},
                        {"joined"},
                        {"build"},
                        {"sheet", Align::right},
                        {"area", Align::right},
                        {"rust starts"}},
                       rows, style.width);
}

std::string station_names(const body::Zone& zone) {
  std::string names;
  for (const body::Station& station : zone.stations)
    names += (names.empty() ? "" : ", ") + station.name;
  return names;
}

// What a surveyor may write before the colon of a finding to have it placed; twins on one line.
std::string stations_text(const body::Plan& plan, const output::TextStyle& style) {
  std::vector<output::Row> rows;
  for (const body::Zone& zone : plan.zones) {
    const std::string names = station_names(zone);
    const body::Zone* pair = zone.pair() ? plan.zone(*zone.pair()) : nullptr;
    const bool alike = pair && station_names(*pair) == names;
    if (names.empty() || (alike && zone.side() == body::Side::right)) continue;
    rows.push_back({alike ? number_text(zone) : fmt::format("{:02}", zone.number), names});
  }
  if (rows.empty()) return "";
  return "\n" + output::heading("Stations, by zone: a finding of that name has its place", style) +
         "\n" + output::table({{"zone"}, {"stations"}}, rows, style.width);
}

std::string mounts_text(const body::Plan& plan, const output::TextStyle& style) {
  std::vector<output::Row> rows;
  for (const body::Mount& mount : plan.mounts) {
    rows.push_back({mount.what, std::string(body::word(mount.carries)),
                    body::under_near_rule(mount.carries) ? "strict" : "",
                    output::zone_ranges(mount.on),
                    mount.when ? mount.when->option + " " + mount.when->choice : ""});
  }
  if (rows.empty()) return "";
  return "\n" + output::heading("Mounts (strict: metal near them is judged as theirs)", style) +
         "\n" +
         output::table({{"mount"}, {"carries"}, {"rule"}, {"stands on"}, {"only with"}}, rows,
                       style.width);
}

// What is lifted or taken off to look behind zones, and which cars have what.
std::string openings_text(const body::Plan& plan, const output::TextStyle& style) {
  std::vector<output::Row> rows;
  for (const body::Opening& opening : plan.openings) {
    std::vector<int> shows;
    for (const body::Zone& zone : plan.zones)
      if (zone.opening == opening.name) shows.push_back(zone.number);
    rows.push_back(
        {opening.how, fmt::format("{:g} min", opening.minutes), output::zone_ranges(shows)});
  }
  if (rows.empty()) return "";
  return "\n" + output::heading("To look behind", style) + "\n" +
         output::table({{"what is done"}, {"takes", Align::right}, {"shows"}}, rows, style.width);
}

std::string options_text(const body::Plan& plan, const output::TextStyle& style) {
  std::vector<output::Row> rows;
  for (const body::Option& option : plan.options)
    rows.push_back({option.name, fmt::format("{}", fmt::join(option.choices, ", "))});
  if (rows.empty()) return "";
  return "\n" + output::heading("Options, told in a survey under `fitted`", style) + "\n" +
         output::table({{"option"}, {"one of"}}, rows, style.width);
}

// How much of each drawing is zones: what has no number can't be surveyed.
std::string coverage_text(const body::Plan& plan, const output::TextStyle& style) {
  std::vector<output::Row> rows;
  for (const body::Coverage& part : body::coverage(plan)) {
    if (!part.has_silhouette) continue;
    rows.push_back({std::string(body::word(part.layer)), std::string(body::word(part.view)),
                    output::percent_text(part.drawn_share)});
  }
  if (rows.empty()) return "";
  return "\n" + output::heading("Share of each drawing that zones cover", style) + "\n" +
         output::table({{"layer"}, {"view"}, {"covered", Align::right}}, rows, style.width);
}

std::string plan_text(const body::Plan& plan, const output::TextStyle& style) {
  std::string text = output::heading(fmt::format("{} {}", plan.name, plan.version), style) +
                     fmt::format(": {}; {}\n", plan.title, body::word(plan.construction));
  text += zones_text("Centre line and singles, front to rear", zone_rows(plan, false), style);
  text += zones_text("Pairs, left and right", zone_rows(plan, true), style);
  return text + stations_text(plan, style) + mounts_text(plan, style) + openings_text(plan, style) +
         options_text(plan, style) + coverage_text(plan, style);
}

ordered_json openings_json(const body::Plan& plan) {
  ordered_json json = ordered_json::array();
  for (const body::Opening& opening : plan.openings)
    json.push_back({{"name", opening.name}, {"how", opening.how}, {"minutes", opening.minutes}});
  return json;
}

ordered_json options_json(const body::Plan& plan) {
  ordered_json json = ordered_json::array();
  for (const body::Option& option : plan.options)
    json.push_back({{"name", option.name}, {"choices", option.choices}});
  return json;
}

ordered_json plan_json(const body::Plan& plan) {
  ordered_json zones = ordered_json::array();
  for (const body::Zone& zone : plan.zones) {
    ordered_json stations = ordered_json::array();
    for (const body::Station& station : zone.stations)
      stations.push_back({{"name", station.name},
                          {"x_mm", station.at.x_mm},
                          {"y_mm", station.at.y_mm},
                          {"z_mm", station.at.z_mm}});
    zones.push_back({{"zone", zone.number},
                     {"name", zone.name},
                     {"also", zone.also},
                     {"side", body::word(zone.side())},
                     {"role", body::word(zone.role)},
                     {"joined", body::word(zone.joined)},
                     {"build", body::word(zone.build)},
                     {"job", body::word(zone.job)},
                     {"sheet_mm", zone.sheet_mm},
                     {"area_m2", zone.area_m2},
                     {"starts", zone.starts},
                     {"stations", stations},
                     {"joins", zone.joins},
                     {"opening", zone.opening}});
  }
  return {{"tinworm", TINWORM_VERSION},
          {"kind", "body"},
          {"name", plan.name},
          {"version", plan.version},
          {"title", plan.title},
          {"construction", body::word(plan.construction)},
          {"zones", zones},
          {"openings", openings_json(plan)},
          {"options", options_json(plan)}};
}

void put(const std::string& text, const BodiesOptions& options, const Streams& streams) {
  if (options.to.path == "-") return streams.print(text);
  output::write_whole(options.to.path, text);
  streams.tell(fmt::format("wrote {}\n", yaml::shown(options.to.path)));
}

ExitStatus list(PlanShelf& plans, const BodiesOptions& options, const Streams& streams) {
  ExitStatus status = done;
  std::vector<output::Row> rows;
  ordered_json bodies = ordered_json::array();
  for (const std::string& name : plans.names()) {
    const body::PlanPtr plan = named_plan("bodies", plans, name, streams);
    if (!plan) {
      status = errors_in_files;
      continue;
    }
    const std::string zones = fmt::format("{}", plan->zones.size());
    const auto construction = body::word(plan->construction);
    rows.push_back({plan->name, fmt::format("{}", plan->version), zones, std::string(construction),
                    plan->title});
    bodies.push_back({{"name", plan->name},
                      {"version", plan->version},
                      {"title", plan->title},
                      {"construction", construction},
                      {"zones", plan->zones.size()}});
  }
  if (options.to.kind == Kind::json) {
    put(output::json_text({{"tinworm", TINWORM_VERSION}, {"kind", "bodies"}, {"bodies", bodies}},
                          output::Lines::many),
        options, streams);
    return status;
  }
  const int width = streams.style(options.common.no_colour).width;
  put(output::table({{"body"},
                     {"version", Align::right},
                     {"zones", Align::right},
                     {"construction"},
                     {"title"}},
                    rows, width, ""),
      options, streams);
  return status;
}

std::string key_picture(const body::PlanPtr& plan, const BodiesOptions& options,
                        const Streams& streams) {
  std::vector<scene::SheetKind> kinds = {options.picture.sheet};
  if (options.to.kind == Kind::pdf) {
    kinds = {scene::SheetKind::structure, scene::SheetKind::skin, scene::SheetKind::frame};
  }
  const auto pages = scene::body_key(plan, options.picture.paper, kinds, painting::measure(),
                                     options.to.kind == Kind::pdf);
  if (pages.empty()) {
    throw CommandError("bodies",
                       fmt::format("{} has no {} sheet", plan->name, word(options.picture.sheet)));
  }
  painting::Metadata metadata;
  metadata.title = fmt::format("{}: key to the zones", plan->title);
  metadata.subject = "Numbered zones, stations and mounts of a body";
  metadata.record = text(record_of(words_of(options), options.to.kind, *plan));
  metadata.creator = "tinworm " TINWORM_VERSION;
  // Plans carry no date, and the clock's would make no two files alike.
  metadata.date = date_of_file("bodies", {});
  painting::Warnings warnings;
  const std::string picture =
      picture_of(pages, metadata, options.to.kind, options.picture, warnings);
  for (const std::string& warning : warnings) {
    streams.complain(fmt::format("tinworm: {}: {}\n", plan->name, warning));
  }
  if (options.to.kind != Kind::pdf && pages.size() > 1) {
    streams.complain(fmt::format(
        "tinworm: {}: the sheet takes {} pages, of which this picture has the first; a PDF has "
        "all\n",
        plan->name, pages.size()));
  }
  return picture;
}

std::string output_text(const body::PlanPtr& plan, const BodiesOptions& options,
                        const Streams& streams) {
  if (options.to.kind == Kind::json)
    return output::json_text(plan_json(*plan), output::Lines::many);
  if (options.to.kind != Kind::text) return key_picture(plan, options, streams);
  const bool to_file = options.to.path != "-";
  return plan_text(*plan, to_file ? output::TextStyle{} : streams.style(options.common.no_colour));
}

}  // namespace

ExitStatus run(const BodiesOptions& options, const Streams& streams) {
  PlanShelf plans(options.common.panels, options.common.problems);
  if (options.name.empty()) return list(plans, options, streams);
  const body::PlanPtr plan = named_plan("bodies", plans, options.name, streams);
  if (!plan) return errors_in_files;
  put(output_text(plan, options, streams), options, streams);
  return done;
}

}  // namespace tinworm::verbs
