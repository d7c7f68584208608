#include "core/checks/controls.h"

#include "core/checks/carried_current.h"
#include "core/checks/net_spread.h"

#include <algorithm>

namespace pumpwright {
namespace {

/// Operated contacts met on the way from a net towards plus (backwards) or towards minus.
void collect(const Survey& survey, std::size_t start, bool backwards, std::set<std::size_t>& contacts) {
    const std::vector<bool>& walls = backwards ? survey.liveNets() : survey.groundedNets();
    const std::vector<bool>& otherRail = backwards ? survey.groundedNets() : survey.liveNets();
    if (walls[start] || otherRail[start]) {
        return;
    }
    std::vector<bool> ends = walls;
    std::transform(ends.begin(), ends.end(), otherRail.begin(), ends.begin(), std::logical_or<>());
    const std::vector<bool> reached = netsFrom(survey, {start}, backwards, conducts, ends);
    for (std::size_t net = 0; net < reached.size(); ++net) {
        if (!reached[net] || ends[net]) {
            continue;
        }
        for (const std::size_t number : survey.branchesAt(net)) {
            const Branch& branch = survey.branches()[number];
            const std::size_t other = branch.fromNet == net ? branch.toNet : branch.fromNet;
            if (isOperated(survey, branch) && reached[other] && !otherRail[other]) {
                contacts.insert(number);
            }
        }
    }
}

struct Command {
    std::set<std::size_t> contacts;
    std::set<std::size_t> paths;
};

Command commandOf(const Survey& survey, const LoadPath& load) {
    Command command;
    std::vector<const LoadPath*> open{&load};
    while (!open.empty()) {
        const LoadPath& path = *open.back();
        open.pop_back();
        for (const std::size_t contact : controlsOf(survey, path)) {
            command.contacts.insert(contact);
            for (const std::size_t number : survey.pathsOf(survey.branches()[contact].part)) {
                const LoadPath& next = survey.loadPaths()[number];
                if (&next != &load && command.paths.insert(number).second) {
                    open.push_back(&next);
                }
            }
        }
    }
    return command;
}

} // namespace

std::set<std::size_t> controlsOf(const Survey& survey, const LoadPath& path) {
    std::set<std::size_t> contacts;
    const auto& netOf = survey.nets().netOf;
    collect(survey, netOf.at({path.part, path.load.from}), true, contacts);
    collect(survey, netOf.at({path.part, path.load.to}), false, contacts);
    return contacts;
}

std::set<std::size_t> allControlsOf(const Survey& survey, const LoadPath& path) {
    return commandOf(survey, path).contacts;
}

std::set<std::size_t> commandingPathsOf(const Survey& survey, const LoadPath& path) {
    return commandOf(survey, path).paths;
}

std::vector<std::size_t> pumpPaths(const Survey& survey) {
    std::vector<std::size_t> pumps;
    for (std::size_t i = 0; i < survey.loadPaths().size(); ++i) {
        const LoadPath& path = survey.loadPaths()[i];
        if (path.load.sort == LoadSort::Motor && survey.features(path.part).pump) {
            pumps.push_back(i);
        }
    }
    return pumps;
}

bool anyMovedBy(const Survey& survey, const std::set<std::size_t>& contacts, Operator by) {
    return std::any_of(contacts.begin(), contacts.end(), [&](std::size_t number) {
        return contactOf(survey, survey.branches()[number]).by == by;
    });
}

} // namespace pumpwright
