#include "documents/opening.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "documents/answers.hpp"
#include "documents/typography.hpp"
#include "output/zone_text.hpp"
#include "scene/small_map.hpp"
#include "scene/writer.hpp"

namespace tinworm::documents {
namespace {

using scene::Writer;
using weighing::Result;

constexpr double gutter_mm = 8, between_mm = 2.6, contents_mm = 9;
constexpr std::size_t worst = 3, named = 3;

void write_title(Writer& writer, const Result& result) {
  const survey::Survey& survey = result.survey;
  writer.block(output::car_text(survey.car), title_style);
  std::string line = fmt::format("{}. Surveyed {}", result.body->title, survey.visit.date.text());
  if (!survey.visit.by.empty()) line += " by " + survey.visit.by;
  if (!survey.visit.place.empty()) line += ", " + survey.visit.place;
  writer.block(line + ".", text_style);
  std::string own;
  for (const auto& [what, value] : {std::pair("Owner", survey.car.owner),
                                    {"Registration", survey.car.registration},
                                    {"Chassis number", survey.car.chassis_number},
                                    {"Surveyor's interest in a sale", survey.visit.interest}})
    if (!value.empty()) own += fmt::format("{}{}: {}", own.empty() ? "" : ". ", what, value);
  if (!own.empty()) writer.block(own + ".", note_style);
  writer.y += between_mm * 0.6;
}

void write_answer(Writer& writer, std::string_view question,
                  const std::vector<std::string>& lines) {
  writer.rule();
  writer.block(question, heading_style);
  writer.y += 0.4;
  for (const std::string& line : lines) {
    writer.block(line, text_style);
    writer.y += 0.6;
  }
  writer.y += between_mm * 0.6;
}

void write_driven(Writer& writer, const Result& result) {
  writer.rule();
  writer.block("Can it be driven?", heading_style);
  writer.block(may_it_be_driven(result), section_style);
  writer.y += 0.6;
  for (const std::string& line : verdict_lines(result)) writer.block(line, text_style);
  writer.y += between_mm * 0.6;
}

void write_worst(Writer& writer, scene::Page& page, const Result& result) {
  writer.rule();
  const auto places = worst_places(result, worst);
  writer.block(places.empty()          ? "No rust was found where looked"
               : places.size() < worst ? "The worst places"
                                       : "The worst three places",
               heading_style);
  writer.y += 0.4;
  for (std::size_t i = 0; i < places.size(); ++i) {
    const double top = writer.y;
    writer.block(fmt::format("{}  {}", i + 1, places[i].title), heading_style);
    writer.block(places[i].detail, text_style);
    page.links.push_back(
        {{writer.area.x_mm, top, writer.area.width_mm, writer.y - top}, places[i].link});
    writer.y += 0.6;
  }
  writer.y += between_mm * 0.6;
}

}  // namespace

scene::Page opening(const Result& result, const work::Plan& plan, const Paper& paper,
                    const std::string& contents, const scene::Measure& measure) {
  scene::Page page = blank_page(paper);
  const scene::Area& all = paper.text;
  page.title = "At a glance";
  page.outline.push_back({page.title, {all.x_mm, all.y_mm}});
  scene::Layer text;
  Writer head{text, all, all.y_mm, measure};
  write_title(head, result);
  write_driven(head, result);

  const double half = (all.width_mm - gutter_mm) / 2;
  Writer left{text, {all.x_mm, all.y_mm, half, all.height_mm}, head.y, measure};
  Writer right{text, {all.right() - half, all.y_mm, half, all.height_mm}, head.y, measure};
  write_worst(left, page, result);
  write_answer(left, "What nobody saw and could change it", unseen_lines(result, named));
  write_answer(left, "Look again", {look_again(result)});
  write_answer(right, "What to do first", first_lines(result, plan, named));
  write_answer(right, "What to stop now", stop_lines(result));
  write_answer(right, "What it may take", cost_lines(result, plan));

  const double below = std::max(left.y, right.y) + between_mm;
  const scene::Area map{all.x_mm, below, all.width_mm, all.bottom() - contents_mm - below};
  if (map.height_mm > 0) draw_small_map(page, result, map, measure);
  Writer foot{text, all, all.bottom() - contents_mm + 1, measure};
  foot.block(contents, small_style);
  page.layer("text").items = std::move(text.items);
  return page;
}

}  // namespace tinworm::documents
