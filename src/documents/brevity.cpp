#include "documents/brevity.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace tinworm::documents {

std::string shortened(std::string_view text, std::size_t letters) {
  std::size_t end = 0, before_last = 0;
  for (std::size_t count = 0; count < letters && end < text.size(); ++count) {
    before_last = end;
    end = scene::whole_characters(text, end + 1);
  }
  if (end == text.size()) return std::string(text);
  std::string_view kept = text.substr(0, before_last);
  while (kept.ends_with(' ') || kept.ends_with(',')) kept.remove_suffix(1);
  return std::string(kept) + "\u2026";
}

weighing::Result shortened(weighing::Result result, std::size_t letters) {
  for (weighing::Zone& zone : result.zones) {
    zone.name = shortened(zone.name, letters);
    for (weighing::Spot& spot : zone.spots) {
      spot.name = shortened(spot.name, letters);
      spot.near_what = shortened(spot.near_what, letters);
    }
  }
  return result;
}

work::Plan shortened(work::Plan plan, std::size_t letters) {
  for (work::Task& task : plan.tasks) task.name = shortened(task.name, letters);
  for (work::Doubt& doubt : plan.doubts) doubt.name = shortened(doubt.name, letters);
  return plan;
}

std::string listed(const List& list, const scene::Style& style, std::size_t lines,
                   const scene::Writer& writer) {
  const std::size_t all = list.items.size();
  const auto text = [&](std::size_t shown) {
    std::string line = fmt::format("{}{}", list.head,
                                   fmt::join(list.items.begin(), list.items.begin() + shown, "; "));
    if (shown < all) line += fmt::format("; and {} more under {}", all - shown, list.rest_in);
    return line + ".";
  };
  const auto fits = [&](const std::string& line) {
    return scene::wrap(line, style, writer.area.width_mm, writer.measure).size() <= lines;
  };
  std::string most = text(all);
  if (all < 2 || fits(most)) return most;
  most = text(1);
  for (std::size_t shown = 2; shown < all; ++shown) {
    const std::string more = text(shown);
    if (!fits(more)) break;
    most = more;
  }
  return most;
}

}  // namespace tinworm::documents
