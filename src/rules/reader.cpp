#include "rules/reader.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include <fmt/format.h>
#include <fmt/ranges.h>
#include <tl/expected.hpp>

#include "quantity/ascii.hpp"
#include "quantity/figure.hpp"
#include "quantity/length.hpp"
#include "yaml/node.hpp"

namespace tinworm::rules {
namespace {

using quantity::Refusal;
using yaml::Entry;
using yaml::MapReader;
using yaml::Node;

constexpr std::size_t name_characters = 80;

tl::expected<double, Refusal> parse_share(std::string_view text) {
  const auto figure = quantity::leading_figure(text, text);
  if (!figure) return tl::make_unexpected(figure.error());
  if (figure->rest == "%") return figure->value / 100;
  if (figure->rest.empty()) return figure->value;
  return tl::make_unexpected(Refusal{"a share has no unit but per cent", "85 %, .85", "",
                                     quantity::offset_in(text, figure->rest)});
}

tl::expected<double, Refusal> parse(const Constant& constant, std::string_view text) {
  switch (written(constant)) {
    case Written::length:
      return quantity::parse_length_mm(text, quantity::Units::mm);
    case Written::film:
      return quantity::parse_film_um(text);
    case Written::share:
      return parse_share(text);
    case Written::number:
      break;
  }
  return quantity::parse_number(text);
}

// "50 to 1000 mm", "50 to 100 % of the sheet"
std::string bounds_text(const Constant& constant) {
  const double least = written(constant) == Written::share ? 100 * constant.low : constant.low;
  return fmt::format("{:.10g} to {}", least, value_text(constant, constant.high));
}

// "the default, 300 mm, is published: UK MOT inspection manual …"
std::string default_text(const Constant& constant) {
  const std::string now = value_text(constant, value(Rules{}, constant));
  const std::string_view is = constant.standing == Standing::memory ? "from" : "";
  return fmt::format("the default, {}, is {}{}{}{}{}", now, is, is.empty() ? "" : " ",
                     word(constant.standing), constant.source.empty() ? "" : ": ", constant.source);
}

std::string key_text(const Rules& rules, const std::string& key) {
  const Constant& known = constant(key);
  return fmt::format("{} ({})", key, value_text(known, value(rules, known)));
}

bool is_boolean_elsewhere(std::string_view name) {
  constexpr std::array booleans{"yes", "no", "on", "off", "true", "false", "y", "n"};
  return std::ranges::find(booleans, quantity::lower_case(name)) != booleans.end();
}

class Reader {
 public:
  explicit Reader(std::string_view source) : source_(source) {}

  Reading read(const Node& root) {
    MapReader map(root, problems_, "the rules file");
    if (const Node* format = map.required("rules")) check_format(*format);
    if (const Node* name = map.optional("name")) file_.name = name_of(*name);
    for (const Constant& each : constants())
      if (const Node* node = map.optional(each.key)) set(each, *node);
    find_unknown(root);
    for (const Order& each : order()) check(each, root);
    std::stable_sort(problems_.begin(), problems_.end(),
                     [](const auto& a, const auto& b) { return a.place < b.place; });
    if (!problems_.empty()) return {std::nullopt, std::move(problems_)};
    return {std::move(file_), {}};
  }

 private:
  void check_format(const Node& node) {
    if (node.kind == Node::Kind::scalar && !node.quoted && node.text == "1") return;
    problems_.push_back(
        {node.place, "the rules are written in a format this reader doesn't know", node.text,
         "rules: 1",
         node.quoted ? "leave out the quotes" : "a newer tinworm may read it; else write 1"});
  }

  std::string name_of(const Node& node) {
    const std::string name(yaml::scalar(node, problems_, "the name of the rules"));
    if (node.kind != Node::Kind::scalar) return name;
    const auto refuse = [&](const char* what, std::string allowed, const char* cure) {
      problems_.push_back({node.place, what, "", std::move(allowed), cure});
    };
    const auto characters =
        std::ranges::count_if(name, [](char c) { return (c & 0xC0) != 0x80; });  // of UTF-8
    if (!node.quoted && is_boolean_elsewhere(name))
      refuse("other YAML readers take this name as true or false", "", "quote it");
    else if (name.find_first_not_of(" \t\n") == name.npos)
      refuse("the name of the rules is blank", "", "fill it in or leave it out");
    else if (name.find('\n') != name.npos)
      refuse("the name of the rules stands on one line", "", "write it without a line break");
    else if (static_cast<std::size_t>(characters) > name_characters)
      refuse("the name of the rules is too long", fmt::format("{} characters", name_characters),
             "shorten it");
    return name;
  }

  void set(const Constant& known, const Node& node) {
    const auto now = value_of(known, node);
    if (!now) {
      bad_.push_back(known.key);
      return;
    }
    // Another unit may miss the default by a last bit; nothing was changed then.
    double& constant = known.of(file_.rules);
    if (std::abs(*now - constant) > 1e-12 * std::abs(constant)) constant = *now;
  }

  std::optional<double> value_of(const Constant& known, const Node& node) {
    const std::string what = fmt::format("\"{}\"", known.key);
    const std::string_view text = yaml::scalar(node, problems_, what);
    if (node.kind != Node::Kind::scalar) return std::nullopt;
    if (node.quoted) {
      problems_.push_back({node.place, fmt::format("{} stands without quotes", what), node.text, "",
                           "leave out the quotes"});
      return std::nullopt;
    }
    const auto now = parse(known, text);
    if (!now) {
      const Refusal& refusal = now.error();
      problems_.push_back(
          {yaml::place_inside(node, static_cast<std::size_t>(refusal.offset), source_),
           fmt::format("{}: {}", what, refusal.what), node.text, refusal.allowed, refusal.cure});
      return std::nullopt;
    }
    if (*now >= known.low && *now <= known.high) return *now;
    problems_.push_back({node.place, fmt::format("{}, {}, is out of bounds", what, known.what),
                         node.text, bounds_text(known), out_of_bounds_cure(known, *now, text)});
    return std::nullopt;
  }

