#include "weighing/words.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "weighing/zone_facts.hpp"

namespace tinworm::weighing {

const char* const standing_caution =
    "An aid to judgement, not a roadworthiness test or an engineer's report. Local law and "
    "licensed "
    "inspection decide. What wasn't seen is not known.";

std::string_view word(Verdict verdict) {
  switch (verdict) {
    case Verdict::not_known:
      return "not-known";
    case Verdict::leave_alone:
      return "leave-alone";
    case Verdict::treat:
      return "treat";
    case Verdict::mend:
      return "mend";
    case Verdict::keep_parked:
      return "keep-parked";
  }
  return "";
}

std::string_view sentence(Verdict verdict) {
  switch (verdict) {
    case Verdict::not_known:
      return "not known";
    case Verdict::leave_alone:
      return "leave alone";
    case Verdict::treat:
      return "to be treated";
    case Verdict::mend:
      return "to be mended";
    case Verdict::keep_parked:
      return "keep it parked until mended";
  }
  return "";
}

std::string_view word(Step step) {
  switch (step) {
    case Step::not_seen:
      return "not-seen";
    case Step::sound:
      return "sound";
    case Step::bloom:
      return "bloom";
    case Step::pitted:
      return "pitted";
    case Step::thin:
      return "thin";
    case Step::weak:
      return "weak";
    case Step::holed:
      return "holed";
  }
  return "";
}

std::string_view word(Evidence evidence) {
  switch (evidence) {
    case Evidence::not_seen:
      return "not-seen";
    case Evidence::looked:
      return "looked";
    case Evidence::felt:
      return "felt";
    case Evidence::measured:
      return "measured";
  }
  return "";
}

std::string_view word(Near near) {
  switch (near) {
    case Near::no:
      return "no";
    case Near::maybe:
      return "may be near";
    case Near::within_radius:
      return "near";
    case Near::into_mount:
      return "into";
    case Near::on_mount:
      return "on";
  }
  return "";
}

std::string_view word(SpanKind kind) {
  return kind == SpanKind::interval ? "interval" : "envelope";
}

std::string_view word(BaselineFrom from) {
  switch (from) {
    case BaselineFrom::reference:
      return "reference";
    case BaselineFrom::pair_reference:
      return "pair-reference";
    case BaselineFrom::survey_sheet:
      return "survey-sheet";
    case BaselineFrom::plan_sheet:
      return "assumed";
    case BaselineFrom::none:
      return "none";
  }
  return "";
}

namespace {

double percent(double share) {
  return 100 * share;
}

const char* how(const Spot& spot) {
  const bool assumed =
      spot.metal.kind == SpanKind::interval && spot.metal.baseline_from == BaselineFrom::plan_sheet;
  if (spot.evidence == Evidence::measured)
    return assumed ? "measured, the sheet assumed" : "measured";
  return spot.evidence == Evidence::felt ? "judged by hand" : "judged by eye";
}

}  // namespace

std::string metal_text(const Spot& spot) {
  const MetalLeft& metal = spot.metal;
  if (spot.stuffed) return "the metal behind is not there until somebody shows it";
  if (spot.signs.crack_mm && spot.metal.kind == SpanKind::envelope)
    return "past the limit whatever its metal";
  if (spot.step == Step::holed && metal.weighed.high <= 0) return "no metal left";
  const auto of_readings = [&] {
    return fmt::format("{:.0f} % of the sheet left ({:.0f} to {:.0f} %)",
                       percent(metal.shown.value), percent(metal.shown.low),
                       percent(metal.shown.high));
  };
  if (spot.sheet_assumed && spot.evidence != Evidence::measured)
    return fmt::format(
        "about {:.0f} % of the sheet left ({:.0f} to {:.0f} %), {}; the readings say "
        "{} of a sheet that is assumed",
        percent(metal.weighed.value), percent(metal.weighed.low), percent(metal.weighed.high),
        how(spot), of_readings());
  // What is less than the readings say is a judgement, and is not passed off as measured.
  if (judged_below_readings(metal))
    return fmt::format(
        "about {:.0f} % left by hand and pits ({:.0f} to {:.0f} %); the readings say {}",
        percent(metal.weighed.value), percent(metal.weighed.low), percent(metal.weighed.high),
        of_readings());
  const Span& span = metal.kind == SpanKind::interval && metal.weighed.value == metal.shown.value
                         ? metal.shown
                         : metal.weighed;
  return fmt::format("{}{:.0f} % of the sheet left ({:.0f} to {:.0f} %), {}",
                     &span == &metal.shown ? "" : "about ", percent(span.value), percent(span.low),
                     percent(span.high), how(spot));
}

std::string holes_text(const Spot& spot) {
  if (spot.holes.size() < 2) return "";
  return fmt::format("{} holes, the largest {:g} x {:g} mm", spot.holes.size(),
                     spot.holes.front().along_mm, spot.holes.front().across_mm);
}

std::string signs_text(const Spot& spot) {
  std::string text = holes_text(spot);
  if (spot.stuffed)
    text += fmt::format("{}stuffed with {}", text.empty() ? "" : ", ", word(*spot.stuffed));
  return text;
}

std::string greatest_text(const Film& film) {
  return fmt::format("{}{:.0f} um", film.off_scale ? "over " : "", film.greatest_um);
}

bool judged_below_readings(const MetalLeft& metal) {
  constexpr double rounding = 1e-9;
  return metal.kind == SpanKind::interval && metal.weighed.value < metal.shown.value - rounding;
}

std::string place_text(const Spot& spot) {
  const Signs& signs = spot.signs;
  std::string text;
  const auto add = [&](const std::string& part) { text += (text.empty() ? "" : ", ") + part; };
  if (signs.pinhole) add("pinhole");
  if (signs.crack_mm) add(fmt::format("cracked {:.0f} mm", *signs.crack_mm));
  if (spot.stuffed) add(fmt::format("stuffed with {}", word(*spot.stuffed)));
  if (text.empty()) return std::string(word(spot.step));
  const bool holed = signs.hole && !signs.pinhole;
  if (holed || signs.breaks) return "holed, " + text;
  return signs.gives ? "weak, " + text : text;
}

std::string near_text(const Spot& spot) {
  switch (spot.near) {
    case Near::no:
      return "";
    case Near::maybe:
      return fmt::format("may be near the {}", spot.near_what);
    case Near::within_radius:
      return fmt::format("{:.0f} mm from the {}", spot.near_mm, spot.near_what);
    case Near::into_mount:
      return fmt::format("{:.0f} mm from the {}, whose load it takes", spot.near_mm,
                         spot.near_what);
    case Near::on_mount:
      return spot.near_mm < 1 ? fmt::format("where the {} stands", spot.near_what)
                              : fmt::format("{:.0f} mm from the {} that it carries", spot.near_mm,
                                            spot.near_what);
  }
  return "";
}

std::string rules_from(const Result& result) {
  std::string from = result.rules == "default" ? "" : result.rules;
  if (!result.rules_name.empty()) from += (from.empty() ? "" : ", ") + result.rules_name;
  return fmt::format("Rules changed{}", from.empty() ? "" : " (" + from + ")");
}

std::string rules_text(const Result& result) {
  if (result.rules_changed.empty()) return "";
  return fmt::format("{}: {}.", rules_from(result), fmt::join(result.rules_changed, "; "));
}

std::string describe(const Spot& spot, const Zone& zone, std::string_view rule,
                     const rules::Rules& rules) {
  std::string text = title(zone);
  if (spot.is_repair && !zone.repairs[spot.index].text.empty()) {
    const Repair& repair = zone.repairs[spot.index];
    text +=
        fmt::format(": repair ({}) {}: {}", repair.text,
                    repair.reliable == false ? "can't be relied on" : "is not known", repair.why);
  } else {
    if (!spot.name.empty()) text += ", " + spot.name;
    const std::string holes = holes_text(spot);
    text += fmt::format(": {}, {}{}{}", place_text(spot), holes, holes.empty() ? "" : ", ",
                        metal_text(spot));
  }
  if (const std::string near = near_text(spot); !near.empty()) text += "; " + near;
  if (rule == "past-limit")
    text += fmt::format("; load-bearing metal is to keep {:.0f} %", percent(rules.repair_limit));
  if (rule == "section-gone") text += "; of a section that is gone";
  if (rule == "likely-past-limit") text += "; likely to need new metal: open it";
  if (rule == "skin-holed") text += "; a skin: looks and water, not strength";
  return text;
}

}  // namespace tinworm::weighing
