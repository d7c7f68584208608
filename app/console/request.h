#pragma once

#include "core/checks/finding.h"

#include <optional>
#include <string>

namespace pumpwright {

enum class Command { Window, Check, Drive, Sheet, Wires, Parts };

enum class OutputForm { People, Json, Csv };

/// What the command line asks for.
struct Request {
    Command command = Command::Window;
    std::string file; ///< may be empty for the window
    OutputForm form = OutputForm::People;
    SignalWord atLeast = SignalWord::Caution; ///< check: the mildest that counts for the exit status
    double every_s = 0.1;                     ///< drive: time between rows of the CSV
    std::string png;                          ///< drive: where the chart goes; empty: nowhere
    std::string out;                          ///< sheet: where the PDF goes
};

} // namespace pumpwright
