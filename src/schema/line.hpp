// The pattern of one line of parts between commas: survey/finding.hpp tells how it is read.
#pragma once

#include <string>
#include <vector>

namespace tinworm::schema {

enum class Alone { no, yes };   // whether its words or figures stand without its name
enum class Counts { no, yes };  // whether a line with this part alone says enough

struct Part {
  std::string name;
  std::vector<std::string> words;  // none: figures
  Alone alone = Alone::no;
  Counts counts = Counts::no;
  std::string figures = {};  // pattern
};

struct Line {
  std::vector<Part> parts;
};

// Known parts in any order with free words last, and at least one part that counts. Free words that
// nearly are a known word, and parts given twice, are let by: the reader finds them.
std::string on_one_line(const Line& line);

}  // namespace tinworm::schema
