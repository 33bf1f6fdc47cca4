#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <filesystem>
#include <vector>

#include <fmt/format.h>

#include "output/descriptor.hpp"
#include "output/file_error.hpp"
#include "output/whole_file.hpp"
#include "yaml/characters.hpp"
#include "yaml/problem.hpp"

namespace tinworm::output {

namespace fs = std::filesystem;

std::string nearest_sibling(const std::string& path) {
  const fs::path wanted(path);
  const fs::path folder = wanted.has_parent_path() ? wanted.parent_path() : fs::path(".");
  std::vector<std::string> names;
  std::error_code unreadable;  // then there is nothing to suggest
  for (fs::directory_iterator entry(folder, unreadable), end; !unreadable && entry != end;
       entry.increment(unreadable)) {
    names.push_back(entry->path().filename().string());
  }
  const std::string near = yaml::nearest_word(wanted.filename().string(), names);
  if (near.empty()) return {};
  return fmt::format("did you mean \"{}\"?", yaml::shown((wanted.parent_path() / near).string()));
}

std::string read_whole(const std::string& path, std::size_t most_bytes) {
  if (path.empty()) throw FileError("\"\"", "a file needs a name");
  const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
  if (!file.open()) {
    const int error = errno;
    throw FileError(path, reason_of(error),
                    error == ENOENT ? nearest_sibling(path) : cure_of(error));
  }
  std::string bytes;
  std::string block(1 << 16, '\0');
  while (true) {
    const ssize_t count = ::read(file.number(), block.data(), block.size());
    if (count == 0) return bytes;
    if (count < 0 && errno == EINTR) continue;
    if (count < 0) {
      const int error = errno;
      throw FileError(path, reason_of(error), cure_of(error));
    }
    bytes.append(block, 0, static_cast<std::size_t>(count));
    if (bytes.size() > most_bytes) {
      throw FileError(path, fmt::format("larger than {} MiB", most_bytes >> 20),
                      "check that it is the right file");
    }
  }
}

}  // namespace tinworm::output
