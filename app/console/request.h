#pragma once

#include "core/checks/finding.h"

#include <cstdint>
#include <optional>
#include <string>

namespace pumpwright {

enum class Command {
    Window,
    Check,
    Drive,
    Sheet,
    Schematic,
    Wires,
    Parts,
    Nets,
    Compare,
    Trials,
    Breakdowns,
    Spread
};

enum class OutputForm { People, Json, Csv, Markdown };

/// What the command line asks for.
struct Request {
    Command command = Command::Window;
    std::string file;      ///< may be empty for the window
    std::string otherFile; ///< compare: the circuit as it is after
    OutputForm form = OutputForm::People;
    SignalWord atLeast = SignalWord::Caution; ///< check: the mildest that counts for the exit status
    double every_s = 0.1;                     ///< drive: time between rows of the CSV
    bool pairs = false;                       ///< breakdowns: every two failures at once
    std::uint64_t seed = 1;                   ///< spread
    std::uint64_t from = 0;                   ///< spread: number of the first car
    std::size_t count = 200;                  ///< spread: of cars
    std::string chart;                        ///< drive: where the chart goes; empty: nowhere
    std::string out;                          ///< sheet, schematic: where it goes
    bool faults = true;                       ///< sheet: with the fault-finding table
    std::string paper = "A4";                 ///< sheet: A4, A3 or Letter
};

} // namespace pumpwright
