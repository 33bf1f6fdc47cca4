#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <filesystem>
#include <utility>

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

}  // namespace

WholeFile::WholeFile(std::string path) : path_(std::move(path)) {
  if (path_ == "-") return;
  target_ = followed(path_).string();
  struct stat before {};
  const bool there = ::stat(target_.c_str(), &before) == 0;
  if (!there && errno != ENOENT) refuse_write(path_, errno);
  if ((there && S_ISDIR(before.st_mode)) || !fs::path(target_).has_filename()) {
    throw FileError(path_, "a folder, not a file", "give the name of a file");
  }
  if (there && !S_ISREG(before.st_mode)) {
    device_.emplace(::open(target_.c_str(), O_WRONLY | O_CLOEXEC));
    if (!device_->open()) refuse_write(path_, errno);
    return;
  }
  if (there && ::access(target_.c_str(), W_OK) != 0) refuse_write(path_, errno);
  draft_.emplace(target_, path_, there ? Draft::Open::to_its_owner : Draft::Open::as_new_files);
  if (there) draft_->own(before.st_uid, before.st_gid, before.st_mode & 07777);
}

void WholeFile::add(std::string_view bytes) {
  if (draft_) return draft_->add(bytes);
  if (device_) return write_all(device_->number(), bytes, path_);
  write_all(STDOUT_FILENO, bytes, "standard output");
}

void WholeFile::finish() {
  if (draft_) {
    draft_->finish();
    draft_->replace(target_);
  }
  if (!device_) return;
  if (const int error = device_->close()) refuse_write(path_, error);
}

void write_whole(const std::string& path, std::string_view bytes) {
  WholeFile file(path);
  file.add(bytes);
  file.finish();
}

bool write_new(const std::string& path, std::string_view bytes) {
  if (!fs::path(path).has_filename()) {
    throw FileError(path, "a folder, not a file", "give the name of a file");
  }
  Draft draft(path, path, Draft::Open::as_new_files);
  draft.add(bytes);
  draft.finish();
  return draft.place_new(path);
}

}  // namespace tinworm::output
