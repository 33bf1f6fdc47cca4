#include "paths.hpp"

namespace tinworm {

std::string source_folder() {
  return TINWORM_SOURCE_DIR;
}
std::string program_file() {
  return TINWORM_PROGRAM;
}

}  // namespace tinworm
