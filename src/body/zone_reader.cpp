#include "body/zone_reader.hpp"

#include <algorithm>
#include <array>
#include <map>

#include "body/mirror.hpp"
#include "geometry/area.hpp"

namespace tinworm::body {
namespace {

constexpr double mm2_per_m2 = 1e6;

// Grows from nothing to hold all that is put in, axis by axis.
class Extent {
 public:
  void add(Axis axis, geometry::Interval interval) {
    auto& known = axes_[static_cast<std::size_t>(axis)];
    if (!known) known = interval;
    known->low = std::min(known->low, interval.low);
    known->high = std::max(known->high, interval.high);
  }
  bool has(Axis axis) const { return axes_[static_cast<std::size_t>(axis)].has_value(); }
  geometry::Box3 box() const {
    return {axes_[0].value_or(geometry::Interval{}), axes_[1].value_or(geometry::Interval{}),
            axes_[2].value_or(geometry::Interval{})};
  }

 private:
  static_assert(static_cast<std::size_t>(Axis::up) + 1 == 3, "box() names them one by one");
  std::array<std::optional<geometry::Interval>, 3> axes_;
};

constexpr std::array letters{Word{Axis::along, "x"}, Word{Axis::across, "y"}, Word{Axis::up, "z"}};

class ZoneReader {
 public:
  ZoneReader(Context& context, const yaml::Node& node, int number, yaml::Place place)
      : context_(context), map_(node, context.problems, fmt::format("zone {}", number)) {
    zone_.number = number;
    zone_.place = place;
  }

  Zone read() {
    const std::size_t before = context_.problems.size();
    zone_.name = text(context_, map_.required("name"), of("name"));
    zone_.also = text(context_, map_.optional("also"), of("other name"));
    zone_.role = word(map_.required("role"), "role", role_words());
    zone_.joined = word(map_.required("joined"), "joined", joined_words());
    zone_.build = word(map_.required("build"), "build", build_words());
    zone_.runs = word(map_.required("runs"), "runs", axis_words());
    if (const yaml::Node* job = map_.optional("job"))
      zone_.job = one_of(context_, job, fmt::format("`job` of {}", name()), job_words())
                      .value_or(Job::other_part);
    zone_.sheet_mm = sheet_mm(context_, map_.required("sheet"), of("sheet"));
    const yaml::Node* area = map_.optional("area");
    zone_.area_m2 = area_m2(context_, area, of("area"));
    drawings(map_.required("drawn"));
    span(map_.optional("span"));
    stations(map_.optional("stations"));
    zone_.starts = text(context_, map_.optional("starts"), of("starts"));
    zone_.hides = zones(context_, map_.optional("hides"), fmt::format("`hides` of {}", name()));
    zone_.joins = zones(context_, map_.optional("joins"), fmt::format("`joins` of {}", name()));
    zone_.opening = text(context_, map_.optional("open"), of("opening"));
    zone_.doubler = doubler(map_.optional("doubler"));
    map_.finish();
    zone_.extent = extent_.box();
    if (!area) zone_.area_m2 = largest_outline_m2();
    if (context_.problems.size() == before) check_extent();
    return zone_;
  }

 private:
  std::string name() const { return fmt::format("zone {}", zone_.number); }
  std::string of(std::string_view key) const { return fmt::format("the {} of {}", key, name()); }

  template <typename Value>
  Value word(const yaml::Node* node, std::string_view key, std::span<const Word<Value>> words) {
    return one_of(context_, node, fmt::format("`{}` of {}", key, name()), words).value_or(Value{});
  }

  bool doubler(const yaml::Node* node) {
    if (!node) return false;
    const std::string_view word = yaml::scalar(*node, context_.problems, of("doubler"));
    if (word == "true" || word.empty()) return word == "true";
    context_.refuse({node->place, of("doubler") + " is not a known word", node->text, "true",
                     "leave it out where there is no second sheet"});
    return false;
  }

  void drawings(const yaml::Node* node) {
    if (!node) return;
    yaml::MapReader layers(*node, context_.problems, of("drawing"));
    for (const Word<Layer>& layer : layer_words()) {
      const yaml::Node* views = layers.optional(layer.word);
      if (!views) continue;
      yaml::MapReader paths(*views, context_.problems,
                            fmt::format("the {} of {}", layer.word, name()));
      for (const Word<View>& view : view_words()) {
        const bool framed = view.value == View::frame;
        if (framed && layer.value == Layer::skin) continue;
        if (const yaml::Node* path = paths.optional(view.word)) drawing(layer, view, *path);
      }
      paths.finish();
    }
    layers.finish();
  }

