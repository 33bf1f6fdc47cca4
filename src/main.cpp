// Maps what went wrong to exit statuses and words.
#include <csignal>
#include <exception>
#include <string>
#include <variant>
#include <vector>

#include <fmt/format.h>

#include "output/draft.hpp"
#include "output/file_error.hpp"
#include "verbs/bodies.hpp"
#include "verbs/check.hpp"
#include "verbs/command_error.hpp"
#include "verbs/command_line.hpp"
#include "verbs/compare.hpp"
#include "verbs/last_words.hpp"
#include "verbs/listing.hpp"
#include "verbs/map.hpp"
#include "verbs/report.hpp"
#include "verbs/schema.hpp"
#include "verbs/start.hpp"
#include "verbs/weigh.hpp"
#include "verbs/work.hpp"

namespace tinworm::verbs {
namespace {

ExitStatus run(const Shown& shown, const Streams& streams) {
  streams.print(shown.text);
  return done;
}

bool wants_quiet(const Command& command) {
  return std::visit(
      [](const auto& options) {
        if constexpr (requires { options.common.quiet; }) return options.common.quiet;
        return false;
      },
      command);
}

ExitStatus run_command(const std::vector<std::string>& arguments, Streams& streams) {
  try {
    const Command command = parse_command_line(arguments);
    streams.quiet = wants_quiet(command);
    return std::visit([&](const auto& options) { return run(options, streams); }, command);
  } catch (const CommandError& error) {
    streams.complain(fmt::format("{}\n", error.what()));
    if (!error.cure().empty())
      streams.complain(error.cure() + (error.cure().ends_with('\n') ? "" : "\n"));
    return wrong_command;
  } catch (const output::FileError& error) {
    streams.complain(fmt::format("tinworm: {}\n", error.what()));
    return file_trouble;
  }
}

}  // namespace
}  // namespace tinworm::verbs

int main(int count, char** words) {
  // A reader that goes away and a file at its limit are then errors of `write`, told like others.
  std::signal(SIGPIPE, SIG_IGN);
  std::signal(SIGXFSZ, SIG_IGN);
  tinworm::output::remove_drafts_with_the_program();
  tinworm::verbs::Streams streams;
  try {
    return tinworm::verbs::run_command(std::vector<std::string>(words + (count > 0), words + count),
                                       streams);
  } catch (const std::exception& error) {
    streams.complain(tinworm::verbs::last_words(error));
    return tinworm::verbs::file_trouble;
  }
}
