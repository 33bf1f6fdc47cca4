// The rules that a command weighs by: the method's own, or those of --rules.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "rules/rules.hpp"
#include "verbs/options.hpp"
#include "verbs/streams.hpp"

namespace tinworm::verbs {

struct RulesInForce {
  rules::Rules constants;
  std::string file;    // its name without folders, which may be private; empty: the defaults
  std::string name;    // that it gives itself; may be empty
  std::string sha256;  // of its bytes
  std::string text;    // its bytes
};

// The files a command reads, so that none of them is written over.
std::vector<std::string> with_rules(std::vector<std::string> surveys, const std::string& rules);

// None where the file has mistakes, every one of which was then told. No --rules is no file. A
// paper that carries rules may stand for them.
// Throws output::FileError where it can't be read.
std::optional<RulesInForce> load_rules(const CommonOptions& common, const Streams& streams);

}  // namespace tinworm::verbs
