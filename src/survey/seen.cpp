#include "survey/seen.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "survey/value.hpp"
#include "survey/zone_name.hpp"

namespace tinworm::survey {
namespace {

using yaml::Entry;
using yaml::Node;

struct NamedZone {
  int number;
  Place place;
};

// `51-58`: the zones of the body between the two.
void add_range(Page& page, std::vector<NamedZone>& zones, Place place, std::string_view text) {
  const std::size_t hyphen = text.find('-');
  const auto first = zone_number(page, place, text.substr(0, hyphen));
  const Place second{place.line, place.column + static_cast<int>(hyphen) + 1};
  const auto last = zone_number(page, second, text.substr(hyphen + 1));
  if (!first || !last) return;
  if (*first >= *last) {
    page.add(
        {place, "a range runs from a lower zone to a higher one", std::string(text), "51-58", ""});
    return;
  }
  for (int number = *first; number <= *last; ++number)
    if (!page.body || plan_zone(page, number)) zones.push_back({number, place});
}

// Numbers and ranges between spaces.
std::vector<NamedZone> zones_in(Page& page, const Node& line) {
  std::vector<NamedZone> zones;
  if (!is_short(page, line, "a range of zones")) return zones;
  for (const std::string_view text : between_spaces(line.text)) {
    const Place place = page.part_of(line, text).place;
    const std::size_t hyphen = text.find('-');
    if (text.find(',') != std::string_view::npos)
      page.add(
          {place, "spaces stand between zones, not commas", std::string(text), "51-58 61", ""});
    else if (text.find("–") != std::string_view::npos)
      page.add({place, "a range has a plain hyphen, not a dash", std::string(text), "51-58", ""});
    else if (hyphen == 0 || hyphen == text.size() - 1)
      page.add({place, "a range is two zones with a hyphen between them, without spaces",
                std::string(text), "51-58", ""});
    else if (hyphen != std::string_view::npos)
      add_range(page, zones, place, text);
    else if (const auto number = zone_number(page, place, text))
      zones.push_back({*number, place});
  }
  return zones;
}

// A name rather than numbers.
bool is_name(std::string_view text) {
  return text.find_first_of("0123456789") == std::string_view::npos;
}

// Numbers and ranges, or the name of one zone: the words of a name stand together.
std::vector<NamedZone> zones_or_name(Page& page, const Node& node) {
  if (!is_name(node.text)) return zones_in(page, node);
  const auto number = zone_number(page, node.place, node.text);
  return number ? std::vector<NamedZone>{{*number, node.place}} : std::vector<NamedZone>{};
}

std::vector<NamedZone> zones_of(Page& page, const Node& node) {
  if (node.kind != Node::Kind::sequence)
    return unquoted(page, node, "a range of zones") ? zones_or_name(page, node)
                                                    : std::vector<NamedZone>{};
  std::vector<NamedZone> zones;
  for (const Node& item : node.items) {
    if (!unquoted(page, item, "a range of zones")) continue;
    const auto more = zones_or_name(page, item);
    zones.insert(zones.end(), more.begin(), more.end());
  }
  return zones;
}

double share_seen(SeenWord word) {
  return word == SeenWord::tap || word == SeenWord::hidden || word == SeenWord::not_fitted ? 0 : 1;
}

Seen seen_as(SeenWord word, Place place) {
  Seen seen;
  seen.word = word;
  seen.share = share_seen(word);
  seen.place = place;
  return seen;
}

// Share or reason: what `part` and `hidden` carry.
void add_detail(Page& page, Seen& seen, const Node& node) {
  if (seen.word == SeenWord::part)
    seen.share = share(page, node).value_or(0);
  else
    seen.reason = needed_text_of(page, node, "the reason why a zone was hidden");
}

bool carries_detail(SeenWord word) {
  return word == SeenWord::part || word == SeenWord::hidden;
}

void lacks_detail(Page& page, Place place, SeenWord word, std::string_view found) {
  if (word == SeenWord::part)
    page.add({place, "a zone seen in part needs its share", std::string(found),
              "part: {13: 60 %}; in a zone part 60 %", "say how much of it was seen"});
  else
    page.add({place, "a hidden zone needs its reason", std::string(found),
              "hidden: {71: carpet glued down}; in a zone {hidden: carpet glued down}",
              "say what hid it"});
}

class SeenReader {
 public:
  explicit SeenReader(Page& page) : page_(page) {}

