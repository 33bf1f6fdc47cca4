#include "history/archive.hpp"

#include <gtest/gtest.h>

namespace tinworm::history {
namespace {

struct Told {
  std::string name, chassis, registration, body;
  std::optional<int> built;
};

Filed filed(const Told& told, int year) {
  Filed filed;
  filed.car.name = told.name;
  filed.car.chassis_number = told.chassis;
  filed.car.registration = told.registration;
  filed.car.built = told.built;
  filed.body = told.body;
  filed.date = {year, 4, 12};
  filed.sha256 = std::to_string(year) + told.name + told.chassis + told.registration;
  return filed;
}

TEST(Archive, TellsCarsApart) {
  const struct {
    std::string why;
    Told one, other;
    bool same;
  } cases[] = {
      {"chassis numbers however written",
       {"Wherry", "W12-004417", "", "saloon", 1967},
       {"The Wherry", "w12 004417", "", "saloon", 1967},
       true},
      {"two of one name by their chassis numbers",
       {"Wherry", "W12-004417", "", "saloon", 1967},
       {"Wherry", "W12-004418", "", "saloon", 1967},
       false},
      {"a chassis number tells more than a plate",
       {"Wherry", "W12-004417", "AB 1", "saloon", 1967},
       {"Wherry", "W12-004417", "CD 2", "saloon", 1967},
       true},
      {"plates where one has no chassis number",
       {"Wherry", "W12-004417", "AB 1", "saloon", 1967},
       {"Coble", "", "ab1", "saloon", 1967},
       true},
      {"names where nothing else is told",
       {"Wherry", "", "", "saloon", 1967},
       {"wherry", "", "", "saloon", {}},
       true},
      {"names of cars of other years",
       {"Wherry", "", "", "saloon", 1967},
       {"Wherry", "", "", "saloon", 1969},
       false},
      {"names of other bodies",
       {"Wherry", "", "", "saloon", 1967},
       {"Wherry", "", "", "open", 1967},
       false},
      {"cars without any name", {"", "", "", "saloon", 1967}, {"", "", "", "saloon", 1967}, false},
  };
  for (const auto& each : cases) {
    EXPECT_EQ(by_car({filed(each.one, 2017), filed(each.other, 2025)}).size(), each.same ? 1 : 2)
        << each.why;
    EXPECT_EQ(by_car({filed(each.other, 2017), filed(each.one, 2025)}).size(), each.same ? 1 : 2)
        << each.why << ", the other way about";
  }
}

TEST(Archive, PutsSurveysOfACarByDateAndCopiesOnce) {
  const Told wherry{"Wherry", "W12", "", "saloon", 1967}, coble{"Coble", "C3", "", "saloon", 1971};
  const auto cars = by_car({filed(wherry, 2025), filed(coble, 2024), filed(wherry, 2017),
                            filed(wherry, 2025), filed(wherry, 2021)});
  EXPECT_EQ(cars, (std::vector<std::vector<std::size_t>>{{2, 4, 0}, {1}}));
}

}  // namespace
}  // namespace tinworm::history
