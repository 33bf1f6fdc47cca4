#include "verbs/rules_file.hpp"

#include <utility>

#include "output/fingerprint.hpp"
#include "rules/reader.hpp"
#include "verbs/survey_file.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {

std::vector<std::string> with_rules(std::vector<std::string> surveys, const std::string& rules) {
  if (!rules.empty()) surveys.push_back(rules);
  return surveys;
}

std::optional<RulesInForce> load_rules(const CommonOptions& common, const Streams& streams) {
  const std::string& file = common.rules;
  if (file.empty()) return RulesInForce{};
  NamedText source = read_constants_file(file, attachments::Role::rules);
  const rules::Reading reading = rules::read_rules(source.text);
  if (reading.file)
    return RulesInForce{reading.file->rules, yaml::shown(source.name), reading.file->name,
                        output::sha256(source.text), std::move(source.text)};
  streams.complain(yaml::to_text(reading.problems, file, source.text, common.problems));
  return std::nullopt;
}

}  // namespace tinworm::verbs
