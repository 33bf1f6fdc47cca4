// A coat thicker than the gauge can read: never shown or reckoned as if it had been measured.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "output/explain.hpp"
#include "output/weigh_json.hpp"
#include "weighing/advice_case.hpp"
#include "weighing/weigh.hpp"

namespace tinworm::weighing {
namespace {

using namespace fixture;

Survey coated(std::vector<double> film_um, bool off_scale) {
  Survey survey = thorough();
  read_film(survey, {{51, std::move(film_um)}});
  survey.zones[51].film_off_scale = off_scale;
  return survey;
}

TEST(FilmOffScale, IsThickWhateverTheGaugeGoesTo) {
  for (const double end_um : {400.0, 1000.0, 2000.0}) {
    const Result result = weigh(coated({150, end_um}, true), {});
    EXPECT_EQ(result.zone(51)->film->reading, "filler-likely") << end_um;
    EXPECT_TRUE(result.zone(51)->film->off_scale);
  }
  EXPECT_EQ(weigh(coated({150, 400}, false), {}).zone(51)->film->reading, "repainted");
}

TEST(FilmOffScale, IsSaidWhereverItIsShown) {
  const Result result = weigh(coated({600, 2000}, true), {});
  output::TextStyle wide;
  wide.width = 10'000;
  EXPECT_NE(output::explain_zone(result, *result.zone(51), wide)
                .find("film: median 1300 µm, 600 to over 2000 µm, off the gauge's scale: "
                      "filler-likely"),
            std::string::npos);
  for (const auto& zone : output::weigh_json(result)["zones"]) {
    if (zone["zone"] != 51) continue;
    EXPECT_EQ(zone["film"]["greatest_um"], 2000);
    EXPECT_EQ(zone["film"]["greatest_off_scale"], true);
  }
  EXPECT_EQ(asked(coated({600, 2000}, true), "filler-likely").at(0).substr(0, 78),
            "what lies under the thick coat of outer sill, left (51), over 2000 um? Try a m");
  const auto reason = std::ranges::find(result.open_reasons, "thick-coat", &Reason::rule);
  ASSERT_NE(reason, result.open_reasons.end());
  EXPECT_EQ(reason->text,
            "outer sill, left (51): coat of over 2000 um, off the gauge's scale, filler or a thick "
            "seal; metal beneath not known");
}

// No film, no correction: readings through it say only how thick the sheet is at most.
TEST(FilmOffScale, LeavesReadingsAnUpperBound) {
  for (const bool off_scale : {false, true}) {
    Survey survey = coated({300, 310}, off_scale);
    survey.gauge.coating = survey::Coating::left_on;
    const Spot& spot = weigh(survey, {}).zone(51)->spots.at(0);
    EXPECT_EQ(spot.metal.kind == SpanKind::interval, !off_scale);
  }
}

}  // namespace
}  // namespace tinworm::weighing
