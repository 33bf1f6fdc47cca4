#include <gtest/gtest.h>

#include "yaml/node.hpp"

namespace tinworm::yaml {
namespace {

std::string read_car(std::string_view source) {
  const auto node = parse(source);
  if (!node) return to_text(node.error(), "f", source);
  Problems problems;
  MapReader car(*node, problems, "the car");
  if (const Node* name = car.required("name")) scalar(*name, problems, "the name");
  car.optional("built");
  car.optional("built");
  car.finish();
  return to_text(problems, "f", source);
}

TEST(MapReader, TakesWhatItAskedFor) {
  EXPECT_EQ(read_car("name: Wherry\nbuilt: 1967\n"), "");
  EXPECT_EQ(read_car("name: Wherry\n"), "");
  EXPECT_EQ(read_car("name: ''\n"), "");
}

TEST(MapReader, NamesWhatIsWrong) {
  struct {
    std::string_view source, text;
  } const cases[] = {
      {"built: 1967\n", "f:1:1: the car lacks \"name\" (add `name: …`)\nbuilt: 1967\n^\n"},
      {"name:\n",
       "f:1:1: \"name\" has no value (give it a value or leave the key out)\nname:\n^\n"},
      {"{name: a, built: }\n",
       "f:1:11: \"built\" has no value (give it a value or leave the key out)\n"
       "{name: a, built: }\n          ^\n"},
      {"name: Null\n",
       "f:1:1: \"name\" has no value (\"Null\" unquoted means nothing: quote it if the word is "
       "meant, "
       "or leave the key out)\nname: Null\n^\n"},
      {"name: a\nbiult: 1967\nowner: b\n",
       "f:2:1: the car has no such key (found \"biult\"; allowed: name, built; did you mean "
       "\"built\"?)\nbiult: 1967\n^\n"
       "f:3:1: the car has no such key (found \"owner\"; allowed: name, built)\nowner: b\n^\n"},
      {"- a\n",
       "f:1:1: the car is a list (allowed: keys with values; write it as `key: value`, one to a "
       "line, or {key: value, …})\n- a\n^\n"},
      {"a\n",
       "f:1:1: the car is a single value (found \"a\"; allowed: keys with values; write it as "
       "`key: "
       "value`, one to a line, or {key: value, …})\na\n^\n"},
      {"name: [a]\n", "f:1:7: the name is a list (allowed: a single value)\nname: [a]\n      ^\n"},
      {"name: {a: 1}\n",
       "f:1:7: the name is keys with values (allowed: a single value)\nname: {a: 1}\n      ^\n"},
  };
  for (const auto& [source, text] : cases) EXPECT_EQ(read_car(source), text);
}

}  // namespace
}  // namespace tinworm::yaml
