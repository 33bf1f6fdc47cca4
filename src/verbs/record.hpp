// How an output was made, in one line that every output but CSV carries: enough to make it again
// from the same inputs and to see whether it comes out the same.
//   [tinworm 0.1.0: weigh --as=text --units=mm; body two-door-saloon 1; survey wherry.yaml 47a2…]
// Plain ASCII without quotes, further brackets or backslashes, so that it stands as it is in JSON,
// XML, the strings of PDF and the chunks of PNG. Files have their names alone, never folders.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "output/weigh_json.hpp"
#include "output/weigh_text.hpp"
#include "verbs/destination.hpp"
#include "verbs/rates_file.hpp"
#include "verbs/rules_file.hpp"
#include "weighing/result.hpp"

namespace tinworm::verbs {

enum class InputKind { survey, plan, rules, rates, photos };
std::string_view word(InputKind);

struct Input {
  InputKind kind = InputKind::survey;
  std::string file;    // its name; empty for plans, for photos (all together), in a listing
  std::string sha256;  // of its bytes; of photos, see photo_shelf.hpp
  bool operator==(const Input&) const = default;
};

struct Record {
  std::string program;             // "0.1.0"; of a picture, also the libraries that drew it
  std::vector<std::string> words;  // see record_words.hpp: "map", "--as=pdf", "--paper=a4"
  std::string body;                // "two-door-saloon 1"
  std::vector<Input> inputs;       // body plans that aren't built in, surveys by date, …
  bool operator==(const Record&) const = default;

  const Input* survey(std::string_view sha256) const;  // null where it was not made of that one
  const Input* input(InputKind kind) const;            // the first of that kind; or null
};

std::string title(const Input& input);  // "salted.yaml (rules, fingerprint 47a2feba572e)"

// What makes outputs of that kind here.
std::string this_program(Kind kind);

// Of an output of a body alone; of one survey; or of several in order of date. Rules count where
// they change anything.
Record record_of(std::vector<std::string> words, Kind kind, const body::Plan& plan);
Record record_of(std::vector<std::string> words, Kind kind,
                 const std::vector<weighing::Result>& results, const RulesInForce& rules);

void add_rates(Record& record, const RatesInForce& rates);  // for rates that change anything

std::string text(const Record& record);  // "[tinworm …]"

// As a document's last key, and as a text's last line; a terminal gets none, being no file.
std::string json_with(const Record& record, nlohmann::ordered_json document, output::Lines lines);
std::string last_line(const Record& record, const output::TextStyle& style);

constexpr std::string_view record_start = "[tinworm ";
constexpr std::size_t longest_record = 1u << 18;  // a comparison of more than a thousand surveys

// None where `line`, from one bracket to the other, is not letter for letter what text() makes.
std::optional<Record> read_record(std::string_view line);

}  // namespace tinworm::verbs
