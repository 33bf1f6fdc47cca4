#include "survey/field.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "survey/hole.hpp"
#include "survey/inside.hpp"
#include "survey/photo.hpp"
#include "survey/position.hpp"
#include "survey/value.hpp"
#include "survey/written.hpp"

namespace tinworm::survey {
namespace {

using yaml::MapReader;
using yaml::Node;

// A field that is a member of the same name, from how it is read and how it is written.
template <class Of, class Value, class Read, class Write>
Field<Of> member(FieldFacts facts, Value Of::*at, Read read, Write write) {
  return {std::move(facts),
          [at, read](Page& page, const Node& node, Of& of) { of.*at = read(page, node); },
          [at, write](const Of& of) { return write(of.*at); },
          [at](const Of& from, Of& to) { to.*at = from.*at; }};
}

// Writes a value that may be missing.
template <class Write>
auto if_told(Write write) {
  return [write](const auto& value) { return value ? std::string(write(*value)) : ""; };
}

template <class Of, class Word>
Field<Of> word_field(FieldFacts facts, std::optional<Word> Of::*at) {
  facts.writing = Writing::word;
  facts.terms = terms<Word>();
  const std::string what(facts.what.empty() ? facts.key : facts.what);
  return member(
      std::move(facts), at,
      [what](Page& page, const Node& node) { return word_of<Word>(page, node, what); },
      if_told([](Word value) { return word(value); }));
}

template <class Word>
std::string words_text(const std::vector<Word>& all) {
  std::vector<std::string_view> texts;
  for (const Word each : all) texts.push_back(word(each));
  return fmt::format("{}", fmt::join(texts, " "));
}

template <class Of>
Field<Of> readings_field(FieldFacts facts, const Range& range, std::vector<double> Of::*at) {
  facts.writing = Writing::readings;
  facts.range = &range;
  return member(
      std::move(facts), at,
      [&range](Page& page, const Node& node) { return readings_mm(page, node, range); }, readings);
}

template <class Of>
Field<Of> size_field(FieldFacts facts, std::optional<Size> Of::*at, decltype(size_mm)* read) {
  facts.writing = Writing::size;
  facts.range = &size_range;
  return member(std::move(facts), at, read, if_told(size_text));
}

template <class Of>
Field<Of> photo_field(FieldFacts facts, std::vector<Photo> Of::*at) {
  facts.writing = Writing::photos;
  return member(std::move(facts), at, read_photos, [](const std::vector<Photo>& photos) {
    std::vector<std::string_view> paths;
    for (const Photo& photo : photos) paths.push_back(photo.path);
    return fmt::format("{}", fmt::join(paths, " "));
  });
}

template <class Of>
Field<Of> note_field() {
  return member(
      {.key = "note", .meaning = "Free words.", .heading = "note"}, &Of::note,
      [](Page& page, const Node& node) { return text_of(page, node, "a note"); },
      [](const std::string& note) { return note; });
}

PitPatches read_pits(Page& page, const Node& node) {
  PitPatches pits;
  MapReader map(node, page.problems, "\"pits\"");
  if (const Node* each = map.required("each"))
    pits.each = hole_mm(page, *each).value_or(Size{});  // one figure: a square
  if (const Node* deepest = map.required("deepest"))
    pits.deepest_mm = readings_mm(page, *deepest, pit_range);
  map.finish();
  return pits;
}

Field<Spot> hole_field() {
  return {{.key = "hole",
           .meaning = "Size of the hole; of several, each or the largest with their number.",
           .writing = Writing::holes,
           .range = &size_range,
           .heading = "hole",
           .counts = Counts::yes,
           .examples = {"14x9", "20 15 8", "5 holes to 30"}},
          [](Page& page, const Node& node, Spot& spot) {
            Holes holes = read_holes(page, node);
            spot.hole = holes.largest;
            spot.other_holes = std::move(holes.others);
          },
          [](const Spot& spot) {
            return spot.hole ? holes_text(*spot.hole, spot.other_holes) : std::string();
          },
          [](const Spot& from, Spot& to) {
            to.hole = from.hole;
            to.other_holes = from.other_holes;
          }};
}

Field<Spot> crack_field() {
  return member(
      {.key = "crack",
       .meaning = "Its length.",
       .writing = Writing::length,
       .range = &crack_range,
       .heading = "crack",
       .counts = Counts::yes,
       .examples = {"30"}},
      &Spot::crack_mm,
      [](Page& page, const Node& node) { return length_mm(page, node, crack_range); },
      if_told([](double length_mm) { return fmt::format("{:g}", length_mm); }));
}

Field<Spot> pits_field() {
  return member(
      {.key = "pits",
       .meaning = "The deepest pit of each of several equal patches, for a statistic of pits.",
       .writing = Writing::pits,
       .counts = Counts::yes},
      &Spot::pits,
      [](Page& page, const Node& node) { return std::optional(read_pits(page, node)); },
      if_told([](const PitPatches& pits) {
        return fmt::format("deepest pit in each {}: {}", size_text(pits.each),
                           readings(pits.deepest_mm));
      }));
}

template <class Of>
Field<Of> position_field() {
  return member({.key = "at",
                 .meaning = "Not needed where the spot has a station's name.",
                 .writing = Writing::position,
                 .heading = "at"},
                &Of::at, read_position, position_text);
}

template <class Of>
Field<Of> sheet_field(std::string_view meaning) {
  return member({.key = "sheet",
                 .meaning = meaning,
                 .writing = Writing::sheet,
                 .range = &sheet_range,
                 .heading = "sheet",
                 .examples = {"1.1 mm", "20 SWG", "20 US"}},
                &Of::sheet_mm, sheet_mm,
                if_told([](double sheet_mm) { return fmt::format("{:g}", sheet_mm); }));
}

Field<Spot> shape_field() {
  return member(
      {.key = "shape",
       .meaning = "Out of shape, or filled: no rust, but a sign of what lies beneath.",
       .writing = Writing::words,
       .terms = terms<Shape>(),
       .heading = "shape",
       .alone = Alone::yes,
       .counts = Counts::yes},
      &Spot::shapes,
      [](Page& page, const Node& node) { return words_of_list<Shape>(page, node, "a shape"); },
      words_text<Shape>);
}

Field<Repair> joint_field() {
  return {{.key = "joint",
           .meaning = "How it is joined; in several ways where it is.",
           .what = "a joint",
           .writing = Writing::words,
           .terms = terms<Joint>(),
           .heading = "joint",
           .alone = Alone::yes,
           .sale = Sale::shown},
          [](Page& page, const Node& node, Repair& repair) {
            std::vector<Joint> all = words_of_list<Joint>(page, node, "a joint");
            if (all.empty()) return;
            repair.joint = all.front();
            repair.other_joints.assign(all.begin() + 1, all.end());
          },
          [](const Repair& repair) { return words_text(repair.joints()); },
          [](const Repair& from, Repair& to) {
            to.joint = from.joint;
            to.other_joints = from.other_joints;
          }};
}

Field<Repair> layers_field() {
  return member(
      {.key = "layers",
       .meaning = "How many sheets lie on one another.",
       .writing = Writing::count,
       .range = &layers_range,
       .heading = "layers",
       .sale = Sale::shown,
       .examples = {"3"}},
      &Repair::layers,
      [](Page& page, const Node& node) { return whole_number(page, node, layers_range); },
      if_told([](int layers) { return fmt::format("{}", layers); }));
}

Field<Repair> kind_field() {
  return {{.key = "kind",
           .meaning = "What was done.",
           .writing = Writing::word,
           .terms = terms<RepairKind>(),
           .heading = "repair",
           .alone = Alone::yes,
           .counts = Counts::yes,
           .sale = Sale::shown},
          [](Page& page, const Node& node, Repair& repair) {
            repair.kind = word_of<RepairKind>(page, node, "a kind of repair").value_or(repair.kind);
          },
          [](const Repair& repair) { return std::string(word(repair.kind)); },
          [](const Repair& from, Repair& to) { to.kind = from.kind; }};
}

Field<Repair> now_field() {
  return {
      {.key = "now",
       .meaning = "How the repair is today; sound if left out.",
       .writing = Writing::word,
       .terms = terms<Now>(),
       .heading = "now",
       .alone = Alone::yes,
       .sale = Sale::shown},
      [](Page& page, const Node& node, Repair& repair) {
        repair.now = word_of<Now>(page, node, "how a repair is now").value_or(Now::sound);
        repair.now_assumed = false;
      },
      [](const Repair& repair) { return repair.now_assumed ? "" : std::string(word(repair.now)); },
      [](const Repair& from, Repair& to) {
        to.now = from.now;
        to.now_assumed = from.now_assumed;
      }};
}

Field<Repair> date_field() {
  return member(
      {.key = "date",
       .meaning = "When it was done.",
       .writing = Writing::date,
       .heading = "date",
       .alone = Alone::yes,
       .sale = Sale::shown},
      &Repair::date,
      [](Page& page, const Node& node) { return past_date(page, node, "the date of a repair"); },
      if_told([](const PartialDate& day) { return day.text(); }));
}

Field<Zone> film_field() {
  return {{.key = "film",
           .meaning = "Thickness of paint and filler; over 2000 where the gauge goes no higher.",
           .writing = Writing::films,
           .range = &film_range,
           .heading = "film",
           .sale = Sale::shown},
          [](Page& page, const Node& node, Zone& zone) {
            quantity::Films films = films_um(page, node);
            zone.film_um = std::move(films.um);
            zone.film_off_scale = films.over_um.has_value();
          },
          films_text,
          [](const Zone& from, Zone& to) {
            to.film_um = from.film_um;
            to.film_off_scale = from.film_off_scale;
          }};
}

Field<Zone> inside_field() {
  return {{.key = "inside",
           .meaning = "For boxes and layers: whether the inside was looked into.",
           .writing = Writing::inside,
           .terms = terms<Inside>(),
           .heading = "inside",
           .examples = {"scoped", "part 40 %"}},
          [](Page& page, const Node& node, Zone& zone) { read_inside(page, node, zone); },
          [](const Zone& zone) { return inside_text(zone); },
          [](const Zone& from, Zone& to) {
            to.inside = from.inside;
            to.inside_share = from.inside_share;
          }};
}

Field<Zone> drains_field() {
  return {{.key = "drains",
           .meaning = "How the drain holes are, all of them or by place.",
           .writing = Writing::drains,
           .terms = terms<Drains>(),
           .heading = "drains",
           .examples = {"open", "front end blocked, rear end open"}},
          [](Page& page, const Node& node, Zone& zone) { read_drains(page, node, zone); },
          [](const Zone& zone) { return drains_text(zone); },
          [](const Zone& from, Zone& to) {
            to.drains = from.drains;
            to.drains_at = from.drains_at;
          }};
}

Field<Zone> marks_field() {
  return member(
      {.key = "mark", .meaning = "How to find a measured place again.", .writing = Writing::marks},
      &Zone::marks, read_marks, marks_text);
}

// What eye, hand and tools say in a word.
std::vector<Field<Spot>> fields_of_words() {
  using enum Counts;
  constexpr Alone alone = Alone::yes;
  constexpr Sale shown = Sale::shown;
  return {
      word_field({.key = "rust",
                  .meaning = "What is seen.",
                  .heading = "rust",
                  .alone = alone,
                  .counts = yes},
                 &Spot::rust),
      word_field({.key = "hand",
                  .meaning = "What a hard thumb says.",
                  .heading = "hand",
                  .alone = alone,
                  .counts = yes,
                  .sale = shown},
                 &Spot::hand),
      word_field({.key = "tap",
                  .meaning = "What a light tap says.",
                  .heading = "tap",
                  .alone = alone,
                  .counts = yes,
                  .sale = shown,
                  .on_paper = "tap "},
                 &Spot::tap),
      word_field({.key = "probe",
                  .meaning = "What a point says, with the owner's leave.",
                  .heading = "probe",
                  .counts = yes,
                  .sale = shown,
                  .on_paper = "probe "},
                 &Spot::probe),
      word_field({.key = "magnet",
                  .meaning = "Whether a magnet holds.",
                  .heading = "magnet",
                  .counts = yes,
                  .sale = shown,
                  .on_paper = "magnet "},
                 &Spot::magnet),
      word_field({.key = "stuffed",
                  .meaning = "What someone closed the hole with.",
                  .heading = "stuffed",
                  .counts = yes,
                  .on_paper = "stuffed with "},
                 &Spot::stuffed),
  };
}

// What was measured, and what goes with it.
std::vector<Field<Spot>> fields_of_figures() {
  using enum Counts;
  constexpr Alone alone = Alone::yes;
  constexpr Sale shown = Sale::shown;
  return {
      shape_field(),
      hole_field(),
      crack_field(),
      size_field({.key = "size",
                  .meaning = "Along and across the zone; one figure alone is along it.",
                  .heading = "size",
                  .alone = alone},
                 &Spot::size, size_mm),
      readings_field({.key = "metal",
                      .meaning = "Thickness of metal left, read at this spot.",
                      .heading = "readings",
                      .counts = yes,
                      .sale = shown},
                     metal_range, &Spot::metal_mm),
      word_field({.key = "coating",
                  .meaning = "Under the gauge at this spot, where it is otherwise than elsewhere.",
                  .heading = "coating"},
                 &Spot::coating),
      readings_field({.key = "pit",
                      .meaning = "Depth of pits from the rusted face around them.",
                      .heading = "pit",
                      .counts = yes,
                      .examples = {".31 .25"}},
                     pit_range, &Spot::pit_mm),
      pits_field(),
      photo_field({.key = "photo", .meaning = "", .heading = "photo"}, &Spot::photos),
      note_field<Spot>(),
  };
}

}  // namespace

std::vector<std::string> FieldFacts::words() const {
  std::vector<std::string> texts;
  for (const Term& term : terms) texts.emplace_back(term.word);
  return texts;
}

const std::vector<Field<Spot>>& finding_fields() {
  static const std::vector<Field<Spot>> fields = [] {
    std::vector<Field<Spot>> all{position_field<Spot>()};
    for (const auto& more : {fields_of_words(), fields_of_figures()})
      all.insert(all.end(), more.begin(), more.end());
    return all;
  }();
  return fields;
}

const std::vector<Field<Repair>>& repair_fields() {
  constexpr Alone alone = Alone::yes;
  constexpr Sale shown = Sale::shown;
  static const std::vector<Field<Repair>> fields = {
      position_field<Repair>(),
      kind_field(),
      joint_field(),
      word_field({.key = "sides",
                  .meaning = "Whether a side of it isn't welded.",
                  .what = "a repair's sides",
                  .heading = "sides",
                  .alone = alone,
                  .sale = shown},
                 &Repair::sides),
      layers_field(),
      size_field({.key = "size",
                  .meaning = "Along and across the zone; one figure alone is along it.",
                  .heading = "size",
                  .alone = alone,
                  .sale = shown},
                 &Repair::size, size_mm),
      sheet_field<Repair>("Thickness of the repair's own sheet when new."),
      readings_field({.key = "metal",
                      .meaning = "Thickness of metal, read on the repair.",
                      .heading = "readings",
                      .sale = shown},
                     metal_range, &Repair::metal_mm),
      date_field(),
      word_field({.key = "beneath",
                  .meaning = "What became of the rusted metal.",
                  .what = "what is beneath",
                  .heading = "beneath",
                  .alone = alone,
                  .sale = shown},
                 &Repair::beneath),
      now_field(),
      photo_field({.key = "photo", .meaning = "", .heading = "photo"}, &Repair::photos),
      note_field<Repair>(),
  };
  return fields;
}

const std::vector<Field<Zone>>& zone_fields() {
  static const std::vector<Field<Zone>> fields = {
      inside_field(),
      readings_field({.key = "reference",
                      .meaning = "Readings on sound metal of the same sheet.",
                      .heading = "reference",
                      .examples = {"1.02 1.00 1.01", "18 SWG"}},
                     reference_range, &Zone::reference_mm),
      word_field(
          {.key = "reference-coating",
           .meaning = "Under the gauge at the reference, where it is otherwise than elsewhere.",
           .heading = "reference-coating"},
          &Zone::reference_coating),
      sheet_field<Zone>("Thickness of the sheet when new, where it is known."),
      film_field(),
      drains_field(),
      marks_field(),
      photo_field({.key = "photos", .meaning = "", .heading = "photo"}, &Zone::photos),
      note_field<Zone>(),
  };
  return fields;
}

}  // namespace tinworm::survey
