// Signals that would end the program unseen, and errors that nothing else told.
#include <csignal>
#include <exception>
#include <string>
#include <vector>

#include "output/draft.hpp"
#include "verbs/last_words.hpp"
#include "verbs/run_command.hpp"

int main(int count, char** words) {
  // A reader that goes away and a file at its limit are then errors of `write`, told like others.
  std::signal(SIGPIPE, SIG_IGN);
  std::signal(SIGXFSZ, SIG_IGN);
  tinworm::output::remove_drafts_with_the_program();
  const tinworm::verbs::Streams streams;
  try {
    return tinworm::verbs::run_command(std::vector<std::string>(words + (count > 0), words + count),
                                       streams);
  } catch (const std::exception& error) {
    streams.complain(tinworm::verbs::last_words(error));
    return tinworm::verbs::file_trouble;
  }
}
