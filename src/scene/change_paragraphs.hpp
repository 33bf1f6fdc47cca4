// What changed otherwise than by getting worse, what didn't, and what can't be told, as paragraphs
// under headings.
#pragma once

#include <string>
#include <vector>

#include "history/comparison.hpp"
#include "quantity/length.hpp"
#include "scene/text_columns.hpp"

namespace tinworm::scene {

// "zone-51" if that is one of `linked`, places of other pages; else empty.
std::string link_to(int number, const std::vector<std::string>& linked);

// Headings only over something. Places of a zone that share a reason stand together.
std::vector<Paragraph> change_paragraphs(const history::Comparison& comparison,
                                         quantity::Units units,
                                         const std::vector<std::string>& linked);

}  // namespace tinworm::scene
