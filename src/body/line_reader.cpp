#include "body/line_reader.hpp"

#include "body/option_reader.hpp"

namespace tinworm::body {
namespace {

Line read_line(Context& context, const yaml::Node& node, std::string_view view) {
  const auto what = fmt::format("a line of the {} view", view);
  yaml::MapReader map(node, context.problems, what);
  Line line;
  line.weight = one_of(context, map.required("weight"), "the weight of " + what, weight_words())
                    .value_or(Weight::light);
  line.layer = one_of(context, map.optional("sheet"), "the sheet of " + what, layer_words());
  if (auto drawn = shape(context, map.required("path"), what)) {
    line.path = std::move(drawn->path);
    line.shapes.push_back(std::move(drawn->outline));
  }
  if (const yaml::Node* filled = map.optional("filled")) {
    if (yaml::scalar(*filled, context.problems, "the filling of " + what) == "paper")
      line.filled_with_paper = true;
    else if (filled->kind == yaml::Node::Kind::scalar)
      refuse_word(context, *filled, "the filling of " + what, {"paper"});
  }
  line.when = condition(context, map.optional("when"), "the condition of " + what);
  map.finish();
  return line;
}

// `right: {mirror: left}`: side views have the same figures on both sides.
void mirror_lines(Context& context, View view, const yaml::Node& node,
                  std::map<View, std::vector<Line>>& lines) {
  yaml::MapReader map(node, context.problems, fmt::format("the {} view", word(view)));
  const yaml::Node* from = map.required("mirror");
  map.finish();
  if (!from) return;
  const std::string_view twin = yaml::scalar(*from, context.problems, "the view that is mirrored");
  if (twin.empty()) return;
  if (view != View::right || twin != "left")
    return context.refuse({from->place, "only the right view can mirror another, the left",
                           from->text, "right: {mirror: left}", ""});
  const auto left = lines.find(View::left);
  if (left == lines.end())
    return context.refuse({from->place, "the right view mirrors a left view that has no lines", "",
                           "", "write the lines of the left view"});
  lines[View::right] = left->second;
}

}  // namespace

std::map<View, std::vector<Line>> read_lines(Context& context, const yaml::Node* node) {
  std::map<View, std::vector<Line>> lines;
  if (!node) return lines;
  yaml::MapReader map(*node, context.problems, "the line work");
  for (const Word<View>& view : view_words()) {
    const yaml::Node* list = map.optional(view.word);
    if (!list) continue;
    if (list->kind == yaml::Node::Kind::map) {
      mirror_lines(context, view.value, *list, lines);
      continue;
    }
    for (const yaml::Node& item :
         items(context, list, fmt::format("the lines of the {} view", view.word)))
      lines[view.value].push_back(read_line(context, item, view.word));
  }
  map.finish();
  return lines;
}

}  // namespace tinworm::body
