// One survey among several, with what its gauge is worth; and one zone in each of them.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "metal/repeatability.hpp"
#include "rules/rules.hpp"
#include "weighing/gauging.hpp"
#include "weighing/result.hpp"
#include "weighing/zone_facts.hpp"

namespace tinworm::history {

struct Year {
  const weighing::Result* result = nullptr;
  std::vector<weighing::ZoneFacts> facts;  // beside result->zones
  weighing::Gauging gauging;

  const survey::Survey& survey() const { return result->survey; }
  const quantity::PartialDate& date() const { return result->survey.visit.date; }
  std::string text() const { return date().text(); }
};

// Points into `results`, which must outlive it.
std::vector<Year> years_of(const std::vector<weighing::Result>& results, const rules::Rules& rules);

// Whether two surveys read with one gauge, so that its own error is one and the same in both: by
// its name where both tell it, else where they say the same of its uncertainty. One that leaves the
// coating out by itself reads otherwise than one that doesn't.
bool same_gauge(const survey::MetalGauge& a, const survey::MetalGauge& b);

struct ZoneYear {  // one zone in one survey
  const Year* year = nullptr;
  const weighing::ZoneFacts* facts = nullptr;  // null: that survey's body has no such zone
  const weighing::Zone* zone = nullptr;
  bool repaired = false;  // its metal was, since the survey before: a new history starts here

  bool fitted() const { return facts && facts->fitted(); }
  bool seen() const { return facts && facts->fitted() && facts->is_seen(); }
  // Null where there is none of that name.
  const survey::Spot* recorded(const std::string& name) const;
  const weighing::Spot* weighed(const std::string& name) const;
};

// The zone in every survey. A zone of the same number that is another part in another version of
// the body plan is not the same zone.
std::vector<ZoneYear> zone_years(const std::vector<Year>& years, const weighing::ZoneFacts& zone);

// Every zone of the latest body plan by number, then own zones of any survey, the latest first.
std::vector<weighing::ZoneFacts> zones_of(const std::vector<Year>& years);

// One place's readings in one survey, the coating taken off, those over one sheet left out.
struct Reading {
  std::size_t survey = 0;
  metal::Measured metal;
  double gauge_standard_mm = 0;
  std::optional<double> baseline_mm;
  bool baseline_assumed = false;  // the body plan's sheet

  double standard_mm() const;  // of the mean, without the gauge's own error
};

// None where nothing was read, or only through a coating of unknown thickness.
std::optional<Reading> reading(const survey::Spot& spot, const ZoneYear& zone, std::size_t survey,
                               const rules::Rules& rules);

}  // namespace tinworm::history
