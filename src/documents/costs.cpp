#include "documents/costs.hpp"

#include <fmt/format.h>

#include "documents/parts.hpp"
#include "output/work_figures.hpp"
#include "work/price.hpp"

namespace tinworm::documents {
namespace {

using weighing::Result;

// A figure that no line breaks, with a true minus.
std::string whole(std::string_view text) {
  constexpr const char* no_break_space = "\u00A0";
  constexpr const char* minus = "\u2212";
  std::string out;
  for (const char c : text) {
    if (c == ' ')
      out += no_break_space;
    else if (c == '-')
      out += minus;
    else
      out += c;
  }
  return out;
}

std::string money_text(double money) {
  return whole(output::money_text(money));
}

std::string low_to_high(const work::Range& money) {
  return fmt::format("{} to {}", money_text(money.low), money_text(money.high));
}

std::string doubts_line(const Result& result, const work::Plan& plan) {
  const work::Doubt& dearest = plan.doubts.front();
  return fmt::format(
      "What could double it: {} that nobody could judge, {} {} more if all were rotten; the "
      "dearest: {}.",
      counted_parts(plan.doubts.size()), low_to_high(plan.doubts_cost), plan.rates.currency,
      title_of(result, dearest.zone, dearest.own));
}

// What is left, in words.
std::string bought(const work::Range& left) {
  if (left.high < 0) return "Even at the low figures it costs more than the price leaves.";
  if (left.likely < 0) return "Likely it costs more than the price leaves.";
  if (left.low < 0) return "Likely the price leaves room for it.";
  return "The price leaves room for it.";
}

void add_work(std::vector<std::string>& lines, const work::Plan& plan) {
  const std::string& currency = plan.rates.currency;
  lines.push_back(fmt::format(
      "By {}, no quote: about {} {} and {}\u00A0h to cut, weld and treat; not over "
      "{} {} in 80 of 100 such cases.",
      plan.rates_changed.empty() ? "assumptions" : "your rates", money_text(plan.cost.mean),
      currency, output::hours_text(plan.hours.mean), money_text(plan.cost.in_80_of_100), currency));
  if (plan.if_opening_shows.cost.sum.high > 0)
    lines.push_back(fmt::format("Of it {} {} are sure; {} only if opening shows it.",
                                money_text(plan.sure.cost.mean), currency,
                                money_text(plan.if_opening_shows.cost.mean)));
  std::string apart = "Not in it: stripping, paint, parts, mechanical work, taxes";
  if (plan.contingency)
    apart += fmt::format("; and {} {} to set aside for what opening up shows",
                         low_to_high(plan.contingency->cost), currency);
  lines.push_back(apart + ".");
}

}  // namespace

std::string counted_parts(std::size_t how_many) {
  return how_many == 1 ? "a part" : fmt::format("{} parts", how_many);
}

std::vector<std::string> cost_lines(const Result& result, const work::Plan& plan) {
  std::vector<std::string> lines;
  if (plan.tasks.empty())
    lines.push_back(nothing_to_do);
  else
    add_work(lines, plan);
  if (!plan.doubts.empty()) lines.push_back(doubts_line(result, plan));
  return lines;
}

std::string good_buy(const Result& result, const work::Plan& plan) {
  const survey::Price& price = result.survey.price;
  if (!price.asked || !price.sound) return "";
  const auto left = work::left_over(plan, price);
  const std::string& currency = plan.rates.currency;
  if (!left)
    return fmt::format("The prices aren't both in {}, the currency of the rates: no arithmetic.",
                       currency);
  const std::string worth =
      fmt::format("Worth {} {} when sound, {} asked: ", money_text(price.sound->amount), currency,
                  money_text(price.asked->amount));
  if (plan.tasks.empty())
    return fmt::format("{}that leaves {} {} for what nobody saw.", worth, money_text(left->likely),
                       currency);
  return fmt::format("{}this work leaves {}{} to {} {}, likely {}. {}", worth,
                     money_text(left->low), plan.contingency ? " (contingency spent)" : "",
                     money_text(left->high), currency, money_text(left->likely), bought(*left));
}

}  // namespace tinworm::documents
