// A survey to fill in: the zones of a body in walk-round order, each with what a surveyor should
// know when standing before it. What is to be filled in stands behind a `#` at the start of its
// line; the form as it is reads without a mistake and records nothing.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "survey/survey.hpp"

namespace tinworm::survey {

struct FormLine {
  std::string text;
  int row = 0;         // of a field sheet, from 1; 0: the form's own
  std::string column;  // of the sheet, whose cell this line holds
};
using FormLines = std::vector<FormLine>;

struct Form {
  std::string car;  // its name
  PartialDate date;
  quantity::Units units = quantity::Units::mm;
  // Names, stations, references, repairs and what isn't fitted are kept; readings, photos and dates
  // are not, but stand beside as remarks.
  const Survey* before = nullptr;
  bool numbered_photos = false;  // photos are numbers: their folder must be named
  // What is already known of a zone, below its key; takes the place of the lines to fill in.
  std::map<int, FormLines> filled;
};

FormLines form_lines(const body::Plan& plan, const Form& form);

std::string text_of(const FormLines& lines);

}  // namespace tinworm::survey
