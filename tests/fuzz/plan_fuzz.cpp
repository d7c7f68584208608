// The input is a drive plan in a circuit with a battery, an ignition switch and a booster; what is read is
// driven.

#include "core/files/circuit_file.h"
#include "core/simulate/drive.h"
#include "tests/fuzz/promise.h"

#include <algorithm>
#include <cmath>

using namespace pumpwright;

namespace {

const std::string kBefore = R"({"pumpwright":1,"parts":[{"id":"g","kind":"supply","at":[0,0]},
{"id":"s","kind":"hand-switch","at":[9,0]},{"id":"b","kind":"booster","at":[0,9]},
{"id":"l","kind":"lamp","at":[9,9]}],"wires":[
{"id":"w1","from":{"part":"g","terminal":"30"},"to":{"part":"s","terminal":"1"}},
{"id":"w2","from":{"part":"s","terminal":"2"},"to":{"part":"l","terminal":"1"}},
{"id":"w3","from":{"part":"l","terminal":"2"},"to":{"part":"g","terminal":"31"}}],"plan":)";

template <class List>
void checkInOrder(const List& list) {
    require(std::is_sorted(list.begin(), list.end(),
                           [](const auto& a, const auto& b) { return a.at_s < b.at_s; }),
            "a plan's lists are in order of time");
}

void checkDriven(Circuit circuit) {
    constexpr double kMost_s = 3;
    circuit.plan.duration_s = std::min(circuit.plan.duration_s, kMost_s);
    const DriveResult drive = simulateDrive(circuit);
    require(drive.status != DriveStatus::Stopped || !drive.message.empty(), "a drive that stops says why");
    for (const Channel& channel : drive.recording.channels) {
        for (const float value : channel.values) {
            require(std::isfinite(value), "every sample is a number");
        }
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const auto circuit = parseCircuit(kBefore + textOf(data, size) + "}", "input");
    require(circuit || circuit.error().place.pointer.starts_with("/plan") ||
                circuit.error().code == ErrorCode::NotJson || circuit.error().place.pointer.empty(),
            "only the plan can be wrong");
    if (!circuit) {
        checkRefused(circuit.error());
        return 0;
    }
    checkInOrder(circuit->plan.presses);
    checkInOrder(circuit->plan.switchMoves);
    checkInOrder(circuit->plan.altitude);
    const auto again = parseCircuit(circuitText(*circuit), "input");
    require(again && *again == *circuit, "what is written is read back the same");
    checkDriven(*circuit);
    return 0;
}
