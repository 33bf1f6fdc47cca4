// Digits and letters of ASCII, the same whatever language the machine speaks.
#pragma once

#include <string>
#include <string_view>

namespace tinworm::quantity {

constexpr bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

constexpr char lower_case(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

// Capitals A to Z made small; every other byte as it is.
inline std::string lower_case(std::string_view text) {
  std::string lower(text);
  for (char& c : lower) c = lower_case(c);
  return lower;
}

}  // namespace tinworm::quantity