  static std::string out_of_bounds_cure(const Constant& known, double now, std::string_view text) {
    std::string cure = default_text(known);
    const bool meant_per_cent = written(known) == Written::share && text.find('%') == text.npos &&
                                now / 100 >= known.low && now / 100 <= known.high;
    if (meant_per_cent) cure = fmt::format("did you mean {} %? {}", text, cure);
    return cure;
  }

  // Not MapReader::finish(): with every constant named, the message would fill a screen.
  void find_unknown(const Node& root) {
    std::vector<std::string> keys = {"rules", "name"};
    for (const Constant& each : constants()) keys.push_back(each.key);
    for (const Entry& entry : root.entries) {
      if (std::ranges::find(keys, entry.key) != keys.end()) continue;
      if (entry.key == "rust.hole" || entry.key.starts_with("rust.hole.")) {
        problems_.push_back({entry.key_place, "there is no such rule", entry.key, "",
                             "a hole leaves no metal, whatever the rules"});
        continue;
      }
      const std::string meant = yaml::did_you_mean(entry.key, keys);
      problems_.push_back({entry.key_place, "there is no such rule", entry.key,
                           meant.empty() ? like(entry.key, keys) : "", cure_for(entry, meant)});
    }
  }

  static std::string cure_for(const Entry& entry, const std::string& meant) {
    if (entry.value.kind == Node::Kind::map)
      return "nothing is nested: write each whole key, as in rust.pitting.least: 60 %";
    return meant.empty() ? "\"tinworm schema rules\" has them all" : meant;
  }

  // The keys that begin with the same word, "rust.…", "film-…".
  static std::string like(std::string_view key, const std::vector<std::string>& keys) {
    const std::string_view first = key.substr(0, key.find_first_of(".-"));
    std::vector<std::string> found;
    for (const std::string& each : keys)
      if (each.substr(0, each.find_first_of(".-")) == first) found.push_back(each);
    return found.size() > 12
               ? fmt::format("{}, …", fmt::join(found.begin(), found.begin() + 12, ", "))
               : fmt::format("{}", fmt::join(found, ", "));
  }

  // One problem for each pair out of order, at the later of the two that the file sets.
  void check(const Order& order, const Node& root) {
    for (std::size_t i = 1; i < order.keys.size(); ++i) {
      const std::string &less = order.keys[i - 1], &more = order.keys[i];
      const auto is_bad = [&](const std::string& key) {
        return std::ranges::find(bad_, key) != bad_.end();
      };
      const Node *less_node = root.find(less), *more_node = root.find(more);
      if (is_bad(less) || is_bad(more) || (!less_node && !more_node)) continue;
      const double low = value(file_.rules, constant(less));
      const double high = value(file_.rules, constant(more));
      if (order.strictly ? low < high : low <= high) continue;
      const bool at_more = !less_node || (more_node && less_node->place < more_node->place);
      const Node& node = at_more ? *more_node : *less_node;
      const std::string unset = !less_node ? less : !more_node ? more : "";
      problems_.push_back(
          {node.place,
           fmt::format("{} must be {} {}", key_text(file_.rules, less),
                       order.strictly ? "under" : "no more than", key_text(file_.rules, more)),
           node.text, "",
           unset.empty() ? "change one of the two"
                         : fmt::format("{} stands at its default: set it too", unset)});
    }
  }

  std::string_view source_;
  RulesFile file_;
  std::vector<std::string> bad_;  // keys whose values could not be taken
  yaml::Problems problems_;
};

std::vector<Order> all_orders() {
  std::vector<Order> all;
  // Envelopes, wherever the table has one.
  for (const Constant& each : constants()) {
    if (!each.key.ends_with(".likely")) continue;
    const std::string of = each.key.substr(0, each.key.rfind('.'));
    all.push_back({{of + ".least", of + ".likely", of + ".most"}});
  }
  all.push_back({{"pit-through.most", "pit.most"}});
  all.push_back({{"crack-on-mount.most", "crack.most"}});
  all.push_back({{"on-mount", "into-mount", "near-radius"}});
  for (const std::string use : {"stored", "dry-season", "all-weather", "salted"})
    all.push_back({{"rate-" + use + ".low", "rate-" + use + ".high"}});
  all.push_back({{"seen-part.least", "seen-coated.least", "seen-bare.least"}});
  all.push_back({{"weak-limit", "repair-limit", "sound-limit"}, true});
  all.push_back({{"film-factory", "film-repainted", "film-heavy"}, true});
  all.push_back({{"damage.sound", "damage.limit", "damage.weak"}});
  all.push_back({{"unseen-neighbour-good.high", "unseen.high"}});
  return all;
}

}  // namespace

const std::vector<Order>& order() {
  static const std::vector<Order> all = all_orders();
  return all;
}

Reading read_rules(std::string_view yaml) {
  const auto root = yaml::parse(yaml);
  if (!root) return {std::nullopt, root.error()};
  return Reader(yaml).read(*root);
}

}  // namespace tinworm::rules
