#pragma once

#include "app/console/request.h"

#include <string>

namespace pumpwright {

/// Exit statuses of every command.
enum class ExitStatus {
    Fine = 0,          ///< nothing at or above the asked signal word
    Findings = 1,      ///< something was found, or the drive could not be finished
    BadUse = 2,        ///< the command line makes no sense
    Unreadable = 3,    ///< a file can't be read or written
    FailedItself = 4,  ///< the program is at fault, or memory ran out
    Interrupted = 130, ///< by Ctrl-C, as shells count it
};

/// What a command comes to. Nothing is printed before it is over.
struct Outcome {
    ExitStatus status = ExitStatus::Fine;
    std::string out; ///< for standard output
    std::string err; ///< for standard error
};

/// The outcome as a terminal may show it: what is for people holds no control characters, so that no text of
/// a file steers the terminal. JSON escapes them itself, CSV keeps them.
Outcome fitForTerminal(Outcome outcome, OutputForm form);

} // namespace pumpwright
