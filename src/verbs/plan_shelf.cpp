#include "verbs/plan_shelf.hpp"

#include <charconv>
#include <filesystem>
#include <memory>
#include <utility>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "body/built_in.hpp"
#include "body/checker.hpp"
#include "body/reader.hpp"
#include "output/file_error.hpp"
#include "output/fingerprint.hpp"
#include "output/whole_file.hpp"
#include "verbs/surveys.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {
namespace {

namespace fs = std::filesystem;

struct Named {
  std::string name;
  std::optional<int> version;
};

// "two-door-saloon 1" has a version; a path may hold spaces and has none.
Named split(std::string_view text) {
  const std::size_t space = text.rfind(' ');
  if (space == text.npos) return {std::string(text), std::nullopt};
  const std::string_view last = text.substr(space + 1);
  int version = 0;
  const auto [end, error] = std::from_chars(last.data(), last.data() + last.size(), version);
  if (error != std::errc() || end != last.data() + last.size()) {
    return {std::string(text), std::nullopt};
  }
  return {std::string(text.substr(0, space)), version};
}

bool is_path(const std::string& name) {
  return name.find('/') != name.npos || name.ends_with(".yaml") || name.ends_with(".yml");
}

}  // namespace

PlanShelf::PlanShelf(const std::string& folder, int problems) : problems_(problems) {
  for (const body::BuiltIn& plan : body::built_in_plans()) {
    const std::string name(plan.name);
    by_name_[name] = {"built-in " + name + ".yaml", plan.yaml, true};
  }
  if (folder.empty()) return;
  for (const std::string& file : yaml_files(folder)) {
    by_name_[fs::path(file).stem().string()] = {file, {}, false};
  }
}

std::vector<std::string> PlanShelf::names() const {
  std::vector<std::string> names;
  for (const auto& [name, source] : by_name_) names.push_back(name);
  return names;
}

tl::expected<PlanShelf::Source, yaml::Problem> PlanShelf::source_of(
    const std::string& name, const std::string& beside) const {
  if (is_path(name)) {
    return Source{
        fs::path(name).is_absolute() ? name : (fs::path(beside) / name).string(), {}, false};
  }
  const auto found = by_name_.find(name);
  if (found != by_name_.end()) return found->second;
  yaml::Problem problem;
  problem.what = "there is no such body plan";
  problem.found = name;
  problem.allowed = fmt::format("{}", fmt::join(names(), ", "));
  if (!problem.allowed.empty()) problem.allowed += ", or ";
  problem.allowed += "the path of a plan's file";
  problem.cure = yaml::did_you_mean(name, names());
  return tl::unexpected(std::move(problem));
}

const PlanShelf::Book& PlanShelf::open(const Source& source) {
  const std::lock_guard one_at_a_time(reading_);
  const auto [place, fresh] = books_.try_emplace(source.file);
  Book& book = place->second;
  if (!fresh) return book;
  try {
    std::string text = source.yaml.empty() ? output::read_whole(source.file, most_bytes)
                                           : std::string(source.yaml);
    body::Reading reading = body::read_plan(text);
    if (reading.plan && !source.built_in) {
      reading.problems = body::check_plan(*reading.plan);
    }
    if (reading.plan && reading.problems.empty()) {
      if (!source.built_in) reading.plan->sha256 = output::sha256(text);
      book.plan = std::make_shared<const body::Plan>(std::move(*reading.plan));
    } else {
      book.refusal = fmt::format("the body plan {} has errors", yaml::shown(source.file));
    }
    if (!reading.problems.empty()) {
      book.mistakes = yaml::to_text(reading.problems, source.file, text, problems_);
    }
    if (!source.built_in) book.text = std::move(text);
  } catch (const output::FileError& error) {
    book.refusal = fmt::format("the body plan can't be read: {}", error.what());
  }
  return book;
}

tl::expected<body::PlanPtr, yaml::Problem> PlanShelf::find(std::string_view text,
                                                           const std::string& beside) {
  const Named wanted = split(text);
  const auto source = source_of(wanted.name, beside);
  if (!source) return tl::unexpected(source.error());
  const Book& book = open(*source);
  yaml::Problem problem;
  problem.found = std::string(text);
  if (!book.plan) {
    problem.what = book.refusal;
    return tl::unexpected(std::move(problem));
  }
  if (wanted.version && *wanted.version != book.plan->version) {
    problem.what = "the body plan is of another version than the survey was made for";
    problem.allowed = fmt::format("{} {}", wanted.name, book.plan->version);
    problem.cure = fmt::format("look whether the zones still mean the same, then write {}",
                               book.plan->version);
    return tl::unexpected(std::move(problem));
  }
  return book.plan;
}

tl::expected<body::PlanPtr, yaml::Problem> PlanShelf::carried(const std::string& from,
                                                              const std::string& text) {
  const Book& book = open({from, text, false});
  if (book.plan) return book.plan;
  yaml::Problem problem;
  problem.what = book.refusal;
  return tl::unexpected(std::move(problem));
}

std::string PlanShelf::text_of(const body::Plan& plan) {
  const std::lock_guard one_at_a_time(reading_);
  for (const auto& [file, book] : books_)
    if (book.plan.get() == &plan) return book.text;
  return "";
}

std::string PlanShelf::mistakes(std::string_view text, const std::string& beside) {
  const auto source = source_of(split(text).name, beside);
  return source ? open(*source).mistakes : "";
}

}  // namespace tinworm::verbs
