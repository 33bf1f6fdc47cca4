#include "geometry/path.hpp"

#include <array>
#include <charconv>
#include <cmath>
#include <system_error>

#include <fmt/core.h>

namespace tinworm::geometry {
namespace {

constexpr double most = 1e6;
constexpr std::string_view commands = "MLHVCSQTAZ, upper or lower case";
constexpr std::string_view range = "0, or a figure from 1e-300 to 1e6 in size";

bool is_digit(char c) {
  return c >= '0' && c <= '9';
}
bool is_space(char c) {
  return c == ' ' || c == '\t' || c == '\n' || c == '\f' || c == '\r';
}
bool starts_number(char c) {
  return is_digit(c) || c == '+' || c == '-' || c == '.';
}
bool is_lower(char c) {
  return c >= 'a' && c <= 'z';
}
char upper(char c) {
  return is_lower(c) ? static_cast<char>(c - 'a' + 'A') : c;
}

// How many numbers one use of a command takes; -1: no command.
int arguments_of(char command) {
  switch (upper(command)) {
    case 'Z':
      return 0;
    case 'H':
    case 'V':
      return 1;
    case 'M':
    case 'L':
    case 'T':
      return 2;
    case 'S':
    case 'Q':
      return 4;
    case 'C':
      return 6;
    case 'A':
      return 7;
    default:
      return -1;
  }
}

Point between(Point a, Point b, double t) {
  return {a.u + t * (b.u - a.u), a.v + t * (b.v - a.v)};
}

// One reading of one path. Mistakes are thrown and caught in parse_path: the grammar stays legible.
class Scanner {
 public:
  explicit Scanner(std::string_view data) : data_(data) {}

  Path run() {
    skip_space();
    if (at_end()) refuse(0, "the path is empty", "path data, M first");
    if (data_.substr(pos_, 4) == "none") refuse(pos_, "\"none\" draws nothing", "M first");
    if (upper(peek()) != 'M') {
      refuse(pos_, fmt::format("the path begins with {}", shown()), "M first");
    }
    while (!at_end()) {
      one_command();
      skip_space();
    }
    return std::move(path_);
  }

 private:
  using Arguments = std::array<double, 7>;

  [[noreturn]] static void refuse(std::size_t offset, std::string what, std::string_view allowed) {
    throw PathMistake{static_cast<int>(offset), std::move(what), std::string(allowed)};
  }

  bool at_end() const { return pos_ >= data_.size(); }
  char peek() const { return at_end() ? '\0' : data_[pos_]; }

  void skip_space() {
    while (!at_end() && is_space(peek())) ++pos_;
  }

  // The character at hand as a message shows it: whole in UTF-8, a control character by its number.
  std::string shown() const {
    const auto first = static_cast<unsigned char>(peek());
    if (first < 0x20 || first == 0x7f) return fmt::format("byte 0x{:02x}", first);
    std::size_t end = pos_ + 1;
    while (end < data_.size() && (static_cast<unsigned char>(data_[end]) & 0xc0) == 0x80) ++end;
    return fmt::format("\"{}\"", data_.substr(pos_, end - pos_));
  }

  std::string shown_from(std::size_t start) const {
    const std::string_view text = data_.substr(start, pos_ - start);
    return text.size() <= 20 ? fmt::format("\"{}\"", text)
                             : fmt::format("\"{}…\"", text.substr(0, 20));
  }

  std::size_t skip_digits() {
    const std::size_t start = pos_;
    while (is_digit(peek())) ++pos_;
    return pos_ - start;
  }

  // SVG 1.1 lets a number end in a point ("1."); SVG 2 no longer does. Read here, as in browsers.
  double number() {
    const std::size_t start = pos_;
    if (peek() == '+' || peek() == '-') ++pos_;
    std::size_t digits = skip_digits();
    if (peek() == '.') {
      ++pos_;
      digits += skip_digits();
    }
    if (digits == 0) refuse(start, fmt::format("{} is no number", shown_from(start)), "a number");
    if (upper(peek()) == 'E') {
      ++pos_;
      if (peek() == '+' || peek() == '-') ++pos_;
      if (skip_digits() == 0) {
        refuse(start, fmt::format("the exponent of {} has no digits", shown_from(start)),
               "a number such as 1.5e3");
      }
    }
    return value_of(start);
  }

  double value_of(std::size_t start) const {
    const std::size_t first = data_[start] == '+' ? start + 1 : start;
    double value = 0;
    const auto [end, error] = std::from_chars(data_.data() + first, data_.data() + pos_, value);
    if (error != std::errc() || !(std::abs(value) <= most)) {
      refuse(start, fmt::format("{} is out of range", shown_from(start)), range);
    }
    return value;
  }

  // In SVG's grammar a flag is one character, so that "01 1 1" after it may be packed.
  double flag() {
    if (at_end()) refuse(pos_, "the path ends before an arc flag", "0 or 1");
    if (peek() != '0' && peek() != '1') {
      refuse(pos_, fmt::format("{} is no arc flag", shown()), "0 or 1");
    }
    return data_[pos_++] - '0';
  }

