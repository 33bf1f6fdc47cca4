// Regular expressions for what may be written on one line: quantities, dates, zones, photos. In the
// dialect of JSON Schema (ECMA-262), so that any editor can read them: nothing looks back, and a
// backslash stands only before signs that need one.
//
// A schema can't weigh a number inside a text nor compare two: such mistakes are the reader's to
// find. What these let through is never less than what the reader takes.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace tinworm::schema::pattern {

std::string whole(const std::string& inside);  // nothing before it, nothing behind but spaces
std::string one_of(const std::vector<std::string_view>& texts);  // each as it stands

// All texts of `count` digits that `is_taken` takes: "188[5-9]|189[0-9]|19[0-9]{2}". Asks it about
// each, so that bounds are those of whoever reads the text.
using IsTaken = std::function<bool(const std::string&)>;
std::string digits(std::size_t count, const IsTaken& is_taken);

std::string number();       // 3, 0.82, .82, 5.
std::string length();       // 0.82 mm, 32 thou, .82, 3/64 in
std::string lengths();      // .81 .78 .84 mm
std::string sheets();       // the same, or 18 SWG
std::string films();        // 140 900-1600 over 2000 um
std::string coordinate();   // -720, +1.5 in
std::string size();         // 300x120 mm, 3" x 1", 250
std::string holes();        // 14x9; 20 15 8 mm; 5 holes to 30
std::string sheet();        // 1.1 mm, 20 SWG, 20 US
std::string area();         // 0.31 m2
std::string distance();     // 61200 mi
std::string share();        // 60 %
std::string price();        // 9500 EUR
std::string date();         // 2025-04-12, 2025-04, 2025
std::string tyre_code();    // 0301, 317
std::string zone_number();  // 10 to 98, two digits
std::string zones();        // 51-58 61
std::string zone_name();    // left outer sill: whether a body has it is the reader's to find
std::string position();     // x 1150 z 200 mm
std::string photos();       // 14 15, 17-19 details/lip.jpg
std::string photo();        // one of them; a path may hold spaces
std::string photo_folder();
std::string photo_name();  // IMG_{}.jpg, IMG_{:04}.jpg

}  // namespace tinworm::schema::pattern
