#include "photos/libjpeg.hpp"

namespace tinworm::photos {
namespace {

constexpr int few_stray_bytes = 16;  // cameras leave some before the end: common practice

// Warnings that leave the picture as it was taken.
bool harmless(const jpeg_error_mgr& manager) {
  switch (manager.msg_code) {
    case JWRN_ADOBE_XFORM:
    case JWRN_JFIF_MAJOR:
    case JWRN_NOT_SEQUENTIAL:
      return true;
    case JWRN_EXTRANEOUS_DATA:
      return manager.msg_parm.i[0] <= few_stray_bytes && manager.msg_parm.i[1] == JPEG_EOI;
    default:
      return false;
  }
}

}  // namespace

Trouble::Trouble() {
  jpeg_std_error(&parts_.manager);
  parts_.manager.error_exit = [](j_common_ptr jpeg) { leave(jpeg, jpeg->err->msg_code); };
  parts_.manager.emit_message = [](j_common_ptr jpeg, int level) {
    if (level < 0 && !harmless(*jpeg->err)) leave(jpeg, jpeg->err->msg_code);
  };
  parts_.manager.output_message = [](j_common_ptr) {};
}

void Trouble::leave(j_common_ptr jpeg, int code) {
  Parts& parts = parts_of(jpeg);
  parts.failure.code = code;
  parts.manager.format_message(jpeg, parts.failure.words);
  std::longjmp(parts.back, 1);
}

}  // namespace tinworm::photos
