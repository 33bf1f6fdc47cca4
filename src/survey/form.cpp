#include "survey/form.hpp"

#include <algorithm>

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "body/walk_round.hpp"
#include "survey/field.hpp"
#include "survey/inside.hpp"
#include "survey/position.hpp"
#include "survey/written.hpp"

namespace tinworm::survey {
namespace {

constexpr std::size_t line_width = 100;

template <class Word>
std::string choices() {
  return fmt::format("{}", fmt::join(words<Word>(), " | "));
}

// "probe: stops | dents | goes-in", for each field that has words.
template <class Of>
std::vector<std::string> word_lines(const std::vector<Field<Of>>& fields) {
  std::vector<std::string> lines;
  for (const Field<Of>& field : fields)
    if (field.facts.writing == Writing::word || field.facts.writing == Writing::words)
      lines.push_back(fmt::format(
          "{}: {}{}", field.facts.key,
          field.facts.alone == Alone::no ? fmt::format("{} ", field.facts.key) : std::string(),
          fmt::join(field.facts.words(), " | ")));
  return lines;
}

class FormWriter {
 public:
  FormWriter(const body::Plan& plan, const Form& form) : plan_(plan), form_(form) {}

  FormLines write() {
    head();
    car();
    visit();
    habits();
    seen();
    add("");
    add("zones:");
    words_to_know();
    for (const body::Leg& leg : body::walk_round(plan_)) {
      add("");
      add(fmt::format("  # ---- {} ----", leg.title));
      for (const int number : leg.zones) zone(*plan_.zone(number));
    }
    own_zones();
    rest();
    return std::move(lines_);
  }

 private:
  void add(std::string text) { lines_.push_back({std::move(text), 0, {}}); }

  // `#  key: value   # hint`, the hints below each other
  void blank(std::string_view text, std::string_view hint = {}) {
    live(fmt::format("#{}", text), hint);
  }
  void live(std::string_view text, std::string_view hint) {
    constexpr std::size_t hints_at = 32;
    add(hint.empty() ? std::string(text) : fmt::format("{:<{}}  # {}", text, hints_at - 2, hint));
  }

  // A remark of many words, over as many lines as it takes.
  void remark(std::string_view indent, std::string_view text) {
    std::string line = fmt::format("{}#", indent);
    const std::size_t start = line.size();
    std::size_t at = 0;
    while (at < text.size()) {
      const std::size_t end = std::min(text.find(' ', at), text.size());
      const std::string_view one = text.substr(at, end - at);
      if (line.size() > start && line.size() + 1 + one.size() > line_width) {
        add(line);
        line = fmt::format("{}#", indent);
      }
      line += fmt::format(" {}", one);
      at = end + 1;
    }
    add(line);
  }

  void head() {
    remark("", fmt::format("A survey to fill in: {}, in the order of a walk round the car.",
                           plan_.title));
    remark(
        "",
        "Take away the # at the start of each line you fill in; what stays behind one was not "
        "recorded. A zone that \"seen\" names nowhere counts as not seen. `tinworm check` on this "
        "file tells what is wrong and what is missing.");
    if (form_.before) {
      remark("", fmt::format("Names, stations, references and repairs are those of the survey of "
                             "{}; its readings stand behind each place, to compare.",
                             form_.before->visit.date.text()));
    }
    add("survey: 1");
    add(fmt::format("body: {}", form_.before ? written_body()
                                             : fmt::format("{} {}", plan_.name, plan_.version)));
    live(form_.units == quantity::Units::inch ? "units: inch" : "units: mm", "mm | inch");
  }

  std::string written_body() const {
    const std::string& text = form_.before->body_text;
    return text.find_first_of(":#\"'") == std::string::npos ? text : written(text);
  }

