#include "body/mount_reader.hpp"

#include "body/mirror.hpp"
#include "body/option_reader.hpp"

namespace tinworm::body {
namespace {

bool is_mirrored(Context& context, const yaml::Node* node, const Mount& mount, bool placed) {
  if (!node) return false;
  const auto what = fmt::format("`mirrored` of the mount {}", mount.what);
  const std::string_view word = yaml::scalar(*node, context.problems, what);
  if (word.empty()) return false;
  if (word != "true") {
    context.refuse({node->place, what + " is not a known word", node->text, "true",
                    "leave it out where the mount exists once"});
    return false;
  }
  if (placed && mount.at.y_mm == 0)
    context.refuse(
        {node->place,
         fmt::format("the mount {} is mirrored but lies on the centre line (y = 0)", mount.what),
         "", "", "take `mirrored` out, or give the y it has on the left"});
  return true;
}

}  // namespace

std::vector<Mount> read_mounts(Context& context, const yaml::Node* node) {
  std::vector<Mount> mounts;
  for (const yaml::Node& item : items(context, node, "`mounts`")) {
    yaml::MapReader map(item, context.problems, "a mount");
    Mount mount;
    mount.place = item.place;
    mount.what = text(context, map.required("what"), "what a mount is");
    const auto of = [&](std::string_view key) {
      return fmt::format("the {} of the mount {}", key, mount.what);
    };
    mount.carries = one_of(context, map.required("carries"), of("load"), carries_words())
                        .value_or(Carries::body);
    const auto at = point3(context, map.required("at"), of("place"));
    mount.at = at.value_or(geometry::Point3{});
    mount.on = zones(context, map.required("on"), fmt::format("`on` of the mount {}", mount.what));
    mount.into =
        zones(context, map.optional("into"), fmt::format("`into` of the mount {}", mount.what));
    mount.when = condition(context, map.optional("when"), of("condition"));
    const bool twice = is_mirrored(context, map.optional("mirrored"), mount, at.has_value());
    map.finish();
    mounts.push_back(mount);
    if (twice) mounts.push_back(mirrored(mount));
  }
  return mounts;
}

}  // namespace tinworm::body