  void read(SeenWord word, const Node& node) {
    if (!carries_detail(word)) {
      if (node.kind == Node::Kind::map)
        page_.add({node.place, fmt::format("\"{}\" has zones and no more", survey::word(word)), "",
                   "51-58 61", "only part carries a share and hidden a reason"});
      else
        for (const NamedZone& zone : zones_of(page_, node)) name(zone, seen_as(word, zone.place));
      return;
    }
    if (node.kind != Node::Kind::map) return lacks_detail(page_, node.place, word, node.text);
    for (const Entry& entry : node.entries) {
      if (is_rest_of_a_reason(entry, node)) {
        page_.add({entry.key_place, "words without a zone", entry.key,
                   "hidden: {71: \"carpet glued down, not lifted\"}",
                   "a reason with commas stands in quotes"});
        continue;
      }
      Seen seen = seen_as(word, entry.key_place);
      if (entry.value.kind == Node::Kind::empty)
        lacks_detail(page_, entry.key_place, word, entry.key);
      else
        add_detail(page_, seen, entry.value);
      Node key;
      key.place = entry.key_place;
      key.text = entry.key;
      for (const NamedZone& zone : zones_or_name(page_, key)) name(zone, seen);
    }
  }

  std::map<int, Seen> take() { return std::move(zones_); }

 private:
  // In braces a comma ends a reason: `{71: carpet, not lifted}` has a key "not lifted".
  bool is_rest_of_a_reason(const Entry& entry, const Node& node) const {
    const bool nothing = entry.value.kind == Node::Kind::empty && entry.value.text.empty();
    const bool words = !entry.key.empty() && (entry.key[0] < '0' || entry.key[0] > '9');
    return node.flow && nothing && words && !(page_.body && zone_named(*page_.body, entry.key));
  }

  void name(const NamedZone& zone, Seen seen) {
    seen.place = zone.place;
    const auto [before, is_new] = zones_.emplace(zone.number, seen);
    if (is_new) return;
    page_.add({zone.place, fmt::format("zone {} is named twice under \"seen\"", zone.number), "",
               "",
               fmt::format("it was {} on line {}: keep one",
                           survey::word(before->second.word.value()), before->second.place.line)});
  }

