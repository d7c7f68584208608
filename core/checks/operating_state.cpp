#include "core/checks/operating_state.h"

#include "core/checks/carried_current.h"
#include "core/checks/net_spread.h"

#include <algorithm>

namespace pumpwright {
namespace {

/// Relays in a row settle one after the other; what has not settled after so many rounds swings for ever.
constexpr int kMostRounds = 64;

bool allFed(const std::vector<std::size_t>& paths, const std::vector<bool>& fed) {
    return !paths.empty() &&
           std::all_of(paths.begin(), paths.end(), [&](std::size_t number) { return fed[number]; });
}

std::vector<bool> closedContacts(const Survey& survey, const HeldClosed& held, const std::vector<bool>& fed) {
    std::vector<bool> closed(survey.branches().size(), false);
    for (std::size_t i = 0; i < closed.size(); ++i) {
        const Branch& branch = survey.branches()[i];
        if (branch.sort != BranchSort::Contact) {
            continue;
        }
        const Contact& contact = contactOf(survey, branch);
        switch (contact.by) {
        case Operator::None:
            closed[i] = true;
            break;
        case Operator::Coil:
        case Operator::Electronics:
            closed[i] = contact.closedAtRest != allFed(survey.pathsOf(branch.part), fed);
            break;
        case Operator::Hand:
        case Operator::Pedal:
        case Operator::Vacuum:
            closed[i] = held(branch, contact.by);
            break;
        }
    }
    return closed;
}

std::vector<bool> fedLoads(const Survey& survey, const std::vector<bool>& closed) {
    const Branch* first = survey.branches().data();
    const auto open = [&](const Branch& branch) {
        return conducts(branch) &&
               (branch.sort != BranchSort::Contact || closed[static_cast<std::size_t>(&branch - first)]);
    };
    const std::vector<bool> plus = netsOnPlus(survey, open);
    const std::vector<bool> minus = netsOnMinus(survey, open);
    std::vector<bool> fed;
    for (const LoadPath& path : survey.loadPaths()) {
        const Branch& branch = survey.branches()[path.branch];
        fed.push_back((plus[branch.fromNet] && minus[branch.toNet]) ||
                      (!branch.oneWay && plus[branch.toNet] && minus[branch.fromNet]));
    }
    return fed;
}

} // namespace

OperatingState operatingState(const Survey& survey, const HeldClosed& held) {
    OperatingState state{{}, std::vector<bool>(survey.loadPaths().size(), false)};
    for (int round = 0; round < kMostRounds; ++round) {
        std::vector<bool> closed = closedContacts(survey, held, state.fed);
        if (closed == state.closed) {
            break;
        }
        state.closed = std::move(closed);
        state.fed = fedLoads(survey, state.closed);
    }
    return state;
}

bool closedWhenParked(const Branch&, Operator by) {
    return by == Operator::Vacuum;
}

} // namespace pumpwright
