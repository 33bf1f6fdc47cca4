// What a verb was asked for, as the words that ask for the same again: the verb, then every option
// that the output depends on, in a fixed order, whether it was given or not. Inputs aren't words,
// nor is what changes no byte: jobs, quiet, colour, the output's name.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "verbs/options.hpp"

namespace tinworm::verbs {

using Words = std::vector<std::string>;

// Pictures also have SOURCE_DATE_EPOCH=…, where the environment has it. Throws CommandError for a
// bad one.
Words words_of(const BodiesOptions& options);
Words words_of(const CompareOptions& options);
Words words_of(const ListingOptions& options);
Words words_of(const MapOptions& options);
Words words_of(const ReportOptions& options);  // its `missing_photos` where there is such a gap
Words words_of(const WeighOptions& options);
Words words_of(const WorkOptions& options);

// Of an output that is made of a survey, with known options alone and not one that names a file: no
// more can be asked for by a record, which anyone may have written.
bool are_harmless(const Words& words);

// The kind in `--as=pdf`.
std::optional<Kind> kind_in(const Words& words);

// The value in `SOURCE_DATE_EPOCH=…`; empty where there is none.
std::string source_date_in(const Words& words);

}  // namespace tinworm::verbs