  void car() {
    const Car before = form_.before ? form_.before->car : Car{};
    add("car:");
    add(fmt::format("  name: {}", written(form_.car)));
    if (before.built)
      add(fmt::format("  built: {}", *before.built));
    else
      blank("  built:", "the year");
    blank("  odometer:", before.odometer_km
                             ? fmt::format("61200 mi, 98500 km; last time {}", before.odometer)
                             : "61200 mi, 98500 km");
    if (before.colour.empty())
      blank("  colour:");
    else
      add(fmt::format("  colour: {}", written(before.colour)));
    private_key("chassis-number", before.chassis_number);
    private_key("engine-number", before.engine_number);
    private_key("registration", before.registration);
    private_key("owner", before.owner);
  }

  void private_key(std::string_view key, const std::string& value) {
    constexpr std::string_view hint = "private: on no picture and no listing";
    if (value.empty())
      blank(fmt::format("  {}:", key), hint);
    else
      live(fmt::format("  {}: {}", key, written(value)), hint);
  }

  void visit() {
    add("visit:");
    live(fmt::format("  date: {}", form_.date.text()), "a month or a year alone will do");
    blank("  reason:", choices<Reason>());
    blank("  by:", "printed on the owner's papers only");
    blank("  interest: none", "any interest of yours in a sale of this car");
    blank("  place:", "private");
    blank("  weather: dry", choices<Weather>());
    blank("  leave: [carpets, underseal]", "what the owner let you lift, scrape or probe");
  }

  void habits() {
    const Kept kept = form_.before ? form_.before->kept : Kept{};
    const std::string use(kept.use ? word(*kept.use) : word(Use::all_weather));
    const std::string air(kept.air ? word(*kept.air) : word(Air::c3));
    blank(fmt::format("kept: {{use: {}, air: {}}}", use, air),
          fmt::format("{}use: {}; air: C1 to C5, CX (ISO 9223); waxed: 2023-09",
                      form_.before && (kept.use || kept.air) ? "as last time; " : "",
                      choices<Use>()));
    const MetalGauge gauge = form_.before ? form_.before->gauge : MetalGauge{};
    blank("gauges:");
    blank(fmt::format("  metal: {{{}uncertainty: {:g} mm, coating: {}}}",
                      gauge.name.empty() ? "" : fmt::format("name: {}, ", written(gauge.name)),
                      gauge.uncertainty_mm.value_or(0.05), word(gauge.coating)),
          fmt::format("one standard deviation; {}", choices<Coating>()));
    if (form_.before && !form_.before->photos.name.empty()) {
      const PhotoFolder& photos = form_.before->photos;
      blank(fmt::format("photos: {{folder: {}, name: {}}}", written(photos.folder),
                        written(photos.name)),
            "a folder of its own for this visit; a photo is then just its number");
    } else if (form_.numbered_photos) {
      live("photos: {folder: photos, name: \"IMG_{}.jpg\"}", "a photo is then just its number");
    } else {
      blank("photos: {folder: photos, name: \"IMG_{}.jpg\"}", "a photo is then just its number");
    }
    blank(fmt::format("tools: [{}]", fmt::join(words<Tool>(), ", ")), "what was used");
    fitted();
    blank("summary:", "your own words for the first page, up to 600 letters");
    blank("gaps:", "the best single sign of a weak middle");
    if (!form_.before || form_.before->gaps.empty())
      blank("  - {where: door rear edge, side: left, wheels: 4.5 mm, lift: 3.0 mm}",
            "kind: " + choices<GapKind>());
    else
      for (const Gap& gap : form_.before->gaps)
        blank(
            fmt::format("  - {{where: {}, {}wheels: , lift: }}", written(gap.where), kept_of(gap)),
            fmt::format("last time: {} on its wheels, {} on the lift", gap_text(gap.wheels_mm),
                        gap_text(gap.lift_mm)));
  }

  static std::string kept_of(const Gap& gap) {
    const std::string side = gap.side ? fmt::format("side: {}, ", body::word(*gap.side)) : "";
    const std::string kind =
        gap.kind == GapKind::gap ? "" : fmt::format("kind: {}, ", word(gap.kind));
    return side + kind;
  }

