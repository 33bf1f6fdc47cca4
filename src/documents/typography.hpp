// The one system of type of every paper: a text size, a small size for tables, captions and notes,
// and headings of one family. All are the packaged sans; weight and size tell them apart.
#pragma once

#include "scene/palette.hpp"
#include "scene/setting.hpp"

namespace tinworm::documents {

using scene::black;
using scene::Font;
using scene::Says;
using scene::Style;

inline constexpr double text_pt = 9, small_pt = 7;

inline constexpr Style title_style{18, Font::bold, black, Says::title, 1.2};
inline constexpr Style section_style{12, Font::bold, black, Says::title, 1.25};
inline constexpr Style heading_style{text_pt, Font::bold, black, Says::words, 1.3};
inline constexpr Style text_style{text_pt, Font::regular, black, Says::words, 1.3};
inline constexpr Style small_style{small_pt, Font::regular, black, Says::words, 1.28};
inline constexpr Style small_heading_style{small_pt, Font::bold, black, Says::words, 1.28};
inline constexpr Style note_style{small_pt, Font::regular, scene::soft_ink, Says::words, 1.28};
inline constexpr Style caution_style{small_pt, Font::regular, black, Says::caution, 1.28};

}  // namespace tinworm::documents
