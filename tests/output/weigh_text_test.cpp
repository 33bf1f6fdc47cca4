#include "output/weigh_text.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "output/display_width.hpp"
#include "output/explain.hpp"
#include "output/fixture.hpp"
#include "output/zone_text.hpp"

namespace tinworm::output {
namespace {

using testing::HasSubstr;
using testing::Not;

TEST(WeighText, SaysItAllInOrder) {
  EXPECT_EQ(weigh_text(weighed_car()),
            R"(Verdict: to be mended. Could be: keep it parked until mended. Open up first.
Wherry 1200, built 1967, 61200 mi; surveyed 2025-04-12
wherry-2025.yaml, body plan two-door-saloon 1, default rules, fingerprint 0123456789ab

Why
  - 51 outer sill, left, rear end: thin, 80 % left [past-limit]
  - 71 front floor, left: not seen [coverage]

How much the rust weighs
  structure  not known, from considerable to very heavy: under 80 % of the main structure was seen
  skin       considerable, from next to none to considerable
  shell      not known, from considerable to very heavy: the structure has none
  On this body one main zone rusted away would be heavy for the structure.

What was seen
  main       64 % of its area, 31 % measured
  local      this body has none
  skin       100 % of its area, 0 % measured

What was found, worst first (metal left: low–likely–high)
  zone  name        side  seen  evidence  step            metal left  near
  51    outer sill  left  bare  measured  pitted to thin  72–80–88 %  front spring hanger

Repairs
  - 51 outer sill, left: let-in, seam-weld, 2021-05; relied on: welded all round

Stiffness kept by the boxes (indicative)
  box              twist     bending  withheld
  left sill   77–83–88 %  80–90–95 %
  right sill                          no figure: no wall was seen

To open up
  - 71 front floor, left: the strut stands on it; could become: keep it parked until mended

Not seen, so not known
  - 71 front floor, left: carpet glued down

Questions
  - 51 outer sill, left: coat of 900 um; is there filler? Filler hides rust.

Also
  - tyres 0301: sidewalls uncracked; at the next survey

Where these rules come from
  - past-limit: 15 % loss is the limit
  - coverage: a share must be seen (memory)

An aid to judgement. What wasn't seen is not known.
)");
}

TEST(WeighText, KeepsToItsWidth) {
  for (const int width : {60, 80, 120}) {
    TextStyle style;
    style.width = width;
    const std::string text = weigh_text(weighed_car(), style);
    bool in_table = false;
    for (std::size_t at = 0; at < text.size();) {
      const std::size_t end = text.find('\n', at);
      const std::string line = text.substr(at, end - at);
      // A table is as wide as its columns need; words are broken.
      in_table = !line.empty() && (in_table || line.starts_with("What was found"));
      if (!in_table) {
        EXPECT_LE(display_width(line), width) << line;
      }
      at = end + 1;
    }
  }
}

TEST(WeighText, ListsNoSoundStationAmongTheFindings) {
  weighing::Result result = weighed_car();
  weighing::Zone& zone = result.zones[0];
  zone.repairs.clear();
  zone.spots[0].found = false;
  zone.step = zone.step_low = zone.step_high = weighing::Step::sound;
  EXPECT_THAT(weigh_text(result), Not(HasSubstr("What was found")));
  zone.step_low = weighing::Step::bloom;
  EXPECT_THAT(weigh_text(result), HasSubstr("What was found"));
}

TEST(WeighText, NeverShowsWhatIsPrivateOrABurdensNumber) {
  const std::string text = weigh_text(weighed_car());
  EXPECT_THAT(text, Not(HasSubstr("Private")));
  EXPECT_THAT(text, Not(HasSubstr("W12-004417")));
  EXPECT_THAT(text, Not(HasSubstr("0.83")));
}

TEST(WeighText, IsBoldOnlyWhereAsked) {
  TextStyle bold;
  bold.bold = true;
  EXPECT_THAT(weigh_text(weighed_car()), Not(HasSubstr("\033")));
  EXPECT_THAT(weigh_text(weighed_car(), bold),
              HasSubstr("\033[1mVerdict: to be mended.\033[0m Could be"));
}

TEST(WeighLine, SaysWhatMatters) {
  EXPECT_THAT(weigh_line(weighed_car()),
              testing::ElementsAre("wherry-2025.yaml", "2025-04-12", "mend", "keep-parked",
                                   "open up", "64 %", "51 outer sill, left: pitted to thin"));
}

TEST(ExplainZone, GivesTheWholeChain) {
  const weighing::Result result = weighed_car();
  TextStyle inches;
  inches.units = quantity::Units::inch;
  EXPECT_EQ(explain_zone(result, result.zones[0], inches),
            R"(51 outer sill, left
  role: main
  seen: bare
  inside: scoped
  metal left in the zone: 0.800 (low 0.720, high 0.880)
  step: pitted to thin, measured
  rusted: 3.50 % of its area, ISO 4628-3 Ri 4, ASTM D610 grade 4
  film: median 155 µm, 140 to 900 µm: heavy
  weight 0.360 (low 0.300, high 0.450); share of the shell burden 33 %

rear end, pitting, rank 1
  readings: 4, mean 32 thou, least 31 thou
  baseline: 40 thou, reference readings in the zone
  metal left: 0.800 (low 0.720, high 0.880), 95 % interval
    uncertainty of the metal left          u  sensitivity  comes to  degrees of freedom
    repeatability of the spot's mean  0.0200       0.9900    0.0198                 8.0
    the gauge                         0.0500       0.2000    0.0100            infinite
    together                                                 0.0222                 8.5
  degrees of freedom together by Welch–Satterthwaite; a scatter that spot and reference share
    counts once
  left under the deepest pit: 0.490
  as weighed: 0.800 (low 0.720, high 0.880)
  near: front spring hanger, 5.8 in away
  step: pitted to thin, measured
  damage 0.360; it covers 100 % of the zone's length; weight 0.360 (low 0.300, high 0.450),
    counting 1

In the verdict
  51 outer sill, left, rear end: thin, 80 % left [past-limit: 15 % loss is the limit]

Burdens of the whole car (0 none, 1 all)
  structure not known (low 0.300, high 0.830): under 80 % of the main structure was seen
  skin 0.300 (low 0.040, high 0.310)
  shell not known (low 0.310, high 0.900): the structure has none

An aid to judgement. What wasn't seen is not known.
)");
}

TEST(ExplainZone, SaysWhatWasNotSeen) {
  const weighing::Result result = weighed_car();
  EXPECT_THAT(explain_zone(result, result.zones[1]),
              HasSubstr("  seen: hidden: carpet glued down\n"));
}

TEST(StepText, SpansFromTheUpperToTheLowerEnd) {
  using weighing::Step;
  EXPECT_EQ(step_text(Step::thin, Step::thin, Step::thin), "thin");
  EXPECT_EQ(step_text(Step::bloom, Step::bloom, Step::thin), "bloom to thin");
  EXPECT_EQ(step_text(Step::pitted, Step::bloom, Step::thin), "bloom to thin, pitted likely");
}

TEST(ZoneRanges, JoinsRunsOfThreeOrMore) {
  EXPECT_EQ(zone_ranges({}), "");
  EXPECT_EQ(zone_ranges({51}), "51");
  EXPECT_EQ(zone_ranges({44, 41, 43, 42, 51, 52, 70}), "41–44, 51, 52, 70");
}

}  // namespace
}  // namespace tinworm::output
