#include "output/work_tasks_text.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "output/display_width.hpp"
#include "output/figures.hpp"
#include "output/work_figures.hpp"
#include "output/zone_text.hpp"

namespace tinworm::output {
namespace {

using work::Kind;
using work::Plan;
using work::Task;

constexpr const char* margin = "     ";

std::string title_of(const Task& task) {
  return part_title(task.zone, task.own, task.name, task.side);
}

std::string weld_text(const work::Range& m, quantity::Units units) {
  constexpr double ft_per_m = 1 / 0.3048, least_m = 0.05;
  if (m.high < least_m) return "a spot of weld";  // a pinhole's: no figure of metres
  if (units == quantity::Units::mm) return "weld " + figure_span(m, 1) + " m";
  return "weld " + figure_span(m * ft_per_m, 1) + " ft";
}

// ", to the front, lower and upper edges of the part"
std::string edges_text(const std::vector<std::string>& edges) {
  constexpr std::size_t all = 4;
  if (edges.empty()) return "";
  if (edges.size() == all) return ", to every edge of the part";
  if (edges.size() == 1) return fmt::format(", to the {} edge of the part", edges.front());
  return fmt::format(", to the {} and {} edges of the part",
                     fmt::join(edges.begin(), edges.end() - 1, ", "), edges.back());
}

std::string piece_text(const work::Cut& cut, quantity::Units units) {
  const auto distance = [&](double mm) { return distance_text(mm, units); };
  const std::string size =
      fmt::format("{} x {}", distance(cut.along_mm.likely), distance(cut.across_mm.likely));
  switch (cut.way) {
    case work::Way::weld_up:
      return fmt::format("weld up a hole of {}", distance(cut.pinhole_mm));
    case work::Way::crack:
      return cut.plated ? fmt::format("a crack of {}, plate about {}", distance(cut.crack_mm), size)
                        : fmt::format("a crack of {}", distance(cut.crack_mm));
    case work::Way::reopened:
      return "open about " + size;
    case work::Way::let_in:
      break;
  }
  return "cut about " + size;
}

std::string cut_line(const work::Cut& cut, quantity::Units units) {
  std::string text =
      fmt::format("{} ({}{})", piece_text(cut, units),
                  cut.way == work::Way::reopened ? "to reach " : "", fmt::join(cut.places, ", "));
  text += edges_text(cut.to_edge);
  if (cut.size_assumed) text += ", size assumed: nobody measured it";
  if (!cut.placed) text += ", place not recorded";
  return text;
}

// What is done, and each cut.
std::vector<std::string> about_lines(const Task& task, quantity::Units units) {
  std::vector<std::string> lines{task.what};
  for (const work::Cut& cut : task.cuts) lines.push_back(cut_line(cut, units));
  return lines;
}

// "weld 0.6–0.7–1.2 m; sheet 1.2 mm"; empty where nothing is cut.
std::string metal_line(const Task& task, quantity::Units units) {
  if (task.cuts.empty() && !task.sheet) return "";
  std::string line = task.cuts.empty() ? "" : weld_text(task.weld_m, units) + "; ";
  if (task.kind == Kind::access) return line + "no new sheet";
  return line + (task.sheet ? "sheet " + stock_text(task.sheet->thickness_mm, units)
                            : std::string("sheet not known"));
}

std::vector<std::string> why_lines(const Task& task) {
  std::vector<std::string> lines;
  if (task.at_most)
    lines.push_back(
        fmt::format("likely hours are those of the whole job ({})", rates::key(task.job)));
  if (task.hidden > 1)
    lines.push_back(fmt::format("high figures x {:g}: {}", task.hidden, task.hidden_why));
  if (!task.after.empty()) lines.push_back(fmt::format("after {}", runs(task.after)));
  for (const std::string& question : task.questions) lines.push_back("Ask: " + question);
  return lines;
}

std::string block(const Task& task, const Plan& plan, const TextStyle& style) {
  std::string text = indented(fmt::format("{} [{}]", title_of(task), urgency_text(task.urgency)),
                              style.width, fmt::format("{:>3}. ", task.number), margin);
  const auto add = [&](const std::string& line) {
    text += indented(line, style.width, margin, fmt::format("{}  ", margin));
  };
  const std::vector<std::string> about = about_lines(task, style.units);
  for (const std::string& line : about) add(line);
  std::string figures = fmt::format("{} h, {} {}", hours_span(task.hours), money_span(task.cost),
                                    plan.rates.currency);
  if (const std::string metal = metal_line(task, style.units); !metal.empty())
    figures += "; " + metal;
  add(figures);
  for (const std::string& line : why_lines(task)) add(line);
  return text;
}

bool is_light(const Task& task) {
  return task.kind == Kind::treat || task.kind == Kind::drains;
}

}  // namespace

std::string_view urgency_text(work::Urgency urgency) {
  if (urgency == work::Urgency::danger) return "danger: on or near a mounting";
  return urgency == work::Urgency::water ? "water entry" : word(urgency);
}

std::vector<std::string> task_lines(const Task& task, quantity::Units units) {
  std::vector<std::string> lines = about_lines(task, units);
  if (const std::string metal = metal_line(task, units); !metal.empty()) lines.push_back(metal);
  for (std::string& line : why_lines(task)) lines.push_back(std::move(line));
  return lines;
}

std::string area_text(const work::Range& m2, quantity::Units units) {
  constexpr double ft2_per_m2 = 10.7639;
  if (units == quantity::Units::mm) return figure_span(m2, 2) + " m²";
  return figure_span(m2 * ft2_per_m2, 1) + " ft²";
}

std::string part_title(int number, const std::string& own, const std::string& name,
                       body::Side side) {
  if (name.empty()) return "the whole car";
  std::string title = zone_number(number, own) + " " + name;
  if (side != body::Side::centre) title += fmt::format(", {}", body::word(side));
  return title;
}

std::string stock_text(double mm, quantity::Units units) {
  return units == quantity::Units::mm ? fmt::format("{:g} mm", mm) : sheet_text(mm, units);
}

std::string heavy_tasks(const Plan& plan, bool judged, const TextStyle& style) {
  std::string text;
  for (const Task& task : plan.tasks)
    if (!is_light(task) && task.judged == judged) text += block(task, plan, style);
  return text;
}

std::string light_tasks(const Plan& plan, const TextStyle& style) {
  std::vector<Row> rows;
  for (const Task& task : plan.tasks)
    if (is_light(task))
      rows.push_back(
          {fmt::format("{}", task.number), title_of(task),
           task.kind == Kind::treat ? fmt::format("{}", fmt::join(task.treated, ", ")) : task.what,
           std::string(urgency_text(task.urgency)), hours_span(task.hours), money_span(task.cost)});
  return table({{"no", Align::right},
                {"part"},
                {"what"},
                {"for"},
                {"h", Align::right},
                {plan.rates.currency, Align::right}},
               rows, style.width);
}

}  // namespace tinworm::output
