#include "rates/reader.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include <tl/expected.hpp>

#include "quantity/figure.hpp"
#include "quantity/length.hpp"
#include "yaml/node.hpp"

namespace tinworm::rates {
namespace {

using quantity::Refusal;
using yaml::MapReader;
using yaml::Node;

constexpr std::size_t name_characters = 80;

bool is_share(const Rate& rate) {
  return rate.unit.starts_with('%');
}

std::string example(const Rate& rate, const std::string& currency) {
  Rates standard;
  standard.currency = currency;
  std::string text = value_text(standard, rate);
  for (std::size_t at; (at = text.find("–")) != text.npos;) text.replace(at, 3, " ");
  return text;
}

tl::unexpected<Refusal> refused(std::string what, std::string allowed, std::string cure,
                                int offset = 0) {
  return tl::make_unexpected(Refusal{std::move(what), std::move(allowed), std::move(cure), offset});
}

struct Figures {
  std::vector<double> values;
  std::string_view unit;  // what stands after them
};

tl::expected<Figures, Refusal> figures_of(std::string_view text) {
  Figures read;
  std::string_view rest = text;
  do {
    const auto figure = quantity::leading_figure(rest, text);
    if (!figure) return tl::make_unexpected(figure.error());
    read.values.push_back(figure->value);
    rest = figure->rest;
  } while (!rest.empty() && (rest.front() == '.' || (rest.front() >= '0' && rest.front() <= '9')));
  read.unit = rest;
  return read;
}

// What the figures must be multiplied by for the rate's unit; none where it is another.
std::optional<double> by_unit(const Rate& rate, std::string_view unit,
                              const std::string& currency) {
  if (is_share(rate)) {
    if (unit.empty()) return 1;
    return unit == "%" || unit == rate.unit ? std::optional(.01) : std::nullopt;
  }
  if (unit.empty() || unit == rate.unit) return 1;
  if (rate.unit.starts_with("per ")) {
    const bool known = unit == currency || unit == currency + " " + rate.unit;
    return known ? std::optional(1.0) : std::nullopt;
  }
  if (rate.unit != "mm") return std::nullopt;
  const auto length = quantity::parse_length_mm(fmt::format("1 {}", unit), quantity::Units::mm);
  return length ? std::optional(*length) : std::nullopt;
}

tl::expected<Range, Refusal> parse(const Rate& rate, std::string_view text,
                                   const std::string& currency) {
  auto read = figures_of(text);
  if (!read) return tl::make_unexpected(read.error());
  const auto by = by_unit(rate, read->unit, currency);
  if (!by)
    return refused("the unit is another", example(rate, currency), "reckon it over",
                   quantity::offset_in(text, read->unit));
  std::vector<double>& values = read->values;
  if (rate.single && values.size() != 1)
    return refused("takes one figure", example(rate, currency), "keep the likely one");
  if (values.size() != 1 && values.size() != 3)
    return refused("takes three figures, low, likely and high, or one for all",
                   example(rate, currency), "give all three, or one");
  for (double& each : values) each *= *by;
  if (values.size() == 1) return Range{values[0], values[0], values[0]};
  if (values[0] > values[1] || values[1] > values[2])
    return refused("low, likely and high must not fall", example(rate, currency),
                   "write the lowest first");
  return Range{values[0], values[1], values[2]};
}

std::string bounds_text(const Rate& rate) {
  const double by = is_share(rate) ? 100 : 1;
  const std::string unit = is_share(rate)                                       ? " %"
                           : rate.unit.starts_with("per ") || rate.unit.empty() ? ""
                                                                                : " " + rate.unit;
  return fmt::format("{:.6g} to {:.6g}{}", by * rate.least, by * rate.most, unit);
}

std::string default_text(const Rate& rate) {
  const std::string_view from =
      rate.standing == Standing::memory ? "from memory" : word(rate.standing);
  return fmt::format("the default, {}, is {}: {}", value_text(Rates{}, rate), from, rate.source);
}

class Reader {
 public:
  explicit Reader(std::string_view source) : source_(source) {}

  Reading read(const Node& root) {
    MapReader map(root, problems_, "the rates file");
    if (const Node* format = map.required("rates")) check_format(*format);
    if (const Node* name = map.optional("name")) file_.name = name_of(*name);
    if (const Node* currency = map.optional("currency")) read_currency(*currency, root);
    for (const Rate& each : table())
      if (const Node* node = map.optional(each.key)) set(each, *node);
    if (map.is_map()) find_unknown(root);
    std::stable_sort(problems_.begin(), problems_.end(),
                     [](const auto& a, const auto& b) { return a.place < b.place; });
    if (!problems_.empty()) return {std::nullopt, std::move(problems_)};
    return {std::move(file_), {}};
  }

