// What was found in a zone and what was mended, each on one line or written long.
#pragma once

#include "schema/part.hpp"
#include "survey/field.hpp"

namespace tinworm::schema {

// `- rear end: pitting, firm, 180x60, metal .81 .78`, or a map that starts with `spot`.
Json finding();

// `- let-in, seam-weld, 300x120, 2021-05, cut-out, sound`, or a map with `kind`.
Json repair();

Json position();  // `x 1150 z 200`, or a map of axes

// A field with what an editor shows of it.
Key key_of(const survey::FieldFacts& facts);

Json photos();  // `14 15`, a path, or a list of them

}  // namespace tinworm::schema
