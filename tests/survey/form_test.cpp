// The form reads without a mistake, records nothing as it is, and keeps what it promises.
#include "survey/form.hpp"
#include "paths.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "bad_cases.hpp"
#include "survey/small_plan.hpp"

namespace tinworm::survey {
namespace {

using testing::HasSubstr;
using testing::Not;

const PartialDate day{2029, 5, 3};

Survey read_back(const std::string& text) {
  Reading reading = read_with_small_plan(text);
  EXPECT_EQ(yaml::to_text(reading.problems, "form", text), "");
  return reading.survey.value_or(Survey{});
}

Survey last_survey() {
  return read_back(
      file_text(std::filesystem::path(source_folder()) / "tests/cases/good/wherry-2025.yaml"));
}

// What is left when every blank is taken in and every remark is taken out.
std::string without_remarks(const FormLines& lines) {
  std::string text;
  for (const FormLine& line : lines) {
    if (line.text.starts_with("# ") || line.text.starts_with("  # ")) continue;
    text += line.text.substr(0, line.text.find("  # ")) + "\n";
  }
  return text;
}

TEST(Form, ReadsWithoutAMistakeAndRecordsNothing) {
  Form form;
  form.car = "Wherry 1200";
  form.date = day;
  const Survey survey = read_back(text_of(form_lines(*small_plan(), form)));
  EXPECT_EQ(survey.car.name, "Wherry 1200");
  EXPECT_EQ(survey.visit.date, day);
  EXPECT_TRUE(survey.seen.empty());
  EXPECT_TRUE(survey.zones.empty());
  EXPECT_TRUE(survey.own.empty());
}

TEST(Form, HoldsTheUnitsAsked) {
  Form form;
  form.car = "yes";  // a name that other readers take for truth
  form.date = day;
  form.units = quantity::Units::inch;
  const Survey survey = read_back(text_of(form_lines(*small_plan(), form)));
  EXPECT_EQ(survey.units, quantity::Units::inch);
  EXPECT_EQ(survey.car.name, "yes");
}

TEST(Form, NamesEveryZoneOnceWithItsStations) {
  Form form;
  form.car = "Wherry 1200";
  form.date = day;
  const body::PlanPtr plan = small_plan();
  const FormLines lines = form_lines(*plan, form);
  for (const body::Zone& zone : plan->zones) {
    const std::string key = fmt::format("#  {}:", zone.number);
    EXPECT_EQ(std::count_if(lines.begin(), lines.end(),
                            [&](const FormLine& line) { return line.text == key; }),
              1)
        << key;
  }
  EXPECT_THAT(text_of(lines),
              HasSubstr("#  51:\n"
                        "#    inside:                    # scoped | part | not-seen | hidden\n"
                        "#    drains:                    # open | blocked | plugged\n"
                        "#    reference:                 # sound metal of the same "
                        "sheet, three readings: 1.02 1.00 1.01\n"
                        "#    mark: {where: 25 above the seam}  # how to find a measured place "
                        "again\n"
                        "#    found:\n"
                        "#      - front end:\n"
                        "#      - middle:\n"
                        "#      - rear end:\n"));
}

TEST(Form, AfterAnEarlierSurveyKeepsNamesAndNotReadings) {
  const Survey before = last_survey();
  Form form;
  form.car = before.car.name;
  form.date = day;
  form.before = &before;
  const FormLines lines = form_lines(*before.body, form);
  const std::string text = text_of(lines);
  const Survey survey = read_back(text);
  EXPECT_EQ(survey.car.name, before.car.name);
  EXPECT_EQ(survey.car.built, before.car.built);
  EXPECT_EQ(survey.car.chassis_number, before.car.chassis_number);
  EXPECT_EQ(survey.car.owner, before.car.owner);
  EXPECT_FALSE(survey.car.odometer_km);
  EXPECT_EQ(survey.visit.date, day);
  EXPECT_FALSE(survey.visit.reason);
  EXPECT_EQ(survey.visit.by, "");
  EXPECT_TRUE(survey.zones.empty());
  EXPECT_TRUE(survey.price == Price{});
  for (const auto& [number, seen] : survey.seen) EXPECT_EQ(seen.word, SeenWord::not_fitted);
  for (const auto& [number, zone] : before.zones)
    for (const Spot& spot : zone.found) EXPECT_THAT(text, HasSubstr("      - " + spot.name + ":"));
  // Readings stand in remarks alone: nothing that a taken-away # would bring to life.
  EXPECT_THAT(without_remarks(lines), Not(HasSubstr("0.81")));
  EXPECT_THAT(text, HasSubstr("# last time: pitting, firm, dull, 180x60, metal 0.81 0.78"));
}

TEST(Form, FilledZonesTakeThePlaceOfBlanks) {
  Form form;
  form.car = "Wherry 1200";
  form.date = day;
  form.filled[51] = {{"    seen: bare", 2, "seen"}, {"    note: as new", 2, "note"}};
  const FormLines lines = form_lines(*small_plan(), form);
  const Survey survey = read_back(text_of(lines));
  EXPECT_EQ(survey.zones.at(51).note, "as new");
  const auto line = std::find_if(lines.begin(), lines.end(),
                                 [](const FormLine& one) { return one.column == "note"; });
  ASSERT_NE(line, lines.end());
  EXPECT_EQ(line->row, 2);
  EXPECT_EQ((line - 2)->text, "  51:");
}

}  // namespace
}  // namespace tinworm::survey
