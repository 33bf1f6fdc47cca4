// The body plans a command can use: a folder of the user's, those compiled in, and files that a
// survey names by path. Each is read once, whatever the number of surveys and threads.
#pragma once

#include <map>
#include <mutex>
#include <string>
#include <string_view>
#include <vector>

#include <tl/expected.hpp>

#include "body/plan.hpp"
#include "yaml/problem.hpp"

namespace tinworm::verbs {

class PlanShelf {
 public:
  // `folder`: of --panels; its plans come before built-in ones of the same name. May be empty.
  // `problems`: of one plan, told at most. Throws output::FileError where it can't be listed.
  explicit PlanShelf(const std::string& folder, int problems = yaml::problems_listed);

  // `text` is a name and perhaps a version ("two-door-saloon 1") or a path to a plan's file,
  // relative to `beside`. The refusal's place is empty; the caller knows where the name stands.
  tl::expected<body::PlanPtr, yaml::Problem> find(std::string_view text, const std::string& beside);

  // A plan that came with a survey, which no file has: `from` names it in messages, and `text` is
  // its YAML.
  tl::expected<body::PlanPtr, yaml::Problem> carried(const std::string& from,
                                                     const std::string& text);

  // What a plan of this shelf was read from; empty where it is built in.
  std::string text_of(const body::Plan& plan);

  std::vector<std::string> names() const;  // in order

  // What is wrong with the plan's file that `find` refused, printed with places; empty otherwise.
  std::string mistakes(std::string_view text, const std::string& beside);

  int problems() const { return problems_; }  // of one file, told at most

 private:
  struct Book {
    body::PlanPtr plan;    // null where it can't be read
    std::string refusal;   // why there is none: one clause
    std::string mistakes;  // every problem of its file
    std::string text;      // of its file; empty where it is built in
  };
  struct Source {
    std::string file;       // as messages name it
    std::string_view yaml;  // of a plan at hand; else the file is read
    bool built_in = false;  // and checked when it was built
  };

  tl::expected<Source, yaml::Problem> source_of(const std::string& name,
                                                const std::string& beside) const;
  const Book& open(const Source& source);

  std::map<std::string, Source> by_name_;
  std::map<std::string, Book> books_;  // by file
  int problems_;
  std::mutex reading_;  // of books_
};

}  // namespace tinworm::verbs