  Page& page_;
  std::map<int, Seen> zones_;
};

// `part 60 %` or `hidden, carpet glued down`: the word, then what it carries.
Seen seen_in_line(Page& page, const Node& node) {
  const std::string_view line = node.text;
  const std::size_t word_end = std::min(line.find_first_of(" ,"), line.size());
  const auto word = of<SeenWord>(line.substr(0, word_end));
  if (!word) {
    unknown_word(page, node, "how a zone was seen", words<SeenWord>());
    return {};
  }
  Seen seen = seen_as(*word, node.place);
  const std::size_t after = line.find_first_not_of(" ,", word_end);
  if (after == std::string_view::npos) {
    if (carries_detail(*word)) lacks_detail(page, node.place, *word, line);
    return seen;
  }
  const Node detail = page.part_of(node, line.substr(after));
  if (carries_detail(*word))
    add_detail(page, seen, detail);
  else
    page.add({detail.place, fmt::format("nothing follows \"{}\"", survey::word(*word)), detail.text,
              "", "put remarks under note"});
  return seen;
}

// `{hidden: carpet glued down}`, `{part: 60 %}`
Seen seen_in_map(Page& page, const Node& node) {
  yaml::MapReader map(node, page.problems, "how a zone was seen");
  Seen seen;
  for (const SeenWord word : {SeenWord::part, SeenWord::hidden}) {
    const Node* detail = map.optional(survey::word(word));
    if (!detail) continue;
    if (seen.word)
      page.add({detail->place, "a zone is seen in one way", "", "", "keep part or hidden"});
    seen = seen_as(word, node.place);
    add_detail(page, seen, *detail);
  }
  map.finish();
  if (map.is_map() && node.entries.empty())
    page.add({node.place, "how a zone was seen is empty", "", "{hidden: carpet glued down}", ""});
  return seen;
}

std::string cure_for(const Seen& seen) {
  if (!seen.word) return "say under \"seen\" how the zone was seen";
  if (*seen.word == SeenWord::hidden)
    return "where some of it was reached, say so: \"tap\" if it was only felt, else \"part 10 %\"; "
           "or "
           "take the finding out";
  return "say under \"seen\" how the place was seen, or take the finding out";
}

std::string where_zones_are_listed(const Page& page) {
  return page.body ? fmt::format("`tinworm bodies {}` lists its zones", page.body->name) : "";
}

}  // namespace

std::optional<int> zone_number(Page& page, Place place, std::string_view text) {
  const bool two_digits =
      text.size() == 2 && text.find_first_not_of("0123456789") == std::string_view::npos;
  const int number = two_digits ? (text[0] - '0') * 10 + (text[1] - '0') : 0;
  if (number < 10 || number > 98) {
    if (page.body)
      if (const auto named = zone_named(*page.body, text)) return named;
    const std::string near = page.body ? nearest_zone(*page.body, text) : "";
    page.add({place, "a zone is a number of two digits, or its name with its side",
              std::string(text), "10 to 98; left outer sill",
              near.empty() ? where_zones_are_listed(page) : fmt::format("did you mean {}?", near)});
    return std::nullopt;
  }
  if (page.body && !plan_zone(page, number)) {
    page.add({place, fmt::format("the body has no zone {}", number), "", "",
              where_zones_are_listed(page)});
    return std::nullopt;
  }
  return number;
}

std::map<int, Seen> read_seen(Page& page, const Node& node) {
  const std::size_t problems_before = page.problems.size();
  SeenReader reader(page);
  yaml::MapReader map(node, page.problems, "\"seen\"");
  for (const Entry& entry : node.entries)
    if (const auto known = of<SeenWord>(entry.key))
      if (const Node* zones = map.optional(entry.key)) reader.read(*known, *zones);
  for (const std::string& known : words<SeenWord>()) map.optional(known);  // all known to finish()
  map.finish();
  if (page.problems.size() > problems_before) page.seen_unclear = true;
  return reader.take();
}

Seen read_zone_seen(Page& page, const Node& node) {
  const std::size_t problems_before = page.problems.size();
  Seen seen;
  if (node.kind == Node::Kind::map)
    seen = seen_in_map(page, node);
  else if (scalar(page, node, "how a zone was seen"))
    seen = seen_in_line(page, node);
  if (page.problems.size() > problems_before) page.seen_unclear = true;
  return seen;
}

void check_findings_were_seen(Page& page, std::string_view zone_name, const Seen& seen,
                              const Zone& zone) {
  const bool found = !zone.found.empty() || !zone.repairs.empty() || !zone.film_um.empty() ||
                     !zone.reference_mm.empty() || zone.drains || zone.inside == Inside::scoped;
  const bool seen_somehow =
      seen.word && *seen.word != SeenWord::hidden && *seen.word != SeenWord::not_fitted;
  if (!found || seen_somehow || (!seen.word && page.seen_unclear)) return;
  Place place = zone.place;
  if (!zone.found.empty())
    place = zone.found.front().place;
  else if (!zone.repairs.empty())
    place = zone.repairs.front().place;
  const std::string how = !seen.word                       ? "was not seen"
                          : *seen.word == SeenWord::hidden ? "was hidden"
                                                           : "is not fitted";
  page.add({place, fmt::format("{} {}, yet something was found in it", zone_name, how), "",
            "bare, coated, part, scope or tap", cure_for(seen)});
}

}  // namespace tinworm::survey
