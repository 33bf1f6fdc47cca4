// A YAML document as a tree of values that know their place in the file.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "yaml/problem.hpp"

namespace tinworm::yaml {

struct Entry;

// Text is the scalar's text as read, never converted: numbers and dates are read from it by
// `quantity`. An alias is replaced by a copy of what it names, at the place of the alias.
struct Node {
  enum class Kind { empty, scalar, sequence, map };
  Kind kind = Kind::empty;
  Place place;
  bool quoted = false;      // scalar in '…', "…", | or >: never a number, a date or a missing value
  bool flow = false;        // sequence or map written in [ ] or { }
  std::string text;         // scalar
  std::vector<Node> items;  // sequence
  std::vector<Entry> entries;  // map, in file order; no key twice

  // The value of `key`, or null. For a look without marking it as known: see MapReader.
  const Node* find(std::string_view key) const;
};

struct Entry {
  std::string key;
  Place key_place;
  Node value;
};

// Beyond these a file is refused, so that no file can take long to read.
struct Limits {
  std::size_t bytes = 1 << 20;  // 1 MiB
  int nodes = 100'000;          // keys and values, after aliases
  int depth = 64;
};

// The one document in `source`, or the problems that keep it from being read. Refuses what YAML 1.2
// refuses and also: duplicate keys, keys that are not scalars, merge keys, explicit tags, a second
// document, recursive aliases, anything over `limits`, control characters, NUL, invalid UTF-8,
// unclosed quotes, `[1,,2]`. A syntax error stands alone; duplicate keys are all reported.
tl::expected<Node, Problems> parse(std::string_view source, const Limits& limits = {});

// Reads a map key by key and then names every key nobody asked for.
//
//   MapReader car(node, problems, "car");
//   if (const Node* built = car.optional("built")) …
//   car.finish();
class MapReader {
 public:
  // Adds a problem and reads as an empty map if `node` is no map. `what` is how messages call it:
  // "the survey", "zone 51".
  MapReader(const Node& node, Problems& problems, std::string what);

  const Node* optional(
      std::string_view key);  // null if absent or empty (`key:` alone is a problem)
  // The same, where nothing behind the key says as much as no key: null and no problem.
  const Node* may_be_blank(std::string_view key);
  const Node* required(std::string_view key);  // null and a problem if absent
  bool is_map() const { return is_map_; }
  // Adds a problem for each key that was never asked for, with the nearest known one.
  void finish();

 private:
  const Node& node_;
  Problems& problems_;
  std::string what_;
  bool is_map_;
  std::vector<std::string> asked_;
};

// `node` as scalar text; a problem and "" if it is a list or a map. `what` as above.
std::string_view scalar(const Node& node, Problems& problems, std::string_view what);

// Where byte `offset` of a scalar's text stands in the file, also in text over several lines; the
// scalar's own place where an escape lies between.
Place place_inside(const Node& scalar, std::size_t offset, std::string_view source);

}  // namespace tinworm::yaml
