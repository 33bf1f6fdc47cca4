// Reads and writes files as a whole.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "output/descriptor.hpp"
#include "output/draft.hpp"

namespace tinworm::output {

// All bytes of a file. Throws FileError: not there (with the nearest name of the folder), a folder,
// not allowed, larger than `most_bytes`.
std::string read_whole(const std::string& path, std::size_t most_bytes);

// Where there is no file at `path`: "did you mean "wherry.pdf"?", a name of its folder; or empty.
std::string nearest_sibling(const std::string& path);

// A file written piece by piece that comes to `path` whole or not at all: into a new file beside
// it, to the disk, then renamed over it. A file already there keeps its permissions, and is
// untouched if anything fails or `finish` is never called. A link is followed to what it names. `-`
// is standard output; a device or pipe is written straight to. All throw FileError; a folder is
// refused, and so is a file that its owner made read-only.
class WholeFile {
 public:
  explicit WholeFile(std::string path);
  void add(std::string_view bytes);
  void finish();  // once, after all was added

 private:
  std::string path_, target_;
  std::optional<Descriptor> device_;
  std::optional<Draft> draft_;
};

// The same with all of it at hand.
void write_whole(const std::string& path, std::string_view bytes);

// Writes a file that isn't there yet, whole or not at all. False where anything is there, which
// stays untouched, even what came a moment before. Throws FileError.
bool write_new(const std::string& path, std::string_view bytes);

}  // namespace tinworm::output
