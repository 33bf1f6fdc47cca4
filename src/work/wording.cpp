#include "work/wording.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "work/job.hpp"

namespace tinworm::work {
namespace {

using weighing::ZoneFacts;

std::string whole_words(const ZoneFacts& zone) {
  return kind_of_part(zone) == body::Job::outer_arch
             ? "let in a new lip from end to end, past the limit as it is along most of its length"
             : "renew it from end to end, holed as it is near an end";
}

std::string way_words(const Cut& cut, const ZoneFacts& zone) {
  if (cut.whole) return whole_words(zone);
  switch (cut.way) {
    case Way::weld_up:
      return "weld up, or where the metal round it is too thin to weld let in a small piece";
    case Way::crack:
      return cut.plated ? "find what cracked it, drill the ends of the crack, weld it, plate over "
                          "it with a weld all round, check the bracket and what it carries"
                        : "find what cracked it, drill the ends of the crack, weld it";
    case Way::reopened:
      return "open it up";
    case Way::let_in:
      break;
  }
  return zone.plan ? "cut out to sound metal, let in new sheet, seam-welded all round"
                   : "undo, cut back to sound metal and make good with a seam weld";
}

struct Group {
  std::string how;
  std::vector<std::string> places;
};

void add(std::vector<Group>& groups, const std::string& how, const Cut& cut) {
  if (groups.empty() || groups.back().how != how) groups.push_back({how, {}});
  auto& places = groups.back().places;
  places.insert(places.end(), cut.places.begin(), cut.places.end());
}

}  // namespace

std::string cut_words(const std::vector<Cut>& cuts, const ZoneFacts& zone) {
  std::vector<Group> groups;
  std::vector<std::string> judged, words;
  for (const Cut& cut : cuts)
    if (cut.certain)
      add(groups, way_words(cut, zone), cut);
    else
      judged.insert(judged.end(), cut.places.begin(), cut.places.end());
  for (const Group& group : groups)
    words.push_back(fmt::format("{}: {}", group.how, fmt::join(group.places, ", ")));
  if (!judged.empty())
    words.push_back(fmt::format(
        "clean and measure, only judged so far: {}; where past the limit, cut it out and let in "
        "new sheet",
        fmt::join(judged, ", ")));
  if (is_folded_skin(zone))
    words.emplace_back(
        "the skin is folded round the door's frame: open the fold and close it again, or hang a "
        "new skin");
  else if (zone.plan && zone.plan->joined == body::Joined::bolted)
    words.emplace_back("it is bolted on, so a sound one in its place may be the better way");
  return fmt::format("{}", fmt::join(words, "; "));
}

}  // namespace tinworm::work
