// Advice on places, repairs and papers: every text word for word, and where it is silent.
#include <gtest/gtest.h>

#include "weighing/advice_case.hpp"

namespace tinworm::weighing {
namespace {

using namespace fixture;
using survey::Beneath;
using survey::RepairKind;
using survey::Rust;

TEST(Advice, OnPlaces) {
  const auto at = [](survey::Position position) {
    return spot(51, [=](survey::Spot& found) { found.at = position; });
  };
  const auto rusty = [](survey::Position position) {
    return [=](Survey& s) { add_spot(s, 71, "seam", Rust::surface).at = position; };
  };
  const auto size = [](int zone, std::optional<survey::Size> of) {
    return [=](Survey& s) { add_spot(s, zone, "seam", Rust::surface).size = of; };
  };
  const auto named = [](const std::string& name, double x_mm) {
    return [=](Survey& s) {
      change_plan(s, [](body::Plan& plan) {
        for (body::Zone& zone : plan.zones)
          if (zone.number == 51)
            zone.stations = {{"rear end", {1390, -700, 200}, {}}, {"middle", {900, -700, 200}, {}}};
      });
      survey::Spot& found = s.zones[51].found.front();
      found.name = name;
      found.at = {};
      if (x_mm > 0) found.at.x_mm = x_mm;
    };
  };
  const auto called = [](const std::string& name) {
    return spot(51, [=](survey::Spot& found) { found.name = name; });
  };
  expect({
      {"place-not-recorded",
       "where is it: boot side, left (71), seam? Name a station (`bodies test-body` lists them), "
       "or "
       "give `at`. It may lie within 300 mm of a mounting, where metal is judged most strictly.",
       rusty({}), rusty({2500, {}, {}})},
      {"size-not-recorded",
       "how long and wide is it: boot side, left (71), seam? Until then 25 % of the zone's length "
       "is assumed to be rusted.",
       size(71, std::nullopt), size(71, survey::Size{20, 20})},
      {"size-not-recorded",
       "how long and wide is it: boot side, left (71), seam? Until then 25 % of the zone's length "
       "is assumed to be rusted.",
       size(71, std::nullopt), size(41, std::nullopt)},
      {"size-over-part",
       "boot side, left (71), seam: is its size right? It is 9000x20 mm, 0.18 m²; the whole zone "
       "has 0.30 m² and is 1067 mm from end to end. No more of a part can rust than there is; a "
       "slip of the pen or the unit makes the damage and the work too large.",
       size(71, survey::Size{9000, 20}), size(71, survey::Size{20, 20})},
      {"size-over-part",
       "boot side, left (71), seam: is its size right? It is 900x900 mm, 0.81 m²; the whole zone "
       "has 0.30 m² and is 1067 mm from end to end. No more of a part can rust than there is; a "
       "slip of the pen or the unit makes the damage and the work too large.",
       size(71, survey::Size{900, 900}), size(71, std::nullopt)},
      {"far-from-zone",
       "outer sill, left (51), station: is its place right? It lies 200 mm outside the zone. Its "
       "place decides which mounting is near, and where the mark stands.",
       at({1600, {}, 200}), at({1500, {}, 200})},
      {"far-from-zone",
       "outer sill, left (51), station: is its place right? It lies 1350 mm outside the zone; y "
       "runs to the right, and is less than 0 on the left. Its place decides which mounting is "
       "near, and where the mark stands.",
       at({{}, 700, 200}), at({{}, -700, {}})},
      {"other-side",
       "outer sill, left (51), right end: on which side is it? The zone is on the left, 52 on the "
       "right. What is noted on the wrong side is looked for and mended on the wrong side.",
       called("right end"), called("right of the jack")},
      {"spot-name",
       "outer sill, left (51), Rear-end: is it the station \"rear end\"? The stations of the zone "
       "are rear end, middle (`bodies test-body` lists all). Only a place of the same "
       "name is compared over the years, and a station has its place on the map.",
       named("Rear-end", 0), named("rear end", 0)},
      {"spot-name",
       "outer sill, left (51), midle: is it the station \"middle\"? The stations of the zone are "
       "rear end, middle (`bodies test-body` lists all). Only a place of the same name "
       "is compared over the years, and a station has its place on the map.",
       named("midle", 950), named("midle", 1300)},
      {"spot-name",
       "outer sill, left (51), midle: is it the station \"middle\"? The stations of the zone are "
       "rear end, middle (`bodies test-body` lists all). Only a place of the same name "
       "is compared over the years, and a station has its place on the map.",
       named("midle", 0), named("front end", 0)},
  });
}

TEST(Advice, OnRepairs) {
  const auto joint = [](RepairKind kind, int zone) {
    return repair(zone, kind, [](survey::Repair& repair) { repair.joint.reset(); });
  };
  const auto beneath = [](RepairKind kind, std::optional<Beneath> what) {
    return [=](Survey& s) {
      forget_readings(s, {51});
      add_repair(s, 51, kind).beneath = what;
    };
  };
  const auto undated = [](Survey& s) {
    add_repair(s, 41, RepairKind::filled).date.reset();
    add_repair(s, 51, RepairKind::let_in).date.reset();
  };
  expect({
      {"repair-joint",
       "how is it joined: outer sill, left (51), repair 1 (lapped of 2021-05)? A seam weld all "
       "round can be relied on and tacks can't; an unknown joint leaves the repair unknown.",
       joint(RepairKind::lapped, 51), joint(RepairKind::lapped, 41)},
      {"repair-joint",
       "how is it joined: outer sill, left (51), repair 1 (lapped of 2021-05)? A seam weld all "
       "round can be relied on and tacks can't; an unknown joint leaves the repair unknown.",
       joint(RepairKind::lapped, 51), joint(RepairKind::treated, 51)},
      {"repair-beneath",
       "can the metal be measured round outer sill, left (51), repair 1 (lapped of 2021-05)? Rust "
       "may go on beneath. A patch hides the metal that has to carry it.",
       beneath(RepairKind::lapped, Beneath::unknown),
       beneath(RepairKind::lapped, Beneath::cut_out)},
      {"repair-beneath",
       "can the metal be measured round outer sill, left (51), repair 1 (plated-over of 2021-05)? "
       "Rust may go on beneath. A patch hides the metal that has to carry it.",
       beneath(RepairKind::plated_over, {}), beneath(RepairKind::lapped, {})},
      {"repair-beneath",
       "can the metal be measured round outer sill, left (51), repair 1 (lapped of 2021-05)? Rust "
       "may go on beneath. A patch hides the metal that has to carry it.",
       beneath(RepairKind::lapped, Beneath::over_rust),
       repair(51, RepairKind::lapped,
              [](survey::Repair& repair) { repair.beneath = Beneath::over_rust; })},
      {"repair-now",
       "is it sound now: outer sill, left (51), repair 1 (let-in of 2021-05)? The survey doesn't "
       "say so. A repair is relied on only while it is sound.",
       repair(51, RepairKind::let_in, [](survey::Repair& repair) { repair.now_assumed = true; }),
       repair(51, RepairKind::brazed, [](survey::Repair& repair) { repair.now_assumed = true; })},
      {"repair-undated",
       "how old are they: wing, left (41), repair 1 (filled); outer sill, left (51), repair 1 "
       "(let-in)? A repair begins a history of its own; without its date nobody can tell how fast "
       "it rusts.",
       undated, repair(51, RepairKind::let_in, [](survey::Repair&) {})},
  });
}

TEST(Advice, OnPapers) {
  const auto probed = [](std::vector<std::string> leave) {
    return [=](Survey& s) {
      s.visit.leave = leave;
      s.zones[11].found.front().probe = survey::Probe::stops;
    };
  };
  const auto reason = [](survey::Reason why, const std::string& interest) {
    return [=](Survey& s) {
      s.visit.reason = why;
      s.visit.interest = interest;
    };
  };
  const auto thin = [](std::vector<survey::Photo> photos, int zone) {
    return [=](Survey& s) {
      add_spot(s, zone, "seam", Rust::scale).photos = photos;
      add_spot(s, 11, "edge", Rust::hole).photos = photos;
    };
  };
  expect({
      {"leave-not-said",
       "did the owner give leave to probe tunnel (11), station? `leave` doesn't name it. A probe "
       "leaves its mark on another's car.",
       probed({"carpets"}), probed({"carpets", "Probing with a point"})},
      {"interest-not-said",
       "has the surveyor any interest in the sale? Say it under `visit: interest`, be it `none`. A "
       "buyer weighs a survey by who made it, and what for.",
       reason(survey::Reason::sale, ""), reason(survey::Reason::periodic, "")},
      {"interest-not-said",
       "has the surveyor any interest in the sale? Say it under `visit: interest`, be it `none`. A "
       "buyer weighs a survey by who made it, and what for.",
       reason(survey::Reason::purchase, ""), reason(survey::Reason::purchase, "none")},
      {"no-photo",
       "is there a photo of tunnel (11), edge; outer sill, left (51), seam? Take one from near "
       "with a scale and one from further off. Who didn't lie under the car can judge by it, and "
       "the next survey can compare.",
       thin({}, 51), thin({{"14.jpg", {}}}, 51)},
      {"no-photo",
       "is there a photo of boot side, left (71), seam? Take one from near with a scale and one "
       "from further off. Who didn't lie under the car can judge by it, and the next survey can "
       "compare.",
       [](Survey& s) { add_spot(s, 71, "seam", Rust::scale); },
       [](Survey& s) { add_spot(s, 41, "seam", Rust::scale); }},
  });
}

}  // namespace
}  // namespace tinworm::weighing
