#include "yaml/agreement.hpp"

#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/parser.h>

#include <algorithm>
#include <istream>
#include <streambuf>

#include "yaml/characters.hpp"

namespace tinworm::yaml {
namespace {

struct Memory : std::streambuf {
  explicit Memory(std::string_view text) {
    char* begin = const_cast<char*>(text.data());  // a get area is never written to
    setg(begin, begin, begin + text.size());
  }
};

// Follows the strict pass event by event and remembers the first that differs.
class Follower : public YAML::EventHandler {
 public:
  explicit Follower(const std::vector<Event>& strict) : strict_(strict) {}

  bool agrees() const { return agrees_ && next_ == strict_.size(); }
  Place place() const {  // of the event that differs
    return strict_.empty() ? Place{} : strict_[std::min(next_, strict_.size() - 1)].place;
  }

  void OnDocumentStart(const YAML::Mark&) override {}
  void OnDocumentEnd() override {}
  void OnNull(const YAML::Mark&, YAML::anchor_t anchor) override {
    expect(Event::Kind::scalar, anchor, [](const Event& event) { return means_nothing(event); });
  }
  void OnAlias(const YAML::Mark&, YAML::anchor_t anchor) override {
    expect(Event::Kind::alias, anchor, [](const Event&) { return true; });
  }
  void OnScalar(const YAML::Mark&, const std::string& tag, YAML::anchor_t anchor,
                const std::string& value) override {
    expect(Event::Kind::scalar, anchor, [&](const Event& event) {
      return event.text == value && event.quoted == (tag == "!") && !means_nothing(event);
    });
  }
  void OnSequenceStart(const YAML::Mark&, const std::string&, YAML::anchor_t anchor,
                       YAML::EmitterStyle::value style) override {
    start(Event::Kind::sequence_start, anchor, style);
  }
  void OnSequenceEnd() override { end(); }
  void OnMapStart(const YAML::Mark&, const std::string&, YAML::anchor_t anchor,
                  YAML::EmitterStyle::value style) override {
    start(Event::Kind::map_start, anchor, style);
  }
  void OnMapEnd() override { end(); }

 private:
  template <typename Same>
  void expect(Event::Kind kind, YAML::anchor_t anchor, Same same) {
    if (!agrees_) return;
    agrees_ = next_ < strict_.size() && strict_[next_].kind == kind &&
              strict_[next_].anchor == static_cast<int>(anchor) && same(strict_[next_]);
    if (agrees_) ++next_;
  }
  void start(Event::Kind kind, YAML::anchor_t anchor, YAML::EmitterStyle::value style) {
    expect(kind, anchor,
           [&](const Event& event) { return event.flow == (style == YAML::EmitterStyle::Flow); });
  }
  void end() {
    expect(Event::Kind::end, 0, [](const Event&) { return true; });
  }

  const std::vector<Event>& strict_;
  std::size_t next_ = 0;
  bool agrees_ = true;
};

// yaml-cpp counts bytes from 0.
Place place_of(const YAML::Mark& mark, std::string_view source) {
  if (mark.line < 0) return {};
  const int line = mark.line + 1;
  const std::string_view text = line_text(source, line);
  const auto bytes = std::min<std::size_t>(std::max(mark.column, 0), text.size());
  int column = 1;
  for (std::size_t i = 0; i < bytes; ++column) i += character_at(text, i).bytes;
  return {line, column};
}

Problem two_readings(Place place) {
  return {place, "readers of YAML differ on what this means", "", "",
          "put the text in quotes, or write it more simply"};
}

}  // namespace

std::optional<Problem> disagreement(std::string_view source, const std::vector<Event>& strict) {
  Memory memory(source);
  std::istream stream(&memory);
  Follower follower(strict);
  try {
    YAML::Parser parser(stream);
    parser.HandleNextDocument(follower);
  } catch (const YAML::Exception& exception) {
    return two_readings(place_of(exception.mark, source));
  }
  if (!follower.agrees()) return two_readings(follower.place());
  return {};
}

}  // namespace tinworm::yaml
