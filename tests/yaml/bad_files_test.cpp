#include "bad_cases.hpp"
#include "yaml/node.hpp"

namespace tinworm::yaml {
namespace {

TEST(BadFiles, OfYamlAreRefusedInThePinnedWords) {
  expect_bad_files("yaml", 60, [](std::string_view source) {
    const auto parsed = parse(source);
    return parsed ? Problems{} : parsed.error();
  });
}

}  // namespace
}  // namespace tinworm::yaml
