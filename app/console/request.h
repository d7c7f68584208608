#pragma once

#include "core/checks/finding.h"

#include <optional>
#include <string>

namespace pumpwright {

enum class Command { Window, Check, Drive, Sheet, Schematic, Wires, Parts, Nets, Compare };

enum class OutputForm { People, Json, Csv };

/// What the command line asks for.
struct Request {
    Command command = Command::Window;
    std::string file;      ///< may be empty for the window
    std::string otherFile; ///< compare: the circuit as it is after
    OutputForm form = OutputForm::People;
    SignalWord atLeast = SignalWord::Caution; ///< check: the mildest that counts for the exit status
    double every_s = 0.1;                     ///< drive: time between rows of the CSV
    std::string png;                          ///< drive: where the chart goes; empty: nowhere
    std::string out;                          ///< sheet, schematic: where it goes
    std::string paper = "A4";                 ///< sheet: A4, A3 or Letter
};

} // namespace pumpwright
