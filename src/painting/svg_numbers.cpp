#include "painting/svg_numbers.hpp"

#include <array>
#include <charconv>
#include <cmath>

#include <fmt/format.h>

namespace tinworm::painting {
namespace {

bool starts_number(char letter) {
  return (letter >= '0' && letter <= '9') || letter == '-' || letter == '.';
}

std::string brief_number(double value) {
  std::string text = fmt::format("{:.2f}", value);
  while (text.back() == '0') text.pop_back();
  if (text.back() == '.') text.pop_back();
  return text == "-0" ? "0" : text;
}

// Numbers of a path's data rounded, blanks between a command and its numbers left out.
std::string brief_path(std::string_view data) {
  std::string text;
  for (std::size_t at = 0; at < data.size();) {
    if (starts_number(data[at])) {
      double value = 0;
      const auto [end, error] = std::from_chars(data.data() + at, data.data() + data.size(), value);
      if (error != std::errc()) return std::string(data);
      const bool after_number = !text.empty() && (starts_number(text.back()));
      if (after_number) text += ' ';
      text += brief_number(value);
      at = static_cast<std::size_t>(end - data.data());
    } else {
      if (data[at] != ' ') text += data[at];
      ++at;
    }
  }
  // Cairo moves back to where a ring began, with nothing to follow.
  const std::size_t last_move = text.rfind('M');
  if (last_move != std::string::npos && last_move > 0 &&
      text.find_first_of("LCZ", last_move) == std::string::npos)
    text.resize(last_move);
  return text;
}

// "rgb(53.505347%,52.319935%,51.418969%)" as "#898583"; as it is where it reads otherwise.
std::string brief_colour(std::string_view words) {
  constexpr std::string_view opening = "rgb(";
  std::array<double, 3> parts{};
  const char* at = words.data() + opening.size();
  const char* const end = words.data() + words.size();
  for (double& part : parts) {
    const auto [next, error] = std::from_chars(at, end, part);
    if (error != std::errc() || next == end || *next != '%') return std::string(words);
    at = next + 2;  // over "%," or "%)"
  }
  const auto byte = [](double percent) { return static_cast<int>(std::lround(percent * 2.55)); };
  return fmt::format("#{:02x}{:02x}{:02x}", byte(parts[0]), byte(parts[1]), byte(parts[2]));
}

// What is so in nearly every style, said once at the root.
constexpr std::string_view for_all =
    "fill=\"none\" stroke-linecap=\"round\" stroke-linejoin=\"round\" ";

// By SVG, or by what stands at the root.
bool taken_for_granted(std::string_view declaration) {
  for (const std::string_view given :
       {"fill-opacity:1", "stroke-opacity:1", "stroke-miterlimit:10", "stroke:none",
        "fill-rule:nonzero", "fill:none", "stroke-linecap:round", "stroke-linejoin:round"})
    if (declaration == given) return true;
  return false;
}

std::string brief_style(std::string_view style) {
  std::string text;
  while (!style.empty()) {
    const std::size_t end = std::min(style.find(';'), style.size());
    const std::string_view declaration = style.substr(0, end);
    style.remove_prefix(std::min(end + 1, style.size()));
    if (declaration.empty() || taken_for_granted(declaration)) continue;
    if (!text.empty()) text += ';';
    const std::size_t colour = declaration.find(":rgb(");
    if (colour == std::string_view::npos)
      text += declaration;
    else
      text += std::string(declaration.substr(0, colour + 1)) +
              brief_colour(declaration.substr(colour + 1));
  }
  return text;
}

}  // namespace

std::string brief_svg(std::string_view svg) {
  constexpr std::string_view root = "<svg ";
  struct Attribute {
    std::string_view opening;
    std::string (*brief)(std::string_view);
  };
  constexpr std::array<Attribute, 2> attributes{
      {{" d=\"", brief_path}, {" style=\"", brief_style}}};
  std::string text;
  text.reserve(svg.size() / 2);
  for (std::size_t at = 0; at < svg.size();) {
    std::size_t next = svg.size();
    const Attribute* found = nullptr;
    for (const Attribute& each : attributes) {
      const std::size_t here = svg.find(each.opening, at);
      if (here >= next) continue;
      next = here;
      found = &each;
    }
    text += svg.substr(at, next - at);
    if (found == nullptr) break;
    const std::size_t from = next + found->opening.size();
    const std::size_t end = std::min(svg.find('"', from), svg.size());
    text += found->opening;
    text += found->brief(svg.substr(from, end - from));
    at = end;
  }
  const std::size_t start = text.find(root);
  if (start != std::string::npos) text.insert(start + root.size(), for_all);
  return text;
}

}  // namespace tinworm::painting
