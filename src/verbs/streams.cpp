#include "verbs/streams.hpp"

#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>

#include "output/descriptor.hpp"
#include "output/file_error.hpp"
#include "yaml/characters.hpp"

namespace tinworm::verbs {

void Streams::print(std::string_view text) const {
  output::write_all(results, text, "standard output");
}

void Streams::complain(std::string_view text) const {
  try {
    output::write_all(messages, yaml::shown_lines(text), "standard error");
  } catch (const output::FileError&) {
    // There is nobody to tell; the exit status still does.
  }
}

void Streams::tell(std::string_view text) const {
  if (!quiet) complain(text);
}

output::TextStyle Streams::style(bool no_colour) const {
  output::TextStyle style;
  if (::isatty(results) != 1) return style;
  style.terminal = true;
  winsize size{};
  constexpr int narrowest = 60;  // a table makes no sense in less
  if (::ioctl(results, TIOCGWINSZ, &size) == 0 && size.ws_col > 0) {
    style.width = std::max<int>(narrowest, size.ws_col);
  }
  const char* said_no = std::getenv("NO_COLOR");  // https://no-color.org: set and not empty
  style.bold = !no_colour && (said_no == nullptr || *said_no == '\0');
  return style;
}

}  // namespace tinworm::verbs
