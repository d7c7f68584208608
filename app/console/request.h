#pragma once

#include "core/checks/finding.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

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
    Spread,
    Sweep,
    Fit,
    Plan
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
    double sureTo = 0;                        ///< spread: ends early once shares are known to ± this
    std::vector<std::string> joined;          ///< spread: files with rows of runs before
    std::vector<std::string> over;            ///< sweep: "K2.delay_s=0..10 s", one or two
    int points = 0;                           ///< sweep: on each axis; 0: the usual number
    std::string result = "chatter";           ///< sweep: id of a measure
    std::string goodAt;                       ///< sweep: what is good enough; empty: the usual
    std::string resolution;                   ///< sweep: of a threshold; empty: the usual
    std::string log;                          ///< fit: bench log
    std::vector<std::string> columns;         ///< fit: "name in the log=A1:vacuum in kPa"
    std::vector<std::string> values;          ///< fit: values of the circuit that are fitted
    std::string timeOffset = "0 s";           ///< fit: added to the log's times; plan: to the trace's
    std::string made;                         ///< plan: sort of drive that is made; empty: none
    std::string speed;                        ///< plan: file with a speed trace; empty: none
    std::string duration;                     ///< plan: of a drive that is made; empty: the usual
    std::string chart;                        ///< drive: where the chart goes; empty: nowhere
    std::string out;                          ///< sheet, schematic, fit, plan: where it goes
    bool faults = true;                       ///< sheet: with the fault-finding table
    std::string paper = "A4";                 ///< sheet: A4, A3 or Letter
};

} // namespace pumpwright
