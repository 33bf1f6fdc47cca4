// Lines of findings and repairs whose remarks in quotes YAML can't read: one that begins with a
// remark, `- rear end: "soft, here", pitting`, as there a value ends with its quote; one whose
// remark holds a colon, `- rear end: pitting, "he says: new"`. A surveyor writes both, and what
// they say is clear. A colon that stands in no remark is a mistake, but not one that hides all
// others.
#pragma once

#include <set>
#include <string>
#include <string_view>

#include "yaml/node.hpp"

namespace tinworm::survey {

struct Requoted {
  std::string text;              // the source, each such value put in quotes as a whole
  std::set<yaml::Place> places;  // where these values begin, in both texts
  yaml::Problems problems;       // a colon in a value that no remark holds
};

// Of items of a list alone, each on one line. Where there is none, `text` is the source.
Requoted requoted(std::string_view source);

// Takes the quotes that were put round these values for what they are: none of the surveyor's.
void unquote(yaml::Node& node, const std::set<yaml::Place>& places);

}  // namespace tinworm::survey
