#include "boxes/kept.hpp"

#include <algorithm>
#include <stdexcept>
#include <utility>

#include "boxes/section.hpp"
#include "boxes/stiffness.hpp"

namespace tinworm::boxes {
namespace {

struct Stiffness {
  double torsion_mm4 = 0;
  Bending bending;
};

void require(bool holds, const char* what) {
  if (!holds) throw std::invalid_argument(what);
}

void require_sound(const body::Box& box, const std::vector<WallStrips>& walls) {
  require(walls.size() == box.walls.size(), "boxes: one list of strips for each wall");
  require(box.from_mm < box.to_mm, "boxes: a box has a length");
  for (const WallStrips& wall : walls) {
    require(wall.sheet_mm > 0, "boxes: a wall has a sheet");
    for (const Strip& strip : wall.strips) {
      require(strip.lambda >= 0 && strip.lambda <= 1, "boxes: metal left is within 0 and 1");
    }
  }
}

std::vector<Strip> cut_to(const body::Box& box, const std::vector<Strip>& strips) {
  std::vector<Strip> within;
  for (Strip strip : strips) {
    strip.from_mm = std::max(strip.from_mm, box.from_mm);
    strip.to_mm = std::min(strip.to_mm, box.to_mm);
    if (strip.from_mm < strip.to_mm) within.push_back(strip);
  }
  return within;
}

std::vector<double> ends(const body::Box& box, const std::vector<WallStrips>& walls) {
  std::vector<double> ends{box.from_mm, box.to_mm};
  for (const WallStrips& wall : walls) {
    for (const Strip& strip : wall.strips) ends.insert(ends.end(), {strip.from_mm, strip.to_mm});
  }
  std::sort(ends.begin(), ends.end());
  ends.erase(std::unique(ends.begin(), ends.end()), ends.end());
  return ends;
}

// Of the section between two ends, where each strip lies all along or not at all.
Stiffness stiffness(const Section& section, const std::vector<WallStrips>& walls, double from_mm,
                    double to_mm) {
  std::vector<double> shear_mm, bending_mm;
  Stiffness found;
  for (std::size_t i = 0; i < walls.size(); ++i) {
    std::vector<Strip> here;
    for (const Strip& strip : walls[i].strips) {
      if (strip.from_mm <= from_mm && to_mm <= strip.to_mm) here.push_back(strip);
    }
    const double width = width_mm(section, i), sheet = walls[i].sheet_mm;
    shear_mm.push_back(width / shear_path(width, sheet, here));
    bending_mm.push_back(bending_sheet_mm(width, sheet, here));
    found.torsion_mm4 += open_torsion_mm4(width, sheet, here);
  }
  found.torsion_mm4 += closed_torsion_mm4(section, shear_mm);
  found.bending = bending(section, bending_mm);
  return found;
}

double lesser_share(const Bending& now, const Bending& sound) {
  const double greater = std::max(sound.about_u_mm4, sound.about_v_mm4);
  double share = 1;
  for (const auto& [left, all] : {std::pair{now.about_u_mm4, sound.about_u_mm4},
                                  std::pair{now.about_v_mm4, sound.about_v_mm4}}) {
    if (all > 1e-9 * greater) share = std::min(share, std::max(left, 0.0) / all);
  }
  return share;
}

}  // namespace

Kept kept(const body::Box& box, const std::vector<WallStrips>& walls) {
  require_sound(box, walls);
  std::vector<WallStrips> strips = walls;
  for (WallStrips& wall : strips) wall.strips = cut_to(box, wall.strips);
  std::vector<WallStrips> bare = walls;
  for (WallStrips& wall : bare) wall.strips.clear();

  const Section plane = section(box);
  for (std::size_t i = 0; i < walls.size(); ++i) {
    require(width_mm(plane, i) > 0, "boxes: a wall has a width");
  }
  const Stiffness sound = stiffness(plane, bare, box.from_mm, box.to_mm);
  const std::vector<double> cuts = ends(box, strips);
  Kept result{1, 1, {box.from_mm, box.to_mm}};
  double softness = 0;  // Σ l J0 / J
  for (std::size_t i = 1; i < cuts.size(); ++i) {
    const Stiffness now = stiffness(plane, strips, cuts[i - 1], cuts[i]);
    softness += (cuts[i] - cuts[i - 1]) * sound.torsion_mm4 / now.torsion_mm4;
    const double share = lesser_share(now.bending, sound.bending);
    if (share >= result.bending) continue;
    result.bending = share;
    result.weakest = {cuts[i - 1], cuts[i]};
  }
  result.twist = std::min(1.0, (box.to_mm - box.from_mm) / softness);
  return result;
}

}  // namespace tinworm::boxes
