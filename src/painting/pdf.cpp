#include <algorithm>
#include <set>
#include <stdexcept>

#include <cairo-pdf.h>
#include <fmt/format.h>

#include "painting/painter.hpp"
#include "painting/picture.hpp"

namespace tinworm::painting {
namespace {

void set_metadata(cairo_surface_t* surface, const Metadata& metadata) {
  const auto set = [&](cairo_pdf_metadata_t which, const std::string& text) {
    if (!text.empty()) cairo_pdf_surface_set_metadata(surface, which, text.c_str());
  };
  set(CAIRO_PDF_METADATA_TITLE, metadata.title);
  set(CAIRO_PDF_METADATA_AUTHOR, metadata.author);
  set(CAIRO_PDF_METADATA_SUBJECT, metadata.subject);
  set(CAIRO_PDF_METADATA_KEYWORDS, metadata.record);
  set(CAIRO_PDF_METADATA_CREATOR, metadata.creator);
  set(CAIRO_PDF_METADATA_CREATE_DATE, metadata.date);
  set(CAIRO_PDF_METADATA_MOD_DATE, metadata.date);
}

// Cairo 1.16 writes dates without the "D:" that PDF asks for. Three spaces stand before each key,
// so that two may go without moving a byte of the cross-reference table.
void mend_dates(std::string& pdf) {
  for (const std::string_view key : {"/CreationDate (", "/ModDate ("}) {
    const std::string wrong = fmt::format("   {}", key);
    const std::size_t at = pdf.rfind(wrong);
    if (at == std::string::npos || pdf.compare(at + wrong.size(), 2, "D:") == 0) continue;
    pdf.replace(at, wrong.size(), fmt::format(" {}D:", key));
  }
}

// Cairo 1.16 lists a photo once for each time that a page shows it, where PDF wants each name once:
//   /XObject << /x6 6 0 R /x7 7 0 R /x6 6 0 R >>
// Blanks in place of what comes again move no byte of the cross-reference table.
void mend_photo_lists(std::string& pdf) {
  constexpr std::string_view opening = "\n   /XObject << ", closing = " >>\n", entry_end = " R ";
  for (std::size_t at = pdf.find(opening); at != pdf.npos; at = pdf.find(opening, at)) {
    at += opening.size();
    const std::size_t end = pdf.find(closing, at);
    if (end == pdf.npos) return;
    std::set<std::string> listed;
    while (at < end) {
      const std::size_t next = std::min(pdf.find(entry_end, at), end - 2) + entry_end.size();
      if (!listed.insert(pdf.substr(at, next - at)).second)
        pdf.replace(at, next - at, next - at, ' ');
      at = next;
    }
  }
}

void check_links(const std::vector<scene::Page>& pages) {
  std::set<std::string> places;
  for (const scene::Page& page : pages) {
    for (const scene::Place& place : page.places) places.insert(place.name);
  }
  for (const scene::Page& page : pages) {
    for (const scene::Link& link : page.links) {
      if (!places.contains(link.to)) {
        throw std::invalid_argument("a link leads to \"" + link.to + "\", which no page has");
      }
    }
  }
}

void add_places_and_links(cairo_t* cairo, const scene::Page& page) {
  for (const scene::Place& place : page.places) {
    const std::string attributes = fmt::format("name='{}' x={:.3f} y={:.3f}", place.name,
                                               points(place.at.x_mm), points(place.at.y_mm));
    cairo_tag_begin(cairo, CAIRO_TAG_DEST, attributes.c_str());
    cairo_tag_end(cairo, CAIRO_TAG_DEST);
  }
  for (const scene::Link& link : page.links) {
    const scene::Area& area = link.area;
    const std::string attributes =
        fmt::format("rect=[{:.3f} {:.3f} {:.3f} {:.3f}] dest='{}'", points(area.x_mm),
                    points(area.y_mm), points(area.width_mm), points(area.height_mm), link.to);
    cairo_tag_begin(cairo, CAIRO_TAG_LINK, attributes.c_str());
    cairo_tag_end(cairo, CAIRO_TAG_LINK);
  }
}

void add_outline(cairo_surface_t* surface, const scene::Page& page, std::size_t number) {
  std::vector<scene::Outlined> parts = page.outline;
  if (parts.empty() && !page.title.empty()) parts.push_back({page.title, {0, 0}});
  for (const scene::Outlined& part : parts) {
    const std::string where = fmt::format("page={} pos=[{:.3f} {:.3f}]", number,
                                          points(part.at.x_mm), points(part.at.y_mm));
    cairo_pdf_surface_add_outline(surface, CAIRO_PDF_OUTLINE_ROOT, part.text.c_str(), where.c_str(),
                                  CAIRO_PDF_OUTLINE_FLAG_OPEN);
  }
}

}  // namespace

std::string to_pdf(const std::vector<scene::Page>& pages, const Metadata& metadata,
                   Warnings* warnings) {
  if (metadata.date.empty()) {
    throw std::invalid_argument("a PDF needs a date; without one Cairo would take the clock's");
  }
  if (pages.empty()) throw std::invalid_argument("a PDF needs at least one page");
  check_links(pages);
  std::string pdf;
  const Held<cairo_surface_t> surface(cairo_pdf_surface_create_for_stream(
      append_to_string, &pdf, points(pages[0].width_mm), points(pages[0].height_mm)));
  check(surface.get(), "starting the PDF");
  cairo_pdf_surface_restrict_to_version(surface.get(), CAIRO_PDF_VERSION_1_5);
  set_metadata(surface.get(), metadata);
  const Held<cairo_t> cairo(cairo_create(surface.get()));
  for (std::size_t i = 0; i < pages.size(); ++i) {
    const scene::Page& page = pages[i];
    cairo_pdf_surface_set_size(surface.get(), points(page.width_mm), points(page.height_mm));
    if (!page.label.empty()) cairo_pdf_surface_set_page_label(surface.get(), page.label.c_str());
    // Cairo 1.16 forgets to write the structure element of a link that stands in none.
    cairo_tag_begin(cairo.get(), "Sect", nullptr);
    paint(cairo.get(), page, warnings);
    add_places_and_links(cairo.get(), page);
    cairo_tag_end(cairo.get(), "Sect");
    add_outline(surface.get(), page, i + 1);
    cairo_show_page(cairo.get());
    check(cairo.get(), "drawing the PDF");
  }
  cairo_surface_finish(surface.get());
  check(surface.get(), "finishing the PDF");
  mend_dates(pdf);
  mend_photo_lists(pdf);
  return pdf;
}

}  // namespace tinworm::painting