 private:
  void check_format(const Node& node) {
    if (node.kind == Node::Kind::scalar && !node.quoted && node.text == "1") return;
    problems_.push_back(
        {node.place, "the rates are written in a format this reader doesn't know", node.text,
         "rates: 1",
         node.quoted ? "leave out the quotes" : "a newer tinworm may read it; else write 1"});
  }

  std::string name_of(const Node& node) {
    const std::string name(yaml::scalar(node, problems_, "the name of the rates"));
    const auto characters =
        std::ranges::count_if(name, [](char c) { return (c & 0xC0) != 0x80; });  // of UTF-8
    const bool fits = name.find_first_not_of(" \t\n") != name.npos &&
                      name.find('\n') == name.npos &&
                      static_cast<std::size_t>(characters) <= name_characters;
    if (node.kind == Node::Kind::scalar && !fits)
      problems_.push_back({node.place, "the name of the rates is one line of words", "",
                           fmt::format("{} characters", name_characters),
                           "fill it in, shorten it, or take the line break out"});
    return name;
  }

  void read_currency(const Node& node, const Node& root) {
    const std::string text(yaml::scalar(node, problems_, "the currency"));
    if (node.kind != Node::Kind::scalar) return;
    const bool known =
        text.size() == 3 && std::ranges::all_of(text, [](char c) { return c >= 'A' && c <= 'Z'; });
    if (!known) {
      problems_.push_back({node.place, "a currency is three capitals", node.text, "EUR",
                           "ISO 4217 has the letters of each currency"});
      return;
    }
    for (const char* key : {"hour", "sheet"})
      if (text != file_.rates.currency && !root.find(key))
        problems_.push_back(
            {node.place,
             fmt::format("\"{}\" stands at its default, which is in {}", key, file_.rates.currency),
             node.text, "", fmt::format("give \"{}\" too", key)});
    file_.rates.currency = text;
  }

  void set(const Rate& rate, const Node& node) {
    const std::string what = fmt::format("\"{}\"", rate.key);
    const std::string_view text = yaml::scalar(node, problems_, what);
    if (node.kind != Node::Kind::scalar) return;
    if (node.quoted) {
      problems_.push_back({node.place, fmt::format("{} stands without quotes", what), node.text, "",
                           "leave out the quotes"});
      return;
    }
    const auto now = parse(rate, text, file_.rates.currency);
    if (!now) {
      const Refusal& refusal = now.error();
      problems_.push_back(
          {yaml::place_inside(node, static_cast<std::size_t>(refusal.offset), source_),
           fmt::format("{}: {}", what, refusal.what), node.text, refusal.allowed, refusal.cure});
    } else if (now->low < rate.least || now->high > rate.most) {
      problems_.push_back({node.place, fmt::format("{}, {}, is out of bounds", what, rate.what),
                           node.text, bounds_text(rate), cure_of(rate, *now, text)});
    } else {
      put(rate, *now);
    }
  }

  static std::string cure_of(const Rate& rate, const Range& now, std::string_view text) {
    const bool meant_per_cent = is_share(rate) && text.find('%') == text.npos &&
                                now.low / 100 >= rate.least && now.high / 100 <= rate.most;
    return meant_per_cent ? fmt::format("did you mean {} %? {}", text, default_text(rate))
                          : default_text(rate);
  }

  // Another unit may miss the default by a last bit; nothing was changed then.
  void put(const Rate& rate, const Range& now) {
    const Range was = value(file_.rates, rate);
    const auto near = [](double a, double b) { return std::abs(a - b) <= 1e-12 * std::abs(b); };
    if (near(now.low, was.low) && near(now.likely, was.likely) && near(now.high, was.high)) return;
    if (rate.single)
      rate.single(file_.rates) = now.likely;
    else
      rate.range(file_.rates) = now;
  }

  // Not MapReader::finish(): with every rate named, the message would fill a screen.
  void find_unknown(const Node& root) {
    std::vector<std::string> keys = {"rates", "name", "currency"};
    for (const Rate& each : table()) keys.push_back(each.key);
    for (const yaml::Entry& entry : root.entries) {
      if (std::ranges::find(keys, entry.key) != keys.end()) continue;
      const std::string meant = yaml::did_you_mean(entry.key, keys);
      problems_.push_back({entry.key_place, "there is no such rate", entry.key, "",
                           !meant.empty() ? meant
                           : entry.value.kind == Node::Kind::map
                               ? "nothing is nested"
                               : "\"tinworm work SURVEY --format json\" has them all"});
    }
  }

  std::string_view source_;
  RatesFile file_;
  yaml::Problems problems_;
};

}  // namespace

Reading read_rates(std::string_view yaml) {
  const auto root = yaml::parse(yaml);
  if (!root) return {std::nullopt, root.error()};
  return Reader(yaml).read(*root);
}

}  // namespace tinworm::rates
