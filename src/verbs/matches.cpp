#include "verbs/matches.hpp"

#include <algorithm>
#include <filesystem>

#include <fmt/format.h>
#include <fmt/ranges.h>
#include <nlohmann/json.hpp>

#include "output/descriptor.hpp"
#include "output/weigh_json.hpp"
#include "verbs/record_words.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {
namespace {

std::string_view answer(Belonging belonging) {
  switch (belonging) {
    case Belonging::identical:
      return "identical";
    case Belonging::differs:
      return "names this survey but differs";
    case Belonging::not_from_it:
      return "not from it";
    case Belonging::cannot_tell:
      break;
  }
  return "can't tell";
}

// Words of a record go to a terminal, and anyone may have written them.
Match answered(Belonging belonging, const AtHand& at_hand, const std::string& why) {
  return {
      belonging,
      fmt::format("{}: {}. {}\n", yaml::shown(at_hand.output), answer(belonging), yaml::shown(why)),
      ""};
}

std::string command(const Record& record) {
  return fmt::format("\"tinworm {}\"", fmt::join(record.words, " "));
}

struct Compared {
  Belonging belonging = Belonging::differs;
  std::string what;  // a sentence
};

std::string title_or_defaults(const Input* input) {
  return input == nullptr ? "the defaults" : title(*input);
}

// By what is named on the command line another output was made, so the two can't be the same.
std::optional<Compared> in_inputs(const Record& carried, const Record& made,
                                  const AtHand& at_hand) {
  for (const InputKind kind : {InputKind::rules, InputKind::rates}) {
    const Input *then = carried.input(kind), *now = made.input(kind);
    if (title_or_defaults(then) != title_or_defaults(now))
      return Compared{Belonging::differs,
                      fmt::format("It was made by other {}: by {}, not by {}.", word(kind),
                                  title_or_defaults(then), title_or_defaults(now))};
  }
  for (const InputKind kind : {InputKind::plan, InputKind::photos}) {
    const Input *then = carried.input(kind), *now = made.input(kind);
    if (then != nullptr && (now == nullptr || then->sha256 != now->sha256))
      return Compared{Belonging::cannot_tell,
                      fmt::format("Not at hand: {} that it was made with.", title(*then))};
  }
  const Input* then = carried.survey(at_hand.sha256);
  if (const Input* now = made.survey(at_hand.sha256); now == nullptr || then->file != now->file)
    return Compared{
        Belonging::cannot_tell,
        fmt::format("The survey was called {} when it was made: give it that name.", then->file)};
  if (carried != made)
    return Compared{Belonging::differs, fmt::format("In what it says of how it was made: {} makes "
                                                    "another record.",
                                                    command(carried))};
  return std::nullopt;
}

struct Part {  // of the output: all of it, or a line of many
  std::size_t at = 0, length = 0;
};

std::string in_content(const OpenFile& output, Part part, const OpenFile& made, std::size_t at,
                       Kind kind) {
  const std::size_t size = made.size();
  if (at == size) return fmt::format("{} bytes were added at its end.", part.length - size);
  if (at == part.length) return fmt::format("{} bytes are missing at its end.", size - part.length);
  if (!is_picture(kind) || kind == Kind::svg)
    return fmt::format("It was changed after it was made, first in line {}.",
                       line_of(output, part.at + at));
  return fmt::format("It was changed after it was made, first at byte {}.", at + 1);
}

// Newline-delimited JSON has a survey in each line. What is made of one survey is brought into that
// shape, and the line of the record is compared with it.
bool is_in_lines(const OpenFile& output, Kind kind) {
  return kind == Kind::json && output.bytes(0, 2) == "{\"";
}

std::shared_ptr<const OpenFile> in_one_line(const OpenFile& made) {
  auto line = std::make_shared<const OpenFile>(nameless_file(), "a line of JSON");
  output::write_all(line->number(),
                    output::json_text(nlohmann::ordered_json::parse(made.bytes(0, made.size())),
                                      output::Lines::one),
                    "a line of JSON");
  return line;
}

Part line_round(const OpenFile& output, std::size_t record_at, const OpenFile& made,
                const std::string& sha256) {
  const std::size_t before = records_in(made, sha256).naming.back().at;
  const std::size_t at = record_at - std::min(before, record_at);
  if (at > 0 && output.bytes(at - 1, 1) != "\n") return {0, output.size()};
  return {at, std::min(made.size(), output.size() - at)};
}

Match compared(const OpenFile& output, const Carried& carried, const AtHand& at_hand) {
  const DrawnAgain again = drawn_again(carried.record, at_hand);
  if (!again.file) {
    Match match = answered(Belonging::cannot_tell, at_hand, again.why);
    match.messages = again.messages;
    return match;
  }
  const Kind kind = *kind_in(carried.record.words);
  const bool lines = is_in_lines(output, kind);
  const auto made = lines ? in_one_line(*again.file) : again.file;
  const Part part =
      lines ? line_round(output, carried.at, *made, at_hand.sha256) : Part{0, output.size()};
  const auto at = first_difference(output, part.at, part.length, *made);
  if (!at)
    return answered(Belonging::identical, at_hand,
                    fmt::format("{} makes the same of {} as it stands, byte for byte{}.",
                                command(carried.record), at_hand.survey,
                                lines ? fmt::format(" (line {})", line_of(output, part.at)) : ""));
  const std::optional<Record> record = records_in(*made, at_hand.sha256).last;
  if (const auto found = in_inputs(carried.record, record.value_or(Record{}), at_hand))
    return answered(found->belonging, at_hand, found->what);
  return answered(Belonging::differs, at_hand, in_content(output, part, *made, *at, kind));
}

std::string made_of(const Record& record) {
  std::vector<std::string> surveys;
  for (const Input& each : record.inputs)
    if (each.kind == InputKind::survey) surveys.push_back(title(each));
  if (surveys.empty()) return "no survey";
  return fmt::format("{}", fmt::join(surveys, ", "));
}

Match of_others(const Record& record, const AtHand& at_hand) {
  const std::string name = std::filesystem::path(at_hand.survey).filename();
  const bool same_name = std::ranges::any_of(record.inputs, [&](const Input& each) {
    return each.kind == InputKind::survey && each.file == name;
  });
  return answered(Belonging::not_from_it, at_hand,
                  fmt::format("It was made of {}; {} as it stands has the fingerprint {}.{}",
                              made_of(record), at_hand.survey, at_hand.sha256.substr(0, 12),
                              same_name ? " The survey was changed since, or is another." : ""));
}

}  // namespace

Match match(const AtHand& at_hand) {
  const OpenFile output(at_hand.output);
  const Records records = records_in(output, at_hand.sha256);
  if (!records.last)
    return answered(Belonging::cannot_tell, at_hand,
                    "It carries no record of how it was made, as every output but CSV and tables "
                    "of many surveys does.");
  if (records.naming.empty()) return of_others(*records.last, at_hand);
  Match last;
  for (const Carried& each : records.naming) {
    last = compared(output, each, at_hand);
    if (last.belonging == Belonging::identical) break;
  }
  return last;
}

}  // namespace tinworm::verbs
