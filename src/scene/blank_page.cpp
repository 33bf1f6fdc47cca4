#include "scene/blank_page.hpp"

namespace tinworm::scene {

Page blank_page(const Sheet& sheet, const PaperSize& size) {
  Page page;
  page.width_mm = size.width_mm;
  page.height_mm = size.height_mm;
  page.frame = sheet.frame;
  page.title = name_of(sheet.kind);
  for (const char* name : {"zones", "repairs", "bounds", "lines", "circles", "spots", "leaders",
                           "words", "ranks", "callouts", "numbers", "column", "strip"}) {
    page.layer(name);
  }
  return page;
}

}  // namespace tinworm::scene
