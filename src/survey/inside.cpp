#include "survey/inside.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "quantity/figure.hpp"
#include "survey/value.hpp"

namespace tinworm::survey {
namespace {

using quantity::trimmed;
using yaml::Entry;
using yaml::Node;

void add_drains(Page& page, Zone& zone, std::string where, Place place, Drains drains) {
  if (std::ranges::find(zone.drains_at, where, &DrainsAt::where) != zone.drains_at.end())
    page.add({place, "a place's drain holes stand twice", std::move(where), "", "keep one"});
  else
    zone.drains_at.push_back({std::move(where), drains});
}

// `front end blocked`: the last word says how, what stands before it where.
void read_drains_part(Page& page, const Node& part, Zone& zone) {
  const std::size_t last = part.text.find_last_of(' ');
  if (part.text.empty() || last == std::string::npos)
    return page.add({part.place, "drain holes by place are a place and a word for each", part.text,
                     "front end blocked, rear end open", "one word alone is for all of them"});
  const Node how = page.part_of(part, std::string_view(part.text).substr(last + 1));
  if (const auto drains = word_of<Drains>(page, how, "drain holes"))
    add_drains(page, zone, std::string(trimmed(std::string_view(part.text).substr(0, last))),
               part.place, *drains);
}

void read_drains_line(Page& page, const Node& node, Zone& zone) {
  const std::string_view text = node.text;
  const bool by_place = text.find_first_of(" ,") != std::string_view::npos;
  if (!by_place) {
    zone.drains = word_of<Drains>(page, node, "drain holes");
    return;
  }
  for (std::size_t start = 0; start <= text.size();) {
    const std::size_t end = std::min(text.find(',', start), text.size());
    read_drains_part(page, page.part_of(node, trimmed(text.substr(start, end - start))), zone);
    start = end + 1;
  }
}

}  // namespace

void read_inside(Page& page, const Node& node, Zone& zone) {
  const auto text = scalar(page, node, "inside");
  if (!text) return;
  const std::size_t end = std::min(text->find_first_of(" ,"), text->size());
  const auto inside = of<Inside>(text->substr(0, end));
  if (!inside) return unknown_word(page, node, "inside", words<Inside>());
  const std::size_t behind = std::min(text->find_first_not_of(" ,", end), text->size());
  const std::string_view rest = text->substr(behind);
  zone.inside = inside;
  if (*inside == Inside::part) {
    if (rest.empty())
      page.add({node.place, "an inside seen in part needs its share", std::string(*text),
                "part 40 %", "say how much of it was looked into"});
    else
      zone.inside_share = share(page, page.part_of(node, rest)).value_or(0);
  } else if (!rest.empty()) {
    page.add({page.part_of(node, rest).place, fmt::format("nothing follows \"{}\"", word(*inside)),
              std::string(rest), "", "put remarks under note"});
  }
}

std::string inside_text(const Zone& zone) {
  if (!zone.inside) return "";
  if (*zone.inside != Inside::part) return std::string(word(*zone.inside));
  return fmt::format("part {:g} %", 100 * zone.inside_share);
}

void read_drains(Page& page, const Node& node, Zone& zone) {
  if (node.kind == Node::Kind::map) {
    if (node.entries.empty())
      page.add({node.place, "drain holes by place are empty", "", "{front end: blocked}", ""});
    for (const Entry& entry : node.entries)
      if (const auto drains = word_of<Drains>(page, entry.value, "drain holes"))
        add_drains(page, zone, entry.key, entry.key_place, *drains);
  } else if (scalar(page, node, "drain holes") && is_short(page, node, "drain holes")) {
    read_drains_line(page, node, zone);
  }
  if (zone.drains_at.empty()) return;
  const auto shut = std::ranges::find_if(
      zone.drains_at, [](const DrainsAt& at) { return at.drains != Drains::open; });
  zone.drains = shut == zone.drains_at.end() ? Drains::open : shut->drains;
}

std::string drains_text(const Zone& zone) {
  std::vector<std::string> parts;
  for (const DrainsAt& at : zone.drains_at)
    parts.push_back(fmt::format("{} {}", at.where, word(at.drains)));
  if (parts.empty() && zone.drains) return std::string(word(*zone.drains));
  return fmt::format("{}", fmt::join(parts, ", "));
}

std::vector<Mark> read_marks(Page& page, const Node& node) {
  std::vector<Mark> marks;
  const yaml::MapReader map(node, page.problems, "\"mark\"");
  if (map.is_map() && node.entries.empty())
    page.add({node.place, "\"mark\" is empty", "", "{rear end: 25 above the seam}", ""});
  for (const Entry& entry : node.entries)
    marks.push_back({entry.key, needed_text_of(page, entry.value, "how to find a place again")});
  return marks;
}

std::string marks_text(const std::vector<Mark>& marks) {
  std::vector<std::string> parts;
  for (const Mark& mark : marks) parts.push_back(fmt::format("{}: {}", mark.where, mark.how));
  return fmt::format("{}", fmt::join(parts, "; "));
}

}  // namespace tinworm::survey
