#include "painting/measure.hpp"

#include <map>
#include <memory>
#include <string>
#include <tuple>

#include "painting/lettering.hpp"

namespace tinworm::painting {

scene::Measure measure() {
  using Asked = std::tuple<std::string, scene::Font, double>;
  auto known = std::make_shared<std::map<Asked, scene::Extent>>();
  return [known](std::string_view text, scene::Font font, double size_pt) {
    const auto [at, is_new] = known->try_emplace(Asked{text, font, size_pt});
    if (is_new) at->second = lay_out(text, font, size_pt).extent;
    return at->second;
  };
}

}  // namespace tinworm::painting
