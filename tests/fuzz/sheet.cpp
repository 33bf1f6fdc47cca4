// Any bytes as a field sheet: what comes through must read as a survey or be told by row.
#include <cstddef>
#include <cstdint>
#include <string_view>

#include "fuzz/built_in_plan.hpp"
#include "survey/field_sheet.hpp"
#include "survey/reader.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  using namespace tinworm::survey;
  const auto records = csv_records({reinterpret_cast<const char*>(bytes), size});
  if (!records) return 0;
  FieldSheet sheet = read_field_sheet(*records, *tinworm::built_in_plan());
  Form form;
  form.car = "fuzz";
  form.date = {2025, 4, 12};
  form.filled = std::move(sheet.zones);
  const FormLines lines = form_lines(*tinworm::built_in_plan(), form);
  const auto reading =
      read_survey(text_of(lines), [](std::string_view) { return tinworm::built_in_plan(); });
  for (const SheetProblem& problem : of_sheet(reading.problems, lines))
    if (problem.row == 0) __builtin_trap();  // a cell broke out of its line
  return 0;
}
