#include "verbs/drawn_again.hpp"

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <optional>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "output/file_error.hpp"
#include "output/fingerprint.hpp"
#include "output/whole_file.hpp"
#include "verbs/record_words.hpp"
#include "verbs/run_command.hpp"
#include "verbs/surveys.hpp"

namespace tinworm::verbs {
namespace {

namespace fs = std::filesystem;

// SOURCE_DATE_EPOCH as it was when the output was made; put back at the end.
class SourceDate {
 public:
  explicit SourceDate(const std::string& seconds) {
    if (const char* now = std::getenv(name)) before_ = now;
    set(seconds);
  }
  SourceDate(const SourceDate&) = delete;
  SourceDate& operator=(const SourceDate&) = delete;
  ~SourceDate() { set(before_); }

 private:
  static constexpr const char* name = "SOURCE_DATE_EPOCH";
  static void set(const std::string& seconds) { ::setenv(name, seconds.c_str(), 1); }
  std::string before_;  // empty counts as none
};

// Without folders, whatever a record says: `..` is none.
bool is_plain_name(const std::string& file) {
  return !file.empty() && file.find('/') == file.npos && file != "." && file != "..";
}

bool has_fingerprint(const fs::path& path, const std::string& sha256) {
  std::error_code not_there;
  if (!fs::is_regular_file(path, not_there)) return false;
  try {
    return output::sha256(output::read_whole(path.string(), most_bytes)) == sha256;
  } catch (const output::FileError&) {
    return false;  // what can't be read is not at hand
  }
}

std::string found(const Input& input, const AtHand& at_hand) {
  if (!is_plain_name(input.file)) return "";
  for (const std::string& beside : {at_hand.survey, at_hand.output, std::string()}) {
    const fs::path folder = fs::path(beside).parent_path();
    const fs::path path = (folder.empty() ? "." : folder) / input.file;  // "-x" is no option
    if (has_fingerprint(path, input.sha256)) return path.string();
  }
  return "";
}

class Gathered {
 public:
  Gathered(const Record& record, const AtHand& at_hand) : at_hand_(at_hand) {
    words = record.words;
    for (const Input& each : record.inputs) {
      if (each.kind == InputKind::survey) add_survey(each, record);
      if (each.kind == InputKind::rules) add(each, "--rules", at_hand.rules);
      if (each.kind == InputKind::rates) add(each, "--rates", at_hand.rates);
    }
    // Those named are drawn by even where the record has none: then it tells that they differ.
    if (!record.input(InputKind::rules)) add_given("--rules", at_hand.rules);
    if (!record.input(InputKind::rates)) add_given("--rates", at_hand.rates);
    add_given("--panels", at_hand.panels);
  }

  std::vector<std::string> words;
  std::string missing;

 private:
  // A report is of the last one; those before it are named as such.
  void add_survey(const Input& input, const Record& record) {
    const auto last = std::ranges::find(record.inputs.rbegin(), record.inputs.rend(),
                                        InputKind::survey, &Input::kind);
    const bool earlier = words.front() == "report" && *last != input;
    add(input, earlier ? "--before" : "", input.sha256 == at_hand_.sha256 ? at_hand_.survey : "");
  }

  void add(const Input& input, const std::string& option, const std::string& given) {
    const std::string path = given.empty() ? found(input, at_hand_) : given;
    if (path.empty())
      missing += (missing.empty() ? "" : ", ") + title(input);
    else if (option.empty())
      words.push_back(path);
    else
      add_given(option, path);
  }

  void add_given(const std::string& option, const std::string& path) {
    if (!path.empty()) words.push_back(option + "=" + path);
  }

  const AtHand& at_hand_;
};

}  // namespace

DrawnAgain drawn_again(const Record& record, const AtHand& at_hand) {
  if (!are_harmless(record.words))
    return {nullptr,
            fmt::format("Its record asks for \"{}\", which no output is made by.",
                        fmt::join(record.words, " ")),
            ""};
  if (const std::string here = this_program(*kind_in(record.words)); record.program != here)
    return {nullptr, fmt::format("It was made by tinworm {}; this is {}.", record.program, here),
            ""};
  Gathered gathered(record, at_hand);
  if (!gathered.missing.empty())
    return {nullptr,
            fmt::format("Not at hand: {}. Put it beside the survey, or name it.", gathered.missing),
            ""};
  std::vector<std::string> words = std::move(gathered.words);
  std::erase_if(words,
                [](const std::string& each) { return each.starts_with("SOURCE_DATE_EPOCH="); });
  words.insert(words.end(), {"--quiet", "-o", "-"});
  const auto drawn = std::make_shared<const OpenFile>(nameless_file(), at_hand.output);
  const OpenFile told(nameless_file(), at_hand.output);
  const SourceDate as_then(source_date_in(record.words));
  const ExitStatus status = run_command(words, {drawn->number(), told.number(), true});
  if (status == done) return {drawn, "", ""};
  return {nullptr, "It can't be made again:", told.bytes(0, most_bytes)};
}

}  // namespace tinworm::verbs
