// Where advice is gathered: the zones with what the plan, the survey and the weighing say of them,
// side by side, and the pieces asked so far. Each `ask_about_…` has a file of its own.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "rules/rules.hpp"
#include "survey/survey.hpp"
#include "weighing/advice.hpp"
#include "weighing/result.hpp"
#include "weighing/zone_facts.hpp"

namespace tinworm::weighing {

struct Look {  // at one zone
  const Zone* zone = nullptr;
  ZoneFacts facts;

  survey::Place place() const;  // of its entry, else of the key that says how it was seen
};

struct Find {  // one place in a zone, as recorded and as weighed
  const Look* look = nullptr;
  const survey::Spot* recorded = nullptr;
  const Spot* weighed = nullptr;
};

struct Mend {  // one repair, as recorded and as judged
  const Look* look = nullptr;
  const survey::Repair* recorded = nullptr;
  const Repair* judged = nullptr;
  int number = 0;  // in its zone, from 1
};

using Looks = std::vector<const Look*>;
using Finds = std::vector<const Find*>;
using Mends = std::vector<const Mend*>;

class Asking {
 public:
  Asking(const Result& weighed, const rules::Rules& constants);
  Asking(const Asking&) = delete;  // finds and mends point into looks
  Asking& operator=(const Asking&) = delete;

  const Result& result;
  const rules::Rules& rules;
  std::vector<Look> looks;  // fitted zones of the plan by number, own zones last
  std::vector<Find> finds;  // in the same order
  std::vector<Mend> mends;
  std::vector<Advice> pieces;

  void of_car(std::string_view kind, std::string question, std::string why,
              survey::Place place = {});
  void of_zone(const Look& look, std::string_view kind, std::string question, std::string why);
  void of_spot(const Find& find, std::string_view kind, std::string question, std::string why);
  void of_repair(const Mend& mend, std::string_view kind, std::string question, std::string why);

  int main_readings() const;  // on the main structure, references not counted
};

// "strut top, both sides (47 48); cant rail, left (89)": a pair of neighbours in one; of a long
// list the first, "and 3 more".
std::string list(const Looks& looks);
// "outer sill, left (51), rear end; …"
std::string list(const Finds& finds);
std::string list(const Mends& mends);  // "outer sill, right (52), repair 1 (lapped of 2016); …"
// Entries joined by "; ", of a long list the first `most`, "and 3 more".
std::string list(const std::vector<std::string>& entries, std::size_t most = 8);

std::string title(const Look& look);
std::string title(const Find& find);  // "outer sill, left (51), rear end"
std::string title(const Mend& mend);

std::string percent(double share);        // "64 %"
const char* is_it(std::size_t how_many);  // "is it", "are they"

void ask_about_looks(Asking& asking);     // what was seen and measured of the structure
void ask_about_coats(Asking& asking);     // underseal, wax, paint, filler
void ask_about_readings(Asking& asking);  // against sheet, hand and each other
void ask_about_gauge(Asking& asking);     // and what its readings are held against
void ask_about_places(Asking& asking);    // where a place is, and how large
void ask_about_repairs(Asking& asking);
void ask_about_words(Asking& asking);    // damage named in free words and recorded nowhere
void ask_about_records(Asking& asking);  // marks, options, what doesn't go together
void ask_about_papers(Asking& asking);   // leave, interest, photos

}  // namespace tinworm::weighing
