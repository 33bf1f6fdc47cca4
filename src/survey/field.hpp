// What a finding, a repair and a zone may say, in one table: the line reader, the long reader, the
// writer, spreadsheets, forms, the JSON Schema, the papers' words and the filter for a sale run on
// it. To add something that may be said: its member in survey.hpp, its row in field.cpp.
#pragma once

#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "survey/limits.hpp"
#include "survey/page.hpp"
#include "survey/survey.hpp"
#include "yaml/node.hpp"

namespace tinworm::survey {

// How a value is written; the schema has a pattern for each.
enum class Writing {
  word,
  words,   // several of them between spaces
  inside,  // a word, with a share behind `part`
  drains,  // a word, or a place and its word
  marks,   // places and how to find them again
  count,
  readings,
  films,
  size,
  holes,
  length,
  sheet,
  date,
  photos,
  position,
  pits,
  text
};

enum class Alone { no, yes };       // whether its words or figures stand in a line without its key
enum class Counts { no, yes };      // whether it alone makes a finding, or a repair
enum class Sale { hidden, shown };  // whether a stranger may see it

// What is known of a field without knowing whose it is.
struct FieldFacts {
  std::string_view key;        // in the long form, and before its value in a line: `metal .81`
  std::string_view meaning;    // one sentence, shown by editors
  std::string_view what = {};  // as messages call it; the key where empty
  Writing writing = Writing::text;
  std::span<const Term> terms = {};  // of a word
  const Range* range = nullptr;      // of figures
  std::string_view heading = {};     // of its column in a spreadsheet; empty: it has none
  Alone alone = Alone::no;
  Counts counts = Counts::no;
  Sale sale = Sale::hidden;
  std::string_view on_paper = {};  // what stands before its word on paper: "stuffed with "
  std::vector<std::string_view> examples = {};

  std::vector<std::string> words() const;  // of `terms`
};

template <class Of>
struct Field {
  FieldFacts facts;
  // Reads the value from its node; problems go to the page.
  std::function<void(Page&, const yaml::Node&, Of&)> read;
  // The value as it would be written in a line, without its key; empty where nothing is said.
  std::function<std::string(const Of&)> written;
  std::function<void(const Of& from, Of& to)> copy;
};

// In the order in which they are listed and written. The name of a finding or a repair (`spot`) is
// not among them: in a line it stands before the colon.
const std::vector<Field<Spot>>& finding_fields();
const std::vector<Field<Repair>>& repair_fields();
const std::vector<Field<Zone>>& zone_fields();  // those of the zone itself, not found nor repairs

// Reads every field that stands in the map.
template <class Of>
void read_fields(Page& page, yaml::MapReader& map, const std::vector<Field<Of>>& fields, Of& of) {
  for (const Field<Of>& field : fields)
    if (const yaml::Node* node = map.optional(field.facts.key)) field.read(page, *node, of);
}

template <class Of>
Of copy_for_sale(const std::vector<Field<Of>>& fields, const Of& of) {
  Of copy;
  for (const Field<Of>& field : fields)
    if (field.facts.sale == Sale::shown) field.copy(of, copy);
  return copy;
}

}  // namespace tinworm::survey
