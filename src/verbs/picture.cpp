#include "verbs/picture.hpp"

#include <fmt/format.h>

#include "output/zone_text.hpp"
#include "verbs/source_date.hpp"
#include "weighing/words.hpp"

namespace tinworm::verbs {
std::string_view word(scene::SheetKind sheet) {
  switch (sheet) {
    case scene::SheetKind::structure:
      return "structure";
    case scene::SheetKind::skin:
      return "skin";
    case scene::SheetKind::frame:
      break;
  }
  return "frame";
}

painting::Metadata metadata_of(const std::string& verb, const weighing::Result& result,
                               const Record& record) {
  painting::Metadata metadata;
  const std::string date = result.survey.visit.date.text();
  metadata.title = fmt::format("{}, survey of {}", output::car_text(result.survey.car), date);
  metadata.subject = "Corrosion survey, map of the metal";
  metadata.creator = "tinworm " TINWORM_VERSION;
  // The same input gives the same bytes: the day of the survey, never the clock.
  metadata.date = date_of_file(verb, result.survey.visit.date.first());
  metadata.description = fmt::format("Verdict: {}.", sentence(result.verdict));
  if (result.could_be != result.verdict) {
    metadata.description += fmt::format(" Could be: {}.", sentence(result.could_be));
  }
  if (result.open_up_first) metadata.description += " Open up first.";
  if (const std::string changed = weighing::rules_text(result); !changed.empty()) {
    metadata.description += " " + changed;
  }
  metadata.description += " " + result.caution;
  metadata.record = text(record);
  return metadata;
}

std::string picture_of(const std::vector<scene::Page>& pages, const painting::Metadata& metadata,
                       Kind kind, const PictureOptions& options, painting::Warnings& warnings) {
  switch (kind) {
    case Kind::svg:
      return painting::to_svg(pages.front(), metadata, &warnings);
    case Kind::png:
      return painting::to_png(pages.front(), options.width_px, metadata, &warnings);
    default:
      return painting::to_pdf(pages, metadata, &warnings);
  }
}

}  // namespace tinworm::verbs
