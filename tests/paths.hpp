// Where this checkout and its program lie. Told to one file alone, so that the compiler's cache can
// serve every other one in any checkout.
#pragma once

#include <string>

namespace tinworm {

std::string source_folder();  // the top of the checkout, without a slash at its end
std::string program_file();   // the built program

}  // namespace tinworm
