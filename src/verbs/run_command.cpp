#include "verbs/run_command.hpp"

#include <variant>

#include <fmt/format.h>

#include "output/file_error.hpp"
#include "verbs/bodies.hpp"
#include "verbs/check.hpp"
#include "verbs/command_error.hpp"
#include "verbs/command_line.hpp"
#include "verbs/compare.hpp"
#include "verbs/due.hpp"
#include "verbs/field_sheet.hpp"
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

}  // namespace

ExitStatus run_command(const std::vector<std::string>& arguments, Streams streams) {
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

}  // namespace tinworm::verbs
