// Damage named in words alone is asked about, word for word, and where it is silent.
#include <gtest/gtest.h>

#include "weighing/advice_case.hpp"

namespace tinworm::weighing {
namespace {

using namespace fixture;

TEST(Advice, OnWords) {
  const auto called = [](const std::string& name) {
    return spot(51, [=](survey::Spot& found) { found.name = name; });
  };
  // A station of the body plan is no remark.
  const auto at_station = [](const std::string& name) {
    return [=](Survey& s) {
      change_plan(s, [&](body::Plan& plan) {
        for (body::Zone& zone : plan.zones)
          if (zone.number == 51) zone.stations = {{name, {900, -700, 200}, {}}};
      });
      s.zones[51].found.front().name = name;
    };
  };
  const auto noted = [](std::optional<double> crack_mm) {
    return spot(51, [=](survey::Spot& found) {
      found.name = "lip";
      found.note = "seller says cracked";
      found.crack_mm = crack_mm;
    });
  };
  const auto own = [](const std::string& name, bool mended) {
    return [=](Survey& s) {
      survey::OwnZone zone;
      zone.key = "own-a";
      zone.name = name;
      zone.side = body::Side::left;
      zone.seen.word = survey::SeenWord::bare;
      if (mended) zone.zone.repairs.push_back({});
      s.own.push_back(zone);
    };
  };
  expect({
      {"said-not-recorded",
       "outer sill, left (51), weld line: the words say \"weld\"; is that damage, and recorded as "
       "such (\"repairs: - let-in, seam-weld\")? Words alone count for nothing: no step and no "
       "verdict knows of them.",
       called("weld line"), at_station("weld line")},
      {"said-not-recorded",
       "outer sill, left (51), lip: the words say \"cracked\"; is that damage, and recorded as "
       "such "
       "(\"crack 30\")? Words alone count for nothing: no step and no verdict knows of them.",
       noted(std::nullopt), noted(30)},
      {"said-not-recorded",
       "a gap: the words say \"cracked\"; if the body is meant, is it recorded at its zone "
       "(\"crack 30\")? "
       "Words alone count for nothing: no step and no verdict knows of them.",
       [](Survey& s) {
         s.gaps = {{.where = "door by the cracked post", .wheels_mm = 4.5, .lift_mm = 3.0}};
       },
       [](Survey& s) {
         s.gaps = {{.where = "door, rear edge", .wheels_mm = 4.5, .lift_mm = 3.0}};
       }},
      {"said-not-recorded",
       "also, exhaust: the words say \"rotten\"; if the body is meant, is it recorded at its zone "
       "(\"breaks\")? "
       "Words alone count for nothing: no step and no verdict knows of them.",
       [](Survey& s) { s.also = {{.what = "exhaust", .say = "hanger rotten"}}; },
       [](Survey& s) { s.also = {{.what = "exhaust", .say = "hanger new"}}; }},
      {"said-not-recorded",
       "patched bracket, left (own-a): the words say \"patched\"; is that damage, and recorded as "
       "such "
       "(\"repairs: - lapped\")? Words alone count for nothing: no step and no verdict knows of "
       "them.",
       own("patched bracket", false), own("patched bracket", true)},
  });
}

}  // namespace
}  // namespace tinworm::weighing
