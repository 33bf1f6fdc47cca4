// Small surveys of the two-door saloon, each with what a practitioner would tell its owner: how bad
// it is, how bad it could be, the first places in his order. Common practice; the answers were
// written before any of them was run.
#pragma once

#include <string>
#include <vector>

#include "weighing/result.hpp"

namespace tinworm::weighing {

struct JudgedCase {
  const char* name;
  const char* why;
  Verdict verdict, could_be;
  std::vector<int> first;  // zones of the worst places, in order
  bool any_order = false;
  const char* zones;      // entries; insides that they don't name were scoped
  const char* seen = "";  // instead of all structure bare
  const char* gaps = "";
};

std::vector<JudgedCase> cases_of_a_practitioner();
std::vector<JudgedCase> cases_of_our_own();
std::vector<JudgedCase> cases_of_a_welder();

}  // namespace tinworm::weighing
