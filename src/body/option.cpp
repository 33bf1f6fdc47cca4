#include "body/option.hpp"

namespace tinworm::body {

PlanPtr with_options(const PlanPtr& plan, const std::map<std::string, std::string>& fitted) {
  if (fitted.empty()) return plan;
  const auto elsewhere = [&](const auto& part) {
    if (!part.when) return false;
    const auto told = fitted.find(part.when->option);
    return told != fitted.end() && told->second != part.when->choice;
  };
  auto of_this_car = std::make_shared<Plan>(*plan);
  std::erase_if(of_this_car->mounts, elsewhere);
  for (auto& [view, lines] : of_this_car->lines) std::erase_if(lines, elsewhere);
  return of_this_car;
}

}  // namespace tinworm::body
