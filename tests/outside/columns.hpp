// The published data sets under tests/outside/data: figures in two columns under one line of names.
#pragma once

#include <fstream>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

#include "paths.hpp"

namespace tinworm::outside {

inline std::vector<std::pair<double, double>> two_columns(const std::string& file) {
  std::ifstream in(source_folder() + "/tests/outside/data/" + file);
  std::string names;
  std::getline(in, names);
  std::vector<std::pair<double, double>> rows;
  char comma = 0;
  for (double first = 0, second = 0; in >> first >> comma >> second;)
    rows.emplace_back(first, second);
  if (rows.empty() || !in.eof()) throw std::runtime_error(file + " isn't two columns of figures");
  return rows;
}

}  // namespace tinworm::outside
