#include "core/study/drive_outcome.h"

#include "core/checks/press_assist.h"
#include "core/checks/rule.h"
#include "core/nets/nets.h"
#include "core/parts/part_kind.h"

#include <algorithm>

namespace pumpwright {
namespace {

/// [s] between two presses of the reserve; the booster is at rest again. Common practice, no published
/// source.
constexpr double kPause_s = 3;

/// The hardest press of the plan again and again.
DrivePlan reservePlan(const DrivePlan& plan, double vacuum_Pa) {
    const Press hardest = *std::ranges::max_element(plan.presses, {}, &Press::force_N);
    DrivePlan reserve;
    reserve.ambient_K = plan.ambient_K;
    reserve.initialVacuum_Pa = vacuum_Pa;
    if (!plan.altitude.empty()) {
        reserve.altitude = {{0, plan.altitude.back().altitude_m}};
    }
    double at_s = kPause_s;
    for (int i = 0; i < kMostReservePresses; ++i) {
        reserve.presses.push_back(hardest);
        reserve.presses.back().at_s = at_s;
        at_s += std::max(hardest.hold_s, hardest.rise_s) + hardest.rise_s + kPause_s;
    }
    reserve.duration_s = at_s;
    return reserve;
}

/// Vacuum at the first port of a booster at the end of the run; nothing where the part is none.
std::optional<double> vacuumAtEnd(const PartId& id, const Part& part, const Recording& recording) {
    const std::vector<PortSpec> ports = kindOf(part).ports(part);
    if (ports.empty() || recording.part(id, probe::kAssist) == nullptr) {
        return std::nullopt;
    }
    const Channel* vacuum = recording.port({id, ports.front().name});
    return vacuum == nullptr ? std::nullopt : std::optional(vacuum->at(recording.duration_s));
}

DriveOutcome cancelled() {
    DriveOutcome outcome;
    outcome.status = DriveStatus::Cancelled;
    return outcome;
}

int fullPresses(const std::vector<PressAssist>& presses) {
    const auto lacking = std::ranges::find_if_not(presses, &PressAssist::isFull);
    return static_cast<int>(lacking - presses.begin());
}

} // namespace

DriveOutcome driveOutcome(const Circuit& circuit, const std::atomic<bool>& stop) {
    DriveOptions options;
    options.cancel = &stop;
    options.balances = false;
    return driveOutcome(circuit, simulateDrive(circuit, options), stop);
}

DriveOutcome driveOutcome(const Circuit& circuit, const DriveResult& drive, const std::atomic<bool>& stop) {
    if (stop || drive.status == DriveStatus::Cancelled) {
        return cancelled();
    }
    DriveOutcome outcome;
    outcome.status = drive.status;
    outcome.message = drive.message;
    outcome.numbers = driveNumbers(circuit, drive.recording);
    outcome.reservePresses = reservePresses(circuit, drive.recording, &stop);
    if (stop) {
        return cancelled();
    }
    const Nets nets = findNets(circuit);
    for (const Finding& finding : checkCircuit({circuit, nets, &drive})) {
        outcome.openFindings.at(static_cast<std::size_t>(finding.word)) += finding.waiver ? 0 : 1;
    }
    return outcome;
}

int reservePresses(const Circuit& circuit, const Recording& recording, const std::atomic<bool>* cancel) {
    std::optional<double> vacuum_Pa;
    for (const auto& [id, part] : circuit.parts) {
        if (const auto own = vacuumAtEnd(id, part, recording)) {
            vacuum_Pa = std::min(vacuum_Pa.value_or(*own), *own);
        }
    }
    if (!vacuum_Pa || circuit.plan.presses.empty()) {
        return 0;
    }
    Circuit dead = circuit;
    dead.wires.clear();
    dead.plan = reservePlan(circuit.plan, std::max(0.0, *vacuum_Pa));
    DriveOptions options;
    options.cancel = cancel;
    options.balances = false;
    const DriveResult drive = simulateDrive(dead, options);
    int reserve = kMostReservePresses;
    for (const auto& [id, part] : dead.parts) {
        if (drive.recording.part(id, probe::kAssist) != nullptr) {
            reserve = std::min(reserve, fullPresses(pressAssists(dead.plan, drive.recording, id)));
        }
    }
    return reserve;
}

} // namespace pumpwright
