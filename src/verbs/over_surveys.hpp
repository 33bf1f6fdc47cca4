// What verbs that read many surveys have in common.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "output/table.hpp"
#include "verbs/exit_status.hpp"
#include "verbs/options.hpp"
#include "verbs/streams.hpp"

namespace tinworm::verbs {

struct Outcome {           // of one survey
  std::string results;     // to be printed or written
  std::string complaints;  // for standard error
  output::Row line;        // of a table of many surveys; may be empty
  ExitStatus status = done;
};

using Work = std::function<Outcome(const std::string& file)>;  // on any thread
using Take = std::function<void(const Outcome&)>;              // in order, on the caller's

// Does `work` for every file and hands on what came of it; complaints are printed in between, and a
// bar shows how far it is. Bad files don't stop the others: several are named again at the end. A
// FileError from `work` is that file's. The worst status of all.
ExitStatus over_surveys(const std::vector<std::string>& files, const CommonOptions& common,
                        const Streams& streams, const Work& work, const Take& take);

}  // namespace tinworm::verbs
