#include "documents/remarks.hpp"

#include <algorithm>
#include <cmath>

#include <fmt/format.h>

#include "quantity/tyre.hpp"
#include "survey/told.hpp"

namespace tinworm::documents {
namespace {

constexpr double suspect_years = 6, replace_years = 10;  // common practice

// ", 24 years old"; empty where the code leaves it open.
std::string years_old(const survey::Also& item, const quantity::PartialDate& on) {
  const auto made = quantity::parse_tyre_code(item.code);
  const auto years = made ? quantity::age_years(*made, on) : std::nullopt;
  return years && *years >= 0 ? fmt::format(", {:.0f} years old", std::floor(*years)) : "";
}

}  // namespace

std::string remark(const survey::Also& item, const quantity::PartialDate& on) {
  std::string text = item.what;
  if (!item.code.empty()) text += fmt::format(" (code {}{})", item.code, years_old(item, on));
  if (!item.say.empty()) text += ": " + item.say;
  return text;
}

std::vector<const survey::Also*> before_use(const survey::Survey& survey) {
  std::vector<const survey::Also*> items;
  for (const survey::Also& item : survey.also)
    if (survey::is_before_use(item)) items.push_back(&item);
  std::ranges::stable_partition(items, [](const auto* item) { return is_at_once(*item); });
  return items;
}

std::string at_once_words(const survey::Survey& survey) {
  std::string words;
  for (const survey::Also& item : survey.also)
    if (is_at_once(item)) words += (words.empty() ? "" : "; ") + remark(item, survey.visit.date);
  return words.empty() ? "" : fmt::format("At once: {}.", words);
}

std::string tyre_age(const survey::Also& item, const quantity::PartialDate& on) {
  if (item.code.empty()) return "";
  const auto made = quantity::parse_tyre_code(item.code);
  if (!made) return "";
  const auto years = quantity::age_years(*made, on);
  if (!years)
    return fmt::format("made in {}: decade unknown, {:.0f} years old at the least; replace them",
                       made->text(), std::floor(on.middle_year() - 2000));
  if (*years < 0)
    return fmt::format("made in {}, after the survey: read the code again", made->text());
  std::string age = fmt::format("made in {}: {:.0f} years old", made->text(), std::floor(*years));
  if (*years > replace_years) return age + "; over 10: replace them whatever the tread";
  if (*years > suspect_years) return age + "; over 6: suspect, have them looked at";
  return age;
}

void write_remarks(Flow& flow, const survey::Survey& survey) {
  if (survey.also.empty()) return;
  flow.section("What else was seen", "also");
  std::vector<Row> rows;
  for (const survey::Also& item : survey.also)
    rows.push_back(
        {{item.what, item.say, tyre_age(item, survey.visit.date), when_text(item)}, "", "", false});
  flow.table({{"what", 1.2},
              {"as found", 2.2},
              {"age by the date code, on the day of the survey", 2.2},
              {"when", 1.2}},
             rows);
  flow.paragraph(
      "Tyres: four figures are week and year, from 2000 on (49 CFR 574.5); three figures are older "
      "and leave the decade open. Suspect over 6 years, to be replaced over 10 (common practice).",
      note_style);
}

}  // namespace tinworm::documents
