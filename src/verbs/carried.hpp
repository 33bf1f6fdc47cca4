// What a file that may be an output carries, and whether it is like another byte for byte. Read in
// blocks: no file is too large.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "output/descriptor.hpp"
#include "verbs/record.hpp"

namespace tinworm::verbs {

class OpenFile {
 public:
  // Throws output::FileError: not there, not allowed, or no plain file.
  explicit OpenFile(const std::string& path);
  OpenFile(int descriptor, std::string path) : file_(descriptor), path_(std::move(path)) {}

  int number() const { return file_.number(); }  // of its descriptor
  std::size_t size() const;
  // At most `most` bytes from `at` on; fewer at the end alone. Throws output::FileError.
  std::string bytes(std::size_t at, std::size_t most) const;

 private:
  output::Descriptor file_;
  std::string path_;
};

// A file without a name, empty, for both reading and writing; gone when it is closed. Throws
// output::FileError.
int nameless_file();

struct Carried {
  Record record;
  std::size_t at = 0;  // where it begins
};

struct Records {
  std::vector<Carried> naming;  // the survey asked for; the first few, for anyone may write more
  std::optional<Record> last;   // of all; none where there is none
};

Records records_in(const OpenFile& file, const std::string& survey_sha256);

// Where they differ first, the end of the shorter one at last; none where they are the same.
// `length` bytes of `a` from `at` on are compared with all of `b`.
std::optional<std::size_t> first_difference(const OpenFile& a, std::size_t at, std::size_t length,
                                            const OpenFile& b);

// The line, counted from 1, in which the byte at `at` stands.
std::size_t line_of(const OpenFile& file, std::size_t at);

}  // namespace tinworm::verbs
