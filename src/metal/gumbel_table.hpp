// What the estimate of the deepest pit needs for each count of patches read: figures only, from
// tests/metal/gumbel_weights.py, which says how they are made.
//
// Source: best linear unbiased estimate, Lloyd 1952, Biometrika 39, 88, named from memory; that it
// suits few maxima, Shibata 1994, J. Res. NIST 99(4) 327.
#pragma once

#include <array>
#include <cstddef>

namespace tinworm::metal {

constexpr std::size_t fewest_patches = 5, most_patches = 20;

// Patches not read, rising: the bound is tabled for these.
constexpr std::array<double, 9> tabled_unread = {1, 2, 5, 10, 20, 50, 100, 200, 500};

struct GumbelRow {
  // Weight of each maximum, the smallest first; 0 beyond the count of patches.
  std::array<double, most_patches> location = {}, scale = {};
  // At each of tabled_unread: how many estimated scales the 97.5 % bound of the deepest pit lies
  // over the likely one.
  std::array<double, tabled_unread.size()> bound = {};
};

// Throws std::out_of_range outside fewest_patches to most_patches.
const GumbelRow& gumbel_row(std::size_t patches);

}  // namespace tinworm::metal
