#include <fmt/format.h>

#include <algorithm>
#include <stdexcept>

#include "rules/rules.hpp"

namespace tinworm::rules {
namespace {

constexpr auto published = Standing::published;
constexpr auto practice = Standing::practice;
constexpr auto memory = Standing::memory;

// Accessors must be plain functions: one per constant, or per envelope and end.
template <double Rules::*Member>
double& at(Rules& rules) {
  return rules.*Member;
}
template <Envelope Rules::*Member, double Envelope::*End>
double& at(Rules& rules) {
  return rules.*Member.*End;
}
template <std::size_t Word, double Envelope::*End>
double& at(Rules& rules) {
  return rules.envelope[Word].*End;
}

constexpr const char* by_word = "what the word usually means on a car";
constexpr const char* by_hand = "what the hand usually means on a car";

template <Envelope Rules::*Member>
void add(std::vector<Constant>& table, const std::string& key, const std::string& what,
         const std::string& source) {
  table.push_back({key + ".least", "of the sheet", what + ", least metal left", 0, 1, memory,
                   source, at<Member, &Envelope::least>});
  table.push_back({key + ".likely", "of the sheet", what + ", likely metal left", 0, 1, memory,
                   source, at<Member, &Envelope::likely>});
  table.push_back({key + ".most", "of the sheet", what + ", most metal left", 0, 1, memory, source,
                   at<Member, &Envelope::most>});
}

template <std::size_t Word>
void add_word(std::vector<Constant>& table) {
  const std::string name(survey::word(static_cast<survey::Rust>(Word)));
  const std::string key = "rust." + name;
  const std::string what = name == "none" ? "looked at, no rust" : name;
  table.push_back({key + ".least", "of the sheet", what + ", least metal left", 0, 1, memory,
                   by_word, at<Word, &Envelope::least>});
  table.push_back({key + ".likely", "of the sheet", what + ", likely metal left", 0, 1, memory,
                   by_word, at<Word, &Envelope::likely>});
  table.push_back({key + ".most", "of the sheet", what + ", most metal left", 0, 1, memory, by_word,
                   at<Word, &Envelope::most>});
}

template <std::size_t... Words>
void add_words(std::vector<Constant>& table, std::index_sequence<Words...>) {
  (add_word<Words>(table), ...);
}

void add_readings(std::vector<Constant>& table) {
  const char* rectangular = "rectangular; sheet tolerance, EN 10131:2006 Table 1, is 5 to 8 %";
  table.insert(
      table.end(),
      {
          {"prior-scatter", "mm", "repeatability of one reading before any was taken", .005, .5,
           memory, "field repeatability on thin old sheet: .05 mm at best",
           at<&Rules::prior_scatter_mm>},
          {"prior-degrees", "", "degrees of freedom the prior scatter is worth", 1, 100, memory,
           "weight of the prior in the pool", at<&Rules::prior_degrees>},
          {"scatter-limit", "mm", "readings of one place further apart are asked about", .05, 2,
           memory, "several times the usual repeatability", at<&Rules::scatter_limit_mm>},
          {"gauge-uncertainty", "mm", "standard uncertainty of a gauge whose own isn't given", .005,
           .5, memory, "thin-range probes on old sheet", at<&Rules::gauge_uncertainty_mm>},
          {"pair-baseline", "of the sheet", "half-width added to the pair's reference", .01, .3,
           published, "sheet tolerance, EN 10131:2006 Table 1 (5 to 8 %)",
           at<&Rules::pair_half_share>},
          {"survey-sheet", "of the sheet", "half-width of a sheet given in the survey", .01, .5,
           practice, rectangular, at<&Rules::survey_sheet_half_share>},
          {"plan-sheet", "of the sheet", "half-width of the body plan's sheet", .01, .5, practice,
           rectangular, at<&Rules::plan_sheet_half_share>},
          {"echo-factor", "", "coating read as metal by a single-echo gauge", 1, 4, published,
           "ratio of sound speeds in steel and paint (gauge application notes)",
           at<&Rules::echo_factor>},
          {"film-scatter", "", "scatter of film over a zone before any was read, of its median",
           .01, 1, memory, "film varies within one panel", at<&Rules::film_prior_share>},
          {"film-degrees", "", "degrees of freedom that this scatter is worth", 1, 100, memory,
           "weight of the prior in the pool", at<&Rules::film_prior_degrees>},
          {"echo-film-limit", "um", "thicker film isn't paint; the echo isn't corrected", 100, 5000,
           practice, "repaint 200 to 500 um", at<&Rules::echo_film_limit_um>},
          {"too-thick", "of the sheet", "thicker readings aren't one sheet", 1.05, 3, practice,
           "a plate or a double skin", at<&Rules::too_thick>},
          {"too-thick.least", "of the sheet", "least metal under a plate", 0, 1, memory,
           "nothing is known of the sheet beneath", at<&Rules::too_thick_least>},
          {"pit-limit", "of the sheet", "metal to be left under a pit", .1, 1, published,
           "IMO 2011 ESP Code, Annex A Part B 8.2.1.3 (ship plating: 70 % must remain)",
           at<&Rules::pit_left_limit>},
          {"pit.most", "of the sheet", "a place pitted past that weighs at most", 0, 1, memory,
           "at least as bad as the limit", at<&Rules::pit_most>},
          {"pit-through.most", "of the sheet", "a place pitted through weighs at most", 0, 1,
           memory, "at least as bad as weak", at<&Rules::pit_through_most>},
      });
}

void add_looks(std::vector<Constant>& table) {
  // Without the last word, hole: no rule gives metal to a hole.
  add_words(table, std::make_index_sequence<static_cast<std::size_t>(survey::Rust::hole)>());
  table.push_back({"firm.least", "of the sheet", "metal that is firm under the thumb", 0, 1, memory,
                   by_hand, at<&Rules::firm_least>});
  add<&Rules::gives>(table, "gives", "metal that gives or crunches", by_hand);
  add<&Rules::breaks>(table, "breaks", "metal that breaks or lets the probe in", by_hand);
  add<&Rules::dull>(table, "dull", "metal that sounds dull", by_hand);
  add<&Rules::stuffed>(table, "stuffed", "metal behind foam, paper, board, mesh or cement",
                       "metal behind such a filling isn't there until somebody shows it");
  table.insert(
      table.end(),
      {
          {"thick-coat.least", "of the sheet", "least metal under a coat that no magnet holds on",
           0, 1, memory, "filler stands where metal is gone", at<&Rules::thick_coat_least>},
          {"pinhole.most", "of the sheet", "a pinhole in sound metal weighs at most", 0, 1, memory,
           "at the limit: it is to be welded up", at<&Rules::pinhole_most>},
          {"crack.most", "of the sheet", "a cracked place weighs at most", 0, 1, memory,
           "past the limit whatever its metal", at<&Rules::crack_most>},
          {"crack-on-mount.most", "of the sheet", "a place cracked on, into or near a mount", 0, 1,
           memory, "it grows with every load", at<&Rules::crack_on_mount_most>},
          {"seen-bare.least", "of the sheet", "nothing found on bare metal", 0, 1, memory,
           "what a look can miss", at<&Rules::least_bare>},
          {"seen-coated.least", "of the sheet", "nothing found through paint or a scope", 0, 1,
           memory, "what a look can miss", at<&Rules::least_coated>},
          {"seen-part.least", "of the sheet", "nothing found, seen in part", 0, 1, memory,
           "the rest isn't known", at<&Rules::least_part>},
          {"inside-not-seen.least", "of the sheet", "nothing found, inside not seen", 0, 1, memory,
           "boxes rust from inside (trade literature)", at<&Rules::least_inside_not_seen>},
      });
}

void add_limits(std::vector<Constant>& table) {
  table.insert(
      table.end(),
      {
          {"sound-limit", "of the sheet", "metal left that counts as whole", .5, 1, memory,
           "thickness tolerance of new sheet is 5 to 8 % (EN 10131:2006 Table 1)",
           at<&Rules::sound_limit>},
          {"repair-limit", "of the sheet", "metal left that load-bearing sheet must keep", .5, 1,
           published,
           "US Army TB 9-2510-242-40 (vehicle frame members: up to 15 % loss tolerated); no limit "
           "is published for car body sheet",
           at<&Rules::repair_limit>},
          {"weak-limit", "of the sheet", "below this metal is weak", .1, .9, memory,
           "about where sheet gives under hand or tool", at<&Rules::weak_limit>},
          {"near-radius", "mm", "load-bearing metal this near a mounting is judged with it", 50,
           1000, published,
           "UK MOT inspection manual, cars, Appendix A section 2 (prescribed areas: 30 cm)",
           at<&Rules::near_radius_mm>},
          {"on-mount", "mm", "so near on a mount's own part any hole counts", 10, 1000, memory,
           "a small part that the load hangs on", at<&Rules::on_mm>},
          {"into-mount", "mm", "so near in a part that takes a mount's load weak metal counts", 10,
           1000, memory, "the load has spread beyond", at<&Rules::into_mm>},
          {"tank-strap", "mm", "so near a tank's strap its mounting must hold", 10, 1000, memory,
           "a tank that drops is a fire on the road (common practice)", at<&Rules::tank_mm>},
          {"gap-moves", "mm", "a door gap that moves so much on the lift", 1, 20, practice,
           "a shell that bends has lost its sill", at<&Rules::gap_moves_mm>},
          {"pinhole", "mm", "a hole no larger, in sound metal, is a pinhole", 1, 50, memory,
           "welded up, or a small piece let in", at<&Rules::pinhole_mm>},
          {"pinholes", "", "more of them together are a hole", 1, 20, memory, "",
           at<&Rules::pinholes>},
          {"pinholes-within", "mm", "pinholes so near count together", 10, 1000, memory, "",
           at<&Rules::pinholes_mm>},
          {"section-limit", "of wall metal", "under it a load box's section is gone", .1, 1, memory,
           "is there still a sill? In a practitioner's cases .46 to .61 gone, .82 and more to mend",
           at<&Rules::section_limit>},
          {"section-along", "mm", "places of a box so near along it weaken one section", 10, 1000,
           memory, "", at<&Rules::section_along_mm>},
          {"section-place", "mm", "a layer is gone where a weak place is as large", 1, 500, memory,
           "", at<&Rules::section_place_mm>},
          {"wall-reach", "mm", "a place so near a wall of a box lies in it", 0, 500, memory, "",
           at<&Rules::wall_reach_mm>},
          {"hole-size", "mm", "side of a hole whose size wasn't recorded", 1, 500, memory, "",
           at<&Rules::hole_mm>},
          {"unsized-area", "of the zone", "area of a spot whose size wasn't recorded", 0, 1, memory,
           "", at<&Rules::unsized_area_share>},
          {"unsized-length", "of the zone", "length of a spot whose size wasn't recorded", 0, 1,
           memory, "", at<&Rules::unsized_length_share>},
          {"coverage-limit", "of main area", "to be seen before anything is called sound", .1, 1,
           memory, "", at<&Rules::coverage_limit>},
          {"scope-share", "of the area", "what a look through a scope counts", 0, 1, memory, "",
           at<&Rules::scope_share>},
          {"film-factory", "um", "greatest film of factory paint", 50, 1000, practice,
           "factory paint 90 to 180 um", at<&Rules::film_factory_um>},
          {"film-repainted", "um", "greatest film of repaint", 50, 2000, practice,
           "repaint 200 to 500 um", at<&Rules::film_repainted_um>},
          {"film-heavy", "um", "thicker: filler is likely", 100, 10000, practice,
           "over about 1000 um filler or body repair; lead-loaded seams read thick too",
           at<&Rules::film_heavy_um>},
      });
}

void add_burden(std::vector<Constant>& table) {
  const char* own = "this method's own weighing";
  table.insert(
      table.end(),
      {
          {"damage.sound", "", "damage at the sound limit", 0, 1, memory, own,
           at<&Rules::damage_at_sound>},
          {"damage.limit", "", "damage at the repair limit", 0, 1, memory, own,
           at<&Rules::damage_at_limit>},
          {"damage.weak", "", "damage at the weak limit", 0, 1, memory, own,
           at<&Rules::damage_at_weak>},
          {"spread-base", "", "part of the damage that counts however short the spot", 0, 1, memory,
           own, at<&Rules::spread_base>},
          {"exponent", "", "how near the weakest link the structure is judged", 1, 50, memory, own,
           at<&Rules::exponent>},
          {"local-weight", "", "weight of a local zone; a main zone has 1", 0, 1, memory, own,
           at<&Rules::local_weight>},
          {"unseen.high", "", "damage an unseen zone may have, at the high end", 0, 1, memory, own,
           at<&Rules::unseen_damage>},
          {"unseen-neighbour-good.high", "", "the same where pair or neighbour was found good", 0,
           1, memory, own, at<&Rules::unseen_damage_neighbour_good>},
          {"skin-damage", "", "weight of depth on skin", 0, 1, memory, own,
           at<&Rules::skin_damage_factor>},
          {"skin-holed", "", "a holed skin zone weighs at least", 0, 1, memory, own,
           at<&Rules::skin_holed>},
          {"skin-in-shell", "", "what skin adds to the shell's burden", 0, 1, memory, own,
           at<&Rules::skin_in_shell>},
          {"repair-unknown.least", "of the sheet", "repair whose joint isn't known, least", 0, 1,
           memory, own, at<&Rules::unknown_repair_least>},
      });
  add<&Rules::bad_repair>(table, "repair-not-relied-on", "repair that can't be relied on", own);
}

void add_years(std::vector<Constant>& table) {
  const char* band = "working bands of the trade, for planning only; worst place, both faces";
  const char* often = "how often cars so kept are looked over";
  table.insert(
      table.end(),
      {
          {"rate-stored.low", "mm", "lost a year, stored dry, not measured", 0, 1, memory, band,
           at<&Rules::stored_low_mm>},
          {"rate-stored.high", "mm", "the same at most", 0, 2, memory, band,
           at<&Rules::stored_high_mm>},
          {"rate-dry-season.low", "mm", "lost a year, driven in the dry season, not measured", 0, 1,
           memory, band, at<&Rules::dry_season_low_mm>},
          {"rate-dry-season.high", "mm", "the same at most", 0, 2, memory, band,
           at<&Rules::dry_season_high_mm>},
          {"rate-all-weather.low", "mm", "lost a year, driven all year, not measured", 0, 1, memory,
           band, at<&Rules::all_weather_low_mm>},
          {"rate-all-weather.high", "mm", "the same at most", 0, 2, memory, band,
           at<&Rules::all_weather_high_mm>},
          {"rate-salted.low", "mm", "lost a year, driven on salted roads, not measured", 0, 1,
           memory, band, at<&Rules::salted_low_mm>},
          {"rate-salted.high", "mm", "the same at most", 0, 2, memory, band,
           at<&Rules::salted_high_mm>},
          {"next-stored", "", "months to the next survey at most, stored dry", 1, 120, memory,
           often, at<&Rules::next_stored_months>},
          {"next-dry-season", "", "the same, driven in the dry season", 1, 120, practice, often,
           at<&Rules::next_dry_season_months>},
          {"next-all-weather", "", "the same, driven all year", 1, 120, practice, often,
           at<&Rules::next_all_weather_months>},
          {"next-salted", "", "the same, driven on salted roads", 1, 120, practice, often,
           at<&Rules::next_salted_months>},
          {"grown", "", "times its size, from which a place nobody measured is called worse", 1, 10,
           memory, "sizes are taken by tape, and edges of rust are judged", at<&Rules::grown>},
      });
}

void add_questions(std::vector<Constant>& table) {
  table.insert(
      table.end(),
      {
          {"ask.readings", "", "fewer readings on the main structure are asked about", 0, 100,
           practice, "10 to 14 stations a side are usual", at<&Rules::ask_readings>},
          {"ask.repeats", "", "as many equal readings at one place are asked about", 2, 100, memory,
           "repeated readings on old sheet differ in hundredths", at<&Rules::ask_repeats>},
          {"ask.far", "mm", "a place further outside its zone is asked about", 0, 2000, memory,
           "a slip of the tape, or a panel of another car", at<&Rules::ask_far_mm>},
          {"ask.fresh", "", "years; younger wax is asked about", 0, 10, memory,
           "wax is renewed every second winter", at<&Rules::ask_fresh_years>},
          {"ask.film-zones", "", "with film read on fewer zones, none is called unlike the rest", 2,
           50, memory, "a car's own paint is known from several panels",
           at<&Rules::ask_film_zones>},
          {"ask.film-unlike", "",
           "a panel's film this far from the car's, in the car's own spread, is "
           "asked about",
           1, 20, memory, "modified z-score, Iglewicz and Hoaglin 1993",
           at<&Rules::ask_film_unlike>},
          {"ask.film-patch", "", "times a zone's own film at one place is asked about", 1, 20,
           practice, "filler hides in a small part of a panel", at<&Rules::ask_film_patch>},
          {"ask.gap", "mm", "change of a gap between wheels and lift that is asked about", 0, 20,
           practice, "a few mm of change tell of a weak middle", at<&Rules::ask_gap_mm>},
          {"ask.film-thicker", "", "times the film of years before that is asked about", 1.1, 20,
           memory, "a coat of paint adds less; underseal and filler more",
           at<&Rules::ask_film_thicker>},
      });
}

}  // namespace

std::string_view word(Standing standing) {
  switch (standing) {
    case Standing::published:
      return "published";
    case Standing::practice:
      return "common practice";
    case Standing::memory:
      return "memory";
  }
  return "";
}

const std::vector<Constant>& constants() {
  static const std::vector<Constant> table = [] {
    std::vector<Constant> all;
    add_readings(all);
    add_looks(all);
    add_limits(all);
    add_burden(all);
    add_years(all);
    add_questions(all);
    return all;
  }();
  return table;
}

const Constant& constant(std::string_view key) {
  const auto found = std::ranges::find(constants(), key, &Constant::key);
  if (found == constants().end()) throw std::logic_error(fmt::format("no constant \"{}\"", key));
  return *found;
}

double value(const Rules& rules, const Constant& constant) {
  Rules copy = rules;
  return constant.of(copy);
}

Written written(const Constant& constant) {
  if (constant.unit == "mm") return Written::length;
  if (constant.unit == "um") return Written::film;
  return constant.unit.empty() ? Written::number : Written::share;
}

std::string value_text(const Constant& constant, double value) {
  if (written(constant) == Written::share)
    return fmt::format("{:.10g} % {}", 100 * value, constant.unit);
  return constant.unit.empty() ? fmt::format("{}", value)
                               : fmt::format("{} {}", value, constant.unit);
}

namespace {

// As value_text, but what a share is of is said once.
std::string default_text(const Constant& constant) {
  const double was = value(Rules{}, constant);
  return written(constant) == Written::share ? fmt::format("{:.10g} %", 100 * was)
                                             : value_text(constant, was);
}

// Empty where it is at its default.
std::string change(const Rules& rules, const Constant& constant) {
  const double now = value(rules, constant), was = value(Rules{}, constant);
  if (now == was) return "";
  return fmt::format("{} {} (default {})", constant.key, value_text(constant, now),
                     default_text(constant));
}

}  // namespace

std::vector<std::string> changed(const Rules& rules) {
  std::vector<std::string> lines;
  for (const Constant& each : constants())
    if (std::string line = change(rules, each); !line.empty()) lines.push_back(std::move(line));
  return lines;
}

std::vector<std::string> changed(const Rules& rules, std::span<const std::string_view> keys) {
  std::vector<std::string> lines;
  for (const std::string_view key : keys)
    if (std::string line = change(rules, constant(key)); !line.empty())
      lines.push_back(std::move(line));
  return lines;
}

}  // namespace tinworm::rules
