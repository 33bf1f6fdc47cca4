#include "verbs/source_date.hpp"

#include <charconv>
#include <cstdlib>
#include <cstring>

#include <fmt/chrono.h>
#include <fmt/format.h>

#include "verbs/command_error.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {

std::optional<std::chrono::sys_seconds> source_date(const std::string& verb) {
  const char* epoch = std::getenv("SOURCE_DATE_EPOCH");
  if (epoch == nullptr || *epoch == '\0') return std::nullopt;
  long long since = 0;
  const char* end = epoch + std::strlen(epoch);
  const auto [stop, error] = std::from_chars(epoch, end, since);
  constexpr long long year_9999 = 253402300799;
  if (error != std::errc() || stop != end || since < 0 || since > year_9999) {
    throw CommandError(verb, fmt::format("SOURCE_DATE_EPOCH is seconds since 1970, not \"{}\"",
                                         yaml::shown(epoch)));
  }
  return std::chrono::sys_seconds(std::chrono::seconds(since));
}

std::string date_of_file(const std::string& verb, std::chrono::sys_seconds otherwise) {
  // Through gmtime: fmt 9 writes a time point of the system's clock in local time.
  const std::time_t moment =
      std::chrono::system_clock::to_time_t(source_date(verb).value_or(otherwise));
  return fmt::format("{:%Y-%m-%dT%H:%M:%SZ}", fmt::gmtime(moment));
}

quantity::PartialDate today(const std::string& verb) {
  using namespace std::chrono;
  const sys_seconds now = source_date(verb).value_or(floor<seconds>(system_clock::now()));
  const year_month_day day(floor<days>(now));
  return {static_cast<int>(day.year()), static_cast<int>(static_cast<unsigned>(day.month())),
          static_cast<int>(static_cast<unsigned>(day.day()))};
}

}  // namespace tinworm::verbs
