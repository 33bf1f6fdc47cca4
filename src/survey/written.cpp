#include "survey/written.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "survey/field.hpp"
#include "survey/free_words.hpp"
#include "survey/page.hpp"

namespace tinworm::survey {
namespace {

// What some YAML reader takes for truth, falsehood or nothing.
bool is_another_kind(std::string_view text) {
  const std::string lower = lower_case(text);
  for (const std::string_view word : {"yes", "no", "on", "off", "true", "false", "y", "n", "null"})
    if (lower == word) return true;
  return false;
}

bool is_plain(std::string_view text) {
  if (text.empty() || text.front() == ' ' || text.back() == ' ') return false;
  const auto is_letter = [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) > 127;
  };
  if (!is_letter(text.front()) || is_another_kind(text)) return false;
  return std::all_of(text.begin(), text.end(), [&](char c) {
    return is_letter(c) || (c >= '0' && c <= '9') || c == ' ' || c == '-' || c == '.' || c == '/' ||
           c == '(' || c == ')';
  });
}

// `metal .81`, `pitting`: a value with the key that its part needs.
std::string part(const FieldFacts& facts, const std::string& value) {
  const bool needs_key = facts.alone == Alone::no && facts.writing != Writing::pits;
  return needs_key ? fmt::format("{} {}", facts.key, value) : value;
}

// Each of several words is a part of its own.
void add_part(std::vector<std::string>& parts, const FieldFacts& facts, const std::string& value) {
  if (facts.writing != Writing::words) return parts.push_back(part(facts, value));
  for (const std::string_view word : between_spaces(value)) parts.emplace_back(word);
}

std::string joined(const std::vector<std::string>& parts) {
  return fmt::format("{}", fmt::join(parts, ", "));
}

}  // namespace

std::string written(std::string_view text) {
  if (is_plain(text)) return std::string(text);
  std::string quoted = "\"";
  for (const char c : text) {
    if (c == '"' || c == '\\')
      quoted += fmt::format("\\{}", c);
    else if (c == '\n')
      quoted += "\\n";
    else if (c == '\t')
      quoted += "\\t";
    else
      quoted += c;
  }
  return quoted + "\"";
}

std::string readings(const std::vector<double>& lengths_mm) {
  std::vector<std::string> all;
  for (const double length_mm : lengths_mm) {
    std::string text = fmt::format("{:.3f}", length_mm);
    if (text.ends_with('0')) text.pop_back();
    all.push_back(text);
  }
  return fmt::format("{}", fmt::join(all, " "));
}

std::string size_text(const Size& size) {
  if (!size.across_known) return fmt::format("{:g}", size.along_mm);
  return fmt::format("{:g}x{:g}", size.along_mm, size.across_mm);
}

std::string findings_line(const Spot& spot) {
  std::vector<std::string> parts;
  for (const auto& [facts, read, written, copy] : finding_fields()) {
    const bool of_the_visit = facts.writing == Writing::photos || facts.writing == Writing::text;
    if (of_the_visit || facts.writing == Writing::position) continue;
    if (const std::string value = written(spot); !value.empty()) add_part(parts, facts, value);
  }
  return joined(parts);
}

std::string repair_line(const Repair& repair) {
  std::vector<std::string> parts;
  for (const auto& [facts, read, written, copy] : repair_fields()) {
    const bool of_the_visit = facts.writing == Writing::photos || facts.writing == Writing::text;
    const bool read_today = facts.key == "now" || facts.writing == Writing::readings;
    if (of_the_visit || read_today || facts.writing == Writing::position) continue;
    if (const std::string value = written(repair); !value.empty()) add_part(parts, facts, value);
  }
  return joined(parts);
}

std::string films_text(const Zone& zone) {
  if (zone.film_um.empty()) return "";
  const auto greatest = std::ranges::max_element(zone.film_um);
  std::string text;
  for (auto film = zone.film_um.begin(); film != zone.film_um.end(); ++film)
    text += fmt::format("{}{:g} ", zone.film_off_scale && film == greatest ? "over " : "", *film);
  return text + "um";
}

}  // namespace tinworm::survey
