#include "yaml/characters.hpp"
#include "yaml/node.hpp"

namespace tinworm::yaml {
namespace {

bool is_space(char c) {
  return c == ' ' || c == '\t' || c == '\n' || c == '\r';
}

// Walks through the source by bytes and knows the place it has come to.
class Walk {
 public:
  Walk(std::string_view source, Place start) : source_(source), place_{1, 1} {
    if (source_.starts_with("\xEF\xBB\xBF")) source_.remove_prefix(3);
    while (!at_end() && place_ < start) step();
  }
  bool at_end() const { return offset_ >= source_.size(); }
  char here() const { return at_end() ? '\0' : source_[offset_]; }
  Place place() const { return place_; }
  void step() {
    if (here() == '\n') {
      place_ = {place_.line + 1, 1};
      ++offset_;
    } else {
      ++place_.column;
      offset_ += character_at(source_, offset_).bytes;
    }
  }
  void skip_spaces() {
    while (!at_end() && is_space(here())) step();
  }
  void skip_line() {
    while (!at_end() && here() != '\n') step();
  }

 private:
  std::string_view source_;
  std::size_t offset_ = 0;
  Place place_;
};

}  // namespace

Place place_inside(const Node& scalar, std::size_t offset, std::string_view source) {
  const std::string_view text = scalar.text;
  Walk walk(source, scalar.place);
  const bool single_quoted = scalar.quoted && walk.here() == '\'';
  if (scalar.quoted) {
    if (walk.here() == '|' || walk.here() == '>') {
      walk.skip_line();
      walk.skip_spaces();
    } else {
      walk.step();
    }
  }
  for (std::size_t i = 0; i < offset && i < text.size();) {
    if (is_space(text[i])) {  // folding makes one space of a line's end and the indentation
      if (!is_space(walk.here())) return scalar.place;
      while (i < offset && i < text.size() && is_space(text[i])) ++i;
      walk.skip_spaces();
    } else {
      if (walk.here() != text[i]) return scalar.place;
      if (single_quoted && text[i] == '\'') walk.step();  // written twice
      i += character_at(text, i).bytes;
      walk.step();
    }
  }
  return walk.place();
}

}  // namespace tinworm::yaml
