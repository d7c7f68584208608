#include "core/study/trials.h"

#include "core/parts/lost_ends.h"
#include "core/parts/part_kind.h"

#include <algorithm>

namespace pumpwright {
namespace {

/// What the drives of trials are compared by over time.
std::vector<Channel> tracesOf(const Circuit& circuit, const Recording& recording) {
    std::vector<Channel> traces;
    const auto add = [&](const Channel* channel) {
        if (channel != nullptr) {
            traces.push_back(*channel);
        }
    };
    for (const auto& [id, part] : circuit.parts) {
        if (recording.part(id, probe::kAssist) != nullptr) {
            for (const PortSpec& port : kindOf(part).ports(part)) {
                add(recording.port({id, port.name}));
            }
        }
        const std::vector<Load> loads = kindOf(part).features(part).loads;
        if (std::ranges::find(loads, LoadSort::Motor, &Load::sort) != loads.end()) {
            add(recording.part(id, probe::kCurrent));
        }
    }
    return traces;
}

TrialOutcome outcomeOf(std::string id, std::string name, Circuit circuit, const std::atomic<bool>& stop) {
    DriveOptions options;
    options.cancel = &stop;
    options.balances = false;
    const DriveResult drive = simulateDrive(circuit, options);
    TrialOutcome outcome{driveOutcome(circuit, drive, stop), std::move(id), std::move(name), {}, {}, {}};
    outcome.traces = tracesOf(circuit, drive.recording);
    outcome.circuit = std::move(circuit);
    return outcome;
}

std::vector<PartId> addedParts(const Circuit& circuit, const Circuit& changed) {
    std::vector<PartId> added;
    for (const auto& [id, part] : changed.parts) {
        if (!circuit.parts.contains(id)) {
            added.push_back(id);
        }
    }
    return added;
}

} // namespace

Circuit trialCircuit(const Circuit& circuit, const Trial& trial) {
    Circuit changed = circuit;
    applyEdit(changed, editWithLostEnds(circuit, trial.edit));
    return changed;
}

std::vector<TrialOutcome> runTrials(const Circuit& circuit, const TrialOptions& options) {
    std::vector<std::pair<std::string, const Trial*>> trials{{"", nullptr}};
    for (const auto& [id, trial] : circuit.trials) {
        trials.emplace_back(id, &trial);
    }
    std::vector<TrialOutcome> outcomes;
    OrderedRun<TrialOutcome>::run(
        trials.size(), options,
        [&](std::size_t index, const std::atomic<bool>& stop) {
            const auto& [id, trial] = trials[index];
            return trial == nullptr ? outcomeOf("", "as drawn", circuit, stop)
                                    : outcomeOf(id, trial->name, trialCircuit(circuit, *trial), stop);
        },
        [&](std::size_t, TrialOutcome outcome) {
            outcome.addedParts = addedParts(circuit, outcome.circuit);
            outcomes.push_back(std::move(outcome));
            if (options.partial) {
                options.partial(outcomes);
            }
            return true;
        });
    return outcomes;
}

} // namespace pumpwright
