// Puts a page on a Cairo surface. The surface's user space is points.
#pragma once

#include "painting/held.hpp"
#include "painting/picture.hpp"
#include "scene/page.hpp"

namespace tinworm::painting {

// Left out: said by other means; what no font has is warned of all the same.
enum class Words { drawn, left_out };
void paint(cairo_t* cairo, const scene::Page& page, Warnings* warnings, Words words = Words::drawn);

// Throws std::bad_alloc for want of memory, std::runtime_error with Cairo's words for anything else
// that did not go well.
void check(cairo_status_t status, const char* doing);
void check(cairo_t* cairo, const char* doing);
void check(cairo_surface_t* surface, const char* doing);

// A surface's stream into a std::string.
cairo_status_t append_to_string(void* string, const unsigned char* data, unsigned int length);

double points(double mm);

// In points, of a place or a length; throws std::invalid_argument for what Cairo can't hold.
double coordinate(double mm);

}  // namespace tinworm::painting
