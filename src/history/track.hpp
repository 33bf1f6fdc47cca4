// One name followed through the surveys of its zone: its readings, and what each survey says of it
// beside those before.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "history/judged.hpp"
#include "rules/rules.hpp"

namespace tinworm::history {

class Track {
 public:
  // All three must outlive it.
  Track(const std::string& name, const ZoneHistory& zone, const rules::Rules& rules);

  // What survey `to` says beside the first survey of its history (`whole`), or the one before
  // alone; a rate only of the whole.
  Judged judge(std::size_t to, bool whole) const;

  const std::optional<Reading>& reading_in(std::size_t survey) const { return readings_[survey]; }

 private:
  const ZoneYear& year(std::size_t i) const { return zone_.years[i]; }
  const survey::Spot& spot(std::size_t i) const { return *zone_.years[i].recorded(name_); }
  std::optional<std::size_t> recorded_before(std::size_t to) const;
  std::size_t first_of_history(std::size_t to) const;
  std::vector<Reading> readings(std::size_t from, std::size_t to) const;
  std::string repairs(std::size_t from, std::size_t to) const;  // "let-in of 2021-05"

  Judged gone(std::size_t to, std::optional<std::size_t> before) const;
  Judged first_seen(std::size_t to) const;
  Judged side_by_side(std::size_t to, std::size_t from, bool whole) const;
  void measure(const std::vector<Reading>& read, Judged& judged) const;  // two readings or more
  double pit_error_mm(std::size_t from, std::size_t to) const;
  std::string unread(std::size_t to, std::size_t from) const;  // why no reading tells

  const std::string& name_;
  const ZoneHistory& zone_;
  const rules::Rules& rules_;
  std::vector<std::optional<Reading>> readings_;
};

}  // namespace tinworm::history
