// libjpeg as C++ can live with it: what the library complains of comes out as an exception.
#pragma once

#include <csetjmp>
#include <cstddef>
#include <cstdio>  // jpeglib.h leaves it to us

#include <jerror.h>
#include <jpeglib.h>

namespace tinworm::photos {

struct Failure {  // thrown
  int code = 0;   // of jerror.h, or too_many_scans
  char words[JMSG_LENGTH_MAX] = {};
};

constexpr int too_many_scans = -1;

// The library's error manager. What could spoil the picture is an error, even where the library
// only warns and goes on with grey.
class Trouble {
 public:
  Trouble();
  Trouble(const Trouble&) = delete;
  Trouble& operator=(const Trouble&) = delete;

  jpeg_error_mgr* manager() { return &parts_.manager; }

  // Calls `call`, which calls the library and makes nothing that has a destructor: an error jumps
  // out of it, to here, and is then thrown as Failure.
  template <class Call>
  void guard(const Call& call) {
    if (setjmp(parts_.back) != 0) throw parts_.failure;
    call();
  }

  // For a hook of ours that the library calls.
  [[noreturn]] static void leave(j_common_ptr jpeg, int code);

 private:
  struct Parts {
    jpeg_error_mgr manager;  // first, so that the library's pointer is ours
    std::jmp_buf back;
    Failure failure;
  } parts_{};

  static Parts& parts_of(j_common_ptr jpeg) { return *reinterpret_cast<Parts*>(jpeg->err); }
};

}  // namespace tinworm::photos
