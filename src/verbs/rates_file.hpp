// The rates that a command reckons by: the defaults, or those of --rates.
#pragma once

#include <optional>
#include <string>

#include "rates/rates.hpp"
#include "verbs/options.hpp"
#include "verbs/streams.hpp"

namespace tinworm::verbs {

struct RatesInForce {
  rates::Rates rates;
  std::string file;    // its name without folders, which may be private; empty: the defaults
  std::string name;    // that it gives itself; may be empty
  std::string sha256;  // of its bytes
  std::string text;    // its bytes
};

// None where the file has mistakes, every one of which was then told. An empty `file` is no file. A
// paper that carries rates may stand for them.
// Throws output::FileError where it can't be read.
std::optional<RatesInForce> load_rates(const std::string& file, const CommonOptions& common,
                                       const Streams& streams);

}  // namespace tinworm::verbs
