#include "scene/column.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "scene/legend.hpp"
#include "scene/naming.hpp"
#include "scene/not_seen.hpp"
#include "scene/palette.hpp"
#include "scene/setting.hpp"
#include "scene/worst_list.hpp"
#include "scene/writer.hpp"
#include "survey/told.hpp"
#include "weighing/words.hpp"

namespace tinworm::scene {
namespace {

constexpr Style verdict_style{11.5, Font::bold, black, Says::title, 1.16};
constexpr Style second_style{7.5, Font::regular, black, Says::title, 1.25};
constexpr Style rules_style{7, Font::bold, black, Says::words, 1.22};
constexpr double inset_mm = 3;

// "At once, before anything else: brakes, fuel." By the words of the format: papers for strangers
// carry it too.
std::string at_once_line(const survey::Survey& survey) {
  std::vector<std::string_view> matters;
  for (const survey::Also& item : survey.also)
    if (survey::is_at_once(item) && std::ranges::find(matters, word(item.matter)) == matters.end())
      matters.push_back(word(item.matter));
  if (matters.empty()) return "";
  return fmt::format("At once, before anything else: {}.", fmt::join(matters, ", "));
}

}  // namespace

void write_verdict(Writer& writer, const weighing::Result& result) {
  if (const std::string now = at_once_line(result.survey); !now.empty())
    writer.block(now, verdict_style);
  writer.block(capitalised(weighing::sentence(result.verdict)), verdict_style);
  writer.y += 0.6;
  if (result.open_up_first) {
    writer.block("Open up first: metal that matters was not seen, or only looked at.",
                 second_style);
  }
  if (result.could_be > result.verdict) {
    writer.block(fmt::format("It could be: {}.", weighing::sentence(result.could_be)),
                 second_style);
  }
  writer.y += apart_mm * 0.7;
}

bool write_rules(Writer& writer, const weighing::Result& result, const std::string& overflow_page) {
  std::string text = weighing::rules_text(result);
  if (text.empty()) return false;
  const double most_mm = writer.area.height_mm * 0.15;
  const auto fits = [&] { return writer.height(text, rules_style) <= most_mm; };
  const bool shortened = !fits();
  const std::size_t all = result.rules_changed.size();
  for (std::size_t named = all; shortened && !fits(); --named) {
    text = fmt::format("Rules changed, {} in all: ", all);
    for (std::size_t i = 0; i < named; ++i) {
      const std::string& line = result.rules_changed[i];
      text += (i > 0 ? ", " : "") + line.substr(0, line.find(' '));
    }
    if (named < all) text += fmt::format("{}{} more", named > 0 ? " and " : "", all - named);
    text +=
        overflow_page.empty() ? "." : fmt::format("; the values are on page {}.", overflow_page);
    if (named == 0) break;
  }
  writer.block(text, rules_style);
  writer.y += apart_mm * 0.7;
  return shortened;
}

Writer open_column(Drafting& drafting, std::string_view caution) {
  const Area column = drafting.sheet.column;
  Layer& layer = drafting.page.layer("column");
  layer.items.push_back(Shape{{segment({column.x_mm, column.y_mm}, {column.x_mm, column.bottom()})},
                              {},
                              Stroke{ink, 0.5, {}}});
  const double width = column.width_mm - 2 * inset_mm;
  Writer writer{layer,
                {column.x_mm + inset_mm, column.y_mm + 2.4, width, column.height_mm - 4},
                column.y_mm + 2.4,
                drafting.measure};
  const double caution_mm = writer.height(caution, caution_style);
  Writer foot = writer;
  foot.y = writer.area.bottom() - caution_mm - apart_mm * 0.7;
  writer.area.height_mm = foot.y - writer.area.y_mm - apart_mm * 0.6;
  foot.rule();
  foot.block(caution, caution_style);
  return writer;
}

bool draw_column(Drafting& drafting, const std::string& overflow_page) {
  const weighing::Result& result = drafting.result;
  const rules::Rules& rules = result.constants;
  const bool key_on_sheet = draw_key_on_sheet(drafting, Fit::close);
  Writer writer = open_column(drafting, result.caution);
  struct Fullness {
    Fit worst, key;
    bool line_weights, limits_in_full;
  };
  bool rules_overflow = false, limits_overflow = false;
  const auto write_all = [&](Writer& to, const Fullness& fullness) {
    Used used = drafting.used;
    if (!fullness.line_weights) used.roles.clear();
    write_verdict(to, result);
    write_worst(to, drafting, fullness.worst);
    rules_overflow = write_rules(to, result, overflow_page);
    if (!key_on_sheet) write_legend(to, used, rules, fullness.key);
    limits_overflow = write_limits(to, result, overflow_page);
  };
  const auto fits = [&](const Fullness& fullness) {
    Layer tried;
    Writer trial{tried, writer.area, writer.y, writer.measure};
    write_all(trial, fullness);
    return trial.room() >= 0 && !(fullness.limits_in_full && limits_overflow);
  };
  // From all that there is to say to the least.
  constexpr Fullness fullnesses[] = {
      {Fit::roomy, Fit::roomy, true, true},   {Fit::roomy, Fit::close, true, true},
      {Fit::roomy, Fit::close, false, true},  {Fit::close, Fit::close, false, true},
      {Fit::roomy, Fit::close, false, false}, {Fit::close, Fit::close, false, false},
      {Fit::brief, Fit::close, false, false}, {Fit::brief, Fit::brief, false, false}};
  const auto* chosen = std::begin(fullnesses);
  while (chosen + 1 != std::end(fullnesses) && !fits(*chosen)) ++chosen;
  write_all(writer, *chosen);
  return rules_overflow || limits_overflow;
}

}  // namespace tinworm::scene
