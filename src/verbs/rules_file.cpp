#include "verbs/rules_file.hpp"

#include <filesystem>

#include "output/fingerprint.hpp"
#include "output/whole_file.hpp"
#include "rules/reader.hpp"
#include "verbs/surveys.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {

namespace fs = std::filesystem;

std::vector<std::string> with_rules(std::vector<std::string> surveys, const std::string& rules) {
  if (!rules.empty()) surveys.push_back(rules);
  return surveys;
}

std::optional<RulesInForce> load_rules(const CommonOptions& common, const Streams& streams) {
  const std::string& file = common.rules;
  if (file.empty()) return RulesInForce{};
  const std::string text = output::read_whole(file, most_bytes);
  const rules::Reading reading = rules::read_rules(text);
  if (reading.file)
    return RulesInForce{reading.file->rules, yaml::shown(fs::path(file).filename().string()),
                        reading.file->name, output::sha256(text)};
  streams.complain(yaml::to_text(reading.problems, file, text, common.problems));
  return std::nullopt;
}

}  // namespace tinworm::verbs
