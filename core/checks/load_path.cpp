#include "core/checks/load_path.h"

#include <algorithm>
#include <utility>

namespace pumpwright {
namespace {

/// Finds the ways between a load and one source.
bool feed(LoadPath& path, const SourceLeads& leads, bool somehow) {
    auto there = (somehow ? leads.fromPlusSomehow : leads.fromPlus).way({path.part, path.load.from});
    if (!there) {
        return false;
    }
    auto back = (somehow ? leads.toMinusSomehow : leads.toMinus).way({path.part, path.load.to});
    if (!back) {
        return false;
    }
    path.source = leads.source.part;
    path.feed = std::move(*there);
    path.back = std::move(*back);
    return true;
}

void feedFromAny(LoadPath& path, const std::vector<SourceLeads>& sources, bool mayTurn) {
    for (const bool somehow : {false, true}) {
        for (const bool turned : {false, true}) {
            if (turned && !mayTurn) {
                continue;
            }
            LoadPath attempt{path.part, path.branch, path.load, {}, {}, {}};
            if (turned) {
                std::swap(attempt.load.from, attempt.load.to);
            }
            for (const SourceLeads& leads : sources) {
                if (feed(attempt, leads, somehow)) {
                    path = std::move(attempt);
                    return;
                }
            }
        }
    }
}

Load loadOf(const Branch& branch, const Features& features, double supplyVoltage_V) {
    if (branch.sort == BranchSort::Load) {
        return features.loads[branch.index];
    }
    const Coil& coil = features.coils[branch.index];
    const double current_A = coil.resistance_ohm > 0 ? supplyVoltage_V / coil.resistance_ohm : 0;
    return {coil.plus, coil.minus, LoadSort::Coil, current_A, current_A};
}

/// Sums up running currents and keeps the largest step from running to inrush.
void addLoad(ExpectedCurrent& sum, const Load& load) {
    const double step_A = std::max(sum.inrush_A - sum.running_A, load.inrush_A - load.running_A);
    sum.running_A += load.running_A;
    sum.together_A += std::max(load.running_A, load.inrush_A);
    sum.inrush_A = sum.running_A + std::max(0.0, step_A);
    sum.inductive = sum.inductive || load.sort == LoadSort::Motor || load.sort == LoadSort::Coil;
}

} // namespace

std::vector<LoadPath> loadPathsOf(const std::vector<SourceLeads>& sources, const FeaturesOf& features,
                                  const std::vector<Branch>& branches, double supplyVoltage_V) {
    std::vector<LoadPath> paths;
    for (std::size_t number = 0; number < branches.size(); ++number) {
        const Branch& branch = branches[number];
        if (branch.sort == BranchSort::Load || branch.sort == BranchSort::Coil) {
            LoadPath path{branch.part, number, loadOf(branch, features.at(branch.part), supplyVoltage_V),
                          {},          {},     {}};
            feedFromAny(path, sources, !branch.oneWay);
            paths.push_back(std::move(path));
        }
    }
    return paths;
}

ExpectedCurrents expectedCurrentsOf(const std::vector<LoadPath>& paths) {
    ExpectedCurrents expected;
    for (const LoadPath& path : paths) {
        for (const std::vector<LeadStep>* way : {&path.feed, &path.back}) {
            for (const LeadStep& step : *way) {
                if (step.wire) {
                    addLoad(expected.wires[*step.wire], path.load);
                } else if (step.branch) {
                    addLoad(expected.branches[*step.branch], path.load);
                }
            }
        }
    }
    return expected;
}

} // namespace pumpwright
