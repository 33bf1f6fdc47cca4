// Tables on pages of their own, and text between them: they run on from page to page, headers
// repeated, the caution at each foot.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "scene/page.hpp"
#include "scene/setting.hpp"
#include "scene/sheet.hpp"
#include "scene/text_columns.hpp"

namespace tinworm::scene {

struct TableColumn {
  std::string heading;
  double share = 1;  // of the width
};

struct TableRow {
  std::vector<std::string> cells;  // as many as columns
  std::string link;                // to a place of any page; empty: none
};

class PaperPages {
 public:
  PaperPages(Paper size, std::string title, std::string caution, const Measure& measure);

  void heading(std::string_view text);
  void paragraph(std::string_view text);
  void table(const std::vector<TableColumn>& columns, const std::vector<TableRow>& rows);
  void columns(const std::vector<Paragraph>& paragraphs);  // as many as are easy to read

  std::vector<Page> pages() && { return std::move(pages_); }

 private:
  struct Laid {  // a row broken into lines
    std::vector<std::vector<std::string>> cells;
    double height_mm = 0;
  };
  void start();
  void need(double height_mm);  // a new page if there isn't so much room
  Laid laid(const std::vector<TableColumn>& columns, const std::vector<std::string>& cells,
            const Style& style) const;
  void write(const std::vector<TableColumn>& columns, const Laid& row, const Style& style);
  void write(const ColumnLine& line, At top_left, double width_mm);

  Paper paper_;
  std::string title_, caution_;
  Measure measure_;
  std::vector<Page> pages_;
  Area inner_;
  double y_ = 0, end_ = 0;
};

}  // namespace tinworm::scene
