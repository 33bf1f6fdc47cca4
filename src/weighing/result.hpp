// What a survey comes to: all that any output needs, computed once. Outputs compute nothing.
// Lengths mm, films µm, fractions and shares 0 to 1.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "body/plan.hpp"
#include "metal/pits.hpp"
#include "metal/uncertainty.hpp"
#include "rules/rules.hpp"
#include "survey/survey.hpp"
#include "weighing/advice.hpp"

namespace tinworm::weighing {

enum class Verdict { not_known, leave_alone, treat, mend, keep_parked };  // worse is greater
enum class Step {
  not_seen,
  sound,
  bloom,
  pitted,
  thin,
  weak,
  holed
};  // worse is greater from sound on
enum class Evidence { not_seen, looked, felt, measured };
// How a place bears on a mount, following its load: near it, in a part welded to one that it stands
// on, or in such a part itself. maybe: its own place isn't known. Worse is greater.
enum class Near { no, maybe, within_radius, into_mount, on_mount };

std::string_view word(Verdict);      // "keep-parked", "leave-alone": as in JSON
std::string_view sentence(Verdict);  // "keep it parked until mended": as on paper
std::string_view word(Step), word(Evidence), word(Near);  // "not-seen": as in JSON

struct Span {  // low <= value <= high
  double low = 0;
  double value = 0;
  double high = 0;
  auto operator<=>(const Span&) const = default;
};

enum class SpanKind {
  interval,
  envelope
};  // 95 % by the GUM; least, likely, most by common practice
enum class BaselineFrom { reference, pair_reference, survey_sheet, plan_sheet, none };
std::string_view word(SpanKind), word(BaselineFrom);

struct MetalLeft {
  Span shown;    // as measured: the value may be over 1, the low end is not under 0
  Span weighed;  // cut to [0, 1], after hand, tap, probe, pits and coating
  SpanKind kind = SpanKind::envelope;
  std::optional<double> mean_mm, least_mm;  // of the readings
  int readings = 0;
  std::optional<double> baseline_mm;
  BaselineFrom baseline_from = BaselineFrom::none;
  // Under the likely deepest pit, and under the deepest that pits over equal patches leave open:
  // the same where nothing was estimated.
  std::optional<double> pit_left, pit_left_low;
  // Of pits over equal patches: whether they speak for the whole place. None: no patches or no
  // size.
  std::optional<metal::Extrapolation> pits_over_place;
  std::vector<metal::Component> budget;
  std::optional<double> degrees_of_freedom;  // effective; none: infinite or no interval
  std::vector<std::string> remarks;          // "the hand says worse than the gauge"
};

// The mount that a place bears on most.
struct Bearing {
  Near near = Near::no;  // never maybe
  std::string mount;
  body::Carries carries = body::Carries::body;
  double distance_mm = 0;
  bool doubled = false;  // its part has a doubler
};

// What was seen or felt at a place, as the verdict asks for it.
struct Signs {
  bool hole = false;     // of any size, a pinhole too
  bool pinhole = false;  // a small hole in sound metal
  double hole_mm = 0;    // the greater direction of the largest
  bool gives = false, breaks = false;
  bool thick_coat = false;  // the magnet holds badly
  bool alone = false;       // nothing but the hole is recorded of the place
  std::optional<double> crack_mm;
  bool judged_likely_new = false;  // a blister, bleed, seam or dull note and no reading
};

struct Spot {
  int zone = 0;     // 0: an own zone, see `own`
  std::string own;  // key of an own zone
  std::string name;
  int index = 0;           // in the survey zone's `found`, of a repair in its `repairs`
  bool is_repair = false;  // a repair that can't be relied on, isn't known, or rusts again
  bool found = false;      // rust or damage found here; else a station with sound metal
  std::string rust;        // word; empty if none was given
  // At the likely metal left, at its low end (never better) and at its high end (never worse).
  Step step = Step::sound, step_low = Step::sound, step_high = Step::sound;
  Evidence evidence = Evidence::looked;
  Near near = Near::no;
  std::string near_what;  // the mount that it bears on most: "front spring hanger"
  double near_mm = 0;
  Bearing bearing, may_bear;                   // for certain; where it is at worst
  std::optional<double> tank_mm, may_tank_mm;  // from a tank's strap, on a part that carries it
  Signs signs;
  MetalLeft metal;
  // Of the place without its hole, its stuffing or its crack: the metal beside.
  Span beside{1, 1, 1};
  Step beside_step = Step::sound, beside_step_low = Step::sound;
  // One wall of a box whose others were seen near by, insides too, and are better than thin.
  bool one_wall = false, one_wall_at_worst = false;
  bool section_gone = false, section_may_go = false;  // of the load box whose wall it is
  double damage = 0;                                  // of the place, at the likely metal left
  double share_of_length = 0;                         // f, at the likely metal left
  Span weight;                                        // D = damage x (0.4 + 0.6 f)
  double counts = 1;                                  // w: 1 main or near, 0.5 local, 0 skin
  int rank = 0;                                       // 1 is worst; 0: nothing found here
  survey::Position at;
  std::optional<survey::Size> size;
  bool size_assumed = false;
  bool size_of_holes = false;       // none was recorded: several holes in a row along the zone
  std::vector<survey::Size> holes;  // as recorded, largest first; empty: none, or none measured
  std::optional<survey::Stuffed> stuffed;
  bool by_measure_or_hand = false;
  bool beside_by_measure_or_hand = false;  // of the metal beside its hole, crack or stuffing
  bool too_thick = false;                  // readings over one sheet
  bool contradict = false;                 // its readings contradict each other, or the film
  bool bound_not_sound = false;            // readings that are only an upper bound, and not sound
  bool sheet_assumed = false;              // readings against the plan's sheet alone
};

struct Repair {
  int zone = 0;
  std::string own;
  std::string text;              // "let-in, seam weld, 2021-05"
  std::optional<bool> reliable;  // none: not known
  std::string why;               // in words
  bool now_assumed = false;
  bool treatment = false;  // no repair of metal
};

struct Film {
  double median_um = 0, least_um = 0, greatest_um = 0;
  std::string reading;     // factory, repainted, heavy, filler-likely
  bool off_scale = false;  // the greatest is only what the gauge goes to: the coat is thicker
};

struct Zone {
  int number = 0;  // 0 for own zones
  std::string own;
  std::string name;
  body::Side side = body::Side::centre;
  body::Role role = body::Role::skin;
  survey::Seen seen;
  bool fitted = true;
  double seen_share = 0;  // of its area, for coverage
  bool measured = false;
  std::string inside;  // scoped, not-seen, or empty where there is none
  Evidence evidence = Evidence::not_seen;
  Step step = Step::not_seen, step_low = Step::not_seen, step_high = Step::not_seen;
  std::string near;         // mount that stands here or within reach, or empty
  bool on_mount = false;    // it stands here
  bool into_mount = false;  // it stands on a part welded to this one
  // Least low, least likely and least high of its spots. None: not seen.
  std::optional<MetalLeft> metal;
  std::optional<double> rusted_share;
  std::optional<int> iso4628_3, astm_d610;
  Span weight;  // D of the worst spot with its ends
  std::optional<double> damage;
  double share = 0;  // of the shell burden
  std::optional<Film> film;
  std::vector<Spot> spots;
  std::vector<Repair> repairs;
};

struct Reason {
  int zone = 0;  // 0: the whole car or an own zone
  std::string own;
  std::string spot;
  std::string text;  // what, with its figure
  std::string rule;  // "into-mount"
  std::string source;
};

struct Coverage {
  double area_share = 0, measured_share = 0;
  bool any = false;
};

struct Burden {
  std::optional<double> value;  // none: see why
  double low = 0, high = 0;
  std::string why;
};

struct OpenUp {
  int zone = 0;
  std::string own;
  std::string rule;
  std::string why;
  Verdict could_become = Verdict::mend;
  int minutes = 0;       // until one can look; by how it is covered
  std::string opening;   // "carpet up"; one opening may show several zones; empty: none is named
  bool carries = false;  // a mount of brakes, steering, suspension, belts or towing stands on it
  // The structure burden's ends if it is opened: the high one if nothing worse is found than is
  // taken to be there, the low one if it is rusted away.
  double structure_high_if_no_worse = 0, structure_low_if_gone = 0;
};
struct NotSeen {
  int zone = 0;  // 0: an own zone
  std::string why;
  std::string own;  // key of an own zone
};

// A wall's part in the section at one place along a box.
struct WallLeft {
  int zone = 0;
  double width_mm = 0, sheet_mm = 0;  // of the whole layer there
  double gone_mm = 0;                 // of the width, covered by weak, holed or breaking places
  double left = 1;                    // metal left of the layer, 0 to 1

