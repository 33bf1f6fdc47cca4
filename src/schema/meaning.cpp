// Words of a survey. What they mean is common practice of the trade. The air: names of ISO
// 9223:2012, places from memory.
#include "schema/meaning.hpp"

namespace tinworm::schema {

std::string_view meaning(survey::Rust value) {
  using enum survey::Rust;
  switch (value) {
    case none:
      return "looked at or measured here, and no rust";
    case surface:
      return "a brown film without pits";
    case blister:
      return "paint lifted by rust beneath";
    case pitting:
      return "small deep craters in the face of the metal";
    case scale:
      return "rust in layers that lift and flake";
    case seam:
      return "rust between two flanges, pushing the seam open";
    case poultice:
      return "under mud, felt or carpet that holds salt and water";
    case edge:
      return "a folded or cut edge eaten back";
    case contact:
      return "where another metal touches: clips, trim, alloy";
    case acid:
      return "eaten by battery acid";
    case bleed:
      return "a brown stain from a place that can't be seen";
    case hole:
      return "rusted through";
  }
  return "";
}

std::string_view meaning(survey::Hand value) {
  using enum survey::Hand;
  switch (value) {
    case firm:
      return "doesn't move under a hard thumb";
    case gives:
      return "bends or dents under the thumb";
    case breaks:
      return "cracks or falls away";
  }
  return "";
}

std::string_view meaning(survey::Tap value) {
  using enum survey::Tap;
  switch (value) {
    case rings:
      return "a clear note";
    case dull:
      return "a dead note";
    case crunches:
      return "flakes or crushes under a light tap";
  }
  return "";
}

std::string_view meaning(survey::Probe value) {
  using enum survey::Probe;
  switch (value) {
    case stops:
      return "the point stops on metal and leaves no mark";
    case dents:
      return "the point leaves a dent";
    case goes_in:
      return "the point goes into the metal";
  }
  return "";
}

std::string_view meaning(survey::Magnet value) {
  using enum survey::Magnet;
  switch (value) {
    case holds:
      return "as on bare sheet";
    case weak:
      return "less than beside it: thick filler, or little metal";
    case none:
      return "not at all: filler or no steel";
  }
  return "";
}

std::string_view meaning(survey::Stuffed value) {
  using enum survey::Stuffed;
  switch (value) {
    case foam:
      return "filled with foam";
    case paper:
      return "filled with paper";
    case board:
      return "filled with board";
    case mesh:
      return "bridged with mesh";
    case cement:
      return "filled with cement";
  }
  return "";
}

std::string_view meaning(survey::RepairKind value) {
  using enum survey::RepairKind;
  switch (value) {
    case let_in:
      return "a piece cut to shape and set in edge to edge";
    case lapped:
      return "a piece set over the edge of the old metal";
    case plated_over:
      return "a plate over what was there";
    case new_panel:
      return "a whole new panel";
    case brazed:
      return "joined with brass";
    case bonded:
      return "glued";
    case riveted:
      return "riveted or screwed";
    case filled:
      return "made good with filler, no metal";
    case treated:
      return "rust converted, painted or waxed; no metal";
  }
  return "";
}

std::string_view meaning(survey::Joint value) {
  using enum survey::Joint;
  switch (value) {
    case seam_weld:
      return "welded all along";
    case plug_weld:
      return "welded through drilled holes";
    case spot_weld:
      return "welded in spots, as when it was built";
    case stitch:
      return "short runs of weld with gaps between";
    case no_weld:
      return "not welded";
  }
  return "";
}

std::string_view meaning(survey::Beneath value) {
  using enum survey::Beneath;
  switch (value) {
    case cut_out:
      return "the rusted metal was cut out first";
    case over_rust:
      return "put over rusted metal";
    case unknown:
      return "can't be told";
  }
  return "";
}

std::string_view meaning(survey::Now value) {
  using enum survey::Now;
  switch (value) {
    case sound:
      return "nothing wrong to see or feel";
    case poor_weld:
      return "the weld has gaps, pores or no hold";
    case rusting:
      return "rust in it or at its edge";
    case lifting:
      return "coming away";
    case cracked:
      return "a crack in it or beside it";
  }
  return "";
}

std::string_view meaning(survey::SeenWord value) {
  using enum survey::SeenWord;
  switch (value) {
    case bare:
      return "seen as bare metal";
    case coated:
      return "seen through sound paint";
    case part:
      return "seen in part, with its share";
    case scope:
      return "seen through a scope only, not measured";
    case tap:
      return "felt and tapped, not seen";
    case hidden:
      return "not seen, with the reason; thick or fresh underseal hides too";
    case not_fitted:
      return "this car doesn't have it";
  }
  return "";
}

std::string_view meaning(survey::Drains value) {
  using enum survey::Drains;
  switch (value) {
    case open:
      return "water runs out";
    case blocked:
      return "dirt stands in them";
    case plugged:
      return "closed with plugs";
  }
  return "";
}

std::string_view meaning(survey::Inside value) {
  using enum survey::Inside;
  switch (value) {
    case scoped:
      return "looked into through a scope";
    case not_seen:
      return "not looked into";
  }
  return "";
}

std::string_view meaning(survey::Reason value) {
  using enum survey::Reason;
  switch (value) {
    case purchase:
      return "the car was or is to be bought";
    case periodic:
      return "looked at every so often";
    case after_repair:
      return "to see what was mended";
    case sale:
      return "the car is to be sold";
    case other:
      return "anything else";
  }
  return "";
}

std::string_view meaning(survey::Use value) {
  using enum survey::Use;
  switch (value) {
    case stored:
      return "stands indoors, hardly driven";
    case dry_season:
      return "driven in the dry season only";
    case all_weather:
      return "driven all year";
    case salted:
      return "driven on salted roads";
  }
  return "";
}

std::string_view meaning(survey::Air value) {
  using enum survey::Air;
  switch (value) {
    case c1:
      return "very low: heated rooms";
    case c2:
      return "low: dry or cold country";
    case c3:
      return "medium: towns, coast with little salt";
    case c4:
      return "high: industry, salty coast";
    case c5:
      return "very high: heavy industry, shore";
    case cx:
      return "extreme: salt spray, damp tropics";
  }
  return "";
}

std::string_view meaning(survey::Coating value) {
  using enum survey::Coating;
  switch (value) {
    case removed:
      return "cleaned to bare metal before reading";
    case left_on:
      return "read through the coating as if it were metal";
    case compensated:
      return "the gauge leaves the coating out by itself";
  }
  return "";
}

std::string_view meaning(survey::When value) {
  using enum survey::When;
  switch (value) {
    case before_use:
      return "before the car is driven again";
    case next_survey:
      return "when the car is next looked over";
  }
  return "";
}

}  // namespace tinworm::schema
