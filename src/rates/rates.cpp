#include "rates/rates.hpp"

#include <array>
#include <utility>

#include <fmt/format.h>

namespace tinworm::rates {
namespace {

constexpr auto practice = Standing::practice;
constexpr auto memory = Standing::memory;

template <double Rates::*Member>
double& at(Rates& rates) {
  return rates.*Member;
}
template <Range Rates::*Member>
Range& at(Rates& rates) {
  return rates.*Member;
}
template <std::size_t Index>
Range& job_at(Rates& rates) {
  return rates.job[Index];
}

template <double Rates::*Member>
Rate single(const char* key, const char* unit, const char* what, double least, double most,
            Standing standing, const char* source) {
  return {key, unit, what, least, most, standing, source, at<Member>, nullptr};
}
template <Range Rates::*Member>
Rate range(const char* key, const char* unit, const char* what, double least, double most,
           Standing standing, const char* source) {
  return {key, unit, what, least, most, standing, source, nullptr, at<Member>};
}

struct JobRow {
  std::string_view key;
  const char* what;
  Range hours;
  const char* source;
};

constexpr const char* usual = "usual hours of the trade; likely: their middle";

// By Job. Figures from memory of the trade, none measured.
constexpr auto job_rows = std::to_array<JobRow>({
    {"jacking-point", "a jacking point", {3, 4.5, 6}, usual},
    {"outer-sill", "an outer sill, one side", {8, 12, 16}, usual},
    {"inner-sill",
     "an inner sill or membrane, one side",
     {6, 10, 14},
     "a saloon's whole sill, 14 to 30 h, less its outer one"},
    {"floor", "half a floor", {8, 12, 16}, usual},
    {"cross-member", "a floor cross-member or outrigger", {4, 6, 8}, usual},
    {"spring-hanger-front", "a front spring hanger or axle-link box", {6, 10, 14}, usual},
    {"spring-hanger-rear", "a rear spring hanger or leg end", {5, 8.5, 12}, usual},
    {"chassis-leg", "a section of a chassis leg", {10, 17.5, 25}, usual},
    {"strut-top", "a strut top or damper mounting", {8, 12, 16}, usual},
    {"inner-wing", "an inner wing", {12, 18.5, 25}, usual},
    {"post-foot", "the foot of a post", {6, 9, 12}, usual},
    {"bulkhead-corner", "a corner of bulkhead or toe-board", {8, 14, 20}, usual},
    {"scuttle", "a scuttle, screen out", {15, 27.5, 40}, usual},
    {"screen-corner", "a corner of a screen frame", {6, 10.5, 15}, usual},
    {"inner-arch", "an inner wheel arch", {6, 10, 14}, usual},
    {"outer-arch", "an outer wheel arch", {6, 9, 12}, usual},
    {"rear-wing", "the lower part of a rear wing", {6, 9, 12}, usual},
    {"front-wing", "the bottom of a front wing", {4, 6, 8}, usual},
    {"door-bottom", "the bottom of a door", {6, 8, 10}, usual},
    {"boot-floor", "part of a boot floor", {6, 10, 14}, usual},
    {"spare-well", "a spare-wheel well", {5, 8.5, 12}, usual},
    {"front-valance", "a front valance", {4, 6, 8}, usual},
    {"rear-valance", "a rear valance", {5, 7.5, 10}, usual},
    {"battery-tray", "a battery box or tray", {5, 7.5, 10}, usual},
    {"main-rail", "a let-in length of a chassis rail", {6, 10, 14}, usual},
    {"other-part", "any other part", {4, 8, 16}, "this method's own"},
});
static_assert(job_rows.size() == jobs);

template <std::size_t... Index>
void add_jobs(std::vector<Rate>& table, std::index_sequence<Index...>) {
  (table.push_back({std::string(job_rows[Index].key), "h", job_rows[Index].what, .1, 400, memory,
                    job_rows[Index].source, nullptr, job_at<Index>}),
   ...);
}

void add_money(std::vector<Rate>& all) {
  all.push_back(single<&Rates::hour>("hour", "per hour", "an hour of work", 0, 100000, memory,
                                     "a guess, to be set to what the workshop asks"));
  all.push_back(single<&Rates::sheet_per_kg>("sheet", "per kg", "steel sheet in small quantities",
                                             0, 100000, memory,
                                             "a guess, to be set to what the merchant asks"));
  all.push_back(range<&Rates::consumables>("consumables", "%",
                                           "gas, wire, discs, primer, as a share of labour", 0, 1,
                                           memory, "8 to 15 % of labour; likely: the middle"));
}

void add_cuts(std::vector<Rate>& all) {
  all.push_back(range<&Rates::margin_mm>("margin", "mm", "cut beyond the last rust seen", 0, 300,
                                         practice, "25 to 50 mm, to metal of full thickness"));
  all.push_back(single<&Rates::join_mm>("join", "mm", "two places nearer than this are one cut", 0,
                                        500, practice, "about 75 to 150 mm"));
  all.push_back(single<&Rates::to_outline_mm>(
      "to-outline", "mm", "a side this near the part's edge goes to it: the edge is the seam", 0,
      200, practice, "20 to 30 mm"));
  all.push_back(range<&Rates::unsized_mm>("unsized", "mm",
                                          "a place without size is taken as such a square", 1, 1000,
                                          memory, "this method's own"));
  all.push_back(single<&Rates::sill_end>(
      "sill-end", "% of its length",
      "a sill holed this near an end, as a share of its length, is planned whole", 0, .5, practice,
      "a sill is planned whole if either end is holed; how near is this method's own"));
  all.push_back(single<&Rates::lip_share>(
      "lip-share", "% of its length",
      "an arch lip past the limit over this share of its length is renewed whole", 0, 1, memory,
      "this method's own"));
  all.push_back(single<&Rates::cutting_allowance>("cutting-allowance", "%",
                                                  "sheet bought over what is let in", 0, 2, memory,
                                                  "this method's own, for folds and offcuts"));
  all.push_back(single<&Rates::steel_kg_per_m3>("steel", "kg/m3", "density of steel", 7000, 8500,
                                                practice, "the usual figure for mild steel"));
}

void add_hours(std::vector<Rate>& all) {
  all.push_back(range<&Rates::weld_speed>(
      "weld-speed", "m/h", "butt weld in body sheet: fit, tack, cool and dress included", .01, 30,
      memory, ".15 to .4 m/h"));
  all.push_back(range<&Rates::flat_cut>(
      "flat-cut", "h", "to cut out and make one patch in a single sheet, before welding", 0, 40,
      memory, "so that a patch of 100 x 100 mm takes the usual 1.5 to 3 h"));
  all.push_back(range<&Rates::folded_cut>(
      "folded-cut", "h", "the same where there is a fold or a second skin", 0, 40, memory,
      "so that such a patch of 100 x 100 mm takes the usual 3 to 6 h"));
  all.push_back(range<&Rates::pinhole>("pinhole", "h",
                                       "to weld up a pinhole in sound metal and dress it", 0, 40,
                                       memory, "this method's own"));
  all.push_back(range<&Rates::treat>("treat", "h", "to clean, treat, coat and wax one place", 0, 40,
                                     memory, "this method's own"));
  all.push_back(range<&Rates::drains>("drains", "h", "to open the drains of one part", 0, 40,
                                      memory, "this method's own"));
  all.push_back(range<&Rates::brace>("brace", "h", "to brace a body before a sill is cut", 0, 100,
                                     memory, "3 to 8 h; likely: the middle"));
  all.push_back(range<&Rates::protect>("protect", "h",
                                       "cavity wax and underside coat after welding", 0, 100,
                                       memory, "6 to 12 h; likely: the middle"));
  add_jobs(all, std::make_index_sequence<jobs>());
}

void add_unseen(std::vector<Rate>& all) {
  const char* upper = "the upper end of the usual contingency";
  all.push_back(single<&Rates::hidden_bare>(
      "hidden-bare", "", "more than is seen, on the high figure: seen bare", 1, 10, memory, upper));
  all.push_back(single<&Rates::hidden_scope>("hidden-scope", "", "the same: seen by scope", 1, 10,
                                             memory, upper));
  all.push_back(single<&Rates::hidden_coated>(
      "hidden-coated", "", "the same: coated, seen in part, tapped, inside not seen", 1, 10, memory,
      upper));
  all.push_back(single<&Rates::hidden_repair>("hidden-repair", "",
                                              "the same: under a repair that can't be relied on", 1,
                                              10, memory, upper));
  all.push_back(range<&Rates::contingency_bare>(
      "contingency-bare", "%", "contingency: stripped bare", 0, 5, memory, "10 to 15 %"));
  all.push_back(range<&Rates::contingency_scoped>("contingency-scoped", "%",
                                                  "contingency: on a lift, clean, scoped", 0, 5,
                                                  memory, "20 to 30 %"));
  all.push_back(range<&Rates::contingency_coated>("contingency-coated", "%",
                                                  "contingency: coated, or part of it not seen", 0,
                                                  5, memory, "30 to 60 %"));
  all.push_back(range<&Rates::contingency_repaired>("contingency-repaired", "%",
                                                    "contingency: repaired poorly before", 0, 5,
                                                    memory, "50 to 100 %"));
  all.push_back(single<&Rates::correlation>(
      "correlation", "", "how far tasks on one car run over together: 0 not at all, 1 always", 0, 1,
      memory, "this method's own"));
}

double scale(const Rate& rate) {
  return rate.unit.starts_with('%') ? 100 : 1;
}

std::string unit_text(const Rates& rates, const Rate& rate) {
  if (rate.unit.starts_with("per ")) return " " + rates.currency + " " + rate.unit;
  return rate.unit.empty() ? "" : " " + rate.unit;
}

std::string figures(const Rate& rate, const Range& value) {
  const double by = scale(rate);
  if (rate.single) return fmt::format("{:.6g}", by * value.likely);
  return fmt::format("{:.6g}–{:.6g}–{:.6g}", by * value.low, by * value.likely, by * value.high);
}

}  // namespace

Range operator+(const Range& a, const Range& b) {
  return {a.low + b.low, a.likely + b.likely, a.high + b.high};
}

Range operator*(const Range& a, const Range& b) {
  return {a.low * b.low, a.likely * b.likely, a.high * b.high};
}

Range operator*(const Range& a, double by) {
  return {a.low * by, a.likely * by, a.high * by};
}

Rates::Rates() {
  for (std::size_t i = 0; i < jobs; ++i) job[i] = job_rows[i].hours;
}

std::string_view key(Job job) {
  return job_rows[static_cast<std::size_t>(job)].key;
}

const std::vector<Rate>& table() {
  static const std::vector<Rate> all = [] {
    std::vector<Rate> rows;
    add_money(rows);
    add_cuts(rows);
    add_hours(rows);
    add_unseen(rows);
    return rows;
  }();
  return all;
}

Range value(const Rates& rates, const Rate& rate) {
  Rates copy = rates;
  if (rate.range) return rate.range(copy);
  const double figure = rate.single(copy);
  return {figure, figure, figure};
}

std::string value_text(const Rates& rates, const Rate& rate) {
  return figures(rate, value(rates, rate)) + unit_text(rates, rate);
}

std::vector<std::string> changed(const Rates& rates) {
  const Rates standard;
  std::vector<std::string> lines;
  if (rates.currency != standard.currency)
    lines.push_back(fmt::format("currency {} (default {})", rates.currency, standard.currency));
  for (const Rate& each : table()) {
    const Range now = value(rates, each), was = value(standard, each);
    if (now == was) continue;
    lines.push_back(
        fmt::format("{} {} (default {})", each.key, value_text(rates, each), figures(each, was)));
  }
  return lines;
}

}  // namespace tinworm::rates
