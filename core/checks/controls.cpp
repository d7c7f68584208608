#include "core/checks/controls.h"

#include "core/checks/carried_current.h"
#include "core/checks/net_spread.h"
#include "core/checks/standing_state.h"

#include <algorithm>
#include <map>

namespace pumpwright {
namespace {

/// Operated contacts on the ways from a net towards plus (backwards) or towards minus. What leads nowhere, as
/// a contact that feeds something else, is on no way.
class WayBack {
public:
    WayBack(const Survey& survey, bool backwards, bool overResistors)
        : m_survey(survey), m_backwards(backwards), m_overResistors(overResistors),
          m_walls(backwards ? survey.liveNets() : survey.groundedNets()),
          m_otherRail(backwards ? survey.groundedNets() : survey.liveNets()) {}

    void collect(std::size_t start, std::set<std::size_t>& contacts) {
        if (isEnd(start)) {
            return;
        }
        spreadFrom(start);
        cutDeadEnds(start);
        for (const auto& [number, branch] : m_ways) {
            if (isOperated(*branch)) {
                contacts.insert(number);
            }
        }
    }

private:
    bool isEnd(std::size_t net) const { return m_walls[net] || m_otherRail[net]; }

    void spreadFrom(std::size_t start) {
        std::set<std::size_t> reached{start};
        std::vector<std::size_t> open{start};
        while (!open.empty()) {
            const std::size_t net = open.back();
            open.pop_back();
            for (const std::size_t number : m_survey.branchesAt(net)) {
                const Branch& branch = m_survey.branches()[number];
                const std::size_t first = m_backwards ? branch.toNet : branch.fromNet;
                const std::size_t other = branch.fromNet == net ? branch.toNet : branch.fromNet;
                const bool passes =
                    conducts(branch) || (m_overResistors && branch.sort == BranchSort::Passive);
                if (!passes || (branch.oneWay && first != net) || m_otherRail[other]) {
                    continue;
                }
                m_ways.emplace(number, &branch);
                if (reached.insert(other).second && !isEnd(other)) {
                    open.push_back(other);
                }
            }
        }
    }

    /// Takes away ways to a net from which none leads on, until there are none.
    void cutDeadEnds(std::size_t start) {
        std::map<std::size_t, std::size_t> waysAt;
        for (const auto& [number, branch] : m_ways) {
            ++waysAt[branch->fromNet];
            ++waysAt[branch->toNet];
        }
        for (bool cut = true; cut;) {
            cut = false;
            for (auto way = m_ways.begin(); way != m_ways.end();) {
                const Branch& branch = *way->second;
                const auto leadsOn = [&](std::size_t net) {
                    return net == start || isEnd(net) || waysAt[net] > 1;
                };
                if (leadsOn(branch.fromNet) && leadsOn(branch.toNet)) {
                    ++way;
                    continue;
                }
                --waysAt[branch.fromNet];
                --waysAt[branch.toNet];
                way = m_ways.erase(way);
                cut = true;
            }
        }
    }

    const Survey& m_survey;
    bool m_backwards;
    bool m_overResistors;
    const std::vector<bool>& m_walls;
    const std::vector<bool>& m_otherRail;
    std::map<std::size_t, const Branch*> m_ways;
};

/// Of a pump the survey knows it already.
const Command* knownCommand(const Survey& survey, const LoadPath& path) {
    const auto known = survey.pumpCommands().find(path.branch);
    return known == survey.pumpCommands().end() ? nullptr : &known->second;
}

} // namespace

std::set<std::size_t> controlsOf(const Survey& survey, const LoadPath& path) {
    std::set<std::size_t> contacts;
    const auto [from, to] = netsOf(survey, path);
    const bool overResistors = leadsOver(survey, path, BranchSort::Passive);
    WayBack(survey, true, overResistors).collect(from, contacts);
    WayBack(survey, false, overResistors).collect(to, contacts);
    return contacts;
}

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

std::set<std::size_t> allControlsOf(const Survey& survey, const LoadPath& path) {
    const Command* known = knownCommand(survey, path);
    return known != nullptr ? known->contacts : commandOf(survey, path).contacts;
}

std::set<PartId> controllingParts(const Survey& survey, const LoadPath& path) {
    std::set<PartId> parts;
    for (const std::size_t contact : allControlsOf(survey, path)) {
        parts.insert(survey.branches()[contact].part);
    }
    return parts;
}

std::set<std::size_t> commandingPathsOf(const Survey& survey, const LoadPath& path) {
    const Command* known = knownCommand(survey, path);
    return known != nullptr ? known->paths : commandOf(survey, path).paths;
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
    return std::any_of(contacts.begin(), contacts.end(),
                       [&](std::size_t number) { return survey.branches()[number].by == by; });
}

} // namespace pumpwright
