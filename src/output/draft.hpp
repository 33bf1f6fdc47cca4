// A file that is being written under a name of its own, until it takes the place it is for.
#pragma once

#include <sys/types.h>

#include <string>
#include <string_view>

#include "output/descriptor.hpp"

namespace tinworm::output {

// A new file in the folder of `target`, named after it with a point before. Gone with the object
// unless it took a place. Its methods throw FileError that names `path`, the target as the user
// wrote it.
class Draft {
 public:
  // For whom it may be read before `own` says: as the system has it for new files, or by its owner
  // alone.
  enum class Open { as_new_files, to_its_owner };
  Draft(const std::string& target, std::string path, Open open);
  Draft(const Draft&) = delete;
  Draft& operator=(const Draft&) = delete;
  ~Draft();

  void add(std::string_view bytes);
  void own(uid_t owner, gid_t group, mode_t mode);  // as the file it is to replace
  void finish();                                    // on the disk and closed

  // Once finished, and once only: puts it there, whatever was there.
  void replace(const std::string& target);
  // The same, but false where anything is there already, a link too, which stays as it is.
  bool place_new(const std::string& target);

 private:
  friend void remove_drafts_with_the_program();
  int create(const std::string& target, Open open);
  void strike_out();         // of the list
  static void remove_all();  // from a signal's handler
  static void end_by(int signal);

  static Draft* on_disk_;  // the first of a list; a signal's handler reaches nothing but globals
  std::string path_, name_;
  Draft* next_ = nullptr;
  bool placed_ = false;
  Descriptor file_;
};

// From now on INT, TERM and HUP, where they aren't ignored, take every draft with them as they end
// the program. For the program's start.
void remove_drafts_with_the_program();

[[noreturn]] void refuse_write(const std::string& path, int error);  // an errno

}  // namespace tinworm::output
