// The words of a body plan, one table for the reader, the schema and the outputs.
#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "body/plan.hpp"

namespace tinworm::body {

template <typename Value>
struct Word {
  Value value;
  std::string_view word;
};

std::span<const Word<Construction>> construction_words();
std::span<const Word<Role>> role_words();
std::span<const Word<Joined>> joined_words();
std::span<const Word<Build>> build_words();
std::span<const Word<Carries>> carries_words();
std::span<const Word<Job>> job_words();
std::span<const Word<Side>> side_words();
std::span<const Word<Weight>> weight_words();
std::span<const Word<View>> view_words();
std::span<const Word<Layer>> layer_words();
std::span<const Word<Axis>> axis_words();

// The value a word stands for; none if it is not of the table.
template <typename Value>
std::optional<Value> value_of(std::string_view text, std::span<const Word<Value>> words) {
  for (const Word<Value>& entry : words)
    if (entry.word == text) return entry.value;
  return {};
}

}  // namespace tinworm::body
