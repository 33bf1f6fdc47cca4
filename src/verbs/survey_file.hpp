// A survey's file, or a paper that carries one: wherever the one may stand, the other may.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "attachments/attachments.hpp"
#include "verbs/plan_shelf.hpp"
#include "verbs/rates_file.hpp"
#include "verbs/rules_file.hpp"
#include "verbs/surveys.hpp"

namespace tinworm::verbs {

struct SurveyFile {
  std::string name;  // its own, without folders; not the paper's
  std::string text;
  std::string sha256;  // of the text
  std::string place;   // what problems in it are told of: "car.yaml", "report.pdf: car.yaml"
  std::vector<attachments::Attachment> beside;  // what else the paper carries
};

// Throws output::FileError where it can't be read, and where a paper carries no survey, several, or
// another than its record names.
SurveyFile read_survey_file(const std::string& path);

struct NamedText {
  std::string name;  // without folders
  std::string text;
};

// A file of rules or rates, or what a paper carries in that role. Throws output::FileError.
NamedText read_constants_file(const std::string& path, attachments::Role role);

// What a paper of the survey carries: its file as typed, its plan where that isn't built in, rules
// and rates where they change anything. `rates` may be null: the paper doesn't reckon.
std::vector<attachments::Attachment> to_carry(const Loaded& loaded, PlanShelf& plans,
                                              const RulesInForce& rules, const RatesInForce* rates);

}  // namespace tinworm::verbs
