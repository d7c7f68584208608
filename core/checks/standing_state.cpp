#include "core/checks/standing_state.h"

#include "core/checks/carried_current.h"
#include "core/checks/net_spread.h"

#include <algorithm>
#include <optional>

namespace pumpwright {
namespace {

/// A relay that commands a relay that commands a relay, and so on.
constexpr int kLongestCommand = 8;

/// Nets that lie on plus and on minus in a state, over conductors and, if asked, over resistors.
struct Rails {
    std::vector<bool> plus;
    std::vector<bool> minus;

    Rails(const Survey& survey, const std::vector<bool>& shuts, bool overResistors) {
        const auto passes = [&](const Branch& branch) {
            return (conducts(branch) || (overResistors && branch.sort == BranchSort::Passive)) &&
                   (!isOperated(branch) || shuts[survey.numberOf(branch)]);
        };
        plus = netsOnPlus(survey, passes);
        minus = netsOnMinus(survey, passes);
    }
};

/// A load that is meant to be fed over a resistor is fed over it.
std::vector<bool> fedPaths(const Survey& survey, const std::vector<bool>& shuts) {
    const Rails direct(survey, shuts, false);
    std::optional<Rails> somehow;
    std::vector<bool> fed;
    for (const LoadPath& path : survey.loadPaths()) {
        const bool overResistor = leadsOver(survey, path, BranchSort::Passive);
        if (overResistor && !somehow) {
            somehow.emplace(survey, shuts, true);
        }
        const Rails& rails = overResistor ? *somehow : direct;
        const auto [from, to] = netsOf(survey, path);
        fed.push_back(path.source && rails.plus[from] && rails.minus[to]);
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

bool leadsOver(const Survey& survey, const LoadPath& path, BranchSort sort) {
    const auto has = [&](const std::vector<LeadStep>& way) {
        return std::any_of(way.begin(), way.end(), [&](const LeadStep& step) {
            return step.branch && survey.branches()[*step.branch].sort == sort;
        });
    };
    return has(path.feed) || has(path.back);
}

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
