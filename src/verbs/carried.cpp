#include "verbs/carried.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <filesystem>

#include "output/file_error.hpp"
#include "output/whole_file.hpp"

namespace tinworm::verbs {
namespace {

constexpr std::size_t block = 1u << 16;
constexpr std::size_t most_naming = 8;

// Finds records in bytes that come one block after the other.
class Finder {
 public:
  Finder(const std::string& survey, Records& found) : survey_(survey), found_(found) {}

  void take(std::string_view bytes) {
    for (std::size_t i = 0; i < bytes.size(); ++i) {
      if (line_.empty()) i = bytes.find('[', i);
      if (i == bytes.npos) break;
      take(bytes[i], begins_ + i);
    }
    begins_ += bytes.size();
  }

 private:
  void take(char c, std::size_t at) {
    if (c == '[') {
      line_.clear();
      at_ = at;
    }
    line_ += c;
    const std::string_view known = record_start.substr(0, line_.size());
    const bool may_be = c >= ' ' && c <= '~' && line_.starts_with(known);
    if (c == ']') keep();
    if (!may_be || c == ']' || line_.size() > longest_record) line_.clear();
  }

  void keep() {
    std::optional<Record> record = read_record(line_);
    if (!record) return;
    if (record->survey(survey_) != nullptr && found_.naming.size() < most_naming)
      found_.naming.push_back({*record, at_});
    found_.last = std::move(record);
  }

  const std::string& survey_;
  Records& found_;
  std::string line_;        // so far, from its bracket on; empty outside of one
  std::size_t at_ = 0;      // of its bracket
  std::size_t begins_ = 0;  // the block
};

}  // namespace

OpenFile::OpenFile(const std::string& path)
    : file_(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK)), path_(path) {
  if (!file_.open()) {
    const int error = errno;
    throw output::FileError(path, output::reason_of(error),
                            error == ENOENT ? output::nearest_sibling(path) : "");
  }
  struct stat what {};
  if (::fstat(file_.number(), &what) != 0) throw output::FileError(path, output::reason_of(errno));
  if (!S_ISREG(what.st_mode))
    throw output::FileError(path, S_ISDIR(what.st_mode) ? "a folder, not a file"
                                                        : "not a plain file; save it as one first");
}

std::size_t OpenFile::size() const {
  struct stat what {};
  if (::fstat(file_.number(), &what) != 0) throw output::FileError(path_, output::reason_of(errno));
  return static_cast<std::size_t>(what.st_size);
}

std::string OpenFile::bytes(std::size_t at, std::size_t most) const {
  std::string bytes(most, '\0');
  std::size_t have = 0;
  while (have < most) {
    const ssize_t count =
        ::pread(file_.number(), bytes.data() + have, most - have, static_cast<off_t>(at + have));
    if (count < 0 && errno == EINTR) continue;
    if (count < 0) throw output::FileError(path_, output::reason_of(errno));
    if (count == 0) break;
    have += static_cast<std::size_t>(count);
  }
  bytes.resize(have);
  return bytes;
}

int nameless_file() {
  std::error_code none;  // then the folder that every system has
  const std::filesystem::path folder = std::filesystem::temp_directory_path(none);
  std::string path = (none ? "/tmp" : folder.string()) + "/tinworm-XXXXXX";
  const int file = ::mkostemp(path.data(), O_CLOEXEC);
  if (file < 0) throw output::FileError(path, output::reason_of(errno));
  ::unlink(path.c_str());
  return file;
}

Records records_in(const OpenFile& file, const std::string& survey_sha256) {
  Records found;
  Finder finder(survey_sha256, found);
  std::size_t at = 0;
  for (std::string bytes = file.bytes(0, block); !bytes.empty(); bytes = file.bytes(at, block)) {
    finder.take(bytes);
    at += bytes.size();
  }
  return found;
}

std::optional<std::size_t> first_difference(const OpenFile& a, std::size_t at, std::size_t length,
                                            const OpenFile& b) {
  for (std::size_t done = 0;;) {
    const std::string one = a.bytes(at + done, std::min(block, length - done));
    const std::string other = b.bytes(done, block);
    const auto [here, there] = std::ranges::mismatch(one, other);
    if (here != one.end() || there != other.end())
      return done + static_cast<std::size_t>(here - one.begin());
    if (one.empty()) return std::nullopt;
    done += one.size();
  }
}

std::size_t line_of(const OpenFile& file, std::size_t at) {
  std::size_t lines = 1;
  for (std::size_t from = 0; from < at; from += block)
    lines += static_cast<std::size_t>(
        std::ranges::count(file.bytes(from, std::min(block, at - from)), '\n'));
  return lines;
}

}  // namespace tinworm::verbs
