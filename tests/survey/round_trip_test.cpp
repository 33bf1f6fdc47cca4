// Whatever a survey may say reads the same from one line, the long form and a spreadsheet, and what
// `start --from` keeps is what was written: on random surveys.
#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <random>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "output/csv.hpp"
#include "survey/field.hpp"
#include "survey/field_sheet.hpp"
#include "survey/small_plan.hpp"
#include "survey/written.hpp"

namespace tinworm::survey {
namespace {

class Dice {
 public:
  explicit Dice(unsigned seed) : random_(seed) {}
  int below(int most) { return std::uniform_int_distribution<int>(0, most - 1)(random_); }
  bool one_in(int many) { return below(many) == 0; }
  template <class Word>
  Word any() {
    return static_cast<Word>(below(static_cast<int>(words<Word>().size())));
  }
  double hundredths(int low, int high) { return (low + below(high - low)) / 100.0; }
  std::vector<double> readings(int low, int high) {
    std::vector<double> all;
    for (int i = below(3); i >= 0; --i) all.push_back(hundredths(low, high));
    return all;
  }
  Size size() { return {10.0 + below(300), 10.0 + below(100)}; }
  std::string words_said() {
    const std::vector<std::string> said{
        "behind the plate", "wet, and cold", "beside: the seam", "\"so he says\"", "61",
        "left of centre"};
    return said.at(static_cast<std::size_t>(below(static_cast<int>(said.size()))));
  }

