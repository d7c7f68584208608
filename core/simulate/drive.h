#pragma once

#include "core/circuit/circuit.h"
#include "core/simulate/balances.h"
#include "core/simulate/recording.h"

#include <atomic>
#include <functional>
#include <string>

namespace pumpwright {

struct DriveOptions {
    double relativeTolerance = 1e-4;            ///< of every unknown, each step; smaller is slower
    std::size_t recordingBytes = 64U << 20U;    ///< the recording is thinned when it would exceed this
    const std::atomic<bool>* cancel = nullptr;  ///< looked at before each step
    std::function<void(double share)> progress; ///< called now and then with 0…1
    bool balances = true;                       ///< else those of the result stay empty, which is quicker
};

enum class DriveStatus { Finished, Cancelled, Stopped };

/// What came of a run. A stopped run keeps what it had; `message` says when, where and why.
struct DriveResult {
    DriveStatus status = DriveStatus::Finished;
    std::string message;
    std::vector<std::string> suspects; ///< ids of the parts and wires that the message names
    Recording recording;
    Balances balances;
    struct Statistics {
        long steps = 0;
        long rejectedSteps = 0;
        long factorisations = 0;
        long newtonIterations = 0;
        long events = 0;
        int unknowns = 0;
    } statistics;
};

/// Simulates the circuit over its drive plan. The same circuit gives the same result, to the byte.
DriveResult simulateDrive(const Circuit& circuit, const DriveOptions& options = {});

} // namespace pumpwright
