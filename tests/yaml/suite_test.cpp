// The public YAML test suite: see tests/cases/yaml-suite/README.md.
#include <gtest/gtest.h>

#include <filesystem>
#include <map>
#include <set>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include "bad_cases.hpp"
#include "paths.hpp"
#include "yaml/node.hpp"

namespace tinworm::yaml {
namespace {

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  for (std::size_t start = 0; start < text.size();) {
    const std::size_t end = std::min(text.find('\n', start), text.size());
    lines.push_back(text.substr(start, end - start));
    start = end + 1;
  }
  return lines;
}

// The suite's tree without what our nodes don't keep: anchors, flow marks, quotes, streams.
std::vector<std::string> plain_tree(const std::string& tree) {
  std::vector<std::string> plain;
  for (std::string line : lines_of(tree)) {
    line.erase(0, line.find_first_not_of(' '));
    if (line.starts_with("+STR") || line.starts_with("-STR") || line.starts_with("+DOC") ||
        line.starts_with("-DOC"))
      continue;
    if (!line.starts_with("=VAL")) {
      plain.push_back(line.substr(0, 4));
      continue;
    }
    line.erase(0, 5);
    if (line.starts_with('&')) line.erase(0, line.find(' ') + 1);
    plain.push_back("=VAL " + line.substr(1));
  }
  return plain;
}

std::string escaped(const std::string& text) {
  std::string out;
  for (const char c : text) {
    switch (c) {
      case '\\':
        out += "\\\\";
        break;
      case '\n':
        out += "\\n";
        break;
      case '\t':
        out += "\\t";
        break;
      case '\r':
        out += "\\r";
        break;
      case '\b':
        out += "\\b";
        break;
      default:
        out += c;
    }
  }
  return out;
}

void add_tree(const Node& node, std::vector<std::string>& lines) {
  switch (node.kind) {
    case Node::Kind::empty:
    case Node::Kind::scalar:
      lines.push_back("=VAL " + escaped(node.text));
      break;
    case Node::Kind::sequence:
      lines.push_back("+SEQ");
      for (const Node& item : node.items) add_tree(item, lines);
      lines.push_back("-SEQ");
      break;
    case Node::Kind::map:
      lines.push_back("+MAP");
      for (const Entry& entry : node.entries) {
        lines.push_back("=VAL " + escaped(entry.key));
        add_tree(entry.value, lines);
      }
      lines.push_back("-MAP");
      break;
  }
}

TEST(Suite, NoErrorIsTakenAndNothingIsMisread) {
  const auto cases = nlohmann::json::parse(
      file_text(std::filesystem::path(source_folder()) / "tests/cases/yaml-suite/cases.json"));
  ASSERT_EQ(cases.size(), 402u);
  int errors = 0, same = 0, with_alias = 0;
  std::map<std::string, int> refused;  // by what our reader said of inputs that are no errors
  for (const auto& one : cases) {
    const std::string id = one["id"], input = one["yaml"];
    const auto read = parse(input);
    if (one["fails"]) {
      EXPECT_FALSE(read) << id << ": an error was taken:\n" << input;
      ++errors;
      continue;
    }
    if (!read) {
      ASSERT_FALSE(read.error().empty());
      ++refused[read.error().front().what];
      continue;
    }
    ASSERT_TRUE(one["tree"].is_string()) << id;
    const std::string tree = one["tree"];
    if (tree.find("=ALI") != std::string::npos) {
      ++with_alias;  // our tree has what the alias names
      continue;
    }
    std::vector<std::string> ours;
    add_tree(*read, ours);
    EXPECT_EQ(ours, plain_tree(tree)) << id << ":\n" << input;
    ++same;
  }
  fmt::print(
      "YAML test suite: {} errors refused, {} read as the suite says, {} with aliases read, "
      "refused by rule:\n",
      errors, same, with_alias);
  for (const auto& [what, count] : refused) fmt::print("  {:3} {}\n", count, what);
  EXPECT_GE(same, 100);
}

}  // namespace
}  // namespace tinworm::yaml
