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
    case Verdict::repair:
      return "repair";
    case Verdict::do_not_drive:
      return "do-not-drive";
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
      return "treat";
    case Verdict::repair:
      return "repair";
    case Verdict::do_not_drive:
      return "do not drive until repaired";
  }
  return "";
}

std::string_view word(Step step) {
  switch (step) {
    case Step::not_seen:
      return "not-seen";
    case Step::sound:
      return "sound";
    case Step::film:
      return "film";
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
  if (spot.step == Step::holed && metal.weighed.high <= 0) return "no metal left";
  const auto of_readings = [&] {
    return fmt::format("{:.0f} % of the sheet left ({:.0f} to {:.0f} %)",
                       percent(metal.shown.value), percent(metal.shown.low),
                       percent(metal.shown.high));
  };
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

std::string signs_text(const Spot& spot) {
  std::string text;
  if (spot.holes.size() > 1)
    text = fmt::format("{} holes, the largest {:g} x {:g} mm", spot.holes.size(),
                       spot.holes.front().along_mm, spot.holes.front().across_mm);
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

std::string near_text(const Spot& spot) {
  switch (spot.near) {
    case Near::no:
      return "";
    case Near::maybe:
      return fmt::format("may be near the {}", spot.near_what);
    case Near::within_radius:
      return fmt::format("{:.0f} mm from the {}", spot.near_mm, spot.near_what);
    case Near::on_mount:
      return fmt::format("where the {} stands", spot.near_what);
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
    const std::string signs = signs_text(spot);
    text += fmt::format(": {}, {}{}{}", word(spot.step), signs, signs.empty() ? "" : ", ",
                        metal_text(spot));
  }
  if (const std::string near = near_text(spot); !near.empty()) text += "; " + near;
  if (rule == "past-limit")
    text += fmt::format("; load-bearing metal is to keep {:.0f} %", percent(rules.repair_limit));
  if (rule == "stuffed") text += "; the metal behind isn't there until somebody shows it";
  if (rule == "skin-holed") text += "; a skin: looks and water, not strength";
  return text;
}

}  // namespace tinworm::weighing
