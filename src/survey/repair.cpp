#include "survey/repair.hpp"

#include <algorithm>

#include "survey/field.hpp"
#include "survey/finding.hpp"
#include "survey/station.hpp"
#include "survey/value.hpp"

namespace tinworm::survey {
namespace {

using yaml::Entry;
using yaml::MapReader;
using yaml::Node;

constexpr std::string_view one_line = "- let-in, seam-weld, 300x120, 2021-05, cut-out, sound";

// `complete` is false where parts of a line could not be read: the kind may have been among them.
Repair read_repair(Page& page, const Node& node, const body::Zone* zone, bool complete) {
  Repair repair;
  repair.place = node.place;
  MapReader map(node, page.problems, "a repair");
  if (const Node* name = map.optional("spot"))
    repair.name = name_of(page, *name, "where a repair is");
  if (complete) map.required("kind");
  read_fields(page, map, repair_fields(), repair);
  if (zone) stand_at_station(repair, node.find("at") != nullptr, *zone);
  map.finish();
  return repair;
}

// `line` is a node, or an entry whose key says where the repair is.
template <class Line>
Repair read_line(Page& page, const Line& line, const body::Zone* zone) {
  const std::size_t problems_before = page.problems.size();
  const Node repair = repair_written_long(page, line);
  return read_repair(page, repair, zone, page.problems.size() == problems_before);
}

// `- rear end: let-in, seam-weld`: one key that is none of a repair's, in a list of lines.
bool is_named_line(const Node& list, const Node& item) {
  if (list.flow || item.flow || item.entries.size() != 1) return false;
  const Entry& only = item.entries.front();
  return only.key != "spot" && only.value.kind == Node::Kind::scalar &&
         std::ranges::none_of(repair_fields(), [&](const Field<Repair>& field) {
           return field.facts.key == only.key;
         });
}

}  // namespace

std::vector<Repair> read_repairs(Page& page, const Node& node, const body::Zone* zone) {
  std::vector<Repair> repairs;
  if (node.kind != Node::Kind::sequence) {
    page.add({node.place, "\"repairs\" is a list", node.text, std::string(one_line),
              "start each repair with `- `"});
    return repairs;
  }
  for (const Node& item : node.items) {
    if (item.kind == Node::Kind::map && is_named_line(node, item)) {
      const Entry& line = item.entries.front();
      if (is_short(page, line.value, "a repair")) repairs.push_back(read_line(page, line, zone));
    } else if (item.kind == Node::Kind::map)
      repairs.push_back(read_repair(page, item, zone, true));
    else if (item.kind != Node::Kind::scalar)
      page.add({item.place, "a repair is a line of parts, or keys with values", "",
                std::string(one_line), ""});
    else if (node.flow && !item.quoted)
      page.add({item.place, "a repair on one line stands in a list of lines, not in brackets",
                item.text, std::string(one_line),
                "start a new line with `- `: in brackets each comma starts another repair"});
    else if (is_short(page, item, "a repair"))
      repairs.push_back(read_line(page, item, zone));
  }
  return repairs;
}

}  // namespace tinworm::survey
