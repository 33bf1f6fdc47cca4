#include "output/csv.hpp"

#include <gtest/gtest.h>

namespace tinworm::output {
namespace {

// Quoting: RFC 4180, section 2. Which starts a spreadsheet runs: common practice.
TEST(CsvField, QuotesAndMakesFormulasHarmless) {
  struct {
    std::string_view text, field;
  } const cases[] = {
      {"", ""},
      {"outer sill", "outer sill"},
      {"a,b", "\"a,b\""},
      {"say \"so\"", "\"say \"\"so\"\"\""},
      {"two\nlines", "\"two\nlines\""},
      {"two\rlines", "\"two\rlines\""},
      {"=1+1", "'=1+1"},
      {"=HYPERLINK(\"x\")", "\"'=HYPERLINK(\"\"x\"\")\""},
      {"+44 rust", "'+44 rust"},
      {"-rust", "'-rust"},
      {"@SUM(A1)", "'@SUM(A1)"},
      {"\tx", "'\tx"},
      {"\rx", "\"'\rx\""},
      {"＝1+1", "'＝1+1"},
      {"-0.5", "-0.5"},
      {"-1e-06", "-1e-06"},
      {"-inf", "'-inf"},
      {"-1+1", "'-1+1"},
      {"-", "'-"},
      {"0301", "0301"},
      {"a=1", "a=1"},
  };
  for (const auto& [text, field] : cases) EXPECT_EQ(csv_field(text), field) << text;
}

TEST(CsvRecord, EndsInCarriageReturnAndLineFeed) {
  EXPECT_EQ(csv_record({"a", "", "b,c"}), "a,,\"b,c\"\r\n");
  EXPECT_EQ(csv_record({"same", "same"}), "same,same\r\n");
}

}  // namespace
}  // namespace tinworm::output
