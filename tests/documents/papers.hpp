// The owner's paper of a survey, with photos that it names.
#pragma once

#include <string>
#include <vector>

#include <fmt/format.h>

#include "documents/report.hpp"
#include "scene/fixture.hpp"
#include "work/plan.hpp"

namespace tinworm::documents::fixture {

// Photos numbered in the order in which the survey names them, all of one size.
struct Shot {
  survey::Survey survey;
  photos::Album album;
  int photos = 0;

  void take(std::vector<survey::Photo>& into, int how_many) {
    for (int i = 0; i < how_many; ++i) {
      const std::string path = fmt::format("photos/IMG_{}.jpg", ++photos);
      into.push_back({path, {}});
      const bool upright = photos % 4 == 0;
      album[path] = photos::Prepared{"jpeg", upright ? 1200 : 1600, upright ? 1600 : 1200};
    }
  }
};

struct Papers {
  weighing::Result result;
  work::Plan plan;
  std::vector<scene::Page> report, work;
};

inline Papers papers(const Shot& shot, const ReportOptions& options = {}) {
  Papers made;
  made.result = scene::fixture::weighed(shot.survey);
  made.plan = work::plan(made.result, rates::Rates{});
  made.report = report(made.result, made.plan, shot.album, options, scene::fixture::measured);
  made.work = work_paper(made.result, made.plan, options, scene::fixture::measured);
  return made;
}

}  // namespace tinworm::documents::fixture
