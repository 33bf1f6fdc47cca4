// A mistake on the command line: what is wrong and the cure. Exit status 2.
#pragma once

#include <stdexcept>
#include <string>
#include <utility>

namespace tinworm::verbs {

class CommandError : public std::runtime_error {
 public:
  // `verb` may be empty. The text reads "tinworm weigh: what", without the cure.
  CommandError(const std::string& verb, const std::string& what, std::string cure = {})
      : std::runtime_error("tinworm" + (verb.empty() ? "" : " " + verb) + ": " + what),
        cure_(std::move(cure)) {}

  const std::string& cure() const { return cure_; }  // a sentence; may be empty

 private:
  std::string cure_;
};

}  // namespace tinworm::verbs
