// Published worked examples through the command itself, on surveys made to carry their numbers:
// thickness in inches at 10 mm to the inch, so that they lie within what a survey may hold; rates
// and lives don't change by that.
#include <algorithm>
#include <chrono>
#include <cmath>
#include <fstream>
#include <set>
#include <sstream>

#include <fmt/format.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "outside/record.hpp"
#include "paths.hpp"
#include "verbs/program.hpp"

namespace tinworm::verbs {
namespace {

using nlohmann::json;

struct Visit {
  std::string date;
  double inches = 0;
};

std::string survey_of(const Visit& visit, double sheet_inches) {
  return fmt::format(
      "survey: 1\nbody: two-door-saloon 1\ncar: {{name: Wherry}}\nvisit: {{date: {}}}\n"
      "gauges: {{metal: {{name: probe, uncertainty: 0.05 mm, coating: removed}}}}\n"
      "seen: {{bare: 51}}\nzones:\n  51:\n    reference: {:.4f}\n    found:\n"
      "      - station: none, metal {:.5f}\n",
      visit.date, 10 * sheet_inches, 10 * visit.inches);
}

// The one place of a comparison.
json compared(const std::vector<Visit>& visits, double sheet_inches, double required_inches) {
  const Workshop workshop;
  std::string files;
  for (const Visit& visit : visits) {
    workshop.put(visit.date + ".yaml", survey_of(visit, sheet_inches));
    files += " " + visit.date + ".yaml";
  }
  workshop.put("rules.yaml", fmt::format("rules: 1\nrepair-limit: {:.8f}\nsound-limit: 99.9 %\n",
                                         required_inches / sheet_inches));
  const Ended ended = workshop.run("compare" + files + " --rules rules.yaml --format json");
  EXPECT_EQ(ended.status, 0) << ended.messages;
  const json document = json::parse(ended.results);
  for (const json& zone : document["zones"])
    if (zone["zone"] == 51) return zone["spots"][0];
  return {};
}

TEST(OverYears, Api510) {
  const std::string source = "API 510, 10th ed., 7.1.1, 7.2.1 (quoted)";
  const auto check = [&](const std::string& inputs, double published, const json& ours,
                         double scale, double tolerance) {
    ASSERT_TRUE(ours.is_number()) << inputs;
    outside::expect_published(source, inputs, published, ours.get<double>() / scale, tolerance);
  };

  const json fast = compared({{"2010-01-01", .413}, {"2015-01-01", .352}}, .5, .3);
  check(".413 to .352 in 5.0 y, in/y", .012, fast["rate_mm_per_year"]["value"], 10, .0005);

  const json short_long =
      compared({{"2009-01-01", .548}, {"2013-01-01", .5}, {"2014-01-01", .4}}, .5, .3);
  EXPECT_EQ(short_long["rate_mm_per_year"]["from"], "last-two");
  check(".5 to .4 in 1.0 y, short", .100, short_long["rate_mm_per_year"]["value"], 10, 1e-6);
  check("now .4, required .3, life y", 1.00, short_long["years_to_limit_at_rate"], 1, 1e-6);

  // 4.59 years between the last two: October 1998 to May 2003.
  const json four = compared(
      {{"1991-01-15", .500}, {"1995-05-15", .492}, {"1998-10-01", .477}, {"2003-05-04", .454}}, .5,
      .395);
  EXPECT_EQ(four["rate_mm_per_year"]["from"], "last-two");
  check(".500 .492 .477 .454, short", .005, four["rate_mm_per_year"]["short_term"], 10, .0005);
  check(".500 .492 .477 .454, long", .004, four["rate_mm_per_year"]["long_term"], 10, .0005);
  check("the same, required .395, life y", 11.774, four["years_to_limit_at_rate"], 1, .01);

  const json slow = compared({{"2000-01-01", .400}, {"2020-01-01", .260}}, .4, .24);
  check(".400 to .260 in 20 y", .007, slow["rate_mm_per_year"]["value"], 10, 1e-6);
  const json fifteen = compared({{"2005-01-01", .750}, {"2020-01-01", .675}}, .75, .5);
  check(".750 to .675 in 15 y", .005, fifteen["rate_mm_per_year"]["value"], 10, 1e-6);
  const json months = compared({{"2000-01-01", .565}, {"2004-06-02", .521}}, .6, .4);
  check(".565 to .521 in 4.42 y", .010, months["rate_mm_per_year"]["value"], 10, .0005);

  const json seven = compared({{"2010-01-01", .268}, {"2020-01-01", .198}}, .25, .150);
  check(".198, required .150, rate .007, y", 6.857, seven["years_to_limit_at_rate"], 1, .001);
  const json three = compared({{"2010-01-01", .241}, {"2020-01-01", .211}}, .25, .150);
  check(".211, required .150, rate .003, y", 20.3, three["years_to_limit_at_rate"], 1, .05);

  const json both =
      compared({{"2000-01-01", .750}, {"2007-01-01", .742}, {"2013-01-01", .718}}, .75, .5);
  EXPECT_EQ(both["rate_mm_per_year"]["from"], "last-two");
  check("short .742 to .718 over 6 y", .004, both["rate_mm_per_year"]["short_term"], 10, 1e-6);
  check("long .750 to .718 over 13 y", .00246, both["rate_mm_per_year"]["long_term"], 10, 2e-6);
}

// y of Norris as metal lost, 100 units to the mm; x as fifths of a year. Days are whole, which
// moves an x by 0.007 at most.
TEST(OverYears, Norris) {
  std::ifstream data(source_folder() + "/tests/outside/data/norris.csv");
  std::vector<std::pair<double, double>> points;
  for (std::string line; std::getline(data, line);) {
    std::replace(line.begin(), line.end(), ',', ' ');
    std::istringstream cells(line);
    double a = 0, b = 0;
    if (cells >> a >> b) points.emplace_back(a, b);
  }
  ASSERT_EQ(points.size(), 36u);
  // Columns are y, x.
  std::vector<Visit> visits;
  std::set<std::string> dates;
  for (const auto& [y, x] : points) {
    const int year = 1900 + static_cast<int>(x / 5);
    auto day = std::chrono::sys_days{std::chrono::year(year) / 1 / 1} +
               std::chrono::days(std::lround((x / 5 - std::floor(x / 5)) *
                                             (std::chrono::year(year).is_leap() ? 366 : 365)));
    const auto text = [](std::chrono::sys_days at) {
      const std::chrono::year_month_day d{at};
      return fmt::format("{:04}-{:02}-{:02}", int(d.year()), unsigned(d.month()),
                         unsigned(d.day()));
    };
    while (!dates.insert(text(day)).second) day += std::chrono::days(1);  // x = 0.3 stands twice
    visits.push_back({text(day), 1.05 - y / 1000});
  }
  const json place = compared(visits, 1.10, .6);
  outside::expect_published("NIST StRD Norris (read)", "slope, through compare", 1.00211681802045,
                            place["rate_mm_per_year"]["line"]["value"].get<double>() * 100 / 5,
                            2e-5);
}

}  // namespace
}  // namespace tinworm::verbs
