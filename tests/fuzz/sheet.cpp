// Any bytes as a field sheet: what comes through must read as a survey or be told by row.
#include <cstddef>
#include <cstdint>
#include <string_view>

#include "body/built_in.hpp"
#include "body/reader.hpp"
#include "survey/field_sheet.hpp"
#include "survey/reader.hpp"

namespace {

const tinworm::body::PlanPtr& plan() {
  static const tinworm::body::PlanPtr read = std::make_shared<tinworm::body::Plan>(
      tinworm::body::read_plan(tinworm::body::built_in_plans().front().yaml).plan.value());
  return read;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  using namespace tinworm::survey;
  const auto records = csv_records({reinterpret_cast<const char*>(bytes), size});
  if (!records) return 0;
  FieldSheet sheet = read_field_sheet(*records, *plan());
  Form form;
  form.car = "fuzz";
  form.date = {2025, 4, 12};
  form.filled = std::move(sheet.zones);
  const FormLines lines = form_lines(*plan(), form);
  const auto reading = read_survey(text_of(lines), [](std::string_view) { return plan(); });
  for (const SheetProblem& problem : of_sheet(reading.problems, lines))
    if (problem.row == 0) __builtin_trap();  // a cell broke out of its line
  return 0;
}
