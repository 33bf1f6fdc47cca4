#include "survey/quoted_remark.hpp"

#include <algorithm>
#include <optional>

#include "survey/page.hpp"

namespace tinworm::survey {
namespace {

constexpr std::string_view blanks = " \t";

std::size_t after_blanks(std::string_view line, std::size_t from) {
  return std::min(line.find_first_not_of(blanks, from), line.size());
}

bool is_quote(char c) {
  return c == '"' || c == '\'';
}

// Where the value of a list's item begins: behind the dash, or behind the name and its colon.
std::optional<std::size_t> value_of_item(std::string_view line) {
  const std::size_t dash = after_blanks(line, 0);
  if (line.substr(dash, 2) != "- ") return std::nullopt;
  const std::size_t name = after_blanks(line, dash + 2);
  if (name < line.size() && (line[name] == '{' || line[name] == '[')) return std::nullopt;
  std::size_t end_of_name = name;
  if (name < line.size() && is_quote(line[name])) {
    end_of_name = std::min(line.find(line[name], name + 1), line.size());
    if (line.substr(end_of_name).substr(0, 3).find(": ") != 1) return name;  // no name, a remark
  }
  const std::size_t colon = line.find(": ", end_of_name);
  if (colon == std::string_view::npos) return std::nullopt;
  return after_blanks(line, colon + 2);
}

struct Value {
  std::size_t begin = 0, end = 0;
  bool has_remark = false;
  std::optional<std::size_t> colon;  // outside any remark: YAML takes what is before it for a key
};

// Behind a remark in quotes that begins at `at`; none where it is no part of its own.
std::optional<std::size_t> behind_remark(std::string_view line, std::size_t at) {
  if (at >= line.size() || !is_quote(line[at])) return std::nullopt;
  const std::size_t close = line.find(line[at], at + 1);
  if (close == std::string_view::npos) return std::nullopt;
  const std::size_t next = after_blanks(line, close + 1);
  const bool ends = next >= line.size() || line[next] == ',' || line[next] == '#';
  return ends ? std::optional(close + 1) : std::nullopt;
}

// From `begin` to the line's end, or to a comment that stands in no remark.
Value value_from(std::string_view line, std::size_t begin) {
  Value value{begin, line.size(), false, std::nullopt};
  for (std::size_t at = begin; at < line.size();) {
    if (const auto behind = behind_remark(line, after_blanks(line, at))) {
      value.has_remark = true;
      at = *behind;
    }
    for (; at < line.size() && line[at] != ',' && line.substr(at, 2) != " #"; ++at)
      if (!value.colon && line.substr(at, 2) == ": ") value.colon = at;
    if (at < line.size() && line[at] != ',') value.end = std::min(value.end, at);
    if (value.end == at) break;
    ++at;
  }
  value.end = line.substr(0, value.end).find_last_not_of(" \t\r") + 1;
  return value;
}

std::optional<Value> value_with_remark(std::string_view line) {
  const auto begin = value_of_item(line);
  if (!begin || *begin >= line.size()) return std::nullopt;
  const Value value = value_from(line, *begin);
  const auto behind = behind_remark(line, *begin);
  const bool remark_alone = behind && *behind == value.end;  // YAML reads that
  const bool meant = value.colon || (value.has_remark && !remark_alone);
  return meant && line[*begin] != '{' && line[*begin] != '[' ? std::optional(value) : std::nullopt;
}

std::string in_single_quotes(std::string_view text) {
  std::string quoted = "'";
  for (const char c : text) {
    if (c == '\'') quoted += c;
    quoted += c;
  }
  return quoted + "'";
}

}  // namespace

Requoted requoted(std::string_view source) {
  Requoted result;
  int number = 0;
  for (std::size_t start = 0; start < source.size();) {
    const std::size_t end = std::min(source.find('\n', start), source.size());
    const std::string_view line = source.substr(start, end - start);
    ++number;
    if (const auto value = value_with_remark(line)) {
      const auto column = static_cast<int>(characters(line.substr(0, value->begin))) + 1;
      result.places.insert({number, column});
      if (value->colon)
        result.problems.push_back(
            {{number, static_cast<int>(characters(line.substr(0, *value->colon))) + 1},
             "a second colon stands in one line",
             std::string(line.substr(value->begin, value->end - value->begin)),
             "",
             "put the remark that it stands in in quotes"});
      result.text += line.substr(0, value->begin);
      result.text += in_single_quotes(line.substr(value->begin, value->end - value->begin));
      result.text += line.substr(value->end);
    } else {
      result.text += line;
    }
    if (end < source.size()) result.text += '\n';
    start = end + 1;
  }
  return result;
}

void unquote(yaml::Node& node, const std::set<yaml::Place>& places) {
  if (node.kind == yaml::Node::Kind::scalar && places.contains(node.place)) node.quoted = false;
  for (yaml::Node& item : node.items) unquote(item, places);
  for (yaml::Entry& entry : node.entries) unquote(entry.value, places);
}

}  // namespace tinworm::survey
