// The command line of one verb: its options, its help, and the mistakes one can make in it. The
// only place that knows the command-line library.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace tinworm::verbs {

class VerbLine {
 public:
  // `words` is how help calls what follows the verb: "SURVEY…".
  VerbLine(std::string verb, std::string purpose, std::string words);

  // Values go to `target` as text and are checked by whoever asks for them. `names` is "-o" or
  // "--format". Targets must outlive parse().
  void option(std::string names, std::string value, std::string& target, std::string help);
  // The same, given as often as there are values.
  void several(std::string names, std::string value, std::vector<std::string>& targets,
               std::string help);
  void flag(std::string names, bool& target, std::string help);
  void example(std::string command, std::string what_it_does);

  // The words that are no options; sets the targets. Throws CommandError: unknown options with the
  // nearest known one, values missing or empty, options given twice.
  std::vector<std::string> parse(const std::vector<std::string>& arguments);

  // Asked for by -h or --help: then parse() has looked no further.
  bool help_wanted() const { return help_wanted_; }
  std::string help() const;

 private:
  struct Option {
    std::string names, value, help;
    std::string* text = nullptr;
    bool* flag = nullptr;
    std::vector<std::string>* texts = nullptr;
  };

  std::string verb_, purpose_, words_;
  std::vector<Option> options_;
  std::vector<std::pair<std::string, std::string>> examples_;
  bool help_wanted_ = false;
};

}  // namespace tinworm::verbs
