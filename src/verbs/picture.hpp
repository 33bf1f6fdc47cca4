// Pages of a scene as the picture that the command line asks for.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "painting/picture.hpp"
#include "verbs/destination.hpp"
#include "verbs/options.hpp"
#include "verbs/record.hpp"
#include "weighing/result.hpp"

namespace tinworm::verbs {

std::string_view word(scene::SheetKind sheet);  // as `--page` takes it: "structure"

// What a picture's file says of itself: car, date, verdict, changed rules, caution, how it was
// made; nothing private. Throws CommandError of that verb for a bad SOURCE_DATE_EPOCH.
painting::Metadata metadata_of(const std::string& verb, const weighing::Result& result,
                               const Record& record);

// A PDF of all pages, an SVG or PNG of the first.
std::string picture_of(const std::vector<scene::Page>& pages, const painting::Metadata& metadata,
                       Kind kind, const PictureOptions& options, painting::Warnings& warnings);

}  // namespace tinworm::verbs
