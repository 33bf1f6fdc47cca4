#include "survey/repair.hpp"

#include "survey/finding.hpp"
#include "survey/photo.hpp"
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
  if (const Node* kind = complete ? map.required("kind") : map.optional("kind"))
    repair.kind = word_of<RepairKind>(page, *kind, "a kind of repair").value_or(RepairKind::let_in);
  if (const Node* joint = map.optional("joint"))
    repair.joint = word_of<Joint>(page, *joint, "a joint");
  if (const Node* size = map.optional("size")) repair.size = size_mm(page, *size);
  if (const Node* day = map.optional("date"))
    repair.date = past_date(page, *day, "the date of a repair");
  if (const Node* beneath = map.optional("beneath"))
    repair.beneath = word_of<Beneath>(page, *beneath, "what is beneath");
  if (const Node* now = map.optional("now")) {
    repair.now = word_of<Now>(page, *now, "how a repair is now").value_or(Now::sound);
    repair.now_assumed = false;
  }
  if (const Node* photo = map.optional("photo")) repair.photos = read_photos(page, *photo);
  if (const Node* note = map.optional("note")) repair.note = text_of(page, *note, "a note");
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
