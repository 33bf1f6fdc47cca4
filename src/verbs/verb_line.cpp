#include "verbs/verb_line.hpp"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <utility>

#include <fmt/format.h>

#include "output/display_width.hpp"
#include "verbs/command_error.hpp"
#include "yaml/characters.hpp"
#include "yaml/problem.hpp"

namespace tinworm::verbs {
namespace {

std::string before(const std::string& text, char mark) {
  return text.substr(0, text.find(mark));
}

// Without its dashes, which would make any two short names alike.
std::string bare(const std::string& name) {
  return name.substr(std::min(name.find_first_not_of('-'), name.size()));
}

}  // namespace

VerbLine::VerbLine(std::string verb, std::string purpose, std::string words)
    : verb_(std::move(verb)), purpose_(std::move(purpose)), words_(std::move(words)) {
  flag("-h,--help", help_wanted_, "this text");
}

void VerbLine::option(std::string names, std::string value, std::string& target, std::string help) {
  options_.push_back({std::move(names), std::move(value), std::move(help), &target, nullptr});
}

void VerbLine::several(std::string names, std::string value, std::vector<std::string>& targets,
                       std::string help) {
  options_.push_back(
      {std::move(names), std::move(value), std::move(help), nullptr, nullptr, &targets});
}

void VerbLine::flag(std::string names, bool& target, std::string help) {
  options_.push_back({std::move(names), "", std::move(help), nullptr, &target});
}

void VerbLine::example(std::string command, std::string what_it_does) {
  examples_.emplace_back(std::move(command), std::move(what_it_does));
}

std::vector<std::string> VerbLine::parse(const std::vector<std::string>& arguments) {
  CLI::App app;
  app.set_help_flag();  // ours has our words
  app.allow_extras();   // so that an unknown option can be named, and another suggested
  std::vector<std::string> words;
  app.add_option("words", words);
  std::vector<std::string> names;
  std::vector<std::pair<CLI::Option*, const Option*>> valued;
  std::vector<const Option*> repeated;
  for (const Option& option : options_) {
    const std::string last = option.names.substr(option.names.rfind(',') + 1);
    if (last.starts_with("--")) names.push_back(bare(last));
    if (option.flag != nullptr) {
      app.add_flag(option.names, *option.flag);
    } else if (option.texts != nullptr) {
      repeated.push_back(&option);
      app.add_option(option.names, *option.texts)->take_all()->allow_extra_args(false);
    } else {
      valued.emplace_back(app.add_option(option.names, *option.text)->take_last(), &option);
    }
  }
  try {
    app.parse(std::vector<std::string>(arguments.rbegin(), arguments.rend()));
  } catch (const CLI::ArgumentMismatch& error) {
    throw CommandError(verb_, before(error.what(), ':') + " needs a value");
  } catch (const CLI::ParseError& error) {  // all that is left: a value for a flag
    throw CommandError(verb_, fmt::format("that can't be read ({})", error.what()));
  }
  if (help_wanted_) return words;
  for (const std::string& left_over : app.remaining()) {
    const std::string name = before(left_over, '=');
    if (!name.starts_with('-') || name == "--") continue;
    const std::string near = yaml::nearest_word(bare(name), names);
    throw CommandError(verb_, fmt::format("there is no option {}", yaml::shown(name)),
                       near.empty() ? "" : fmt::format("Did you mean --{}?", near));
  }
  const auto is_no_value = [&](const std::string& text) {
    return text.empty() || (text.starts_with("--") && app.get_option_no_throw(text) != nullptr);
  };
  for (const auto& [parsed, option] : valued) {
    if (parsed->count() > 1) {
      throw CommandError(verb_, fmt::format("{} is given {} times", option->names, parsed->count()),
                         "Give it once.");
    }
    if (parsed->count() == 1 && is_no_value(*option->text))
      throw CommandError(verb_, option->names + " needs a value");
  }
  for (const Option* option : repeated)
    if (std::ranges::any_of(*option->texts, is_no_value))
      throw CommandError(verb_, option->names + " needs a value");
  return words;
}

std::string VerbLine::help() const {
  constexpr int width = 92;
  std::string text = fmt::format("tinworm {} {} [options]\n\n", verb_, words_) +
                     output::indented(purpose_, width, "", "") + "\nOptions\n";
  std::size_t widest = 0;
  std::vector<std::string> starts;
  for (const Option& option : options_) {
    std::string start = "  " + option.names + (option.value.empty() ? "" : " " + option.value);
    start.insert(std::min(start.find(',') + 1, start.size()),
                 start.find(',') == start.npos ? "" : " ");
    widest = std::max(widest, start.size());
    starts.push_back(std::move(start));
  }
  for (std::size_t i = 0; i < options_.size(); ++i) {
    text += output::indented(options_[i].help, width, fmt::format("{:<{}}", starts[i], widest + 2),
                             std::string(widest + 2, ' '));
  }
  text += "\nFor example\n";
  for (const auto& [command, what] : examples_) {
    text += fmt::format("  {}\n", command) + output::indented(what, width, "      ", "      ");
  }
  return text;
}

}  // namespace tinworm::verbs
