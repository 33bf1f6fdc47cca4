// Reads and writes files as a whole.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace tinworm::output {

// All bytes of a file. Throws FileError: not there (with the nearest name of the folder), a folder,
// not allowed, larger than `most_bytes`.
std::string read_whole(const std::string& path, std::size_t most_bytes);

// Puts `bytes` at `path`, whole or not at all: into a new file beside it, to the disk, then renamed
// over it. A file already there keeps its permissions, and is untouched if anything fails. A link
// is followed to what it names. `-` is standard output; a device or pipe is written straight to.
// Throws FileError; a folder is refused, and so is a file that its owner made read-only.
void write_whole(const std::string& path, std::string_view bytes);

}  // namespace tinworm::output
