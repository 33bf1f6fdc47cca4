#include "verbs/record.hpp"

#include <algorithm>
#include <array>
#include <charconv>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "painting/picture.hpp"
#include "rates/rates.hpp"
#include "rules/rules.hpp"

namespace tinworm::verbs {
namespace {

constexpr std::array kinds = {InputKind::survey, InputKind::plan, InputKind::rules,
                              InputKind::rates, InputKind::photos};
constexpr std::string_view body_word = "body";

bool stands_plain(char c) {
  return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
         std::string_view("-._=+").find(c) != std::string_view::npos;
}

// As in a URI (RFC 3986, 2.1): every other byte as % and two hexadecimal digits.
std::string in_plain(std::string_view text) {
  std::string plain;
  for (const char c : text)
    plain +=
        stands_plain(c) ? std::string(1, c) : fmt::format("%{:02X}", static_cast<unsigned char>(c));
  return plain;
}

// Whatever it makes of what in_plain() never writes, text() won't give it back.
std::string from_plain(std::string_view plain) {
  std::string text;
  for (std::size_t i = 0; i < plain.size(); ++i) {
    unsigned char byte = 0;
    const char* digits = plain.data() + i + 1;
    if (plain[i] == '%' && i + 2 < plain.size() &&
        std::from_chars(digits, digits + 2, byte, 16).ec == std::errc()) {
      text += static_cast<char>(byte);
      i += 2;
    } else {
      text += plain[i];
    }
  }
  return text;
}

std::vector<std::string_view> split(std::string_view text, std::string_view between) {
  std::vector<std::string_view> parts;
  for (std::size_t at = text.find(between); at != text.npos; at = text.find(between)) {
    parts.push_back(text.substr(0, at));
    text.remove_prefix(at + between.size());
  }
  parts.push_back(text);
  return parts;
}

bool is_sha256(std::string_view text) {
  return text.size() == 64 && std::ranges::all_of(text, [](char c) {
           return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f');
         });
}

// "survey wherry.yaml 47a2…", "photos 47a2…"
bool read_input(const std::vector<std::string_view>& parts, std::vector<Input>& inputs) {
  const auto kind = std::ranges::find(kinds, parts.front(), [](InputKind k) { return word(k); });
  if (kind == kinds.end() || parts.size() < 2 || parts.size() > 3) return false;
  if (!is_sha256(parts.back())) return false;
  inputs.push_back(
      {*kind, parts.size() == 3 ? from_plain(parts[1]) : "", std::string(parts.back())});
  return true;
}

void add_plan(Record& record, const body::Plan& plan) {
  const Input input{InputKind::plan, "", plan.sha256};
  if (!plan.sha256.empty() && std::ranges::find(record.inputs, input) == record.inputs.end())
    record.inputs.push_back(input);
}

}  // namespace

std::string_view word(InputKind kind) {
  switch (kind) {
    case InputKind::survey:
      return "survey";
    case InputKind::plan:
      return "plan";
    case InputKind::rules:
      return "rules";
    case InputKind::rates:
      return "rates";
    case InputKind::photos:
      break;
  }
  return "photos";
}

std::string title(const Input& input) {
  const std::string print = "fingerprint " + input.sha256.substr(0, 12);
  return input.file.empty() ? fmt::format("the {} of {}", word(input.kind), print)
                            : fmt::format("{} ({}, {})", input.file, word(input.kind), print);
}

const Input* Record::survey(std::string_view sha256) const {
  const auto found = std::ranges::find_if(inputs, [&](const Input& each) {
    return each.kind == InputKind::survey && each.sha256 == sha256;
  });
  return found == inputs.end() ? nullptr : &*found;
}

const Input* Record::input(InputKind kind) const {
  const auto found = std::ranges::find(inputs, kind, &Input::kind);
  return found == inputs.end() ? nullptr : &*found;
}

std::string this_program(Kind kind) {
  return is_picture(kind) ? fmt::format("{} with {}", TINWORM_VERSION, painting::libraries())
                          : TINWORM_VERSION;
}

Record record_of(std::vector<std::string> words, Kind kind, const body::Plan& plan) {
  Record record{
      this_program(kind), std::move(words), fmt::format("{} {}", plan.name, plan.version), {}};
  add_plan(record, plan);
  return record;
}

Record record_of(std::vector<std::string> words, Kind kind,
                 const std::vector<weighing::Result>& results, const RulesInForce& rules) {
  Record record = record_of(std::move(words), kind, *results.back().body);
  for (const weighing::Result& each : results) {
    record.inputs.push_back({InputKind::survey, each.file, each.sha256});
    add_plan(record, *each.body);
  }
  if (!rules::changed(rules.constants).empty())
    record.inputs.push_back({InputKind::rules, rules.file, rules.sha256});
  return record;
}

void add_rates(Record& record, const RatesInForce& rates) {
  if (!rates::changed(rates.rates).empty())
    record.inputs.push_back({InputKind::rates, rates.file, rates.sha256});
}

std::string text(const Record& record) {
  std::string line = fmt::format("{}{}:", record_start, record.program);
  for (const std::string& each : record.words) line += " " + in_plain(each);
  line += fmt::format("; {} {}", body_word, record.body);
  for (const Input& each : record.inputs) {
    line += fmt::format("; {} ", word(each.kind));
    if (!each.file.empty()) line += in_plain(each.file) + " ";
    line += each.sha256;
  }
  return line + "]";
}

std::string json_with(const Record& record, nlohmann::ordered_json document, output::Lines lines) {
  document["record"] = text(record);
  return output::json_text(document, lines);
}

std::string last_line(const Record& record, const output::TextStyle& style) {
  return style.terminal ? "" : fmt::format("Record: {}\n", text(record));
}

std::optional<Record> read_record(std::string_view line) {
  if (!line.starts_with(record_start) || !line.ends_with(']')) return std::nullopt;
  const std::string_view inside =
      line.substr(record_start.size(), line.size() - record_start.size() - 1);
  const std::size_t colon = inside.find(": ");
  if (colon == inside.npos) return std::nullopt;
  Record record;
  record.program = inside.substr(0, colon);
  if (!std::ranges::all_of(record.program, [](char c) { return c == ' ' || stands_plain(c); }))
    return std::nullopt;
  const std::vector<std::string_view> clauses = split(inside.substr(colon + 2), "; ");
  for (const std::string_view each : split(clauses.front(), " "))
    record.words.push_back(from_plain(each));
  for (std::size_t i = 1; i < clauses.size(); ++i) {
    const std::vector<std::string_view> parts = split(clauses[i], " ");
    if (i == 1 && parts.front() == body_word)
      record.body = clauses[i].substr(std::min(body_word.size() + 1, clauses[i].size()));
    else if (!read_input(parts, record.inputs))
      return std::nullopt;
  }
  if (text(record) != line) return std::nullopt;
  return record;
}

}  // namespace tinworm::verbs
