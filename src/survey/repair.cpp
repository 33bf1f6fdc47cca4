#include "survey/repair.hpp"

#include "survey/field.hpp"
#include "survey/finding.hpp"
#include "survey/value.hpp"

namespace tinworm::survey {
namespace {

using yaml::MapReader;
using yaml::Node;

constexpr std::string_view one_line = "- let-in, seam-weld, 300x120, 2021-05, cut-out, sound";

// `complete` is false where parts of a line could not be read: the kind may have been among them.
Repair read_repair(Page& page, const Node& node, bool complete) {
  Repair repair;
  repair.place = node.place;
  MapReader map(node, page.problems, "a repair");
  if (complete) map.required("kind");
  read_fields(page, map, repair_fields(), repair);
  map.finish();
  return repair;
}

Repair read_line(Page& page, const Node& line) {
  const std::size_t problems_before = page.problems.size();
  const Node repair = repair_written_long(page, line);
  return read_repair(page, repair, page.problems.size() == problems_before);
}

}  // namespace

std::vector<Repair> read_repairs(Page& page, const Node& node) {
  std::vector<Repair> repairs;
  if (node.kind != Node::Kind::sequence) {
    page.add({node.place, "\"repairs\" is a list", node.text, std::string(one_line),
              "start each repair with `- `"});
    return repairs;
  }
  for (const Node& item : node.items) {
    if (item.kind == Node::Kind::map)
      repairs.push_back(read_repair(page, item, true));
    else if (item.kind != Node::Kind::scalar)
      page.add({item.place, "a repair is a line of parts, or keys with values", "",
                std::string(one_line), ""});
    else if (node.flow && !item.quoted)
      page.add({item.place, "a repair on one line stands in a list of lines, not in brackets",
                item.text, std::string(one_line),
                "start a new line with `- `: in brackets each comma starts another repair"});
    else if (is_short(page, item, "a repair"))
      repairs.push_back(read_line(page, item));
  }
  return repairs;
}

}  // namespace tinworm::survey
