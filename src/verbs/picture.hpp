// Pages of a scene as the picture that the command line asks for.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "painting/picture.hpp"
#include "verbs/destination.hpp"
#include "verbs/options.hpp"

namespace tinworm::verbs {

std::string_view word(scene::SheetKind sheet);  // as `--page` takes it: "structure"

// A PDF of all pages, an SVG or PNG of the first.
std::string picture_of(const std::vector<scene::Page>& pages, const painting::Metadata& metadata,
                       Kind kind, const PictureOptions& options, painting::Warnings& warnings);

}  // namespace tinworm::verbs
