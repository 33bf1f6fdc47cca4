// What else the owner must know, as the surveyor noted it, and how old tyres were that day.
#pragma once

#include <string>
#include <vector>

#include "documents/flow.hpp"
#include "survey/survey.hpp"

namespace tinworm::documents {

// "front tyres (code 3500, 24 years old): sidewalls cracked"
std::string remark(const survey::Also& item, const quantity::PartialDate& on);
std::vector<const survey::Also*> before_use(const survey::Survey& survey);

// "week 35 of 2000: 24 years old; over 10 years: replace them whatever the tread". Limits of 6 and
// 10 years: common practice. Empty without a code.
std::string tyre_age(const survey::Also& item, const quantity::PartialDate& on);

// "At once: brakes: pipe weeps." Heads every paper; empty where nothing is.
std::string at_once_words(const survey::Survey& survey);

void write_remarks(Flow& flow, const survey::Survey& survey);

}  // namespace tinworm::documents
