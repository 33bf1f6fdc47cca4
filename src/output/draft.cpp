#include "output/draft.hpp"

#include <fcntl.h>
#include <poll.h>
#include <signal.h>
#include <sys/stat.h>
#include <unistd.h>

#include <atomic>
#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <utility>

#include <fmt/format.h>

#include "output/file_error.hpp"
#include "yaml/characters.hpp"

namespace tinworm::output {
namespace {

namespace fs = std::filesystem;

constexpr int ending[] = {SIGINT, SIGTERM, SIGHUP};

// Whoever holds it may change the list of drafts and their names on the disk. A signal's handler
// takes it and never gives it back, so that no draft comes after it.
std::atomic_flag busy;

sigset_t ending_signals() {
  sigset_t all;
  ::sigemptyset(&all);
  for (const int signal : ending) ::sigaddset(&all, signal);
  return all;
}

// Holds `busy`. The handler can't run on this thread meanwhile: it would wait for itself.
class Turn {
 public:
  Turn() {
    const sigset_t all = ending_signals();
    ::pthread_sigmask(SIG_BLOCK, &all, &before_);
    while (busy.test_and_set(std::memory_order_acquire)) busy.wait(true);
  }
  Turn(const Turn&) = delete;
  Turn& operator=(const Turn&) = delete;
  ~Turn() {
    busy.clear(std::memory_order_release);
    busy.notify_one();
    ::pthread_sigmask(SIG_SETMASK, &before_, nullptr);
  }

 private:
  sigset_t before_{};
};

// An errno, or 0. Where the file system can't rename so, a second name does the same: none is ever
// given that is taken.
int rename_to_new(const std::string& from, const std::string& to) {
  if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0) return 0;
  if (errno != EINVAL && errno != ENOSYS) return errno;
  if (::link(from.c_str(), to.c_str()) != 0) return errno;
  return ::unlink(from.c_str()) == 0 ? 0 : errno;
}

// A new file is made beside the old one, so its folder must let files be made.
[[noreturn]] void refuse_new(const std::string& path, const std::string& target, int error) {
  if (error != EACCES && error != EPERM) refuse_write(path, error);
  const fs::path parent = fs::path(target).parent_path();
  const std::string folder = parent.empty() ? "." : parent.string();
  throw FileError(path, fmt::format("no file may be made in its folder, {}", yaml::shown(folder)),
                  "write to another folder, or let yourself write to this one");
}

}  // namespace

Draft* Draft::on_disk_ = nullptr;

void refuse_write(const std::string& path, int error) {
  if (error == ENOENT) throw FileError(path, "its folder does not exist", "make the folder first");
  throw FileError(path, reason_of(error), cure_of(error));
}

Draft::Draft(const std::string& target, std::string path, Open open)
    : path_(std::move(path)), file_(create(target, open)) {}

Draft::~Draft() {
  if (placed_) return;
  const Turn turn;
  ::unlink(name_.c_str());
  strike_out();
}

int Draft::create(const std::string& target, Open open) {
  const fs::path folder = fs::path(target).parent_path();
  const std::string stem = "." + fs::path(target).filename().string().substr(0, 200);
  // The kernel takes off what the process's mask has: asking for the mask would set it, for every
  // thread.
  const mode_t mode = open == Open::as_new_files ? 0666 : 0600;
  constexpr int most = 100'000;  // names tried
  for (int i = 0; i < most; ++i) {
    name_ = (folder / fmt::format("{}-{}-{}", stem, ::getpid(), i)).string();
    const Turn turn;
    const int file = ::open(name_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, mode);
    if (file < 0 && errno == EEXIST) continue;
    if (file < 0) refuse_new(path_, target, errno);
    next_ = std::exchange(on_disk_, this);
    return file;
  }
  refuse_write(path_, EEXIST);
}

void Draft::strike_out() {
  Draft** at = &on_disk_;
  while (*at != this) at = &(*at)->next_;
  *at = next_;
}

void Draft::add(std::string_view bytes) {
  write_all(file_.number(), bytes, path_);
}

void Draft::own(uid_t owner, gid_t group, mode_t mode) {
  if (::fchown(file_.number(), owner, group) != 0 && errno != EPERM) {
    refuse_write(path_, errno);  // only root may give a file away; others own what they replace
  }
  if (::fchmod(file_.number(), mode) != 0) refuse_write(path_, errno);
}

void Draft::finish() {
  if (::fsync(file_.number()) != 0) refuse_write(path_, errno);
  if (const int error = file_.close()) refuse_write(path_, error);
}

void Draft::replace(const std::string& target) {
  const Turn turn;
  if (::rename(name_.c_str(), target.c_str()) != 0) refuse_new(path_, target, errno);
  strike_out();
  placed_ = true;
}

bool Draft::place_new(const std::string& target) {
  const Turn turn;
  const int error = rename_to_new(name_, target);
  if (error == EEXIST) return false;
  if (error != 0) refuse_new(path_, target, error);
  strike_out();
  placed_ = true;
  return true;
}

void Draft::remove_all() {
  for (const Draft* each = on_disk_; each != nullptr; each = each->next_) {
    ::unlink(each->name_.c_str());
  }
}

// Calls only what POSIX lets a handler call.
void Draft::end_by(int signal) {
  while (busy.test_and_set(std::memory_order_acquire)) ::poll(nullptr, 0, 1);
  remove_all();
  struct sigaction usual {};
  usual.sa_handler = SIG_DFL;
  ::sigaction(signal, &usual, nullptr);
  ::raise(signal);  // comes as soon as it is let through
  sigset_t it;
  ::sigemptyset(&it);
  ::sigaddset(&it, signal);
  ::pthread_sigmask(SIG_UNBLOCK, &it, nullptr);
}

void remove_drafts_with_the_program() {
  struct sigaction ours {};
  ours.sa_handler = Draft::end_by;
  ours.sa_mask = ending_signals();
  for (const int signal : ending) {
    struct sigaction before {};
    ::sigaction(signal, nullptr, &before);
    if (before.sa_handler != SIG_IGN) ::sigaction(signal, &ours, nullptr);
  }
}

}  // namespace tinworm::output
