// Long and one-line forms give the same model.
#include "survey/finding.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "survey/small_plan.hpp"

namespace tinworm::survey {
namespace {

constexpr std::string_view head =
    "survey: 1\n"
    "body: two-door-saloon 1\n"
    "car: {name: Wherry 1200, built: 1967}\n"
    "visit: {date: 2025-04-12}\n"
    "photos: {folder: photos, name: \"IMG_{}.jpg\"}\n"
    "seen: {bare: 51-58}\n"
    "zones:\n"
    "  51:\n";

void forget_places(std::vector<Photo>& photos) {
  for (Photo& photo : photos) photo.place = {};
}

// Zone 51 of a survey with these lines in it, places apart.
Zone zone_51(const std::string& lines) {
  const std::string source = std::string(head) + lines;
  Reading reading = read_with_small_plan(source);
  EXPECT_EQ(yaml::to_text(reading.problems, "survey.yaml", source), "");
  if (!reading.survey) return {};
  Zone zone = reading.survey->zones.at(51);
  for (Spot& spot : zone.found) {
    spot.place = {};
    forget_places(spot.photos);
  }
  for (Repair& repair : zone.repairs) {
    repair.place = {};
    forget_places(repair.photos);
  }
  return zone;
}

struct Pair {
  std::string line;       // after "rear end: " or "- "
  std::string long_form;  // inside the braces
};

TEST(Finding, MeansTheSameLongAndOnOneLine) {
  const Pair pairs[] = {
      {"pitting", "rust: pitting"},
      {"none", "rust: none"},
      {"hole", "rust: hole"},
      {"pitting, metal .81 .79 bare", "rust: pitting, metal: .81 .79, coating: removed"},
      {"pitting, metal .81 .79 mm Bare", "rust: pitting, metal: .81 .79, coating: removed"},
      {"metal .81 left-on", "metal: .81, coating: left-on"},
      {"metal 32 thou, coating compensated", "metal: 32 thou, coating: compensated"},
      {"magnet none, surface", "magnet: none, rust: surface"},
      {"none, magnet holds", "rust: none, magnet: holds"},
      {"seam, firm, dull", "rust: seam, hand: firm, tap: dull"},
      {"dull, seam, firm", "rust: seam, hand: firm, tap: dull"},
      {"rust seam, hand firm, tap dull", "rust: seam, hand: firm, tap: dull"},
      {"probe goes-in", "probe: goes-in"},
      {"metal .81 .78 .84 .80", "metal: [.81, .78, .84, .80]"},
      {"metal .81 .78 mm", "metal: [.81 mm, .78 mm]"},
      {"metal 32 31 thou", "metal: 32 31 thou"},
      {"pitting, pit .31 .25", "rust: pitting, pit: .31 .25"},
      {"scale, 180x60", "rust: scale, size: 180x60"},
      {"180x60 mm, scale", "rust: scale, size: 180x60 mm"},
      {"scale, 40", "rust: scale, size: 40"},
      {"scale, size 4 cm", "rust: scale, size: 40"},
      {"scale, hole 20", "rust: scale, hole: 20x20"},
      {"hole 14x9", "hole: 14x9"},
      {"pitting, hole 14x9, 180x60", "rust: pitting, hole: 14x9, size: 180x60"},
      {"crack 30", "crack: 30 mm"},
      {"stuffed foam", "stuffed: foam"},
      {"edge, photo 14 15", "rust: edge, photo: [14, 15]"},
      {"edge, photo photos/lip.jpg 15", "rust: edge, photo: photos/lip.jpg 15"},
      {"bleed, at x 1150 z 200", "rust: bleed, at: {x: 1150, z: 200}"},
      {"bleed, at y -72 cm", "rust: bleed, at: {y: -720}"},
      {"bleed, at x 1150 z 200", "rust: bleed, at: x 1150 z 200"},
      {"acid, under the battery tray", "rust: acid, note: under the battery tray"},
      {"acid, at the back of the tray", "rust: acid, note: at the back of the tray"},
      {"acid, near the café", "rust: acid, note: near the café"},
      {"acid, wet", "rust: acid, note: wet"},
      {"acid, dents in the outer skin", "rust: acid, note: dents in the outer skin"},
      {"Acid, FIRM, Metal .81", "rust: acid, hand: firm, metal: .81"},
      {"acid, behind the plate, firm, wet",
       "rust: acid, hand: firm, note: \"behind the plate, wet\""},
      {"acid, \"seller says cracked, twice\", firm",
       "rust: acid, hand: firm, note: \"seller says cracked, twice\""},
      {"hole 20x15 30 8", "hole: 30 20x15 8"},
      {"surface, Hole 20x20", "rust: surface, hole: 20x20"},
      {"surface, CRACK 30", "rust: surface, crack: 30"},
      {"none, Metal .31", "rust: none, metal: .31"},
      {"none, Hole 40x25", "rust: none, hole: 40x25"},
      {"edge, photo 14/15/16", "rust: edge, photo: 14 15 16"},
      {"5 holes to 30", "hole: 5 to 30"},
      {"edge, photo 14, 15, firm", "rust: edge, hand: firm, photo: 14 15"},
      {"edge, photo 14, firm, photo 15", "rust: edge, hand: firm, photo: 14 15"},
      {"\"acid, plate: wet\"", "rust: acid, note: \"plate: wet\""},
      {"\"acid, 2mm at the rear edge, bolt gone\"",
       "rust: acid, note: \"2mm at the rear edge, bolt gone\""},
      {"\"soft, here\", acid, firm", "rust: acid, hand: firm, note: \"soft, here\""},
      {"'the owner\" said: wet' , acid  # twice", "rust: acid, note: 'the owner\" said: wet'"},
      {"acid, firm, \"he says: new #1\", wet",
       "rust: acid, hand: firm, note: \"he says: new #1, wet\""},
      {"edge, photo 14, 60x40", "rust: edge, size: 60x40, photo: 14"},
      {"edge, photo 14, 60 mm", "rust: edge, size: 60 mm, photo: 14"},
      {"edge, photo 14, 15-17, 60", "rust: edge, photo: 14 15 16 17 60"},
      {"edge, 60, photo 14", "rust: edge, size: 60, photo: 14"},
      {"pitting,firm ,  180x60", "rust: pitting, hand: firm, size: 180x60"},
      {"pitting,\n          firm, metal .81\n          .78",
       "rust: pitting, hand: firm, metal: .81 .78"},
  };
  for (const Pair& pair : pairs) {
    SCOPED_TRACE(pair.line);
    const Zone line = zone_51(fmt::format("    found:\n      - rear end: {}\n", pair.line));
    const Zone written_long =
        zone_51(fmt::format("    found:\n      - {{spot: rear end, {}}}\n", pair.long_form));
    ASSERT_EQ(line.found.size(), 1u);
    EXPECT_EQ(line.found, written_long.found);
  }
}

// A remark in quotes may be the name, or stand first behind it.
TEST(Finding, MayBeginWithARemarkInQuotes) {
  const Zone named = zone_51("    found:\n      - \"wet, by the seam\": \"so the owner\", acid\n");
  ASSERT_EQ(named.found.size(), 1u);
  EXPECT_EQ(named.found[0].name, "wet, by the seam");
  EXPECT_EQ(named.found[0].rust, Rust::acid);
  EXPECT_EQ(named.found[0].note, "so the owner");
  const Zone mended = zone_51("    repairs:\n      - \"by the seller, he says\", lapped, 60x40\n");
  ASSERT_EQ(mended.repairs.size(), 1u);
  EXPECT_EQ(mended.repairs[0].kind, RepairKind::lapped);
  EXPECT_EQ(mended.repairs[0].note, "by the seller, he says");
}

// Capitals and hyphens make no other place.
TEST(Finding, StandsAtItsStationHoweverItIsWritten) {
  for (const char* name : {"rear end", "Rear End", "REAR-END", "rear-end"}) {
    const Zone zone = zone_51(fmt::format("    found:\n      - {}: acid\n", name));
    ASSERT_EQ(zone.found.size(), 1u);
    EXPECT_EQ(zone.found[0].name, "rear end") << name;
    EXPECT_TRUE(zone.found[0].at_station) << name;
    EXPECT_EQ(zone.found[0].at.x_mm, 1610) << name;
  }
  EXPECT_FALSE(zone_51("    found:\n      - rear bottem: acid\n").found.at(0).at_station);
}

TEST(Finding, PartsComeInAnyOrder) {
  std::vector<std::string> parts = {"firm", "metal .81 .78", "photo 14", "pitting", "180x60"};
  const auto zone = [&] {
    return zone_51(fmt::format("    found:\n      - rear end: {}\n", fmt::join(parts, ", ")));
  };
  std::sort(parts.begin(), parts.end());
  const Zone first = zone();
  ASSERT_EQ(first.found.size(), 1u);
  while (std::next_permutation(parts.begin(), parts.end())) EXPECT_EQ(zone().found, first.found);
}

TEST(Repair, MeansTheSameLongAndOnOneLine) {
  const Pair pairs[] = {
      {"filled", "kind: filled"},
      {"let-in, seam-weld, 300x120, 2021-05, cut-out, sound",
       "kind: let-in, joint: seam-weld, size: 300x120, date: 2021-05, beneath: cut-out, now: "
       "sound"},
      {"sound, cut-out, 2021-05, 300x120, seam-weld, let-in",
       "kind: let-in, joint: seam-weld, size: 300x120, date: 2021-05, beneath: cut-out, now: "
       "sound"},
      {"plated-over, 2010, unknown", "kind: plated-over, date: 2010, beneath: unknown"},
      {"plated-over, beneath unknown, now poor-weld",
       "kind: plated-over, beneath: unknown, now: poor-weld"},
      {"new-panel, 2000x400", "kind: new-panel, size: 2000x400"},
      {"new-panel, 800", "kind: new-panel, size: 800"},
      {"new-panel, 2021-05-30", "kind: new-panel, date: 2021-05-30"},
      {"treated, photo 16", "kind: treated, photo: 16"},
      {"brazed, lifting, tar over the edges",
       "kind: brazed, now: lifting, note: tar over the edges"},
  };
  for (const Pair& pair : pairs) {
    SCOPED_TRACE(pair.line);
    const Zone line = zone_51(fmt::format("    repairs:\n      - {}\n", pair.line));
    const Zone written_long =
        zone_51(fmt::format("    repairs:\n      - {{{}}}\n", pair.long_form));
    ASSERT_EQ(line.repairs.size(), 1u);
    EXPECT_EQ(line.repairs, written_long.repairs);
  }
}

TEST(Repair, SaysWhenItsStateIsAssumed) {
  EXPECT_TRUE(zone_51("    repairs:\n      - filled\n").repairs.at(0).now_assumed);
  EXPECT_FALSE(zone_51("    repairs:\n      - filled, sound\n").repairs.at(0).now_assumed);
}

TEST(Readings, MeanTheSameAsAListAndAsALine) {
  const std::pair<std::string, std::string> pairs[] = {
      {"reference: 1.02 1.00 1.01", "reference: [1.02, 1.00, 1.01]"},
      {"reference: 1.02 mm", "reference: [1.02]"},
      {"film: 140 155 900 um", "film: [140, 155 um, 0.9 mm]"},
      {"photos: 14 15", "photos: [14, photos/IMG_15.jpg]"},
  };
  for (const auto& [line, list] : pairs) {
    SCOPED_TRACE(line);
    Zone a = zone_51("    " + line + "\n");
    Zone b = zone_51("    " + list + "\n");
    forget_places(a.photos);
    forget_places(b.photos);
    EXPECT_EQ(a, b);
  }
}

}  // namespace
}  // namespace tinworm::survey