  // Options of the body, as last time where they were told: they don't change from visit to visit.
  void fitted() {
    if (plan_.options.empty()) return;
    std::vector<std::string> known, choices;
    for (const body::Option& option : plan_.options) {
      choices.push_back(fmt::format("{}: {}", option.name, fmt::join(option.choices, " | ")));
      if (!form_.before) continue;
      const auto told = form_.before->fitted.find(option.name);
      if (told != form_.before->fitted.end())
        known.push_back(fmt::format("{}: {}", told->first, told->second));
    }
    const std::string hint = fmt::format("{}", fmt::join(choices, "; "));
    if (known.empty())
      blank(fmt::format("fitted: {{{}: {}}}", plan_.options.front().name,
                        plan_.options.front().choices.front()),
            hint);
    else
      live(fmt::format("fitted: {{{}}}", fmt::join(known, ", ")), hint);
  }

  static std::string gap_text(const std::optional<double>& gap_mm) {
    return gap_mm ? fmt::format("{:g} mm", *gap_mm) : "not taken";
  }

  void seen() {
    add("");
    live("seen:", "how each zone was seen; numbers and ranges with spaces between");
    blank("  bare: 51-58 61", "metal to the eye");
    blank("  coated: 41-44", "through sound paint; fresh or thick underseal is hidden");
    blank("  part: {13: 60 %}");
    blank("  scope:", "seen through a scope, not measured");
    blank("  tap:", "felt and heard only: not seen");
    blank("  hidden: {71 72: carpet glued down}");
    std::vector<std::string> missing;
    if (form_.before) {
      for (const auto& [number, how] : form_.before->seen)
        if (how.word == SeenWord::not_fitted) missing.push_back(fmt::format("{}", number));
    }
    if (missing.empty())
      blank("  not-fitted:");
    else
      add(fmt::format("  not-fitted: {}", fmt::join(missing, " ")));
  }

  void words_to_know() {
    remark("  ", "One place on one line, parts between commas in any order, free words anywhere:");
    remark("  ", "  - rear end: pitting, firm, 180x60, metal .81 .78 .84, pit .31, photo 14 15");
    for (const std::string& line : word_lines(finding_fields())) remark("  ", line);
    remark("  ", "also: hole 14x9, 5 holes to 30, crack 30");
    remark("  ", "of repairs:");
    for (const std::string& line : word_lines(repair_fields())) remark("  ", line);
    remark("  ", "`none` is a place where sound metal was measured: the next survey needs it.");
  }

  std::string title(const body::Zone& zone) const {
    const std::string also = zone.also.empty() ? "" : fmt::format(" ({})", zone.also);
    const std::string side =
        zone.side() == body::Side::centre ? "" : fmt::format(", {}", body::word(zone.side()));
    return fmt::format("{} {}{}{}: {}, {}, {:g} mm sheet", zone.number, zone.name, also, side,
                       body::word(zone.role), body::word(zone.joined), zone.sheet_mm);
  }

  void hints(const body::Zone& zone) {
    add("");
    remark("  ", title(zone));
    if (!zone.starts.empty()) remark("  ", "rust starts: " + zone.starts);
    if (!zone.hides.empty())
      remark("  ", fmt::format("usually worse behind it: {}", fmt::join(zone.hides, " ")));
    if (!zone.joins.empty()) remark("  ", fmt::format("joined to: {}", fmt::join(zone.joins, " ")));
    if (const body::Opening* opening = plan_.opening(zone.opening))
      remark("  ", fmt::format("to look behind it: {} ({:g} min)", opening->how, opening->minutes));
    std::vector<std::string> mounts;
    for (const body::Mount& mount : plan_.mounts) {
      const bool here = std::find(mount.on.begin(), mount.on.end(), zone.number) != mount.on.end();
      if (here && body::under_near_rule(mount.carries)) mounts.push_back(mount.what);
    }
    if (!mounts.empty())
      remark("  ", fmt::format("measure here: it carries the {}", fmt::join(mounts, ", the ")));
  }

