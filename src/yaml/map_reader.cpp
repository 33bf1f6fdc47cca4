#include <algorithm>
#include <utility>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "yaml/node.hpp"

namespace tinworm::yaml {
namespace {

std::string_view kind_word(const Node& node) {
  switch (node.kind) {
    case Node::Kind::empty:
      return "nothing";
    case Node::Kind::scalar:
      return "a single value";
    case Node::Kind::sequence:
      return "a list";
    case Node::Kind::map:
      return "keys with values";
  }
  return "";
}

// `~` and `null` are nothing too, which surprises those who meant the word.
std::string empty_cure(const Node& node) {
  return node.text.empty() ? "give it a value or leave the key out"
                           : fmt::format(
                                 "\"{}\" unquoted means nothing: quote it if the word is "
                                 "meant, or leave the key out",
                                 node.text);
}

// A figure alone is no remark.
bool could_be_words(std::string_view key) {
  const bool digit_first = !key.empty() && key[0] >= '0' && key[0] <= '9';
  return !digit_first || key.find(' ') != std::string_view::npos;
}

}  // namespace

const Node* Node::find(std::string_view key) const {
  const auto entry = std::find_if(entries.begin(), entries.end(),
                                  [&](const Entry& candidate) { return candidate.key == key; });
  return entry == entries.end() ? nullptr : &entry->value;
}

MapReader::MapReader(const Node& node, Problems& problems, std::string what)
    : node_(node),
      problems_(problems),
      what_(std::move(what)),
      is_map_(node.kind == Node::Kind::map) {
  if (!is_map_)
    problems_.push_back({node_.place, fmt::format("{} is {}", what_, kind_word(node_)), node_.text,
                         "keys with values",
                         "write it as `key: value`, one to a line, or {key: value, …}"});
}

const Node* MapReader::optional(std::string_view key) {
  const auto entry = std::find_if(node_.entries.begin(), node_.entries.end(),
                                  [&](const Entry& candidate) { return candidate.key == key; });
  const bool asked_before = std::find(asked_.begin(), asked_.end(), key) != asked_.end();
  if (!asked_before) asked_.emplace_back(key);
  if (entry == node_.entries.end()) return nullptr;
  if (entry->value.kind != Node::Kind::empty) return &entry->value;
  if (!asked_before)
    problems_.push_back({entry->key_place, fmt::format("\"{}\" has no value", key), "", "",
                         empty_cure(entry->value)});
  return nullptr;
}

const Node* MapReader::may_be_blank(std::string_view key) {
  const Node* value = node_.find(key);
  const bool blank = value && value->kind == Node::Kind::empty && value->text.empty();
  if (!blank) return optional(key);
  asked_.emplace_back(key);
  return nullptr;
}

const Node* MapReader::required(std::string_view key) {
  const Node* value = optional(key);
  if (is_map_ && !value && !node_.find(key))
    problems_.push_back({node_.place, fmt::format("{} lacks \"{}\"", what_, key), "", "",
                         fmt::format("add `{}: …`", key)});
  return value;
}

void MapReader::finish() {
  bool told_words = false;
  for (const Entry& entry : node_.entries) {
    if (std::find(asked_.begin(), asked_.end(), entry.key) != asked_.end()) continue;
    // In braces a comma in a text ends it: `{say: weeps, smells}` has a key "smells". One slip.
    const bool words = node_.flow && entry.value.kind == Node::Kind::empty &&
                       entry.value.text.empty() && could_be_words(entry.key) &&
                       did_you_mean(entry.key, asked_).empty();
    if (words && std::exchange(told_words, true)) continue;
    if (words) {
      problems_.push_back({entry.key_place, fmt::format("{} has words without a key", what_),
                           entry.key, fmt::format("{}", fmt::join(asked_, ", ")),
                           "a text with commas stands in quotes"});
      continue;
    }
    problems_.push_back({entry.key_place, fmt::format("{} has no such key", what_), entry.key,
                         fmt::format("{}", fmt::join(asked_, ", ")),
                         did_you_mean(entry.key, asked_)});
  }
}

std::string_view scalar(const Node& node, Problems& problems, std::string_view what) {
  if (node.kind == Node::Kind::scalar) return node.text;
  const std::string cure = node.kind == Node::Kind::empty ? empty_cure(node) : "";
  problems.push_back({node.place, fmt::format("{} is {}", what, kind_word(node)), node.text,
                      "a single value", cure});
  return {};
}

}  // namespace tinworm::yaml
