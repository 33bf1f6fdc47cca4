#include "survey/page.hpp"

#include <algorithm>

#include "quantity/figure.hpp"

namespace tinworm::survey {
namespace {

bool continues(char c) {
  return (static_cast<unsigned char>(c) & 0xC0) == 0x80;
}

std::size_t bytes_of_character(std::string_view text, std::size_t at) {
  std::size_t end = at + 1;
  while (end < text.size() && continues(text[end])) ++end;
  return end - at;
}

// Follows a scalar's text through the source, which differs from it in quotes and folded lines.
class Walk {
 public:
  Walk(std::string_view source, std::size_t at, Place place)
      : source_(source), at_(at), place_(place) {}

  Place place() const { return place_; }

  void enter_quotes() {
    if (at_ >= source_.size() || (source_[at_] != '"' && source_[at_] != '\'')) return;
    escape_ = source_[at_] == '"' ? '\\' : '\'';
    step();
  }

  // False where the source no longer says what the text says.
  bool follow(std::string_view character) {
    if (character == " " && fold()) return true;
    const bool escaped = at_ + 1 < source_.size() && source_[at_] == escape_;
    if (escaped && source_.substr(at_ + 1, character.size()) == character) step();
    if (source_.substr(at_, character.size()) != character) return false;
    step();
    return true;
  }

 private:
  void step() {
    const bool line_end = source_[at_] == '\n';
    at_ += bytes_of_character(source_, at_);
    place_ = line_end ? Place{place_.line + 1, 1} : Place{place_.line, place_.column + 1};
  }

  // A line break with the spaces round it reads as one space.
  bool fold() {
    const std::size_t end = std::min(source_.find_first_not_of(" \t\r\n", at_), source_.size());
    if (source_.substr(at_, end - at_).find('\n') == std::string_view::npos) return false;
    while (at_ < end) step();
    return true;
  }

  std::string_view source_;
  std::size_t at_;
  Place place_;
  char escape_ = '\0';  // before a quote inside quotes
};

}  // namespace

Page::Page(std::string_view text) : source(text), line_starts_{0} {
  for (std::size_t i = 0; i < source.size(); ++i)
    if (source[i] == '\n') line_starts_.push_back(i + 1);
}

Place Page::place_in(const yaml::Node& scalar, std::size_t offset) const {
  const Place start = scalar.place;
  if (start.line < 1 || static_cast<std::size_t>(start.line) > line_starts_.size()) return start;
  std::size_t at = line_starts_[static_cast<std::size_t>(start.line - 1)];
  for (int column = 1; column < start.column && at < source.size(); ++column)
    at += bytes_of_character(source, at);
  Walk walk(source, at, start);
  if (scalar.quoted) walk.enter_quotes();
  const std::string_view text = scalar.text;
  for (std::size_t i = 0; i < text.size() && offset > 0; --offset) {
    const std::size_t bytes = bytes_of_character(text, i);
    if (!walk.follow(text.substr(i, bytes))) return start;
    i += bytes;
  }
  return walk.place();
}

yaml::Node Page::part_of(const yaml::Node& scalar, std::string_view part) const {
  yaml::Node node;
  node.kind = yaml::Node::Kind::scalar;
  node.place = place_in(scalar, static_cast<std::size_t>(quantity::offset_in(scalar.text, part)));
  node.text = part;
  return node;
}

void Page::refuse(const yaml::Node& node, const quantity::Refusal& refusal) {
  add({place_in(node, static_cast<std::size_t>(refusal.offset)), refusal.what, node.text,
       refusal.allowed, refusal.cure});
}

const body::Zone* plan_zone(const Page& page, int number) {
  return page.body ? page.body->zone(number) : nullptr;
}

std::vector<std::string_view> between_spaces(std::string_view line) {
  std::vector<std::string_view> parts;
  for (std::size_t start = line.find_first_not_of(' '); start < line.size();) {
    const std::size_t end = std::min(line.find(' ', start), line.size());
    parts.push_back(line.substr(start, end - start));
    start = std::min(line.find_first_not_of(' ', end), line.size());
  }
  return parts;
}

std::size_t characters(std::string_view text) {
  return static_cast<std::size_t>(
      std::count_if(text.begin(), text.end(), [](char c) { return !continues(c); }));
}

}  // namespace tinworm::survey