  // How it was seen last time, and what was written of the zone as a whole.
  void last_look(int number) {
    std::vector<std::string> parts;
    if (const auto how = form_.before->seen.find(number);
        how != form_.before->seen.end() && how->second.word) {
      const Seen& seen = how->second;
      std::string text(word(*seen.word));
      if (seen.word == SeenWord::part) text += fmt::format(" {:.0f} %", 100 * seen.share);
      if (!seen.reason.empty()) text += ", " + seen.reason;
      parts.push_back(text);
    }
    if (const auto entry = form_.before->zones.find(number); entry != form_.before->zones.end()) {
      const Zone& zone = entry->second;
      if (zone.inside) parts.push_back("inside " + inside_text(zone));
      if (zone.drains) parts.push_back("drains " + drains_text(zone));
      if (!zone.film_um.empty()) parts.push_back(fmt::format("film {}", films_text(zone)));
      if (!zone.note.empty()) parts.push_back(one_line(zone.note));
    }
    if (!parts.empty()) remark("  ", fmt::format("last time: {}", fmt::join(parts, "; ")));
  }

  static std::string one_line(std::string text) {
    for (char& c : text)
      if (c == '\n' || c == '\t') c = ' ';
    return text;
  }

  // A spot's signs and its note; a repair's likewise.
  static std::string with_note(std::string text, const std::string& note) {
    return note.empty() ? text : fmt::format("{}; {}", text, one_line(note));
  }

  void zone(const body::Zone& zone) {
    hints(zone);
    if (form_.before) last_look(zone.number);
    if (const auto filled = form_.filled.find(zone.number); filled != form_.filled.end()) {
      add(fmt::format("  {}:", zone.number));
      lines_.insert(lines_.end(), filled->second.begin(), filled->second.end());
      return;
    }
    const Zone none;
    const Zone* before = &none;
    if (form_.before) {
      const auto entry = form_.before->zones.find(zone.number);
      if (entry != form_.before->zones.end()) before = &entry->second;
    }
    blank(fmt::format("  {}:", zone.number));
    const bool has_inside = zone.build == body::Build::box || zone.build == body::Build::layered;
    if (has_inside) {
      blank("    inside:", choices<Inside>());
      blank("    drains:", choices<Drains>());
    }
    if (zone.role == body::Role::skin) blank("    film:", "coating in um: 140 155 150");
    entry_lines(*before, zone.role != body::Role::skin, station_names(zone));
  }

  static std::vector<std::string> station_names(const body::Zone& zone) {
    std::vector<std::string> names;
    for (const body::Station& station : zone.stations) names.push_back(station.name);
    return names;
  }

  // What every zone has, of the plan's or of the survey's own.
  void entry_lines(const Zone& before, bool measured, std::vector<std::string> places) {
    if (!before.reference_mm.empty())
      blank(fmt::format("    reference: {}", readings(before.reference_mm)), "kept from last time");
    else if (measured)
      blank("    reference:", "sound metal of the same sheet, three readings: 1.02 1.00 1.01");
    if (before.reference_coating)
      blank(fmt::format("    reference-coating: {}", word(*before.reference_coating)));
    if (!before.marks.empty()) {
      blank("    mark:", "how to find the measured places again; kept from last time");
      for (const Mark& mark : before.marks)
        blank(fmt::format("      {}: {}", written(mark.where), written(mark.how)));
    } else if (measured) {
      blank("    mark: {where: 25 above the seam}", "how to find a measured place again");
    }
    if (before.sheet_mm) blank(fmt::format("    sheet: {:g} mm", *before.sheet_mm));
    blank("    found:");
    for (const Spot& spot : before.found) {
      blank(fmt::format("      - {}:{}", written(spot.name), position(spot)),
            "last time: " + with_note(findings_line(spot), spot.note) + mark_of(before, spot.name));
      std::erase(places, spot.name);
    }
    for (const std::string& name : places) blank(fmt::format("      - {}:", written(name)));
    if (places.empty() && before.found.empty()) blank("      - where:");
    if (before.repairs.empty()) return;
    blank("    repairs:", "say at each how it is now: " + choices<Now>());
    for (const Repair& repair : before.repairs)
      blank("      - " + kept_line(repair), last_state(repair));
  }

