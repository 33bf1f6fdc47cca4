#include "output/weigh_csv.hpp"

#include <gtest/gtest.h>

#include "output/fixture.hpp"

namespace tinworm::output {
namespace {

TEST(WeighCsv, HasARowForEachBurdenZoneAndSpot) {
  EXPECT_EQ(weigh_csv_header(),
            "file,date,verdict,could_be,open_up_first,kind,zone,name,side,role,spot,rust,seen,"
            "evidence,step,step_low,step_high,near,value,low,high,value_kind,mean_mm,readings,"
            "baseline_mm,baseline_from,pit_left,rusted_share,iso4628_3,astm_d610,damage,share,"
            "rank,holes,largest_hole_mm,stuffed,rules\r\n");
  const std::string start = "wherry-2025.yaml,2025-04-12,mend,keep-parked,true,";
  EXPECT_EQ(weigh_csv_rows(weighed_car()),
            start + "structure,,,,,,,,,,,,,,0.3,0.83,burden,,,,,,,,,,,,,,,default\r\n" + start +
                "skin,,,,,,,,,,,,,0.3,0.04,0.31,burden,,,,,,,,,,,,,,,default\r\n" + start +
                "shell,,,,,,,,,,,,,,0.31,0.9,burden,,,,,,,,,,,,,,,default\r\n" + start +
                "zone,51,outer sill,left,main,,,bare,measured,thin,thin,pitted,"
                "front spring hanger,0.8,0.72,0.88,interval,0.808,4,1.01,reference,0.49,"
                "0.035,4,4,0.36,0.333333,,,,,default\r\n" +
                start +
                "spot,51,outer sill,left,main,rear end,pitting,bare,measured,thin,thin,pitted,"
                "front spring hanger,0.8,0.72,0.88,interval,0.808,4,1.01,reference,0.49,"
                ",,,0.36,,1,,,,default\r\n" +
                start +
                "zone,71,front floor,left,main,,,hidden,not-seen,not-seen,not-seen,not-seen,"
                ",,,,,,,,,,,,,,0,,,,,default\r\n");
}

TEST(WeighCsv, MakesASpreadsheetsFormulaHarmless) {
  weighing::Result result = weighed_car();
  result.zones = {thin_sill()};
  result.zones[0].spots[0].name = "=cmd()";
  EXPECT_NE(weigh_csv_rows(result).find(",'=cmd(),"), std::string::npos);
}

}  // namespace
}  // namespace tinworm::output
