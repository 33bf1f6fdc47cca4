// What a listing says beside its drawing. Of results that went through `for_sale`.
#pragma once

#include <string>
#include <vector>

#include "scene/sheet.hpp"
#include "scene/writer.hpp"
#include "weighing/result.hpp"

namespace tinworm::scene {

// How much of the main structure was measured, looked at, not seen; with what; where rust was found
// and that none was found elsewhere, where looked; coats that may be filler; who looked, if the
// result says.
std::vector<std::string> looked_lines(const weighing::Result& result);

constexpr std::size_t no_limit = 1000;  // no body has as many zones

// Zones not seen by how; seen in part; insides not seen; what to open up first: by number and name,
// the worst consequence first. Of each the first `most`, "and 7 more zones".
std::vector<std::string> unseen_lines(const weighing::Result& result, std::size_t most = no_limit);

// "Rust was found too on parts that this sheet doesn't show: 91 roof.", the first `most`; empty
// where it shows all.
std::string elsewhere_line(const weighing::Result& result, SheetKind kind,
                           std::size_t most = no_limit);

// What was found where the body plan has nothing to draw, the worst first: "a part that the body
// plan lacks, left: holed, judged by hand; 3 such parts". At most so many lines, then how many more
// parts.
std::vector<std::string> not_drawn_words(const weighing::Result& result,
                                         std::size_t most = no_limit);

// "10 % of the main structure was not seen."; empty where the body has none.
std::string unseen_share(const weighing::Result& result);

// "51 outer sill, left: let in, seam weld, 2021-05; can be relied on", the main structure's first,
// among them those that can't be relied on, and why.
std::vector<std::string> repair_lines(const weighing::Result& result);

enum class Setting { lines, flowing };  // a line for each sentence, or one after the other
void write_looked(Writer& writer, const weighing::Result& result, Setting setting = Setting::lines);
// Also what was found where the body plan has nothing to draw.
void write_unseen(Writer& writer, const weighing::Result& result, std::size_t most = no_limit);
// As many as go into `most_mm`, one at least, then how many more there are.
void write_repairs(Writer& writer, const weighing::Result& result, double most_mm);

}  // namespace tinworm::scene
