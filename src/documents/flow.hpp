// Text that runs down pages and on to the next. A heading waits for what it heads, so that none
// stands alone at a foot; small tables, blocks and rows that a page holds are never torn; a table's
// head is repeated and no row of it stands alone.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "documents/paper.hpp"
#include "documents/table.hpp"
#include "documents/typography.hpp"
#include "scene/page.hpp"

namespace tinworm::documents {

class Flow {
 public:
  Flow(const Paper& paper, const scene::Measure& measure);

  // A section stands in the outline under its title. `place` names it for links: letters, digits
  // and hyphens; empty: nothing leads there.
  void section(std::string_view title, std::string_view place = "", std::string_view note = "");
  // `note` stands under the heading and stays with it.
  void heading(std::string_view text, std::string_view note = "");

  void paragraph(std::string_view text, const Style& style = text_style);
  // After a dash; `link` leads from its first line to a place of any page.
  void item(std::string_view text, std::string_view link = "", const Style& style = text_style);
  void table(const std::vector<Column>& columns, const std::vector<Row>& rows);

  // Kept whole: `draw` gets the page and the area of that height that the block has.
  using Draw = std::function<void(scene::Page& page, const scene::Area& area)>;
  void block(double height_mm, const Draw& draw);
  void space(double height_mm);  // none at the head of a page
  void new_page();               // unless the page is empty

  const scene::Measure& measure() const { return measure_; }
  double width_mm() const { return paper_.text.width_mm; }
  std::vector<scene::Page> pages() &&;

 private:
  struct Heading {
    std::string text, place, note;
    bool section = false;
  };
  struct Laid {  // a row broken into lines
    std::vector<std::vector<std::string>> cells;
    double height_mm = 0;
  };

  struct Piece {  // of a table: a row, or what a page holds of one that none holds
    const Row* row;
    Laid laid;
    bool first = true;
  };

  double height_of(std::string_view text, const Style& style) const;
  double headings_mm() const;
  void start();
  // Room for so much below the waiting headings, which are written; true on a new page.
  bool need(double height_mm);
  void write_headings();
  void write(const Heading& heading);
  void lines(const std::vector<std::string>& lines, const Style& style, double indent_mm);
  Laid laid(const std::vector<Column>& columns, const std::vector<std::string>& cells,
            const Style& style) const;
  std::vector<Piece> pieces(const std::vector<Column>& columns, const std::vector<Row>& rows,
                            double most_mm) const;
  void mark(const Piece& piece, double first_column_mm);  // its place, its link
  void write(const std::vector<Column>& columns, const Laid& row, const Style& style,
             double line_pt);

  const Paper paper_;
  scene::Measure measure_;
  std::vector<scene::Page> pages_;
  std::vector<Heading> waiting_;
  double y_mm_ = 0;
};

}  // namespace tinworm::documents