  void drawing(const Word<Layer>& layer, const Word<View>& view, const yaml::Node& node) {
    if (view.value == View::frame && context_.construction == Construction::unitary)
      context_.refuse({node.place,
                       fmt::format("{} is drawn in the frame view of a unitary body", name()), "",
                       "frame only where construction is separate-chassis", ""});
    const auto what = fmt::format("{}, {}, {}", name(), layer.word, view.word);
    auto drawn = shape(context_, &node, what);
    if (!drawn) return;
    const geometry::Rect bounds = geometry::bounds(drawn->outline);
    extent_.add(first_axis(view.value), bounds.u);
    extent_.add(second_axis(view.value), bounds.v);
    zone_.drawn.push_back(
        {layer.value, view.value, std::move(drawn->path), std::move(drawn->outline), node.place});
  }

  void span(const yaml::Node* node) {
    if (!node) return;
    yaml::MapReader axes(*node, context_.problems, of("span"));
    for (const Word<Axis>& axis : letters)
      if (const auto run = interval(context_, axes.optional(axis.word),
                                    fmt::format("the {} span of {}", axis.word, name())))
        extent_.add(axis.value, *run);
    axes.finish();
  }

  void stations(const yaml::Node* node) {
    if (!node) return;
    const yaml::MapReader names(*node, context_.problems, of("stations"));
    if (!names.is_map()) return;
    for (const yaml::Entry& entry : node->entries) {
      if (entry.key.find_first_of(",:") != std::string::npos)
        context_.refuse({entry.key_place, "a station's name holds a comma or a colon", entry.key,
                         "", "surveys write it before a colon: use plain words"});
      const auto what = fmt::format("the station {} of {}", entry.key, name());
      if (const auto at = point3(context_, &entry.value, what))
        zone_.stations.push_back({entry.key, *at, entry.key_place});
    }
  }

  double largest_outline_m2() const {
    double largest = 0;
    for (const Drawing& drawing : zone_.drawn)
      largest = std::max(largest, geometry::area(drawing.outline));
    return largest / mm2_per_m2;
  }

  void check_extent() {
    for (const Word<Axis>& axis : letters)
      if (!extent_.has(axis.value))
        context_.refuse({zone_.place,
                         fmt::format("no outline tells where {} lies in {}", name(), axis.word), "",
                         "", fmt::format("add `span: {{{}: [least, greatest]}}`", axis.word)});
  }

  Context& context_;
  yaml::MapReader map_;
  Zone zone_;
  Extent extent_;
};

// `52: {mirror: 51}` once 51 is read.
void mirror_zone(Context& context, const yaml::Entry& entry, int number,
                 std::map<int, Zone>& zones) {
  const auto what = fmt::format("zone {}", number);
  yaml::MapReader map(entry.value, context.problems, what);
  const yaml::Node* node = map.required("mirror");
  map.finish();
  if (!node) return;
  const std::string_view twin =
      yaml::scalar(*node, context.problems, fmt::format("the mirror of {}", what));
  if (twin.empty()) return;
  if (side_of(number) != Side::right)
    return context.refuse({node->place, fmt::format("{} can't be a mirror", what), node->text,
                           "mirror in right-hand zones, the even numbers from 42 to 98",
                           "write the left one out and mirror the right one"});
  const int pair = mirrored_number(number);
  if (zone_number(twin) != pair)
    return context.refuse({node->place, fmt::format("{} mirrors a zone that is not its pair", what),
                           node->text, fmt::format("{}", pair), ""});
  const auto original = zones.find(pair);
  if (original == zones.end())
    return context.refuse({node->place, fmt::format("{} mirrors a zone the plan lacks", what),
                           node->text, "", fmt::format("add zone {}", pair)});
  Zone zone = mirrored(original->second);
  zone.place = entry.key_place;
  zones.emplace(number, std::move(zone));
}

}  // namespace

Zones read_zones(Context& context, const yaml::Node* node) {
  Zones read;
  if (!node) return read;
  const yaml::MapReader map(*node, context.problems, "`zones`");
  std::map<int, Zone> zones;
  std::vector<std::pair<int, const yaml::Entry*>> mirrors;
  for (const yaml::Entry& entry : node->entries) {
    const auto number = zone_number(context, entry.key, entry.key_place, "this");
    if (!number) continue;
    read.named.insert(*number);
    if (entry.value.find("mirror"))
      mirrors.emplace_back(*number, &entry);
    else
      zones.emplace(*number, ZoneReader(context, entry.value, *number, entry.key_place).read());
  }
  for (const auto& [number, entry] : mirrors) mirror_zone(context, *entry, number, zones);
  if (map.is_map() && node->entries.empty())
    context.refuse({node->place, "the plan has no zones", "", "", "draw at least one"});
  for (auto& [number, zone] : zones) read.zones.push_back(std::move(zone));
  return read;
}

}  // namespace tinworm::body
