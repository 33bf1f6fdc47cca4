// However a survey is written down, in millimetres or inches and thou, its zones and findings in
// whatever order, it comes to the same: tried on random surveys with a fixed seed, read as a user
// types them.
#include <algorithm>
#include <cmath>
#include <random>

#include <fmt/format.h>
#include <fmt/ranges.h>
#include <gtest/gtest.h>

#include "body/built_in.hpp"
#include "body/reader.hpp"
#include "survey/reader.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::weighing {
namespace {

constexpr int surveys = 1000;

body::PlanPtr saloon() {
  for (const body::BuiltIn& each : body::built_in_plans())
    if (each.name == "two-door-saloon")
      return std::make_shared<const body::Plan>(*body::read_plan(each.yaml).plan);
  return nullptr;
}

enum class Spelling { millimetres, inches };
enum class Order { forward, backward };

// Lengths in quarters of an inch and sheets in thou, so that both spellings are exact.
class Writer {
 public:
  Writer(unsigned seed, Spelling spelling, Order order, const body::Plan& plan)
      : random_(seed), spelling_(spelling), order_(order), plan_(plan) {}

  std::string survey() {
    std::vector<std::string> zones, bare, hidden;
    for (const body::Zone& zone : plan_.zones) {
      const int fate = below(10);
      if (fate == 0) {
        hidden.push_back(std::to_string(zone.number));
        continue;
      }
      bare.push_back(std::to_string(zone.number));
      if (fate < 4) zones.push_back(zone_text(zone));
    }
    turn(zones);
    turn(bare);
    return fmt::format(
        "survey: 1\nbody: two-door-saloon 1\nunits: {}\ncar: {{name: Wherry 1200, built: 1967}}\n"
        "visit: {{date: 2025-04-12, reason: purchase, interest: none}}\n"
        "gauges:\n  metal: {{uncertainty: {}, coating: removed}}\n"
        "seen:\n  bare: {}\n{}zones:\n{}",
        spelling_ == Spelling::inches ? "inch" : "mm",
        spelling_ == Spelling::inches ? "2 thou" : "0.0508 mm", fmt::join(bare, " "),
        hidden.empty() ? "" : fmt::format("  hidden: {{{}: carpet}}\n", fmt::join(hidden, " ")),
        fmt::join(zones, ""));
  }

 private:
  int below(int n) { return static_cast<int>(random_() % static_cast<unsigned>(n)); }

  void turn(std::vector<std::string>& lines) const {
    if (order_ == Order::backward) std::ranges::reverse(lines);
  }

  std::string quarters(int count) const {
    return spelling_ == Spelling::inches ? fmt::format("{:.2f}", .25 * count)
                                         : fmt::format("{:.2f}", 6.35 * count);
  }

  std::string thou(int count) const {
    return spelling_ == Spelling::inches ? fmt::format("{:.3f}", .001 * count)
                                         : fmt::format("{:.4f}", .0254 * count);
  }

  std::string readings(int middle, int spread) {
    std::vector<std::string> all;
    for (int n = 1 + below(4); n > 0; --n) all.push_back(thou(middle + below(spread)));
    turn(all);
    return fmt::format("{}", fmt::join(all, " "));
  }

  std::string at(const body::Zone& zone) {
    std::string text;
    const std::pair<char, geometry::Interval> axes[] = {
        {'x', zone.extent.x}, {'y', zone.extent.y}, {'z', zone.extent.z}};
    for (const auto& [axis, extent] : axes) {
      const int first = static_cast<int>(std::ceil(extent.low / 6.35));
      const int last = static_cast<int>(std::floor(extent.high / 6.35));
      const int pick = below(1000);
      if (last >= first)
        text += fmt::format("{} {} ", axis, quarters(first + pick % (last - first + 1)));
    }
    return text.empty() ? "" : "at " + text.substr(0, text.size() - 1) + ", ";
  }

  std::string spot_text(const body::Zone& zone, int index) {
    static const char* const rusts[] = {"surface", "pitting", "scale",
                                        "seam",    "blister", "contact"};
    static const char* const hands[] = {"", "", "firm, ", "gives, ", "rings, ", "dull, "};
    const int sheet = static_cast<int>(zone.sheet_mm / .0254);
    std::string text = fmt::format("      - place {}: ", index);
    if (below(4) != 0) text += at(zone);
    text += fmt::format("{}, {}", rusts[below(6)], hands[below(6)]);
    if (below(2) == 0) text += fmt::format("metal {}, ", readings(sheet * 6 / 10, sheet * 4 / 10));
    if (below(6) == 0) text += fmt::format("pit {}, ", thou(1 + below(sheet)));
    if (below(8) == 0) text += fmt::format("hole {0}x{0}, ", quarters(1 + below(8)));
    return text + fmt::format("{}x{}\n", quarters(8 + below(30)), quarters(8 + below(8)));
  }

