#include "yaml/strict.hpp"

#include <algorithm>
#include <map>
#include <optional>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "yaml/libyaml.hpp"
#include "yaml/syntax_mistake.hpp"

namespace tinworm::yaml {
namespace {

Place place_of(const yaml_mark_t& mark) {
  return {static_cast<int>(mark.line) + 1, static_cast<int>(mark.column) + 1};
}

std::string text_of(const yaml_char_t* text) {
  return text ? reinterpret_cast<const char*>(text) : "";
}

class Parser {
 public:
  explicit Parser(std::string_view source) : parser_(source) {}

  bool next(yaml_event_t& event) {
    if (yaml_parser_parse(parser_.get(), &event)) return true;
    if (parser_->error == YAML_MEMORY_ERROR) throw std::bad_alloc();
    return false;
  }
  SyntaxMistake mistake() const {
    SyntaxMistake mistake;
    if (parser_->context) {
      mistake.context = parser_->context;
      mistake.context_place = place_of(parser_->context_mark);
    }
    if (parser_->problem) mistake.problem = parser_->problem;
    mistake.place = place_of(parser_->problem_mark);
    return mistake;
  }

 private:
  Libyaml parser_;
};

struct OwnedEvent {
  yaml_event_t event{};
  OwnedEvent() = default;
  ~OwnedEvent() { yaml_event_delete(&event); }
  OwnedEvent(const OwnedEvent&) = delete;
  OwnedEvent& operator=(const OwnedEvent&) = delete;
};

// Turns libyaml's events into ours and keeps to the limits; the first problem ends it.
class Pass {
 public:
  Pass(std::string_view source, const Limits& limits) : source_(source), limits_(limits) {}

  tl::expected<std::vector<Event>, Problem> run() {
    Parser parser(source_);
    for (bool more = true; more && !problem_;) {
      OwnedEvent owned;
      if (!parser.next(owned.event)) {
        SyntaxMistake mistake = parser.mistake();
        mistake.long_quote_from = long_quote_from_;
        mistake.long_quote_to = long_quote_to_;
        return tl::unexpected(explain(mistake, source_));
      }
      more = owned.event.type != YAML_STREAM_END_EVENT;
      take(owned.event);
    }
    if (problem_) return tl::unexpected(*problem_);
    if (events_.empty()) return tl::unexpected(nothing_there());
    return std::move(events_);
  }

 private:
  Problem nothing_there() const {
    if (source_.find_first_not_of(" \t\r\n") == std::string_view::npos)
      return {{}, "the file is empty", "", "", "check that it is the right file, and was saved"};
    return {{}, "all of the file is comments", "", "", "take the # away before what counts"};
  }

  void take(const yaml_event_t& event) {
    const Place place = place_of(event.start_mark);
    switch (event.type) {
      case YAML_DOCUMENT_START_EVENT:
        return document(event, place);
      case YAML_SCALAR_EVENT:
        return scalar(event, place);
      case YAML_ALIAS_EVENT:
        return alias(text_of(event.data.alias.anchor), place);
      case YAML_SEQUENCE_START_EVENT: {
        const auto& start = event.data.sequence_start;
        return collection(Event::Kind::sequence_start, place,
                          start.style == YAML_FLOW_SEQUENCE_STYLE, start.anchor, start.tag);
      }
      case YAML_MAPPING_START_EVENT: {
        const auto& start = event.data.mapping_start;
        return collection(Event::Kind::map_start, place, start.style == YAML_FLOW_MAPPING_STYLE,
                          start.anchor, start.tag);
      }
      case YAML_SEQUENCE_END_EVENT:
      case YAML_MAPPING_END_EVENT:
        open_.pop_back();
        return add({Event::Kind::end, place});
      default:
        return;
    }
  }

  void document(const yaml_event_t& event, Place place) {
    const auto& start = event.data.document_start;
    if (start.tag_directives.start != start.tag_directives.end)
      return refuse({place, "the file sets up tags with %TAG, which are not read here", "", "",
                     "take the line out"});
    if (documents_++ == 1)
      refuse({place, "a second document begins here; a file holds one", "", "",
              "take out the line `---` or `...`, or put the rest in a file of its own"});
  }

