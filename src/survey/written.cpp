#include "survey/written.hpp"

#include <algorithm>

#include <fmt/format.h>

namespace tinworm::survey {
namespace {

std::string in_lower_case(std::string_view text) {
  std::string lower(text);
  for (char& c : lower)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return lower;
}

// What some YAML reader takes for truth, falsehood or nothing.
bool is_another_kind(std::string_view text) {
  const std::string lower = in_lower_case(text);
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

std::string size_text(const Size& size) {
  return fmt::format("{:g}x{:g}", size.along_mm, size.across_mm);
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

std::string findings_line(const Spot& spot) {
  std::vector<std::string> parts;
  if (spot.rust) parts.emplace_back(word(*spot.rust));
  if (spot.hand) parts.emplace_back(word(*spot.hand));
  if (spot.tap) parts.emplace_back(word(*spot.tap));
  if (spot.probe) parts.push_back(fmt::format("probe {}", word(*spot.probe)));
  if (spot.magnet) parts.push_back(fmt::format("magnet {}", word(*spot.magnet)));
  if (spot.stuffed) parts.push_back(fmt::format("stuffed {}", word(*spot.stuffed)));
  if (spot.hole) parts.push_back("hole " + size_text(*spot.hole));
  if (spot.crack_mm) parts.push_back(fmt::format("crack {:g}", *spot.crack_mm));
  if (spot.size) parts.push_back(size_text(*spot.size));
  if (!spot.metal_mm.empty()) parts.push_back("metal " + readings(spot.metal_mm));
  if (!spot.pit_mm.empty()) parts.push_back("pit " + readings(spot.pit_mm));
  if (spot.pits) {
    parts.push_back(fmt::format("deepest pit in each {}: {}", size_text(spot.pits->each),
                                readings(spot.pits->deepest_mm)));
  }
  return joined(parts);
}

std::string repair_line(const Repair& repair) {
  std::vector<std::string> parts = {std::string(word(repair.kind))};
  if (repair.joint) parts.emplace_back(word(*repair.joint));
  if (repair.size) parts.push_back(size_text(*repair.size));
  if (repair.date) parts.push_back(repair.date->text());
  if (repair.beneath) parts.emplace_back(word(*repair.beneath));
  return joined(parts);
}

}  // namespace tinworm::survey
