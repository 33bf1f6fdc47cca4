// Reader and schema agree: the same files, the same spellings. Checked by Debian's
// python3-jsonschema, which shares nothing with our readers.
#include <array>
#include <cstdio>
#include <string>

#include <gtest/gtest.h>

#include "paths.hpp"

namespace tinworm::schema {
namespace {

TEST(Agreement, OfReaderAndSchema) {
  const std::string command = "/usr/bin/python3 -B " + source_folder() +
                              "/tests/schema/agreement.py " + program_file() + " 2>&1";
  FILE* const pipe = popen(command.c_str(), "r");
  ASSERT_NE(pipe, nullptr);
  std::string said;
  std::array<char, 4096> part;
  while (const std::size_t read = fread(part.data(), 1, part.size(), pipe))
    said.append(part.data(), read);
  EXPECT_EQ(pclose(pipe), 0) << "are python3-jsonschema and python3-yaml installed?";
  EXPECT_TRUE(said.ends_with("\nagreed\n")) << said;
  fputs(said.c_str(), stdout);
}

}  // namespace
}  // namespace tinworm::schema
