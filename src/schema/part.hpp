// The pieces of a JSON Schema: what an editor shows, the keys of a map, words, quantities, text.
//
// Each kind of value comes with a description of how it is written; `titled` puts before it what
// the value is. Beside "pattern" stands "patternErrorMessage", which the standard lets by and some
// editors show in its stead.
#pragma once

#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include <nlohmann/json.hpp>

#include "body/words.hpp"
#include "schema/meaning.hpp"
#include "survey/limits.hpp"
#include "survey/words.hpp"

namespace tinworm::schema {

using Json = nlohmann::ordered_json;

constexpr std::string_view dialect = "https://json-schema.org/draft/2020-12/schema";

// What an editor shows when one points at a value; `examples` replace those of the value.
Json titled(std::string_view title, std::string_view description, Json value,
            const std::vector<Json>& examples = {});

enum class Need { required, optional };
struct Key {
  std::string name;
  Json value;
  Need need = Need::optional;
};
Json map_of(const std::vector<Key>& keys);  // these keys and no other
Json list_of(Json item);

// A text or a plain number: names of cars and chassis look like numbers at times.
Json name();  // one line
Json text();

Json matching(const std::string& allowed, std::string_view how);  // a text of that pattern
Json figure(double value);  // written without a point where it needs none
Json number(double low, double high);
// Those up to `most` that `is_taken` takes.
Json whole_number(int most, const std::function<bool(int)>& is_taken);
// A number, or a number with its unit in a text.
Json quantity(double low, double high, const std::string& allowed, std::string_view how);
// The same, several of it on one line or as a list.
Json several(Json quantity);

Json length(const survey::Range& range);
Json lengths(const survey::Range& range);  // readings
Json films(const survey::Range& range);
Json size(const survey::Range& range);
Json holes(const survey::Range& range);
Json date();         // may be partial
Json zone_number();  // as a number

struct Meaning {
  std::string_view word, meaning;
};
Json words(const std::vector<Meaning>& meanings);

// Several of them between spaces or as a list.
Json several_words(Json words);

template <class Word>
Json words() {
  std::vector<Meaning> all;
  for (const survey::Term& term : survey::terms<Word>()) all.push_back({term.word, term.meaning});
  return words(all);
}

template <class Value>
Json words(std::span<const body::Word<Value>> table) {
  std::vector<Meaning> all;
  for (const body::Word<Value>& entry : table) all.push_back({entry.word, meaning(entry.value)});
  return words(all);
}

}  // namespace tinworm::schema