  static std::string mark_of(const Zone& zone, const std::string& where) {
    const auto mark = std::ranges::find(zone.marks, where, &Mark::where);
    return mark == zone.marks.end() ? "" : "; to be found: " + one_line(mark->how);
  }

  // A place that no station gives is kept as it was written.
  template <class Of>
  static std::string position(const Of& of) {
    if (of.at_station || !of.at.known()) return "";
    return " at " + position_text(of.at);
  }

  // Where it is, what was done; how it is and what it reads are this visit's.
  static std::string kept_line(const Repair& repair) {
    const std::string at = position(repair);
    const std::string line = repair_line(repair) + (at.empty() ? "" : "," + at);
    return repair.name.empty() ? line : fmt::format("{}: {}", written(repair.name), line);
  }

  static std::string last_state(const Repair& repair) {
    std::string text = "last time: " + std::string(word(repair.now));
    if (!repair.metal_mm.empty()) text += ", metal " + readings(repair.metal_mm);
    return with_note(text, repair.note);
  }

  void own_zones() {
    add("");
    remark("  ", "What the body plan doesn't know: own-a to own-z");
    if (!form_.before || form_.before->own.empty()) {
      blank("  own-a:");
      blank("    name:");
      blank("    role: local", "main | local | skin");
      blank("    side: left", "left | right | centre");
      blank("    seen:", choices<SeenWord>());
      blank("    found:");
      blank("      - where:");
      return;
    }
    for (const OwnZone& own : form_.before->own) {
      blank(fmt::format("  {}:", own.key));
      blank(fmt::format("    name: {}", written(own.name)));
      blank(fmt::format("    role: {}", body::word(own.role)));
      blank(fmt::format("    side: {}", body::word(own.side)));
      if (own.view) blank(fmt::format("    view: {}", body::word(*own.view)));
      if (own.at.known()) blank("    at: " + position_text(own.at));
      if (own.carries) blank(fmt::format("    carries: {}", body::word(*own.carries)));
      blank("    seen:", choices<SeenWord>());
      entry_lines(own.zone, true, {});
    }
  }

  void rest() {
    add("");
    blank("also:", "what else the owner must know");
    if (!form_.before || form_.before->also.empty())
      blank("  - {what: tyres, code: \"0301\", say: sidewalls cracked, when: before-use}",
            choices<When>() + " | a date | 65000 mi; " + choices<Matter>());
    else
      for (const Also& item : form_.before->also)
        blank(fmt::format("  - {{what: {}, say: }}", written(item.what)),
              fmt::format("last time: {}{}{}", item.code, item.code.empty() ? "" : " ",
                          one_line(item.say)));
    blank("opened:", "after work: what the cut showed");
    blank("  51: {rear end: {date: 2025-09, metal: .40, say: membrane gone}}");
    blank("price: {asked: 9500 EUR, sound: 14000 EUR}", "private");
  }

  const body::Plan& plan_;
  const Form& form_;
  FormLines lines_;
};

}  // namespace

FormLines form_lines(const body::Plan& plan, const Form& form) {
  return FormWriter(plan, form).write();
}

std::string text_of(const FormLines& lines) {
  std::string text;
  for (const FormLine& line : lines) text += line.text + "\n";
  return text;
}

}  // namespace tinworm::survey
