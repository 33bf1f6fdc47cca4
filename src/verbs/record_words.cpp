#include "verbs/record_words.hpp"

#include <algorithm>
#include <array>

#include <fmt/format.h>

#include "verbs/picture.hpp"
#include "verbs/source_date.hpp"

namespace tinworm::verbs {
namespace {

constexpr std::array<std::string_view, 6> verbs_of_surveys = {"compare", "listing", "map",
                                                              "report",  "weigh",   "work"};
constexpr std::array<std::string_view, 6> with_value = {
    "--explain=", "--units=", "--page=", "--paper=", "--width=", "--as="};
constexpr std::array<std::string_view, 4> flags = {"--circles", "--missing-photos", "--private",
                                                   "--signed"};
constexpr std::string_view as = "--as=", source_date_word = "SOURCE_DATE_EPOCH=";

std::string units_word(quantity::Units units) {
  return units == quantity::Units::mm ? "--units=mm" : "--units=inch";
}

std::string paper_word(scene::Paper paper) {
  switch (paper) {
    case scene::Paper::a3:
      return "--paper=a3";
    case scene::Paper::letter:
      return "--paper=letter";
    case scene::Paper::a4:
      break;
  }
  return "--paper=a4";
}

Words start(const std::string& verb, Kind kind) {
  Words words{verb, fmt::format("{}{}", as, word(kind))};
  if (!is_picture(kind)) return words;
  if (const auto moment = source_date(verb))
    words.push_back(fmt::format("{}{}", source_date_word, moment->time_since_epoch().count()));
  return words;
}

void add_picture(Words& words, Kind kind, const PictureOptions& options) {
  if (!is_picture(kind)) return;
  if (kind != Kind::pdf) words.push_back(fmt::format("--page={}", word(options.sheet)));
  words.push_back(options.phone ? "--paper=phone" : paper_word(options.paper));
  if (kind == Kind::png) words.push_back(fmt::format("--width={}", options.width_px));
}

void add_flag(Words& words, bool given, const char* flag) {
  if (given) words.emplace_back(flag);
}

}  // namespace

Words words_of(const BodiesOptions& options) {
  Words words = start("bodies", options.to.kind);
  add_picture(words, options.to.kind, options.picture);
  return words;
}

Words words_of(const CompareOptions& options) {
  Words words = start("compare", options.to.kind);
  if (options.to.kind == Kind::text || is_picture(options.to.kind))
    words.push_back(units_word(options.units));
  add_picture(words, options.to.kind, options.picture);
  return words;
}

Words words_of(const ListingOptions& options) {
  Words words = start("listing", options.to.kind);
  add_picture(words, options.to.kind, options.picture);
  add_flag(words, options.signed_name, "--signed");
  return words;
}

Words words_of(const MapOptions& options) {
  Words words = start("map", options.to.kind);
  add_picture(words, options.to.kind, options.picture);
  add_flag(words, options.with_private, "--private");
  add_flag(words, options.circles, "--circles");
  return words;
}

Words words_of(const ReportOptions& options) {
  Words words = start("report", options.to.kind);
  words.push_back(units_word(options.units));
  words.push_back(paper_word(options.paper));
  add_flag(words, options.missing_photos, "--missing-photos");
  return words;
}

Words words_of(const WeighOptions& options) {
  Words words = start("weigh", options.to.kind);
  if (options.to.kind == Kind::text) words.push_back(units_word(options.units));
  if (!options.explain.empty()) words.push_back("--explain=" + options.explain);
  return words;
}

Words words_of(const WorkOptions& options) {
  Words words = start("work", options.to.kind);
  if (options.to.kind != Kind::json) words.push_back(units_word(options.units));
  if (options.to.kind == Kind::pdf) words.push_back(paper_word(options.paper));
  return words;
}

bool are_harmless(const Words& words) {
  const auto one_of = [](const auto& all, const std::string& text) {
    return std::ranges::find(all, text) != all.end();
  };
  return one_of(verbs_of_surveys, words.front()) && kind_in(words) &&
         std::all_of(words.begin() + 1, words.end(), [&](const std::string& each) {
           return one_of(flags, each) || each.starts_with(source_date_word) ||
                  std::ranges::any_of(with_value,
                                      [&](auto name) { return each.starts_with(name); });
         });
}

std::optional<Kind> kind_in(const Words& words) {
  const auto found = std::ranges::find_if(words, [](auto& each) { return each.starts_with(as); });
  return found == words.end() ? std::nullopt : kind_of(found->substr(as.size()));
}

std::string source_date_in(const Words& words) {
  for (const std::string& each : words)
    if (each.starts_with(source_date_word)) return each.substr(source_date_word.size());
  return "";
}

}  // namespace tinworm::verbs
