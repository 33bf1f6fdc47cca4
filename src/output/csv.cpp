#include "output/csv.hpp"

#include <algorithm>
#include <array>
#include <charconv>

namespace tinworm::output {
namespace {

bool is_number(std::string_view text) {
  double value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  const bool digits = text.find_first_of("0123456789") != text.npos;  // not "-inf"
  return digits && error == std::errc() && end == text.data() + text.size();
}

bool would_run(std::string_view text) {
  static constexpr std::array<std::string_view, 10> starts = {
      "=", "+", "-", "@", "\t", "\r", "\uFF1D", "\uFF0B", "\uFF0D", "\uFF20"};
  return !is_number(text) && std::any_of(starts.begin(), starts.end(), [text](std::string_view s) {
    return text.starts_with(s);
  });
}

}  // namespace

std::string csv_field(std::string_view text) {
  std::string field(would_run(text) ? "'" : "");
  field += text;
  if (field.find_first_of(",\"\r\n") == field.npos) return field;
  std::string quoted = "\"";
  for (const char c : field) quoted.append(c == '"' ? 2 : 1, c);
  return quoted + "\"";
}

std::string csv_record(const std::vector<std::string>& fields) {
  std::string record;
  for (const std::string& field : fields) {
    if (&field != &fields.front()) record += ',';
    record += csv_field(field);
  }
  return record + "\r\n";
}

}  // namespace tinworm::output