  std::string zone_text(const body::Zone& zone) {
    const int sheet = static_cast<int>(zone.sheet_mm / .0254);
    std::string text = fmt::format("  {}:\n", zone.number);
    const bool has_inside = zone.build == body::Build::box || zone.build == body::Build::layered;
    if (below(2) == 0 && has_inside) text += "    inside: scoped\n";
    if (below(2) == 0) text += fmt::format("    reference: {}\n", readings(sheet - 1, 3));
    std::vector<std::string> spots;
    for (int n = 1 + below(3); n > 0; --n) spots.push_back(spot_text(zone, n));
    turn(spots);
    return text + fmt::format("    found:\n{}", fmt::join(spots, ""));
  }

  std::mt19937 random_;
  Spelling spelling_;
  Order order_;
  const body::Plan& plan_;
};

std::optional<Result> weighed(const std::string& text, const body::PlanPtr& plan) {
  const survey::Reading reading = survey::read_survey(text, [&](std::string_view) { return plan; });
  EXPECT_TRUE(reading.survey) << yaml::to_text(reading.problems, "survey", text);
  if (!reading.survey) return std::nullopt;
  return weigh(*reading.survey, {});
}

void expect_span(const Span& a, const Span& b) {
  EXPECT_NEAR(a.low, b.low, 1e-9);
  EXPECT_NEAR(a.value, b.value, 1e-9);
  EXPECT_NEAR(a.high, b.high, 1e-9);
}

std::vector<std::string> order_of(const Result& result) {
  std::vector<std::string> lines;
  for (const Spot* spot : result.ranked())
    lines.push_back(fmt::format("{} {}: {} {} {}", spot->zone, spot->name, word(spot->step_high),
                                word(spot->step), word(spot->step_low)));
  for (const OpenUp& each : result.open_up)
    lines.push_back(fmt::format("open {}: {}, {}", each.zone, word(each.could_become), each.rule));
  for (const Reason& each : result.reasons)
    lines.push_back(fmt::format("{} {}: {}", each.zone, each.spot, each.rule));
  return lines;
}

void expect_same(const Result& a, const Result& b) {
  EXPECT_EQ(word(a.verdict), word(b.verdict));
  EXPECT_EQ(word(a.could_be), word(b.could_be));
  EXPECT_EQ(order_of(a), order_of(b));
  for (const auto of : {&Result::structure, &Result::skin, &Result::shell})
    expect_span({(a.*of).low, (a.*of).value.value_or(-1), (a.*of).high},
                {(b.*of).low, (b.*of).value.value_or(-1), (b.*of).high});
  for (std::size_t i = 0; i < a.zones.size(); ++i) {
    ASSERT_EQ(a.zones[i].metal.has_value(), b.zones[i].metal.has_value());
    if (a.zones[i].metal) expect_span(a.zones[i].metal->weighed, b.zones[i].metal->weighed);
    expect_span(a.zones[i].weight, b.zones[i].weight);
  }
  for (std::size_t i = 0; i < a.boxes.size(); ++i) {
    ASSERT_EQ(a.boxes[i].section.has_value(), b.boxes[i].section.has_value());
    if (a.boxes[i].section) expect_span(a.boxes[i].section->left, b.boxes[i].section->left);
  }
}

void expect_as_in_millimetres(Spelling spelling, Order order) {
  const body::PlanPtr plan = saloon();
  int kept_parked = 0, other = 0;
  for (unsigned seed = 0; seed < surveys && !testing::Test::HasFailure(); ++seed) {
    const std::string one = Writer(seed, Spelling::millimetres, Order::forward, *plan).survey();
    const std::string two = Writer(seed, spelling, order, *plan).survey();
    const auto a = weighed(one, plan), b = weighed(two, plan);
    ASSERT_TRUE(a && b);
    SCOPED_TRACE(fmt::format("survey {}:\n{}\nas\n{}", seed, one, two));
    expect_same(*a, *b);
    (a->verdict == Verdict::keep_parked ? kept_parked : other) += 1;
  }
  EXPECT_GT(kept_parked, surveys / 25);
  EXPECT_GT(other, surveys / 25);
}

TEST(Spelling, InchesAndThouChangeNothing) {
  expect_as_in_millimetres(Spelling::inches, Order::forward);
}

TEST(Spelling, TheOrderOfZonesFindingsAndReadingsChangesNothing) {
  expect_as_in_millimetres(Spelling::millimetres, Order::backward);
}

}  // namespace
}  // namespace tinworm::weighing
