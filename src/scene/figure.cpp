#include "scene/figure.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include <fmt/format.h>

#include "scene/naming.hpp"
#include "scene/palette.hpp"
#include "scene/setting.hpp"
#include "weighing/words.hpp"

namespace tinworm::scene {
namespace {

constexpr std::size_t most_letters = 9;
constexpr double letters_pt = 6.5;
constexpr double digit_share = 0.73;  // height of a capital over the letter size, DejaVu Sans
constexpr double flag_margin_mm = 0.45;
constexpr Style flag_style{letters_pt, Font::bold, white, Says::rank};
constexpr Style lettered_style{letters_pt, Font::bold, black, Says::callout};
constexpr Style figure_style{letters_pt, Font::regular, black, Says::callout};

const survey::Spot* found_as(const weighing::Result& result, const weighing::Spot& spot) {
  const survey::Zone* zone = result.survey.zone(spot.zone, spot.own);
  if (spot.is_repair || zone == nullptr) return nullptr;
  const auto index = static_cast<std::size_t>(spot.index);
  return index < zone->found.size() ? &zone->found[index] : nullptr;
}

std::string sized(std::string_view word, const std::optional<survey::Size>& size) {
  if (!size) return std::string(word);
  return fmt::format("{} {:.0f}\u00d7{:.0f}", word, size->along_mm, size->across_mm);
}

// Of a hole or a crack; else empty.
std::string damage_words(const weighing::Result& result, const weighing::Spot& spot) {
  if (spot.is_repair) return "repair";
  const survey::Spot* found = found_as(result, spot);
  if (found != nullptr && found->crack_mm) return fmt::format("crack {:.0f}", *found->crack_mm);
  if (found != nullptr && found->hole) return sized("hole", found->hole);
  if (spot.step != weighing::Step::holed) return "";
  return sized("hole", spot.size_assumed ? std::nullopt : spot.size);
}

// A place may be worse than its metal: a crack that a buyer isn't told of must not read as "≈85 %".
std::string metal_figure(const weighing::Result& result, const weighing::Spot& spot) {
  if (spot.step >= weighing::Step::weak && spot.metal.weighed.value > result.constants.weak_limit)
    return step_words(spot);
  const bool measured = spot.metal.kind == weighing::SpanKind::interval &&
                        !weighing::judged_below_readings(spot.metal);
  return fmt::format("{}{} %", measured ? "" : "\u2248",
                     std::lround(100 * spot.metal.weighed.value));
}

bool on_carrying_sheet(const body::Zone& zone) {
  return std::any_of(zone.drawn.begin(), zone.drawn.end(), [](const body::Drawing& drawing) {
    return drawing.view == body::View::frame || drawing.layer == body::Layer::structure;
  });
}

struct Tag {
  const SpotMark* mark = nullptr;
  std::string letter, words;
  double flag_mm = 0, words_mm = 0;
  double width_mm() const { return flag_mm + words_mm; }
  double height_mm() const { return letters_pt * digit_share * mm_per_pt + 2 * flag_margin_mm; }
};

Tag tag_of(const Drafting& drafting, const SpotMark& mark) {
  const weighing::Spot& spot = *mark.spot;
  const bool skin = drafting.sheet.kind == SheetKind::skin;
  Tag tag{&mark, skin ? "" : letter_of(drafting.result, spot),
          skin ? skin_words(drafting.result, spot) : figure_words(drafting.result, spot)};
  const auto width = [&](std::string_view text, const Style& style) {
    return text.empty()
               ? 0
               : drafting.measure(text, style.font, style.size_pt).width_mm + 2 * flag_margin_mm;
  };
  tag.flag_mm = width(tag.letter, flag_style);
  tag.words_mm = width(tag.words, tag.letter.empty() ? figure_style : lettered_style);
  return tag;
}

// Open marks have a broad edge.
Area area_of(const SpotMark& mark) {
  constexpr double edge_mm = 0.4;
  return bounds(mark.shape).grown(mark.kind == MarkKind::open ? edge_mm : 0);
}

bool free_for(const Drafting& drafting, const Area& area) {
  const FreeSpace& space = drafting.space;
  if (!space.unwritten(area.grown(0.25)) || space.leader_crosses(area.grown(0.2))) return false;
  return std::none_of(drafting.spots.begin(), drafting.spots.end(), [&](const SpotMark& mark) {
    return area_of(mark).grown(0.25).overlaps(area);
  });
}

struct Seat {
  Area area;
  double far_mm = 0;  // from the mark's edge
};

// Nearest to the mark first; on blank paper rather than over lines where that is as near.
std::optional<Seat> seat_of(const Drafting& drafting, const Tag& tag, double farthest_mm) {
  const Area mark = area_of(*tag.mark);
  const double width = tag.width_mm(), height = tag.height_mm();
  std::optional<Seat> best;
  double least = 1e9;
  for (double gap = 0.4; gap <= farthest_mm; gap += 0.8) {
    if (best && gap > least) break;
    constexpr int turns = 32;
    for (int i = 0; i < turns; ++i) {
      const double angle = 2 * std::numbers::pi * i / turns;
      const double u = std::cos(angle), v = std::sin(angle);
      // On the edge of the mark grown by half the tag and the gap.
      const double half_w = (mark.width_mm + width) / 2 + gap;
      const double half_h = (mark.height_mm + height) / 2 + gap;
      const double reach = std::min(std::abs(u) > 1e-9 ? half_w / std::abs(u) : 1e9,
                                    std::abs(v) > 1e-9 ? half_h / std::abs(v) : 1e9);
      const At middle{mark.middle().x_mm + u * reach, mark.middle().y_mm + v * reach};
      const Area area{middle.x_mm - width / 2, middle.y_mm - height / 2, width, height};
      const double aslant = 0.6 * std::min(std::abs(u), std::abs(v));
      const double over = drafting.space.blank(area)       ? 0
                          : drafting.space.uncovered(area) ? 0.4
                                                           : 0.8;
      const double cost = gap + aslant + over;
      if (cost >= least || !free_for(drafting, area)) continue;
      const bool led = gap > 2;
      if (led && drafting.space.crossings(nearest_on(area, mark.middle()), tag.mark->at, area) > 0)
        continue;
      best = Seat{area, gap};
      least = cost;
    }
  }
  return best;
}

void lead(Drafting& drafting, const Tag& tag, const Area& area) {
  Layer& layer = drafting.page.layer("leaders");
  const At to = nearest_on(bounds(tag.mark->shape), area.middle());
  const At from = nearest_on(area, to);
  layer.items.push_back(Shape{{segment(from, to)}, {}, Stroke{paper, 1.1, {}}});
  layer.items.push_back(Shape{{segment(from, to)}, {}, Stroke{ink, 0.35, {}}});
  drafting.space.lead(from, to);
}

void draw_tag(Drafting& drafting, const Tag& tag, const Seat& seat) {
  constexpr double led_from_mm = 2;
  Layer& layer = drafting.page.layer("callouts");
  const Area flag{seat.area.x_mm, seat.area.y_mm, tag.flag_mm, seat.area.height_mm};
  const Area words{flag.right(), flag.y_mm, tag.words_mm, flag.height_mm};
  if (seat.far_mm > led_from_mm) lead(drafting, tag, seat.area);
  const auto write = [&](const std::string& text, const Style& style, const Area& on,
                         Colour ground) {
    if (text.empty()) return;
    layer.items.push_back(Shape{{polyline(on)}, ground, {}});
    Text run = set(text, style, {on.middle().x_mm, on.bottom() - flag_margin_mm}, Align::centre,
                   drafting.measure);
    run.area = on.grown(-0.05);
    layer.items.push_back(run);
  };
  write(tag.letter, flag_style, flag, ink);
  write(tag.words, tag.letter.empty() ? figure_style : lettered_style, words, paper);
  drafting.space.write(seat.area);
}

std::vector<Tag> tags(const Drafting& drafting, bool with_letter) {
  std::vector<Tag> all;
  for (const SpotMark& mark : drafting.spots) {
    if (!mark.principal || mark.spot->rank == 0) continue;
    Tag tag = tag_of(drafting, mark);
    if (tag.letter.empty() != with_letter) all.push_back(std::move(tag));
  }
  std::sort(all.begin(), all.end(),
            [](const Tag& a, const Tag& b) { return a.mark->spot->rank < b.mark->spot->rank; });
  return all;
}

}  // namespace

std::string figure_words(const weighing::Result& result, const weighing::Spot& spot) {
  const std::string damage = damage_words(result, spot);
  return damage.empty() ? metal_figure(result, spot) : damage;
}

std::string skin_words(const weighing::Result& result, const weighing::Spot& spot) {
  const std::string damage = damage_words(result, spot);
  if (!damage.empty()) return damage;
  const bool measured = spot.metal.kind == weighing::SpanKind::interval;
  return measured || spot.rust.empty() ? metal_figure(result, spot) : spot.rust;
}

std::vector<const weighing::Spot*> lettered(const weighing::Result& result) {
  std::vector<const weighing::Spot*> worst;
  for (const weighing::Spot* spot : result.ranked()) {
    if (worst.size() == most_letters) break;
    const auto& zones = result.body->zones;
    const auto zone = std::find_if(zones.begin(), zones.end(), [&](const body::Zone& each) {
      return spot->zone != 0 && each.number == spot->zone;
    });
    if (zone != zones.end() && on_carrying_sheet(*zone)) worst.push_back(spot);
  }
  return worst;
}

std::string letter_of(const weighing::Result& result, const weighing::Spot& spot) {
  const auto worst = lettered(result);
  const auto place = std::find(worst.begin(), worst.end(), &spot);
  if (place == worst.end()) return "";
  return std::string(1, static_cast<char>('A' + (place - worst.begin())));
}

void draw_letters(Drafting& drafting) {
  constexpr double first_try_mm = 12, farthest_mm = 40;
  for (const Tag& tag : tags(drafting, true)) {
    auto seat = seat_of(drafting, tag, first_try_mm);
    if (!seat) seat = seat_of(drafting, tag, farthest_mm);
    if (!seat) continue;
    draw_tag(drafting, tag, *seat);
    drafting.lettered.push_back(tag.mark->spot);
  }
}

void draw_figures(Drafting& drafting) {
  constexpr double beside_mm = 1.3;
  for (const Tag& tag : tags(drafting, false)) {
    if (const auto seat = seat_of(drafting, tag, beside_mm)) draw_tag(drafting, tag, *seat);
  }
}

}  // namespace tinworm::scene
