#include "documents/opening.hpp"

#include <algorithm>
#include <iterator>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "documents/answers.hpp"
#include "documents/brevity.hpp"
#include "documents/costs.hpp"
#include "documents/remarks.hpp"
#include "documents/typography.hpp"
#include "output/zone_text.hpp"
#include "scene/small_map.hpp"
#include "scene/writer.hpp"
#include "survey/told.hpp"
#include "weighing/words.hpp"

namespace tinworm::documents {
namespace {

using scene::Writer;
using weighing::Result;

constexpr double gutter_mm = 8, between_mm = 2.6, above_contents_mm = 1;
constexpr double least_map_mm = 62;  // smaller ones can't be read
constexpr std::size_t worst = 3;

// From full to the briefest: the first that holds is taken.
constexpr Brevity brevities[] = {{.names = 3,
                                  .letters = 80,
                                  .before_use = 8,
                                  .rules = 3,
                                  .free_letters = 240,
                                  .summary_letters = 600},
                                 {.names = 2,
                                  .letters = 48,
                                  .before_use = 6,
                                  .rules = 2,
                                  .free_letters = 160,
                                  .summary_letters = 400},
                                 {.names = 1,
                                  .letters = 32,
                                  .before_use = 4,
                                  .rules = 2,
                                  .free_letters = 80,
                                  .summary_letters = 240},
                                 {.names = 1,
                                  .letters = 16,
                                  .before_use = 2,
                                  .rules = 1,
                                  .free_letters = 40,
                                  .summary_letters = 120}};

struct Answers {  // all that the page says but its contents
  scene::Layer text;
  std::vector<scene::Link> links;
  double bottom_mm = 0;
};

void write_title(Writer& writer, const Result& result, const Brevity& brevity) {
  const survey::Survey& survey = result.survey;
  const std::string car = output::car_text(survey.car);
  const bool fits = writer.height(car, title_style) < 2.5 * scene::line_height_mm(title_style);
  writer.block(car, fits ? title_style : section_style);
  std::string line = fmt::format("{}. Surveyed {}", result.body->title, survey.visit.date.text());
  if (!survey.visit.by.empty()) line += " by " + survey.visit.by;
  if (!survey.visit.place.empty())
    line += ", " + shortened(survey.visit.place, brevity.free_letters);
  writer.block(line + ".", text_style);
  std::string own;
  for (const auto& [what, value] :
       {std::pair("Owner", survey.car.owner),
        {"Registration", survey.car.registration},
        {"Chassis number", survey.car.chassis_number},
        {"Surveyor's interest in a sale", shortened(survey.visit.interest, brevity.free_letters)}})
    if (!value.empty()) own += fmt::format("{}{}: {}", own.empty() ? "" : ". ", what, value);
  if (!own.empty()) writer.block(own + ".", note_style);
  if (!survey.summary.empty())
    writer.block(shortened(survey.summary, brevity.summary_letters), text_style);
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

void write_linked(Writer& writer, std::vector<scene::Link>& links, const std::string& text,
                  const std::string& to) {
  const double top = writer.y;
  writer.block(text, text_style);
  links.push_back({{writer.area.x_mm, top, writer.area.width_mm, writer.y - top}, to});
}

void write_before_use(Writer& writer, std::vector<scene::Link>& links, const Result& result,
                      const Brevity& brevity) {
  List list{"Before it is driven: ", {}, "What else was seen"};
  for (const survey::Also* each : before_use(result.survey))
    if (!survey::is_at_once(*each))
      list.items.push_back(
          shortened(remark(*each, result.survey.visit.date), brevity.free_letters));
  if (list.items.empty()) return;
  write_linked(writer, links, listed(list, text_style, brevity.before_use, writer), "also");
}

// What can hurt someone where the car stands comes before anything else, whatever else is cut.
void write_at_once(Writer& writer, std::vector<scene::Link>& links, const Result& result) {
  const std::string words = at_once_words(result.survey);
  if (!words.empty()) write_linked(writer, links, words, "also");
}

void write_rules(Writer& writer, std::vector<scene::Link>& links, const Result& result,
                 const Brevity& brevity) {
  if (result.rules_changed.empty()) return;
  const List list{shortened(weighing::rules_from(result), brevity.free_letters) + ": ",
                  result.rules_changed, "How it was judged"};
  write_linked(writer, links, listed(list, text_style, brevity.rules, writer), "method");
}

void write_driven(Writer& writer, std::vector<scene::Link>& links, const Result& result,
                  const Brevity& brevity) {
  writer.rule();
  write_at_once(writer, links, result);
  writer.block("Can it be driven?", heading_style);
  writer.block(may_it_be_driven(result), section_style);
  writer.y += 0.6;
  writer.block(verdict_line(result), text_style);
  write_before_use(writer, links, result, brevity);
  write_rules(writer, links, result, brevity);
  writer.y += between_mm * 0.6;
}

void write_worst(Writer& writer, std::vector<scene::Link>& links, const Result& result) {
  writer.rule();
  const auto places = worst_places(result, worst);
  constexpr const char* headings[] = {"No rust was found where looked", "The worst place",
                                      "The worst two places", "The worst three places"};
  static_assert(std::size(headings) == worst + 1);
  writer.block(headings[places.size()], heading_style);
  writer.y += 0.4;
  for (std::size_t i = 0; i < places.size(); ++i) {
    const double top = writer.y;
    writer.block(fmt::format("{}  {}", i + 1, places[i].title), heading_style);
    writer.block(places[i].detail, text_style);
    links.push_back(
        {{writer.area.x_mm, top, writer.area.width_mm, writer.y - top}, places[i].link});
    writer.y += 0.6;
  }
  writer.y += between_mm * 0.6;
}

Answers answers(const Result& whole, const work::Plan& whole_plan,
                const history::Comparison* before, const scene::Area& all, const Brevity& brevity,
                const scene::Measure& measure) {
  const Result result = shortened(whole, brevity.letters);
  const work::Plan plan = shortened(whole_plan, brevity.letters);
  Answers page;
  Writer head{page.text, all, all.y_mm, measure};
  write_title(head, result, brevity);
  write_driven(head, page.links, result, brevity);

  const double half = (all.width_mm - gutter_mm) / 2;
  Writer left{page.text, {all.x_mm, all.y_mm, half, all.height_mm}, head.y, measure};
  Writer right{page.text, {all.right() - half, all.y_mm, half, all.height_mm}, head.y, measure};
  write_worst(left, page.links, result);
  write_answer(left, "Not seen, or only judged, and could change it",
               unseen_lines(result, brevity.names));
  write_answer(left, "What to stop now",
               {fmt::format("{}", fmt::join(stop_lines(result, brevity.names + 1), " "))});
  write_answer(left, "Look again", {look_again(result, before)});
  write_answer(right, "What to do first", first_lines(result, plan, brevity.names));
  write_answer(right, "What it may take", cost_lines(result, plan));
  if (const std::string buy = good_buy(result, plan); !buy.empty())
    write_answer(right, "A good buy?", {buy});
  page.bottom_mm = std::max(left.y, right.y);
  return page;
}

// The fullest that leaves room for the map; where none does, the fullest that holds without it.
Answers that_fit(const Result& result, const work::Plan& plan, const history::Comparison* before,
                 const scene::Area& room, const scene::Measure& measure) {
  std::vector<Answers> tried;
  for (const Brevity& each : brevities) {
    tried.push_back(answers(result, plan, before, room, each, measure));
    if (tried.back().bottom_mm + between_mm + least_map_mm <= room.bottom()) return tried.back();
  }
  const auto fits = std::ranges::find_if(
      tried, [&](const Answers& each) { return each.bottom_mm <= room.bottom(); });
  return fits == tried.end() ? tried.back() : *fits;
}

}  // namespace

scene::Page opening(const Result& result, const work::Plan& plan, const history::Comparison* before,
                    const Paper& paper, const std::string& contents,
                    const scene::Measure& measure) {
  scene::Page page = blank_page(paper);
  const scene::Area& all = paper.text;
  page.title = "At a glance";
  page.outline.push_back({page.title, {all.x_mm, all.y_mm}});

  scene::Layer last;
  Writer foot{last, all, all.y_mm, measure};
  foot.y = all.bottom() - foot.height(contents, small_style);
  scene::Area room = all;
  room.height_mm = foot.y - above_contents_mm - all.y_mm;

  Answers said = that_fit(result, plan, before, room, measure);
  const double below = said.bottom_mm + between_mm;
  const scene::Area map{all.x_mm, below, all.width_mm, room.bottom() - below};
  if (map.height_mm >= least_map_mm) draw_small_map(page, result, map, measure);
  foot.block(contents, small_style);
  page.links = std::move(said.links);
  scene::Layer& text = page.layer("text");
  text.items = std::move(said.text.items);
  std::ranges::move(last.items, std::back_inserter(text.items));
  return page;
}

}  // namespace tinworm::documents
