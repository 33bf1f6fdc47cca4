// The owner's paper: the answers on its first page, then the sheets, the findings with their
// photos, repairs, the shell, what wasn't seen, the plan of work, and how it was all judged.
// Private keys of the survey stand on it: it goes to the owner and to nobody else.
#pragma once

#include <vector>

#include "history/comparison.hpp"
#include "photos/photo.hpp"
#include "quantity/length.hpp"
#include "scene/sheet.hpp"
#include "weighing/result.hpp"
#include "work/plan.hpp"

namespace tinworm::documents {

struct ReportOptions {
  scene::Paper paper = scene::Paper::a4;
  quantity::Units units = quantity::Units::mm;
  // Of this survey, as its latest, and earlier ones: what changed since, and the date to look
  // again. May be null; must outlive the call.
  const history::Comparison* before = nullptr;
};

// Photos that `album` lacks are marked gaps. Every page has its number, the caution and the
// survey's fingerprint; links lead from places to the sheets and from the sheets' numbers back.
std::vector<scene::Page> report(const weighing::Result& result, const work::Plan& plan,
                                const photos::Album& album, const ReportOptions& options,
                                const scene::Measure& measure);

// The plan of work alone, for a workshop: no owner, registration, chassis number, place or price.
std::vector<scene::Page> work_paper(const weighing::Result& result, const work::Plan& plan,
                                    const ReportOptions& options, const scene::Measure& measure);

}  // namespace tinworm::documents
