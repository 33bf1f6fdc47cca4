#include "yaml/syntax_mistake.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <optional>

#include "yaml/characters.hpp"

namespace tinworm::yaml {
namespace {

// The line of the mistake, cut at it.
struct Spot {
  std::string_view line, before, rest;
  std::string_view character;  // the one at the place; empty at the end of the line
};

Spot spot_at(std::string_view source, Place place) {
  const std::string_view line = line_text(source, place.line);
  const std::size_t offset = offset_of(line, place.column);
  Spot spot{line, line.substr(0, offset), line.substr(offset), ""};
  if (!spot.rest.empty()) spot.character = spot.rest.substr(0, character_at(spot.rest, 0).bytes);
  return spot;
}

bool blank(std::string_view text) {
  return text.find_first_not_of(" \t") == text.npos;
}

bool begins_with_item(std::string_view rest) {
  return rest == "-" || rest.starts_with("- ") || rest.starts_with("-\t");
}

std::string_view trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(" \t");
  return first == text.npos ? "" : text.substr(first, text.find_last_not_of(" \t") + 1 - first);
}

// A colon that makes a key of what stands before it.
bool has_key_colon(std::string_view text) {
  return text.find(": ") != text.npos || text.ends_with(':');
}

std::string_view line_above(std::string_view source, int line) {
  for (--line; line > 0; --line) {
    const std::string_view text = line_text(source, line);
    const auto first = text.find_first_not_of(" \t");
    if (first != text.npos && text[first] != '#') return text;
  }
  return {};
}

bool at_end_of_file(std::string_view source, Place place) {
  const auto lines = 1 + std::count(source.begin(), source.end(), '\n');
  return place.line > lines || (place.line == lines && spot_at(source, place).rest.empty());
}

std::optional<Problem> tab_indentation(const SyntaxMistake& mistake, std::string_view source) {
  const std::string_view line = line_text(source, mistake.place.line);
  const auto tab = line.find('\t');
  const auto text = line.find_first_not_of(" \t");
  if (tab == line.npos || (text != line.npos && tab > text)) return {};
  return Problem{{mistake.place.line, static_cast<int>(tab) + 1},
                 "a tab indents this line; only spaces may",
                 "",
                 "",
                 "put spaces in its place"};
}

// Where quotes come in the wrong number, the mistake shows up far below the one that was left open.
std::optional<Problem> quote_left_open(const SyntaxMistake& mistake) {
  if (mistake.long_quote_to.line == 0 || mistake.place.line != mistake.long_quote_to.line)
    return {};
  return Problem{
      mistake.long_quote_from,
      fmt::format("the quote that opens here closes only in line {}", mistake.long_quote_to.line),
      "", "", "close it where the text ends"};
}

Problem quoted_text(const SyntaxMistake& mistake, std::string_view source) {
  if (mistake.problem == "found unexpected end of stream")
    return {mistake.context_place, "the quote that opens here is never closed", "", "",
            "close it where the text ends; an apostrophe inside '…' is written twice ('')"};
  if (mistake.problem == "found unexpected document indicator")
    return {
        mistake.context_place,
        fmt::format("the quote that opens here is not closed before line {}", mistake.place.line),
        "", "", "close it where the text ends"};
  const std::string_view line = line_text(source, mistake.place.line);
  const auto backslash = line.rfind('\\', offset_of(line, mistake.place.column));
  const std::string_view found = backslash == line.npos ? "" : line.substr(backslash, 6);
  return {mistake.place, "the backslash begins no escape that is known here", std::string(found),
          "\\n, \\t, \\\", \\\\, \\uXXXX inside \"…\"",
          "write \\\\ for a backslash, or use '…', where it stands for itself"};
}

Problem brackets(const SyntaxMistake& mistake, std::string_view source) {
  const bool list = mistake.problem.ends_with("']'");
  const std::string_view open = list ? "[" : "{", close = list ? "]" : "}";
  const Spot spot = spot_at(source, mistake.place);
  if (at_end_of_file(source, mistake.place) || mistake.place.line > mistake.context_place.line + 20)
    return {mistake.context_place,
            fmt::format("the bracket {} that opens here is never closed", open), "", "",
            fmt::format("close it with {}", close)};
  if (spot.character == "]" || spot.character == "}")
    return {mistake.place,
            fmt::format("the wrong bracket closes what {} opened in line {}, column {}", open,
                        mistake.context_place.line, mistake.context_place.column),
            std::string(spot.character), std::string(close), ""};
  Place place = mistake.place;
  std::string_view found = spot.rest;
  if (spot.character == ":") {  // the key before it was taken for more of the value above
    found = trimmed(spot.line);
    place.column = 1 + static_cast<int>(spot.line.find_first_not_of(" \t"));
  }
  return {place,
          fmt::format("a comma is missing before this, or the {} that closes the {} of line {}, "
                      "column {}",
                      close, open, mistake.context_place.line, mistake.context_place.column),
          std::string(found), "", "put a comma or the bracket"};
}

Problem nothing_to_read(const SyntaxMistake& mistake, std::string_view source) {
  const Spot spot = spot_at(source, mistake.place);
  const bool in_brackets = mistake.context == "while parsing a flow node";
  const std::string character(spot.character);
  if (in_brackets && at_end_of_file(source, mistake.place))
    return {mistake.context_place, "a bracket that is open here is never closed", "", "",
            "close it with ] or }"};
  if (character == "," && in_brackets)
    return {mistake.place, "nothing stands before this comma", "", "",
            "take the comma out or put the missing value"};
  if (character == ",")
    return {mistake.place, "a value can't begin with a comma", std::string(spot.rest), "",
            "quote the value, or take the comma out"};
  if (in_brackets && begins_with_item(spot.rest))
    return {mistake.place, "a list item (- ) can't stand inside brackets", std::string(spot.rest),
            "", "take the dash out; commas part what stands in brackets"};
  if (in_brackets && (character == "]" || character == "}"))
    return {mistake.place, "the wrong bracket closes here", character, character == "]" ? "}" : "]",
            "put the one that fits the bracket opened above"};
  if (character == "]" || character == "}")
    return {mistake.place, fmt::format("{} closes a bracket that was never opened", character), "",
            "", "open it, take it out, or quote the text"};
  return {mistake.place, "no value can begin here", std::string(spot.rest), "",
          "quote the value if it is text"};
}

Problem colon(const SyntaxMistake& mistake, std::string_view source) {
  const Spot spot = spot_at(source, mistake.place);
  const std::string_view above = line_above(source, mistake.place.line);
  if (has_key_colon(spot.before))
    return {mistake.place, "a second colon stands in one line", std::string(trimmed(spot.line)), "",
            "quote what follows the first colon, or put the inner key on a line of its own"};
  if (!above.empty() && !has_key_colon(above) && !begins_with_item(above))
    return {{mistake.place.line, mistake.place.column},
            "this can't be a key: the line above is no key with a value",
            std::string(trimmed(above)),
            "",
            "put a colon and a space after the key above"};
  const auto first = spot.line.find_first_not_of(' ');
  return {{mistake.place.line, static_cast<int>(first == spot.line.npos ? 0 : first) + 1},
          "this key is indented under a line that already has its value",
          std::string(trimmed(above)),
          "",
          "align it with the keys it belongs to"};
}

Problem tight_colon(const SyntaxMistake& mistake, std::string_view source) {
  return {mistake.place, "a colon inside brackets needs a space after it",
          std::string(spot_at(source, mistake.place).rest), "{key: value}",
          "put a space after the colon, or quote the text"};
}

Problem missing_colon(const SyntaxMistake& mistake, std::string_view source) {
  constexpr std::size_t longest_key = 1024;  // YAML 1.2 section 7.4.3
  const Spot spot = spot_at(source, mistake.context_place);
  if (spot.rest.size() > longest_key && has_key_colon(spot.rest))
    return {mistake.context_place, "the key is longer than 1024 characters", "", "", "shorten it"};
  if (spot.rest.find(':') != spot.rest.npos)
    return {mistake.context_place,
            "this line is no key with a value: its colon has no space after it",
            std::string(spot.rest), "key: value", "put a space after the colon"};
  return {mistake.context_place, "this line is no key with a value: it has no colon",
          std::string(spot.rest), "key: value", "put a colon and a space after the key"};
}

Problem list_item(const SyntaxMistake& mistake, std::string_view source) {
  const Spot spot = spot_at(source, mistake.place);
  if (blank(spot.before))
    return {mistake.place, "a list item (- ) can't stand here", std::string(spot.rest), "",
            "indent it under its key, or align it with the other items"};
  return {mistake.place, "a list item (- ) can't begin in the middle of a line",
          std::string(spot.rest), "", "begin the list on the next line, or write [a, b]"};
}

Problem where_a_key_should(const SyntaxMistake& mistake, std::string_view source) {
  const Spot spot = spot_at(source, mistake.place);
  if (spot.rest.starts_with(": ") || spot.rest == ":")
    return {mistake.place, "a key is missing before the colon", std::string(spot.rest),
            "key: value", "put the key, or take the line out"};
  if (begins_with_item(spot.rest))
    return {mistake.place, "a list item (- ) stands where a key should", std::string(spot.rest), "",
            "indent the list under its key, or take the dash out"};
  if (spot.character == "]" || spot.character == "}")
    return {mistake.place, fmt::format("{} closes a bracket that was never opened", spot.character),
            "", "", "open it, take it out, or quote the text"};
  if (spot.before.ends_with('\''))
    return {mistake.place, "the quoted text has ended before this", std::string(spot.rest), "",
            "an apostrophe inside '…' is written twice (''); or use \"…\""};
  if (!blank(spot.before))
    return {mistake.place, "the value has ended before this", std::string(spot.rest), "",
            "take it out, or quote the whole value"};
  return {mistake.place,
          fmt::format("this line is indented like none of the keys above it; the keys it could "
                      "belong to begin in line {}, column {}",
                      mistake.context_place.line, mistake.context_place.column),
          "", "", "align it with the keys it belongs to"};
}

Problem where_an_item_should(const SyntaxMistake& mistake, std::string_view source) {
  const Spot spot = spot_at(source, mistake.place);
  if (!blank(spot.before) && !spot.before.ends_with("- "))
    return {mistake.place, "the value has ended before this", std::string(spot.rest), "",
            "take it out, or quote the whole value"};
  return {mistake.place,
          fmt::format("a list began in line {}, column {}, and this is no item of it",
                      mistake.context_place.line, mistake.context_place.column),
          std::string(spot.rest), "", "begin it with a dash and a space, or indent it elsewhere"};
}

Problem bad_start(const SyntaxMistake& mistake, std::string_view source) {
  const Spot spot = spot_at(source, mistake.place);
  if (spot.character == "\t")
    return {mistake.place, "a tab stands where a value should begin", "", "", "use spaces"};
  return {mistake.place, fmt::format("a value can't begin with {}", spot.character),
          std::string(spot.rest), "", "quote the value"};
}

Problem after_document(const SyntaxMistake& mistake, std::string_view source) {
  const Spot spot = spot_at(source, mistake.place);
  if (spot.character == "]" || spot.character == "}")
    return {mistake.place, fmt::format("{} closes a bracket that was never opened", spot.character),
            "", "", "open it, take it out, or quote the text"};
  if (line_above(source, mistake.place.line).starts_with("..."))
    return {mistake.place, "a second document begins here; a file holds one",
            std::string(spot.rest), "",
            "take out the line `...`, or put the rest in a file of its own"};
  return {mistake.place, "the file's content has ended before this", std::string(spot.rest), "",
          "check the indentation, or quote the value above"};
}

// Text that | or > announces: nothing else that the scanner looks back to begins so.
bool begins_block_text(const SyntaxMistake& mistake, std::string_view source) {
  if (mistake.context_place.line == 0) return false;
  const std::string_view first = spot_at(source, mistake.context_place).character;
  return first == "|" || first == ">";
}

// `film: >2000` is meant as more than 2000.
Problem block_header(const SyntaxMistake& mistake, std::string_view source) {
  const Spot spot = spot_at(source, mistake.context_place);
  const std::string_view rest = spot.rest;
  const std::size_t figure = rest.find_first_not_of("> ");
  if (rest.starts_with('>') && figure < rest.size() && rest[figure] >= '0' && rest[figure] <= '9')
    return {mistake.context_place, "a value that begins with > is folded text in YAML",
            std::string(rest), "",
            fmt::format("for more than a figure write over {}, or put it in quotes: \"{}\"",
                        rest.substr(figure), rest)};
  return {mistake.place, "what follows | or > is not understood", "", "",
          "begin the text on the next line"};
}

using Explanation = Problem (*)(const SyntaxMistake&, std::string_view);

// What libyaml says, and who explains it.
struct Known {
  std::string_view message;
  Explanation explain;
};
constexpr std::array<Known, 13> known{{
    {"did not find expected ',' or ']'", brackets},
    {"did not find expected ',' or '}'", brackets},
    {"did not find expected node content", nothing_to_read},
    {"mapping values are not allowed in this context", colon},
    {"could not find expected ':'", missing_colon},
    {"found unexpected ':'", tight_colon},
    {"block sequence entries are not allowed in this context", list_item},
    {"did not find expected key", where_a_key_should},
    {"did not find expected '-' indicator", where_an_item_should},
    {"found character that cannot start any token", bad_start},
    {"found a tab character that violates indentation", bad_start},
    {"found a tab character where an indentation space is expected", bad_start},
    {"did not find expected <document start>", after_document},
}};

// Those that need no look at the source.
struct Fixed {
  std::string_view context, message, what, cure;
};
constexpr std::array<Fixed, 8> fixed{{
    {"", "mapping keys are not allowed in this context",
     "a question mark alone marks a key of its own kind, which can't stand here",
     "quote the question mark"},
    {"while scanning an alias", "", "a value that begins with * names something marked with &",
     "quote the value if it is text"},
    {"while scanning an anchor", "", "a value that begins with & marks it for later",
     "quote the value if it is text"},
    {"while scanning a directive", "",
     "a line that begins with % is an instruction to readers of "
     "YAML, and this one is not known",
     "take it out, or quote the text"},
    {"while scanning a %YAML directive", "", "the %YAML line is not understood", "take it out"},
    {"while scanning a %TAG directive", "", "the %TAG line is not understood", "take it out"},
    {"", "found incompatible YAML document",
     "the %YAML line asks for a version that is not read here", "take it out; YAML 1.2 is read"},
    {"", "found duplicate %YAML directive", "the %YAML line stands twice", "take one out"},
}};

}  // namespace

Problem explain(const SyntaxMistake& mistake, std::string_view source) {
  if (mistake.context.ends_with("a quoted scalar")) return quoted_text(mistake, source);
  if (auto open = quote_left_open(mistake)) return *open;
  if (auto tab = tab_indentation(mistake, source)) return *tab;
  if (begins_block_text(mistake, source)) return block_header(mistake, source);
  for (const Known& entry : known)
    if (mistake.problem == entry.message) return entry.explain(mistake, source);
  for (const Fixed& entry : fixed)
    if ((entry.context.empty() || mistake.context == entry.context) &&
        (entry.message.empty() || mistake.problem == entry.message))
      return {mistake.place, std::string(entry.what), "", "", std::string(entry.cure)};
  if (mistake.context.find("tag") != std::string::npos ||
      mistake.context.find("TAG") != std::string::npos ||
      mistake.problem == "found undefined tag handle")
    return {mistake.place, "a type tag stands here; none is read", "", "",
            "take it out, or quote the value if a text beginning with ! is meant"};
  return {mistake.place, "this is no YAML: " + mistake.problem, "", "", ""};
}

}  // namespace tinworm::yaml