  void separator() {
    skip_space();
    if (peek() != ',') return;
    ++pos_;
    skip_space();
  }

  Arguments arguments(char command) {
    Arguments read{};
    const int wanted = arguments_of(command);
    for (int i = 0; i < wanted; ++i) {
      if (i > 0) separator();
      if (upper(command) == 'A' && (i == 3 || i == 4)) {
        read[i] = flag();
        continue;
      }
      if (at_end() || arguments_of(peek()) >= 0) {
        refuse(pos_,
               fmt::format("a number is missing after {} ({} of {} read)", command, i, wanted),
               "a number");
      }
      if (!starts_number(peek())) refuse(pos_, fmt::format("{} is no number", shown()), "a number");
      read[i] = number();
    }
    return read;
  }

  // Whether the same command is meant again, its letter left out.
  bool repeats() {
    skip_space();
    if (peek() == ',') {
      ++pos_;
      skip_space();
      if (!starts_number(peek())) {
        refuse(pos_, "a number is missing after the comma", "a number, or no comma");
      }
    }
    return starts_number(peek());
  }

  void one_command() {
    char command = peek();
    if (arguments_of(command) < 0) refuse_command();
    ++pos_;
    if (upper(command) == 'Z') return close();
    skip_space();
    do {
      const std::size_t start = pos_;
      apply(command, arguments(command));
      if (std::abs(current_.u) > most || std::abs(current_.v) > most) {
        refuse(start, fmt::format("{} leads to {:.0f},{:.0f}", command, current_.u, current_.v),
               "points within 1e6 of 0,0");
      }
      if (command == 'M') command = 'L';
      if (command == 'm') command = 'l';
    } while (repeats());
  }

  [[noreturn]] void refuse_command() const {
    if (starts_number(peek())) refuse(pos_, "a number after Z, which takes none", commands);
    refuse(pos_, fmt::format("{} is no command", shown()), commands);
  }

  void close() {
    path_.emplace_back(Close{});
    current_ = start_;
    smooth_ = ' ';
  }

  void apply(char command, const Arguments& a) {
    const Point base = is_lower(command) ? current_ : Point{};
    const auto at = [&](int i) { return Point{base.u + a[i], base.v + a[i + 1]}; };
    switch (upper(command)) {
      case 'M':
        current_ = start_ = at(0);
        smooth_ = ' ';
        path_.emplace_back(MoveTo{current_});
        return;
      case 'L':
        return line(at(0));
      case 'H':
        return line({base.u + a[0], current_.v});
      case 'V':
        return line({current_.u, base.v + a[0]});
      case 'C':
        return cubic(at(0), at(2), at(4));
      case 'S':
        return cubic(reflected('C'), at(0), at(2));
      case 'Q':
        return quadratic(at(0), at(2));
      case 'T':
        return quadratic(reflected('Q'), at(0));
      default:
        return arc(a, at(5));
    }
  }

  // The first control point of a smooth curve: the last one mirrored if the command before was of
  // the same kind, else the current point (SVG 2, 9.3.6 and 9.3.7).
  Point reflected(char kind) const {
    if (smooth_ != kind) return current_;
    return {2 * current_.u - control_.u, 2 * current_.v - control_.v};
  }

  void line(Point to) {
    path_.emplace_back(LineTo{to});
    current_ = to;
    smooth_ = ' ';
  }

  void cubic(Point control1, Point control2, Point to) {
    path_.emplace_back(CubicTo{control1, control2, to});
    control_ = control2;
    current_ = to;
    smooth_ = 'C';
  }

  void quadratic(Point control, Point to) {
    path_.emplace_back(
        CubicTo{between(current_, control, 2.0 / 3), between(to, control, 2.0 / 3), to});
    control_ = control;
    current_ = to;
    smooth_ = 'Q';
  }

  // SVG 2, 9.5.1: no length draws nothing, a radius of 0 draws a line, signs of radii are dropped.
  void arc(const Arguments& a, Point to) {
    smooth_ = ' ';
    if (to == current_) return;
    const double rx = std::abs(a[0]), ry = std::abs(a[1]);
    if (rx == 0 || ry == 0) return line(to);
    path_.emplace_back(ArcTo{rx, ry, a[2], a[3] == 1, a[4] == 1, to});
    current_ = to;
  }

  std::string_view data_;
  std::size_t pos_ = 0;
  Path path_;
  Point current_, start_, control_;
  char smooth_ = ' ';  // C or Q after a cubic or a quadratic
};

}  // namespace

tl::expected<Path, PathMistake> parse_path(std::string_view data) {
  try {
    return Scanner(data).run();
  } catch (const PathMistake& mistake) {
    return tl::unexpected(mistake);
  }
}

}  // namespace tinworm::geometry
