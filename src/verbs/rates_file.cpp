#include "verbs/rates_file.hpp"

#include <filesystem>

#include "output/fingerprint.hpp"
#include "output/whole_file.hpp"
#include "rates/reader.hpp"
#include "verbs/surveys.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {

namespace fs = std::filesystem;

std::optional<RatesInForce> load_rates(const std::string& file, const CommonOptions& common,
                                       const Streams& streams) {
  if (file.empty()) return RatesInForce{};
  const std::string text = output::read_whole(file, most_bytes);
  const rates::Reading reading = rates::read_rates(text);
  if (reading.file)
    return RatesInForce{reading.file->rates, yaml::shown(fs::path(file).filename().string()),
                        reading.file->name, output::sha256(text)};
  streams.complain(yaml::to_text(reading.problems, file, text, common.problems));
  return std::nullopt;
}

}  // namespace tinworm::verbs
