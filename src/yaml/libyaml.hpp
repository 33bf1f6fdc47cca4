// libyaml's parser over a text, freed with the object.
#pragma once

#include <yaml.h>

#include <new>
#include <string_view>

namespace tinworm::yaml {

class Libyaml {
 public:
  // `source` must outlive the object. Throws std::bad_alloc.
  explicit Libyaml(std::string_view source) {
    if (!yaml_parser_initialize(&parser_)) throw std::bad_alloc();
    yaml_parser_set_encoding(&parser_, YAML_UTF8_ENCODING);
    yaml_parser_set_input_string(&parser_, reinterpret_cast<const unsigned char*>(source.data()),
                                 source.size());
  }
  ~Libyaml() { yaml_parser_delete(&parser_); }
  Libyaml(const Libyaml&) = delete;
  Libyaml& operator=(const Libyaml&) = delete;

  yaml_parser_t* get() { return &parser_; }
  const yaml_parser_t* operator->() const { return &parser_; }

 private:
  yaml_parser_t parser_;
};

}  // namespace tinworm::yaml
