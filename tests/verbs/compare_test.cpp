#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <fmt/format.h>

#include "verbs/program.hpp"

namespace tinworm::verbs {
namespace {

using nlohmann::json;

std::string survey(const std::string& date, const std::string& rest,
                   const std::string& body = "two-door-saloon 1") {
  return fmt::format(
      "survey: 1\nbody: {}\ncar: {{name: Wherry}}\nvisit: {{date: {}}}\n"
      "gauges: {{metal: {{name: probe, uncertainty: 0.05 mm, coating: removed}}}}\n{}",
      body, date, rest);
}

std::string sill(const std::string& readings) {
  return "seen: {bare: 51-56}\nzones:\n  51:\n    reference: 1.00 1.01\n    found:\n      - rear "
         "end: "
         "none, metal " +
         readings + "\n";
}

struct Refused {
  std::string name, arguments;
  int status;
  std::string messages;
};

std::ostream& operator<<(std::ostream& out, const Refused& refused) {
  return out << refused.name;
}

class CompareRefuses : public testing::TestWithParam<Refused> {};

TEST_P(CompareRefuses, WithTheWholeReason) {
  const Workshop workshop;
  workshop.put("a.yaml", survey("2017-04-08", sill(".98 .99")));
  workshop.put("b.yaml", survey("2025-04-12", sill(".90 .91")));
  workshop.put("copy.yaml", survey("2017-04-08", sill(".98 .99")));
  workshop.put("same-day.yaml", survey("2017-04-08", sill(".97 .98")));
  workshop.put("same-year.yaml", survey("2017", sill(".97 .98")));
  workshop.put("other.yaml", survey("2021-01-01", "seen: {bare: 51}\n", "small-body 2"));
  const Ended ended = workshop.run(GetParam().arguments);
  EXPECT_EQ(ended.status, GetParam().status);
  EXPECT_EQ(ended.messages, GetParam().messages);
  EXPECT_EQ(ended.results, "");
}

INSTANTIATE_TEST_SUITE_P(
    Table, CompareRefuses,
    testing::Values(
        Refused{"One", "compare a.yaml", 2,
                "tinworm compare: takes two surveys or more of one car, not one\n"
                "Name them, or a folder that holds them: tinworm compare OLD.yaml NEW.yaml\n"},
        Refused{"OneThatIsMissing", "compare none.yaml", 3,
                "tinworm: none.yaml: no such file (did you mean \"good.yaml\"?)\n"},
        Refused{"None", "compare", 2,
                "tinworm compare: takes two surveys or more of one car\n"
                "Name them, or a folder that holds them: tinworm compare OLD.yaml NEW.yaml\n"},
        Refused{"Twice", "compare a.yaml b.yaml a.yaml", 2,
                "tinworm compare: a.yaml is named twice\nName each survey once.\n"},
        Refused{"Copy", "compare a.yaml copy.yaml", 2,
                "tinworm compare: a.yaml and copy.yaml are the same survey, byte for byte\n"
                "Leave one out.\n"},
        Refused{"SameDay", "compare a.yaml b.yaml same-day.yaml", 2,
                "tinworm compare: a.yaml and same-day.yaml have the same date, 2017-04-08\n"
                "A comparison needs surveys of different dates.\n"},
        Refused{
            "WhichCameFirst", "compare a.yaml same-year.yaml", 2,
            "tinworm compare: a.yaml of 2017-04-08 and same-year.yaml of 2017: which came first "
            "isn't told\nGive the month or day of both visits.\n"},
        Refused{"AllAtOnce", "compare same-day.yaml a.yaml other.yaml --panels panels", 2,
                "tinworm compare: same-day.yaml and a.yaml have the same date, 2017-04-08\n"
                "  same-day.yaml is of the body two-door-saloon, other.yaml of small-body\n"
                "A comparison needs surveys of different dates. Only surveys of one kind of body "
                "have zones to compare.\n"},
        Refused{"Mistakes", "compare a.yaml bad.yaml --panels panels", 1, bad_survey_problems},
        Refused{"Missing", "compare a.yaml none.yaml", 3,
                "tinworm: none.yaml: no such file (did you mean \"good.yaml\"?)\n"},
        Refused{"OverAnInput", "compare a.yaml b.yaml -o b.yaml", 2,
                "tinworm compare: b.yaml ends as surveys and body plans do; outputs never replace "
                "one\nGive it an ending of its own (text, json, csv, pdf, svg or png).\n"},
        Refused{"PaperOfText", "compare a.yaml b.yaml --paper a3", 2,
                "tinworm compare: --page, --paper and --width are for pictures\n"
                "Name one with -o: years.pdf, years.svg or years.png.\n"}),
    [](const auto& each) { return each.param.name; });

json compared(const Workshop& workshop, const std::string& files) {
  const Ended ended = workshop.run("compare " + files + " --format json");
  EXPECT_EQ(ended.status, 0) << ended.messages;
  return json::parse(ended.results, nullptr, false);
}

json zone(const json& document, int number) {
  for (const json& each : document["zones"])
    if (each["zone"] == number) return each;
  return {};
}

TEST(Compare, OrderOfFilesMakesNoDifference) {
  const Workshop workshop;
  workshop.put("a.yaml", survey("2017-04-08", sill(".98 .99")));
  workshop.put("b.yaml", survey("2021-04-08", sill(".94 .95")));
  workshop.put("c.yaml", survey("2025-04-12", sill(".90 .91")));
  for (const char* kind : {"text", "json", "csv"}) {
    const std::string as = std::string(" --format ") + kind;
    EXPECT_EQ(workshop.run("compare a.yaml b.yaml c.yaml" + as).results,
              workshop.run("compare c.yaml a.yaml b.yaml" + as).results);
  }
}

TEST(Compare, TwentySurveys) {
  const Workshop workshop;
  workshop.run("schema body", "mkdir years");
  for (int i = 0; i < 20; ++i)
    workshop.put(fmt::format("years/{}.yaml", 2005 + i),
                 survey(fmt::format("{}-05-01", 2005 + i),
                        sill(fmt::format("{0:.3f} {0:.3f}", 1.0 - .01 * i))));
  const json document = compared(workshop, "years");
  EXPECT_EQ(document["surveys"].size(), 20u);
  const json place = zone(document, 51)["spots"][0];
  EXPECT_EQ(place["change"], "worse");
  EXPECT_EQ(place["rate_mm_per_year"]["from"], "line");
  EXPECT_NEAR(place["rate_mm_per_year"]["value"].get<double>(), .01, 1e-4);
  EXPECT_EQ(place["records"].size(), 20u);
  const Ended text = workshop.run("compare years");
  EXPECT_NE(text.results.find("0.010 mm a year (0.008 to 0.012), by a line through 20 readings"),
            std::string::npos)
      << text.results;
}

// Of 51 to 56 the first survey saw 51 to 54, the second 53 to 56.
TEST(Compare, SurveysThatShareHalfTheirZones) {
  const Workshop workshop;
  workshop.put("a.yaml", survey("2017-04-08",
                                "seen: {bare: 51-54}\nzones:\n  51:\n    found:\n"
                                "      - rear end: scale\n"));
  workshop.put("b.yaml", survey("2025-04-12",
                                "seen: {bare: 53-56}\nzones:\n  55:\n    found:\n"
                                "      - rear end: scale\n"));
  const json document = compared(workshop, "a.yaml b.yaml");
  const std::vector<std::pair<int, std::string>> changes = {
      {51, "no-longer-visible"}, {52, "no-longer-visible"}, {53, "same"},          {54, "same"},
      {55, "newly-seen"},        {56, "newly-seen"},        {57, "not-comparable"}};
  for (const auto& [number, change] : changes)
    EXPECT_EQ(zone(document, number)["change"], change) << number;
  EXPECT_EQ(zone(document, 51)["spots"][0]["change"], "no-longer-visible");
  EXPECT_EQ(zone(document, 55)["spots"][0]["change"], "newly-seen");
}

TEST(Compare, TextIsAsItIs) {
  const Workshop workshop;
  workshop.put("a.yaml", survey("2017-04-08", "kept: {use: salted}\n" + sill(".98 .99")));
  workshop.put("b.yaml", survey("2025-04-12", "kept: {use: salted}\n" + sill(".90 .91")));
  const std::string text = workshop.run("compare a.yaml b.yaml").results;
  const auto has = [&](const std::string& part) {
    EXPECT_NE(text.find(part), std::string::npos) << "no \"" << part << "\" in\n" << text;
  };
  has("1 place worse, 0 repaired, 0 no longer visible, 0 newly seen, 0 the same within error.\n"
      "Wherry; 2 surveys, 2017-04-08 to 2025-04-12; body plan two-door-saloon 1\n");
  has("What got worse, the largest change first\n"
      "  - 51 outer sill, left, rear end: 0.08 mm lost since 2017-04-08 (0.00 to 0.16), 8 % of the "
      "sheet;\n    0.010 mm a year (0.000 to 0.020); to the limit of 0.85 mm: 2 years or more; to "
      "a "
      "hole: 46 years\n    or more\n");
  has("Next survey\n  - 2025-10: 6 months, as is usual for a car driven on salted roads\n");
  has("Rates and times are ranges for planning, no date of failure");
  has("Local law and licensed\ninspection decide. What wasn't seen is not known.\n");
}

// One line for what shares a change and a reason, by zones.
TEST(Compare, TextGathersPlacesByTheirReason) {
  const Workshop workshop;
  const std::string places =
      "zones:\n  51:\n    found:\n      - rear end: scale\n      - middle: scale\n  53:\n"
      "    found:\n      - rear end: scale\n";
  const std::string mended = places + "    repairs:\n      - let-in, seam-weld, 2019-05, sound\n";
  workshop.put("a.yaml", survey("2017-04-08", "seen: {bare: 51-56}\n" + places));
  workshop.put("b.yaml", survey("2021-04-08", "seen: {bare: 51-56}\n" + mended));
  const std::string text = workshop.run("compare a.yaml b.yaml").results;
  for (const char* part : {"Repaired\n  - repaired since 2017-04-08 (let-in of 2019-05): 53 sill "
                           "membrane, left (rear end)\n",
                           "Not comparable\n  - rust then and now, never measured: 51 outer sill, "
                           "left (rear end, middle)\n"})
    EXPECT_NE(text.find(part), std::string::npos) << "no \"" << part << "\" in\n" << text;
}

TEST(Compare, TellsFirstThatItMayNotBeOneCar) {
  const Workshop workshop;
  workshop.put("a.yaml", survey("2017-04-08", sill(".98 .99")));
  std::string other = survey("2021-04-08", sill(".98 .99"));
  other.replace(other.find("name: Wherry"), 12, "name: Coble");
  workshop.put("b.yaml", other);
  const std::string text = workshop.run("compare a.yaml b.yaml").results;
  EXPECT_NE(text.find("\nThese may be surveys of different cars: see the questions.\n\nSurveys\n"),
            std::string::npos)
      << text;
}

// A row for each zone, spot and survey, as many cells in each.
TEST(Compare, CsvIsEven) {
  const Workshop workshop;
  workshop.put("a.yaml", survey("2017-04-08", sill(".98 .99")));
  workshop.put("b.yaml", survey("2025-04-12", sill(".90 .91")));
  const std::string csv = workshop.run("compare a.yaml b.yaml --format csv").results;
  std::size_t lines = 0, cells = 0;
  for (std::size_t start = 0; start < csv.size(); ++lines) {
    const std::size_t end = csv.find("\r\n", start);
    const std::string line = csv.substr(start, end - start);
    std::size_t commas = 0;
    bool quoted = false;
    for (const char c : line) {
      quoted = quoted != (c == '"');
      commas += c == ',' && !quoted ? 1 : 0;
    }
    if (lines == 0) cells = commas;
    EXPECT_EQ(commas, cells) << line;
    start = end + 2;
  }
  const json document = compared(workshop, "a.yaml b.yaml");
  EXPECT_EQ(lines, 1 + 2 * document["zones"].size());
}

}  // namespace
}  // namespace tinworm::verbs
