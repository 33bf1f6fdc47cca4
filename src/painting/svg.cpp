#include <algorithm>
#include <map>
#include <set>
#include <stdexcept>

#include <cairo-svg.h>
#include <fmt/format.h>

#include "painting/painter.hpp"
#include "painting/picture.hpp"
#include "painting/svg_numbers.hpp"
#include "painting/svg_text.hpp"

namespace tinworm::painting {
namespace {

// Where the number begins of a name that Cairo made up: `surface5`, `image7`; else 0.
std::size_t number_in(std::string_view name) {
  for (const std::string_view stem : {"surface", "image"}) {
    if (!name.starts_with(stem)) continue;
    const std::string_view rest = name.substr(stem.size());
    return !rest.empty() && rest[0] >= '0' && rest[0] <= '9' ? stem.size() : 0;
  }
  return 0;
}

// Cairo numbers surfaces and images from one counter of the whole process. Numbered anew from 1 in
// order of appearance, so that one process writes the same file twice. A name follows a quotation
// mark or a #, which a photo's bytes can't hold, whatever else they spell.
std::string renumbered(std::string_view svg) {
  std::map<std::string, int, std::less<>> numbers;
  std::string text;
  text.reserve(svg.size());
  std::size_t from = 0;
  for (std::size_t at = svg.find_first_of("\"#"); at != svg.npos;
       at = svg.find_first_of("\"#", from)) {
    const std::size_t digits = at + 1 + number_in(svg.substr(at + 1));
    text.append(svg.substr(from, digits - from));
    from = digits;
    if (digits == at + 1) continue;
    from = std::min(svg.find_first_not_of("0123456789", digits), svg.size());
    const std::string old(svg.substr(digits, from - digits));
    const int next = static_cast<int>(numbers.size()) + 1;
    text.append(std::to_string(numbers.try_emplace(old, next).first->second));
  }
  text.append(svg.substr(from));
  return text;
}

// Cairo writes a clip's rule where it is used; only on the clip's own path does it count (SVG 1.1,
// 14.3.5). Without it glass would be filled like the door round it.
std::string with_clip_rules(std::string svg) {
  constexpr std::string_view use = "clip-path=\"url(#", rule = ")\" clip-rule=\"evenodd\"";
  std::set<std::string, std::less<>> even_odd;
  for (std::size_t at = svg.find(use); at != svg.npos; at = svg.find(use, at + 1)) {
    const std::size_t name = at + use.size(), end = svg.find(')', name);
    if (end != svg.npos && svg.compare(end, rule.size(), rule) == 0)
      even_odd.insert(svg.substr(name, end - name));
  }
  constexpr std::string_view clip = "<clipPath id=\"", path = "<path ";
  for (std::size_t at = svg.find(clip); at != svg.npos; at = svg.find(clip, at + 1)) {
    const std::size_t name = at + clip.size(), end = svg.find('"', name);
    if (end == svg.npos || !even_odd.contains(svg.substr(name, end - name))) continue;
    const std::size_t drawn = svg.find(path, end);
    if (drawn != svg.npos) svg.insert(drawn + path.size(), "clip-rule=\"evenodd\" ");
  }
  return svg;
}

std::string head(const Metadata& metadata) {
  const auto part = [](std::string_view label, std::string_view text) {
    return text.empty() ? std::string() : fmt::format("{}{}\n", label, escaped(text));
  };
  return fmt::format("<title>{}</title>\n<desc>{}{}{}{}{}</desc>\n", escaped(metadata.title),
                     part("", metadata.description), part("Date: ", metadata.date),
                     part("By: ", metadata.author), part("Record: ", metadata.record),
                     part("Made with ", metadata.creator));
}

}  // namespace

std::string to_svg(const scene::Page& page, const Metadata& metadata, Warnings* warnings) {
  std::string raw;
  const Held<cairo_surface_t> surface(cairo_svg_surface_create_for_stream(
      append_to_string, &raw, points(page.width_mm), points(page.height_mm)));
  check(surface.get(), "starting the SVG");
  const Held<cairo_t> cairo(cairo_create(surface.get()));
  paint(cairo.get(), page, warnings, Words::left_out);
  cairo_show_page(cairo.get());
  check(cairo.get(), "drawing the SVG");
  cairo_surface_finish(surface.get());
  check(surface.get(), "finishing the SVG");
  std::string svg = brief_svg(with_clip_rules(renumbered(raw)));
  const std::size_t root = svg.find("<svg");
  const std::size_t after = root == std::string::npos ? root : svg.find(">\n", root);
  if (after == std::string::npos) throw std::runtime_error("finishing the SVG: no root element");
  const std::size_t end = svg.rfind("</svg>");
  if (end == std::string::npos) throw std::runtime_error("finishing the SVG: it has no end");
  svg.insert(end, svg_text(page));
  svg.insert(after + 2, head(metadata));
  return svg;
}

}  // namespace tinworm::painting
