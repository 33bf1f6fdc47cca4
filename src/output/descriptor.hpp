// An open file that closes itself, and writing all of a text to one.
#pragma once

#include <string>
#include <string_view>

namespace tinworm::output {

class Descriptor {
 public:
  explicit Descriptor(int number) : number_(number) {}
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  ~Descriptor();

  int number() const { return number_; }
  bool open() const { return number_ >= 0; }
  // Closes now; the errno of a failure (a full network disk may only tell here), else 0.
  int close();

 private:
  int number_;
};

// Writes every byte or throws FileError that names `path`. Waits where the other end is slow.
void write_all(int descriptor, std::string_view bytes, const std::string& path);

}  // namespace tinworm::output
