#include "verbs/picture.hpp"

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
