#include "scene/column.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "scene/legend.hpp"
#include "scene/naming.hpp"
#include "scene/not_seen.hpp"
#include "scene/palette.hpp"
#include "scene/parts_strip.hpp"
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

namespace {

// What stands where: the key and the names of the numbers on blank paper or down the column.
struct Arrangement {
  Parts parts = Parts::all;
  std::optional<PartsSetting> parts_place;  // none: in the column, if any
  std::optional<KeySetting> key_place;      // none: in the column
};

// The dearest first: on the sheet there is room for one, both or none.
std::vector<Arrangement> arrangements(const Drafting& drafting) {
  std::vector<Arrangement> all;
  for (const Parts parts : {Parts::all, Parts::unnamed}) {
    const auto place = place_for_parts(drafting, parts);
    const auto key_alone = place_for_key(drafting, Fit::close);
    if (place) {
      if (const auto key = place_for_key(drafting, Fit::close, place->area))
        all.push_back({parts, place, key});
      all.push_back({parts, place, {}});
    }
    if (key_alone) all.push_back({parts, {}, key_alone});
    all.push_back({parts, {}, {}});
  }
  return all;
}

// How much is said down the column.
struct Fullness {
  Fit worst, key;
  bool line_weights;
  std::size_t most_worst = 9;
};

constexpr Fullness fullnesses[] = {
    {Fit::roomy, Fit::roomy, true},  {Fit::roomy, Fit::close, true},
    {Fit::roomy, Fit::close, false}, {Fit::close, Fit::close, false},
    {Fit::brief, Fit::close, false}, {Fit::brief, Fit::brief, false}};
constexpr Fullness least[] = {{Fit::brief, Fit::brief, false},
                              {Fit::brief, Fit::brief, false, 6},
                              {Fit::brief, Fit::brief, false, 3},
                              {Fit::brief, Fit::brief, false, 0}};

struct Shortened {
  bool rules = false, limits = false;
};

Shortened write_all(Writer& to, const Drafting& drafting, const Arrangement& arrangement,
                    const Fullness& fullness, const std::string& overflow_page) {
  const weighing::Result& result = drafting.result;
  Used used = drafting.used;
  if (!fullness.line_weights) used.roles.clear();
  write_verdict(to, result);
  write_worst(to, drafting, fullness.worst, fullness.most_worst, overflow_page);
  Shortened shortened;
  shortened.rules = write_rules(to, result, overflow_page);
  if (!arrangement.key_place) write_legend(to, used, result.constants, fullness.key);
  if (arrangement.parts == Parts::none)
    to.block(fmt::format("What the numbers are called: page {}.", overflow_page), list_style);
  else if (!arrangement.parts_place)
    write_parts(to, parts_of(drafting, arrangement.parts));
  shortened.limits = write_limits(to, result, overflow_page, drafting.sheet.kind);
  return shortened;
}

struct Choice {
  Arrangement arrangement;
  Fullness fullness;
};

// The first of all that fits, from what says most to what says least.
Choice chosen(const Writer& like, const Drafting& drafting, const std::string& overflow_page) {
  const auto fits = [&](const Arrangement& arrangement, const Fullness& fullness, bool in_full) {
    Layer tried;
    Writer trial{tried, like.area, like.y, like.measure};
    const Shortened shortened = write_all(trial, drafting, arrangement, fullness, overflow_page);
    return trial.room() >= 0 && !(in_full && shortened.limits);
  };
  auto all = arrangements(drafting);
  for (const bool in_full : {true, false}) {
    for (const Arrangement& arrangement : all)
      for (const Fullness& fullness : fullnesses)
        if (fits(arrangement, fullness, in_full)) return {arrangement, fullness};
  }
  const Arrangement bare{Parts::none, {}, place_for_key(drafting, Fit::brief)};
  for (const Fullness& fullness : fullnesses)
    if (fits(bare, fullness, true)) return {bare, fullness};
  // Where the limits run on to another page, all room that the others leave is theirs.
  for (const Fullness& fullness : least)
    if (fits(bare, fullness, false)) return {bare, fullness};
  return {bare, std::end(least)[-1]};
}

}  // namespace

Further draw_column(Drafting& drafting, const std::string& overflow_page) {
  Writer writer = open_column(drafting, drafting.result.caution);
  const auto [arrangement, fullness] = chosen(writer, drafting, overflow_page);
  if (arrangement.key_place) draw_key(drafting, *arrangement.key_place);
  if (arrangement.parts_place) {
    drafting.space.write(arrangement.parts_place->area);
    write_parts(writer.layer, parts_of(drafting, arrangement.parts), *arrangement.parts_place,
                drafting.measure);
  }
  const Shortened shortened = write_all(writer, drafting, arrangement, fullness, overflow_page);
  Further further;
  const auto& lettered = drafting.lettered;
  for (std::size_t i = fullness.most_worst; i < lettered.size(); ++i)
    further.worst.push_back(lettered[i]);
  further.parts = arrangement.parts == Parts::none && !numbers_on(drafting.page).empty();
  further.numbers = numbers_on(drafting.page);
  further.needed = shortened.rules || shortened.limits || further.parts || !further.worst.empty();
  return further;
}

}  // namespace tinworm::scene
