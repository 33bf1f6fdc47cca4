// The strip of numbers and names on a sheet.
#pragma once

#include <optional>
#include <vector>

#include "scene/drafting.hpp"
#include "scene/part_names.hpp"
#include "scene/writer.hpp"

namespace tinworm::scene {

enum class Parts { all, unnamed, none };  // unnamed: whose names don't stand on the drawing

std::set<int> numbers_on(const Page& page);  // that stand on the drawing

// Of the numbers on the drawing.
std::vector<PartName> parts_of(const Drafting& drafting, Parts which);

// How a strip is set: in rows and columns, or with no columns as flowing text.
struct PartsSetting {
  Area area;
  int columns = 0;
};

// A blank place of the drawing for it, after all labels are seated.
std::optional<PartsSetting> place_for_parts(const Drafting& drafting, Parts which);

void write_parts(Layer& layer, const std::vector<PartName>& parts, const PartsSetting& setting,
                 const Measure& measure);

// Flowing, down a column.
void write_parts(Writer& writer, const std::vector<PartName>& parts);

}  // namespace tinworm::scene
