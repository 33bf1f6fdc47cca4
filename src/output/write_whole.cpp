#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdlib>
#include <filesystem>
#include <optional>

#include "output/descriptor.hpp"
#include "output/file_error.hpp"
#include "output/whole_file.hpp"

namespace tinworm::output {
namespace {

namespace fs = std::filesystem;

// What a chain of links names in the end, be it there or not: renaming over the link itself would
// replace the link.
fs::path followed(const std::string& path) {
  fs::path at(path);
  constexpr int most_links = 40;  // as the kernel
  for (int links = 0; links < most_links; ++links) {
    std::error_code none;
    if (!fs::is_symlink(fs::symlink_status(at, none))) return at;
    const fs::path target = fs::read_symlink(at, none);
    if (none) throw FileError(path, reason_of(none.value()));
    at = target.is_absolute() ? target : at.parent_path() / target;
  }
  throw FileError(path, "links that go round in a circle");
}

[[noreturn]] void refuse_write(const std::string& path, int error) {
  if (error == ENOENT) throw FileError(path, "its folder does not exist", "make the folder first");
  throw FileError(path, reason_of(error));
}

mode_t mode_of_new_files() {
  const mode_t mask = ::umask(0);  // there is no way to ask without setting
  ::umask(mask);
  return 0666 & ~mask;
}

void write_to_device(const std::string& path, std::string_view bytes) {
  Descriptor device(::open(path.c_str(), O_WRONLY | O_CLOEXEC));
  if (!device.open()) refuse_write(path, errno);
  write_all(device.number(), bytes, path);
  if (const int error = device.close()) refuse_write(path, error);
}

// A new file beside `target` that is removed again unless it takes the target's place.
class Draft {
 public:
  Draft(const fs::path& target, const std::string& path)
      : path_(path),
        name_((target.parent_path() / ("." + target.filename().string().substr(0, 200) + "-XXXXXX"))
                  .string()),
        file_(::mkostemp(name_.data(), O_CLOEXEC)) {
    if (!file_.open()) refuse_write(path, errno);
  }
  Draft(const Draft&) = delete;
  Draft& operator=(const Draft&) = delete;
  ~Draft() {
    if (!placed_) ::unlink(name_.c_str());
  }

  void fill(std::string_view bytes, const std::optional<struct stat>& before) {
    write_all(file_.number(), bytes, path_);
    if (before && ::fchown(file_.number(), before->st_uid, before->st_gid) != 0 && errno != EPERM) {
      refuse_write(path_, errno);  // only root may give a file away; others own what they replace
    }
    const mode_t mode = before ? before->st_mode & 07777 : mode_of_new_files();
    if (::fchmod(file_.number(), mode) != 0) refuse_write(path_, errno);
    if (::fsync(file_.number()) != 0) refuse_write(path_, errno);
    if (const int error = file_.close()) refuse_write(path_, error);
  }

  void place(const fs::path& target) {
    if (::rename(name_.c_str(), target.c_str()) != 0) refuse_write(path_, errno);
    placed_ = true;
  }

 private:
  const std::string& path_;  // as the user wrote it, for messages
  std::string name_;
  Descriptor file_;
  bool placed_ = false;
};

}  // namespace

void write_whole(const std::string& path, std::string_view bytes) {
  if (path == "-") return write_all(STDOUT_FILENO, bytes, "standard output");
  const fs::path target = followed(path);
  std::optional<struct stat> before(std::in_place);
  if (::stat(target.c_str(), &*before) != 0) {
    if (errno != ENOENT) refuse_write(path, errno);
    before.reset();
  }
  if ((before && S_ISDIR(before->st_mode)) || !target.has_filename()) {
    throw FileError(path, "a folder, not a file", "give the name of a file");
  }
  if (before && !S_ISREG(before->st_mode)) return write_to_device(path, bytes);
  if (before && ::access(target.c_str(), W_OK) != 0) refuse_write(path, errno);
  Draft draft(target, path);
  draft.fill(bytes, before);
  draft.place(target);
}

}  // namespace tinworm::output
