// The questions that a careful surveyor would ask before a survey is relied on. They change no
// figure and no verdict; each says what to ask or do, and what hangs on it.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "survey/survey.hpp"

namespace tinworm::rules {
struct Rules;
}

namespace tinworm::weighing {

struct Result;

struct Advice {
  int zone = 0;  // of several zones the first; 0: the whole car, or an own zone
  std::string own;
  std::string spot;      // its name, where one place is meant
  survey::Place place;   // in the survey's file; line 0: the file as a whole
  std::string kind;      // short and lasting: one of advice_kinds()
  std::string question;  // what to ask or do
  std::string why;       // what hangs on it
};

// Both sentences: "can … be measured? A weak place …"
std::string text(const Advice& advice);

// Whether the piece after `place` asks for the same reason: text then says why once, after the
// last.
bool same_reason_follows(const std::vector<Advice>& advice, std::size_t place);

// Every kind in the order in which advice stands: what could change the verdict, then what could
// change a figure, then what matters over the years and on paper.
const std::vector<std::string_view>& advice_kinds();

// By kind, within a kind by place in the file.
void sort(std::vector<Advice>& advice);

// What the survey itself raises, in order. Needs all else of `result`.
std::vector<Advice> advice(const Result& result, const rules::Rules& rules);

// What stands beside the survey's file.
struct Beside {
  // Whether a file or folder is there, its path relative to the survey's folder. Empty: not asked.
  std::function<bool(const std::string& path)> there;
  const survey::Survey* before = nullptr;  // an earlier survey of the same body
};

// What raises questions only beside other files: photos that aren't there, stations that an earlier
// survey names or measured. In order.
std::vector<Advice> advice_beside(const survey::Survey& survey, const Beside& beside);

// Whether two surveys can't be of one car: its name, its year or its chassis number differ.
bool another_car(const survey::Car& now, const survey::Car& then);

}  // namespace tinworm::weighing
