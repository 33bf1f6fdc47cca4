#include "verbs/rates_file.hpp"

#include <utility>

#include "output/fingerprint.hpp"
#include "rates/reader.hpp"
#include "verbs/survey_file.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {

std::optional<RatesInForce> load_rates(const std::string& file, const CommonOptions& common,
                                       const Streams& streams) {
  if (file.empty()) return RatesInForce{};
  NamedText source = read_constants_file(file, attachments::Role::rates);
  const rates::Reading reading = rates::read_rates(source.text);
  if (reading.file)
    return RatesInForce{reading.file->rates, yaml::shown(source.name), reading.file->name,
                        output::sha256(source.text), std::move(source.text)};
  streams.complain(yaml::to_text(reading.problems, file, source.text, common.problems));
  return std::nullopt;
}

}  // namespace tinworm::verbs
