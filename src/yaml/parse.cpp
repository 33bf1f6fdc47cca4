#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <optional>
#include <unordered_map>

#include "yaml/agreement.hpp"
#include "yaml/characters.hpp"
#include "yaml/node.hpp"
#include "yaml/strict.hpp"
#include "yaml/token_rules.hpp"

namespace tinworm::yaml {
namespace {

// Makes the tree, writing aliases out. Collects every problem but those that end it: growth and
// depth beyond the limits.
class TreeBuilder {
 public:
  TreeBuilder(const std::vector<Event>& events, const Limits& limits)
      : events_(events), limits_(limits) {}

  tl::expected<Node, Problems> run() {
    std::size_t next = 0;
    Node root = node(next, 0);
    if (!problems_.empty()) return tl::unexpected(std::move(problems_));
    return root;
  }

 private:
  Node node(std::size_t& next, int depth) {
    const Event& event = events_[next];
    if (event.kind == Event::Kind::alias) return aliased(next, depth);
    Node made;
    made.place = event.place;
    made.quoted = event.quoted;
    made.flow = event.flow;
    if (!count()) return made;
    if (event.kind == Event::Kind::scalar) {
      ++next;
      made.kind = means_nothing(event) ? Node::Kind::empty : Node::Kind::scalar;
      made.text = event.text;
      check_text(event);
      return made;
    }
    if (depth >= limits_.depth) {
      stop(fmt::format("this alias nests lists and keys over {} deep", limits_.depth));
      return made;
    }
    ++next;
    made.kind = event.kind == Event::Kind::map_start ? Node::Kind::map : Node::Kind::sequence;
    if (made.kind == Node::Kind::map) {
      fill_map(made, next, depth + 1);
    } else {
      while (!stopped_ && events_[next].kind != Event::Kind::end)
        made.items.push_back(node(next, depth + 1));
    }
    ++next;
    return made;
  }

  Node aliased(std::size_t& next, int depth) {
    const Event& alias = events_[next++];
    auto from = static_cast<std::size_t>(alias.target);
    const bool outermost = !writing_out_;
    if (outermost) writing_out_ = alias.place;
    Node copy = node(from, depth);
    copy.place = alias.place;
    if (outermost) writing_out_.reset();
    return copy;
  }

  void fill_map(Node& map, std::size_t& next, int depth) {
    std::unordered_map<std::string, Place> seen;
    while (!stopped_ && events_[next].kind != Event::Kind::end) {
      const bool plain = events_[next].kind == Event::Kind::scalar && !events_[next].quoted;
      const Node key = node(next, depth);
      const bool sound = !stopped_ && check_key(key, plain, seen);
      if (stopped_) return;
      Node value = node(next, depth);
      if (sound) map.entries.push_back({key.text, key.place, std::move(value)});
    }
  }

  bool check_key(const Node& key, bool plain, std::unordered_map<std::string, Place>& seen) {
    if (key.kind == Node::Kind::sequence || key.kind == Node::Kind::map) {
      problems_.push_back({key.place, "a list or a set of keys stands where a key should", "",
                           "a plain word before the colon",
                           "quote it if it is text, or write a plain key"});
      return false;
    }
    if (key.kind == Node::Kind::empty) {
      problems_.push_back({key.place, "a key is missing before the colon", key.text,
                           "a plain word before the colon", "put one, or quote the key"});
      return false;
    }
    if (plain && key.text == "<<") {
      problems_.push_back({key.place, "merge keys (<<) are not read here", "", "",
                           "write out the keys that are meant"});
      return false;
    }
    const auto [first, fresh] = seen.emplace(key.text, key.place);
    if (!fresh)
      problems_.push_back(
          {key.place, fmt::format("the key stands twice; first in line {}", first->second.line),
           key.text, "", "take one of the two out"});
    return fresh;
  }

  // Escapes in double quotes can bring in what the file itself may not hold.
  void check_text(const Event& event) {
    for (std::size_t i = 0; i < event.text.size();) {
      const Character character = character_at(event.text, i);
      if (const std::string_view what = unfit(character.code); !what.empty()) {
        problems_.push_back(
            {event.place,
             fmt::format("an escape writes {} ({}) into the text", what, code_name(character.code)),
             "", "", "take the escape out"});
        return;
      }
      i += character.bytes;
    }
  }

  bool count() {
    if (++nodes_ <= limits_.nodes) return true;
    stop(fmt::format("with this alias written out the file holds over {} values", limits_.nodes));
    return false;
  }

  // Only aliases can lead beyond the limits here: the strict pass has counted the rest.
  void stop(std::string what) {
    if (!stopped_)
      problems_.push_back({writing_out_.value_or(Place{}), std::move(what), "", "",
                           "use fewer aliases (*name), or write out what is meant"});
    stopped_ = true;
  }

  const std::vector<Event>& events_;
  const Limits& limits_;
  Problems problems_;
  int nodes_ = 0;
  std::optional<Place> writing_out_;  // the outermost alias that is being written out
  bool stopped_ = false;
};

Problem too_big(std::size_t bytes, const Limits& limits) {
  return {{},
          fmt::format("the file has {} bytes; at most {} are read", bytes, limits.bytes),
          "",
          "",
          "check that it is the right file, or split it"};
}

}  // namespace

bool means_nothing(const Event& event) {
  constexpr std::array<std::string_view, 5> nothing{"", "~", "null", "Null", "NULL"};
  return !event.quoted && std::find(nothing.begin(), nothing.end(), event.text) != nothing.end();
}

tl::expected<Node, Problems> parse(std::string_view source, const Limits& limits) {
  if (source.size() > limits.bytes) return tl::unexpected(Problems{too_big(source.size(), limits)});
  if (source.starts_with("\xEF\xBB\xBF")) source.remove_prefix(3);
  if (auto bad = bad_characters(source); !bad.empty()) return tl::unexpected(std::move(bad));
  std::string ended;  // readers differ on a last line of spaces without an end
  if (!source.ends_with('\n')) {
    ended = std::string(source) + "\n";
    source = ended;
  }
  const auto events = strict_events(source, limits);
  if (!events) return tl::unexpected(Problems{events.error()});
  if (auto differs = disagreement(source, *events)) return tl::unexpected(Problems{*differs});
  if (auto broken = broken_token_rule(source)) return tl::unexpected(Problems{*broken});
  return TreeBuilder(*events, limits).run();
}

}  // namespace tinworm::yaml