  double area_mm2() const { return width_mm * sheet_mm; }
};

// What is left of a box's wall metal at the place along it where least is.
struct SectionLeft {
  double from_mm = 0, to_mm = 0;  // that place
  double limit = 0;               // gone under this
  Span left{1, 1, 1};             // low: by the ends of metal left and what was only judged
  std::vector<WallLeft> walls;    // at the likely figure, in the plan's order
  bool all_layers = false;        // every layer weak, holed or breaking near one place
  bool gone = false, may_go = false;

  double area_mm2() const;       // of all walls, whole
  double left_area_mm2() const;  // what is left of it
};

struct BoxResult {
  std::string name;
  std::optional<Span> twist_kept, bending_kept;
  std::string withheld;                     // why there is no figure
  std::optional<SectionLeft> section = {};  // none: nothing known of its walls
};

struct Result {
  body::PlanPtr body;
  survey::Survey survey;
  std::string file;        // the survey's name, safe to show, without folders, which may be private
  std::string sha256;      // of its bytes
  std::string named;       // as on the command line, safe to show: for messages, in no output
  rules::Rules constants;  // what it was weighed by
  std::string rules = "default";           // or the rules file, where it changes anything
  std::string rules_name;                  // its own name, where it has one
  std::vector<std::string> rules_changed;  // "near-radius 250 mm (default 300 mm)"
  Verdict verdict = Verdict::not_known;
  Verdict could_be = Verdict::not_known;
  bool open_up_first = false;
  std::vector<Reason> reasons;       // what was found, all of the verdict's level
  std::vector<Reason> open_reasons;  // what wasn't seen or was only judged
  // What would make it "mend" by itself, where the verdict is worse.
  std::vector<Reason> also_to_mend;
  Burden structure, skin, shell;
  double one_zone_gone = 0;  // structure burden of one main zone rusted away on this body
  Coverage main, local, skin_seen;
  std::vector<Zone> zones;  // by number, own zones last in file order
  std::vector<BoxResult> boxes;
  std::vector<OpenUp> open_up;
  std::vector<NotSeen> not_seen;
  std::vector<Advice> advice;  // what could change the verdict first
  std::string caution;

  const Zone* zone(int number) const;
  std::vector<const Spot*> ranked() const;  // spots with a rank, worst first
};

}  // namespace tinworm::weighing
