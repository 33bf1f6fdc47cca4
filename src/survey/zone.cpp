#include "survey/zone.hpp"

#include <initializer_list>
#include <map>
#include <span>

#include <fmt/format.h>

#include "body/words.hpp"
#include "survey/field.hpp"
#include "survey/finding.hpp"
#include "survey/position.hpp"
#include "survey/repair.hpp"
#include "survey/seen.hpp"
#include "survey/spot.hpp"
#include "survey/value.hpp"

namespace tinworm::survey {
namespace {

using yaml::Entry;
using yaml::MapReader;
using yaml::Node;

constexpr std::string_view one_line = "- rear end: pitting, firm, 180x60";

// A finding on one line that YAML reads as text alone: for want of a colon, or for quotes round it.
std::string cure_of_text(const Node& item, bool in_flow_list) {
  const std::size_t colon = item.text.find(':');
  const bool spaced =
      colon != std::string::npos && colon + 1 < item.text.size() && item.text[colon + 1] == ' ';
  if (spaced && in_flow_list)
    return "take the brackets and quotes away, and start the line with `- `";
  if (spaced && item.quoted) return "take the quotes round it away";
  if (colon != std::string::npos && colon > 0) return "put a space after the colon";
  return "name the spot, then put a colon and a space before what was found";
}

// A finding's long form; an empty node and a problem where the item is neither long nor one line.
std::optional<Node> long_form(Page& page, const Node& item, bool in_flow_list) {
  if (item.kind == Node::Kind::map && item.find("spot")) return item;
  const auto refuse = [&](std::string what, std::string cure) {
    page.add({item.place, std::move(what), item.text, std::string(one_line), std::move(cure)});
    return std::nullopt;
  };
  if (item.kind != Node::Kind::map)
    return refuse("a finding is a spot's name, a colon and what was found",
                  cure_of_text(item, in_flow_list));
  if (item.flow || in_flow_list)
    return refuse("a finding on one line stands in a list of lines, not in brackets",
                  "start a new line with `- `, or write it long: {spot: …, rust: …}");
  if (item.entries.size() != 1)
    return refuse("a finding written long starts with its spot", "add `spot: …`");
  const Entry& entry = item.entries.front();
  if (entry.value.kind != Node::Kind::scalar)
    return refuse("a finding is a spot's name, a colon and what was found",
                  "write the parts on one line with commas between them, or long with `spot:`");
  if (!is_short(page, entry.value, "a finding")) return std::nullopt;
  return finding_written_long(page, entry);
}

std::vector<Spot> read_found(Page& page, const Node& node, const body::Zone* plan) {
  std::vector<Spot> spots;
  if (node.kind != Node::Kind::sequence) {
    page.add({node.place, "\"found\" is a list", node.text, std::string(one_line),
              fmt::format("start each finding on a line of its own with `- `{}",
                          node.quoted ? ", without quotes" : "")});
    return spots;
  }
  std::map<std::string, int> lines;  // where each name stands
  for (const Node& item : node.items) {
    const std::size_t problems_before = page.problems.size();
    const auto finding = long_form(page, item, node.flow);
    if (!finding) continue;
    const bool complete = page.problems.size() == problems_before;
    Spot spot = read_spot(page, *finding, plan, complete);
    const auto [first, is_new] = lines.emplace(spot.name, spot.place.line);
    if (!is_new && !spot.name.empty())
      page.add({spot.place, "two findings of one zone have the same name", spot.name, "",
                fmt::format("the first is on line {}: name each spot apart", first->second)});
    spots.push_back(std::move(spot));
  }
  return spots;
}

// The keys that plan zones and own zones share.
ZoneReading read_keys(Page& page, MapReader& map, const body::Zone* plan) {
  ZoneReading read;
  Zone& zone = read.zone;
  if (const Node* seen = map.optional("seen")) read.seen = read_zone_seen(page, *seen);
  read_fields(page, map, zone_fields(), zone);
  if (const Node* found = map.optional("found")) zone.found = read_found(page, *found, plan);
  if (const Node* repairs = map.optional("repairs"))
    zone.repairs = read_repairs(page, *repairs, plan);
  return read;
}

// One of a table of the body plan's words.
template <class Value>
std::optional<Value> table_word(Page& page, const Node& node, std::string_view what,
                                std::span<const body::Word<Value>> table) {
  const auto text = scalar(page, node, what);
  if (!text) return std::nullopt;
  if (const auto value = body::value_of(*text, table)) return value;
  std::vector<std::string> allowed;
  for (const body::Word<Value>& entry : table) allowed.emplace_back(entry.word);
  unknown_word(page, node, what, allowed);
  return std::nullopt;
}

std::optional<body::View> view_of(Page& page, const Node& node) {
  return table_word(page, node, "a view", body::view_words());
}

std::optional<body::Carries> carries_of(Page& page, const Node& node) {
  return table_word(page, node, "what a zone carries", body::carries_words());
}

// The value whose word the node says, of a kind that belongs to the body plan; the first where it
// says none.
template <class Value>
Value body_word(Page& page, const Node& node, std::string_view what,
                std::initializer_list<Value> values) {
  const auto text = scalar(page, node, what);
  if (!text) return *values.begin();
  std::vector<std::string> allowed;
  for (const Value value : values) {
    if (body::word(value) == *text) return value;
    allowed.emplace_back(body::word(value));
  }
  unknown_word(page, node, what, allowed);
  return *values.begin();
}

body::Role role_of(Page& page, const Node& node) {
  return body_word(page, node, "a zone's role",
                   {body::Role::main, body::Role::local, body::Role::skin});
}

body::Side side_of(Page& page, const Node& node) {
  return body_word(page, node, "a zone's side",
                   {body::Side::left, body::Side::right, body::Side::centre});
}

}  // namespace

bool is_own_zone(std::string_view key) {
  return key.size() == 5 && key.substr(0, 4) == "own-" && key[4] >= 'a' && key[4] <= 'z';
}

ZoneReading read_zone(Page& page, const Entry& entry, const body::Zone* plan) {
  MapReader map(entry.value, page.problems, fmt::format("zone {}", entry.key));
  ZoneReading read = read_keys(page, map, plan);
  map.finish();
  read.zone.place = entry.key_place;
  return read;
}

OwnZone read_own_zone(Page& page, const Entry& entry) {
  OwnZone own;
  own.key = entry.key;
  MapReader map(entry.value, page.problems, fmt::format("zone {}", entry.key));
  if (const Node* name = map.required("name")) own.name = name_of(page, *name, "a zone's name");
  if (const Node* role = map.required("role")) own.role = role_of(page, *role);
  if (const Node* side = map.required("side")) own.side = side_of(page, *side);
  if (const Node* view = map.optional("view")) own.view = view_of(page, *view);
  if (const Node* at = map.optional("at")) own.at = read_position(page, *at);
  if (const Node* carries = map.optional("carries")) own.carries = carries_of(page, *carries);
  ZoneReading read = read_keys(page, map, nullptr);
  map.finish();
  own.zone = std::move(read.zone);
  own.zone.place = entry.key_place;
  if (read.seen)
    own.seen = std::move(*read.seen);
  else
    own.seen.share = 0;
  return own;
}

}  // namespace tinworm::survey