  void scalar(const yaml_event_t& event, Place place) {
    const auto& data = event.data.scalar;
    if (data.tag) return refuse_tag(text_of(data.tag), place);
    Event scalar{Event::Kind::scalar, place};
    scalar.text.assign(reinterpret_cast<const char*>(data.value), data.length);
    scalar.quoted = data.style != YAML_PLAIN_SCALAR_STYLE;
    const bool in_quotes = data.style == YAML_SINGLE_QUOTED_SCALAR_STYLE ||
                           data.style == YAML_DOUBLE_QUOTED_SCALAR_STYLE;
    if (in_quotes && event.end_mark.line > event.start_mark.line) {
      long_quote_from_ = place;
      long_quote_to_ = place_of(event.end_mark);
    }
    add(std::move(scalar), data.anchor);
  }

  void alias(const std::string& name, Place place) {
    const auto anchor = anchors_.find(name);
    if (anchor == anchors_.end()) {
      std::vector<std::string> names;
      for (const auto& [known, event] : anchors_) names.push_back(known);
      return refuse({place,
                     fmt::format("nothing above is marked &{}, so *{} names nothing", name, name),
                     "", fmt::format("{}", fmt::join(names, ", ")),
                     names.empty() ? "quote it if a text beginning with * is meant"
                                   : did_you_mean(name, names)});
    }
    const int target = anchor->second;
    if (std::find(open_.begin(), open_.end(), target) != open_.end())
      return refuse({place,
                     fmt::format("*{} stands inside what it names (&{} in line {}), so it would "
                                 "never end",
                                 name, name, events_[target].place.line),
                     "", "", "write out what is meant"});
    Event alias{Event::Kind::alias, place};
    alias.anchor = events_[target].anchor;
    alias.target = target;
    add(std::move(alias));
  }

  void collection(Event::Kind kind, Place place, bool flow, const yaml_char_t* anchor,
                  const yaml_char_t* tag) {
    if (tag) return refuse_tag(text_of(tag), place);
    if (static_cast<int>(open_.size()) >= limits_.depth)
      return refuse({place,
                     fmt::format("lists and keys are nested over {} deep here", limits_.depth), "",
                     "", "close brackets that are left open, or take out needless ones"});
    Event start{kind, place};
    start.flow = flow;
    open_.push_back(static_cast<int>(events_.size()));
    add(std::move(start), anchor);
  }

  void add(Event event, const yaml_char_t* anchor = nullptr) {
    if (anchor) {
      event.anchor = ++anchor_count_;
      anchors_[text_of(anchor)] = static_cast<int>(events_.size());
    }
    if (event.kind != Event::Kind::end && ++nodes_ > limits_.nodes)
      return refuse(
          {event.place,
           fmt::format(
               "the file holds over {} values, keys counted; this is where the limit is reached",
               limits_.nodes),
           "", "", "check that it is the right file, or split it"});
    events_.push_back(std::move(event));
  }

  void refuse_tag(std::string_view tag, Place place) {
    constexpr std::string_view standard = "tag:yaml.org,2002:";
    const std::string written = tag.starts_with(standard)
                                    ? "!!" + std::string(tag.substr(standard.size()))
                                    : std::string(tag);
    refuse({place, "a type tag stands before the value; none is read here", written, "",
            "take it out, or quote the value if a text beginning with ! is meant"});
  }

  void refuse(Problem problem) { problem_ = std::move(problem); }

  std::string_view source_;
  const Limits& limits_;
  std::vector<Event> events_;
  std::vector<int> open_;  // indices of the collections that are not yet closed
  std::map<std::string, int, std::less<>> anchors_;
  int anchor_count_ = 0;
  int documents_ = 0;
  int nodes_ = 0;
  Place long_quote_from_, long_quote_to_;
  std::optional<Problem> problem_;
};

}  // namespace

tl::expected<std::vector<Event>, Problem> strict_events(std::string_view source,
                                                        const Limits& limits) {
  return Pass(source, limits).run();
}

}  // namespace tinworm::yaml
