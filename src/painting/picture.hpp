// A scene as a file in memory. The same pages and metadata give the same bytes, in one process or
// many. Nothing here reads the clock or writes to disk.
#pragma once

#include <string>
#include <vector>

#include "scene/page.hpp"

namespace tinworm::painting {

struct Metadata {
  std::string title;   // "Wherry 1200, survey of 2025-04-12"
  std::string author;  // empty: none
  std::string subject;
  std::string creator;      // "tinworm 1.0.0"
  std::string date;         // "2025-04-12T00:00:00Z", whole; from the survey or SOURCE_DATE_EPOCH
  std::string description;  // what one must know who sees only the picture: verdict and caution
  std::string record;       // how it was made, in plain ASCII: the keywords of a PDF
};

// What the reader should be told: "no installed font has …". In order, none twice.
using Warnings = std::vector<std::string>;

// What draws, for whoever makes a picture again: other versions may make other bytes of one scene.
std::string libraries();  // "cairo 1.16.0 pango 1.50.12 …"

// All throw std::runtime_error with Cairo's or libpng's words if anything fails, and
// std::invalid_argument for a page no surface can hold or a link that leads nowhere.
std::string to_pdf(const std::vector<scene::Page>& pages, const Metadata& metadata,
                   Warnings* warnings = nullptr);
std::string to_svg(const scene::Page& page, const Metadata& metadata, Warnings* warnings = nullptr);
std::string to_png(const scene::Page& page, int width_px, const Metadata& metadata,
                   Warnings* warnings = nullptr);

}  // namespace tinworm::painting
