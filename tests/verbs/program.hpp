// Runs the program as a user would, in a folder of its own.
#pragma once

#include <string>

namespace tinworm::verbs {

struct Ended {
  int status = -1;
  std::string results;   // standard output
  std::string messages;  // standard error
};

// A new folder with the files of tests/verbs/files in it, gone with the object.
class Workshop {
 public:
  Workshop();
  Workshop(const Workshop&) = delete;
  Workshop& operator=(const Workshop&) = delete;
  ~Workshop();

  // `arguments` as in a shell; `before` is a shell command run first in the same shell; `through`
  // is a command that runs the program.
  Ended run(const std::string& arguments, const std::string& before = "true",
            const std::string& through = "") const;

  std::string path(const std::string& name) const { return folder_ + "/" + name; }
  std::string text(const std::string& name) const;  // empty if there is no such file
  void put(const std::string& name, const std::string& text) const;
  bool has(const std::string& name) const;

 private:
  std::string folder_;
};

// What is wrong with tests/verbs/files/bad.yaml, as every verb that reads it says.
inline const std::string bad_survey_problems =
    "bad.yaml:4:23: February 2025 has days 01 to 28 (found \"2025-02-30\"; allowed: 2025-04-12, "
    "2025-04, 2025; where the day isn't known, write 2025-02)\n"
    "visit: {date: 2025-02-30}\n"
    "                      ^\n"
    "bad.yaml:6:15: the body has no zone 53 (`tinworm bodies small-body` lists its zones)\n"
    "  bare: 51 52 53\n"
    "              ^\n";

}  // namespace tinworm::verbs