 private:
  std::mt19937 random_;
};

template <class Of>
void add_photos_and_note(Dice& dice, Of& of) {
  if (dice.one_in(3)) of.photos = {{"photos/a.jpg", {}}, {"photos/b-2.jpeg", {}}};
  if (dice.one_in(3)) of.note = dice.words_said();
}

Spot random_spot(Dice& dice, std::string name) {
  Spot spot;
  spot.name = std::move(name);
  spot.rust = dice.any<Rust>();
  if (dice.one_in(2)) spot.hand = dice.any<Hand>();
  if (dice.one_in(2)) spot.tap = dice.any<Tap>();
  if (dice.one_in(3)) spot.probe = dice.any<Probe>();
  if (dice.one_in(3)) spot.magnet = dice.any<Magnet>();
  if (dice.one_in(4)) spot.stuffed = dice.any<Stuffed>();
  if (dice.one_in(3)) spot.shapes = {Shape::dent, Shape::filler};
  if (dice.one_in(2)) spot.metal_mm = dice.readings(40, 120);
  if (dice.one_in(4)) spot.coating = dice.any<Coating>();
  if (dice.one_in(3)) spot.pit_mm = dice.readings(5, 40);
  if (dice.one_in(3)) spot.crack_mm = 5 + dice.below(40);
  if (dice.one_in(2)) spot.size = dice.size();
  if (dice.one_in(3)) spot.at = {1150.0 + dice.below(9), std::nullopt, 200.0};
  add_photos_and_note(dice, spot);
  return spot;
}

Repair random_repair(Dice& dice) {
  Repair repair;
  if (dice.one_in(2)) repair.name = "behind the seat";
  repair.kind = dice.any<RepairKind>();
  if (dice.one_in(2)) repair.joint = Joint::seam_weld;
  if (repair.joint && dice.one_in(2)) repair.other_joints = {Joint::stitch, Joint::no_weld};
  if (dice.one_in(3)) repair.sides = Sides::open_side;
  if (dice.one_in(3)) repair.layers = 2 + dice.below(5);
  if (dice.one_in(2)) repair.size = dice.size();
  if (dice.one_in(3)) repair.sheet_mm = dice.hundredths(60, 200);
  if (dice.one_in(3)) repair.metal_mm = dice.readings(60, 200);
  if (dice.one_in(2)) repair.date = PartialDate{2001 + dice.below(20), 1 + dice.below(12), 0};
  if (dice.one_in(2)) repair.beneath = dice.any<Beneath>();
  if (dice.one_in(2)) {
    repair.now = dice.any<Now>();
    repair.now_assumed = false;
  }
  if (dice.one_in(3)) repair.at = {std::nullopt, -700.0, 210.0 + dice.below(9)};
  add_photos_and_note(dice, repair);
  return repair;
}

Zone random_zone(Dice& dice) {
  Zone zone;
  if (dice.one_in(2)) zone.inside = dice.any<Inside>();
  if (zone.inside == Inside::part) zone.inside_share = (5 + 5 * dice.below(18)) / 100.0;
  if (dice.one_in(2)) zone.reference_mm = dice.readings(80, 120);
  if (dice.one_in(4)) zone.reference_coating = dice.any<Coating>();
  if (dice.one_in(3)) zone.sheet_mm = dice.hundredths(60, 200);
  if (dice.one_in(3)) zone.film_um = {140, 900.0 + dice.below(50)};
  if (dice.one_in(3)) {
    zone.drains_at = {{"front end", Drains::open}, {"rear end", dice.any<Drains>()}};
    zone.drains = zone.drains_at[1].drains;
  } else if (dice.one_in(3)) {
    zone.drains = dice.any<Drains>();
  }
  const std::vector<std::string> names{"rear end", "middle", "by the clip"};
  for (const std::string& name : names)
    if (dice.one_in(2)) zone.found.push_back(random_spot(dice, name));
  for (const Spot& spot : zone.found)
    if (dice.one_in(2)) zone.marks.push_back({spot.name, "25 above the seam, photo 31"});
  for (int i = dice.below(3); i > 0; --i) zone.repairs.push_back(random_repair(dice));
  if (dice.one_in(3)) zone.note = dice.words_said();
  return zone;
}

std::map<int, Zone> random_zones(unsigned seed) {
  Dice dice(seed);
  std::map<int, Zone> zones;
  for (const int number : {51, 52, 61, 13})
    if (dice.one_in(2)) zones[number] = random_zone(dice);
  return zones;
}

// As a value behind a key: free words in quotes where they need them.
std::string value(const FieldFacts& facts, const std::string& text) {
  return facts.writing == Writing::text ? written(text) : text;
}

template <class Of>
std::string long_form(const std::vector<Field<Of>>& fields, const Of& of, std::string_view indent) {
  std::string text;
  for (const Field<Of>& field : fields) {
    if (field.facts.writing == Writing::marks) continue;
    if (const std::string said = field.written(of); !said.empty())
      text += fmt::format("{}{}: {}\n", indent, field.facts.key, value(field.facts, said));
  }
  return text;
}

template <class Of>
std::string line_of(const std::vector<Field<Of>>& fields, const Of& of) {
  std::vector<std::string> parts;
  for (const Field<Of>& field : fields) {
    std::string said = field.written(of);
    if (said.empty()) continue;
    const FieldFacts& facts = field.facts;
    if (facts.writing == Writing::text) {
      const char quote = said.find('"') == std::string::npos ? '"' : '\'';
      said = quote + said + quote;
    } else if (facts.alone == Alone::no) {
      said = fmt::format("{} {}", facts.key, said);
    } else if (facts.writing == Writing::words) {
      for (std::size_t at = 0; (at = said.find(' ', at)) != std::string::npos; at += 2)
        said.replace(at, 1, ", ");
    }
    parts.push_back(said);
  }
  return fmt::format("{}", fmt::join(parts, ", "));
}

enum class Form { line, long_form };

// A remark with a quote or a colon in it makes the line one that YAML needs in quotes.
std::string as_scalar(const std::string& line) {
  std::string text = "'";
  for (const char c : line) text += c == '\'' ? "''" : std::string{c};
  return text + "'";
}

std::string yaml_of(const std::map<int, Zone>& zones, Form form) {
  std::string text =
      "survey: 1\nbody: two-door-saloon 1\ncar: {name: Wherry 1200}\nvisit: {date: 2025-04-12}\n"
      "zones:\n";
  for (const auto& [number, zone] : zones) {
    text += fmt::format("  {}:\n    seen: bare\n", number);
    text += long_form(zone_fields(), zone, "    ");
    if (!zone.marks.empty()) text += "    mark:\n";
    for (const Mark& mark : zone.marks)
      text += fmt::format("      {}: {}\n", written(mark.where), written(mark.how));
    if (!zone.found.empty()) text += "    found:\n";
    for (const Spot& spot : zone.found)
      text += form == Form::line ? fmt::format("      - {}: {}\n", spot.name,
                                               as_scalar(line_of(finding_fields(), spot)))
                                 : fmt::format("      - spot: {}\n{}", spot.name,
                                               long_form(finding_fields(), spot, "        "));
    if (!zone.repairs.empty()) text += "    repairs:\n";
    for (const Repair& repair : zone.repairs) {
      const std::string line = as_scalar(line_of(repair_fields(), repair));
      if (form == Form::line)
        text += repair.name.empty() ? fmt::format("      - {}\n", line)
                                    : fmt::format("      - {}: {}\n", repair.name, line);
      else
        text +=
            fmt::format("      -\n{}{}",
                        repair.name.empty() ? "" : fmt::format("        spot: {}\n", repair.name),
                        long_form(repair_fields(), repair, "        "));
    }
  }
  return text;
}

// Rows of a sheet: cells by their headings.
class Sheet {
 public:
  explicit Sheet(char between) : between_(between) { end_row(sheet_headings()); }

