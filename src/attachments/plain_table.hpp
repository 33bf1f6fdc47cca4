// Whether a PDF has its objects in one plain table (ISO 32000-1, 7.5.4 and 7.5.5). Other forms are
// as good, but to read them much must be unpacked first, be it a gigabyte of nothing.
#pragma once

#include <string>

#include "attachments/attachments.hpp"

namespace tinworm::attachments {

// Reads the ends of the file and not what lies between. The refusal's reason where it isn't so.
tl::expected<void, Refusal> has_plain_table(const std::string& path);

}  // namespace tinworm::attachments
