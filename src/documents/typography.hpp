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

inline const Style title_style{18, Font::bold, black, Says::title, 1.2};
inline const Style section_style{12, Font::bold, black, Says::title, 1.25};
inline const Style heading_style{text_pt, Font::bold, black, Says::words, 1.3};
inline const Style text_style{text_pt, Font::regular, black, Says::words, 1.3};
inline const Style small_style{small_pt, Font::regular, black, Says::words, 1.28};
inline const Style small_heading_style{small_pt, Font::bold, black, Says::words, 1.28};
inline const Style note_style{small_pt, Font::regular, scene::soft_ink, Says::words, 1.28};
inline const Style caution_style{small_pt, Font::regular, black, Says::caution, 1.28};

}  // namespace tinworm::documents
