#include "verbs/over_surveys.hpp"

#include <algorithm>

#include <fmt/format.h>

#include "output/file_error.hpp"
#include "output/progress.hpp"
#include "verbs/in_order.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {
namespace {

Outcome with_file_trouble(const Work& work, const std::string& file) {
  try {
    return work(file);
  } catch (const output::FileError& error) {
    return {{}, fmt::format("tinworm: {}\n", error.what()), {}, file_trouble};
  }
}

}  // namespace

ExitStatus over_surveys(const std::vector<std::string>& files, const CommonOptions& common,
                        const Streams& streams, const Work& work, const Take& take) {
  output::Progress progress(streams.messages, files.size(), !streams.quiet);
  ExitStatus worst = done;
  std::vector<std::string> bad;
  std::size_t taken = 0;
  in_order(
      files.size(), common.jobs, [&](std::size_t i) { return with_file_trouble(work, files[i]); },
      [&](const Outcome& outcome) {
        progress.wipe();
        if (!outcome.complaints.empty()) streams.complain(outcome.complaints);
        if (outcome.status != done) bad.push_back(files[taken]);
        worst = std::max(worst, outcome.status);
        take(outcome);
        progress.show(++taken);
      });
  progress.wipe();
  if (files.size() > 1 && !bad.empty()) {
    streams.complain(fmt::format("tinworm: {} of {} surveys have mistakes or could not be read:\n",
                                 bad.size(), files.size()));
    for (const std::string& file : bad) streams.complain(fmt::format("  {}\n", yaml::shown(file)));
  }
  return worst;
}

}  // namespace tinworm::verbs
