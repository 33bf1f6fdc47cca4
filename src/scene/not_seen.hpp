// The limits of a drawing: what was not seen and why, what lies inside boxes nobody looked into,
// what was found where the body plan has nothing to draw. They go with every picture.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "scene/diagram.hpp"
#include "scene/text_columns.hpp"
#include "scene/writer.hpp"

namespace tinworm::scene {

struct NotSeenLine {  // zones that share a reason, worst consequence first
  std::vector<int> zones;
  std::string why;
};
// The line with the worst consequence first.
std::vector<NotSeenLine> not_seen_lines(const weighing::Result& result);

// "no whole zone", "zones 15, 23–25", "zones 15 and what is not on the drawing".
std::string not_seen_words(const weighing::Result& result);

// "home-made tow bracket: thin, judged by eye", "sunroof tray: not seen, behind the headlining",
// for each zone that the body plan lacks.
std::vector<std::string> not_drawn_lines(const weighing::Result& result);
std::string not_drawn_line(const weighing::Zone& zone);  // its name, its step, how that is known

// Height of the limits in full; of what a sheet of that kind shows, if one is given.
double limits_height(const Writer& writer, const weighing::Result& result,
                     std::optional<SheetKind> kind = {});

// Writes the limits in full if there is room, else as many lines as there is room for, the worst
// consequence first, and where the rest stands. True if they were shortened. On a sheet of a kind
// only what it shows is told, by name, so that every number stands on its drawing, and how many
// parts other sheets have; else all by number.
bool write_limits(Writer& writer, const weighing::Result& result, const std::string& overflow_page,
                  std::optional<SheetKind> kind = {});

// The changed rules and the limits in full, by number, for a list that has the names.
std::vector<Paragraph> limit_paragraphs(const weighing::Result& result);
// The same by name, with a paragraph for each line.
std::vector<Paragraph> limit_lines(const weighing::Result& result);

}  // namespace tinworm::scene