  template <class Of>
  void add(int zone, std::string_view kind, std::string_view station,
           const std::vector<Field<Of>>& fields, const Of& of) {
    std::map<std::string, std::string> cells{{"zone", std::to_string(zone)},
                                             {"kind", std::string(kind)},
                                             {"station", std::string(station)}};
    if (kind == "seen") cells["seen"] = "bare";
    for (const Field<Of>& field : fields) {
      const bool figures = field.facts.range != nullptr || field.facts.writing == Writing::position;
      std::string said = field.written(of);
      if (figures && between_ == ';') std::ranges::replace(said, '.', ',');
      if (!field.facts.heading.empty()) cells[std::string(field.facts.heading)] = said;
    }
    add(cells);
  }
  void add(const std::map<std::string, std::string>& cells) {
    std::vector<std::string> row;
    for (const std::string& heading : sheet_headings())
      row.push_back(cells.contains(heading) ? cells.at(heading) : "");
    end_row(row);
  }
  const std::string& text() const { return text_; }

 private:
  void end_row(const std::vector<std::string>& row) {
    for (std::size_t i = 0; i < row.size(); ++i) {
      std::string cell;
      for (const char c : row[i]) cell += c == '"' ? "\"\"" : std::string{c};
      text_ += fmt::format("{}\"{}\"", i == 0 ? "" : std::string{between_}, cell);
    }
    text_ += "\n";
  }
  char between_;
  std::string text_;
};

std::string csv_of(const std::map<int, Zone>& zones, char between) {
  Sheet sheet(between);
  for (const auto& [number, zone] : zones) {
    sheet.add(number, "seen", "", zone_fields(), zone);
    for (const Spot& spot : zone.found)
      sheet.add(number, "finding", spot.name, finding_fields(), spot);
    for (const Mark& mark : zone.marks)
      sheet.add({{"zone", std::to_string(number)}, {"station", mark.where}, {"mark", mark.how}});
    for (const Repair& repair : zone.repairs)
      sheet.add(number, "repair", repair.name, repair_fields(), repair);
  }
  return sheet.text();
}

template <class Of>
void forget_places(Of& of) {
  of.place = {};
  for (Photo& photo : of.photos) photo.place = {};
}

std::map<int, Zone> without_places(std::map<int, Zone> zones) {
  for (auto& [number, zone] : zones) {
    forget_places(zone);
    for (Spot& spot : zone.found) forget_places(spot);
    for (Repair& repair : zone.repairs) forget_places(repair);
  }
  return zones;
}

// Where a station's name places it and nothing else does.
template <class Of>
void stand(Of& of, const body::Zone& zone) {
  const auto station = std::ranges::find(zone.stations, of.name, &body::Station::name);
  if (of.at.known() || station == zone.stations.end()) return;
  of.at = {station->at.x_mm, station->at.y_mm, station->at.z_mm};
  of.at_station = true;
}

std::map<int, Zone> at_stations(std::map<int, Zone> zones) {
  for (auto& [number, zone] : zones) {
    const body::Zone& plan = *small_plan()->zone(number);
    for (Spot& spot : zone.found) stand(spot, plan);
    for (Repair& repair : zone.repairs) stand(repair, plan);
  }
  return zones;
}

std::map<int, Zone> read_yaml(const std::string& yaml) {
  const Reading reading = read_with_small_plan(yaml);
  EXPECT_TRUE(reading.survey) << yaml::to_text(reading.problems, "survey.yaml", yaml) << yaml;
  return reading.survey ? without_places(reading.survey->zones) : std::map<int, Zone>{};
}

std::map<int, Zone> read_sheet(const std::string& csv) {
  const auto records = csv_records(csv);
  EXPECT_TRUE(records);
  if (!records) return {};
  FieldSheet sheet = read_field_sheet(*records, *small_plan());
  EXPECT_EQ(to_text(sheet.problems, "sheet.csv"), "") << csv;
  survey::Form form;
  form.car = "Wherry 1200";
  form.date = {2025, 4, 12};
  form.filled = sheet.zones;
  return read_yaml(text_of(form_lines(*small_plan(), form)));
}

void expect_same(const std::map<int, Zone>& meant, const std::map<int, Zone>& read,
                 const std::string& text) {
  EXPECT_TRUE(meant == read) << text;
}

TEST(RoundTrip, LineLongFormAndSheetSayTheSame) {
  for (unsigned seed = 0; seed < 500 && !::testing::Test::HasFailure(); ++seed) {
    SCOPED_TRACE(seed);
    const auto zones = random_zones(seed);
    if (zones.empty()) continue;
    const auto meant = at_stations(zones);
    const std::string line = yaml_of(zones, Form::line);
    const std::string long_text = yaml_of(zones, Form::long_form);
    const std::string csv = csv_of(zones, seed % 2 == 0 ? ',' : ';');
    expect_same(meant, read_yaml(line), line);
    expect_same(meant, read_yaml(long_text), long_text);
    auto of_sheet = read_sheet(csv);
    auto filled = meant;  // a zone of which nothing is said has no rows worth an entry
    expect_same(filled, of_sheet, csv);
  }
}

// The lines of a form that hold what is kept, without the # before them.
std::string kept_lines(const std::string& form) {
  std::string text;
  bool in_zones = false, in_kept = false;
  std::size_t at = 0;
  while (at < form.size()) {
    const std::size_t end = form.find('\n', at);
    std::string line = form.substr(at, end - at);
    at = end + 1;
    in_zones = in_zones || line == "zones:";
    const bool key = line.starts_with("#    ") && line.size() > 5 && line[5] != ' ';
    if (key)
      in_kept = line.starts_with("#    reference: ") ||
                line.starts_with("#    reference-coating: ") || line.starts_with("#    sheet: ") ||
                line.starts_with("#    mark:") || line.starts_with("#    repairs:");
    const bool zone = line.starts_with("#  ") && line.size() > 3 && line[3] != ' ' &&
                      line.find("own-") == std::string::npos;
    const bool blank_key = key && (line.starts_with("#    reference:  ") ||
                                   line.find("{where: 25 above") != std::string::npos);
    if (blank_key) in_kept = false;
    if (in_zones && zone) {
      in_kept = false;
      text += line.substr(1) + "\n    seen: bare\n";
    } else if (in_zones && in_kept && line.starts_with("#    ")) {
      text += line.substr(1) + "\n";
    } else if (!in_zones || line == "zones:") {
      text += line + "\n";
    }
    if (line.starts_with("#also")) break;
  }
  return text;
}

// What a later visit finds out anew is not kept.
std::map<int, Zone> what_is_kept(const std::map<int, Zone>& zones) {
  std::map<int, Zone> kept;
  for (const auto& [number, zone] : zones) {
    Zone& one = kept[number];
    one.reference_mm = zone.reference_mm;
    one.reference_coating = zone.reference_coating;
    one.sheet_mm = zone.sheet_mm;
    one.marks = zone.marks;
    one.repairs = zone.repairs;
    for (Repair& repair : one.repairs) {
      repair.now = Now::sound;
      repair.now_assumed = true;
      repair.metal_mm.clear();
      repair.photos.clear();
      repair.note.clear();
    }
  }
  return kept;
}

TEST(RoundTrip, StartFromKeepsWhatDoesNotChange) {
  for (unsigned seed = 0; seed < 500 && !::testing::Test::HasFailure(); ++seed) {
    SCOPED_TRACE(seed);
    const auto zones = random_zones(seed);
    if (zones.empty()) continue;
    const Reading before = read_with_small_plan(yaml_of(zones, Form::line));
    ASSERT_TRUE(before.survey);
    survey::Form form;
    form.car = "Wherry 1200";
    form.date = {2029, 4, 12};
    form.before = &*before.survey;
    const std::string text = kept_lines(text_of(form_lines(*small_plan(), form)));
    auto read = read_yaml(text);
    std::erase_if(read, [&](const auto& each) { return !zones.contains(each.first); });
    expect_same(what_is_kept(at_stations(zones)), read, text);
  }
}

}  // namespace
}  // namespace tinworm::survey
