#include "core/checks/standing_state.h"

#include "core/checks/carried_current.h"
#include "core/checks/net_spread.h"

#include <algorithm>

namespace pumpwright {
namespace {

/// A relay that commands a relay that commands a relay, and so on.
constexpr int kLongestCommand = 8;

std::vector<bool> fedPaths(const Survey& survey, const std::vector<bool>& shuts) {
    const auto passes = [&](const Branch& branch) {
        return conducts(branch) && (!isOperated(branch) || shuts[survey.numberOf(branch)]);
    };
    const std::vector<bool> plus = netsOnPlus(survey, passes);
    const std::vector<bool> minus = netsOnMinus(survey, passes);
    std::vector<bool> fed;
    for (const LoadPath& path : survey.loadPaths()) {
        const auto [from, to] = netsOf(survey, path);
        fed.push_back(path.source && plus[from] && minus[to]);
    }
    return fed;
}

/// Whether the part that moves this contact is energised: everything of it is fed, supply and trigger alike.
bool isEnergised(const Survey& survey, const Branch& contact, const std::vector<bool>& fed) {
    const auto& timing = survey.features(contact.part).timing;
    const std::vector<std::size_t>& paths = survey.pathsOf(contact.part);
    return !paths.empty() && !(timing && timing->function == TimerFunction::SingleShot) &&
           std::all_of(paths.begin(), paths.end(), [&](std::size_t path) { return fed[path]; });
}

bool isShut(const Survey& survey, const Branch& branch, const Operation& operation,
            const std::vector<bool>& fed) {
    const Contact& contact = contactOf(survey, branch);
    switch (contact.by) {
    case Operator::Hand:
        return operation.handOn;
    case Operator::Pedal:
        return operation.pedalDown;
    case Operator::Vacuum:
        return operation.vacuumLow == contact.closedAtRest; // at rest is without vacuum
    case Operator::Coil:
    case Operator::Electronics:
        return isEnergised(survey, branch, fed) != contact.closedAtRest;
    case Operator::None:
        return true;
    }
    return true;
}

std::vector<bool> shutContacts(const Survey& survey, const Operation& operation,
                               const std::vector<bool>& fed) {
    std::vector<bool> shuts;
    for (const Branch& branch : survey.branches()) {
        shuts.push_back(branch.sort == BranchSort::Contact && isShut(survey, branch, operation, fed));
    }
    return shuts;
}

} // namespace

StandingState standingState(const Survey& survey, const Operation& operation) {
    StandingState state{std::vector<bool>(survey.loadPaths().size(), false), {}};
    for (int round = 0; round < kLongestCommand; ++round) {
        state.shuts = shutContacts(survey, operation, state.fed);
        std::vector<bool> fed = fedPaths(survey, state.shuts);
        if (fed == state.fed) {
            break;
        }
        state.fed = std::move(fed);
    }
    return state;
}

} // namespace pumpwright
