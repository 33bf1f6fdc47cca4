#include "work/splices.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "weighing/nearness.hpp"
#include "work/job.hpp"

namespace tinworm::work {
namespace {

using geometry::Interval;
using weighing::ZoneFacts;

struct Source {
  double piece_mm;  // the least length of a piece
  double seam_mm;   // seams nearer than this are to be one, or farther apart
  const char* asks;
};

constexpr Source frames = {
    150, 300,
    "US Army TM 9-3990-260-14&P, 5-6, has splices of 150 mm or more, taken on to another weld "
    "within 300 mm (frames of vehicles: an analogy)"};
constexpr Source containers = {
    150, 150,
    "US Army TM 55-8115-203-23, 3-19 to 3-28, has pieces of 150 mm or more, their ends 150 mm or "
    "more from other seams (containers: an analogy)"};
constexpr double plain_crack_mm = 50;
constexpr double touching_mm = 1e-6;

const Source* source_for(const ZoneFacts& zone) {
  const body::Job part = kind_of_part(zone);
  if (part == body::Job::chassis_leg || part == body::Job::main_rail) return &frames;
  const bool box = zone.plan && zone.plan->build == body::Build::box;
  return box && zone.role == body::Role::main ? &containers : nullptr;
}

// The nearest seam that the piece doesn't reach, an end of the part or another piece.
double nearest_seam_mm(const Interval& piece, const std::vector<Interval>& others,
                       const Interval& part) {
  double nearest = part.length();
  const auto take = [&](double gap) {
    if (gap > touching_mm) nearest = std::min(nearest, gap);
  };
  take(piece.low - part.low);
  take(part.high - piece.high);
  for (const Interval& other : others) {
    take(other.low - piece.high);
    take(piece.low - other.high);
  }
  return nearest;
}

std::string place_text(const Cut& cut) {
  return cut.places.size() == 1
             ? cut.places.front()
             : fmt::format("{} and {} more", cut.places.front(), cut.places.size() - 1);
}

void ask_of_piece(std::vector<std::string>& questions, const Cut& cut,
                  const std::vector<Interval>& others, const Interval& part, const Source& source) {
  const double length_mm = cut.along_at->length();
  if (length_mm > part.length() - touching_mm) return;  // no seam across the part
  if (length_mm < source.piece_mm)
    questions.push_back(fmt::format("{}: should the piece be longer than {:.0f} mm? {}",
                                    place_text(cut), length_mm, source.asks));
  const double seam_mm = nearest_seam_mm(*cut.along_at, others, part);
  if (seam_mm < source.seam_mm)
    questions.push_back(
        fmt::format("{}: a new seam comes {:.0f} mm from another: should the piece go on to it? {}",
                    place_text(cut), seam_mm, source.asks));
}

}  // namespace

std::vector<std::string> splice_questions(const std::vector<Cut>& cuts, const ZoneFacts& zone) {
  std::vector<std::string> questions;
  const Source* source = source_for(zone);
  for (const Cut& cut : cuts) {
    if (!cut.certain) continue;
    if (cut.way == Way::crack && cut.plated && cut.crack_mm < plain_crack_mm)
      questions.push_back(fmt::format(
          "{}: is a weld without a plate enough? US Army TM 55-8115-203-23, 3-19 to 3-28, fills "
          "cracks under 50 mm (containers: an analogy)",
          place_text(cut)));
    if (!source || cut.way != Way::let_in || cut.whole || !cut.along_at) continue;
    std::vector<Interval> others;
    for (const Cut& other : cuts)
      if (&other != &cut && other.along_at && other.way == Way::let_in)
        others.push_back(*other.along_at);
    ask_of_piece(questions, cut, others, weighing::extent(zone.plan->extent, zone.plan->runs),
                 *source);
  }
  return questions;
}

}  // namespace tinworm::work
