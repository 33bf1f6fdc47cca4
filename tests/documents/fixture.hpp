// Papers as values: what stands on their pages, and where.
#pragma once

#include <string>
#include <vector>

#include "documents/typography.hpp"
#include "scene/page.hpp"

namespace tinworm::documents::fixture {

// Every letter a fifth of its size wide: lines and pages can be reckoned in the head.
inline scene::Extent plain_measure(std::string_view text, scene::Font, double size_pt) {
  const double size_mm = size_pt * scene::mm_per_pt;
  return {static_cast<double>(text.size()) * size_mm / 5, 0.8 * size_mm, 0.2 * size_mm};
}

// Of the layer that text runs down: no foot, no map.
inline std::vector<const scene::Text*> running_text(const scene::Page& page) {
  std::vector<const scene::Text*> found;
  for (const scene::Layer& layer : page.layers)
    if (layer.name == "text")
      for (const scene::Item& item : layer.items)
        if (const auto* text = std::get_if<scene::Text>(&item)) found.push_back(text);
  return found;
}

inline bool is_heading(const scene::Text& text) {
  return text.font == scene::Font::bold && text.size_pt >= text_pt;
}

// All words of a page, lines joined by spaces.
inline std::string words(const scene::Page& page) {
  std::string all;
  for (const scene::Text* text : scene::texts(page)) all += text->text + " ";
  return all;
}

inline std::string words(const std::vector<scene::Page>& pages) {
  std::string all;
  for (const scene::Page& page : pages) all += words(page);
  return all;
}

}  // namespace tinworm::documents::fixture
