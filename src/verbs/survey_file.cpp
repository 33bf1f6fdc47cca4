#include "verbs/survey_file.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <optional>
#include <utility>

#include <fmt/format.h>

#include "output/file_error.hpp"
#include "output/fingerprint.hpp"
#include "output/whole_file.hpp"
#include "rates/rates.hpp"
#include "rules/rules.hpp"
#include "verbs/record.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {
namespace {

namespace fs = std::filesystem;
using attachments::Attachment;
using attachments::Role;

const char* const name_it = "name the survey itself";

std::string name_of(const std::string& path) {
  return fs::path(path).filename().string();
}

// A pipe is read once only, and is no paper.
bool is_paper(const std::string& path) {
  std::error_code unknown;  // reading it will tell
  if (!fs::is_regular_file(path, unknown)) return false;
  std::ifstream file(path, std::ios::binary);
  std::string first(5, '\0');
  file.read(first.data(), static_cast<std::streamsize>(first.size()));
  return attachments::begins_like_pdf(first);
}

struct Paper {
  Record record;
  std::vector<Attachment> attachments;
};

Paper paper_at(const std::string& path) {
  auto carried = attachments::carried_by(path);
  if (!carried) throw output::FileError(path, carried.error().what, carried.error().cure);
  std::optional<Record> record = read_record(carried->keywords);
  if (!record) throw output::FileError(path, "isn't a paper of tinworm's", name_it);
  return {std::move(*record), std::move(carried->attachments)};
}

InputKind input_of(Role role) {
  switch (role) {
    case Role::plan:
      return InputKind::plan;
    case Role::rules:
      return InputKind::rules;
    case Role::rates:
      return InputKind::rates;
    case Role::survey:
      break;
  }
  return InputKind::survey;
}

// As the paper's own line says that it was made: by no other file of that kind.
bool is_named(const Record& record, const Attachment& attachment) {
  const InputKind kind = input_of(attachment.role);
  const std::string sha256 = output::sha256(attachment.bytes);
  if (kind == InputKind::survey) {  // of several, the latest: a report may look back on others
    const auto last =
        std::ranges::find(record.inputs.rbegin(), record.inputs.rend(), kind, &Input::kind);
    return last != record.inputs.rend() && last->sha256 == sha256 &&
           last->file == yaml::shown(attachment.name);
  }
  return std::ranges::any_of(record.inputs, [&](const Input& each) {
    return each.kind == kind && each.sha256 == sha256 &&
           (kind == InputKind::plan || each.file == yaml::shown(attachment.name));
  });
}

// The one in that role; none where there is none.
std::optional<Attachment> only(const Paper& paper, Role role, const std::string& path) {
  const auto in_role = [role](const Attachment& each) { return each.role == role; };
  const auto count = std::ranges::count_if(paper.attachments, in_role);
  std::optional<Attachment> found;
  for (const Attachment& each : paper.attachments) {
    if (!in_role(each)) continue;
    if (count > 1)
      throw output::FileError(path, fmt::format("carries more than one {}", word(input_of(role))),
                              name_it);
    if (!is_named(paper.record, each))
      throw output::FileError(path,
                              fmt::format("what it carries as {} isn't what it was made of: one of "
                                          "them was changed since",
                                          word(input_of(role))),
                              name_it);
    found = each;
  }
  return found;
}

SurveyFile survey_in_paper(const std::string& path) {
  const Paper paper = paper_at(path);
  std::optional<Attachment> survey = only(paper, Role::survey, path);
  if (!survey)
    throw output::FileError(path, "carries no survey, as a report does, and a map with --private",
                            name_it);
  SurveyFile file;
  file.name = std::move(survey->name);
  file.text = std::move(survey->bytes);
  file.sha256 = output::sha256(file.text);
  file.place = fmt::format("{}: {}", path, file.name);
  for (const Role role : {Role::plan, Role::rules, Role::rates})
    if (auto other = only(paper, role, path)) file.beside.push_back(std::move(*other));
  return file;
}

}  // namespace

SurveyFile read_survey_file(const std::string& path) {
  if (is_paper(path)) return survey_in_paper(path);
  std::string text = output::read_whole(path, most_bytes);
  std::string sha256 = output::sha256(text);
  return {name_of(path), std::move(text), std::move(sha256), path, {}};
}

NamedText read_constants_file(const std::string& path, Role role) {
  if (!is_paper(path)) return {name_of(path), output::read_whole(path, most_bytes)};
  std::optional<Attachment> found = only(paper_at(path), role, path);
  if (!found)
    throw output::FileError(path,
                            fmt::format("carries no {}: it was made by the defaults, or isn't a "
                                        "paper that carries its survey",
                                        word(input_of(role))),
                            fmt::format("name a file of {}", word(input_of(role))));
  return {std::move(found->name), std::move(found->bytes)};
}

std::vector<Attachment> to_carry(const Loaded& loaded, PlanShelf& plans, const RulesInForce& rules,
                                 const RatesInForce* rates) {
  std::vector<Attachment> files{{Role::survey, loaded.name, loaded.text}};
  const body::Plan& plan = *loaded.survey->body;
  if (std::string text = plans.text_of(plan); !text.empty())
    files.push_back({Role::plan, plan.name + ".yaml", std::move(text)});
  if (!rules::changed(rules.constants).empty())
    files.push_back({Role::rules, rules.file, rules.text});
  if (rates != nullptr && !rates::changed(rates->rates).empty())
    files.push_back({Role::rates, rates->file, rates->text});
  return files;
}

}  // namespace tinworm::verbs
