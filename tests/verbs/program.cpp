#include "verbs/program.hpp"
#include "paths.hpp"

#include <stdlib.h>
#include <sys/wait.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <stdexcept>

namespace tinworm::verbs {

namespace fs = std::filesystem;

Workshop::Workshop() : folder_((fs::temp_directory_path() / "tinworm-test-XXXXXX").string()) {
  if (::mkdtemp(folder_.data()) == nullptr) throw std::runtime_error("no folder to work in");
  fs::copy(fs::path(source_folder()) / "tests/verbs/files", folder_, fs::copy_options::recursive);
}

Workshop::~Workshop() {
  std::error_code left_behind;  // in the system's folder for what is temporary
  fs::remove_all(folder_, left_behind);
}

Ended Workshop::run(const std::string& arguments, const std::string& before,
                    const std::string& through) const {
  const std::string command = "cd " + folder_ + " && { " + before + "; } && { " + through + " " +
                              program_file() + " " + arguments + " ; } >.results 2>.messages";
  const int status = std::system(command.c_str());
  Ended ended{WIFEXITED(status) ? WEXITSTATUS(status) : -1, text(".results"), text(".messages")};
  fs::remove(path(".results"));
  fs::remove(path(".messages"));
  return ended;
}

std::string Workshop::text(const std::string& name) const {
  std::ifstream file(path(name), std::ios::binary);
  std::ostringstream all;
  all << file.rdbuf();
  return all.str();
}

void Workshop::put(const std::string& name, const std::string& text) const {
  std::ofstream(path(name), std::ios::binary) << text;
}

bool Workshop::has(const std::string& name) const {
  return fs::exists(path(name));
}

}  // namespace tinworm::verbs
