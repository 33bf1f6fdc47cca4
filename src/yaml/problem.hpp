// A mistake in a user's file: where it is, what was found, what is allowed, how to cure it.
#pragma once

#include <compare>
#include <limits>
#include <string>
#include <string_view>
#include <vector>

namespace tinworm::yaml {

// Line and column from 1; columns count characters, not bytes. Line 0: the file as a whole.
struct Place {
  int line = 0;
  int column = 0;
  auto operator<=>(const Place&) const = default;
};

struct Problem {
  Place place;
  std::string what;     // what is wrong, a clause without a full stop
  std::string found;    // what stands there, quoted by the printer; may be empty
  std::string allowed;  // what may stand there; may be empty
  std::string cure;     // what to do; may be empty
};

using Problems = std::vector<Problem>;

constexpr int problems_listed = 50;  // unless all are asked for
constexpr int all_problems = std::numeric_limits<int>::max();

// Every problem in order of place, each as
//   file:line:col: what (found "…"; allowed: …; cure)
//   the source line
//        ^
// at most `most`, then "and N more: --all lists them". A place with line 0 prints "file: what (…)"
// alone. Tabs in the source line are kept before the caret so that it stands right; a long line is
// cut to a window round the caret, the cut marked with "…". All of it is safe to show on a
// terminal.
std::string to_text(const Problems& problems, std::string_view file_name, std::string_view source,
                    int most = problems_listed);

// The word of `allowed` nearest to `word`, if near enough to be a slip of the keyboard
// (Damerau-Levenshtein distance at most a third of the longer word, never more than 3); else "".
std::string nearest_word(std::string_view word, const std::vector<std::string>& allowed);

// `did you mean "x"?`, or "" where nothing is near.
std::string did_you_mean(std::string_view word, const std::vector<std::string>& allowed);

}  // namespace tinworm::yaml
