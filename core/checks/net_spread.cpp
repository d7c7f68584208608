#include "core/checks/net_spread.h"

#include "core/checks/survey.h"

namespace pumpwright {
namespace {

std::vector<bool> netsOnPole(const Survey& survey, const MayPass& mayPass, bool plus) {
    std::vector<std::size_t> starts;
    std::vector<bool> walls(survey.nets().nets.size(), false);
    for (const Branch& branch : survey.branches()) {
        if (branch.sort == BranchSort::Source) {
            starts.push_back(plus ? branch.fromNet : branch.toNet);
            walls[plus ? branch.toNet : branch.fromNet] = true;
        }
    }
    return netsFrom(survey, starts, !plus, mayPass, walls);
}

} // namespace

std::vector<bool> netsFrom(const Survey& survey, const std::vector<std::size_t>& starts, bool backwards,
                           const MayPass& mayPass, const std::vector<bool>& walls) {
    std::vector<bool> reached(survey.nets().nets.size(), false);
    std::vector<std::size_t> open;
    const auto reach = [&](std::size_t net) {
        if (!reached[net]) {
            reached[net] = true;
            open.push_back(net);
        }
    };
    for (const std::size_t start : starts) {
        reach(start);
    }
    while (!open.empty()) {
        const std::size_t net = open.back();
        open.pop_back();
        if (!walls.empty() && walls[net]) {
            continue;
        }
        for (const std::size_t number : survey.branchesAt(net)) {
            const Branch& branch = survey.branches()[number];
            const std::size_t first = backwards ? branch.toNet : branch.fromNet;
            const std::size_t last = backwards ? branch.fromNet : branch.toNet;
            if (branch.sort != BranchSort::Source && (first == net || !branch.oneWay) && mayPass(branch)) {
                reach(first == net ? last : first);
            }
        }
    }
    return reached;
}

std::vector<bool> netsOnPlus(const Survey& survey, const MayPass& mayPass) {
    return netsOnPole(survey, mayPass, true);
}

std::vector<bool> netsOnMinus(const Survey& survey, const MayPass& mayPass) {
    return netsOnPole(survey, mayPass, false);
}

} // namespace pumpwright
