#include "output/descriptor.hpp"

#include <poll.h>
#include <unistd.h>

#include <cerrno>
#include <utility>

#include "output/file_error.hpp"

namespace tinworm::output {

Descriptor::~Descriptor() {
  close();
}

int Descriptor::close() {
  const int number = std::exchange(number_, -1);
  if (number < 0) return 0;
  // Linux has let go of the descriptor even where close is interrupted.
  return ::close(number) == 0 || errno == EINTR ? 0 : errno;
}

void write_all(int descriptor, std::string_view bytes, const std::string& path) {
  while (!bytes.empty()) {
    const ssize_t written = ::write(descriptor, bytes.data(), bytes.size());
    if (written >= 0) {
      bytes.remove_prefix(static_cast<std::size_t>(written));
    } else if (errno == EAGAIN) {
      pollfd ready{descriptor, POLLOUT, 0};
      ::poll(&ready, 1, -1);
    } else if (errno != EINTR) {
      const int error = errno;
      throw FileError(path, reason_of(error), cure_of(error));
    }
  }
}

}  // namespace tinworm::output
