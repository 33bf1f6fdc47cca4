// What became of a car's metal over the years: two or more surveys of one body side by side, all
// that any output needs. Outputs compute nothing. Thicknesses mm, rates mm a year with losses over
// 0, times years, shares 0 to 1.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "metal/rates.hpp"
#include "quantity/date.hpp"
#include "weighing/result.hpp"

namespace tinworm::history {

// What a later survey says of a place beside earlier ones. Never "better": metal doesn't grow, and
// what reads thicker was read elsewhere or otherwise.
enum class Change { worse, same, repaired, newly_seen, no_longer_visible, not_comparable };
std::string_view word(Change change);  // "newly-seen": as in JSON
// 0 for the change that matters most: worse, no longer visible, newly seen, repaired, not
// comparable, the same.
int weight(Change change);

struct Thickness {  // of one place in one survey, the coating taken off
  double metal_mm = 0;
  double low_mm = 0, high_mm = 0;  // 95 %, the gauge's own error included; low not under 0
  int readings = 0;
};

struct Record {  // one place in one survey
  std::size_t survey = 0;
  bool seen = false;      // its zone was: bare, coated, part or scope
  bool recorded = false;  // a spot of that name stands in the survey; all below is of it
  bool found = false;     // rust or damage, not only a station
  std::optional<Thickness> thickness;        // none: not read, or not so that it can be used
  std::optional<weighing::Span> metal_left;  // as weighed, of the sheet
  weighing::SpanKind kind = weighing::SpanKind::envelope;
  weighing::Step step = weighing::Step::not_seen;
  weighing::Evidence evidence = weighing::Evidence::not_seen;
  bool repaired = false;         // since the survey before: a new history starts here
  std::optional<Change> change;  // against the record before it; none for the first
};

enum class RateFrom {
  difference,  // of two surveys, over the years between
  line,        // through three or more, weighted; governs over the last two alone
  last_two,    // the last two of three or more, the faster one, governs
  planning     // not measured: a band of common practice for how the car is kept
};
std::string_view word(RateFrom from);  // "last-two"

struct Rate {                 // the one that governs
  metal::RateRange per_year;  // 95 %, or the band's ends
  RateFrom from = RateFrom::difference;
  // Of three or more surveys, by API 510, 7.1.1: first to last, and the last two.
  std::optional<double> long_term, short_term;
  std::optional<metal::RateRange> line;  // of three or more
};

struct Outlook {            // planning ranges, never a date of failure
  double limit_mm = 0;      // least metal that load-bearing sheet must keep
  bool past_limit = false;  // by the latest reading
  std::optional<metal::LifeRange> years_to_limit, years_to_hole;
  // In a straight line at the rate itself; none where nothing is being lost.
  std::optional<double> years_to_limit_at_rate, years_to_hole_at_rate;
};

struct Place {      // a spot or station by its name, or the mean of a zone's readings
  int zone = 0;     // 0: an own zone
  std::string own;  // key of an own zone
  std::string name;
  bool zone_mean = false;  // of places that bear no common name; `name` is then empty
  Change change = Change::not_comparable;
  // The surveys that the change is between; equal where there is none.
  std::size_t from = 0, to = 0;
  std::optional<weighing::Span> lost_mm;  // 95 %; under 0 where it reads thicker
  std::optional<double> lost_share;       // of the sheet
  std::optional<double> baseline_mm;      // in the latest survey with a reading
  bool baseline_assumed = false;          // the body plan's sheet: nobody measured or stated it
  std::optional<double> smallest_visible_mm;
  bool by_look = false;  // worse by what an eye can tell alone: rust that is new or has spread
  std::string why;  // in words, what lost_mm can't say: "holed since", "the zone is hidden now"
  std::optional<Rate> rate;
  std::optional<Outlook> outlook;
  std::vector<Record> records;  // one for each survey, in order

  const Record& last() const { return records.back(); }
};

struct Zone {
  int number = 0;  // 0: an own zone
  std::string own;
  std::string name;
  body::Side side = body::Side::centre;
  body::Role role = body::Role::skin;
  Change change = Change::not_comparable;  // the one that matters most of its places'
  std::string why;                         // where no place says it
  std::vector<weighing::Step> steps;       // in each survey
  std::vector<Place> places;
};

struct Question {
  int zone = 0;  // of several the first; 0: the whole car, or an own zone
  std::string own;
  std::string spot;
  std::string kind;  // short and lasting: one of question_kinds()
  std::string question;
  std::string why;
};

struct NextSurvey {
  std::optional<quantity::PartialDate> date;  // a month; none: after the repair
  std::string why;
};

struct Comparison {
  std::vector<weighing::Result> surveys;  // by date, the earliest first; two or more
  std::vector<Zone> zones;                // of the latest body plan by number, own zones last
  std::vector<std::string> notes;         // on what was taken to be the same
  std::vector<Question> questions;
  NextSurvey next;
  std::string caution;

  const weighing::Result& latest() const { return surveys.back(); }
  // Places of every zone, the largest change first: worse by the share lost, then what can't be
  // seen any more, was newly seen, was repaired, can't be compared, is the same.
  std::vector<const Place*> by_change() const;
  const Zone& zone_of(const Place& place) const;
};

}  // namespace tinworm::history
