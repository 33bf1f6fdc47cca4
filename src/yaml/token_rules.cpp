#include "yaml/token_rules.hpp"

#include <algorithm>
#include <stdexcept>
#include <string>
#include <vector>

#include "yaml/characters.hpp"
#include "yaml/libyaml.hpp"

namespace tinworm::yaml {
namespace {

struct Token {
  yaml_token_t token{};
  Token() = default;
  ~Token() { yaml_token_delete(&token); }
  Token(const Token&) = delete;
  Token& operator=(const Token&) = delete;
};

std::size_t spaces_before(std::string_view line) {
  return std::min(line.find_first_not_of(' '), line.size());
}

class Rules {
 public:
  explicit Rules(std::string_view source) {
    for (std::size_t start = 0; start <= source.size();) {
      const std::size_t end = std::min(source.find('\n', start), source.size());
      std::string_view line = source.substr(start, end - start);
      if (line.ends_with('\r')) line.remove_suffix(1);
      lines_.push_back(line);
      start = end + 1;
    }
  }

  std::optional<Problem> take(const yaml_token_t& token) {
    switch (token.type) {
      case YAML_BLOCK_SEQUENCE_START_TOKEN:
      case YAML_BLOCK_MAPPING_START_TOKEN:
        indents_.push_back(static_cast<int>(token.start_mark.column));
        return std::nullopt;
      case YAML_BLOCK_END_TOKEN:
        indents_.pop_back();
        return std::nullopt;
      case YAML_FLOW_SEQUENCE_START_TOKEN:
      case YAML_FLOW_MAPPING_START_TOKEN: {
        auto problem = too_far_left(token.start_mark);
        ++brackets_;
        return problem ? problem : comment_without_space(token.end_mark);
      }
      case YAML_FLOW_SEQUENCE_END_TOKEN:
      case YAML_FLOW_MAPPING_END_TOKEN:
        --brackets_;
        return comment_without_space(token.end_mark);
      case YAML_FLOW_ENTRY_TOKEN:
        return comment_without_space(token.end_mark);
      case YAML_SCALAR_TOKEN:
        return scalar(token);
      default:
        return std::nullopt;
    }
  }

 private:
  std::string_view line(std::size_t number) const {  // from 0
    return number < lines_.size() ? lines_[number] : std::string_view();
  }
  std::string_view rest_at(const yaml_mark_t& mark) const {
    const std::string_view text = line(mark.line);
    return text.substr(offset_of(text, static_cast<int>(mark.column) + 1));
  }
  static Place place_of(const yaml_mark_t& mark) {
    return {static_cast<int>(mark.line) + 1, static_cast<int>(mark.column) + 1};
  }

  std::optional<Problem> comment_without_space(const yaml_mark_t& end) const {
    if (!rest_at(end).starts_with('#')) return std::nullopt;
    return Problem{place_of(end), "a comment needs a space before its #", "", "",
                   "put one there, or quote the text if the # belongs to it"};
  }

  int least_indent() const { return indents_.empty() ? 0 : indents_.back() + 1; }

  // A line that goes on inside brackets or quotes, `column` deep.
  std::optional<Problem> not_deeper(std::size_t number, std::size_t column) const {
    if (static_cast<int>(column) >= least_indent()) return std::nullopt;
    return Problem{{static_cast<int>(number) + 1, static_cast<int>(column) + 1},
                   "this line goes on inside brackets or quotes, yet is no deeper than their key",
                   "",
                   "",
                   "put spaces before it"};
  }

  std::optional<Problem> too_far_left(const yaml_mark_t& start) const {
    const std::size_t spaces = spaces_before(line(start.line));
    const std::string_view before = line(start.line).substr(0, start.column);
    const bool first = before.find_first_not_of(" \t") == std::string_view::npos;
    if (brackets_ == 0 || !first) return std::nullopt;
    return not_deeper(start.line, spaces);
  }

  std::optional<Problem> scalar(const yaml_token_t& token) const {
    const auto& data = token.data.scalar;
    if (auto problem = too_far_left(token.start_mark)) return problem;
    switch (data.style) {
      case YAML_SINGLE_QUOTED_SCALAR_STYLE:
      case YAML_DOUBLE_QUOTED_SCALAR_STYLE:
        for (std::size_t i = token.start_mark.line + 1; i <= token.end_mark.line; ++i) {
          const bool blank = line(i).find_first_not_of(" \t") == std::string_view::npos;
          if (blank) continue;
          if (auto problem = not_deeper(i, spaces_before(line(i)))) return problem;
        }
        return comment_without_space(token.end_mark);
      case YAML_LITERAL_SCALAR_STYLE:
      case YAML_FOLDED_SCALAR_STYLE:
        return block(token.start_mark);
      default:
        break;
    }
    const bool hyphen = data.length == 1 && *data.value == '-';
    if (brackets_ == 0 || !hyphen) return std::nullopt;
    return Problem{place_of(token.start_mark), "a hyphen stands alone inside brackets", "", "",
                   "write the list without hyphens, or quote it: \"-\""};
  }

  // The header `|2-`, then blank lines, then the text that sets how deep the block is.
  std::optional<Problem> block(const yaml_mark_t& start) const {
    const std::string_view header = rest_at(start);
    const std::size_t after = std::min(header.find_first_not_of("0123456789+-", 1), header.size());
    if (header.substr(after).starts_with('#')) {
      return comment_without_space({start.index + after, start.line, start.column + after});
    }
    if (header.substr(0, after).find_first_of("0123456789") != std::string_view::npos)
      return std::nullopt;
    std::size_t deepest = 0, deepest_line = 0;
    for (std::size_t i = start.line + 1; i < lines_.size(); ++i) {
      const std::size_t spaces = spaces_before(line(i));
      if (spaces < line(i).size()) {
        const bool inside = static_cast<int>(spaces) >= least_indent();
        if (!inside || deepest <= spaces) return std::nullopt;
        return Problem{{static_cast<int>(deepest_line) + 1, static_cast<int>(spaces) + 1},
                       "a blank line goes deeper than the text below it",
                       "",
                       "",
                       "take the spaces out of the blank line"};
      }
      if (spaces > deepest) {
        deepest = spaces;
        deepest_line = i;
      }
    }
    return std::nullopt;
  }

  std::vector<std::string_view> lines_;
  std::vector<int> indents_;  // of the blocks that are open, from 0
  int brackets_ = 0;          // that are open
};

}  // namespace

std::optional<Problem> broken_token_rule(std::string_view source) {
  Libyaml parser(source);
  Rules rules(source);
  for (bool more = true; more;) {
    Token token;
    if (!yaml_parser_scan(parser.get(), &token.token))
      throw std::logic_error("tokens of a file that was read");
    more = token.token.type != YAML_STREAM_END_TOKEN;
    if (auto problem = rules.take(token.token)) return problem;
  }
  return std::nullopt;
}

}  // namespace tinworm::yaml
